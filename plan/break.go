package plan

import (
	"cmp"
	"fmt"
	"slices"

	"studbay/plan/unit"
)

// BreakKind says what interrupts a side.
type BreakKind string

// The kinds of break.
const (
	BreakDoor      BreakKind = "door"
	BreakSlider    BreakKind = "slider"
	BreakWindow    BreakKind = "window"
	BreakPassage   BreakKind = "passage" // cased, without a door
	BreakFireplace BreakKind = "fireplace"
)

// BreakKinds lists the kinds in the order a user sees.
var BreakKinds = []BreakKind{BreakDoor, BreakSlider, BreakPassage, BreakWindow, BreakFireplace}

// IsDoorway reports whether one walks through it: it does where it reaches the floor.
func (k BreakKind) IsDoorway() bool {
	return k == BreakDoor || k == BreakSlider || k == BreakPassage
}

// Hand says at which end of a door its hinges are, as seen from the room of its
// host side.
type Hand string

// The hands. The empty hand is not known yet: an open decision.
const (
	HandUnknown Hand = ""
	HandLeft    Hand = "left"
	HandRight   Hand = "right"
	HandDouble  Hand = "double"
)

// Swing says where a door's leaf goes.
type Swing string

// The swings, as seen from the room of the host side.
const (
	SwingIn   Swing = "in"
	SwingOut  Swing = "out"
	SwingNone Swing = "" // pocket, barn or bifold, or not known
)

// Panel is one panel of a slider.
type Panel string

// The panels of a slider, listed from its left end.
const (
	PanelFixed  Panel = "fixed"
	PanelMoving Panel = "moving"
)

// Break is a door, slider, window, passage or fireplace in a side. Its anchor's
// Along is its left end; a break between two rooms is stored on one side and cuts
// both.
type Break struct {
	ID     ID          `json:"id"`
	Kind   BreakKind   `json:"kind"`
	At     Anchor      `json:"at"`
	Width  unit.Length `json:"width"`
	Head   unit.Length `json:"head"`           // height of its top above the finished floor
	Sill   unit.Length `json:"sill,omitempty"` // height of its foot above the finished floor
	Hand   Hand        `json:"hand,omitempty"`
	Swing  Swing       `json:"swing,omitempty"`
	Panels []Panel     `json:"panels,omitempty"`
	Casing unit.Length `json:"casing,omitempty"` // width of the trim round it
	// CasingMeasured tells that the width of trim that stands already was measured; else it is
	// assumed. From version 1.1 on.
	CasingMeasured bool  `json:"casingMeasured,omitempty"`
	From           ID    `json:"from,omitempty"` // another thing on its face that its distance is told from; from version 1.1 on
	Rough          Rough `json:"rough,omitzero"` // what of its framing is not as usual
	// Vehicle tells the door of a garage that cars pass; from version 1.1 on, as is grade.
	Vehicle bool   `json:"vehicle,omitempty"`
	Grade   Grade  `json:"grade,omitempty"`
	Fuel    string `json:"fuel,omitempty"` // what a fireplace burns; empty: nothing. From version 1.1 on
	Note    string `json:"note,omitempty"`
	Extra   Extra  `json:"-"`
}

// Grade says whether one steps from a door onto the ground. The empty grade is not said:
// a door to the outdoors is at grade on the lowest level that is no basement.
type Grade string

// The grades.
const (
	GradeUnsaid Grade = ""
	AtGrade     Grade = "at"
	AboveGrade  Grade = "above"
)

// Rough is the framing round a break where it is not the usual of its kind. A nil length
// is as usual.
type Rough struct {
	Side   *unit.Length `json:"side,omitempty"`   // how much wider the rough opening is, at each side
	Top    *unit.Length `json:"top,omitempty"`    // how much higher
	Bottom *unit.Length `json:"bottom,omitempty"` // how much lower, under a sill
}

// Key returns the break's ID.
func (b *Break) Key() ID { return b.ID }

// PanelAt returns the ends of the i-th panel from the break's left end. Panels are
// of equal width, and their widths add up to the whole.
func (b *Break) PanelAt(i int) (from, to unit.Length) {
	n := unit.Length(len(b.Panels))
	return b.Width * unit.Length(i) / n, b.Width * unit.Length(i+1) / n
}

// withBreak returns the plan with the break where its anchor says.
func (p Plan) withBreak(b *Break) (Plan, error) {
	l, err := p.home(b.At, b.text())
	if err != nil {
		return Plan{}, err
	}
	if err := checkFrom(b.From, p.Has, b.text()); err != nil {
		return Plan{}, err
	}
	if _, from := p.Break(b.ID); from != nil && from != l {
		p = p.on(from, func(l *Level) { l.Breaks = l.Breaks.Without(b.ID) })
	}
	p = p.on(l, func(l *Level) { l.Breaks = l.Breaks.With(b) })
	now := p.Level(l.ID)
	if err := (levelSides{level: now}).checkBreak(b); err != nil {
		return Plan{}, err
	}
	if err := checkApart(breaksOn(now, b.At.Host)); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// breaksOn returns the breaks of one side.
func breaksOn(l *Level, side ID) (found []*Break) {
	return slices.DeleteFunc(slices.Collect(l.Breaks.All()), func(b *Break) bool { return b.At.Host != side })
}

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
		return Refuse(ErrNoRoom, "break-part", "{0} stands in a side of a room only", b.text()).At("/at/part")
	}
	if err := s.check(stand{b.At, b.Width, b.text()}); err != nil {
		return In("/at", err)
	}
	if ceiling := s.side(b.At.Host).Room.Ceiling; b.Head > ceiling {
		return Refuse(ErrNoRoom, "head", "{0} would be higher than the ceiling at {1}", b.text(), ceiling).At("/head")
	}
	return nil
}

func (b *Break) checkFields() error {
	switch {
	case !slices.Contains(BreakKinds, b.Kind):
		return Refuse(nil, "break-kind", "“{0}” is not a kind of door, window or cased opening", string(b.Kind)).At("/kind")
	case !slices.Contains([]Hand{HandUnknown, HandLeft, HandRight, HandDouble}, b.Hand):
		return Refuse(nil, "hand", "{0} has an unknown hand “{1}”", b.text(), string(b.Hand)).At("/hand")
	case !slices.Contains([]Swing{SwingNone, SwingIn, SwingOut}, b.Swing):
		return Refuse(nil, "swing", "{0} has an unknown swing “{1}”", b.text(), string(b.Swing)).At("/swing")
	case !slices.Contains([]Grade{GradeUnsaid, AtGrade, AboveGrade}, b.Grade):
		return Refuse(nil, "grade", "{0} has an unknown grade “{1}”", b.text(), string(b.Grade)).At("/grade")
	case b.Width <= 0:
		return Refuse(nil, "width", "{0} needs a width", b.text()).At("/width")
	case b.Sill < 0 || b.Head <= b.Sill:
		return Refuse(nil, "sill", "{0} needs a head above its sill, and a sill not below the floor", b.text()).At("/head")
	case b.Kind == BreakSlider && len(b.Panels) == 0:
		return Refuse(nil, "panels", "{0} needs its panels", b.text()).At("/panels")
	case len(b.Panels) > maxPanels:
		return Refuse(nil, "panels-many", "{0} has more than {1} panels", b.text(), maxPanels).At("/panels")
	}
	for i, p := range b.Panels {
		if p != PanelFixed && p != PanelMoving {
			return Refuse(nil, "panel", "{0} has an unknown panel “{1}”", b.text(), string(p)).At(fmt.Sprintf("/panels/%d", i))
		}
	}
	for _, l := range []*unit.Length{b.Rough.Side, b.Rough.Top, b.Rough.Bottom} {
		if l == nil {
			continue
		}
		if err := notNegative(b.text(), *l); err != nil {
			return In("/rough", err)
		}
	}
	return notNegative(b.text(), b.Width, b.Head, b.Casing)
}

// checkApart reports which two breaks of one side overlap. Touching is fine.
func checkApart(breaks []*Break) error {
	sorted := slices.SortedFunc(slices.Values(breaks), func(a, b *Break) int { return cmp.Compare(a.At.Along, b.At.Along) })
	for i := 1; i < len(sorted); i++ {
		a, b := sorted[i-1], sorted[i]
		if a.At.Along+a.Width > b.At.Along+Slack {
			r := Refuse(ErrNoRoom, "overlap", "{0} would overlap {1} in the same side", b.text(), a.text()).At("/at/along")
			r.Things = []ID{a.ID, b.ID}
			return r
		}
	}
	return nil
}
