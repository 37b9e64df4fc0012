package draft

import (
	"studbay/plan"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// spots is how many places across and down a fixture are tried for its name.
const spots = 7

// NameSpot returns the free middle of a line of text in a box nearest the one wished for.
func (d *Drawing) NameSpot(run scene.Run, inside scene.Rect, wish scene.Point) (best scene.Point, ok bool) {
	w, h := TextSize(run)
	free := d.Medium.Visible(inside).Expanded(-0.25 * run.Size)
	if w > free.Width() || h > free.Height() {
		return best, false
	}
	fits := func(p scene.Point) bool {
		return d.Obstacles.IsFree(scene.RectAround(p, w, h).Expanded(0.1 * run.Size))
	}
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

// WriteName writes a fixture's name with its middle at a point.
func (d *Drawing) WriteName(of plan.ID, run scene.Run, middle scene.Point) {
	w, h := TextSize(run)
	box := scene.RectAround(middle, w, h)
	run.At = scene.Point{X: box.Min.X, Y: box.Min.Y + glyph.MetricsOf(run.Weight, run.Size).CapHeight}
	d.Obstacles.Text(box, of)
	d.Put(of, render.LayerFixtures, run)
}
