package verb

import (
	"cmp"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// frameRequest is what was asked for on the command line.
type frameRequest struct {
	cli.Speaker
	room string
	json bool
	// sticks asks for gauge sticks in place of openings.
	sticks bool
	toStuds
}

func frameCommand(s cli.Speaker) *cobra.Command {
	r := &frameRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "frame FILE",
		Short: s.Tell("verb.frame", "Say between which studs each box stands and how it is held"),
		Long: s.Long("verb.frame.long", `Frame lists the openings of a plan, a row each: the studs that bound the bay of the box,
by their near faces, how the box is held, the block to cut where it reaches no stud, how
far it is set proud of the studs and the rings that end where they may. Places are from
the left end of the face as seen standing in the room, heights above the finished floor;
those of joists from the wall that they run beside. A box of three gangs or more on one
stud has the block of its far side beside that.
Studs that are assumed stand where a spacing puts them: verify them with a tape.

With --to-studs it lists how nail-on and bracket boxes that reach no stud would move to
the nearest side of one, where no check finds more than before. The plan stays as it is;
with --to as well another is written in which they are moved.`),
		Example: `  studbay frame cottage.studbay
  studbay frame cottage.studbay --room Bath
  studbay frame cottage.studbay --json
  studbay frame cottage.studbay --to-studs 8in --to moved.studbay`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.room, "room", "", s.Tell("flag.frame.room", "only the room `R`, a name or an ID"))
	f.BoolVar(&r.sticks, "sticks", false, s.Tell("flag.frame.sticks", "list the gauge sticks of each level, which set boxes and blocks of one height"))
	f.StringVar(&r.reach, "to-studs", "", s.Tell("flag.frame.to-studs", "list the moves that bring boxes to the studs, none farther than the `REACH`"))
	f.StringVar(&r.to, "to", "", s.Tell("flag.frame.to", "write a plan in which those moves are made to the `FILE`, which ends in .studbay"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *frameRequest) run(c *cobra.Command, path string) error {
	if err := r.check(c); err != nil {
		return err
	}
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	rows, known := p.framed(r.room)
	if !known {
		return cli.Wrong(words.New("usage.room-plan-has", "--room {0}: the plan has no such room", r.room))
	}
	if c.Flags().Changed("to-studs") {
		return r.toStuds.run(c.OutOrStdout(), p, rows, r.json)
	}
	if r.sticks {
		if r.json {
			return cli.WriteJSON(c.OutOrStdout(), sticksJSON{p.sticks()})
		}
		return p.writeSticks(c.OutOrStdout())
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), framesJSON{rows})
	}
	return p.writeFrames(c.OutOrStdout(), rows)
}

type framesJSON struct {
	Rows []frameRow `json:"rows"`
}

// frameRow is how one opening stands in its wall. What does not apply is null.
type frameRow struct {
	Tag          string          `json:"tag"`
	Wall         *string         `json:"wall"`
	Layout       string          `json:"layout"`
	LeftStud     *quantityJSON   `json:"left_stud"`
	RightStud    *quantityJSON   `json:"right_stud"`
	Held         *string         `json:"held"`
	BlockLength  *quantityJSON   `json:"block_length"`
	BlockSetBack *quantityJSON   `json:"block_set_back"`
	BlockTop     *quantityJSON   `json:"block_top"`
	BlockBottom  *quantityJSON   `json:"block_bottom"`
	SetProud     *quantityJSON   `json:"box_set_proud"`
	Rings        []*quantityJSON `json:"rings_that_pass"`
}

// framed returns a row for each opening of a room, by its name or ID, or of all rooms: room
// by room, by tag. It reports false where there is no such room.
func (c *checked) framed(room string) (rows []frameRow, known bool) {
	rows, known = []frameRow{}, room == ""
	for _, l := range c.plan.Levels {
		byRoom := map[plan.ID][]*plan.Opening{}
		for o := range l.Openings.All() {
			if place, ok := c.index.Place(o.At); ok && place.Room != nil && !o.IsGone() {
				byRoom[place.Room.ID] = append(byRoom[place.Room.ID], o)
			}
		}
		for _, r := range byName(l) {
			if room != "" && room != string(r.ID) && !strings.EqualFold(room, r.Name) {
				continue
			}
			known = true
			openings := byRoom[r.ID]
			slices.SortFunc(openings, func(a, b *plan.Opening) int { return plan.CompareTags(a.Tag, b.Tag) })
			for _, o := range openings {
				rows = append(rows, c.frameRow(r, o))
			}
		}
	}
	return rows, known
}

// byName returns the rooms of a level by their names.
func byName(l *plan.Level) []*plan.Room {
	return slices.SortedStableFunc(l.Rooms.All(), func(a, b *plan.Room) int { return cmp.Compare(a.Name, b.Name) })
}

func (c *checked) frameRow(room *plan.Room, o *plan.Opening) frameRow {
	row := frameRow{Tag: o.Tag, Rings: []*quantityJSON{}}
	i := -1
	if o.At.Part == plan.PartFace {
		i = room.SideAt(o.At.Host)
	}
	if i < 0 {
		h := frame.HoldIn(o, room)
		if h.HasBay {
			under := c.voice.Say(schedule.UnderJoists(c.index, room))
			row.Wall = &under
		}
		c.tell(&row, h)
		return row
	}
	wall := c.voice.Say(schedule.Wall(c.index, room, o.At.Host))
	row.Wall = &wall
	f, _ := frame.FaceOf(c.index, o.At.Host)
	side := frame.FaceAt(room.Sides[i], room, o)
	row.SetProud = c.length(frame.SetProud(side))
	for _, raise := range frame.RingsPassing(o, side, c.result.Figures.Build.SetBack) {
		row.Rings = append(row.Rings, c.length(raise))
	}
	c.tell(&row, f.Framed().HoldOn(o, room))
	return row
}

// tell fills in between what the box is and how it is held.
func (c *checked) tell(row *frameRow, h frame.Hold) {
	row.Layout, row.Held = string(h.State), orNull(string(h.By))
	if h.HasBay && h.Bay.Left != nil {
		row.LeftStud = c.length(h.Bay.From)
	}
	if h.HasBay && h.Bay.Right != nil {
		row.RightStud = c.length(h.Bay.To)
	}
	if b := h.Block; b != nil {
		row.BlockLength = c.length(b.Length)
		if !b.IsOverhead {
			row.BlockSetBack, row.BlockTop, row.BlockBottom = c.length(b.SetBack), c.length(b.Top), c.length(b.Bottom)
		}
	} else if h.FarSide > 0 {
		row.BlockLength = c.length(h.FarSide)
	}
}

func (c *checked) length(l unit.Length) *quantityJSON {
	return &quantityJSON{schedule.Decimal(l, c.voice.System), schedule.DecimalUnit(c.voice.System)}
}

// frameColumns are the titles of the table for people.
var frameColumns = []words.Text{
	words.New("frame.tag", "Tag"), words.New("frame.wall", "Wall"), words.New("frame.layout", "Studs"),
	words.New("frame.left", "Left"), words.New("frame.right", "Right"), words.New("frame.held", "Held"),
	words.New("frame.block", "Block"), words.New("frame.back", "Set back"), words.New("frame.bottom", "Bottom"),
	words.New("frame.top", "Top"), words.New("frame.proud", "Proud"), words.New("frame.rings", "Rings"),
}

func (c *checked) writeFrames(w io.Writer, rows []frameRow) error {
	lines := [][]string{nil}
	right := make([]bool, len(frameColumns))
	for i, title := range frameColumns {
		lines[0] = append(lines[0], c.voice.Say(title))
		right[i] = i == 3 || i == 4 || i >= 6 && i <= 10
	}
	text := func(s *string) string {
		if s == nil {
			return ""
		}
		return *s
	}
	length := func(q *quantityJSON) string {
		if q == nil {
			return ""
		}
		return q.Value
	}
	for _, r := range rows {
		var rings []string
		for _, raise := range r.Rings {
			rings = append(rings, raise.Value)
		}
		lines = append(lines, []string{
			r.Tag, text(r.Wall), c.voice.Say(schedule.StudState(plan.StudState(r.Layout))), length(r.LeftStud), length(r.RightStud), c.voice.Say(schedule.Held(frame.Way(text(r.Held)))),
			length(r.BlockLength), length(r.BlockSetBack), length(r.BlockBottom), length(r.BlockTop), length(r.SetProud), strings.Join(rings, " "),
		})
	}
	_, err := io.WriteString(w, aligned(lines, right))
	return err
}
