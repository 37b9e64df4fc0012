// Package drywall lays sheets of board on a face and says where each cut-out of it is: from
// the edges of its own sheet, and from the end of the wall and the subfloor.
//
// Places are along a face from its left end as one stands in the room; heights are above
// the subfloor. Sheets are hung from the ceiling down, so that what is short is short at the
// floor. Board runs over doors and windows and is cut there, which is common practice and is
// not drawn; where a wall stays closed none is hung. Slanted ceilings and boards of another width than 48 in are not known.
package drywall

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/nest"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The sizes of sheets, common practice.
const (
	Wide   = 48 * unit.Inch
	Long8  = 96 * unit.Inch
	Long12 = 144 * unit.Inch
)

// Clearance is how much larger a hole is cut than what comes through, all round: 1/16 in.
// No more than MostGap may be left (NEC 314.21).
const (
	Clearance = unit.Inch / 16
	MostGap   = unit.Inch / 8
)

// Lift is how far the lowest sheet may end above the subfloor without a strip under it: the
// base covers it (common practice).
const Lift = 3 * unit.Inch / 2

// Way is how sheets are laid.
type Way struct {
	Long    unit.Length // of a sheet
	Upright bool
}

// Ways are those that are tried, in the order they are preferred.
var Ways = []Way{{Long8, false}, {Long12, false}, {Long8, true}}

// Piece is one piece of board on a face.
type Piece struct {
	Letter string
	frame.Rect
	// Outline is what is left of a sheet of a ceiling that the walls trim, in the places of the
	// rectangle about it; nil: all of that rectangle.
	Outline geom.Polygon
}

// Hole is the part of a cut-out that is in one piece.
type Hole struct {
	Opening    *plan.Opening
	Outline    part.Outline // with its clearance
	Piece      int          // in Pieces
	frame.Rect              // from the end of the wall and the subfloor
	// OnJoint says that the cut-out runs on in another piece.
	OnJoint bool
}

// From returns the edges of a hole from the left edge and the bottom of its own piece.
func (l Layout) From(h Hole) frame.Rect {
	p := l.Pieces[h.Piece]
	return frame.Rect{Left: h.Left - p.Left, Right: h.Right - p.Left, Bottom: h.Bottom - p.Bottom, Top: h.Top - p.Bottom}
}

// Layout is a face with the board on it.
type Layout struct {
	Face    frame.Face
	Room    *plan.Room
	Way     Way
	Height  unit.Length // of the board's upper edge above the subfloor
	Pieces  []Piece
	Holes   []Hole
	Covered []frame.Placed // boxes of the other face, not to be cut
	Joints  unit.Length    // length of all joints
	// IsCeiling says that it is the board of a ceiling as on the plan, from above: Face is as long
	// as the room reaches from left to right, Height as far as it does up and down the sheet, and
	// places are from its left and its lower end. AcrossJoists says that the joists are told and
	// the sheets lie across them.
	IsCeiling, AcrossJoists bool
	Sheets                  nest.List // the pieces cut from whole sheets
}

// OnJoints lists the openings whose cut-out a joint crosses, each once.
func (l Layout) OnJoints() (tags []string) {
	for _, h := range l.Holes {
		if h.OnJoint && !slices.Contains(tags, h.Opening.Tag) {
			tags = append(tags, h.Opening.Tag)
		}
	}
	return tags
}

// Count is how many cut-outs there are.
func (l Layout) Count() int {
	seen := map[plan.ID]bool{}
	for _, h := range l.Holes {
		seen[h.Opening.ID] = true
	}
	return len(seen)
}

// Lay lays the board of a side of a room in the way that takes the fewest sheets, of those
// the one with the fewest cut-outs on a joint, and then the shortest joints. It reports
// false for a side that is no wall, and for one in which nothing new is to be cut out.
func Lay(s *index.SideView, room *plan.Room) (best Layout, ok bool) {
	if s.Side.Kind != plan.SideWall || room.Ceiling <= 0 {
		return best, false
	}
	w := frame.WallIn(s, room)
	if !slices.ContainsFunc(w.Boxes, isCut) {
		return best, false
	}
	for _, way := range Ways {
		l := lay(w, way)
		if !ok || l.isBetter(best) {
			best, ok = l, true
		}
	}
	return best, true
}

// isCut reports whether a hole is cut for a box of a wall before that is closed: in a part that
// stays closed none is.
func isCut(p frame.Placed) bool {
	return p.Side.ConditionAt(p.Opening.At.Along) != plan.ConditionClosed && goesInFirst(p)
}

// goesInFirst reports whether a box, or a thing with a housing of its own, is there before the
// board is hung: one that is there already, lies on the board or is set into it once it is
// finished, has or gets its hole another way.
func goesInFirst(p frame.Placed) bool {
	if p.IsThere() || p.Box != nil && (!p.IsBuiltIn() || p.Box.Mounting == part.OldWork) {
		return false
	}
	return p.Box != nil || p.IsHoused
}

func (l Layout) isBetter(than Layout) bool {
	board := func(l Layout) int { return len(l.Sheets.Boards) * int(l.Way.Long/unit.Inch) }
	return cmp.Or(
		cmp.Compare(board(l), board(than)), cmp.Compare(len(l.OnJoints()), len(than.OnJoints())), cmp.Compare(l.Joints, than.Joints),
	) < 0
}

func lay(w *frame.Wall, way Way) Layout {
	floor := w.Room.FloorThickness()
	l := Layout{Face: w.Face, Room: w.Room, Way: way, Height: w.Room.Ceiling + floor}
	studs := w.Studs()
	if way.Upright {
		l.upright(studs)
	} else {
		l.flat(studs)
	}
	l.leaveClosed()
	l.letter()
	for _, b := range w.Boxes {
		if isCut(b) {
			l.cut(b.Opening)
		}
	}
	for _, b := range w.Behind {
		if isCut(b) {
			b.Bottom, b.Top = b.Bottom+floor, b.Top+floor
			l.Covered = append(l.Covered, b)
		}
	}
	l.sheets()
	return l
}

// flat lays rows from the ceiling down, every other one begun with half a sheet.
func (l *Layout) flat(studs []frame.Stud) {
	top := l.Height
	for row := 0; top > Lift; row++ {
		bottom := max(top-Wide, 0)
		first := l.Way.Long
		if row%2 == 0 && l.Face.Length > l.Way.Long {
			first /= 2
		}
		at := unit.Length(0)
		for _, end := range joints(studs, l.Face.Length, first, l.Way.Long) {
			l.Pieces = append(l.Pieces, Piece{Rect: frame.Rect{Left: at, Right: end, Bottom: bottom, Top: top}})
			if end < l.Face.Length {
				l.Joints += top - bottom
			}
			at = end
		}
		if top = bottom; top > Lift {
			l.Joints += l.Face.Length
		}
	}
}

// upright lays sheets on end; what is higher than a sheet gets a row on top of strips.
func (l *Layout) upright(studs []frame.Stud) {
	at := unit.Length(0)
	for _, end := range joints(studs, l.Face.Length, Wide, Wide) {
		bottom := max(l.Height-l.Way.Long, 0)
		l.Pieces = append(l.Pieces, Piece{Rect: frame.Rect{Left: at, Right: end, Bottom: bottom, Top: l.Height}})
		if bottom > Lift {
			l.Pieces = append(l.Pieces, Piece{Rect: frame.Rect{Left: at, Right: end, Top: bottom}})
			l.Joints += end - at
			bottom = 0
		}
		if end < l.Face.Length {
			l.Joints += l.Height - bottom
		}
		at = end
	}
}

// joints returns where pieces of a row end: no farther than a sheet reaches, and at the
// centre of a stud where one is told before that.
func joints(studs []frame.Stud, length, first, long unit.Length) (ends []unit.Length) {
	at, reach := unit.Length(0), first
	for at+reach < length {
		end := at + reach
		for _, s := range slices.Backward(studs) {
			if s.At <= end && s.At > at {
				end = s.At
				break
			}
		}
		ends = append(ends, end)
		at, reach = end, long
	}
	return append(ends, length)
}

// letter names the pieces from the floor up, from left to right: A, B ... Z, AA ...
func (l *Layout) letter() {
	slices.SortStableFunc(l.Pieces, func(a, b Piece) int {
		return cmp.Or(cmp.Compare(a.Bottom, b.Bottom), cmp.Compare(a.Left, b.Left))
	})
	for i := range l.Pieces {
		name := string(rune('A' + i%26))
		if i >= 26 {
			name = string(rune('A'+i/26-1)) + name
		}
		l.Pieces[i].Letter = name
	}
}

// cut puts the hole of an opening into each piece that it is in.
func (l *Layout) cut(o *plan.Opening) {
	hole := frame.CutoutOf(o)
	if hole.IsZero() {
		return
	}
	l.cutAt(o, hole, o.At.Along, frame.CentreHeight(o, l.Room)+l.Room.FloorThickness())
}

// cutAt puts a hole with its middle at a place into each piece that it is in.
func (l *Layout) cutAt(o *plan.Opening, hole part.Outline, along, middle unit.Length) {
	hole.Width, hole.Height = hole.Width+2*Clearance, hole.Height+2*Clearance
	whole := frame.Rect{Left: along - hole.Width/2, Bottom: middle - hole.Height/2}
	whole.Right, whole.Top = whole.Left+hole.Width, whole.Bottom+hole.Height
	from := len(l.Holes)
	for i, p := range l.Pieces {
		if !p.Meets(whole) {
			continue
		}
		in := frame.Rect{Left: max(whole.Left, p.Left), Right: min(whole.Right, p.Right), Bottom: max(whole.Bottom, p.Bottom), Top: min(whole.Top, p.Top)}
		l.Holes = append(l.Holes, Hole{Opening: o, Outline: hole, Piece: i, Rect: in})
	}
	for i := from; i < len(l.Holes); i++ {
		l.Holes[i].OnJoint = len(l.Holes)-from > 1
	}
}

// sheets cuts the pieces from whole sheets: rows as wide as a sheet by their length, sheets
// on end by their width. Strips that are narrower take the length of theirs all the same,
// for what is left beside them is not counted on.
func (l *Layout) sheets() {
	stock := nest.Stock{Board: l.Way.Long}
	if l.Way.Upright {
		stock.Board = Wide
	}
	var pieces []nest.Piece
	for _, p := range l.Pieces {
		pieces = append(pieces, nest.Piece{Length: p.Right - p.Left, For: p.Letter})
	}
	l.Sheets = nest.Cut(stock, pieces)
}
