package unfold

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// faceOpenings draws the boxes of one face, left to right.
func (u *unfolding) faceOpenings(f Face, side *index.SideView) {
	openings := slices.Clone(side.Openings)
	slices.SortStableFunc(openings, func(a, b *plan.Opening) int {
		return cmp.Or(cmp.Compare(a.At.Along, b.At.Along), cmp.Compare(a.Height.Value, b.Height.Value))
	})
	for _, o := range openings {
		if !u.m.Hides(o.ID) {
			u.opening(f, o)
		}
	}
}

// boxOf returns where an opening's box stands in the scene. On a board it is never too
// small to be seen.
func (u *unfolding) boxOf(f Face, o *plan.Opening) scene.Rect {
	front := frame.FrontOf(o)
	middle := u.m.ToStrip(f.Left+o.At.Along, frame.CentreHeight(o, u.strip.Room))
	wide, high := u.m.Length(front.Width), u.m.Length(front.Height)
	if least := 6 * u.m.Pixel; u.m.Kind == render.Board && wide < least {
		wide, high = least, max(high, least*1.5)
		if front.IsRound {
			high = wide
		}
	}
	return scene.RectAround(middle, wide, high)
}

func (u *unfolding) opening(f Face, o *plan.Opening) {
	box := u.boxOf(f, o)
	if !u.m.Shows(box) {
		return
	}
	ink := u.Theme.Accent
	worst := u.Found.Worst(o.ID)
	if worst != nil && u.m.Kind == render.Board && worst.Severity >= rule.Warn {
		ink = u.Theme.Severity(worst.Severity)
	}
	spec := render.SpecOf(u.Medium.Catalogue(), o)
	items := []scene.Item{}
	pen := scene.Pen{Width: 1.5 * u.m.Pixel, Color: ink}
	if o.Status != plan.StatusNew {
		pen.Width = u.m.Pixel
	}
	outline := outlineOf(box, frame.FrontOf(o).IsRound)
	if collar := frame.CutoutOf(o); collar != frame.FrontOf(o) && !collar.IsZero() {
		// the ring's collar comes through the face; the body is behind it
		items = append(items, scene.Stroke{Path: outline, Pen: u.dashedPen(scene.Pen{Width: max(pen.Width/2, u.Hairline().Width), Color: ink}, 3, 2)})
		box = scene.RectAround(box.Middle(), u.m.Length(collar.Width), u.m.Length(collar.Height))
		outline = outlineOf(box, collar.IsRound)
	}
	items = append(items, scene.Fill{Path: outline, Color: u.Theme.Surface}, scene.Stroke{Path: outline, Pen: pen})
	items = append(items, u.front(spec, box, ink, max(1, o.Gangs))...)
	if o.IsGone() {
		items = append(items, scene.Stroke{Path: scene.LinePath(
			scene.Point{X: box.Min.X - 2*u.m.Pixel, Y: box.Max.Y + 2*u.m.Pixel},
			scene.Point{X: box.Max.X + 2*u.m.Pixel, Y: box.Min.Y - 2*u.m.Pixel}), Pen: pen})
	}
	box = u.boxOf(f, o)
	if worst != nil {
		u.badge = append(u.badge, faceBadge{o.ID, box, worst})
	}
	u.Put(o.ID, render.LayerOpenings, items...)
	u.Obstacles.Block(box, o.ID)
	u.tagBox(f, o, box, ink)
}

// outlineOf is how a box or a collar is drawn as one looks at its face.
func outlineOf(r scene.Rect, isRound bool) scene.Path {
	if isRound {
		return r.RoundedPath(r.Width())
	}
	return r.RoundedPath(0.18 * r.Width())
}

// faceBadge is a box on a face whose sign of a finding is to be drawn.
type faceBadge struct {
	of  plan.ID
	box scene.Rect
	f   *rule.Finding
}

// badges draws the signs of findings beside their boxes: above, or at another side where
// that would hide a box; where every side would, none is drawn.
func (u *unfolding) badges() {
	side := 0.9 * u.m.Text
	for _, b := range u.badge {
		around, m := b.box.Expanded(0.72*side), b.box.Middle()
		for _, at := range []scene.Point{{X: m.X, Y: around.Min.Y}, {X: around.Max.X, Y: m.Y}, {X: around.Min.X, Y: m.Y}, {X: m.X, Y: around.Max.Y}} {
			box := scene.RectAround(at, side, side)
			if u.Obstacles.Hits(box, func(o *draft.Obstacle) bool { return !o.IsLine }) {
				continue
			}
			u.Put(b.of, render.LayerMarks, symbol.DrawMark(render.MarkOf(b.f), at, side, u.Theme.Severity(b.f.Severity), u.Theme.OnSeverity(b.f.Severity))...)
			u.Obstacles.Text(box, b.of)
			break
		}
	}
}

// front draws what tells a kind in the small: two marks for a receptacle, a toggle
// for a switch, a dot for the rest, once a gang.
func (u *unfolding) front(spec symbol.Spec, box scene.Rect, ink scene.Color, gangs int) (items []scene.Item) {
	dot := 0.11 * box.Height()
	for i := range gangs {
		x := box.Min.X + box.Width()*(float64(i)+0.5)/float64(gangs)
		y := box.Middle().Y
		switch spec.Family {
		case symbol.Receptacle:
			for _, dy := range []float64{-0.2, 0.2} {
				items = append(items, scene.Fill{Path: scene.RectAround(scene.Point{X: x, Y: y + dy*box.Height()}, 1.6*dot, dot).Path(), Color: ink})
			}
		case symbol.Switch:
			items = append(items, scene.Fill{Path: scene.RectAround(scene.Point{X: x, Y: y}, dot, 3.4*dot).Path(), Color: ink})
		default:
			items = append(items, scene.Fill{Path: scene.Circle(scene.Point{X: x, Y: y}, 0.9*dot), Color: ink})
		}
	}
	return items
}

// tagBox asks for the tag of a box, in its face.
func (u *unfolding) tagBox(f Face, o *plan.Opening, box scene.Rect, ink scene.Color) {
	if o.Tag == "" {
		return
	}
	face := u.box(f, 0, f.Length, 0, u.strip.Ceiling)
	u.tags = append(u.tags, &draft.Label{
		ID: o.ID, From: box,
		Area: &draft.Area{
			Outline: []scene.Point{face.Min, {X: face.Max.X, Y: face.Min.Y}, face.Max, {X: face.Min.X, Y: face.Max.Y}},
			Bounds:  face,
			Window:  u.m.Window,
		},
		Run: scene.Run{Text: o.Tag, Size: u.m.Text, Weight: glyph.Bold, Color: ink},
	})
}
