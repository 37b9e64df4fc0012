package plan

import (
	"fmt"
	"slices"
	"unicode"
	"unicode/utf8"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// The bounds of counts within one noun; nothing built comes near them.
const (
	maxGangs  = 12
	maxPanels = 16
	maxItems  = 256
	maxTag    = 24 // characters
)

// checkBreak reports why a break cannot stand where it says. That it overlaps no
// other is checkApart's to see.
func (s levelSides) checkBreak(b *Break) error {
	if err := checkText(b); err != nil {
		return err
	}
	if err := wellFormed(b.ID, KindBreak); err != nil {
		return err
	}
	if err := b.checkFields(); err != nil {
		return err
	}
	if b.At.Part != PartFace {
		return refuse(ErrNoRoom, "break-part", "{0} stands in a side of a room only", b.text()).at("/at/part")
	}
	if err := s.check(stand{b.At, b.Width, b.text()}); err != nil {
		return in("/at", err)
	}
	if ceiling := s.side(b.At.Host).Room.Ceiling; b.Head > ceiling {
		return refuse(ErrNoRoom, "head", "{0} would be higher than the ceiling at {1}", b.text(), ceiling).at("/head")
	}
	return nil
}

func (b *Break) checkFields() error {
	switch {
	case !slices.Contains(BreakKinds, b.Kind):
		return refuse(nil, "break-kind", "“{0}” is no kind of door, window or passage", string(b.Kind)).at("/kind")
	case !slices.Contains([]Hand{HandUnknown, HandLeft, HandRight, HandDouble}, b.Hand):
		return refuse(nil, "hand", "{0} has an unknown hand “{1}”", b.text(), string(b.Hand)).at("/hand")
	case !slices.Contains([]Swing{SwingNone, SwingIn, SwingOut}, b.Swing):
		return refuse(nil, "swing", "{0} has an unknown swing “{1}”", b.text(), string(b.Swing)).at("/swing")
	case b.Width <= 0:
		return refuse(nil, "width", "{0} needs a width", b.text()).at("/width")
	case b.Sill < 0 || b.Head <= b.Sill:
		return refuse(nil, "sill", "{0} needs a head above its sill, and a sill not below the floor", b.text()).at("/head")
	case b.Kind == BreakSlider && len(b.Panels) == 0:
		return refuse(nil, "panels", "{0} needs its panels", b.text()).at("/panels")
	case len(b.Panels) > maxPanels:
		return refuse(nil, "panels-many", "{0} has more than {1} panels", b.text(), maxPanels).at("/panels")
	}
	for i, p := range b.Panels {
		if p != PanelFixed && p != PanelMoving {
			return refuse(nil, "panel", "{0} has an unknown panel “{1}”", b.text(), string(p)).at(fmt.Sprintf("/panels/%d", i))
		}
	}
	return notNegative(b.text(), b.Width, b.Head, b.Casing)
}

// checkApart reports which two breaks of one side overlap. Touching is fine.
func checkApart(breaks []*Break) error {
	sorted := slices.SortedFunc(slices.Values(breaks), func(a, b *Break) int {
		return int(min(max(a.At.Along-b.At.Along, -1), 1))
	})
	for i := 1; i < len(sorted); i++ {
		a, b := sorted[i-1], sorted[i]
		if a.At.Along+a.Width > b.At.Along+slack {
			r := refuse(ErrNoRoom, "overlap", "{0} would overlap {1} in the same side", b.text(), a.text()).at("/at/along")
			r.Things = []ID{a.ID, b.ID}
			return r
		}
	}
	return nil
}

// checkFixture reports why a fixture cannot stand where it says.
func (s levelSides) checkFixture(f *Fixture) error {
	if err := checkText(f); err != nil {
		return err
	}
	if err := wellFormed(f.ID, KindFixture); err != nil {
		return err
	}
	if f.Kind == "" {
		return refuse(nil, "fixture-kind", "a fixture needs a kind").at("/kind")
	}
	if f.Width <= 0 {
		return refuse(nil, "width", "{0} needs a width", f.text()).at("/width")
	}
	if f.Turn < 0 || f.Turn > 3 {
		return refuse(nil, "turn", "{0} is turned by 0 to 3 quarters, not {1}", f.text(), f.Turn).at("/turn")
	}
	if err := notNegative(f.text(), f.Bottom, f.Width, f.Depth, f.Height); err != nil {
		return err
	}
	width := f.Width
	switch f.At.Part {
	case PartFace:
	case PartCeiling, PartFloor, PartTop:
		width = 0
	default:
		return refuse(ErrNoRoom, "fixture-part", "{0} stands at a side, a floor, a ceiling or on top of a fixture", f.text()).at("/at/part")
	}
	return in("/at", s.check(stand{f.At, width, f.text()}))
}

// checkOpening reports why an opening cannot be where it says, or what is wrong with
// its own fields.
func (s levelSides) checkOpening(o *Opening) error {
	if err := checkText(o); err != nil {
		return err
	}
	if err := wellFormed(o.ID, KindOpening); err != nil {
		return err
	}
	if err := o.checkFields(); err != nil {
		return err
	}
	if err := s.check(stand{o.At, 0, o.text()}); err != nil {
		return in("/at", err)
	}
	if o.At.Part == PartFace {
		if ref := s.side(o.At.Host); ref.Side().Kind == SideOpen {
			return refuse(ErrNoRoom, "open-side", "{0} has no wall to sit in: that side of {1} is open", o.text(), ref.Room.text()).at("/at/host")
		}
	}
	return in("/height", s.checkHeight(o))
}

func (o *Opening) checkFields() error {
	switch {
	case !IsTag(o.Tag):
		return refuse(nil, "tag", "“{0}” is no tag: up to 24 characters, none of them a space", o.Tag).at("/tag")
	case o.Kind == "":
		return refuse(nil, "kind", "{0} needs a kind", o.text()).at("/kind")
	case o.Status != StatusNew && o.Status != StatusExisting && o.Status != StatusRemove:
		return refuse(nil, "status", "{0} has an unknown status “{1}”", o.text(), string(o.Status)).at("/status")
	case o.Gangs < 0 || o.Gangs > maxGangs:
		return refuse(nil, "gangs", "{0} has {1} gangs; a box has 0 to {2}", o.text(), o.Gangs, maxGangs).at("/gangs")
	}
	if err := checkDevices(o); err != nil {
		return err
	}
	if err := in("/contents", o.Contents.check(o.text())); err != nil {
		return err
	}
	return in("/assembly", o.Assembly.check(o.text()))
}

func checkDevices(o *Opening) error {
	if len(o.Devices) > maxItems {
		return refuse(nil, "devices-many", "{0} has more than {1} devices", o.text(), maxItems).at("/devices")
	}
	for i, d := range o.Devices {
		switched := d.Switched == NotSwitched || d.Switched == HalfSwitched || d.Switched == WhollySwitched
		if d.Kind == "" || !switched || d.Gangs < 0 || d.Gangs > maxGangs || !isWire(int(d.Size)) {
			return refuse(nil, "device", "device {1} of {0} has a field out of bounds", o.text(), i+1).at(fmt.Sprintf("/devices/%d", i))
		}
	}
	return nil
}

// isWire reports whether a size is none or one from 4/0 to 40.
func isWire(size int) bool { return size >= -4 && size <= 40 }

var itemKinds = []ItemKind{
	ItemCable, ItemConductor, ItemThrough, ItemLoop, ItemGround, ItemIsolatedGround,
	ItemFixtureWire, ItemCanopy, ItemDevice, ItemClamps, ItemFitting, ItemTerminalBlock,
}

func (c *Contents) check(name words.Text) error {
	if c == nil {
		return nil
	}
	if c.Source != ContentsStated && c.Source != ContentsNotKnown {
		return refuse(nil, "contents", "the contents of {0} are from an unknown source “{1}”", name, string(c.Source)).at("/source")
	}
	if len(c.Items) > maxItems {
		return refuse(nil, "items", "{0} has more than {1} lines of contents", name, maxItems).at("/items")
	}
	for i, it := range c.Items {
		counts := it.Wires >= 0 && it.Wires <= 1000 && it.Gangs >= 0 && it.Gangs <= maxGangs && it.Times >= 0 && it.Times <= 1000
		if !slices.Contains(itemKinds, it.What) || !counts || !isWire(int(it.Size)) {
			return refuse(nil, "item", "line {1} of the contents of {0} has a field out of bounds", name, i+1).at(fmt.Sprintf("/items/%d", i))
		}
	}
	return nil
}

// maxVolume bounds a marked volume: 10 000 in³.
const maxVolume = 10_000 * unit.CubicInch

func (a *Assembly) check(name words.Text) error {
	if len(a.Parts) > maxItems || len(a.Barriers) > maxItems {
		return refuse(nil, "parts", "{0} has more than {1} parts", name, maxItems).at("/parts")
	}
	marks := []*unit.Volume{a.Marked}
	for _, p := range a.Parts {
		marks = append(marks, p.Marked)
	}
	for _, m := range marks {
		if m != nil && (*m < 0 || *m > maxVolume) {
			return refuse(nil, "marked", "{0} has a marked volume out of bounds", name)
		}
	}
	return nil
}

// checkHeight holds the height between the floor and the ceiling, or between the
// bottom and the top of the fixture. The size of the box is not known here: the line
// of the box that was measured is looked at.
func (s levelSides) checkHeight(o *Opening) error {
	h, flat := o.Height, o.At.Part == PartCeiling || o.At.Part == PartFloor || o.At.Part == PartTop
	if flat && h == (Height{}) {
		return nil
	}
	if h.To != BoxCentre && h.To != BoxBottom && h.To != BoxTop || h.From != FinishedFloor && h.From != Subfloor {
		return refuse(nil, "height", "{0} needs a height: to which line of the box, from which floor", o.text())
	}
	if err := inReach(o.text(), h.Value); err != nil || flat {
		return err
	}
	room := s.room(o.At)
	low, high := unit.Length(0), room.Ceiling
	if f, ok := s.level.Fixtures.Get(o.At.Host); ok {
		low, high = f.Bottom, f.Top()
	}
	if v := h.Centre(0, room.FloorThickness()); v < low || v > high {
		return refuse(ErrNoRoom, "too-high", "{0} would sit at {1}; there is room from {2} to {3}", o.text(), words.Height(v), words.Height(low), words.Height(high)).at("/value")
	}
	return nil
}

// IsTag reports whether a text may be a tag: 1 to 24 characters, none of them a space
// or a control character.
func IsTag(tag string) bool {
	for _, r := range tag {
		if unicode.IsSpace(r) || !unicode.IsPrint(r) {
			return false
		}
	}
	n := utf8.RuneCountInString(tag)
	return n >= 1 && n <= maxTag && utf8.ValidString(tag)
}
