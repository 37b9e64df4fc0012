package layout

import (
	"testing"

	"studbay/plan/unit"
	"studbay/render/paper"
)

// TestEvenFlowFillsColumnsAlike lays out blocks on a page of seven columns.
func TestEvenFlowFillsColumnsAlike(t *testing.T) {
	size := paper.Paper{Width: 36 * unit.Inch * 145 / 100, Height: 24 * unit.Inch * 145 / 100} // laid out 36 × 24 in
	const tall, column = 30.0, 118.0
	for _, tt := range []struct {
		blocks, pages int
		most          float64 // that a column is full of
	}{
		{2, 1, leastColumn}, // too few for more than one column
		{14, 1, 3 * tall},   // two or three in each
		{70, 1, 11 * tall},  // ten or eleven
		{200, 2, 19 * tall}, // more than a page holds: no page more than need be
	} {
		pages := 0
		lowest := map[*Page]float64{}
		lay := func(f *Flow) {
			for range tt.blocks {
				f.Need(tall)
				f.Y += tall
				lowest[f.On] = max(lowest[f.On], f.Y-f.Column().Min.Y)
			}
		}
		f := &Flow{Least: column, Onward: func() *Page {
			pages++
			return New(size, Languages{}, 0)
		}}
		f.Begin(f.Onward())
		f.Even(func(high float64) int {
			draft := &Flow{Least: column, Tall: high}
			return draft.Count(f.On.Draft(), func() { lay(draft) })
		})
		clear(lowest)
		lay(f)
		if pages != tt.pages {
			t.Errorf("%d blocks take %d pages, want %d", tt.blocks, pages, tt.pages)
		}
		for _, full := range lowest {
			if full > tt.most {
				t.Errorf("%d blocks fill a column with %.0f mm, want at most %.0f", tt.blocks, full, tt.most)
			}
		}
	}
}
