package view

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// uprights are the faces of a box that stand.
var uprights = []plan.Part{plan.PartFront, plan.PartBack, plan.PartLeft, plan.PartRight}

// bodies draws each way that a kind of fixture may look, by how it is drawn from above;
// what has none is a plain box.
var bodies = map[string]func(*builder, index.FixtureView){
	"bed":    (*builder).bed,
	"basin":  (*builder).basin,
	"sink":   (*builder).sink,
	"tub":    (*builder).tub,
	"toilet": (*builder).toilet,
	"shower": (*builder).shower,
	"stairs": (*builder).stairs,
	"mirror": (*builder).mirror,
}

// fixture draws what stands in the room, and the openings in its faces.
func (b *builder) fixture(v index.FixtureView) {
	if body := bodies[part.All().Fixture(v.Fixture.Kind).Body]; body != nil {
		body(b, v)
	} else {
		b.cabinet(v)
	}
	low, high := b.reach(v)
	for _, o := range v.Openings {
		g := fixturePatch(v, o.At.Part, low, high)
		at := g
		at.origin = g.at(o.At.Along.Millimetres(), b.centre(o)-low)
		if o.At.Part == plan.PartTop {
			at.origin = g.at(o.At.Along.Millimetres(), g.high-o.At.Out.Millimetres())
		}
		b.add(b.plate(at, o, nil)...)
	}
}

// reach returns the heights between which a fixture stands: an inch at least, and not
// through the ceiling.
func (b *builder) reach(v index.FixtureView) (low, high float64) {
	low = v.Fixture.Bottom.Millimetres()
	return low, max(low+25.4, min(b.ceiling, v.Fixture.Top().Millimetres()))
}

// look says how a box is painted.
type look struct {
	side func(out Point) scene.Color
	top  scene.Color
}

// block draws a box between two heights over a footprint drawn in by some of its width
// and depth, and returns its top.
func (b *builder) block(v index.FixtureView, low, high, in float64, l look) patch {
	v = inset(v, in)
	for _, p := range uprights {
		g := fixturePatch(v, p, low, high)
		b.solid(g.box(g.whole(), l.side(g.out), b.pen(1.25)))
	}
	top := fixturePatch(v, plan.PartTop, low, high)
	b.solid(top.box(top.whole(), l.top, b.pen(1.25)))
	under := top
	under.origin, under.out = top.origin.add(Point{Z: low - high}), upward.mul(-1)
	b.solid(under.box(under.whole(), l.side(upward.mul(-1)), b.pen(1)))
	return top
}

// inset returns a view of a fixture with its footprint drawn in at the front and the ends.
func inset(v index.FixtureView, by float64) index.FixtureView {
	if by == 0 {
		return v
	}
	d := unit.FromMillimetres(by)
	f := *v.Fixture
	f.Width, f.Depth = max(unit.Inch, f.Width-2*d), max(unit.Inch, f.Depth-d)
	v.Fixture, v.Frame = &f, v.Frame.Moved(d, 0)
	return v
}

// cabinet draws a box with what its front has: a worktop over doors, doors, or nothing.
func (b *builder) cabinet(v index.FixtureView) {
	low, high := b.reach(v)
	kind := part.All().Fixture(v.Fixture.Kind)
	wooden := look{b.wood, render.Mixed(b.wood(upward), b.style.Theme.Surface, 0.4)}
	switch kind.Front {
	case "worktop":
		const thick = 1.5 * 25.4 // common practice
		if high-low > 3*thick {
			b.block(v, low, high-thick, 0, wooden)
			if kind.Body != "desk" {
				b.doors(fixturePatch(v, plan.PartFront, low, high-thick), true)
			}
			low = high - thick
		}
		b.block(v, low, high, 0, look{func(Point) scene.Color { return b.top() }, b.top()})
	case "doors":
		b.block(v, low, high, 0, wooden)
		b.doors(fixturePatch(v, plan.PartFront, low, high), false)
	case "mirror":
		b.mirror(v)
	default:
		white := look{func(out Point) scene.Color { return render.Mixed(b.wallColor(out), b.style.Theme.Surface, 0.4) }, b.top()}
		if kind.Covers == part.Covering("") && kind.Letter == "" {
			white = wooden
		}
		b.block(v, low, high, 0, white)
	}
}

// doors draws two doors and more across a front, over a kick where they stand on a floor.
func (b *builder) doors(g patch, kick bool) {
	low := 0.0
	if kick && g.high > 12*25.4 {
		low = 4 * 25.4
		b.add(g.box(rect{0, 0, g.wide, low}, render.Mixed(b.wood(g.out), b.style.Theme.Wall, 0.35), b.thin()))
	}
	n := max(1, int(g.wide/(18*25.4)+0.5))
	wide := g.wide / float64(n)
	for i := range n {
		door := rect{wide * float64(i), low, wide * float64(i+1), g.high}.in(0.5 * 25.4)
		panel := door.in(2.25 * 25.4)
		if door.isEmpty() || panel.isEmpty() {
			continue
		}
		knob := door.right - 1.2*25.4
		if i%2 == 1 || n == 1 {
			knob = door.left + 1.2*25.4
		}
		y := door.high - 3*25.4
		if !kick {
			y = door.low + 3*25.4
		}
		b.add(g.box(door, b.wood(g.out), b.thin()), g.box(panel, render.Mixed(b.wood(g.out), b.style.Theme.Warn, 0.08), b.thin()),
			g.oval(rect{knob - 12, y - 12, knob + 12, y + 12}, b.style.Theme.Surface, b.pen(1)))
	}
}

func (b *builder) bed(v index.FixtureView) {
	low, high := b.reach(v)
	frame := low + 0.45*(high-low)
	b.block(v, low, frame, 0, look{b.wood, b.wood(upward)})
	cloth := render.Mixed(b.style.Theme.Surface, b.style.Theme.Accent, 0.1)
	top := b.block(v, frame, high, 25, look{func(out Point) scene.Color { return render.Mixed(b.wallColor(out), cloth, 0.6) }, cloth})
	n, deep := 1, 15*25.4
	if top.wide > 50*25.4 {
		n = 2
	}
	wide := top.wide / float64(n)
	for i := range n {
		r := rect{wide * float64(i), top.high - deep - 60, wide * float64(i+1), top.high - 60}.in(50)
		if !r.isEmpty() {
			b.add(top.box(r, b.style.Theme.Surface, b.thin()))
		}
	}
	b.add(top.line(b.thin(), 0, top.high-deep-3*60, top.wide, top.high-deep-3*60))
}

// basin draws a cabinet with a bowl let into its top.
func (b *builder) basin(v index.FixtureView) {
	low, high := b.reach(v)
	const thick = 1.5 * 25.4
	if high-low > 12*25.4 {
		b.block(v, low, high-thick, 12, look{b.wood, b.wood(upward)})
		b.doors(fixturePatch(inset(v, 12), plan.PartFront, low, high-thick), true)
		low = high - thick
	}
	top := b.block(v, low, high, 0, look{func(Point) scene.Color { return b.top() }, b.top()})
	b.bowl(top)
}

// sink draws a bowl where it is let into a top.
func (b *builder) sink(v index.FixtureView) {
	_, high := b.reach(v)
	top := fixturePatch(v, plan.PartTop, high, high+3)
	b.solid(top.box(top.whole(), b.style.Theme.Surface, b.pen(1)))
	r := top.whole().in(2 * 25.4)
	r.high -= 2 * 25.4
	if !r.isEmpty() {
		b.add(top.box(r, render.Mixed(b.style.Theme.Paper, b.style.Theme.Wall, 0.14), b.pen(1)))
	}
	b.tap(top, r.high+25.4)
}

// bowl draws the bowl of a basin and its tap on a top.
func (b *builder) bowl(top patch) {
	w, h := min(0.62*top.wide, 18*25.4), 0.56*top.high
	x, y := top.wide/2, 0.44*top.high
	b.add(top.oval(rect{x - w/2, y - h/2, x + w/2, y + h/2}, render.Mixed(b.style.Theme.Paper, b.style.Theme.Wall, 0.12), b.pen(1)))
	b.tap(top, y+h/2+25.4)
}

// tap stands on a top, facing its front.
func (b *builder) tap(top patch, y float64) {
	g := patch{origin: top.at(top.wide/2, min(y, top.high-10)), right: top.right, up: upward, out: top.up.mul(-1)}
	pen := b.pen(2)
	for _, l := range [][4]float64{{0, 0, 0, 130}, {-50, 0, -50, 40}, {50, 0, 50, 40}, {-70, 40, -30, 40}, {30, 40, 70, 40}} {
		b.add(g.line(pen, l[0], l[1], l[2], l[3]))
	}
}

func (b *builder) white(out Point) scene.Color {
	return render.Mixed(b.wallColor(out), b.style.Theme.Surface, 0.55)
}

func (b *builder) tub(v index.FixtureView) {
	low, high := b.reach(v)
	top := b.block(v, low, high, 0, look{b.white, b.style.Theme.Surface})
	if r := top.whole().in(3 * 25.4); !r.isEmpty() {
		b.add(top.oval(r, render.Mixed(b.style.Theme.Paper, b.style.Theme.Wall, 0.1), b.pen(1)))
	}
}

// toilet draws a tank at the wall and a bowl before it.
func (b *builder) toilet(v index.FixtureView) {
	low, high := b.reach(v)
	f := *v.Fixture
	tank, bowl := v, v
	back := f.Depth / 4
	t := f
	t.Depth = back
	tank.Fixture = &t
	w := f
	w.Depth, w.Width = f.Depth-back, f.Width*7/10
	bowl.Fixture, bowl.Frame = &w, v.Frame.Moved((f.Width-w.Width)/2, back)
	plain := look{b.white, b.style.Theme.Surface}
	b.block(tank, low, high, 0, plain)
	top := b.block(bowl, low, low+0.52*(high-low), 0, plain)
	b.add(top.oval(top.whole().in(20), render.Mixed(b.style.Theme.Paper, b.style.Theme.Wall, 0.08), b.pen(1)))
}

// shower draws its pan and the edges of its glass, which hides nothing.
func (b *builder) shower(v index.FixtureView) {
	low, high := b.reach(v)
	b.block(v, low, low+4*25.4, 0, look{b.white, b.style.Theme.Surface})
	for _, p := range []plan.Part{plan.PartFront, plan.PartLeft, plan.PartRight} {
		g := fixturePatch(v, p, low+4*25.4, high)
		pane := b.glass()
		pane.A = 0x50
		b.add(g.box(g.whole(), pane, b.pen(1)))
	}
}

// mostSteps bounds the steps that stairs are drawn with.
const mostSteps = 24

// stairs draws a block a step, the lowest at its front.
func (b *builder) stairs(v index.FixtureView) {
	low, high := b.reach(v)
	n := v.Fixture.Risers
	if n <= 0 {
		n = max(2, int((high-low)/(7.5*25.4)+0.5)) // common practice for a rise
	}
	n = min(n, mostSteps)
	for i := range n {
		f := *v.Fixture
		f.Depth = v.Fixture.Depth / unit.Length(n)
		step := v
		step.Fixture, step.Frame = &f, v.Frame.Moved(0, f.Depth*unit.Length(i))
		b.block(step, low, low+(high-low)*float64(n-i)/float64(n), 0, look{b.wood, render.Mixed(b.wood(upward), b.style.Theme.Surface, 0.4)})
	}
}

// mirror draws glass in a frame.
func (b *builder) mirror(v index.FixtureView) {
	low, high := b.reach(v)
	b.block(v, low, high, 0, look{func(Point) scene.Color { return b.style.Theme.Surface }, b.style.Theme.Surface})
	g := fixturePatch(v, plan.PartFront, low, high)
	pane := g.whole().in(25.4)
	if pane.isEmpty() {
		return
	}
	b.add(g.box(pane, b.glass(), b.pen(1)))
	b.add(b.glints(g, pane)...)
}
