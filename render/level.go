package render

import (
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// Level returns the drawing of what stands in or near clip on one level, sorted by
// layer and ID. Whole rooms are drawn, and a room's labels depend on that room
// alone, so a part drawn anew joins what was drawn before. It is deterministic, and
// nil where the level is not in the plan.
func Level(ix *plan.Index, level plan.ID, findings []fill.Finding, m Medium, clip geom.Box) []Piece {
	d := newDrawing(ix, level, m)
	d.gather(clip)
	d.sortFindings(findings)
	for _, room := range d.rooms {
		d.walls(room)
		d.ground(room)
		d.breaks(room)
		d.fixtures(room)
		d.openings(room)
	}
	d.controls()
	d.letter()
	sortPieces(d.pieces)
	return d.pieces
}

// drawing is one level in the making.
type drawing struct {
	ix       *plan.Index
	level    plan.ID
	m        Medium
	theme    *Theme
	rooms    []*roomDrawing // in the order of IDs
	in       map[plan.ID]*roomDrawing
	drawn    map[plan.ID]bool          // breaks, each drawn once
	places   map[plan.ID]*openingPlace // openings in view
	joins    []*plan.Control           // those of openings in view
	found    findings
	field    field
	standing field             // boxes of fixtures: names rather stand beside them
	named    []*fixtureDrawing // whose names are to be written
	wanting  []*label          // that found no place beside their body
	pieces   []Piece
}

// roomDrawing is a room in view with what its labels must keep clear of.
type roomDrawing struct {
	view    plan.RoomView
	outline []scene.Point
	bounds  scene.Rect
	window  scene.Rect // that of the medium
	walls   []wall     // one a side
	groups  []*group
	paper   scene.Color
}

func newDrawing(ix *plan.Index, level plan.ID, m Medium) *drawing {
	return &drawing{
		ix: ix, level: level, m: m, theme: &m.Theme,
		in: map[plan.ID]*roomDrawing{}, drawn: map[plan.ID]bool{}, places: map[plan.ID]*openingPlace{},
		field: newField(m.Text), standing: newField(m.Text),
	}
}

// gather finds the rooms in view.
func (d *drawing) gather(clip geom.Box) {
	margin := max(plan.MaxPartition, unit.FromMillimetres(6*d.m.Symbol/d.m.Scale))
	for _, id := range d.ix.Search(d.level, clip.Expand(margin)) {
		if id.Kind() != plan.KindRoom || d.m.hides(id) {
			continue
		}
		view, ok := d.ix.RoomView(id)
		if !ok || len(view.Sides) < 3 {
			continue
		}
		r := &roomDrawing{view: view, paper: d.theme.Paper}
		if d.m.Kind == Board {
			r.paper = d.theme.RoomTint(view.Room.Use)
		}
		for i, s := range view.Sides {
			p := d.m.ToScene(s.Line.A)
			r.outline = append(r.outline, p)
			if i == 0 {
				r.bounds = scene.Rect{Min: p, Max: p}
			}
			r.bounds = scene.Rect{
				Min: scene.Point{X: min(r.bounds.Min.X, p.X), Y: min(r.bounds.Min.Y, p.Y)},
				Max: scene.Point{X: max(r.bounds.Max.X, p.X), Y: max(r.bounds.Max.Y, p.Y)},
			}
		}
		r.window = d.m.Window
		d.rooms = append(d.rooms, r)
		d.in[id] = r
	}
}

// ground paints the inside of a room over the wall bodies: its tint on a board, paper
// on a sheet.
func (d *drawing) ground(r *roomDrawing) {
	d.piece(r.view.Room.ID, LayerRooms, scene.Fill{Path: scene.Polygon(d.snapped(r.outline...)...), Color: r.paper})
}

// findings are those of the rooms in view, by what they are of.
type findings struct {
	byOpening map[plan.ID][]*fill.Finding
	stretched []*fill.Finding
}

func (d *drawing) sortFindings(all []fill.Finding) {
	d.found.byOpening = map[plan.ID][]*fill.Finding{}
	for i := range all {
		f := &all[i]
		if f.Level != "" && f.Level != d.level || f.Room != "" && len(d.rooms) > 0 && d.in[f.Room] == nil {
			continue
		}
		if f.Opening != "" {
			d.found.byOpening[f.Opening] = append(d.found.byOpening[f.Opening], f)
		}
		if len(f.Stretches) > 0 && (f.Room == "" || d.in[f.Room] != nil) {
			d.found.stretched = append(d.found.stretched, f)
		}
	}
}

// worst returns the gravest finding of an opening that is not set aside, or nil.
func (f findings) worst(opening plan.ID) (worst *fill.Finding) {
	for _, g := range f.byOpening[opening] {
		if g.Waived == nil && (worst == nil || g.Severity > worst.Severity) {
			worst = g
		}
	}
	return worst
}

// severityColor returns the colour of a severity.
func (t *Theme) severityColor(s fill.Severity) scene.Color {
	switch s {
	case fill.Stop:
		return t.Stop
	case fill.Warn:
		return t.Warn
	}
	return t.Note
}
