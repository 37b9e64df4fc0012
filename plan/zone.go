package plan

import (
	"fmt"
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Condition says whether the framing behind a face or a ceiling can be reached while the
// boxes are set: built anew, laid open, or closed for good.
type Condition string

// The conditions. Nothing said is new, where nothing that exists tells otherwise.
const (
	ConditionUnsaid Condition = ""
	ConditionNew    Condition = "new"
	ConditionOpened Condition = "opened"
	ConditionClosed Condition = "closed"
)

// Conditions are all of them.
var Conditions = []Condition{ConditionUnsaid, ConditionNew, ConditionOpened, ConditionClosed}

// Text returns the condition, as people say it.
func (c Condition) Text() words.Text {
	switch c {
	case ConditionNew:
		return words.New("condition.new", "new")
	case ConditionOpened:
		return words.New("condition.opened", "opened")
	case ConditionClosed:
		return words.New("condition.closed", "stays closed")
	}
	return words.New("condition.unsaid", "not said")
}

// Zone is a part of a face from one place along it to another that is in a condition of
// its own, and may have layers and framing of its own: a patch, a tile surround, wainscot.
type Zone struct {
	From      unit.Length `json:"from"`
	To        unit.Length `json:"to"`
	Condition Condition   `json:"condition"`
	Finish    []Layer     `json:"finish,omitempty"` // none: that of the face
	Depth     unit.Length `json:"depth,omitempty"`  // of the studs; 0: that of the face
	// Spacing is that of its own studs on center, the first one spacing from its left end; 0:
	// those of the face go on through it.
	Spacing unit.Length `json:"spacing,omitempty"`
}

// ZoneAt returns the zone of a place along the side. Of two that meet there it is the one
// at the right. It is nil where there is none.
func (s *Side) ZoneAt(along unit.Length) *Zone {
	for i := range s.Zones {
		if z := &s.Zones[i]; z.From <= along && (along < z.To || along == z.To && (i+1 == len(s.Zones) || s.Zones[i+1].From > along)) {
			return z
		}
	}
	return nil
}

// ConditionAt returns the condition of a place along the side.
func (s *Side) ConditionAt(along unit.Length) Condition {
	if z := s.ZoneAt(along); z != nil {
		return z.Condition
	}
	return s.Condition
}

// StandsAt reports whether the wall stood before the work at a place along the side: it stays
// closed there, or was opened.
func (s *Side) StandsAt(along unit.Length) bool {
	c := s.ConditionAt(along)
	return c == ConditionClosed || c == ConditionOpened
}

// IsClosedAnywhere reports whether a part of the side, or all of it, stays closed.
func (s *Side) IsClosedAnywhere() bool {
	return s.Condition == ConditionClosed || slices.ContainsFunc(s.Zones, func(z Zone) bool { return z.Condition == ConditionClosed })
}

// IsClosedAnywhere reports whether a wall of the room, a part of one or its ceiling stays closed.
func (r *Room) IsClosedAnywhere() bool {
	return r.Overhead == ConditionClosed || slices.ContainsFunc(r.Sides, (*Side).IsClosedAnywhere)
}

// At returns the side with the layers and the framing that it has at a place along it.
func (s *Side) At(along unit.Length) *Side {
	z := s.ZoneAt(along)
	if z == nil || len(z.Finish) == 0 && z.Depth == 0 && z.Spacing == 0 {
		return s
	}
	there := *s
	if len(z.Finish) > 0 {
		there.Finish = z.Finish
	}
	if z.Depth > 0 {
		there.Studs.Depth = z.Depth
	}
	if z.Spacing > 0 {
		there.Studs.Spacing = z.Spacing
	}
	return &there
}

// Lath is what plaster is keyed to.
type Lath string

// The laths.
const (
	NoLath    Lath = ""
	WoodLath  Lath = "wood"
	MetalLath Lath = "metal"
)

// Probe is a part of a bay that somebody has looked into: blocked by a fire block, a brace,
// a pipe or a duct, or proven clear by a pilot hole.
type Probe struct {
	From   unit.Length `json:"from"`
	To     unit.Length `json:"to"`
	Bottom unit.Length `json:"bottom,omitempty"`
	Top    unit.Length `json:"top,omitempty"` // 0: as high as the wall
	Clear  bool        `json:"clear,omitempty"`
	What   string      `json:"what,omitempty"` // in the way
}

// Trim is what runs along a face and takes its place from plates: a baseboard, a chair rail.
type Trim struct {
	Name     string      `json:"name"`
	Bottom   unit.Length `json:"bottom,omitempty"` // above the finished floor
	Height   unit.Length `json:"height"`
	Thick    unit.Length `json:"thick,omitempty"`    // how far it stands out from the face; 0: not known
	Measured bool        `json:"measured,omitempty"` // else assumed
}

// Holds reports whether what goes from one height above the finished floor to another lies
// on the trim whole.
func (t Trim) Holds(bottom, top unit.Length) bool {
	return t.Bottom <= bottom && top <= t.Bottom+t.Height
}

// maxZones bounds the zones, probes and trims of one face.
const maxZones = 64

func checkZones(room words.Text, s *Side) error {
	if len(s.Zones) > maxZones || len(s.Probes) > maxZones || len(s.Trim) > maxZones {
		return Refuse(nil, "zones-many", "a face of {0} has more than {1} zones, probed places or trims", room, maxZones)
	}
	if !isCondition(s.Condition) {
		return Refuse(nil, "condition", "a face of {0} is in an unknown condition “{1}”", room, string(s.Condition)).At("/condition")
	}
	for i, z := range s.Zones {
		path := fmt.Sprintf("/zones/%d", i)
		switch {
		case z.From < 0 || z.To <= z.From || i > 0 && z.From < s.Zones[i-1].To:
			return Refuse(nil, "zone-order", "the zones of a face of {0} do not follow each other from left to right", room).At(path)
		case z.Condition == ConditionUnsaid || !isCondition(z.Condition):
			return Refuse(nil, "zone-condition", "a zone of {0} is new, opened or closed, not “{1}”", room, string(z.Condition)).At(path + "/condition")
		}
		if err := firstOf(CheckReach(room, z.To), notNegative(room, z.Depth, z.Spacing), checkLayers(room, z.Finish)); err != nil {
			return In(path, err)
		}
	}
	for i, p := range s.Probes {
		if p.From < 0 || p.To <= p.From || p.To > Reach || p.Bottom < 0 || p.Top != 0 && (p.Top <= p.Bottom || p.Top > Reach) {
			return Refuse(nil, "probe", "a probed place of {0} ends before it begins", room).At(fmt.Sprintf("/probes/%d", i))
		}
	}
	for i, t := range s.Trim {
		if t.Height <= 0 || t.Bottom < 0 || t.Thick < 0 || max(t.Bottom, t.Height, t.Thick) > Reach {
			return Refuse(nil, "trim", "a trim of {0} has a size out of bounds", room).At(fmt.Sprintf("/trim/%d", i))
		}
	}
	return nil
}

func isCondition(c Condition) bool {
	switch c {
	case ConditionUnsaid, ConditionNew, ConditionOpened, ConditionClosed:
		return true
	}
	return false
}

// Condition is what the ceiling and all faces of the room have in common, not said where they
// differ. It looks at no zones.
func (r Room) Condition() Condition {
	for _, s := range r.Sides {
		if s.Condition != r.Overhead {
			return ConditionUnsaid
		}
	}
	return r.Overhead
}

// Laths are all of them.
var Laths = []Lath{NoLath, WoodLath, MetalLath}

// Text returns what plaster is keyed to, as people say it.
func (l Lath) Text() words.Text {
	switch l {
	case WoodLath:
		return words.New("lath.wood", "wood lath")
	case MetalLath:
		return words.New("lath.metal", "metal lath")
	}
	return words.New("lath.none", "no lath")
}
