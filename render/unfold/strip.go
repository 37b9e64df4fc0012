package unfold

import (
	"math"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// Strip is a room unfolded: its faces in a row as seen standing in it, clockwise in
// plan from left to right, so that the right end of each is the left end of the next.
// The north face stands first where there is one.
type Strip struct {
	Room    *plan.Room
	Level   plan.ID
	Faces   []Face
	Width   unit.Length
	Ceiling unit.Length // above the finished floor
	Floor   unit.Length // thickness of the floor on the subfloor
}

// Face is one face in a strip.
type Face struct {
	Side   *plan.Side
	At     int // in Room.Sides
	Name   words.Text
	Left   unit.Length // of its left end from that of the strip
	Length unit.Length
	Line   geom.Segment // on the plan, from its left end
}

// AssumedCeiling is drawn for a room that does not say its ceiling.
const AssumedCeiling = 8 * unit.Foot

// StripOf unfolds a room. It reports false where the room is not in the plan.
func StripOf(ix *index.Index, room plan.ID) (Strip, bool) {
	r := ix.RoomOf(room)
	if r == nil || len(r.Sides) < 3 {
		return Strip{}, false
	}
	names := render.FaceNames(ix, r)
	s := Strip{Room: r, Ceiling: r.Ceiling, Floor: r.FloorThickness()}
	if s.Ceiling <= 0 {
		s.Ceiling = AssumedCeiling
	}
	first, n := firstFace(ix, r), len(r.Sides)
	for i := range n {
		at := (first + i) % n
		line := r.Segment(at)
		f := Face{Side: r.Sides[at], At: at, Name: names[at], Left: s.Width, Length: line.Length(), Line: line}
		s.Faces = append(s.Faces, f)
		s.Width += f.Length
	}
	return s, true
}

// firstFace returns the side nearest north.
func firstFace(ix *index.Index, r *plan.Room) (first int) {
	least := math.Inf(1)
	for i := range r.Sides {
		bearing := render.Bearing(ix, r, i)
		if off := math.Min(bearing, 360-bearing); off < least-1e-6 {
			first, least = i, off
		}
	}
	return first
}

// Face returns the face of a side.
func (s Strip) Face(side plan.ID) (Face, bool) {
	for _, f := range s.Faces {
		if f.Side.ID == side {
			return f, true
		}
	}
	return Face{}, false
}

// FaceAt returns the face at a distance along the strip and how far along the face
// that is. Beyond the ends it is the first or the last face.
func (s Strip) FaceAt(x unit.Length) (f Face, along unit.Length) {
	for _, f = range s.Faces {
		if x < f.Left+f.Length {
			break
		}
	}
	return f, max(0, min(f.Length, x-f.Left))
}

// Medium is what an unfolded room is drawn for. Its Origin, Symbol and Parts
// count as for any drawing; At is where the left end of the strip meets the finished
// floor.
type Medium struct {
	render.Medium
	Side    plan.ID // the face in hand, or empty
	Opening plan.ID // the opening in hand, whose dimensions are drawn, or empty
	Fixture plan.ID // all faces of which are shown, or empty
	Datum   plan.Datum
}

// The margins round a strip in em heights of its text: names above, dimensions below.
const (
	stripAbove = 2.4
	stripBelow = 3.6
	stripAside = 1.5
)

// Fitted returns the medium with the scale and place at which a strip fits into a box.
func (m Medium) Fitted(s Strip, into scene.Rect) Medium {
	wide := into.Width() - 2*stripAside*m.Text
	high := into.Height() - (stripAbove+stripBelow)*m.Text
	tall := (s.Ceiling + s.Floor).Millimetres()
	m.Scale = max(1e-6, min(wide/s.Width.Millimetres(), high/tall))
	m.At = scene.Point{
		X: into.Middle().X - s.Width.Millimetres()*m.Scale/2,
		Y: into.Min.Y + stripAbove*m.Text + s.Ceiling.Millimetres()*m.Scale + (high-tall*m.Scale)/2,
	}
	return m
}

// ToStrip returns where a distance along the strip and a height above the finished
// floor stand in the scene.
func (m Medium) ToStrip(x, height unit.Length) scene.Point {
	return scene.Point{X: m.At.X + m.Length(x), Y: m.At.Y - m.Length(height)}
}

// FromStrip returns the distance along the strip and the height above the finished
// floor of a point of the scene.
func (m Medium) FromStrip(p scene.Point) (x, height unit.Length) {
	return unit.FromMillimetres((p.X - m.At.X) / m.Scale), unit.FromMillimetres((m.At.Y - p.Y) / m.Scale)
}
