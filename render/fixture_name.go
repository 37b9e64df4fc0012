package render

import (
	"studbay/plan"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// fixtureNames writes the names of fixtures, or the letters of machines, inside their
// outlines, clear of their lines and of what stands on and before them; a name that
// finds no such place is left out.
func (d *drawing) fixtureNames() {
	for _, x := range d.named {
		text := x.of.Name
		if t, ok := letters[x.of.Kind]; ok && text == "" {
			text = d.m.Voice.Say(t)
		}
		if text == "" {
			continue
		}
		run := scene.Run{Text: text, Size: d.m.secondSize() * 0.95, Color: d.theme.Muted}
		inside := scene.Bounds(scene.Fill{Path: x.f.box(0, 0, x.w, x.h)})
		if at, ok := d.nameSpot(run, inside, inside.Middle()); ok {
			d.writeFixtureName(x.of.ID, run, at)
		}
	}
}

// spots is how many places across and down a fixture are tried for its name.
const spots = 7

// nameSpot returns the free middle of a line of text in a box nearest the one wished for.
func (d *drawing) nameSpot(run scene.Run, inside scene.Rect, wish scene.Point) (best scene.Point, ok bool) {
	w, h := labelSize(run)
	free := d.m.visible(inside).Expanded(-0.25 * run.Size)
	if w > free.Width() || h > free.Height() {
		return best, false
	}
	fits := func(p scene.Point) bool { return d.field.isFree(scene.RectAround(p, w, h).Expanded(0.1 * run.Size)) }
	if fits(wish) {
		return wish, true
	}
	least := 0.0
	for row := range spots {
		for column := range spots {
			p := scene.Point{
				X: free.Min.X + w/2 + (free.Width()-w)*float64(column)/(spots-1),
				Y: free.Min.Y + h/2 + (free.Height()-h)*float64(row)/(spots-1),
			}
			off := p.Sub(wish)
			if away := off.X*off.X + off.Y*off.Y; (!ok || away < least) && fits(p) {
				best, least, ok = p, away, true
			}
		}
	}
	return best, ok
}

func (d *drawing) writeFixtureName(of plan.ID, run scene.Run, middle scene.Point) {
	w, h := labelSize(run)
	box := scene.RectAround(middle, w, h)
	run.At = scene.Point{X: box.Min.X, Y: box.Min.Y + glyph.MetricsOf(run.Weight, run.Size).CapHeight}
	d.field.text(box, of)
	d.piece(of, LayerFixtures, run)
}
