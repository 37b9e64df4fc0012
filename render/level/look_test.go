package level

import (
	"testing"

	"studbay/plan"
	"studbay/render"
	"studbay/render/rendertest"
)

func TestCottageLooksAsKept(t *testing.T) {
	c := rendertest.NewCottage(t)
	for _, tt := range []struct {
		name string
		m    render.Medium
		w, h float64
		dpi  int
	}{
		{"cottage-light.png", rendertest.BoardOf(render.Light), 950, 560, 96},
		{"cottage-dark.png", rendertest.BoardOf(render.Dark), 950, 560, 96},
		{"cottage-contrast.png", rendertest.BoardOf(render.HighContrast), 950, 560, 96},
		{"cottage-print.png", rendertest.SheetOf(), 255, 148, 150},
	} {
		t.Run(tt.name, func(t *testing.T) {
			rendertest.Golden(t, tt.name, tt.dpi, rendertest.Page(tt.m, tt.w, tt.h, Draw(c.Index, c.Level, c.Findings, tt.m, rendertest.Everything)))
		})
	}
	_ = plan.ID("")
}
