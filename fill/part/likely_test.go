package part

import (
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// Table 314.16(A) has 3 × 2 × 2, 2-1/4, 2-1/2 and 2-3/4; 4 × 1-1/4 and 1-1/2 round and square.
// A box measures up to 1/4 in less inside than it is called, a tape up to 1/8 more (practice).
func TestLikelyBoxes(t *testing.T) {
	in := func(w, h, d float64) plan.Inside {
		l := func(v float64) unit.Length { return unit.Length(v*16) * (unit.Inch / 16) }
		return plan.Inside{Width: l(w), Height: l(h), Depth: l(d)}
	}
	for _, tt := range []struct {
		name   string
		in     plan.Inside
		want   []string
		source string
	}{
		{"a device box, 1/16 of steel all round", in(1.875, 2.875, 2.4375), []string{"dev3-2.5"}, "3 × 2 × 2-1/2; with clamps it is the same size"},
		{"lying", in(2.875, 1.875, 2.4375), []string{"dev3-2.5"}, "as it was put in"},
		{"between two depths", in(1.875, 2.875, 2.25), []string{"dev3-2.25", "dev3-2.5"}, "2-1/4 and 2-1/2, a quarter less"},
		{"four inches", in(3.875, 3.875, 1.4375), []string{"oct4-1.5", "sq4-1.5"}, "round or square: 4 × 1-1/2"},
		{"1/4 less", in(3.75, 3.75, 1.25), []string{"oct4-1.25", "oct4-1.5", "sq4-1.25", "sq4-1.5"}, "1-1/2 less 1/4 still"},
		{"1/16 less than that", in(3.6875, 3.75, 1.5), nil, "5/16 less is none"},
		{"1/8 more", in(4.125, 4.125, 1.625), []string{"oct4-1.5", "sq4-1.5"}, "1-1/2 and 1/8"},
		{"1/16 more than that, wide", in(4.1875, 4.125, 1.5), nil, "3/16 more is none"},
		{"1/16 more than that, deep", in(4, 4, 1.6875), nil, "1-1/2 and 3/16; 2-1/8 less 7/16"},
		{"no depth", in(3.875, 3.875, 0), nil, "all three are wanted"},
	} {
		var got []string
		for _, b := range All().LikelyBoxes(tt.in) {
			got = append(got, b.ID)
		}
		t.Run(tt.name, func(t *testing.T) { same(t, got, tt.want) })
	}
}

// Clamps of 1/4 to 1-1/4 grip both, and nothing beyond.
func TestGrips(t *testing.T) {
	fit := Fit{ClampMin: unit.Inch / 4, ClampMax: 5 * unit.Inch / 4}
	same(t, []bool{fit.Grips(unit.Inch/4 - 1), fit.Grips(unit.Inch / 4), fit.Grips(5 * unit.Inch / 4), fit.Grips(5*unit.Inch/4 + 1)}, []bool{false, true, true, false})
}
