package verb

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// contentFlags are the flags that say what is in the box, in the order help lists
// them. The name of a value stands between backquotes.
var contentFlags = []struct {
	word  box.Word
	usage words.Text
}{
	{box.Cable, words.New("flag.fill.cable", "a cable: `12/2[xK]` is two insulated 12 AWG conductors that end or are spliced here and one 12 AWG grounding conductor, K times")},
	{box.Conductor, words.New("flag.fill.conductor", "an insulated conductor that ends or is spliced here, `12[xK]`")},
	{box.Through, words.New("flag.fill.through", "a conductor that passes unbroken, `12[xK]`; counted once")},
	{box.Loop, words.New("flag.fill.loop", "an unbroken loop of at least twice the free length, `12[xK]`; counted twice")},
	{box.Ground, words.New("flag.fill.ground", "an equipment grounding conductor that enters, `12[xK]`")},
	{box.IsolatedGround, words.New("flag.fill.isolated-ground", "one of an isolated set of them, `12[xK]`; from 2020 counted with the others")},
	{box.FixtureWire, words.New("flag.fill.fixture-wire", "a luminaire's own wire, `18[xK]`")},
	{box.Canopy, words.New("flag.fill.canopy", "the luminaire has a domed canopy: up to four fixture wires under 14 AWG are free, and its own grounding conductor (leave that one out)")},
	{box.Device, words.New("flag.fill.device", "a yoke or strap, `12[:GANGS][xK]`; 12 is the largest conductor connected to it, GANGS those the device needs by itself")},
	{box.Clamps, words.New("flag.fill.clamps", "there are internal clamps")},
	{box.Fitting, words.New("flag.fill.fitting", "a support fitting, `stud|hickey`; one a type is counted")},
	{box.TerminalBlock, words.New("flag.fill.terminal-block", "a terminal block wired with `12[xK]`; counted from 2023")},
}

const fillExamples = `  a box marked 18 in³, three cables and a receptacle: exactly full
    studbay fill --volume 18 --cable 14/2x3 --device 14

  a steel square of the catalog with a ring marked 3.5 in³
    studbay fill --box sq4-1.5 --add 3.5 --cable 12/2x3 --device 12

  a 50 A range receptacle that needs two gangs, with a smaller ground
    studbay fill --box sq411-2.125 --conductor 6x3 --ground 10 --device 6:2

  a box that a barrier parts: what is on each side, and how much room there is
    studbay fill --volume 34 --barrier metal --space "17; cable 14/2 x2; device 14" --space "cable 12/2; device 12"

  by an older edition, as JSON
    studbay fill --edition 2017 --volume 16 --cable 12/2x2 --device 12 --json`

// fillRequest is what was asked for on the command line.
type fillRequest struct {
	cli.Speaker
	edition  string
	box      string
	volume   string
	adds     []string
	barriers []string
	spaces   []string
	gangs    int // of a box of the catalog
	contents map[box.Word]*[]string
	present  map[box.Word]*bool
	json     bool
	list     bool
}

func fillCommand(s cli.Speaker) *cobra.Command {
	r := &fillRequest{Speaker: s, contents: map[box.Word]*[]string{}, present: map[box.Word]*bool{}}
	c := &cobra.Command{
		Use:   "fill (--box NAME | --volume V) [what is in it]",
		Short: s.Tell("verb.fill", "Add up what is in one box and compare it with its volume"),
		Long: s.Long("verb.fill.long", `Fill adds up what is in one box by NEC 314.16 and compares it with the volume,
line by line. Flags that name a thing may be repeated. A volume V is 18, 18in3 or 295cm3.
Where barriers part the box, each space is worked out by itself: --space says, for each
of them in turn, the volume there and what is in it, parted by semicolons. The volume
may be left out of one, which has the rest, or of all where there is a space a gang.
Wire connectors and wires that never leave the box take nothing: leave them out.
Neither the box's depth nor its support is checked.

Exit status: 0 it fits, 1 it does not, 2 bad input or usage.`),
		Example: fillExamples,
		Args:    cli.NoArguments,
		RunE:    func(c *cobra.Command, _ []string) error { return r.run(c) },
	}
	r.addFlags(c)
	completeFill(c)
	return c
}

func (r *fillRequest) addFlags(c *cobra.Command) {
	f, s := c.Flags(), r.Speaker
	f.SortFlags = false
	f.StringVar(&r.edition, "edition", code.Latest().Edition, s.Tell("flag.fill.edition", "code edition `E`"))
	f.StringVar(&r.box, "box", "", s.Tell("flag.fill.box", "a box or box type of the catalog by its `NAME`; its internal clamps are counted"))
	f.StringVar(&r.volume, "volume", "", s.Tell("flag.fill.volume", "the volume `V` marked on the box"))
	f.StringArrayVar(&r.adds, "add", nil, s.Tell("flag.fill.add", "the volume `V` of a ring, extension or raised cover; without a mark it gives nothing"))
	for _, flag := range contentFlags {
		name := string(flag.word)
		if flag.word == box.Canopy || flag.word == box.Clamps {
			r.present[flag.word] = f.Bool(name, false, s.Say(flag.usage))
			continue
		}
		r.contents[flag.word] = f.StringArray(name, nil, s.Say(flag.usage))
	}
	f.StringArrayVar(&r.barriers, "barrier", nil, s.Tell("flag.fill.barrier", "a barrier without a mark, `metal|nonmetallic`; then --space says what is on each side"))
	f.StringArrayVar(&r.spaces, "space", nil, s.Tell("flag.fill.space", "one space of a parted box: its volume and what is in it, `\"16; cable 14/2; device 14\"`"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	f.BoolVar(&r.list, "list", false, s.Tell("flag.fill.list", "list the boxes and box types of the catalog, a name first on each line"))
}

func (r *fillRequest) run(c *cobra.Command) error {
	if r.list {
		return r.writeList(c.OutOrStdout())
	}
	fig, err := code.Edition(r.edition)
	if err != nil {
		return cli.Wrong(words.New("usage.edition", "--edition {0}: {1}", r.edition, err))
	}
	if !boxes.Fill.IsConfirmed(fig) {
		return cli.Wrong(words.New("usage.edition", "--edition {0}: {1}", r.edition, fig.NotConfirmed()))
	}
	contents, err := r.parseContents()
	if err != nil {
		return err
	}
	space, clamps, err := r.space()
	if err != nil {
		return err
	}
	if clamps {
		contents = withClamps(contents)
	}
	parted, err := box.Parted(fig, space, r.gangs, contents)
	if err != nil {
		return r.explain(err)
	}
	var results []box.Result
	for _, p := range parted {
		result, err := box.Fill(fig, p.Space, p.Contents)
		if err != nil {
			return r.explain(err)
		}
		results = append(results, result)
	}
	if err := r.write(c.OutOrStdout(), fig, results); err != nil {
		return err
	}
	if !fitsEach(results) {
		return errFound
	}
	return nil
}

// fitsEach reports whether what is in each space fits.
func fitsEach(results []box.Result) bool {
	return !slices.ContainsFunc(results, func(r box.Result) bool { return !r.Fits })
}

// withClamps counts the internal clamps that a box comes with in each of its spaces.
func withClamps(c box.Contents) box.Contents {
	spaces, begun := c.Spaces()
	for i, in := range spaces {
		if !in.Tells(box.Clamps) {
			spaces[i] = append(in, box.Item{What: box.Clamps})
		}
	}
	return box.InSpaces(spaces, begun)
}

// explain puts the flag in front of what could not be counted.
func (r *fillRequest) explain(err error) error {
	if untold := new(words.Error); errors.As(err, &untold) && strings.HasPrefix(untold.Text.ID, "box.parted.") {
		return cli.Wrong(words.New("usage.space", "--space: {0}", err))
	}
	if size := new(box.SizeError); errors.As(err, &size) {
		return cli.Wrong(words.New("usage.option", "--{0}", err))
	}
	if errors.Is(err, box.ErrNoVolume) && r.box != "" {
		return cli.Wrong(words.New("usage.box-mark-volume", "--box {0}: {1}; give the mark by --volume", r.box, err))
	}
	return cli.Wrong(words.New("usage.volume", "--volume {0}: {1}", r.volume, err))
}

func (r *fillRequest) parseContents() (box.Contents, error) {
	var all box.Contents
	for _, flag := range contentFlags {
		if present := r.present[flag.word]; present != nil {
			if *present {
				all = append(all, box.Item{What: flag.word})
			}
			continue
		}
		for _, text := range *r.contents[flag.word] {
			item, err := box.ParseItem(flag.word, text)
			if err != nil {
				return nil, cli.Wrong(words.New("usage.option-value", "--{0} {1}", flag.word, err))
			}
			all = append(all, item)
		}
	}
	if len(r.spaces) == 0 {
		return all, nil
	}
	if len(all) > 0 {
		return nil, cli.Wrong(words.New("usage.space-what-parted", "--space: what is in a parted box is said by --space alone; of --{0} nobody knows on which side it is", all[0].What))
	}
	for _, text := range r.spaces {
		space, err := parseSpace(text)
		if err != nil {
			return nil, cli.Wrong(words.New("usage.space-text", "--space \"{0}\": {1}", text, err))
		}
		all = append(all, space...)
	}
	return all, nil
}

// parseSpace reads one space: its volume, where that is said, and what is in it.
func parseSpace(text string) (box.Contents, error) {
	first, rest, _ := strings.Cut(text, ";")
	begun, err := box.ParseItem(box.BeginsSpace, first)
	if err != nil {
		begun, rest = box.Item{What: box.BeginsSpace}, text
	}
	in, wrong := box.ParseContents(rest)
	switch {
	case wrong != nil:
		return nil, wrong
	case in.Tells(box.BeginsSpace):
		return nil, words.Fault("fill.one-space", "one space at a time; repeat --space for the next")
	}
	return append(box.Contents{begun}, in...), nil
}

// space gathers what gives the volume, and whether the box comes with clamps.
func (r *fillRequest) space() (s box.Space, clamps bool, err error) {
	switch {
	case r.box == "" && r.volume == "":
		return s, false, cli.Wrong(words.New("usage.no-volume-name", "no volume: name a box by --box, or give the mark by --volume; studbay fill --list names the boxes"))
	case r.box != "" && r.volume != "":
		return s, false, cli.Wrong(words.New("usage.box-and-volume", "--box {0} and --volume {1}: give one of the two", r.box, r.volume))
	case r.box != "":
		s, r.gangs, clamps, err = catalogued(r.box)
	default:
		s.Parts, err = appendGiven(nil, "volume", r.volume)
	}
	if err != nil {
		return s, false, err
	}
	for _, text := range r.adds {
		if s.Parts, err = appendGiven(s.Parts, "add", text); err != nil {
			return s, false, err
		}
	}
	for _, text := range r.barriers {
		barrier, err := box.ParseBarrier(text)
		if err != nil {
			return s, false, cli.Wrong(words.New("usage.barrier", "--barrier {0}", err))
		}
		s.Barriers = append(s.Barriers, barrier)
	}
	return s, clamps, nil
}

func catalogued(name string) (s box.Space, gangs int, clamps bool, err error) {
	if b := part.All().Box(name); b != nil {
		return b.Space(), b.Gangs, b.Clamps, nil
	}
	if a := part.All().Assembly(name); a != nil {
		return a.Space(), a.Gangs(), a.Box.Clamps, nil
	}
	return s, 0, false, cli.Wrong(words.New("usage.box-no-box", "--box {0}: no such box or box type; studbay fill --list names them", name))
}

func appendGiven(parts []box.Part, flag, text string) ([]box.Part, error) {
	v, err := unit.ParseVolume(text)
	if err != nil {
		return nil, cli.Wrong(words.New("usage.volume-as-cm", "--{0} {1}; want a volume such as 18, 18in3 or 295cm3", flag, err))
	}
	what := words.New("fill.part.volume", "volume as given, {0}", text)
	if flag == "add" {
		what = words.New("fill.part.add", "added, {0}", text)
	}
	return append(parts, box.Part{What: what, Volume: v}), nil
}

// completeFill offers what the shell can complete.
func completeFill(c *cobra.Command) {
	ask := func(flag string, answer cobra.CompletionFunc) {
		if err := c.RegisterFlagCompletionFunc(flag, answer); err != nil {
			panic(fmt.Sprintf("flag %s: %v", flag, err))
		}
	}
	offer := func(flag string, values ...string) {
		ask(flag, cobra.FixedCompletions(values, cobra.ShellCompDirectiveNoFileComp))
	}
	ask("box", func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return boxNames(), cobra.ShellCompDirectiveNoFileComp
	})
	offer("edition", code.Editions()...)
	offer("barrier", string(box.Metal), string(box.Nonmetallic))
	offer("fitting", box.Stud, box.Hickey)
	offer("cable", "14/2", "14/3", "12/2", "12/3", "10/2", "10/3")
	for _, word := range []box.Word{box.Conductor, box.Through, box.Loop, box.Ground, box.IsolatedGround, box.Device, box.TerminalBlock} {
		offer(string(word), "14", "12", "10", "8", "6")
	}
	offer(string(box.FixtureWire), "18", "16", "14")
	offer("volume")
	offer("add")
	offer("space")
}

// boxNames lists what --box takes, each with what it is behind a tab for the shell.
func boxNames() (all []string) {
	for _, b := range part.All().Boxes {
		all = append(all, b.ID+"\t"+b.Name)
	}
	for _, a := range part.All().Assemblies {
		all = append(all, a.Code+"\t"+a.Name)
	}
	return all
}
