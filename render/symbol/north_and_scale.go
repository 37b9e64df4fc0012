package symbol

import (
	"studbay/render/glyph"
	"studbay/render/scene"
)

// North is the arrow that says where north is.
type North struct {
	Middle scene.Point
	Size   float64 // height of the arrow, in scene units
	Turn   float64 // degrees clockwise from up the sheet
	Letter string  // N in English; beyond the tip, upright whatever the turn
	Ink    scene.Color
}

// A dart on a short stem that ends in a foot, as our symbols do.
var (
	northDart = shape("M 0 -.5 L .2 .14 L 0 .02 L -.2 .14 Z")
	northStem = shape("M 0 .02 L 0 .44 M -.16 .46 L .16 .46")
)

// Items draws the arrow.
func (n North) Items() []scene.Item {
	t := scene.Turning(n.Turn, n.Middle)
	t.X, t.Y = t.X.Mul(n.Size), t.Y.Mul(n.Size)
	return []scene.Item{
		scene.Fill{Path: northDart.Placed(t), Color: n.Ink},
		scene.Stroke{Path: northStem.Placed(t), Pen: scene.Pen{Width: n.Size * .06, Color: n.Ink}},
		scene.Run{
			At: t.Apply(scene.Point{Y: -.72}), Text: n.Letter, Size: n.Size * .42, Weight: glyph.Bold,
			Align: scene.Center, VAlign: scene.Middle, Color: n.Ink,
		},
	}
}

// ScaleBar is a ruler of the drawing's scale: steps filled by turns, with figures
// under their ends.
type ScaleBar struct {
	At       scene.Point // upper left corner of the first step
	Step     float64     // width of a step, in scene units
	Height   float64
	Labels   []string // one more than there are steps, from the left
	TextSize float64  // em height, in scene units
	Line     float64  // width of the outline
	Ink      scene.Color
	Paper    scene.Color
}

// Items draws the bar. It draws nothing with fewer than two labels.
func (b ScaleBar) Items() (items []scene.Item) {
	steps := len(b.Labels) - 1
	if steps < 1 {
		return nil
	}
	whole := scene.Rect{Min: b.At, Max: b.At.Add(scene.Point{X: float64(steps) * b.Step, Y: b.Height})}
	items = append(items, scene.Fill{Path: whole.Path(), Color: b.Paper})
	for i := 0; i < steps; i += 2 {
		left := b.At.Add(scene.Point{X: float64(i) * b.Step})
		step := scene.Rect{Min: left, Max: left.Add(scene.Point{X: b.Step, Y: b.Height})}
		items = append(items, scene.Fill{Path: step.Path(), Color: b.Ink})
	}
	items = append(items, scene.Stroke{Path: whole.Path(), Pen: scene.Pen{Width: b.Line, Color: b.Ink}})
	for i, label := range b.Labels {
		items = append(items, scene.Run{
			At:   b.At.Add(scene.Point{X: float64(i) * b.Step, Y: b.Height + b.TextSize*.45}),
			Text: label, Size: b.TextSize, Align: scene.Center, VAlign: scene.Top, Color: b.Ink,
		})
	}
	return items
}
