package layout

import (
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/paper"
	"studbay/render/scene"
)

// Medium returns what a drawing at a scale goes onto: a sheet of a paper, its tags no smaller
// than other type on it.
func Medium(p paper.Paper, s paper.Scale, v words.Voice) render.Medium {
	m := render.SheetMedium(s.Paper, s.Building, *Theme, v)
	m.Scale = p.Times(s)
	m.Text = TagText * scene.PointSize
	return m
}
