package plan

import (
	"fmt"
	"slices"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// SideKind says what a side is made of.
type SideKind string

// The kinds of side: railing and open are where a room has no wall.
const (
	SideWall    SideKind = "wall"
	SideGlass   SideKind = "glass"
	SideRailing SideKind = "railing"
	SideOpen    SideKind = "open"
)

// Side is one straight edge of a room, from Start to the next side's Start. Its ID
// outlives edits of the outline.
type Side struct {
	ID     ID         `json:"id"`
	Start  geom.Point `json:"start"`
	Kind   SideKind   `json:"kind"`
	Finish []Layer    `json:"finish,omitempty"` // from the studs outward into the room
	Studs  Studs      `json:"studs"`
	// Places are the studs of the wall one by one, from left to right, where they were taped
	// or said; none leaves them to the spacing. Those at the ends of the face and at breaks
	// are not among them.
	Places []StudPlace `json:"places,omitempty"`
	// Tape is how those were read off a tape; from version 1.1 on.
	Tape  Tape `json:"tape,omitzero"`
	Rated bool `json:"rated,omitempty"` // fire-resistance rated, says the user
	// Rating tells more of a rated wall.
	Rating Rating `json:"rating,omitzero"`
	// Separation tells the board between a dwelling and its garage, which is no rated
	// assembly: gaps are closed there, boxes need no listing.
	Separation bool `json:"separation,omitempty"`
	// Condition is that of all that no zone tells. It, zones, probes and trim are from
	// version 1.1 on.
	Condition Condition `json:"condition,omitempty"`
	Zones     []Zone    `json:"zones,omitempty"` // from left to right
	Probes    []Probe   `json:"probes,omitempty"`
	Trim      []Trim    `json:"trim,omitempty"`
	Extra     Extra     `json:"-"`
}

// Key returns the side's ID.
func (s *Side) Key() ID { return s.ID }

// Studs is the framing behind a side. Depth serves only a side with nothing behind
// it; between two rooms the geometry tells.
type Studs struct {
	Spacing unit.Length `json:"spacing"`         // on centre
	Depth   unit.Length `json:"depth"`           // of the stud, such as 3-1/2 in
	First   unit.Length `json:"first,omitempty"` // centre of the first stud from the end it is laid out from; 0: one spacing
	// FromRight tells a layout that starts at the side's right end and not at its left.
	FromRight bool        `json:"from_right,omitempty"`
	Thick     unit.Length `json:"thick,omitempty"` // of a stud along the wall; 0: 1-1/2 in
	Steel     bool        `json:"steel,omitempty"`
}

// StudState says how well the place of a stud is known.
type StudState string

// The states, the surest last.
const (
	StudAssumed  StudState = "assumed"
	StudStated   StudState = "stated"
	StudMeasured StudState = "measured"
)

// StudPlace is one stud of a wall by its centre, from the left end of the side that
// tells it.
type StudPlace struct {
	At    unit.Length `json:"at"`
	State StudState   `json:"state"`
}

// Tape is what a tape read along a side, stud by stud, and what the readings mean.
type Tape struct {
	Typed string        `json:"typed,omitempty"` // as the user typed the readings
	At    []unit.Length `json:"at,omitempty"`
	// FromRight tells a tape that begins at the right end and not at the left.
	FromRight bool `json:"from_right,omitempty"`
	// Framing tells one that begins at the corner of the framing, not of the finish.
	Framing bool     `json:"framing,omitempty"`
	Edge    TapeEdge `json:"edge,omitempty"`
}

// IsZero reports whether nothing is said of a tape.
func (t Tape) IsZero() bool {
	return t.Typed == "" && len(t.At) == 0 && !t.FromRight && !t.Framing && t.Edge == Centers
}

// TapeEdge is what of a stud a tape is read at.
type TapeEdge string

// What a tape is read at.
const (
	Centers  TapeEdge = ""
	NearEdge TapeEdge = "near" // the one that the tape comes to first
	FarEdge  TapeEdge = "far"
)

// TapeEdges are all of them.
var TapeEdges = []TapeEdge{NearEdge, Centers, FarEdge}

// Text returns what of a stud is read, as people say it.
func (e TapeEdge) Text() words.Text {
	switch e {
	case NearEdge:
		return words.New("tape.near", "the near edge")
	case FarEdge:
		return words.New("tape.far", "the far edge")
	}
	return words.New("tape.center", "the center")
}

// maxTyped bounds the text of readings, in bytes.
const maxTyped = 10_000

func checkTape(room words.Text, t Tape) error {
	switch {
	case len(t.At) > maxPlaces || len(t.Typed) > maxTyped:
		return Refuse(nil, "stud-places", "a side of {0} has more than {1} studs", room, maxPlaces)
	case !slices.Contains(TapeEdges, t.Edge):
		return Refuse(nil, "tape-edge", "a tape of {0} is read at an unknown edge “{1}”", room, string(t.Edge)).At("/edge")
	}
	for _, at := range t.At {
		if err := CheckReach(room, at); err != nil {
			return In("/at", err)
		}
	}
	return nil
}

// Rating is what the user says of a fire-resistance rated wall.
type Rating struct {
	Assembly string `json:"assembly,omitempty"` // as its listing names it
	Cavity   string `json:"cavity,omitempty"`   // what fills it: empty for nothing
	// Putty tells that boxes of the wall get listed pads or another listed protection.
	Putty bool `json:"putty,omitempty"`
}

// Layer is one layer of a finish or floor build-up.
type Layer struct {
	Name        string      `json:"name"`
	Thickness   unit.Length `json:"thickness"`
	Combustible bool        `json:"combustible,omitempty"`
	// Undecided tells a layer that is not settled: its thickness is a guess.
	Undecided bool `json:"undecided,omitempty"`
	// Lath tells plaster, and what its keys grip; from version 1.1 on.
	Lath Lath `json:"lath,omitempty"`
	// Keys is how far the keys of plaster were found to reach behind the lath; 0: as far as
	// is usual. From version 1.1 on.
	Keys unit.Length `json:"keys,omitempty"`
}

// layerNames are what a plan of its own or a demo calls layers: each voice has its own word
// for them.
var layerNames = []words.Text{
	words.New("layer.gypsum", "gypsum board"), words.New("layer.tile", "tile"), words.New("layer.mosaic", "mosaic tile"),
	words.New("layer.plaster", "plaster"), words.New("layer.plaster-lath", "plaster on lath"),
	words.New("layer.plaster-wood", "plaster on wood lath"), words.New("layer.plaster-brick", "plaster on brick"),
	words.New("layer.boards", "floor boards"),
}

// Text is what a layer is called: a usual name in the words of whoever reads it, any other
// as it was written.
func (l Layer) Text() words.Text {
	for _, name := range layerNames {
		if name.English == l.Name {
			return name
		}
	}
	return words.New("plain", "{0}", l.Name)
}

// Thickness returns the sum of the layers.
func Thickness(layers []Layer) (sum unit.Length) {
	for _, l := range layers {
		sum += l.Thickness
	}
	return sum
}

// SideRef is a side with the room and level it belongs to.
type SideRef struct {
	Level ID
	Room  *Room
	At    int // in Room.Sides
}

// Key returns the side's ID.
func (r *SideRef) Key() ID { return r.Room.Sides[r.At].ID }

// Side returns the side itself.
func (r *SideRef) Side() *Side { return r.Room.Sides[r.At] }

// Line returns the side from its left end to its right as seen in the room.
func (r *SideRef) Line() geom.Segment { return r.Room.Segment(r.At) }

// maxLayers bounds the layers of a finish or floor.
const maxLayers = 64

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
	if err := checkTape(room, s.Tape); err != nil {
		return In("/tape", err)
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
		if err := firstOf(notNegative(name, l.Keys), CheckReach(name, l.Keys)); err != nil {
			return In(fmt.Sprintf("/%d/keys", i), err)
		}
		sum += l.Thickness
	}
	return CheckReach(name, sum)
}
