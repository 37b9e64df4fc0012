package plan

import (
	"errors"
	"fmt"
	"unicode"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// maxSides bounds the sides of a room; no room comes near.
const maxSides = 512

// MaxBays bounds the vehicle bays of a garage.
const MaxBays = 20

// maxLayers bounds the layers of a finish or floor.
const maxLayers = 64

// Check reports what is wrong with a room by itself: its outline, its ceiling, its
// sides' own fields. It looks at no other noun.
func (r *Room) Check() error {
	if err := checkText(r); err != nil {
		return err
	}
	if err := wellFormed(r.ID, KindRoom); err != nil {
		return err
	}
	if err := checkOutline(r); err != nil {
		return err
	}
	if r.Ceiling <= 0 || r.Ceiling > Reach {
		return Refuse(nil, "ceiling", "{0} needs a ceiling above its floor", r.text()).At("/ceiling")
	}
	if r.Bays < 0 || r.Bays > MaxBays {
		return Refuse(nil, "bays", "{0} has {1} vehicle bays; a garage has 1 to {2}", r.text(), r.Bays, MaxBays).At("/bays")
	}
	if r.Faces != FacesUnsaid && r.Faces != FacesFront && r.Faces != FacesBack {
		return Refuse(nil, "faces", "{0} faces “front” or “back”, not “{1}”", r.text(), string(r.Faces)).At("/faces")
	}
	if !isCondition(r.Overhead) {
		return Refuse(nil, "overhead", "the ceiling of {0} is in an unknown condition “{1}”", r.text(), string(r.Overhead)).At("/overhead")
	}
	if !IsPrefix(r.Prefix) {
		return Refuse(nil, "prefix", "“{0}” is not a tag prefix: up to 8 letters, digits or dashes that do not end in a digit", r.Prefix).At("/prefix")
	}
	if err := checkLayers(r.text(), r.Floor); err != nil {
		return In("/floor", err)
	}
	if err := notNegative(r.text(), r.Joists.Spacing, r.Joists.First, r.Joists.Depth); err != nil {
		return In("/joists", err)
	}
	for i, s := range r.Sides {
		if err := s.Check(r.text()); err != nil {
			return In(fmt.Sprintf("/sides/%d", i), err)
		}
	}
	return nil
}

func checkOutline(r *Room) error {
	if len(r.Sides) > maxSides {
		return Refuse(nil, "sides", "{0} has more than {1} sides", r.text(), maxSides).At("/sides")
	}
	seen := make(map[ID]bool, len(r.Sides))
	for i, s := range r.Sides {
		if s == nil || seen[s.ID] {
			return Refuse(ErrTaken, "side-twice", "{0} has a side that is empty or stands twice", r.text()).At(fmt.Sprintf("/sides/%d", i))
		}
		seen[s.ID] = true
		if err := CheckReach(r.text(), s.Start.X, s.Start.Y); err != nil {
			return In(fmt.Sprintf("/sides/%d/start", i), err)
		}
	}
	outline := r.Outline()
	if err := outline.Check(); err != nil {
		return outlineRefusal(r, err)
	}
	if !outline.IsClockwise() {
		return Refuse(ErrNoRoom, "turned", "{0} would turn inside out", r.text()).At("/sides")
	}
	return nil
}

// outlineRefusal puts what is wrong with an outline in words.
func outlineRefusal(r *Room, err error) error {
	var flaw *geom.PolygonError
	if !errors.As(err, &flaw) {
		return err
	}
	out := Refuse(ErrNoRoom, "outline", "{0} has an outline that cannot be built", r.text())
	switch flaw.Flaw {
	case geom.TooFewCorners:
		out = Refuse(ErrNoRoom, "outline.few", "{0} needs three corners or more", r.text())
	case geom.ZeroEdge:
		out = Refuse(ErrNoRoom, "outline.zero", "{0} has a side {1} without length", r.text(), flaw.I+1)
	case geom.RepeatedCorner:
		out = Refuse(ErrNoRoom, "outline.repeated", "corners {1} and {2} of {0} are one point", r.text(), flaw.I+1, flaw.J+1)
	case geom.EdgesMeet:
		out = Refuse(ErrNoRoom, "outline.meet", "sides {1} and {2} of {0} cross or touch", r.text(), flaw.I+1, flaw.J+1)
	}
	return out.At("/sides")
}

// Check reports what is wrong with a side by itself. Room is how a sentence calls its room.
func (s *Side) Check(room words.Text) error {
	if err := wellFormed(s.ID, KindSide); err != nil {
		return err
	}
	switch s.Kind {
	case SideWall, SideGlass, SideRailing, SideOpen:
	default:
		return Refuse(nil, "side-kind", "a side of {0} is of an unknown kind “{1}”", room, string(s.Kind)).At("/kind")
	}
	if err := checkLayers(room, s.Finish); err != nil {
		return In("/finish", err)
	}
	if err := checkZones(room, s); err != nil {
		return err
	}
	if err := checkPlaces(room, s.Places); err != nil {
		return In("/places", err)
	}
	return In("/studs", notNegative(room, s.Studs.Spacing, s.Studs.Depth, s.Studs.First, s.Studs.Thick))
}

// maxPlaces bounds the studs that are told one by one; no wall has near as many.
const maxPlaces = 1024

// checkPlaces wants studs from left to right, each of a state we know.
func checkPlaces(room words.Text, places []StudPlace) error {
	if len(places) > maxPlaces {
		return Refuse(nil, "stud-places", "a side of {0} has more than {1} studs", room, maxPlaces)
	}
	for i, p := range places {
		path := fmt.Sprintf("/%d", i)
		switch {
		case p.State != StudAssumed && p.State != StudStated && p.State != StudMeasured:
			return Refuse(nil, "stud-state", "a stud of {0} is of an unknown state “{1}”", room, string(p.State)).At(path + "/state")
		case i > 0 && p.At <= places[i-1].At:
			return Refuse(nil, "stud-order", "the studs of a side of {0} do not come from left to right", room).At(path + "/at")
		}
		if err := CheckReach(room, p.At); err != nil {
			return In(path+"/at", err)
		}
	}
	return nil
}

func checkLayers(name words.Text, layers []Layer) error {
	if len(layers) > maxLayers {
		return Refuse(nil, "layers", "{0} has more than {1} layers in one place", name, maxLayers)
	}
	var sum unit.Length
	for i, l := range layers {
		if err := notNegative(name, l.Thickness); err != nil {
			return In(fmt.Sprintf("/%d/thickness", i), err)
		}
		sum += l.Thickness
	}
	return CheckReach(name, sum)
}

// IsPrefix reports whether a text may stand before the number of a tag: at most eight
// letters, figures and dashes, not ending in a figure, or nothing.
func IsPrefix(prefix string) bool {
	n, last := 0, 'A'
	for _, r := range prefix {
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' {
			return false
		}
		n, last = n+1, r
	}
	return n <= 8 && !unicode.IsDigit(last)
}
