package level

import (
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// nameGrid is how many places across a room are tried for its name.
const nameGrid = 22

// roomName writes a room's name with area and ceiling height under it, on paper with its size
// from wall to wall above them, as near the roomiest place as bodies, swings and fixtures let
// it. Where there is too little room the lines are shortened and then left out, and the name goes over several lines
// and is then shortened, or stands without the room's light; on a board so narrow a room that three letters have no place in it
// has none, until nearer.
func (d *drawing) roomName(r *roomDrawing) {
	room := r.view.Room
	if room.Name == "" || d.Medium.Hides(room.ID) {
		return
	}
	space := d.Medium.Visible(r.Bounds)
	if space.IsEmpty() {
		return
	}
	at := d.Medium.ToScene(labelPoint(room.Outline()))
	isWhole := space == r.Bounds
	if !isWhole && !space.Contains(at) {
		at = space.Middle()
	}
	for _, lit := range slices.Compact([]bool{d.Medium.Lights, false}) {
		for _, lines := range append(d.nameLines(room), d.shortNames(room, space.Width())...) {
			w, h := nameExtent(lines, lit)
			if middle, ok := d.namePlace(r, at, w, h); ok {
				d.writeName(room.ID, lines, middle, h, lit)
				return
			}
		}
	}
	if d.Medium.Kind == render.Sheet && isWhole {
		lines := d.nameLines(room)
		run := lines[len(lines)-1][0]
		run.Align, run.VAlign = scene.Start, scene.Baseline
		d.Wanting = append(d.Wanting, &draft.Label{ID: room.ID, Area: &r.Area, Run: run, From: scene.RectAround(at, run.Size/2, run.Size/2)})
	}
}

// labelPoint is the roomiest place of an outline: of a rectangle its middle.
func labelPoint(outline geom.Polygon) geom.Point {
	box := outline.Box()
	if len(outline) == 4 && outline.Contains(box.Min) && outline.Contains(box.Max) &&
		outline.Contains(geom.Point{X: box.Min.X, Y: box.Max.Y}) && outline.Contains(geom.Point{X: box.Max.X, Y: box.Min.Y}) {
		return box.Center()
	}
	return outline.LabelPoint()
}

// nameLines returns what may be written, the fullest first.
func (d *drawing) nameLines(room *plan.Room) [][]scene.Run {
	ink := d.Theme.Ink
	name := scene.Run{Text: room.Name, Size: d.Medium.NameSize(), Weight: glyph.Bold, Color: ink, Align: scene.Center}
	small := name
	small.Size = d.Medium.Text
	area := words.New("room.area", "{0}", room.Outline().Area())
	second := func(t words.Text) scene.Run {
		return scene.Run{Text: d.Medium.Voice.Say(t), Size: d.Medium.SecondSize(), Color: d.Theme.Muted, Align: scene.Center}
	}
	var all [][]scene.Run
	last := area
	if room.Ceiling > 0 && room.Use != plan.UseOutdoors {
		last = words.New("room.size", "{0} · ceiling {1}", area, room.Ceiling)
		all = append(all, []scene.Run{name, second(last)})
	}
	if d.Medium.Kind == render.Sheet {
		size := second(SizeText(room))
		all = append([][]scene.Run{{name, size, second(last)}, {name, size, second(area)}, {name, size}}, all...)
	}
	return append(all, []scene.Run{name, second(area)}, []scene.Run{name}, []scene.Run{small})
}

// SizeText says how large a room is from wall to wall, of one that is no rectangle how far it
// reaches.
func SizeText(room *plan.Room) words.Text {
	across, down, whole := room.Outline().Extent()
	if whole {
		return words.New("room.extent", "{0} × {1}", across, down)
	}
	return words.New("room.extent.overall", "{0} × {1} overall", across, down)
}

// mostNameLines is over how many lines a name goes at most.
const mostNameLines = 3

// shortNames returns how a name may be written that has no place on one line in a room so
// wide: over several lines, then the beginning of it.
func (d *drawing) shortNames(room *plan.Room, wide float64) (all [][]scene.Run) {
	run := scene.Run{Size: d.Medium.NameSize(), Weight: glyph.Bold, Color: d.Theme.Ink, Align: scene.Center}
	small := run
	small.Size = d.Medium.Text
	parts := strings.Fields(room.Name)
	for _, run := range []scene.Run{run, small} {
		for n := 2; n <= min(mostNameLines, len(parts)); n++ {
			var lines []scene.Run
			for _, text := range overLines(parts, n) {
				run.Text = text
				lines = append(lines, run)
			}
			all = append(all, lines)
		}
	}
	for _, share := range []float64{0.85, 0.6, 0.4} {
		small.Text = glyph.Fit(small.Weight, small.Size, share*wide, room.Name)
		if utf8.RuneCountInString(small.Text) > fewestLetters { // with the mark that more follows
			all = append(all, []scene.Run{small})
		}
	}
	return all
}

// overLines sets words over so many lines, the longest of which is as short as it can be.
func overLines(parts []string, n int) []string {
	if n == 1 {
		return []string{strings.Join(parts, " ")}
	}
	var best []string
	longest := func(lines []string) (most int) {
		for _, l := range lines {
			most = max(most, utf8.RuneCountInString(l))
		}
		return most
	}
	for i := 1; i <= len(parts)-n+1; i++ {
		lines := append([]string{strings.Join(parts[:i], " ")}, overLines(parts[i:], n-1)...)
		if best == nil || longest(lines) < longest(best) {
			best = lines
		}
	}
	return best
}

// fewestLetters is how many letters of a name say anything.
const fewestLetters = 3

func nameExtent(lines []scene.Run, lit bool) (w, h float64) {
	for i, run := range lines {
		w = max(w, run.Width())
		if i == 0 && lit {
			w = max(w, run.Width()+lightWide(run))
		}
		m := glyph.MetricsOf(run.Weight, run.Size)
		if i == 0 {
			h += m.CapHeight + m.Descent
		} else {
			h += m.Line
		}
	}
	return w, h
}

// namePlace returns the middle of the free box nearest the point wished for.
func (d *drawing) namePlace(r *roomDrawing, wish scene.Point, w, h float64) (best scene.Point, ok bool) {
	besideAll := func(p scene.Point) bool {
		box := scene.RectAround(p, w+2.2*d.Medium.Text, h+0.8*d.Medium.Text)
		return r.Holds(box) && d.Obstacles.IsFree(box) && d.standing.IsFree(box)
	}
	space := d.Medium.Visible(r.Bounds)
	if w > space.Width() || h > space.Height() {
		return wish, false
	}
	if d.Medium.IsFar() { // many small rooms, and nothing in the way
		return wish, r.Holds(scene.RectAround(wish, w, h))
	}
	if best, ok = nearestFit(space, wish, besideAll); ok {
		return best, true
	}
	return nearestFit(space, wish, func(p scene.Point) bool {
		box := scene.RectAround(p, w, h).Expanded(0.35 * d.Medium.Text)
		return r.Holds(box) && d.Obstacles.IsFree(box)
	})
}

// nearestFit returns the fitting point of a grid over a space nearest the one wished
// for.
func nearestFit(space scene.Rect, wish scene.Point, fits func(scene.Point) bool) (best scene.Point, ok bool) {
	if fits(wish) {
		return wish, true
	}
	least := math.Inf(1)
	for row := range nameGrid {
		for column := range nameGrid {
			p := scene.Point{
				X: space.Min.X + space.Width()*(float64(column)+0.5)/nameGrid,
				Y: space.Min.Y + space.Height()*(float64(row)+0.5)/nameGrid,
			}
			if away := math.Hypot(p.X-wish.X, p.Y-wish.Y); away < least && fits(p) {
				best, least, ok = p, away, true
			}
		}
	}
	return best, ok
}

func (d *drawing) writeName(room plan.ID, lines []scene.Run, middle scene.Point, h float64, lit bool) {
	y := middle.Y - h/2
	var items []scene.Item
	for i, run := range lines {
		m := glyph.MetricsOf(run.Weight, run.Size)
		if i == 0 {
			y += m.CapHeight
		} else {
			y += m.Line
		}
		run.At = scene.Point{X: middle.X, Y: y}
		if i == 0 && lit {
			wide := lightWide(run)
			run.At.X += wide / 2
			side := wide * lightShare
			at := scene.Point{X: middle.X - (run.Width()+wide)/2 + side/2, Y: y - m.CapHeight/2}
			items = append(items, d.light(room, at, side)...)
			d.Obstacles.Text(scene.RectAround(at, side, side), room)
		}
		items = append(items, run)
		d.Obstacles.Text(run.Bounds(), room)
	}
	d.Put(room, render.LayerRoomNames, items...)
}
