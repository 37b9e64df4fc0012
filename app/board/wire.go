package board

import (
	"math"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/scene"
)

// wires says which cables a picture shows: those of the level, or those named.
type wires struct {
	all   bool
	named []plan.ID // in order
}

func (w wires) same(v wires) bool { return w.all == v.all && (w.all || slices.Equal(w.named, v.named)) }

// has reports whether a cable is shown, where it is in view.
func (w wires) has(c *plan.Cable) bool { return w.all || slices.Contains(w.named, c.ID) }

// mostNamed bounds at how many chosen things cables are shown.
const mostNamed = 32

// wiresOf returns the cables to show: all where the preview asks for them, else those
// chosen and those that end in what is chosen.
func wiresOf(p Picture) (w wires) {
	if w.all = p.Preview.Cables; w.all || p.Index == nil {
		return w
	}
	for _, id := range p.Selected[:min(len(p.Selected), mostNamed)] {
		if id.Kind() == plan.KindCable {
			w.named = append(w.named, id)
		}
		for _, c := range p.Index.CablesAt(id) {
			w.named = append(w.named, c.ID)
		}
	}
	slices.Sort(w.named)
	w.named = slices.Compact(w.named)
	return w
}

// wired adds the cables to a picture's pieces, with the controls.
func (r request) wired(pieces []render.Piece) []render.Piece {
	var cables []render.Piece
	for _, c := range r.cables() {
		if piece, ok := r.cable(c); ok {
			cables = append(cables, piece)
		}
	}
	if len(cables) == 0 {
		return pieces
	}
	at := slices.IndexFunc(pieces, func(p render.Piece) bool { return p.Layer > render.LayerControls })
	if at < 0 {
		at = len(pieces)
	}
	return slices.Insert(slices.Clone(pieces), at, cables...)
}

// cables lists the cables to be drawn that may be in view, by ID.
func (r request) cables() (found []*plan.Cable) {
	ix := r.pic.Index
	if !r.wires.all {
		for _, id := range r.wires.named {
			if c, ok := ix.Plan().Cables.Get(id); ok {
				found = append(found, c)
			}
		}
		return found
	}
	seen := map[plan.ID]bool{}
	for _, id := range ix.Search(r.pic.Level, r.box()) {
		for _, c := range ix.CablesAt(id) {
			if !seen[c.ID] {
				seen[c.ID] = true
				found = append(found, c)
			}
		}
	}
	slices.SortFunc(found, func(a, b *plan.Cable) int { return compareIDs(a.ID, b.ID) })
	return found
}

func compareIDs(a, b plan.ID) int {
	if a < b {
		return -1
	}
	if a > b {
		return 1
	}
	return 0
}

// cableDash is the line of a cable in pixels of a plain screen: a chain of dashes and
// dots, to be told from the dashes of a control.
var cableDash = [...]float64{9, 3, 1.5, 3}

// cable draws a cable as a quiet broken line from end to end. It leaves a face square to
// it, so that it does not run along the wall.
func (r request) cable(c *plan.Cable) (render.Piece, bool) {
	from, into, okFrom := r.endOf(c.From)
	to, back, okTo := r.endOf(c.To)
	if !okFrom || !okTo {
		return render.Piece{}, false
	}
	m := r.medium()
	a, b := m.ToScene(from), m.ToScene(to)
	pull := max(8*m.Pixel, min(40*m.Pixel, 0.18*math.Hypot(b.X-a.X, b.Y-a.Y)))
	var path scene.Path
	path.MoveTo(a)
	path.CubicTo(a.Add(direction(into).Mul(pull)), b.Add(direction(back).Mul(pull)), b)
	pen := scene.Pen{Width: m.Pixel, Color: r.pic.Theme.Muted}
	for _, l := range cableDash {
		pen.Dash = append(pen.Dash, l*m.Pixel)
	}
	stroke := scene.Stroke{Path: path, Pen: pen}
	return render.Piece{ID: c.ID, Layer: render.LayerControls, Bounds: scene.Bounds(stroke), Items: []scene.Item{stroke}}, true
}

// endOf returns where a cable meets an opening or a panel of the level, and the
// direction from there into the room; none in a ceiling or floor.
func (r request) endOf(id plan.ID) (at, into geom.Point, ok bool) {
	ix := r.pic.Index
	if o, level := ix.Plan().Opening(id); o != nil && level.ID == r.pic.Level {
		place, ok := ix.Place(o.At)
		return place.Foot, place.Into, ok
	}
	if f, level := ix.Plan().Fixture(id); f != nil && level.ID == r.pic.Level {
		outline, ok := ix.Footprint(f)
		return outline.Centroid(), geom.Point{}, ok
	}
	return at, into, false
}

// lineAt returns the control or cable whose line runs within so many pixels of a place
// of the painted frame, the nearest of several.
func (p *painted) lineAt(at scene.Point, reach float64) (id plan.ID) {
	least := reach
	for _, i := range p.cells.near(p.pieces, at, reach) {
		piece := &p.pieces[i]
		if piece.Layer != render.LayerControls {
			continue
		}
		for _, line := range flattened(piece.Items) {
			for j := 1; j < len(line); j++ {
				if d := away(at, line[j-1], line[j]); d < least {
					id, least = piece.ID, d
				}
			}
		}
	}
	return id
}

// linesOf returns the lines painted for a control or cable.
func (p *painted) linesOf(id plan.ID) (lines [][]scene.Point) {
	for i := range p.pieces {
		if piece := &p.pieces[i]; piece.ID == id && piece.Layer == render.LayerControls {
			lines = append(lines, flattened(piece.Items)...)
		}
	}
	return lines
}

// curveSteps is how many straight lines stand for a curve.
const curveSteps = 12

// flattened returns strokes as lines from point to point.
func flattened(items []scene.Item) (lines [][]scene.Point) {
	for _, item := range items {
		stroke, ok := item.(scene.Stroke)
		if !ok {
			continue
		}
		stroke.Path.Each(func(op scene.Op, p []scene.Point) {
			switch op {
			case scene.MoveOp:
				lines = append(lines, []scene.Point{p[0]})
			case scene.LineOp:
				lines[len(lines)-1] = append(lines[len(lines)-1], p[0])
			case scene.CubicOp:
				line := lines[len(lines)-1]
				from := line[len(line)-1]
				for i := 1; i <= curveSteps; i++ {
					line = append(line, onCurve(from, p[0], p[1], p[2], float64(i)/curveSteps))
				}
				lines[len(lines)-1] = line
			}
		})
	}
	return lines
}

// onCurve returns the point of a cubic Bézier curve at a share of its way.
func onCurve(a, b, c, d scene.Point, t float64) scene.Point {
	u := 1 - t
	return a.Mul(u * u * u).Add(b.Mul(3 * u * u * t)).Add(c.Mul(3 * u * t * t)).Add(d.Mul(t * t * t))
}

// away returns how far a point is from a straight line between two others.
func away(p, a, b scene.Point) float64 {
	v, w := b.Sub(a), p.Sub(a)
	n := v.X*v.X + v.Y*v.Y
	t := 0.0
	if n > 0 {
		t = max(0, min(1, (v.X*w.X+v.Y*w.Y)/n))
	}
	near := a.Add(v.Mul(t))
	return math.Hypot(p.X-near.X, p.Y-near.Y)
}
