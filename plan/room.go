package plan

import (
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
)

// Uses lists the known uses in the order a user sees.
var Uses = []Use{
	UseLiving, UseFamily, UseKitchen, UseDining, UseBreakfast, UsePantry, UseBedroom,
	UseBath, UseHall, UseFoyer, UseCloset, UseLaundry, UseMudroom, UseOffice, UseDen,
	UseLibrary, UseParlor, UseSunroom, UseRecreation, UseUtility, UseGarage,
	UseBasement, UseStairs, UseOutdoors,
}

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
	Sides   []*Side     `json:"sides"`
	Note    string      `json:"note,omitempty"`
	Extra   Extra       `json:"-"`
}

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
	Rated  bool       `json:"rated,omitempty"` // fire-resistance rated, says the user
	Extra  Extra      `json:"-"`
}

// Key returns the side's ID.
func (s *Side) Key() ID { return s.ID }

// Studs is the framing behind a side. Depth serves only a side with nothing behind
// it; between two rooms the geometry tells.
type Studs struct {
	Spacing unit.Length `json:"spacing"`         // on centre
	Depth   unit.Length `json:"depth"`           // of the stud, such as 3-1/2 in
	First   unit.Length `json:"first,omitempty"` // centre of the first stud from the side's start
	Steel   bool        `json:"steel,omitempty"`
}

// Layer is one layer of a finish or floor build-up.
type Layer struct {
	Name        string      `json:"name"`
	Thickness   unit.Length `json:"thickness"`
	Combustible bool        `json:"combustible,omitempty"`
}

// Thickness returns the sum of the layers.
func Thickness(layers []Layer) (sum unit.Length) {
	for _, l := range layers {
		sum += l.Thickness
	}
	return sum
}
