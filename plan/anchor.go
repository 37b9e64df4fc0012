package plan

import (
	"iter"
	"reflect"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Part says which face of the host a thing is on.
type Part string

// The parts: PartFace is of a side; PartCeiling and PartFloor are of a room; the
// rest are of a fixture, whose front looks away from the wall it stands at.
const (
	PartFace    Part = "face"
	PartCeiling Part = "ceiling"
	PartFloor   Part = "floor"
	PartTop     Part = "top"
	PartFront   Part = "front"
	PartBack    Part = "back"
	PartLeft    Part = "left"  // as seen from its front
	PartRight   Part = "right" // as seen from its front
)

// Anchor is the one place of an opening, break or fixture. Which fields count
// depends on the part; the others are zero.
//
//   - face: Along is from the side's left end as seen in the room.
//   - ceiling, floor: At is a point of the plan.
//   - top: Along is from the fixture's left edge as seen from its front, Out from
//     its back edge.
//   - front, back, left, right: Along is from that face's left edge as seen by one
//     who looks at it.
//
// Along and At are of the centre of an opening. Along is of the left end of a break
// or of a fixture as one sees it from within the room; At and Out of a fixture are
// of its centre.
type Anchor struct {
	Host  ID          `json:"host"`
	Part  Part        `json:"part"`
	Along unit.Length `json:"along,omitempty"`
	Out   unit.Length `json:"out,omitempty"`
	At    geom.Point  `json:"at,omitzero"`
}

// OnFace returns the anchor at a distance along a side.
func OnFace(side ID, along unit.Length) Anchor {
	return Anchor{Host: side, Part: PartFace, Along: along}
}

// OnCeiling returns the anchor at a point of a room's ceiling.
func OnCeiling(room ID, at geom.Point) Anchor {
	return Anchor{Host: room, Part: PartCeiling, At: at}
}

// OnFloor returns the anchor at a point of a room's floor.
func OnFloor(room ID, at geom.Point) Anchor {
	return Anchor{Host: room, Part: PartFloor, At: at}
}

// FromRight turns the place along a face so long of a thing of a width, 0 where the place
// is its middle, into how far it is from the right end of the face, and that into the place.
func FromRight(long, along, width unit.Length) unit.Length { return long - width - along }

// FaceLength returns how long the face is that an anchor is on: that of a side, or the
// width or depth of a fixture; 0 where it is on none.
func (p Plan) FaceLength(a Anchor) unit.Length {
	if a.Part == PartFace {
		if ref, _ := p.Side(a.Host); ref != nil {
			return ref.Line().Length()
		}
	} else if f, _ := p.Fixture(a.Host); f != nil {
		return f.FaceLength(a.Part)
	}
	return 0
}

// Datum says from which floor a height is measured.
type Datum string

// The data: finished floor is the default.
const (
	FinishedFloor Datum = "finished floor"
	Subfloor      Datum = "subfloor"
)

// BoxLine says to which line of the box a height is measured.
type BoxLine string

// The lines: only the centre stays true when the box is changed for another.
const (
	BoxCentre BoxLine = "centre"
	BoxBottom BoxLine = "bottom"
	BoxTop    BoxLine = "top"
)

// Height is a height as its giver said it: to which line of the box, from which
// floor. Converting needs the box's outer height and the room's floor build-up.
type Height struct {
	Value unit.Length `json:"value"`
	To    BoxLine     `json:"to"`
	From  Datum       `json:"from"`
}

// CentreAt returns a height to the centre above the finished floor.
func CentreAt(value unit.Length) Height { return Height{value, BoxCentre, FinishedFloor} }

// Centre returns the height of the box's centre above the finished floor, given the
// box's outer height and the floor's thickness on the subfloor.
func (h Height) Centre(box, floor unit.Length) unit.Length {
	v := h.Value
	if h.From == Subfloor {
		v -= floor
	}
	switch h.To {
	case BoxBottom:
		v += box / 2
	case BoxTop:
		v -= box / 2
	}
	return v
}

// Restated returns the same centre measured to another line and from another floor.
func (h Height) Restated(to BoxLine, from Datum, box, floor unit.Length) Height {
	v := h.Centre(box, floor)
	if from == Subfloor {
		v += floor
	}
	switch to {
	case BoxBottom:
		v -= box / 2
	case BoxTop:
		v += box / 2
	}
	return Height{v, to, from}
}

// AnchorOf returns where a thing stands, nil for one that stands on nothing. What is in a
// plan is not to be written to.
func AnchorOf(t Thing) *Anchor {
	if k := kindFor(t); k != nil {
		return k.anchorOf(t)
	}
	return nil
}

// WidthOf returns how far a thing on a face reaches to the right of its place along it;
// nothing where that place is its middle.
func WidthOf(t Thing) unit.Length {
	if k := kindFor(t); k != nil {
		return k.widthOf(t)
	}
	return 0
}

// FromOf returns where a thing keeps from what else on its face its distance is told, nil
// where it has no distance. What is in a plan is not to be written to.
func FromOf(t Thing) *ID {
	if k := kindFor(t); k != nil {
		return k.fromOf(t)
	}
	return nil
}

// Anchored yields what stands anchored on the level, as the kinds come.
func (l *Level) Anchored() iter.Seq[Thing] {
	return func(yield func(Thing) bool) {
		for _, k := range kinds() {
			if !k.stands() {
				continue
			}
			for t := range k.things(holder{nil, l}) {
				if !yield(t) {
					return
				}
			}
		}
	}
}

// AnchoredTo yields what is anchored to a host itself, as the kinds come.
func (l *Level) AnchoredTo(host ID) iter.Seq[Thing] {
	return func(yield func(Thing) bool) {
		for t := range l.Anchored() {
			if kindFor(t).anchorOf(t).Host == host && !yield(t) {
				return
			}
		}
	}
}

// Has reports whether a thing of the ID is on the level.
func (l *Level) Has(id ID) bool {
	k := kindOf(id.Kind())
	if k == nil {
		return false
	}
	_, ok := k.get(holder{nil, l}, id)
	return ok
}

// CopyOf returns a copy of a noun whose own fields may be written to; what it lists is
// shared. What is no noun is returned as it is.
func CopyOf(t Thing) Thing {
	if k := kindFor(t); k != nil {
		return k.copied(t)
	}
	return t
}

// LikeOf returns the like of a noun under another ID: without its tag, and naming what as
// gives for what the noun names, nothing where that is empty. What is no noun is returned
// as it is.
func LikeOf(t Thing, id ID, as func(ID) ID) Thing {
	if k := kindFor(t); k != nil {
		return k.like(t, id, standingFor{as})
	}
	return t
}

func (r *row[N, P]) stands() bool { return r.at != nil }

func (r *row[N, P]) anchorOf(t Thing) *Anchor {
	if r.at == nil {
		return nil
	}
	return r.at(t.(P))
}

func (r *row[N, P]) widthOf(t Thing) unit.Length {
	if r.width == nil || r.at(t.(P)).Part != PartFace {
		return 0
	}
	return r.width(t.(P))
}

func (r *row[N, P]) fromOf(t Thing) *ID {
	if r.from == nil {
		return nil
	}
	return r.from(t.(P))
}

func (r *row[N, P]) copied(t Thing) Thing {
	now := *t.(P)
	return P(&now)
}

func (r *row[N, P]) like(t Thing, id ID, as references) Thing {
	now := *t.(P)
	reflect.ValueOf(&now).Elem().FieldByName("ID").Set(reflect.ValueOf(id)) // every noun has one
	if r.tag != nil {
		*r.tag(&now) = ""
	}
	if r.names != nil {
		r.names(&now, as)
	}
	return P(&now)
}

// standingFor puts in what a copy of a noun names what stands for it.
type standingFor struct{ as func(ID) ID }

func (s standingFor) needs(id *ID)   { s.may(id) }
func (s standingFor) follows(id *ID) { s.may(id) }
func (s standingFor) loose(id *ID)   { s.may(id) }

func (s standingFor) may(id *ID) {
	if *id != "" {
		*id = s.as(*id)
	}
}

func (s standingFor) list(ids *[]ID) {
	var now []ID
	for _, id := range *ids {
		if s.may(&id); id != "" {
			now = append(now, id)
		}
	}
	*ids = now
}
