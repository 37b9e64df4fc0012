package frame

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// Touching is how near to a stud a box stands against it: half of a tape's sixteenth.
const Touching = unit.Inch / 32

// Way says how a box is held.
type Way string

// The ways. The empty one is not known: no box is chosen, nobody tells the framing, or the
// wall stays closed to what holds the box.
const (
	NotHeld     Way = ""
	ByNailLeft  Way = "nail-left" // on the stud at its left
	ByNailRight Way = "nail-right"
	ByBracket   Way = "bracket" // on the stud it touches
	ByBlock     Way = "block"   // on lumber between the studs
	ByBar       Way = "bar"     // on a hanger between joists or studs
	ByBoard     Way = "board"   // it grips the board: old work
	ByJoist     Way = "joist"
	ByFloor     Way = "floor"
	InMasonry   Way = "masonry"
	OnSurface   Way = "surface"
	ByItsOwn    Way = "own" // it comes with what holds it
)

// Hold is how the box of an opening is held in its wall, ceiling or floor.
type Hold struct {
	By Way
	// Bay is the one of the box's centre, with the studs that bound it; in a ceiling with the
	// joists, by their distances from the wall that they run beside. HasBay is false in a
	// floor, and where studs or joists are not told.
	Bay    Bay
	HasBay bool
	// State says how well the studs or joists of the bay are known.
	State plan.StudState
	// Block is set where By is ByBlock and the bay is known.
	Block *Block
	// FarSide is how long a block is that holds the side of a wide box which touches no
	// stud, 0 where none is wanted.
	FarSide unit.Length
}

// Block is the lumber between two studs or joists that a box is screwed to, of the section of
// a 2×4.
type Block struct {
	Length unit.Length // cut so: the clear bay
	// IsOverhead tells one between joists: how far it is set back and how high is not told,
	// since nobody tells the layers of a ceiling.
	IsOverhead bool
	SetBack    unit.Length // from the face of the studs to its own
	Flat       bool        // its wide face to the room; else on edge
	Bottom     unit.Length // above the finished floor
	Top        unit.Length
	// Over is how much deeper block and set-back are than the framing; 0 or below: it fits.
	// KnowsDepth is false where nobody tells how deep the framing is.
	Over       unit.Length
	KnowsDepth bool
}

// FlatDeep and EdgeDeep are how much of the framing's depth a block of a 2×4 takes laid
// flat and on edge: 1-1/2 and 3-1/2 in (PS 20, dressed).
const (
	FlatDeep = StudThick
	EdgeDeep = UsualStud
)

// WideGangs is from how many gangs on a box is held at its far side too: three (common
// practice; some hold two).
const WideGangs = 3

// HoldOn returns how the box of an opening on a face is held.
func (f Framed) HoldOn(o *plan.Opening, room *plan.Room) (h Hold) {
	rect := RectOf(o, room)
	h.State = f.State
	if bay, ok := BayAt(Bays(f.Between(rect.Bottom, rect.Top), f.Length), o.At.Along); ok && (bay.Left != nil || bay.Right != nil) {
		h.Bay, h.HasBay = bay, true
		h.State = stateOf(h.Bay, h.State)
	}
	box := BoxOf(o.Assembly)
	if h.HasBay && !f.KnowsBay(h.Bay) && !(box != nil && wayOf(box.Mounting) == ByBlock && h.againstKnown(rect)) {
		h.Bay, h.HasBay = Bay{}, false
	}
	if box == nil {
		if o.Assembly.Box == "" && o.Assembly.Code == "" && comesWithItsOwn(o) {
			h.By = ByItsOwn
		}
		return h
	}
	h.By = wayOf(box.Mounting)
	if h.By != ByBlock {
		return h
	}
	if !h.HasBay || f.Side.ConditionAt(o.At.Along) == plan.ConditionClosed {
		h.By = NotHeld
		return h
	}
	f.holdBetween(&h, PlacedIn(f.Side, room, o))
	return h
}

// Beside returns the stud that a box is nailed or bracketed to, by its number among those of full
// height from the left, and whether the box is at its right side. It reports false for a box that
// is held another way, and where the stud has no number.
func (h Hold) Beside(box Rect, studs []Stud) (number int, atRight, ok bool) {
	if h.By != ByNailLeft && h.By != ByNailRight && h.By != ByBracket {
		return 0, false, false
	}
	left, right := h.Against(box)
	if left {
		if number, ok = NumberOf(studs, h.Bay.Left); ok {
			return number, true, true
		}
	}
	if right {
		number, ok = NumberOf(studs, h.Bay.Right)
	}
	return number, false, ok
}

// NumberOf returns which of some studs one is, counted from 1.
func NumberOf(studs []Stud, s *Stud) (number int, ok bool) {
	if s == nil {
		return 0, false
	}
	for i, t := range studs {
		if t.At == s.At {
			return i + 1, true
		}
	}
	return 0, false
}

// holdBetween says of a box that wants a stud which it has, and what stands in for one.
func (f Framed) holdBetween(h *Hold, p Placed) {
	left, right := h.Against(p.Rect)
	switch {
	case !left && !right:
		h.Block = f.blockFor(p, h.Bay)
	case p.Box.Mounting == part.Bracket:
		h.By = ByBracket
	case left:
		h.By = ByNailLeft
	default:
		h.By = ByNailRight
	}
	if h.Block == nil && left != right && f.KnowsBay(h.Bay) && p.Opening.Gangs >= WideGangs {
		h.FarSide = max(h.Bay.Clear()-(p.Right-p.Left), 0)
	}
}

// KnowsBay reports whether both studs of a bay are known. Where the studs of a wall were taped
// one by one nothing is told of it before the first and past the last of them: no spacing
// carries them on. In a wall that is built anew the studs at its ends are known too.
func (f Framed) KnowsBay(b Bay) bool {
	if !f.isTaped() || f.Side.ConditionAt(b.From+b.Clear()/2) == plan.ConditionNew {
		return true
	}
	return b.Left != nil && b.Left.Kind != EndStud && b.Right != nil && b.Right.Kind != EndStud
}

// Taped returns the first and the last of the studs that were taped one by one. It reports
// false where the studs of the wall are told another way.
func (f Framed) Taped() (first, last unit.Length, ok bool) {
	if !f.isTaped() {
		return 0, 0, false
	}
	for i := range f.All {
		if s := &f.All[i]; s.isPlaced {
			if !ok {
				first, ok = s.At, true
			}
			last = s.At
		}
	}
	return first, last, ok
}

// isTaped reports whether all studs of the layout were taped one by one.
func (f Framed) isTaped() bool {
	isAny := false
	for i := range f.All {
		if s := &f.All[i]; s.isPlaced {
			if s.State != plan.StudMeasured {
				return false
			}
			isAny = true
		}
	}
	return isAny
}

// againstKnown reports whether a box touches a stud of its bay that is known while the other
// is not.
func (h Hold) againstKnown(rect Rect) bool {
	left, right := h.Against(rect)
	return left && h.Bay.Left.Kind != EndStud || right && h.Bay.Right.Kind != EndStud
}

// Against reports which studs of its bay a box touches.
func (h Hold) Against(box Rect) (left, right bool) {
	return h.Bay.Left != nil && box.Left <= h.Bay.From+Touching, h.Bay.Right != nil && box.Right >= h.Bay.To-Touching
}

// stateOf returns the less sure state of the studs that bound a bay; that of the wall where
// neither is on its layout.
func stateOf(b Bay, wall plan.StudState) plan.StudState {
	state, any := wall, false
	for _, s := range []*Stud{b.Left, b.Right} {
		if s != nil && (s.Kind == CommonStud || s.Kind == Cripple) && (!any || sureness(s.State) < sureness(state)) {
			state, any = s.State, true
		}
	}
	return state
}

func comesWithItsOwn(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && k.Assembly == nil
}

// wayOf is how a mounting holds where no stud is looked at; ByBlock for one that wants a
// stud at its side.
func wayOf(m part.Mounting) Way {
	switch m {
	case part.BarHanger:
		return ByBar
	case part.OldWork:
		return ByBoard
	case part.Surface:
		return OnSurface
	case part.InMasonry:
		return InMasonry
	case part.InFloor:
		return ByFloor
	case part.OnRaceways:
		return ByItsOwn
	}
	return ByBlock
}

// blockFor returns the block behind a box that touches neither stud of its bay. The box
// stands before it with its middle in the block's.
func (f Face) blockFor(p Placed, bay Bay) *Block {
	b := &Block{Length: bay.Clear(), SetBack: p.InFraming(), Flat: true}
	framing := f.FramingAt(p.Opening.At.Along)
	high, deep := EdgeDeep, FlatDeep
	b.Over, b.KnowsDepth = b.SetBack+deep-framing, framing > 0
	middle := (p.Bottom + p.Top) / 2
	b.Bottom = middle - high/2
	b.Top = b.Bottom + high
	return b
}
