package verb

import (
	"io"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

// serveRequest is what was asked for on the command line.
type serveRequest struct {
	cli.Speaker
	room string
	to   string
	json bool
}

func serveCommand(s cli.Speaker) *cobra.Command {
	r := &serveRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "serve FILE --room ROOM",
		Short: s.Tell("verb.serve", "Propose the fewest receptacles that serve all of a room"),
		Long: s.Long("verb.serve.long", `Serve works out the least number of receptacles that serve all walls and wall counters
of a room as the edition asks, beside those that are there, and where each would stand:
in a bay and against a stud where that can be, even about beds and windows. The plan
itself is left alone; --to writes it with the proposal taken.

Exit status: 0 all of the room is served, 1 something is proposed or has no place,
2 the plan could not be read.`),
		Example: `  studbay serve cottage.studbay --room Kitchen
  studbay serve cottage.studbay --room Kitchen --to served.studbay
  studbay serve cottage.studbay --room Kitchen --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.room, "room", "", s.Tell("flag.serve.room", "the `ROOM` to serve, by its name or ID"))
	f.StringVar(&r.to, "to", "", s.Tell("flag.serve.to", "write the plan with the proposal taken to this `FILE`"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *serveRequest) run(c *cobra.Command, path string) error {
	if r.room == "" {
		return cli.Wrong(words.New("usage.no-room-serve", "no room to serve: name it by --room"))
	}
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	room := p.roomNamed(r.room)
	if room == nil {
		return noRoom("--room", r.room, p.plan)
	}
	view, _ := p.index.RoomView(room.ID)
	s := spacing.Serve(view, p.result.Figures)
	if r.to != "" && s.Edit != nil {
		next, err := s.Edit.Apply(p.plan)
		if err != nil {
			return err
		}
		there, err := file.StampOf(r.to)
		if err != nil {
			return notWritten(r.to, err)
		}
		if _, err := file.Save(r.to, next, there); err != nil {
			return notWritten(r.to, err)
		}
	}
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), p.serviceJSON(s))
	} else {
		err = p.writeService(c.OutOrStdout(), s)
	}
	if err == nil && (s.Edit != nil || len(s.Left) > 0) {
		err = errFound
	}
	return err
}

// roomNamed returns the room of a name or an ID, or nil.
func (c *checked) roomNamed(named string) *plan.Room {
	for _, l := range c.plan.Levels {
		for r := range l.Rooms.All() {
			if isRoom(r, named) {
				return r
			}
		}
	}
	return nil
}

func (c *checked) writeService(w io.Writer, s spacing.Service) error {
	p := &cli.Paragraphs{Voice: c.voice}
	p.Put("", s.Text())
	for _, l := range s.Lines {
		p.Put("  ", l.Text())
	}
	for _, o := range s.Added {
		p.Put("  > ", render.Proposed(c.index, o))
	}
	p.Blank()
	p.Caution()
	return p.Write(w)
}

// serviceJSON is a proposal as JSON.
type serviceJSON struct {
	Room  plan.ID       `json:"room"`
	Name  string        `json:"name"`
	Lines []servedJSON  `json:"lines"` // that lack a receptacle
	Added []addedJSON   `json:"added"`
	Left  []stretchJSON `json:"left"` // what no receptacle can be set for
}

type servedJSON struct {
	Counter bool          `json:"counter"`
	Length  *quantityJSON `json:"length"`
	Reach   *quantityJSON `json:"reach"`
	There   int           `json:"there"`
	Added   int           `json:"added"`
}

type addedJSON struct {
	Kind   string        `json:"kind"`
	Host   plan.ID       `json:"host"`
	Along  *quantityJSON `json:"along"`
	Height *quantityJSON `json:"height"`
}

func (c *checked) serviceJSON(s spacing.Service) serviceJSON {
	out := serviceJSON{Room: s.Room.ID, Name: s.Room.Name, Lines: []servedJSON{}, Added: []addedJSON{}, Left: []stretchJSON{}}
	length := func(l unit.Length) *quantityJSON { return c.quantity(rule.LengthOf(l)) }
	for _, l := range s.Lines {
		out.Lines = append(out.Lines, servedJSON{l.IsCounter, length(l.Length), length(l.Reach), l.There, l.Added})
	}
	for _, o := range s.Added {
		out.Added = append(out.Added, addedJSON{o.Kind, o.At.Host, length(o.At.Along), length(o.Height.Value)})
	}
	for _, part := range s.Left {
		out.Left = append(out.Left, stretchJSON{part.Host, length(part.From), length(part.To)})
	}
	return out
}
