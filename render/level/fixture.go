package level

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/scene"
)

// fixtures draws what stands in a room: quiet outlines with a hint of what they are.
func (d *drawing) fixtures(r *roomDrawing) {
	views := r.view.Standing
	for _, s := range r.view.Sides {
		views = append(views[:len(views):len(views)], s.Fixtures...)
	}
	d.fixtureViews(views)
}

func (d *drawing) fixtureViews(views []index.FixtureView) {
	for _, v := range views {
		if d.Medium.Hides(v.Fixture.ID) {
			continue
		}
		x := &fixtureDrawing{d: d, of: v.Fixture, f: d.face(v.Frame), w: v.Fixture.Width.Millimetres(), h: v.Fixture.Depth.Millimetres()}
		x.draw()
		d.named = append(d.named, x)
		d.Put(v.Fixture.ID, render.LayerFixtures, x.items...)
		d.Avoid(v.Fixture.ID, x.items...)
		d.standing.Block(scene.Bounds(x.items...), v.Fixture.ID)
		d.fixtureViews(v.OnIt)
	}
}

// fixtureDrawing is one fixture in the making, in millimetres from its back left
// corner as seen from its front.
type fixtureDrawing struct {
	d     *drawing
	of    *plan.Fixture
	f     face
	w, h  float64
	items []scene.Item
	// isGhost says that it is of another level.
	isGhost bool
}

// bodies draws each body that a kind of fixture may have.
var bodies = map[string]func(*fixtureDrawing){
	"plain":   (*fixtureDrawing).plain,
	"rounded": (*fixtureDrawing).soft,
	"dashed":  (*fixtureDrawing).above,
	"crossed": (*fixtureDrawing).cabinet,
	"sink":    (*fixtureDrawing).sink,
	"basin":   (*fixtureDrawing).basin,
	"range":   (*fixtureDrawing).rings,
	"toilet":  (*fixtureDrawing).toilet,
	"tub":     (*fixtureDrawing).tub,
	"shower":  (*fixtureDrawing).shower,
	"round":   (*fixtureDrawing).heater,
	"panel":   (*fixtureDrawing).panel,
	"mirror":  (*fixtureDrawing).mirror,
	"bed":     (*fixtureDrawing).bed,
	"desk":    (*fixtureDrawing).desk,
	"rod":     (*fixtureDrawing).rod,
	"stairs":  (*fixtureDrawing).treads,
}

func (x *fixtureDrawing) pen() scene.Pen {
	if x.isGhost {
		return x.d.Dashed(x.d.MutedPen(), 4, 3)
	}
	return x.d.MutedPen()
}

func (x *fixtureDrawing) stroke(p scene.Path) {
	x.items = append(x.items, scene.Stroke{Path: p, Pen: x.pen()})
}

func (x *fixtureDrawing) dashed(p scene.Path) {
	x.items = append(x.items, scene.Stroke{Path: p, Pen: x.d.Dashed(x.pen(), 5, 3)})
}

// rounded returns a box in the fixture's own millimetres with rounded corners.
func (x *fixtureDrawing) rounded(l, t, r, b, radius float64) scene.Path {
	return scene.Rect{Min: scene.Point{X: l, Y: t}, Max: scene.Point{X: r, Y: b}}.RoundedPath(radius).Placed(x.f.t)
}

func (x *fixtureDrawing) circle(cx, cy, radius float64) scene.Path {
	return scene.Circle(scene.Point{X: cx, Y: cy}, radius).Placed(x.f.t)
}

// draw draws the body of the kind; one that is not known is plain.
func (x *fixtureDrawing) draw() {
	body := bodies[x.d.Medium.Catalogue().Fixture(x.of.Kind).Body]
	if body == nil {
		body = (*fixtureDrawing).plain
	}
	body(x)
}

func (x *fixtureDrawing) plain() { x.stroke(x.f.box(0, 0, x.w, x.h)) }

// soft has rounded corners, as what is moulded or upholstered.
func (x *fixtureDrawing) soft() { x.stroke(x.rounded(0, 0, x.w, x.h, min(60, 0.1*x.w))) }

// above is what hangs above the plane the plan is cut at.
func (x *fixtureDrawing) above() { x.dashed(x.f.box(0, 0, x.w, x.h)) }

// rod draws a line along its middle.
func (x *fixtureDrawing) rod() { x.dashed(x.f.line(0, x.h/2, x.w, x.h/2)) }

// mirror draws a thin double line along its back.
func (x *fixtureDrawing) mirror() {
	deep := max(25, 2.5*x.d.Medium.Pixel/x.d.Medium.Scale)
	x.stroke(x.f.box(0, 0, x.w, deep))
}

func (x *fixtureDrawing) sink() {
	x.stroke(x.rounded(0, 0, x.w, x.h, 0.1*x.h))
	edge := 0.12 * min(x.w, x.h)
	if x.w < 1.3*x.h {
		x.stroke(x.rounded(edge, 1.6*edge, x.w-edge, x.h-edge, 0.16*x.h))
	} else {
		mid := x.w / 2
		x.stroke(x.rounded(edge, 1.6*edge, mid-edge/2, x.h-edge, 0.14*x.h))
		x.stroke(x.rounded(mid+edge/2, 1.6*edge, x.w-edge, x.h-edge, 0.14*x.h))
	}
	x.stroke(x.circle(x.w/2, 0.8*edge, 0.35*edge))
}

func (x *fixtureDrawing) basin() {
	x.stroke(x.rounded(0, 0, x.w, x.h, 0.3*x.h))
	x.stroke(x.oval(x.w/2, x.h*0.56, x.w*0.34, x.h*0.3))
	x.stroke(x.circle(x.w/2, x.h*0.13, 0.045*x.h))
}

func (x *fixtureDrawing) oval(cx, cy, rx, ry float64) scene.Path {
	t := scene.Transform{X: scene.Point{X: rx}, Y: scene.Point{Y: ry}, At: scene.Point{X: cx, Y: cy}}
	return scene.Circle(scene.Point{}, 1).Placed(t).Placed(x.f.t)
}

func (x *fixtureDrawing) rings() {
	x.plain()
	r := 0.16 * min(x.w, x.h)
	for _, at := range [][2]float64{{.27, .3}, {.73, .3}, {.27, .7}, {.73, .7}} {
		x.stroke(x.circle(at[0]*x.w, at[1]*x.h, r))
	}
}

func (x *fixtureDrawing) toilet() {
	tank := 0.28 * x.h
	x.stroke(x.rounded(0, 0, x.w, tank, 0.15*tank))
	x.stroke(x.oval(x.w/2, tank+(x.h-tank)/2, x.w*0.42, (x.h-tank)/2))
	x.stroke(x.oval(x.w/2, tank+(x.h-tank)*0.52, x.w*0.28, (x.h-tank)*0.34))
}

func (x *fixtureDrawing) tub() {
	x.soft()
	edge := 0.1 * min(x.w, x.h)
	x.stroke(x.rounded(edge, edge, x.w-edge, x.h-edge, 0.3*min(x.w, x.h)))
	if x.w > x.h {
		x.stroke(x.circle(2.6*edge, x.h/2, 0.35*edge))
	} else {
		x.stroke(x.circle(x.w/2, 2.6*edge, 0.35*edge))
	}
}

func (x *fixtureDrawing) shower() {
	x.plain()
	r := 0.05 * min(x.w, x.h)
	for _, to := range [][2]float64{{0, 0}, {1, 0}, {1, 1}, {0, 1}} {
		cx, cy := x.w/2, x.h/2
		away := 2.2 * r
		dx, dy := to[0]*x.w-cx, to[1]*x.h-cy
		k := away / max(dx, -dx, dy, -dy)
		x.stroke(x.f.line(cx+dx*k, cy+dy*k, to[0]*x.w, to[1]*x.h))
	}
	x.stroke(x.circle(x.w/2, x.h/2, r))
}

// bed draws pillows at its back and the turned edge of the cover.
func (x *fixtureDrawing) bed() {
	x.soft()
	edge := 0.06 * x.w
	pillow := min(0.19*x.h, 400)
	if x.w > 1200 {
		x.stroke(x.rounded(edge, edge, x.w/2-edge/2, edge+pillow, 0.3*pillow))
		x.stroke(x.rounded(x.w/2+edge/2, edge, x.w-edge, edge+pillow, 0.3*pillow))
	} else {
		x.stroke(x.rounded(edge, edge, x.w-edge, edge+pillow, 0.3*pillow))
	}
	x.stroke(x.f.line(0, 1.6*edge+pillow, x.w, 1.6*edge+pillow))
}

// treads draws a line for each step of about 10 in and an arrow the way they go from the
// level drawn: from their front, or from their other end where they come from elsewhere.
func (x *fixtureDrawing) treads() {
	x.plain()
	long, across := x.w, x.h
	line := func(at float64) scene.Path { return x.f.line(at, 0, at, x.h) }
	if x.h > x.w {
		long, across = x.h, x.w
		line = func(at float64) scene.Path { return x.f.line(0, at, x.w, at) }
	}
	n := max(2, int(long/254+0.5))
	for i := 1; i < n; i++ {
		x.stroke(line(long * float64(i) / float64(n)))
	}
	step, half := long/float64(n), 0.09*across
	x.stroke(scene.LinePath(x.onWay(0.5*step, 0), x.onWay(long-0.5*step, 0)))
	tip := long - 0.5*step
	x.stroke(scene.Polyline(x.onWay(tip-1.5*half, -half), x.onWay(tip, 0), x.onWay(tip-1.5*half, half)))
}

// onWay returns the point so far along the way that stairs go from the level drawn, and so
// far off its middle line.
func (x *fixtureDrawing) onWay(along, off float64) scene.Point {
	if x.comesHere() {
		along = max(x.w, x.h) - along
	}
	if x.h > x.w {
		return x.f.at(x.w/2+off, x.h-along)
	}
	return x.f.at(along, x.h/2+off)
}

// comesHere reports whether x is stairs of another level that lead to the one drawn.
func (x *fixtureDrawing) comesHere() bool { return x.isGhost && x.of.Leads == x.d.Level }

// panel fills half of it: live parts behind a door.
func (x *fixtureDrawing) panel() {
	x.plain()
	half := scene.Polygon(x.f.at(0, 0), x.f.at(x.w, 0), x.f.at(0, x.h))
	x.items = append(x.items, scene.Fill{Path: half, Color: x.d.Theme.Muted})
}

func (x *fixtureDrawing) heater() {
	r := min(x.w, x.h) / 2
	x.stroke(x.circle(x.w/2, x.h/2, r))
	x.stroke(x.circle(x.w/2, x.h/2, 0.15*r))
}

// desk draws the sitter's edge.
func (x *fixtureDrawing) desk() {
	x.soft()
	x.stroke(x.f.line(0.06*x.w, 0.88*x.h, 0.94*x.w, 0.88*x.h))
}

// cabinet crosses out what reaches from floor up without a worktop.
func (x *fixtureDrawing) cabinet() {
	x.plain()
	x.stroke(x.f.line(0, 0, x.w, x.h))
}

// fixtureNames writes the names of fixtures, or the letters of machines, inside their
// outlines, clear of their lines and of what stands on and before them; a name that
// finds no such place is left out.
func (d *drawing) fixtureNames() {
	for _, x := range d.named {
		text := x.of.Name
		if letter, ok := d.Medium.Catalogue().Fixture(x.of.Kind).LetterText(); ok && text == "" {
			text = d.Medium.Voice.Say(letter)
		}
		inside := scene.Bounds(scene.Fill{Path: x.f.box(0, 0, x.w, x.h)})
		wish := inside.Middle()
		if way, ok := x.stairsWay(); ok {
			text, wish = joinedText(d.Medium.Voice.Say(way), text), x.onWay(0, 0)
		}
		if text == "" {
			continue
		}
		run := scene.Run{Text: text, Size: d.Medium.SecondSize() * 0.95, Color: d.Theme.Muted}
		if at, ok := d.NameSpot(run, inside, wish); ok {
			d.WriteName(x.of.ID, run, at)
		}
	}
}
