package level

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// Ghost returns the outlines of the rooms of another level in or near clip, and its stairs,
// faint, to be seen through the drawing of a level that stands over or under it.
func Ghost(ix *index.Index, level plan.ID, m render.Medium, clip geom.Box) []render.Piece {
	d := &drawing{Drawing: draft.New(ix, level, m)}
	pen := d.Dashed(d.MutedPen(), 4, 3)
	for _, id := range RoomsIn(ix, level, m, clip) {
		r := ix.RoomOf(id)
		if r == nil {
			continue
		}
		var outline []scene.Point
		for _, corner := range r.Outline() {
			outline = append(outline, d.snapped(m.ToScene(corner))...)
		}
		d.Put(id, render.LayerGhost, scene.Stroke{Path: scene.Polygon(outline...), Pen: pen})
	}
	for f := range fixturesOf(ix.Plan(), level) {
		if f.Kind == plan.FixtureStairs && f.Leads == "" {
			d.ghostStairs(f)
		}
	}
	render.SortPieces(d.Pieces)
	return d.Pieces
}

func fixturesOf(p plan.Plan, level plan.ID) func(func(*plan.Fixture) bool) {
	return func(yield func(*plan.Fixture) bool) {
		if l := p.Level(level); l != nil {
			for f := range l.Fixtures.All() {
				if !yield(f) {
					return
				}
			}
		}
	}
}

// ghostStairs draws stairs of another level as they are seen from this one.
func (d *drawing) ghostStairs(f *plan.Fixture) *fixtureDrawing {
	frame, _, ok := d.Index.FixtureFrame(f)
	if !ok {
		return nil
	}
	x := &fixtureDrawing{d: d, of: f, f: d.face(frame), w: f.Width.Millimetres(), h: f.Depth.Millimetres(), isGhost: true}
	x.draw()
	d.Put(f.ID, render.LayerGhost, x.items...)
	return x
}

// stairsHere draws the stairs of other levels that lead to this one.
func (d *drawing) stairsHere() {
	for _, l := range d.Index.Plan().Levels {
		if l.ID == d.Level {
			continue
		}
		for f := range l.Fixtures.All() {
			if f.Leads != d.Level || d.Medium.Hides(f.ID) || !d.isInRoom(f) {
				continue
			}
			if x := d.ghostStairs(f); x != nil {
				d.named = append(d.named, x)
				d.Avoid(f.ID, x.items...)
				d.standing.Block(scene.Bounds(x.items...), f.ID)
			}
		}
	}
}

// isInRoom reports whether a fixture of another level lies over or under a room in view.
func (d *drawing) isInRoom(f *plan.Fixture) bool {
	place, _, ok := d.Index.FixtureFrame(f)
	middle := place.Point(f.Width/2, f.Depth/2)
	return ok && slices.ContainsFunc(d.rooms, func(r *roomDrawing) bool { return r.view.Room.Outline().Contains(middle) })
}

// The ways that stairs go, as drawings have it; common practice.
var (
	stairsUp   = words.New("stairs.up", "UP")
	stairsDown = words.New("stairs.down", "DN")
)

// stairsWay says whether stairs go up or down from the level drawn; nothing where they
// lead to no other.
func (x *fixtureDrawing) stairsWay() (way words.Text, ok bool) {
	p := x.d.Index.Plan()
	_, own := p.Fixture(x.of.ID)
	to := p.Level(x.of.Leads)
	if own == nil || to == nil {
		return way, false
	}
	if isUp := to.Elevation > own.Elevation; isUp != x.isGhost {
		return stairsUp, true
	}
	return stairsDown, true
}
