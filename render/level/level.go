// Package level draws the plan of one level: plan + findings + Medium -> pieces of
// scene, one file a layer.
//
// It decides no rule and stores nothing. What is in view is found by the index, so the
// cost follows the view and not the plan.
package level

import (
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// Draw returns the drawing of what stands in or near clip on one level, sorted by
// layer and ID. Whole rooms are drawn, and a room's labels depend on that room
// alone, so a part drawn anew joins what was drawn before. It is deterministic, and
// nil where the level is not in the plan.
func Draw(ix *index.Index, level plan.ID, findings []rule.Finding, m render.Medium, clip geom.Box) []render.Piece {
	d := newDrawing(ix, level, m)
	d.gather(clip)
	d.TakeFindings(findings, func(room plan.ID) bool { return d.in[room] != nil })
	for _, room := range d.rooms {
		d.walls(room)
		d.ground(room)
		d.breaks(room)
		d.fixtures(room)
		d.openings(room)
	}
	d.stairsHere()
	d.controls()
	d.moves()
	d.letter()
	render.SortPieces(d.Pieces)
	return d.Pieces
}

// drawing is one level in the making.
type drawing struct {
	*draft.Drawing
	rooms    []*roomDrawing // in the order of IDs
	in       map[plan.ID]*roomDrawing
	drawn    map[plan.ID]bool          // breaks, each drawn once
	places   map[plan.ID]*openingPlace // openings in view
	joins    []*plan.Control           // those of openings in view
	standing draft.Obstacles           // boxes of fixtures: names rather stand beside them
	named    []*fixtureDrawing         // whose names are to be written
}

// roomDrawing is a room in view with what its labels must keep clear of.
type roomDrawing struct {
	draft.Area
	view   index.RoomView
	walls  []wall // one a side
	groups []*group
	paper  scene.Color
}

func newDrawing(ix *index.Index, level plan.ID, m render.Medium) *drawing {
	return &drawing{
		Drawing: draft.New(ix, level, m),
		in:      map[plan.ID]*roomDrawing{}, drawn: map[plan.ID]bool{}, places: map[plan.ID]*openingPlace{},
		standing: draft.NewObstacles(m.Text),
	}
}

// RoomsIn lists the rooms of a level that Draw draws for a clip, but for hidden ones: no
// finding of another room shows.
func RoomsIn(ix *index.Index, level plan.ID, m render.Medium, clip geom.Box) (rooms []plan.ID) {
	margin := max(index.MaxPartition, unit.FromMillimetres(6*m.Symbol/m.Scale))
	for _, id := range ix.Search(level, clip.Expand(margin)) {
		if id.Kind() == plan.KindRoom {
			rooms = append(rooms, id)
		}
	}
	return rooms
}

// gather finds the rooms in view.
func (d *drawing) gather(clip geom.Box) {
	for _, id := range RoomsIn(d.Index, d.Level, d.Medium, clip) {
		if d.Medium.Hides(id) {
			continue
		}
		view, ok := d.Index.RoomView(id)
		if !ok || len(view.Sides) < 3 {
			continue
		}
		r := &roomDrawing{view: view, paper: d.Theme.Paper}
		if d.Medium.Kind == render.Board {
			r.paper = d.Theme.RoomTint(view.Room.Use)
		}
		for i, s := range view.Sides {
			p := d.Medium.ToScene(s.Line.A)
			r.Outline = append(r.Outline, p)
			if i == 0 {
				r.Bounds = scene.Rect{Min: p, Max: p}
			}
			r.Bounds = scene.Rect{
				Min: scene.Point{X: min(r.Bounds.Min.X, p.X), Y: min(r.Bounds.Min.Y, p.Y)},
				Max: scene.Point{X: max(r.Bounds.Max.X, p.X), Y: max(r.Bounds.Max.Y, p.Y)},
			}
		}
		r.Window = d.Medium.Window
		d.rooms = append(d.rooms, r)
		d.in[id] = r
	}
}

// ground paints the inside of a room over the wall bodies: its tint on a board, paper
// on a sheet.
func (d *drawing) ground(r *roomDrawing) {
	d.Put(r.view.Room.ID, render.LayerRooms, scene.Fill{Path: scene.Polygon(d.snapped(r.Outline...)...), Color: r.paper})
}
