package symbol

import "studbay/render/scene"

// Status says what becomes of an opening. The zero value is New.
type Status uint8

// The statuses, as every sheet's legend shows them.
const (
	New Status = iota
	Existing
	Remove
)

// Spec is what a symbol says of one opening.
type Spec struct {
	Family  Family
	Yokes   int    // a tick for each beyond the first
	Letters string // trade letters such as 3, D, GF: one stands inside where the body has room
	Note    string // after the letters outside; the height, where openings share a foot
	Status  Status
}

// Place is where a symbol stands.
type Place struct {
	Foot scene.Point // the true centre, on the wall line
	Into scene.Point // direction of length one into the room; zero for ceiling and floor
	Lean float64     // scene units the body stands aside of its foot: see Spread
	Lift float64     // scene units the stem is longer for it
	Room float64     // scene units along the wall that the foot may take; 0 means as usual
	Flip bool        // where openings share a foot, write on the other side of them
}

// Style is how symbols look in one medium.
type Style struct {
	Size    float64     // of a body, in scene units: BodySize on a sheet
	Ink     scene.Color // all of a symbol
	Paper   scene.Color // what it stands on: letters in a filled body, the inside of an open one
	MinLine float64     // least width of a line, in scene units
}

// Drawn is a symbol ready to paint, with the boxes that a label must keep clear of.
type Drawn struct {
	Items   []scene.Item
	Bodies  []scene.Rect // one an opening, in the order given
	Stem    scene.Rect   // foot, stem and ticks; empty without a wall
	Written []scene.Rect // letters and notes outside of bodies
}

// Bounds returns the box of all of it.
func (d Drawn) Bounds() scene.Rect {
	all := d.Stem
	for _, r := range d.Boxes() {
		all = all.Union(r)
	}
	return all
}

// Boxes returns every box of the symbol: bodies, stem, what is written.
func (d Drawn) Boxes() []scene.Rect {
	boxes := append([]scene.Rect{}, d.Bodies...)
	if !d.Stem.IsEmpty() {
		boxes = append(boxes, d.Stem)
	}
	return append(boxes, d.Written...)
}

// Draw draws the openings that share one place, the lowest first: their bodies stand
// in a row along one stem, the lowest nearest the wall. Letters that do not go inside
// stand past a single body, in line with its stem, and beside bodies in a row: right
// of a stem that stands, above one that lies.
func Draw(at Place, style Style, specs ...Spec) Drawn {
	s := sketch{style: style, at: at, single: len(specs) == 1}
	s.axes()
	s.drawn.Bodies = make([]scene.Rect, 0, len(specs))
	for _, spec := range specs {
		s.half = max(s.half, bodies[spec.Family].half)
	}
	s.row(specs)
	s.drawn.Items = append(s.lines, s.drawn.Items...)
	s.drawn.Stem = scene.Bounds(s.lines...)
	return s.drawn
}

// row draws the bodies with their stem, from the foot into the room.
func (s *sketch) row(specs []Spec) {
	reach := 0.0 // to where the next part of stem begins
	if s.onWall {
		reach = s.foot(specs)
	}
	past := 0.0 // how far what belongs to the body before reaches beyond it
	for i, spec := range specs {
		b := &bodies[spec.Family]
		wide := s.wide(b, spec)
		if i > 0 {
			reach += past + max(0, wide-b.near)
		}
		switch {
		case s.onWall:
			reach = s.stem(reach, spec, i == 0) + b.near
		case i > 0:
			reach += rowGap + b.near
		}
		s.body(b, spec, reach)
		reach += b.far
		past = max(0, wide-b.far)
		if half := s.halfWords(b, spec); i == 0 && half > 0 {
			past = max(past, 2*half+outsideGap-reach) // words may not reach over the wall
		}
	}
}

// wide returns how far along the stem all that belongs to a body reaches from its
// middle: the words above it, the slanting stroke through it.
func (s *sketch) wide(b *body, spec Spec) float64 {
	wide := s.halfWords(b, spec)
	if spec.Status == Remove {
		wide = max(wide, strikeReach)
	}
	return wide
}

// sketch is a symbol in the making. Its coordinates are bodies from the foot: x
// along the wall, y into the room.
type sketch struct {
	style  Style
	at     Place
	onWall bool
	single bool    // one opening only
	half   float64 // of the widest body
	into   scene.Point
	frame  scene.Transform // to the scene
	joint  float64         // into the room, to where the stem is drawn so far
	lines  []scene.Item    // foot, stem and ticks: under the bodies
	drawn  Drawn
}

func (s *sketch) axes() {
	s.into, s.onWall = s.at.Into, s.at.Into != (scene.Point{})
	if !s.onWall {
		s.into = scene.Point{Y: 1}
	}
	along := scene.Point{X: s.into.Y, Y: -s.into.X}
	s.frame = scene.Transform{X: along.Mul(s.style.Size), Y: s.into.Mul(s.style.Size), At: s.at.Foot}
}

// lean is how far bodies stand aside of the foot, in bodies.
func (s *sketch) lean() float64 { return s.at.Lean / s.style.Size }

func (s *sketch) pen(width float64) scene.Pen {
	return scene.Pen{Width: max(width*s.style.Size, s.style.MinLine), Color: s.style.Ink}
}

// stemWidth is that of the heaviest opening on the stem.
func stemWidth(specs []Spec) float64 {
	for _, spec := range specs {
		if spec.Status == New {
			return stemPen
		}
	}
	return existingPen
}

// foot draws the foot and, where the symbol leans, the slanting part of the stem. It
// returns where the straight part begins. The foot lies on the room's side of the
// wall line.
func (s *sketch) foot(specs []Spec) float64 {
	width := stemWidth(specs)
	pen := s.pen(width)
	thick := pen.Width / s.style.Size
	half := footLong / 2
	if s.at.Room > 0 {
		half = min(half, s.at.Room/s.style.Size/2)
	}
	s.line(pen, scene.Point{X: -half, Y: thick / 2}, scene.Point{X: half, Y: thick / 2})
	lift := s.at.Lift / s.style.Size
	if lift > 0 {
		pen.Cap = scene.RoundCap
		s.line(pen, scene.Point{Y: thick / 2}, scene.Point{X: s.lean(), Y: lift})
	}
	s.joint = lift
	return lift
}

// stem draws the part of a stem before a body, with its ticks, and returns where the
// body begins.
func (s *sketch) stem(from float64, spec Spec, first bool) float64 {
	long, start := stemLong, 0.4
	if !first {
		long, start = rowGap, 0.26
	}
	ticks := max(spec.Yokes-1, 0)
	if ticks > 0 {
		long = max(long, start+float64(ticks-1)*tickStep+.3)
	}
	width := stemWidth([]Spec{spec})
	x := s.lean()
	// The stem runs on a hair into the body, so that no seam shows between.
	s.line(s.pen(width), scene.Point{X: x, Y: s.joint}, scene.Point{X: x, Y: from + long + .03})
	s.joint = from + long
	tickWidth := min(width, tickPen)
	for i := range ticks {
		y := from + start + float64(i)*tickStep
		s.line(s.pen(tickWidth), scene.Point{X: x - tickLong/2, Y: y}, scene.Point{X: x + tickLong/2, Y: y})
	}
	return from + long
}

func (s *sketch) line(pen scene.Pen, a, b scene.Point) {
	s.lines = append(s.lines, scene.Stroke{Path: scene.LinePath(a, b).Placed(s.frame), Pen: pen})
}

func (s *sketch) add(items ...scene.Item) { s.drawn.Items = append(s.drawn.Items, items...) }

// body draws a body whose middle is y bodies into the room.
func (s *sketch) body(b *body, spec Spec, y float64) {
	place := s.frame
	place.At = s.frame.Apply(scene.Point{X: s.lean(), Y: y})
	if spec.Status == New {
		s.heavy(b, place)
	} else {
		s.thin(b, place)
	}
	box := scene.Rect{Min: scene.Point{X: -b.half, Y: -b.near}, Max: scene.Point{X: b.half, Y: b.far}}.Path().Placed(place).Bounds()
	if spec.Status == Remove {
		s.strike(place.At)
		box = box.Union(scene.RectAround(place.At, 2*strikeReach*s.style.Size, 2*strikeReach*s.style.Size))
	}
	s.drawn.Bodies = append(s.drawn.Bodies, box)
	s.write(b, spec, place)
}

func (s *sketch) heavy(b *body, place scene.Transform) {
	ink := s.style.Ink
	if b.solid {
		s.add(scene.Fill{Path: b.outline.Placed(place), Color: ink})
	} else {
		s.add(scene.Fill{Path: b.outline.Placed(place), Color: s.style.Paper},
			scene.Stroke{Path: b.outline.Placed(place), Pen: s.pen(newPen)})
	}
	if !b.inside.IsEmpty() {
		s.add(scene.Fill{Path: b.inside.Placed(place), Color: ink})
	}
	if !b.cut.IsEmpty() {
		pen := s.pen(.13)
		pen.Color = s.style.Paper
		s.add(scene.Stroke{Path: b.cut.Placed(place), Pen: pen})
	}
	if !b.rays.IsEmpty() {
		s.add(scene.Stroke{Path: b.rays.Placed(place), Pen: s.pen(rayPen)})
	}
}

func (s *sketch) thin(b *body, place scene.Transform) {
	pen := s.pen(existingPen)
	s.add(scene.Fill{Path: b.outline.Placed(place), Color: s.style.Paper})
	for _, p := range []scene.Path{b.outline, b.inside, b.cut, b.rays} {
		if !p.IsEmpty() {
			s.add(scene.Stroke{Path: p.Placed(place), Pen: pen})
		}
	}
}

// strike draws the slanting stroke of a removal, rising to the right in whatever
// direction the symbol points.
func (s *sketch) strike(middle scene.Point) {
	d := scene.Point{X: strikeReach, Y: -strikeReach}.Mul(s.style.Size)
	pen := s.pen(existingPen * 1.3)
	s.add(scene.Stroke{Path: scene.LinePath(middle.Sub(d), middle.Add(d)), Pen: pen})
}
