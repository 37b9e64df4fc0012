package plan

import (
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Reach is how far a plan extends either way, and the longest length in it: 10 km.
const Reach = 10_000 * unit.Metre

// Slack is how far a thing may stand past an end. The length of a slanted side and
// places along it are rounded to the nanometre; this is far below what any tape reads
// and far above what rounding adds.
const Slack = 100 * unit.Nanometre

// MaxStack bounds how many fixtures may stand on one another.
const MaxStack = 8

// levelSides is one level as checks look at it.
type levelSides struct {
	level *Level
	sides map[ID]*SideRef // nil: looked for room by room
}

// surveyed returns a level with its sides by ID.
func surveyed(l *Level) levelSides {
	s := levelSides{l, make(map[ID]*SideRef, 4*l.Rooms.Len())}
	for r := range l.Rooms.All() {
		for i, side := range r.Sides {
			if side != nil { // checkOutline's to refuse
				s.sides[side.ID] = &SideRef{l.ID, r, i}
			}
		}
	}
	return s
}

// homeSides is home with its sides for checks of the one thing that comes to stand there: of
// a face, which is looked for among all, it is looked for once.
func (p Plan) homeSides(a Anchor, name words.Text) (levelSides, error) {
	if a.Part == PartFace {
		if ref, l := p.Side(a.Host); l != nil {
			return levelSides{l, map[ID]*SideRef{a.Host: ref}}, nil
		}
	}
	l, err := p.home(a, name)
	return levelSides{level: l}, err
}

func (s levelSides) side(id ID) *SideRef {
	if s.sides != nil {
		return s.sides[id]
	}
	for r := range s.level.Rooms.All() {
		if i := r.SideAt(id); i >= 0 {
			return &SideRef{s.level.ID, r, i}
		}
	}
	return nil
}

// room returns the room an anchor is in, or nil where its host is not on the level or
// too many fixtures stand on one another.
func (s levelSides) room(a Anchor) *Room {
	for range MaxStack + 1 {
		switch a.Part {
		case PartFace:
			if ref := s.side(a.Host); ref != nil {
				return ref.Room
			}
			return nil
		case PartCeiling, PartFloor:
			r, _ := s.level.Rooms.Get(a.Host)
			return r
		}
		f, ok := s.level.Fixtures.Get(a.Host)
		if !ok {
			return nil
		}
		a = f.At
	}
	return nil
}

// stand is a thing that wants to stand at an anchor.
type stand struct {
	at    Anchor
	width unit.Length // from Along to its right end; 0 where Along is its centre
	name  words.Text
}

// check reports why a thing cannot stand at its anchor.
func (s levelSides) check(t stand) error {
	if t.at.Host == "" {
		return Refuse(ErrNoRoom, "no-host", "{0} needs a wall, ceiling, floor, cabinet or furniture to stand on", t.name).At("/host")
	}
	if err := t.checkFields(); err != nil {
		return err
	}
	if s.room(t.at) == nil {
		return Refuse(ErrGone, "host-gone", "what {0} stands on is not on this level of the plan", t.name).At("/host")
	}
	switch t.at.Part {
	case PartFace:
		return t.along(s.side(t.at.Host).Line().Length())
	case PartCeiling, PartFloor:
		r, _ := s.level.Rooms.Get(t.at.Host)
		return t.within(r.Outline())
	}
	f, _ := s.level.Fixtures.Get(t.at.Host)
	return t.on(f)
}

// checkFields holds the fields of the anchor to those its part has.
func (t stand) checkFields() error {
	a := t.at
	switch a.Part {
	case PartCeiling, PartFloor:
		a.At = geom.Point{}
	case PartTop:
		a.Along, a.Out = 0, 0
	case PartFace, PartFront, PartBack, PartLeft, PartRight:
		a.Along = 0
	default:
		return Refuse(nil, "part", "{0} stands on an unknown part “{1}”", t.name, string(a.Part)).At("/part")
	}
	if a.Along != 0 || a.Out != 0 || a.At != (geom.Point{}) {
		return Refuse(nil, "anchor-fields", "the place of {0} has figures that a {1} does not use", t.name, string(a.Part))
	}
	return CheckReach(t.name, t.at.Along, t.at.Out, t.at.At.X, t.at.At.Y)
}

func (t stand) along(length unit.Length) error {
	if t.at.Along >= -Slack && t.at.Along+t.width <= length+Slack {
		return nil
	}
	return Refuse(ErrNoRoom, "past-end", "{0} would stand past the end of its side, which is {1} long", t.name, length).At("/along")
}

func (t stand) within(outline geom.Polygon) error {
	if outline.Contains(t.at.At) {
		return nil
	}
	if _, away := outline.Nearest(t.at.At); away <= Slack {
		return nil
	}
	return Refuse(ErrNoRoom, "outside", "{0} would stand outside the room", t.name).At("/at")
}

func (t stand) on(f *Fixture) error {
	if t.at.Part == PartTop && (t.at.Out < 0 || t.at.Out > f.Depth) {
		return Refuse(ErrNoRoom, "past-edge", "{0} would stand past the edge of {1}", t.name, f.text()).At("/out")
	}
	return t.along(f.FaceLength(t.at.Part))
}

// CheckReach reports a length beyond Reach of what the name calls.
func CheckReach(name words.Text, lengths ...unit.Length) error {
	for _, l := range lengths {
		if l < -Reach || l > Reach {
			return Refuse(ErrNoRoom, "reach", "{0} has a length beyond 10 km", name)
		}
	}
	return nil
}

// notNegative is CheckReach for lengths that are not below zero.
func notNegative(name words.Text, lengths ...unit.Length) error {
	for _, l := range lengths {
		if l < 0 {
			return Refuse(nil, "negative", "{0} has a length below zero", name)
		}
	}
	return CheckReach(name, lengths...)
}

// checkFrom reports a thing whose distance is told from something that is not there.
func checkFrom(from ID, has func(ID) bool, name words.Text) error {
	if from == "" || has(from) {
		return nil
	}
	return Refuse(ErrGone, "from-gone", "{0} is measured from something that is not in the plan", name).At("/from")
}

// firstOf returns the first of some errors that is one.
func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
