package trade

import (
	"testing"

	"studbay/plan/unit"
	"studbay/render/fullsize"
	"studbay/render/layout"
)

// TestMarksBesideTheTape: no line of a mark runs through the text of another, and all texts
// stand on the strip.
func TestMarksBesideTheTape(t *testing.T) {
	b := &Book{}
	s := fullsize.Strip{To: 15 * unit.Inch}
	var marks []fullsize.Mark
	for _, at := range []float64{0.5, 1, 1.25, 4, 4.0625, 9, 13.5, 14, 14.875} {
		marks = append(marks, fullsize.Mark{At: unit.Length(at * float64(unit.Inch)), Tags: []string{"K1", "K2", "K3"}})
	}
	all := b.beside(s, marks, layout.Strong, 4)
	if len(all) != len(marks) {
		t.Fatalf("%d of %d marks", len(all), len(marks))
	}
	for i, m := range all {
		if m.begin < 0 || m.end > 15*25.4 {
			t.Errorf("%q at %.1f leaves the strip", m.text, m.at)
		}
		for _, o := range all[i+1:] {
			if o.begin < m.end && m.begin < o.end && o.lane == m.lane {
				t.Errorf("%q and %q lie on each other", m.text, o.text)
			}
			for _, pair := range [][2]tapeMark{{m, o}, {o, m}} {
				line, text := pair[0], pair[1]
				sameSide := (line.begin > line.at) == (text.begin > text.at)
				if sameSide && line.at > text.begin && line.at < text.end && line.lane >= text.lane {
					t.Errorf("the line of %q at %.1f runs through %q", line.text, line.at, text.text)
				}
			}
		}
	}
}
