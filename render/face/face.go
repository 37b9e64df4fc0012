// Package face draws one face of a wall as its builder needs it at the studs: every stud
// with its number and near edge, every box with how high it is, how it is held and how far
// it stands proud, and along the face how far each is from either end.
//
// What stands where is asked of package frame; nothing is computed again. Heights are
// above the subfloor, from which they are measured before a floor is laid; of a wall that
// stays closed above the finished floor, which is laid then.
package face

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/cut"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/unfold"
)

// Face is a wall as seen standing in its room, with the boxes that are on it.
type Face struct {
	Room  *plan.Room
	Wall  *frame.Wall
	Boxes []Box        // from the left, the lowest first
	Gone  []Box        // the struck ones, which nobody builds
	studs []frame.Stud // of full height, from the left
	ix    *index.Index
}

// Box is an opening on a face. Cut is of no use where it is not built in.
type Box struct {
	*plan.Opening
	Rect frame.Rect // above the finished floor
	cut.Cut
	IsBuiltIn bool
}

// Of returns the faces of a room that are walls and carry boxes, in the order of its sides.
// What is gone is in none. SetBack is how far behind the finish the edition lets a ring end.
func Of(ix *index.Index, room plan.ID, setBack unit.Length) (all []Face) {
	view, ok := ix.RoomView(room)
	if !ok {
		return nil
	}
	for i := range view.Sides {
		side := &view.Sides[i]
		f := Face{Room: view.Room, Wall: frame.WallIn(side, view.Room), ix: ix}
		f.studs = f.Wall.Studs()
		for _, o := range side.Openings {
			if side.Side.Kind != plan.SideWall {
				continue
			}
			b := Box{Opening: o, Rect: frame.RectOf(o, view.Room)}
			if o.IsGone() {
				f.Gone = append(f.Gone, b)
				continue
			}
			b.Cut, b.IsBuiltIn = cut.Of(side, view.Room, o, setBack)
			b.IsBuiltIn = b.IsBuiltIn && !o.Status.IsOld() // what is there already is held as it is
			f.Boxes = append(f.Boxes, b)
		}
		slices.SortStableFunc(f.Boxes, func(x, y Box) int {
			return cmp.Or(cmp.Compare(x.Along(), y.Along()), cmp.Compare(x.Rect.Bottom, y.Rect.Bottom))
		})
		if len(f.Boxes) > 0 {
			all = append(all, f)
		}
	}
	return all
}

// Along returns how far the centre of the box is from the left end of its face.
func (b Box) Along() unit.Length { return b.Opening.At.Along }

// Name returns what the face is called.
func (f Face) Name() words.Text { return table.Wall(f.ix, f.Room, f.Wall.Side.ID) }

// Datum is the floor that heights are measured from: the subfloor, but of a wall of which a
// part stays closed the finished floor, which is laid already.
func (f Face) Datum() plan.Datum {
	if f.Wall.Side.IsClosedAnywhere() {
		return plan.FinishedFloor
	}
	return plan.Subfloor
}

// Up turns a height above the finished floor into one above the datum.
func (f Face) Up(height unit.Length) unit.Length {
	if f.Datum() == plan.FinishedFloor {
		return height
	}
	return height + f.Room.FloorThickness()
}

// Height says how high above the datum something is, which it names where that is the
// finished floor.
func (f Face) Height(finished unit.Length) words.Text {
	if f.Datum() == plan.FinishedFloor && f.Room.FloorThickness() > 0 {
		return Finished(finished)
	}
	return words.New("framing.length", "{0}", words.Height(f.Up(finished)))
}

// Finished says a height above the finished floor as such.
func Finished(height unit.Length) words.Text {
	return words.New("walls.finished-floor", "fin. {0}", words.Height(height))
}

// drawing is a face on its way to paper.
type drawing struct {
	Face
	m      unfold.Medium
	items  []scene.Item
	left   float64 // x of the ends of the face
	right  float64
	top    float64 // y of the ceiling
	floor  float64 // y of the datum
	stood  []scene.Rect
	spoken []scene.Rect // where text stands already
	untold []plan.ID
}

// Bounds returns the room that the face takes, its left end at the finished floor where the
// medium's At is.
func (f Face) Bounds(m unfold.Medium) scene.Rect {
	d := f.begun(m)
	d.put(scene.Stroke{Path: scene.Rect{Min: scene.Point{X: d.left, Y: d.top}, Max: scene.Point{X: d.right, Y: d.floor}}.Path(), Pen: d.pen(7)})
	d.figures()
	return scene.Bounds(d.items...)
}

// Draw returns the face at the scale of a medium, and the boxes beside which nothing of
// theirs found room. The medium's Text is the size of its figures.
func (f Face) Draw(m unfold.Medium) (items []scene.Item, untold []plan.ID) {
	d := f.begun(m)
	for _, p := range unfold.DrawFace(f.ix, f.Room.ID, f.Wall.Side.ID, d.m) {
		d.items = append(d.items, p.Items...)
	}
	d.put(scene.Stroke{Path: scene.LinePath(scene.Point{X: d.left, Y: d.floor}, scene.Point{X: d.right, Y: d.floor}), Pen: d.pen(7)})
	d.figures()
	d.heldEdges()
	d.flags()
	return d.items, d.untold
}

func (f Face) begun(m unfold.Medium) *drawing {
	m.Datum = f.Datum()
	d := &drawing{Face: f, m: m}
	d.left, d.right = m.ToStrip(0, 0).X, m.ToStrip(f.Wall.Length, 0).X
	d.top, d.floor = m.ToStrip(0, f.ceiling()).Y, m.ToStrip(0, -f.Up(0)).Y
	return d
}

// figures writes what stands round the face.
func (d *drawing) figures() {
	d.along(d.studs())
	d.heights()
}

func (f Face) ceiling() unit.Length { return cmp.Or(f.Room.Ceiling, unfold.AssumedCeiling) }

func (d *drawing) put(items ...scene.Item) { d.items = append(d.items, items...) }

// rect is where a part of the face stands in the scene.
func (d *drawing) rect(r frame.Rect) scene.Rect {
	return scene.Rect{Min: d.m.ToStrip(r.Left, r.Top), Max: d.m.ToStrip(r.Right, r.Bottom)}
}

// pen is so many of the thinnest lines wide.
func (d *drawing) pen(times float64) scene.Pen {
	return scene.Pen{Width: times * d.m.Pixel, Color: d.m.Theme.Ink}
}

// figure writes a length as a tape under a hand is read.
func (d *drawing) figure(l unit.Length) string {
	return d.say("framing.length", "{0}", words.Height(l))
}

func (d *drawing) say(id, english string, args ...any) string {
	return d.m.Voice.Say(words.New(id, english, args...))
}
