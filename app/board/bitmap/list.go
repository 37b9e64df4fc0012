// Package bitmap turns the pieces of a drawing into pixels fast enough for a board:
// symbols and text come from kept sprites, walls and rooms are boxes of whole pixels,
// and all else is drawn by package raster. It knows no toolkit.
//
// One scene unit is one pixel. A pixel comes out the same whatever part of the
// picture is painted and in however many bands, so a part painted anew joins the rest.
package bitmap

import (
	"image"
	"math"

	"studbay/render"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// List is pieces made ready to paint. It is read-only once made.
type List struct {
	paper   scene.Color
	steps   []step
	entries []entry
}

// step is one thing to paint, in the order of the pieces.
type step struct {
	box     image.Rectangle // of its ink
	sprite  *sprite         // put at a place
	at      image.Point
	color   scene.Color     // of an opaque box, where there is neither sprite nor drawing
	drawing *raster.Drawing // several things of no better sort
}

// entry tells a piece apart from any that looks different.
type entry struct {
	sum uint64
	box image.Rectangle
}

// NewList makes pieces ready to paint on a paper.
func NewList(pieces []render.Piece, paper scene.Color, sprites *Cache) *List {
	l := &List{paper: paper}
	r := recorder{list: l, sprites: sprites}
	for i := range pieces {
		p := &pieces[i]
		r.layer, r.sum, r.box = p.Layer, newSum(p), image.Rectangle{}
		if p.Symbol != nil {
			r.symbol(p)
		} else {
			scene.Paint(&r, p.Items...)
		}
		l.entries = append(l.entries, entry{r.sum.of(r.box), r.box})
	}
	return l
}

// recorder takes the items of pieces one by one.
type recorder struct {
	list    *List
	sprites *Cache
	layer   render.Layer
	sum     sum
	box     image.Rectangle // of the piece in hand
	inside  int             // how many layers with a clip or a name are begun
}

var _ scene.Painter = (*recorder)(nil)

func (r *recorder) add(s step) {
	r.box = r.box.Union(s.box)
	r.list.steps = append(r.list.steps, s)
}

// general returns the drawing that takes what has no faster way, with room for a box.
func (r *recorder) general(box image.Rectangle) *raster.Drawing {
	r.box = r.box.Union(box)
	steps := r.list.steps
	if n := len(steps); n > 0 && steps[n-1].drawing != nil {
		steps[n-1].box = steps[n-1].box.Union(box)
		return steps[n-1].drawing
	}
	d := raster.New(1, scene.Point{})
	r.list.steps = append(steps, step{box: box, drawing: d})
	return d
}

func (r *recorder) symbol(p *render.Piece) {
	foot := p.Symbol.Place.Foot
	s := r.sprites.symbol(p)
	at := image.Pt(int(round(foot.X)), int(round(foot.Y)))
	r.sum.number(s.sum)
	r.add(step{box: s.box.Add(at), sprite: s, at: at})
}

// Text implements scene.Painter.
func (r *recorder) Text(run scene.Run) {
	r.sum.text(run)
	if r.inside > 0 {
		r.general(around(run.Bounds().Expanded(run.Size/2), 2)).Text(run)
		return
	}
	s := r.sprites.run(run)
	at := image.Pt(int(round(run.At.X)), int(round(run.At.Y)))
	r.add(step{box: s.box.Add(at), sprite: s, at: at})
}

// Fill implements scene.Painter.
func (r *recorder) Fill(p scene.Path, c scene.Color) {
	r.sum.path(p)
	r.sum.color(c)
	all, straight := rings(p)
	isBody := r.layer == render.LayerWalls || r.layer == render.LayerRooms
	isUpright := straight && upright(p)
	if isUpright && r.inside == 0 && c.A == 0xff {
		for _, b := range rectangles(all) {
			r.add(step{box: b, color: c})
		}
		return
	}
	if straight && (isBody || isUpright) {
		p = moved(p, round)
	}
	r.general(around(p.Bounds(), 2)).Fill(p, c)
}

// Stroke implements scene.Painter.
func (r *recorder) Stroke(p scene.Path, pen scene.Pen) {
	r.sum.path(p)
	r.sum.pen(pen)
	p, pen = crispStroke(p, pen)
	r.general(around(scene.Stroke{Path: p, Pen: pen}.Bounds(), 2)).Stroke(p, pen)
}

// Begin implements scene.Painter.
func (r *recorder) Begin(l scene.Layer) {
	r.inside++
	var box image.Rectangle
	if l.Clip != nil {
		r.sum.rect(*l.Clip)
	}
	r.general(box).Begin(l)
}

// End implements scene.Painter.
func (r *recorder) End() {
	r.inside--
	r.general(image.Rectangle{}).End()
}

// Close implements scene.Painter. It never fails.
func (r *recorder) Close() error { return nil }

// around returns whole pixels over a box and so many more.
func around(b scene.Rect, more int) image.Rectangle {
	return image.Rect(
		int(math.Floor(b.Min.X))-more, int(math.Floor(b.Min.Y))-more,
		int(math.Ceil(b.Max.X))+more, int(math.Ceil(b.Max.Y))+more)
}
