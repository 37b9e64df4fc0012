package trade

import (
	"studbay/fill/rule"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// MarkIn is how far the text of a finding stands in, behind its mark.
const MarkIn = 4.4

// Mark draws the sign of a finding; of one set aside, a broken ring.
func Mark(found rule.Finding, at scene.Point) []scene.Item {
	if found.Waived != nil {
		return []scene.Item{scene.Stroke{
			Path: scene.Circle(at, 1), Pen: scene.Pen{Width: layout.Pen(layout.Divider).Width, Color: layout.Theme.Muted, Dash: []float64{0.5, 0.5}},
		}}
	}
	ink := layout.Theme.Note
	if !found.IsOpen {
		ink = layout.Theme.Severity(found.Severity)
	}
	return symbol.DrawMark(render.MarkOf(&found), at, 2.5, ink, layout.Theme.Paper)
}
