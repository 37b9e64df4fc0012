package level

import (
	"fmt"
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// Five openings 5 in apart on one face: far out one mark with their count stands for them,
// nearer each has its own.
func TestOpeningsThatCrowdAreOneMark(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Bath", plan.UseBath, 0, 0, 96, 60)
	var ids []plan.ID
	for i := range 5 {
		ids = append(ids, b.On(fmt.Sprint("B", i+1), "duplex", r, 0, 30+5*float64(i), 16).ID)
	}
	draw := func(zoom float64, found ...rule.Finding) (bundles []render.Piece, marks int, far bool) {
		m := render.BoardMedium(zoom/25.4, 1, render.Light, words.Voice{}).Centred(rendertest.At(-10, -10), scene.Point{})
		for _, p := range Draw(b.Index(), b.Level.ID, found, m, rendertest.Everything) {
			if len(p.Bundle) > 0 {
				bundles = append(bundles, p)
			}
			if p.Layer == render.LayerMarks {
				marks++
			}
		}
		return bundles, marks, m.IsFar()
	}
	if all, _, _ := draw(4); len(all) != 0 {
		t.Errorf("near, %d bundles", len(all))
	}
	all, _, _ := draw(1)
	if len(all) != 1 || len(all[0].Bundle) != 5 {
		t.Fatalf("far, %d bundles: %+v", len(all), all)
	}
	if run, ok := all[0].Items[len(all[0].Items)-1].(scene.Run); !ok || run.Text != "5" {
		t.Errorf("its count is %+v", run)
	}
	stop := rule.Finding{Rule: "box-fill", Severity: rule.Stop, Opening: ids[3], About: ids[3], Room: r.ID, Level: b.Level.ID}
	for _, zoom := range []float64{4, 1, 0.3} {
		if _, marks, far := draw(zoom, stop); marks != 1 {
			t.Errorf("at %v px an inch (far %v) %d marks show that it is stopped", zoom, far, marks)
		}
	}
}
