// Package unroll draws a walk through a house unrolled: the rooms one after another as cut
// along the walk, at one scale both ways, with doorways, switches, stairs and what is walked
// in the dark. Whether a crossing is dark is told by package light; nothing here judges.
package unroll

import (
	"strconv"

	"studbay/fill/light"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// The measures of a strip, in its own units.
const (
	margin  = 14.0
	under   = 34.0 // below the lowest floor, for the signs of crossings
	letters = 11.0
	sign    = 15.0
	apart   = 30.0 // between the middles of two signs
)

// usualCeiling is what is drawn of a room that does not tell its ceiling (common practice).
const usualCeiling = 8 * unit.Foot

// hand is how high a switch is drawn (common practice).
const hand = 48 * unit.Inch

// Strip is a walk to be drawn.
type Strip struct {
	Way   light.Way
	Plan  plan.Plan
	Theme *render.Theme
	Say   func(words.Text) string
}

// drawing is a strip in the making: where it stands on the picture.
type drawing struct {
	Strip
	scale  float64 // units a millimetre
	foot   float64 // the lowest floor
	lowest unit.Length
	items  []scene.Item
	at     []float64 // of the crossings, along the picture
	floor  []float64 // under each of them
}

// Draw draws the walk from left to right in a picture of a size.
func (s Strip) Draw(width, height float64) []scene.Item {
	if len(s.Way.Legs) == 0 || s.Way.Length() <= 0 {
		return nil
	}
	lowest, highest := s.elevation(s.Way.Legs[0]), s.elevation(s.Way.Legs[0])+ceiling(s.Way.Legs[0])
	for _, l := range s.Way.Legs {
		lowest, highest = min(lowest, s.elevation(l)), max(highest, s.elevation(l)+ceiling(l))
	}
	d := &drawing{Strip: s, lowest: lowest, foot: height - under}
	d.scale = min((width-2*margin)/scene.MM(s.Way.Length()), (height-under-margin)/scene.MM(highest-lowest))
	from := margin
	for i := range s.Way.Legs {
		from = d.leg(i, from)
	}
	d.signs(width)
	return d.items
}

func (s Strip) elevation(l light.Leg) unit.Length {
	if on := s.Plan.Level(l.Level); on != nil {
		return on.Elevation
	}
	return 0
}

func ceiling(l light.Leg) unit.Length {
	if l.Room.Ceiling > 0 {
		return l.Room.Ceiling
	}
	return usualCeiling
}

func (d *drawing) pen(width float64, dash ...float64) scene.Pen {
	return scene.Pen{Width: width, Color: d.Theme.Ink, Dash: dash}
}

// leg draws the room of a leg from a place on, and returns where the next begins.
func (d *drawing) leg(i int, from float64) (to float64) {
	l := d.Way.Legs[i]
	floor := d.foot - d.scale*scene.MM(d.elevation(l)-d.lowest)
	to = from + d.scale*scene.MM(l.Length)
	room := scene.Rect{Min: scene.Point{X: from, Y: floor - d.scale*scene.MM(ceiling(l))}, Max: scene.Point{X: to, Y: floor}}
	d.add(scene.Fill{Path: room.Path(), Color: d.Theme.RoomTint(l.Room.Use)})
	dark := room
	dark.Max.X = from + d.scale*scene.MM(l.Dark)
	d.shade(dark)
	d.add(scene.Stroke{Path: room.Path(), Pen: d.pen(1.2)})
	if l.Flight > 0 {
		to = d.flight(i, to, floor)
	}
	name := scene.Run{At: scene.Point{X: room.Middle().X, Y: room.Min.Y + 1.6*letters}, Text: l.Room.Name, Size: letters, Weight: glyph.Bold, Align: scene.Center, Color: d.Theme.Ink}
	if name.Width() < room.Width()-6 {
		d.label(name)
	}
	if c := l.Crossing; c != nil {
		d.crossing(c, from, floor, room)
	}
	if says := d.darkText(l, dark, floor); says.Text != "" {
		d.label(says)
	}
	return to
}

func (d *drawing) add(items ...scene.Item) { d.items = append(d.items, items...) }

// label puts words on a ground of their own, so that no hatching runs through them.
func (d *drawing) label(r scene.Run) {
	d.add(scene.Fill{Path: r.Bounds().Expanded(3).Path(), Color: d.Theme.Surface}, r)
}

// shade hatches what is walked in the dark, so that it is told without color.
func (d *drawing) shade(r scene.Rect) {
	if r.IsEmpty() {
		return
	}
	d.add(scene.Fill{Path: r.Path(), Color: d.Theme.Line})
	for x := r.Min.X - r.Height(); x < r.Max.X; x += 6 {
		from, to := max(x, r.Min.X), min(x+r.Height(), r.Max.X)
		d.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: from, Y: r.Max.Y - (from - x)}, scene.Point{X: to, Y: r.Max.Y - (to - x)}), Pen: scene.Pen{Width: .8, Color: d.Theme.Muted}})
	}
}

// darkText tells how far one walks in the dark, where there is room for it.
func (d *drawing) darkText(l light.Leg, dark scene.Rect, floor float64) (r scene.Run) {
	if l.Dark == 0 {
		return r
	}
	r = scene.Run{At: scene.Point{X: dark.Middle().X, Y: floor - letters}, Text: d.Say(words.New("unroll.dark", "dark {0}", l.Dark)), Size: letters, Align: scene.Center, Color: d.Theme.Ink}
	if r.Width() > dark.Width()-6 {
		r.Text = ""
	}
	return r
}

// flight draws the stairs that a leg ends with: as many steps as its risers, or a slope
// where nobody says how many.
func (d *drawing) flight(i int, from, floor float64) (to float64) {
	l, next := d.Way.Legs[i], d.Way.Legs[i+1]
	to = from + d.scale*scene.MM(l.Flight)
	rise := d.scale * scene.MM(d.elevation(next)-d.elevation(l))
	steps := max(next.Crossing.Stairs.Risers, 1)
	var line scene.Path
	line.MoveTo(scene.Point{X: from, Y: floor})
	for k := range steps {
		at := func(n int) scene.Point {
			return scene.Point{X: from + (to-from)*float64(n)/float64(steps), Y: floor - rise*float64(n)/float64(steps)}
		}
		if steps > 1 {
			line.LineTo(scene.Point{X: at(k).X, Y: at(k + 1).Y})
		}
		line.LineTo(at(k + 1))
	}
	d.add(scene.Stroke{Path: line, Pen: d.pen(1.4)})
	return to
}

// crossing draws the doorway that one comes through, with the nearest switch beside it.
func (d *drawing) crossing(c *light.Crossing, at, floor float64, room scene.Rect) {
	d.at, d.floor = append(d.at, at), append(d.floor, floor)
	if c.Stairs == nil {
		head := floor - d.scale*scene.MM(doorHead(c))
		d.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: at, Y: room.Min.Y}, scene.Point{X: at, Y: head}), Pen: d.pen(3)},
			scene.Stroke{Path: scene.LinePath(scene.Point{X: at, Y: head}, scene.Point{X: at, Y: floor}), Pen: scene.Pen{Width: 3, Color: d.Theme.Surface}},
			scene.Stroke{Path: scene.LinePath(scene.Point{X: at, Y: head}, scene.Point{X: at, Y: floor}), Pen: d.pen(1.2, 3, 3)})
	}
	if c.Switch == nil {
		return
	}
	x := at + 8
	if c.IsDark() { // where it comes in reach
		x = min(at+d.scale*scene.MM(c.Dark), room.Max.X-8)
	}
	box := scene.RectAround(scene.Point{X: x, Y: floor - d.scale*scene.MM(hand)}, 5, 8)
	d.add(scene.Fill{Path: box.Path(), Color: d.Theme.Surface}, scene.Stroke{Path: box.Path(), Pen: scene.Pen{Width: 1.4, Color: d.Theme.Accent}})
	tag := scene.Run{At: scene.Point{X: x + 6, Y: box.Max.Y}, Text: c.Switch.Tag, Size: letters - 1, Color: d.Theme.Accent}
	if tag.Bounds().Max.X > room.Max.X {
		tag.At.X, tag.Align = x-6, scene.End
	}
	d.label(tag)
}

// doorHead is how high the way of a crossing is: that of its door, else an open side's,
// drawn as one.
func doorHead(c *light.Crossing) unit.Length {
	if c.Break != nil && c.Break.Head > 0 {
		return c.Break.Head
	}
	return 80 * unit.Inch // common practice
}

// signs puts a number and a sign under each crossing, side by side where they are near.
func (d *drawing) signs(width float64) {
	at := scene.Spread(d.at, apart, margin, width-margin)
	y := d.foot + under/2
	for i, c := range d.Way.Crossings {
		d.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: d.at[i], Y: d.floor[i]}, scene.Point{X: at[i], Y: y - sign/2}), Pen: scene.Pen{Width: .8, Color: d.Theme.Muted}})
		d.add(symbol.DrawSign(SignOf(c), scene.Point{X: at[i], Y: y}, sign, d.Theme.Ink, d.Theme.Surface)...)
		d.add(scene.Run{At: scene.Point{X: at[i] + sign/2 + 2, Y: y}, Text: strconv.Itoa(i + 1), Size: letters, Weight: glyph.Bold, VAlign: scene.Middle, Color: d.Theme.Ink})
	}
}

// SignOf is the sign of a crossing: dark, or a sun where it is lit; else a plain ring, of
// what nobody says.
func SignOf(c *light.Crossing) symbol.Sign {
	switch c.State {
	case light.CrossingLit, light.CrossingOpen:
		return symbol.Lit
	case light.CrossingDark, light.CrossingHidden:
		return symbol.Dark
	}
	return symbol.Unsaid
}
