package verb

import (
	"io"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// reportRequest is what was asked for on the command line.
type reportRequest struct {
	cli.Speaker
	edition string
	room    string
	trade   bool
	json    bool
}

func reportCommand(s cli.Speaker) *cobra.Command {
	r := &reportRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "report FILE",
		Short: s.Tell("verb.report", "Tell in a sentence each how the rooms of a plan stand"),
		Long: s.Long("verb.report.long", `Report tells of each room in one sentence what was found in it, the room with the most
to settle first. --room tells one room in full: what is wrong, what to do and why, in
plain words, or by --trade with the section and the figures.

Exit status: 0 no room has a thing to settle, 1 one has, 2 the plan could not be read.`),
		Example: `  studbay report cottage.studbay
  studbay report cottage.studbay --room Kitchen
  studbay report cottage.studbay --room Kitchen --trade
  studbay report cottage.studbay --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.room, "room", "", s.Tell("flag.report.room", "tell all of one `ROOM`, by its name or ID"))
	f.BoolVar(&r.trade, "trade", false, s.Tell("flag.report.trade", "tell findings as the trade does: section, figures, wording of the rule"))
	f.StringVar(&r.edition, "edition", "", s.Tell("flag.check.edition", "code edition `E` in place of the plan's"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *reportRequest) run(c *cobra.Command, path string) error {
	p, err := readPlan(r.Speaker, path, r.edition)
	if err != nil {
		return err
	}
	rooms := p.result.Rooms(p.plan)
	if r.room != "" {
		if rooms, err = p.only(rooms, r.room); err != nil {
			return err
		}
	}
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), p.reportJSON(rooms))
	} else {
		err = r.write(c.OutOrStdout(), p, rooms)
	}
	if err != nil {
		return err
	}
	for _, one := range rooms {
		if one.Settle > 0 {
			return errFound
		}
	}
	return nil
}

// only leaves the reports of the rooms of a name or an ID.
func (c *checked) only(rooms []fill.RoomReport, room string) (of []fill.RoomReport, err error) {
	for _, one := range rooms {
		if one.Room != nil && isRoom(one.Room, room) {
			of = append(of, one)
		}
	}
	if of == nil {
		return nil, noRoom("--room", room, c.plan)
	}
	return of, nil
}

func isRoom(r *plan.Room, named string) bool {
	return string(r.ID) == named || strings.EqualFold(r.Name, named)
}

// noRoom says that a plan has no room of a name, and which it has.
func noRoom(flag, named string, p plan.Plan) error {
	var names []string
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			names = append(names, r.Name)
		}
	}
	return cli.Wrong(words.New("usage.room-has", "{0} {1}: the plan has {2}", flag, named, strings.Join(names, ", ")))
}

func (r *reportRequest) write(w io.Writer, c *checked, rooms []fill.RoomReport) error {
	p := &cli.Paragraphs{Voice: c.voice}
	for _, one := range rooms {
		p.Put("", one.Sentence())
		if r.room == "" {
			continue
		}
		for _, f := range one.Found {
			p.Blank()
			if r.trade {
				p.Put("  ", rule.Trade(f))
				continue
			}
			p.Put("  ", f.Message)
			p.Put("    ", rule.Plain(f))
		}
	}
	if not := c.result.UnconfirmedText(); !not.IsZero() {
		p.Blank()
		p.Put("", not)
	}
	p.Blank()
	p.Caution()
	return p.Write(w)
}

// roomReportJSON is the report on a room as JSON.
type roomReportJSON struct {
	Room     *plan.ID `json:"room"` // null of the plan as a whole
	Name     string   `json:"name"`
	Light    string   `json:"light"` // calm, amber, red or unknown
	Settle   int      `json:"settle"`
	Look     int      `json:"look"`
	Open     int      `json:"open"`
	Notes    int      `json:"notes"`
	Sentence string   `json:"sentence"`
	Findings []string `json:"findings"` // their rules, the worst first
}

func (c *checked) reportJSON(rooms []fill.RoomReport) []roomReportJSON {
	out := []roomReportJSON{}
	for _, r := range rooms {
		one := roomReportJSON{
			Light: string(r.Light), Settle: r.Settle, Look: r.Look, Open: r.Open, Notes: r.Notes,
			Sentence: c.voice.Say(r.Sentence()), Findings: []string{},
		}
		if r.Room != nil {
			one.Room, one.Name = orNull(r.Room.ID), r.Room.Name
		}
		for _, f := range r.Found {
			one.Findings = append(one.Findings, f.Rule)
		}
		out = append(out, one)
	}
	return out
}
