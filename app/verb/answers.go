package verb

import (
	"cmp"
	"crypto/rand"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/answers"
	"studbay/plan/file"
	"studbay/plan/words"
	"studbay/render/tell"
)

// answersRequest is what was asked for on the command line.
type answersRequest struct {
	cli.Speaker
	to   string
	json bool
}

func answersCommand(s cli.Speaker) *cobra.Command {
	r := &answersRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "answers FILE [ANSWERS]",
		Short: s.Tell("verb.answers", "List what a client said in the walk-through, and take in what came back"),
		Long: s.Long("verb.answers.long", `Answers lists what a plan keeps of a client's word: agreed, change, question, note and
initials, room by room. With the text that came back from a walk-through, or - for the
standard input, it lists that as well, and with --to writes a plan that keeps it. Nothing
is moved by it: a wish is not an edit. Of one person the last word on a thing counts.

Exit status: 0 nothing is asked, 1 a change is asked or a question is open, 2 it could
not be read.`),
		Example: `  studbay answers cottage.studbay
  studbay answers cottage.studbay answers.txt
  studbay answers cottage.studbay answers.txt --to cottage-b.studbay`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 || len(args) > 2 {
				return cli.Wrong(words.New("usage.answers", "{0} files: name a plan and, where there is one, the text that came back", len(args)))
			}
			return nil
		},
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.to, "to", "", s.Tell("flag.answers.to", "write a plan that keeps the answers to the `FILE`, which ends in .studbay"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *answersRequest) run(c *cobra.Command, args []string) error {
	if err := namesFile(c, "to", r.to); err != nil {
		return err
	}
	if r.to != "" && !strings.HasSuffix(strings.ToLower(r.to), file.Suffix) {
		return cli.Wrong(words.New("usage.name-plan-ends", "--to {0}: the name of a plan ends in {1}", r.to, file.Suffix))
	}
	p, err := readPlan(r.Speaker, args[0], "")
	if err != nil {
		return err
	}
	var gone []answers.Given
	var given answers.Answers
	if len(args) == 2 {
		if given, gone, err = p.takeAnswers(c.InOrStdin(), args[1]); err != nil {
			return err
		}
	}
	if r.to != "" {
		there, err := file.StampOf(r.to)
		if err != nil {
			return err
		}
		if _, err := file.Save(r.to, p.plan, there); err != nil {
			return notWritten(r.to, err)
		}
	}
	list := p.wishes(given, gone)
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), list)
	} else {
		err = list.write(c.OutOrStdout(), p)
	}
	if err == nil && list.isAsking() {
		err = errFound
	}
	return err
}

// mostAnswers bounds answers that are read whole: 4 MiB, far more than any.
const mostAnswers = 4 << 20

// takeAnswers reads a text into the plan and returns what is about nothing in it.
func (c *checked) takeAnswers(in io.Reader, name string) (a answers.Answers, gone []answers.Given, err error) {
	var data []byte
	if name == "-" {
		data, err = io.ReadAll(io.LimitReader(in, mostAnswers))
	} else {
		data, err = price.ReadSmall(name)
	}
	if err != nil {
		return a, nil, err
	}
	a, err = answers.Parse(string(data))
	if err != nil {
		return a, nil, fmt.Errorf("%s: %w", name, err)
	}
	take, gone, err := a.Take(c.plan, rand.Reader)
	if err != nil {
		return a, nil, err
	}
	c.plan, err = take.Apply(c.plan)
	return a, gone, err
}

// wishesJSON is what a plan keeps of a client's word.
type wishesJSON struct {
	Wishes []wishJSON `json:"wishes"`
	Gone   []wishJSON `json:"gone"` // about what is not in the plan
	// GivenTo is the plan and the revision that the answers are to, where that is not this one.
	GivenTo string `json:"given_to,omitempty"`
}

type wishJSON struct {
	Kind  plan.WishKind `json:"kind"`
	About plan.ID       `json:"about"`
	Room  string        `json:"room"`
	Tag   string        `json:"tag"`  // of the opening; empty of a room
	What  string        `json:"what"` // in plain words
	Note  string        `json:"note"`
	By    string        `json:"by"`
	Date  string        `json:"date"`
	Drawn *quantityJSON `json:"drawn"` // how far off its place the client drew it
	drawn words.Text
}

// wishes lists them room by room.
func (c *checked) wishes(given answers.Answers, gone []answers.Given) wishesJSON {
	out := wishesJSON{Wishes: []wishJSON{}, Gone: []wishJSON{}}
	if !given.IsOf(c.plan.Header) {
		out.GivenTo = strings.TrimSpace(given.Plan + " " + given.Revision)
	}
	for w := range c.plan.Wishes.All() {
		one := wishJSON{Kind: w.Kind, About: w.About, Note: w.Note, By: w.By, Date: w.Date, drawn: tell.WishedText(c.index, w)}
		if far, ok := tell.Wished(c.index, w); ok {
			one.Drawn = c.length(far)
		}
		if room, _ := c.plan.Room(w.About); room != nil {
			one.Room = room.Name
		}
		if o, _ := c.plan.Opening(w.About); o != nil {
			one.Tag = o.Tag
			if place, ok := c.index.Place(o.At); ok && place.Room != nil {
				one.Room, one.What = place.Room.Name, c.headline(place.Room.ID, o)
			}
		}
		out.Wishes = append(out.Wishes, one)
	}
	slices.SortStableFunc(out.Wishes, func(a, b wishJSON) int {
		return cmp.Or(cmp.Compare(a.Room, b.Room), plan.CompareTags(a.Tag, b.Tag), cmp.Compare(a.By, b.By), cmp.Compare(a.Kind, b.Kind))
	})
	for _, g := range gone {
		out.Gone = append(out.Gone, wishJSON{Kind: g.Kind, About: g.About, Note: g.Note, By: given.By, Date: given.Date})
	}
	return out
}

// headline is what an opening is and where, in plain words.
func (c *checked) headline(room plan.ID, o *plan.Opening) string {
	for _, one := range tell.Room(c.index, room) {
		if one.Opening.ID == o.ID {
			return c.voice.Say(one.Headline())
		}
	}
	return c.voice.Say(tell.What(o))
}

func (l wishesJSON) isAsking() bool {
	asks := func(w wishJSON) bool { return w.Kind == plan.WishChange || w.Kind == plan.WishQuestion }
	return slices.ContainsFunc(l.Wishes, asks) || slices.ContainsFunc(l.Gone, asks)
}

// write writes them as people read it.
func (l wishesJSON) write(w io.Writer, c *checked) error {
	p := &cli.Paragraphs{Voice: c.voice}
	if l.GivenTo != "" {
		p.Put("", words.New("answers.given-to", "These answers were given to “{0}”; this is “{1}”. Look at each of them again.", l.GivenTo, strings.TrimSpace(c.plan.Header.Title+" "+c.plan.Header.Revision)))
		p.Blank()
	}
	if len(l.Wishes) == 0 {
		p.Put("", words.New("answers.nobody", "Nobody has said anything in the walk-through yet."))
	}
	for i, one := range l.Wishes {
		if i == 0 || l.Wishes[i-1].Room != one.Room {
			if i > 0 {
				p.Blank()
			}
			p.Put("", words.New("plain", "{0}", one.Room))
		}
		what := words.New("answers.room", "{0}", one.Kind.Text())
		if one.Tag != "" {
			what = words.New("answers.opening", "{0}: {1}, {2}", one.Kind.Text(), one.Tag, one.What)
		}
		p.Put("  ", what)
		if !one.drawn.IsZero() {
			p.Put("    ", one.drawn)
		}
		if one.Note != "" {
			p.Put("    ", words.New("answers.note", "“{0}”", one.Note))
		}
		if one.By != "" || one.Date != "" {
			p.Put("    ", words.New("answers.by", "{0}", strings.TrimSpace(one.By+" "+one.Date)))
		}
	}
	for i, one := range l.Gone {
		if i == 0 {
			p.Blank()
			p.Put("", words.New("answers.gone", "About what is not in the plan any more, and left out:"))
		}
		p.Put("  ", words.New("answers.gone-one", "{0} {1} {2}", one.Kind.Text(), string(one.About), one.Note))
	}
	return p.Write(w)
}
