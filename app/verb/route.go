package verb

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// routeRequest is what was asked for on the command line.
type routeRequest struct {
	cli.Speaker
	room string
	from string
	back bool
	json bool
}

func routeCommand(s cli.Speaker) *cobra.Command {
	r := &routeRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "route FILE",
		Short: s.Tell("verb.route", "Walk from the entry to each room in the dark: where no switch is at hand"),
		Long: s.Long("verb.route.long", `Route walks from the entry of a house to each of its rooms, crossing by crossing, and
tells at which no switch for a light in the room ahead is within a hand's reach, and
which walk in the dark is the longest. --room walks to one room alone, --from begins in
the middle of a room, and --back takes that way the other way round. How far a hand
reaches is the figure switch-reach, common practice and the user's to change.

Exit status: 0 no dark crossing, 1 at least one, 2 the plan could not be read.`),
		Example: `  studbay route cottage.studbay
  studbay route cottage.studbay --room Bedroom
  studbay route cottage.studbay --from Bedroom --room Kitchen --back
  studbay route cottage.studbay --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.room, "room", "", s.Tell("flag.route.room", "walk to one `ROOM` alone, by its name or ID"))
	f.StringVar(&r.from, "from", "", s.Tell("flag.route.from", "begin in a `ROOM` instead of at the entry"))
	f.BoolVar(&r.back, "back", false, s.Tell("flag.route.back", "walk it the other way round"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *routeRequest) run(c *cobra.Command, path string) error {
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	walk, err := r.walk(p)
	if err != nil {
		return err
	}
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), p.routeJSON(walk))
	} else {
		err = p.writeRoute(c.OutOrStdout(), walk)
	}
	if err == nil && walk.Dark() > 0 {
		err = errFound
	}
	return err
}

// walk takes the walk that was asked for: to all rooms, or the way between two places.
func (r *routeRequest) walk(c *checked) (walk light.Walk, err error) {
	reach := c.result.Figures.Lighting.SwitchReach
	from, err := c.roomOf("--from", r.from)
	if err != nil {
		return walk, err
	}
	to, err := c.roomOf("--room", r.room)
	switch {
	case err != nil:
		return walk, err
	case r.back && from == to:
		return walk, cli.Wrong(words.New("usage.route-back", "--back: say by --room or --from between which two places"))
	case r.back:
		from, to = to, from
	case to == "":
		return light.WalkFrom(c.index, reach, from), nil
	}
	way, ok := light.WayBetween(c.index, reach, from, to)
	if !ok {
		return walk, words.Fault("route.no-door", "no door leads from {0} to {1}, or both are one", c.placeName(from), c.placeName(to))
	}
	return way.Walk, nil
}

// roomOf returns the ID of a room that a flag names; empty, the entry, where it names none.
func (c *checked) roomOf(flag, named string) (plan.ID, error) {
	if named == "" {
		return "", nil
	}
	for _, l := range c.plan.Levels {
		for r := range l.Rooms.All() {
			if isRoom(r, named) {
				return r.ID, nil
			}
		}
	}
	return "", noRoom(flag, named, c.plan)
}

// placeName is the name of a room, or the entry.
func (c *checked) placeName(id plan.ID) words.Text {
	if r, _ := c.plan.Room(id); r != nil {
		return words.New("plain", "{0}", r.Name)
	}
	return words.New("route.the-entry", "the entry")
}

func (c *checked) writeRoute(w io.Writer, walk light.Walk) error {
	p := &cli.Paragraphs{Voice: c.voice}
	p.Put("", c.routeSum(walk))
	p.Blank()
	for i, one := range walk.Crossings {
		p.Put(cli.PadLeft(fmt.Sprint(i+1), 3)+"  ", one.Text())
		if one.IsDark() {
			p.Put("     ", one.Why(c.result.Figures))
		}
	}
	if longest := walk.Longest(); longest != nil && longest.Dark > 0 {
		p.Blank()
		p.Put("", words.New("route.longest", "The longest walk in the dark: {0}, in {1}.", longest.Dark, longest.Into.Name))
	}
	if len(walk.Missed) > 0 {
		p.Blank()
		p.Put("", words.New("route.missed", "No door leads from {0} to: {1}.", c.placeName(walk.From), listNames(walk.Missed)))
	}
	p.Blank()
	p.Put("", words.New("route.not", "Not counted: daylight, night lights, glow from the room behind, what stands in the way. Common practice, no section of the code."))
	return p.Write(w)
}

func (c *checked) routeSum(walk light.Walk) words.Text {
	switch {
	case len(walk.Crossings) == 0 && walk.From != "":
		return words.New("route.none-from", "{0}: no door leads from {1} to another room.", c.title(), c.placeName(walk.From))
	case len(walk.Crossings) == 0:
		return words.New("route.none", "{0}: no door leads in from the outdoors, so there is no walk.", c.title())
	}
	return words.New("route.sum", "{0}: {1} dark of {2} crossings, within a reach of {3}.", c.title(), walk.Dark(), len(walk.Crossings), walk.Reach)
}

func listNames(rooms []*plan.Room) string {
	text := ""
	for i, r := range rooms {
		if i > 0 {
			text += ", "
		}
		text += r.Name
	}
	return text
}

// routeJSON is the walk as JSON.
type routeJSON struct {
	Crossings []crossingJSON `json:"crossings"` // the nearest to the entry first
	Dark      int            `json:"dark"`
	Longest   *quantityJSON  `json:"longest_dark_walk"`
	Missed    []plan.ID      `json:"missed"` // rooms that no door leads to
}

type crossingJSON struct {
	From   *plan.ID      `json:"from"` // null from the outdoors where they are not drawn
	Into   plan.ID       `json:"into"`
	Name   string        `json:"name"` // of the room come into
	State  string        `json:"state"`
	Switch *string       `json:"switch"` // the tag of the nearest
	Away   *quantityJSON `json:"away"`
	Dark   *quantityJSON `json:"dark_walk"`
	Text   string        `json:"text"`
}

func (c *checked) routeJSON(walk light.Walk) routeJSON {
	out := routeJSON{Crossings: []crossingJSON{}, Dark: walk.Dark(), Missed: []plan.ID{}}
	for _, one := range walk.Crossings {
		step := crossingJSON{Into: one.Into.ID, Name: one.Into.Name, State: one.State.String(), Text: c.voice.Say(one.Text())}
		if one.From != nil {
			step.From = orNull(one.From.ID)
		}
		if one.Switch != nil {
			step.Switch = orNull(one.Switch.Tag)
		}
		if one.Away >= 0 {
			step.Away = c.quantity(rule.LengthOf(one.Away))
		}
		if one.IsDark() {
			step.Dark = c.quantity(rule.LengthOf(one.Dark))
		}
		out.Crossings = append(out.Crossings, step)
	}
	if longest := walk.Longest(); longest != nil {
		out.Longest = c.quantity(rule.LengthOf(longest.Dark))
	}
	for _, r := range walk.Missed {
		out.Missed = append(out.Missed, r.ID)
	}
	return out
}
