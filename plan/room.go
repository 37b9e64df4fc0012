package plan

import (
	"slices"
	"strconv"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Use says what a room is for; spacing rules hang on it. An unknown use is kept.
type Use string

// The uses this version knows.
const (
	UseKitchen    Use = "kitchen"
	UsePantry     Use = "pantry"
	UseBreakfast  Use = "breakfast"
	UseDining     Use = "dining"
	UseLiving     Use = "living"
	UseFamily     Use = "family"
	UseParlor     Use = "parlor"
	UseLibrary    Use = "library"
	UseDen        Use = "den"
	UseOffice     Use = "office"
	UseSunroom    Use = "sunroom"
	UseBedroom    Use = "bedroom"
	UseRecreation Use = "recreation"
	UseBath       Use = "bath"
	UseHall       Use = "hall"
	UseFoyer      Use = "foyer"
	UseCloset     Use = "closet"
	UseLaundry    Use = "laundry"
	UseMudroom    Use = "mudroom"
	UseUtility    Use = "utility"
	UseGarage     Use = "garage"
	UseBasement   Use = "unfinished basement"
	UseStairs     Use = "stairs"
	UseOutdoors   Use = "outdoors"
	UseAttic      Use = "attic"
	UseStorage    Use = "storage"
	UseUnknown    Use = "not known" // until somebody says what the room is for
)

// Uses lists the known uses in the order a user sees.
var Uses = []Use{
	UseLiving, UseFamily, UseKitchen, UseDining, UseBreakfast, UsePantry, UseBedroom,
	UseBath, UseHall, UseFoyer, UseCloset, UseLaundry, UseMudroom, UseOffice, UseDen,
	UseLibrary, UseParlor, UseSunroom, UseRecreation, UseUtility, UseGarage,
	UseBasement, UseAttic, UseStorage, UseStairs, UseOutdoors, UseUnknown,
}

// IsKnown reports whether this version knows the use, and somebody said it.
func (u Use) IsKnown() bool { return u != UseUnknown && slices.Contains(Uses, u) }

// Room is a closed outline of finished wall faces with a use.
//
// Sides run clockwise as seen on the sheet, so that standing in the room the right
// end of each side is the left end of the next. The outline does not cross itself.
type Room struct {
	ID      ID          `json:"id"`
	Name    string      `json:"name"`
	Use     Use         `json:"use"`
	Prefix  string      `json:"prefix,omitempty"` // of the tags of its openings
	Ceiling unit.Length `json:"ceiling"`          // above the finished floor
	Floor   []Layer     `json:"floor,omitempty"`  // on the subfloor, lowest first
	Joists  Joists      `json:"joists,omitzero"`  // of its ceiling
	Sides   []*Side     `json:"sides"`
	Bays    int         `json:"bays,omitempty"`  // for vehicles, of a garage; 0: one. From version 1.1 on
	Faces   Facing      `json:"faces,omitempty"` // of outdoors: to the front or the back of the house. From version 1.1 on
	// Reach tells that what is worked by hand is to be in reach from a seat; from version
	// 1.1 on.
	Reach bool `json:"reach,omitempty"`
	// Overhead is the condition of its ceiling; from version 1.1 on.
	Overhead Condition `json:"overhead,omitempty"`
	Note     string    `json:"note,omitempty"`
	Extra    Extra     `json:"-"`
}

// Facing says at which end of a house an outdoor area is.
type Facing string

// The facings. The empty one is not said.
const (
	FacesUnsaid Facing = ""
	FacesFront  Facing = "front"
	FacesBack   Facing = "back"
)

// Key returns the room's ID.
func (r *Room) Key() ID { return r.ID }

// eachSide gives the sides by their places in the room.
func (r *Room) eachSide(do func(path string, id ID)) {
	for i, s := range r.Sides {
		if s != nil { // checkOutline's to refuse
			do("/sides/"+strconv.Itoa(i), s.ID)
		}
	}
}

// Outline returns the corners, clockwise as seen on the sheet.
func (r *Room) Outline() geom.Polygon {
	corners := make(geom.Polygon, len(r.Sides))
	for i, s := range r.Sides {
		corners[i] = s.Start
	}
	return corners
}

// Segment returns the i-th side from its left end to its right as seen in the room.
func (r *Room) Segment(i int) geom.Segment {
	return geom.Segment{A: r.Sides[i].Start, B: r.Sides[(i+1)%len(r.Sides)].Start}
}

// SideAt returns where the side with the ID stands in Sides, or −1.
func (r *Room) SideAt(id ID) int {
	for i, s := range r.Sides {
		if s.ID == id {
			return i
		}
	}
	return -1
}

// FloorThickness returns how far the finished floor lies above the subfloor.
func (r *Room) FloorThickness() unit.Length { return Thickness(r.Floor) }

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
	Rated  bool        `json:"rated,omitempty"` // fire-resistance rated, says the user
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

// Rating is what the user says of a fire-resistance rated wall.
type Rating struct {
	Assembly string `json:"assembly,omitempty"` // as its listing names it
	Cavity   string `json:"cavity,omitempty"`   // what fills it: empty for nothing
	// Putty tells that boxes of the wall get listed pads or another listed protection.
	Putty bool `json:"putty,omitempty"`
}

// Joists is the framing of a ceiling. The zero value is not known.
type Joists struct {
	Along   ID          `json:"along,omitempty"`   // the side they run beside
	Spacing unit.Length `json:"spacing,omitempty"` // on centre
	First   unit.Length `json:"first,omitempty"`   // centre of the first from that side
	Depth   unit.Length `json:"depth,omitempty"`
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

// NewRoom returns a room of walls with the corners, in either direction, and an ID for
// each side.
func NewRoom(id ID, name string, use Use, corners geom.Polygon, sides []ID) Room {
	r := Room{ID: id, Name: name, Use: use}
	for i, c := range corners {
		s := &Side{Start: c, Kind: SideWall}
		if i < len(sides) {
			s.ID = sides[i]
		}
		r.Sides = append(r.Sides, s)
	}
	return r
}

// withRoom returns the plan with a room as AddRoom and ChangeRoom have it.
func (p Plan) withRoom(l *Level, room *Room) (Plan, error) {
	if l == nil {
		return Plan{}, Gone(KindLevel)
	}
	r := *room
	if was, ok := l.Rooms.Get(r.ID); ok {
		r.Sides = was.Sides
	} else if err := p.prepare(&r); err != nil {
		return Plan{}, err
	}
	if err := r.Check(); err != nil {
		return Plan{}, err
	}
	return p.on(l, func(l *Level) { l.Rooms = l.Rooms.With(&r) }).recheck(l.ID, &r)
}

// prepare turns the outline of a new room the right way round, gives it a prefix, and
// fails where a side's ID is in use.
func (p Plan) prepare(r *Room) error {
	if slices.Contains(r.Sides, nil) {
		return nil // checkRoom's to refuse
	}
	if !r.Outline().IsClockwise() {
		r.Sides = TurnedRound(r.Sides)
	}
	if r.Prefix == "" {
		r.Prefix = SuggestPrefix(p, r.Name)
	}
	for _, s := range r.Sides {
		if err := p.CheckNew(s.ID, KindSide); err != nil {
			return In("/sides", err)
		}
	}
	return nil
}

// TurnedRound lists the same edges in the other direction, from the same first corner.
func TurnedRound(sides []*Side) []*Side {
	out := make([]*Side, 0, len(sides))
	for i := len(sides) - 1; i >= 0; i-- {
		s := *sides[i]
		s.Start = sides[(i+1)%len(sides)].Start
		out = append(out, &s)
	}
	return out
}
