package unfold

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// usualHead is drawn for a break that does not say its head: a door of 80 in, common
// practice.
const usualHead = 80 * unit.Inch

// cut draws one break as seen from the room.
func (u *unfolding) cut(f Face, c index.Cut) {
	head := c.Break.Head
	if head <= 0 {
		head = usualHead
	}
	sill := min(c.Break.Sill, head)
	box := u.box(f, c.From, c.To, sill, min(head, u.strip.Ceiling))
	items := []scene.Item{
		scene.Fill{Path: box.Path(), Color: u.Theme.Surface},
		scene.Stroke{Path: box.Path(), Pen: u.breakPen()},
	}
	items = append(items, u.cutInside(c, box)...)
	items = append(items, u.casing(f, c)...)
	u.Put(c.Break.ID, render.LayerBreaks, items...)
	u.Avoid(c.Break.ID, items...)
}

// casing outlines trim that stands already round a break: in dashes, and called assumed where
// there is room, as long as nobody has measured it.
func (u *unfolding) casing(f Face, c index.Cut) []scene.Item {
	trim, any := frame.CasingOf(c)
	if !any || !f.Side.StandsAt(c.From) && !f.Side.StandsAt(c.To) {
		return nil
	}
	box := u.box(f, max(trim.Left, 0), min(trim.Right, f.Length), trim.Bottom, min(trim.Top, u.strip.Ceiling))
	return u.stoodTrim(box, c.Break.CasingMeasured, words.New("face.casing", "casing {0}, assumed", words.Height(c.Break.Casing)), box.Min.Y-0.35*u.m.Text)
}

// trims draws what runs along a face: a baseboard, a chair rail.
func (u *unfolding) trims(f Face) (items []scene.Item) {
	for _, t := range f.Side.Trim {
		box := u.box(f, 0, f.Length, t.Bottom, min(t.Bottom+t.Height, u.strip.Ceiling))
		items = append(items, u.stoodTrim(box, t.Measured, words.New("face.trim", "{0} {1}, assumed", t.Name, words.Height(t.Height)), box.Min.Y-0.35*u.m.Text)...)
	}
	return items
}

// stoodTrim outlines trim; what is assumed in dashes, with what it is over its foot y where
// that has room.
func (u *unfolding) stoodTrim(box scene.Rect, isMeasured bool, assumed words.Text, y float64) []scene.Item {
	pen := u.Hairline()
	if isMeasured {
		return []scene.Item{scene.Stroke{Path: box.Path(), Pen: pen}}
	}
	items := []scene.Item{scene.Stroke{Path: box.Path(), Pen: u.dashedPen(pen, 3, 2)}}
	said := scene.Run{At: scene.Point{X: box.Middle().X, Y: y}, Text: u.m.Voice.Say(assumed), Size: u.m.Text, Color: u.Theme.Muted, Align: scene.Center}
	if b := said.Bounds(); b.Width() < box.Width() && u.Obstacles.IsFree(b) {
		items = append(items, said)
		u.Obstacles.Text(b, "")
	}
	return items
}

func (u *unfolding) breakPen() scene.Pen {
	p := u.MutedPen()
	p.Width = 1.3 * u.m.Pixel
	return p
}

// breakFronts draws, within its outline, each body that a kind of break may have.
var breakFronts = map[string]func(*unfolding, index.Cut, scene.Rect) []scene.Item{
	"door":      (*unfolding).swing,
	"slider":    (*unfolding).panels,
	"window":    (*unfolding).panes,
	"passage":   func(*unfolding, index.Cut, scene.Rect) []scene.Item { return nil },
	"fireplace": (*unfolding).hearth,
}

// cutInside draws the body of the kind; one that is not known is its outline.
func (u *unfolding) cutInside(c index.Cut, box scene.Rect) []scene.Item {
	if front := breakFronts[u.Medium.Catalogue().Break(c.Break.Kind).Body]; front != nil {
		return front(u, c, box)
	}
	return nil
}

// mutedLine strokes what stands back.
func (u *unfolding) mutedLine(p scene.Path) scene.Item {
	return scene.Stroke{Path: p, Pen: u.MutedPen()}
}

// panes draws a frame and a bar across it.
func (u *unfolding) panes(_ index.Cut, box scene.Rect) []scene.Item {
	inner := box.Expanded(-min(2.5*u.m.Pixel, box.Width()/8))
	if inner.IsEmpty() {
		return nil
	}
	y := box.Middle().Y
	bar := scene.LinePath(scene.Point{X: inner.Min.X, Y: y}, scene.Point{X: inner.Max.X, Y: y})
	return []scene.Item{u.mutedLine(inner.Path()), u.mutedLine(bar)}
}

// panels draws what parts the panels of a slider.
func (u *unfolding) panels(c index.Cut, box scene.Rect) (items []scene.Item) {
	panels := max(2, len(c.Break.Panels))
	for i := 1; i < panels; i++ {
		x := box.Min.X + box.Width()*float64(i)/float64(panels)
		items = append(items, u.mutedLine(scene.LinePath(scene.Point{X: x, Y: box.Min.Y}, scene.Point{X: x, Y: box.Max.Y})))
	}
	return items
}

// hearth draws the firebox of a fireplace.
func (u *unfolding) hearth(_ index.Cut, box scene.Rect) []scene.Item {
	dx, dy := 0.16*box.Width(), 0.22*box.Height()
	return []scene.Item{u.mutedLine(scene.Polyline(
		scene.Point{X: box.Min.X + dx, Y: box.Max.Y}, scene.Point{X: box.Min.X + dx, Y: box.Min.Y + dy},
		scene.Point{X: box.Max.X - dx, Y: box.Min.Y + dy}, scene.Point{X: box.Max.X - dx, Y: box.Max.Y}))}
}

// swing draws dashed lines from the shutting edge of each leaf to the middle of its
// hinged one. A door stored on the other face of the partition is seen from behind.
func (u *unfolding) swing(c index.Cut, box scene.Rect) (items []scene.Item) {
	if c.Break.Swing == plan.SwingNone || c.Break.Hand == plan.HandUnknown {
		return nil
	}
	leaf := func(hinge, edge float64) {
		middle := scene.Point{X: hinge, Y: box.Middle().Y}
		path := scene.Polyline(scene.Point{X: edge, Y: box.Min.Y}, middle, scene.Point{X: edge, Y: box.Max.Y})
		items = append(items, scene.Stroke{Path: path, Pen: u.dashedPen(u.Hairline(), 4, 3)})
	}
	switch isLeft := (c.Break.Hand == plan.HandLeft) == c.IsOwn; {
	case c.Break.Hand == plan.HandDouble:
		leaf(box.Min.X, box.Middle().X)
		leaf(box.Max.X, box.Middle().X)
	case isLeft:
		leaf(box.Min.X, box.Max.X)
	default:
		leaf(box.Max.X, box.Min.X)
	}
	return items
}
