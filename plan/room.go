package plan

import (
	"errors"
	"fmt"
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
	// Power says whether a garage by itself has electric power, Finished whether a room of a
	// basement is, and Damp how wet it gets. From version 1.1 on.
	Power    Answer   `json:"power,omitempty"`
	Finished Answer   `json:"finished,omitempty"`
	Damp     Dampness `json:"damp,omitempty"`
	// Reach tells that what is worked by hand is to be in reach from a seat; from version
	// 1.1 on.
	Reach bool `json:"reach,omitempty"`
	// Overhead is the condition of its ceiling; from version 1.1 on.
	Overhead Condition `json:"overhead,omitempty"`
	// Taped is what a tape read in a room of four sides; from version 1.1 on.
	Taped geom.Taped `json:"taped,omitzero"`
	Note  string     `json:"note,omitempty"`
	Extra Extra      `json:"-"`
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

// IsUnfinished reports whether a room of a basement is unfinished: as is said, else by its use.
func (r *Room) IsUnfinished() bool {
	return r.Finished == AnswerNo || r.Use == UseBasement && r.Finished == Unsaid
}

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

// leastRoom is how small a room may be in one direction and still be meant: common
// practice, a chase or a shallow closet is hardly less.
const leastRoom = unit.Foot

// IsTiny reports whether a room is so narrow that its size was hardly meant.
func IsTiny(r Room) bool {
	box := r.Outline().Box()
	return min(box.Width(), box.Height()) < leastRoom
}

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
		r.Sides, r.Taped = TurnedRound(r.Sides), r.Taped.TurnedRound()
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

// maxSides bounds the sides of a room; no room comes near.
const maxSides = 512

// MaxBays bounds the vehicle bays of a garage.
const MaxBays = 20

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
	if !r.Power.isKnown() {
		return Refuse(nil, "power", "{0} has electric power, “yes” or “no”, not “{1}”", r.text(), string(r.Power)).At("/power")
	}
	if !r.Finished.isKnown() {
		return Refuse(nil, "finished", "{0} is finished, “yes” or “no”, not “{1}”", r.text(), string(r.Finished)).At("/finished")
	}
	if !slices.Contains(Dampnesses, r.Damp) {
		return Refuse(nil, "damp", "{0} is in an unknown way damp, “{1}”", r.text(), string(r.Damp)).At("/damp")
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
	if r.Taped != (geom.Taped{}) && len(r.Sides) != 4 {
		return Refuse(nil, "taped", "{0} has not four sides; four lengths and a diagonal tell no other shape", r.text()).At("/taped")
	}
	t := r.Taped
	if err := notNegative(r.text(), t.First, t.Second, t.Third, t.Fourth, t.Diagonal, t.Other); err != nil {
		return In("/taped", err)
	}
	if err := r.Joists.check(r.text()); err != nil {
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
