package page

import (
	"fmt"
	"html/template"
	"strconv"
	"strings"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/paint/svg"
	"studbay/render/scene"
	"studbay/render/tell"
	"studbay/render/unfold"
	"studbay/render/view"
)

// roles is a theme whose colours stand for roles: the page has two sets of them, and
// var(--ink) is either's.
var roles, roleNames = func() (t render.Theme, names map[scene.Color]string) {
	names = map[scene.Color]string{}
	t = render.Theme{Name: "roles"}
	for i, r := range []struct {
		color *scene.Color
		name  string
	}{
		{&t.Paper, "paper"}, {&t.Surface, "surface"}, {&t.Ink, "ink"}, {&t.Muted, "muted"}, {&t.Line, "line"}, {&t.Wall, "wall"},
		{&t.Accent, "accent"}, {&t.OnAccent, "on-accent"}, {&t.Tint, "tint"}, {&t.Stop, "stop"}, {&t.OnStop, "surface"},
		{&t.Warn, "warn"}, {&t.OnWarn, "surface"}, {&t.Note, "note"},
	} {
		*r.color = scene.Color{R: 1, G: 2, B: uint8(i + 1), A: 0xff}
		names[*r.color] = "var(--" + r.name + ")"
	}
	return t, names
}()

// drawn paints items as the inside of an SVG element.
func drawn(clips string, items ...scene.Item) template.HTML {
	p := svg.NewPainter(svg.Options{Colors: roleNames, Clips: clips})
	scene.Paint(p, items...)
	return template.HTML(p.String()) // the painter escapes every text
}

func viewBox(r scene.Rect) string {
	return strings.Join([]string{short(r.Min.X), short(r.Min.Y), short(r.Width()), short(r.Height())}, " ")
}

func short(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// planZoom is how many units of the plan's picture a millimetre of building is.
const planZoom = 0.06

func (b *builder) medium(v words.Voice) render.Medium {
	return render.BoardMedium(planZoom, 1, roles, v)
}

// shown are the layers of the plan that a client reads: no tags, marks or findings.
var shown = map[render.Layer]bool{
	render.LayerWalls: true, render.LayerRooms: true, render.LayerBreaks: true, render.LayerFixtures: true,
	render.LayerOpenings: true, render.LayerRoomNames: true,
}

// level draws the plan of a level.
func (b *builder) level(l *plan.Level) (levelData, bool) {
	extent, ok := b.ix.Extent(l.ID)
	if !ok {
		return levelData{}, false
	}
	var items []scene.Item
	for _, p := range level.Draw(b.ix, l.ID, nil, b.medium(b.o.Languages[0].Voice), extent) {
		if shown[p.Layer] {
			items = append(items, p.Items...)
		}
	}
	return levelData{
		ID: l.ID, Name: l.Name, Picture: drawn("l"+string(l.ID), items...),
		ViewBox: viewBox(scene.Bounds(items...).Expanded(6)), Pins: b.pins[l.ID],
	}, true
}

// room gathers one room with its pictures.
func (b *builder) room(r *plan.Room, number int) (roomData, bool) {
	view, ok := b.ix.RoomView(r.ID)
	if !ok {
		return roomData{}, false
	}
	m := b.medium(b.o.Languages[0].Voice)
	box := m.Rect(r.Outline().Box())
	d := roomData{ID: r.ID, Level: view.Level, Name: r.Name, Number: number, Box: viewBox(box.Expanded(0.12 * max(box.Width(), box.Height())))}
	var corners []string
	for _, p := range r.Outline() {
		q := m.ToScene(p)
		corners = append(corners, short(q.X)+","+short(q.Y))
	}
	d.Outline = strings.Join(corners, " ")
	d.Tall, d.Faces = r.Ceiling.Exact(), facesOf(view)
	numbers := map[plan.ID]int{}
	for i, o := range tell.Room(b.ix, r.ID) {
		numbers[o.Opening.ID] = i + 1
		one := openingData{ID: o.Opening.ID, Number: i + 1, Headline: b.say(o.Headline()), Figures: b.say(o.Figures()), Drawn: b.drawn(o.Opening)}
		if !o.Lit.IsZero() {
			one.Lit = b.say(o.Lit)
		}
		if c, ok := b.since.OfOpening(o.Opening.ID); ok {
			one.Changed = b.say(c.Told())
		}
		d.Openings = append(d.Openings, one)
	}
	b.pinPlan(m, view.Level, r.ID, d.Openings)
	d.Views = b.views(r.ID, numbers, d.Openings)
	d.Walls = b.walls(r)
	return d, true
}

// pinRound is the radius of a pin on the plan, and pinOff how far it stands off its foot.
const (
	pinRound = 7.0
	pinOff   = 15.0
)

// pinPlan puts a pin at each opening of a room, off its wall into the room; pins that would
// lie on one another stand farther in.
func (b *builder) pinPlan(m render.Medium, on, room plan.ID, openings []openingData) {
	for _, o := range openings {
		noun, _ := b.ix.Plan().Opening(o.ID)
		place, ok := b.ix.Place(noun.At)
		if !ok {
			continue
		}
		foot := m.ToScene(place.Foot)
		into := scene.Point{X: place.Into.X.Millimetres() / 1000, Y: place.Into.Y.Millimetres() / 1000}
		if place.IsFlat() {
			into = scene.Point{Y: 0}
		}
		at := foot.Add(into.Mul(pinOff))
		for tries := 0; tries < 6 && b.isTaken(on, at); tries++ {
			step := into
			if place.IsFlat() {
				step = scene.Point{Y: 1}
			}
			at = at.Add(step.Mul(2 * pinRound))
		}
		b.pins[on] = append(b.pins[on], pin{
			ID: o.ID, Room: room, Number: o.Number, X: round1(at.X), Y: round1(at.Y), R: pinRound, T: round1(at.Y + 0.36*8.5),
			FX: round1(foot.X), FY: round1(foot.Y), Size: 8.5, Name: o.Headline,
		})
	}
}

func round1(v float64) float64 {
	f, _ := strconv.ParseFloat(short(v), 64)
	return f
}

func (b *builder) isTaken(on plan.ID, at scene.Point) bool {
	for _, p := range b.pins[on] {
		dx, dy := p.X-at.X, p.Y-at.Y
		if dx*dx+dy*dy < 4*pinRound*pinRound {
			return true
		}
	}
	return false
}

// The size of a view in its own units, and of the pins on it.
const (
	viewWide, viewTall = 960.0, 640.0
	viewPin            = 15.0
)

// views draws the view into a room in the colours of either theme.
func (b *builder) views(room plan.ID, numbers map[plan.ID]int, openings []openingData) (all []themed) {
	for _, theme := range []*render.Theme{&render.Light, &render.Dark} {
		m, ok := view.New(b.ix, room, view.Style{Theme: *theme, Pixel: 1.2})
		if !ok {
			return nil
		}
		camera := m.Start(viewWide, viewTall)
		picture := m.Draw(camera)
		v := themed{Camera: cameraOf(camera), Theme: "light", ViewBox: fmt.Sprintf("0 0 %g %g", viewWide, viewTall), Picture: drawn("v"+theme.Name+string(room), picture.Items...)}
		if theme.IsDark {
			v.Theme = "dark"
		}
		frame := scene.Rect{Max: scene.Point{X: viewWide, Y: viewTall}}.Expanded(-viewPin)
		for _, mark := range picture.Marks {
			n := numbers[mark.ID]
			if n == 0 || mark.IsHidden || !frame.Contains(mark.At) {
				continue
			}
			off := 70*mark.Mil + viewPin
			if mark.At.X+off > frame.Max.X {
				off = -off
			}
			at := mark.At.Add(scene.Point{X: off, Y: -viewPin * 0.6})
			v.Pins = append(v.Pins, pin{
				ID: mark.ID, Room: room, Number: n, X: round1(at.X), Y: round1(at.Y), R: viewPin, T: round1(at.Y + 0.36*17),
				FX: round1(mark.At.X), FY: round1(mark.At.Y), Size: 17, Name: openings[n-1].Headline,
			})
		}
		all = append(all, v)
	}
	return all
}

// walls draws the faces of a room in a row, in each language.
func (b *builder) walls(r *plan.Room) (all []wallData) {
	for _, l := range b.o.Languages {
		m := unfold.Medium{Medium: b.medium(l.Voice), Datum: plan.FinishedFloor}
		var items []scene.Item
		for _, p := range unfold.Draw(b.ix, r.ID, nil, m) {
			if p.Layer != render.LayerLabels && p.Layer != render.LayerMarks {
				items = append(items, p.Items...)
			}
		}
		if len(items) == 0 {
			return nil
		}
		all = append(all, wallData{Tag: l.Tag, ViewBox: viewBox(scene.Bounds(items...).Expanded(4)), Picture: drawn("w"+l.Tag+string(r.ID), items...)})
	}
	return all
}
