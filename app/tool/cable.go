package tool

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/words"
)

// cable draws what is wired: cables from opening to opening, on from each to the next,
// and which switches serve which lights.
type cable struct {
	sort  string  // of cable, or controlSort
	from  plan.ID // a cable comes from it
	lead  plan.ID // the switch whose loads are clicked
	made  plan.ID // their control, once there is one
	last  Pointer
	known bool
}

var (
	_ Tool    = (*cable)(nil)
	_ Chooser = (*cable)(nil)
)

func (*cable) ID() string { return "cable" }

func (c *cable) Hint(Window) words.Text {
	switch {
	case c.sort == controlSort && c.lead == "":
		return words.New("tool.control.hint", "Click a switch; then the lights, fans or receptacles it serves")
	case c.sort == controlSort:
		return words.New("tool.control.hint-to", "Click what the switch serves, or a second switch for the same; a second click removes it, Esc ends")
	case c.from == "":
		return words.New("tool.cable.hint", "Click where a cable comes from: a panel or an opening; or a cable, which Del deletes and [ ] resizes")
	}
	return words.New("tool.cable.hint-to", "Click the opening the cable goes to; [ ] selects another size, Esc ends the run")
}

// Choose implements Chooser. What is unfinished is dropped.
func (c *cable) Choose(id string) { *c = cable{sort: id, last: c.last, known: c.known} }

// end returns the opening or panel that is pointed at.
func (c *cable) end(t Window) (plan.ID, geom.Point, bool) {
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
func footOf(t Window, id plan.ID) (geom.Point, bool) {
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

func (c *cable) Down(t Window, p Pointer) {
	c.last, c.known = p, true
	id, _, ok := c.end(t)
	switch {
	case !ok && c.from == "" && c.lead == "" && p.Line != "":
		t.Select(p.Line)
	case !ok:
		t.Refuse(words.New("tool.cable.nothing", "There is no opening here: click a symbol"))
	case c.sort == controlSort:
		c.control(t, id)
	default:
		c.goOn(t, id)
	}
	c.show(t)
}

// goOn begins a cable at what was clicked, or ends one there and begins the next.
func (c *cable) goOn(t Window, id plan.ID) {
	switch {
	case c.from == "":
		c.from = id
	case id == c.from:
		return
	case id.Kind() != plan.KindOpening:
		t.Refuse(words.New("tool.cable.to-panel", "A cable starts at the panel and ends in an opening"))
		return
	default:
		c.run(t, id)
	}
	t.Select(id)
}

// run adds the cable: of the size chosen, else like the one that comes in, else as the
// kind of its end is usually wired.
func (c *cable) run(t Window, to plan.ID) {
	made := plan.Cable{ID: t.NewID(plan.KindCable), From: c.from, To: to, Size: 12, Wires: 2, Ground: true}
	end, _ := t.Plan().Opening(to)
	if end != nil {
		asUsual(&made, end)
	}
	if before := t.Index().CablesAt(c.from); len(before) > 0 && c.from.Kind() == plan.KindOpening {
		b := before[0]
		made.Size, made.Wires, made.Ground, made.Circuit = b.Size, b.Wires, b.Ground, b.Circuit
	}
	if s, ok := sortOf(c.sort); ok {
		made.Size, made.Wires, made.Ground = s.size, s.wires, true
	}
	if end != nil && made.Circuit == "" {
		made.Circuit = end.Circuit
	}
	if t.Do(edit.Add{Thing: &made}) == nil {
		c.from = to
	}
}

func (c *cable) Move(t Window, p Pointer) {
	c.last, c.known = p, true
	c.show(t)
}

func (*cable) Up(Window, Pointer) {}

func (c *cable) Type(t Window, k Key) bool {
	switch {
	case k.Name == "Enter" && (c.from != "" || c.lead != ""):
		return c.Cancel(t)
	case k.Rune == '[' || k.Rune == ']':
		c.step(t, int(k.Rune-'\\'))
	default:
		return false
	}
	c.show(t)
	return true
}

// step takes the sort before or after; the chosen cable becomes one of it.
func (c *cable) step(t Window, by int) {
	if chosen := t.Selection(); len(chosen) == 1 && c.from == "" {
		if k, ok := t.Plan().Cables.Get(chosen[0]); ok {
			s := cableSorts[(sortAt(k)+by+len(cableSorts))%len(cableSorts)]
			now := *k
			now.Size, now.Wires = s.size, s.wires
			t.Do(edit.Change{Thing: &now})
			return
		}
	}
	from := c.from
	c.Choose(step(c.Choices(), c.Choice(), by))
	if c.sort != controlSort {
		c.from = from
	}
}

func (c *cable) Cancel(t Window) bool {
	if c.from == "" && c.lead == "" {
		return false
	}
	c.from, c.lead, c.made = "", "", ""
	c.show(t)
	return true
}

func (c *cable) Leave(t Window) {
	*c = cable{sort: c.sort}
	t.Preview(Preview{})
}

func (c *cable) show(t Window) {
	p := Preview{Cursor: CursorCross, Cables: c.sort != controlSort}
	at := c.last.At
	if id, foot, ok := c.end(t); ok {
		at, p.SnapAt, p.Cursor = foot, &foot, CursorHand
		if o, _ := t.Plan().Opening(id); o != nil {
			p.Snap = words.New("plain", "{0}", o.Tag)
		}
	} else if c.last.Line != "" {
		p.Cursor = CursorHand
	}
	from := c.from
	if c.sort == controlSort {
		from = c.lead
	}
	if from, ok := footOf(t, from); ok && c.known {
		p.Lines = []geom.Segment{{A: from, B: at}}
	}
	if name, ok := c.name(t); ok {
		p.Snap = both(p.Snap, name)
	}
	t.Preview(p)
}

// name says what is drawn, such as cable 12/2 or control b.
func (c *cable) name(t Window) (words.Text, bool) {
	if k, ok := t.Plan().Controls.Get(c.made); ok {
		return words.New("snap.control", "control {0}", k.Letter), true
	}
	if s, ok := sortOf(c.sort); ok && c.from != "" {
		return s.text(), true
	}
	return words.Text{}, false
}
