package level

import (
	"fmt"
	"testing"

	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// BenchmarkSheetLevel draws a level with every label, down to a scale at which most tags
// find no place: the time an opening takes is not to grow with their number.
func BenchmarkSheetLevel(b *testing.B) {
	for _, sixteenths := range []int64{1, 2, 3} {
		for _, n := range []int{200, 2000, 10000} {
			p := plantest.House(1, n)
			ix := index.New(p)
			extent, _ := ix.Extent(p.Levels[0].ID)
			m := render.SheetMedium(unit.FeetInches(0, 0, sixteenths), unit.Foot, render.Print, words.Voice{}).Centred(extent.Min, scene.Point{})
			found := someFindings(p)
			b.Run(fmt.Sprintf("%d16ths/%d", sixteenths, n), func(b *testing.B) {
				for b.Loop() {
					Draw(ix, p.Levels[0].ID, found, m, extent)
				}
			})
		}
	}
}
