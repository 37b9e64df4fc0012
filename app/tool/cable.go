package tool

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
)

// cable draws cables from opening to opening, on from each to the next.
type cable struct {
	from  plan.ID
	last  Pointer
	known bool
}

var _ Tool = (*cable)(nil)

func (*cable) ID() string { return "cable" }

func (c *cable) Hint() words.Text {
	if c.from == "" {
		return words.New("tool.cable.hint", "Click the opening or the panel a cable comes from")
	}
	return words.New("tool.cable.hint-to", "Click the opening it goes to; Esc ends the run")
}

// end returns the opening or panel that is pointed at.
func (c *cable) end(t Table) (plan.ID, geom.Point, bool) {
	id := pick(t, c.last)
	if o, _ := t.Plan().Opening(id); o != nil {
		place, ok := t.Index().Place(o.At)
		return id, place.Foot, ok
	}
	if f, _ := t.Plan().Fixture(id); f != nil && f.Kind == plan.FixturePanel {
		outline, ok := t.Index().Footprint(f)
		return id, outline.Centroid(), ok
	}
	return "", geom.Point{}, false
}

// footOf returns where a cable begins or ends: at an opening or panel of the level.
func footOf(t Table, id plan.ID) (geom.Point, bool) {
	if o, level := t.Plan().Opening(id); o != nil && level.ID == t.Level() {
		place, ok := t.Index().Place(o.At)
		return place.Foot, ok
	}
	if f, level := t.Plan().Fixture(id); f != nil && level.ID == t.Level() {
		outline, ok := t.Index().Footprint(f)
		return outline.Centroid(), ok
	}
	return geom.Point{}, false
}

// mostRuns bounds how many cables are shown at once.
const mostRuns = 60

// runs lists the cables about the pointer as straight lines from end to end.
func (c *cable) runs(t Table) (lines []geom.Segment) {
	seen := map[plan.ID]bool{}
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(c.last.At).Expand(lookAround)) {
		for _, k := range t.Index().CablesAt(id) {
			a, okA := footOf(t, k.From)
			b, okB := footOf(t, k.To)
			if !seen[k.ID] && okA && okB && len(lines) < mostRuns {
				lines = append(lines, geom.Segment{A: a, B: b})
			}
			seen[k.ID] = true
		}
	}
	return lines
}

func (c *cable) Down(t Table, p Pointer) {
	c.last, c.known = p, true
	id, _, ok := c.end(t)
	switch {
	case !ok:
		t.Say(words.New("tool.cable.nothing", "There is no opening here: click on a symbol"))
		return
	case c.from == "":
		c.from = id
	case id == c.from:
		return
	case id.Kind() != plan.KindOpening:
		t.Say(words.New("tool.cable.to-panel", "A cable starts at the panel and ends in an opening"))
		return
	default:
		c.run(t, id)
	}
	t.Select(id)
	c.show(t)
}

// run adds the cable: like the one that comes in, else as the kind of its end is
// usually wired.
func (c *cable) run(t Table, to plan.ID) {
	made := plan.Cable{ID: t.NewID(plan.KindCable), From: c.from, To: to, Size: 12, Wires: 2, Ground: true}
	end, _ := t.Plan().Opening(to)
	if end != nil {
		asUsual(&made, end)
	}
	if before := t.Index().CablesAt(c.from); len(before) > 0 && c.from.Kind() == plan.KindOpening {
		b := before[0]
		made.Size, made.Wires, made.Ground, made.Circuit = b.Size, b.Wires, b.Ground, b.Circuit
	}
	if end != nil && made.Circuit == "" {
		made.Circuit = end.Circuit
	}
	if t.Do(plan.AddCable{Cable: made}) == nil {
		c.from = to
	}
}

func (c *cable) Move(t Table, p Pointer) {
	c.last, c.known = p, true
	c.show(t)
}

func (*cable) Up(Table, Pointer) {}

func (*cable) Type(Table, Key) bool { return false }

func (c *cable) Cancel(t Table) bool {
	if c.from == "" {
		return false
	}
	c.from = ""
	c.show(t)
	return true
}

func (c *cable) Leave(t Table) {
	*c = cable{}
	t.Preview(Preview{})
}

func (c *cable) show(t Table) {
	p := Preview{Cursor: CursorCross, Faint: c.runs(t)}
	at := c.last.At
	if id, foot, ok := c.end(t); ok {
		at, p.SnapAt, p.Cursor = foot, &foot, CursorHand
		if o, _ := t.Plan().Opening(id); o != nil {
			p.Snap = words.New("plain", "{0}", o.Tag)
		}
	}
	if from, ok := footOf(t, c.from); ok && c.known {
		p.Lines = []geom.Segment{{A: from, B: at}}
	}
	t.Preview(p)
}
