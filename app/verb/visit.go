package verb

import (
	"io"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/visit"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// visitRequest is what was asked for on the command line.
type visitRequest struct {
	cli.Speaker
	json bool
}

func visitCommand(s cli.Speaker) *cobra.Command {
	r := &visitRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "visit FILE",
		Short: s.Tell("verb.visit", "List what an inspector will check in this house, to be ticked"),
		Long: s.Long("verb.visit.long", `Visit lists what an inspector will check before the walls are closed, from the plan alone:
every new box by room with its fill and what is to be ticked at it, the circuits, what to
settle before, and what is not drawn and so not on the list. export --for inspector
prints the same list on sheets.`),
		Example: `  studbay visit cottage.studbay
  studbay visit cottage.studbay --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *visitRequest) run(c *cobra.Command, path string) error {
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	list := visit.Of(p.index, p.result)
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), p.visitJSON(list))
	}
	return p.writeVisit(c.OutOrStdout(), list)
}

func (c *checked) writeVisit(w io.Writer, list visit.List) error {
	p := &cli.Paragraphs{Voice: c.voice}
	for _, r := range list.Rooms {
		p.Put("", r.Report.Sentence())
		p.Text(aligned(c.visitRows(r), []bool{false, false, true, true, false}))
		p.Blank()
	}
	p.Put("", words.New("visit.points", "What will be inspected here"))
	for _, one := range list.Points {
		line := words.New("visit.point-bare", "{0}: {1}", one.Title, one.Detail)
		if one.Section != "" {
			line = words.New("visit.point", "{0}: {1} [{2}]", one.Title, one.Detail, one.Section)
		}
		p.Put(mark(one.Done), line)
	}
	p.Blank()
	for _, one := range list.Circuits {
		p.Put(mark(one.Done), words.New("visit.circuit-line", "{0}  {1}, {2} A  {3}", one.Number, one.Name, one.Amps, one.Protection()))
	}
	if len(list.Settle) > 0 {
		p.Blank()
		p.Put("", words.New("visit.settle", "Settle before the visit"))
		for _, f := range list.Settle {
			p.Put("[ ] ", f.Message)
		}
	}
	if len(list.Missing) > 0 {
		p.Blank()
		p.Put("", words.New("visit.missing", "Not drawn, so not on this list"))
		for _, m := range list.Missing {
			p.Put("  - ", m)
		}
	}
	p.Blank()
	p.Put("", words.New("visit.count", "{0} boxes, {1} ticks by box; leave none open.", list.Boxes, list.Ticks))
	if list.Ticked > 0 {
		p.Put("", words.New("visit.ticked", "Ticked so far, by box: {0} of {1}.", list.Ticked, list.Ticks))
	}
	p.Put("", words.New("visit.aid", "Made from this plan alone. What an inspector asks for is for the inspector to say."))
	return p.Write(w)
}

// mark is an open tick or one that was made.
func mark(d visit.Done) string {
	if d.Is() {
		return "[x] "
	}
	return "[ ] "
}

// visitRows are the boxes of a room: tag, what it is, fill, circuit and ticks.
func (c *checked) visitRows(r visit.Room) (lines [][]string) {
	for _, b := range r.Boxes {
		ticks := ""
		for _, column := range visit.Columns {
			if t := b.Ticks[column]; t.Applies {
				ticks += mark(t.Done) + c.voice.Say(column.Text())
				if within := t.Beside(c.voice.System); within != "" {
					ticks += " " + within
				}
				ticks += "  "
			}
		}
		lines = append(lines, []string{"  " + b.Opening.Tag, c.voice.Say(schedule.What(b.Opening)), schedule.UsedAndThere(b), b.Circuit, ticks})
	}
	return lines
}

// visitJSON is the list as JSON.
type visitJSON struct {
	Rooms    []visitRoomJSON `json:"rooms"`
	Points   []pointJSON     `json:"points"`
	Circuits []circuitJSON   `json:"circuits"`
	Settle   []string        `json:"settle"`
	Missing  []string        `json:"missing"`
	Boxes    int             `json:"boxes"`
	Ticks    int             `json:"ticks"`
	Ticked   int             `json:"ticked,omitempty"`
}

type visitRoomJSON struct {
	Room     plan.ID        `json:"room"`
	Name     string         `json:"name"`
	Sentence string         `json:"sentence"`
	Boxes    []visitBoxJSON `json:"boxes"`
}

type visitBoxJSON struct {
	Opening plan.ID       `json:"opening"`
	Tag     string        `json:"tag"`
	Circuit *string       `json:"circuit"`
	Used    *quantityJSON `json:"used"`
	There   *quantityJSON `json:"there"`
	Ticks   []string      `json:"ticks"`
	Done    []string      `json:"done,omitempty"` // of those, what was looked at
}

type pointJSON struct {
	Title   string `json:"title"`
	Detail  string `json:"detail"`
	Section string `json:"section"`
	Done    bool   `json:"done,omitempty"`
}

type circuitJSON struct {
	Number     string `json:"number"`
	Name       string `json:"name"`
	Amps       int    `json:"amps"`
	Protection string `json:"protection"`
	Done       bool   `json:"done,omitempty"`
}

func (c *checked) visitJSON(list visit.List) visitJSON {
	out := visitJSON{Rooms: []visitRoomJSON{}, Points: []pointJSON{}, Circuits: []circuitJSON{}, Settle: []string{}, Missing: []string{}, Boxes: list.Boxes, Ticks: list.Ticks, Ticked: list.Ticked}
	for _, r := range list.Rooms {
		room := visitRoomJSON{r.Room.ID, r.Room.Name, c.voice.Say(r.Report.Sentence()), []visitBoxJSON{}}
		for _, b := range r.Boxes {
			room.Boxes = append(room.Boxes, c.visitBoxJSON(b))
		}
		out.Rooms = append(out.Rooms, room)
	}
	for _, p := range list.Points {
		out.Points = append(out.Points, pointJSON{c.voice.Say(p.Title), c.voice.Say(p.Detail), p.Section, p.Done.Is()})
	}
	for _, one := range list.Circuits {
		out.Circuits = append(out.Circuits, circuitJSON{one.Number, one.Name, one.Amps, one.Protection(), one.Done.Is()})
	}
	for _, f := range list.Settle {
		out.Settle = append(out.Settle, c.voice.Say(f.Message))
	}
	for _, m := range list.Missing {
		out.Missing = append(out.Missing, c.voice.Say(m))
	}
	return out
}

func (c *checked) visitBoxJSON(b visit.Box) visitBoxJSON {
	one := visitBoxJSON{Opening: b.Opening.ID, Tag: b.Opening.Tag, Circuit: orNull(b.Circuit), Ticks: []string{}}
	volume := func(v unit.Volume) *quantityJSON {
		if v == 0 {
			return nil
		}
		return &quantityJSON{v.String(), "in3"}
	}
	one.Used, one.There = volume(b.Used), volume(b.There)
	for _, column := range visit.Columns {
		if b.Ticks[column].Applies {
			one.Ticks = append(one.Ticks, column.ID())
		}
		if b.Ticks[column].Done.Is() {
			one.Done = append(one.Done, column.ID())
		}
	}
	return one
}
