package fill

import (
	"errors"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

func marked(in3 string) *unit.Volume {
	v, err := unit.ParseVolume(in3)
	if err != nil {
		panic(err)
	}
	return &v
}

func TestBuilt(t *testing.T) {
	ring := func(mark *unit.Volume) []plan.AssemblyPart {
		return []plan.AssemblyPart{{Part: "ring4-1g-0.5", Marked: mark}}
	}
	for _, tt := range []struct {
		name     string
		assembly plan.Assembly
		volume   string // less barriers, by NEC 2023
		source   string
	}{
		{"a listed assembly", plan.Assembly{Code: "SQ2"}, "24.5", "21.0 by Table 314.16(A) and a ring marked 3.5"},
		{"its ring without a mark", plan.Assembly{Code: "SQ1"}, "21", "314.16(A): an unmarked ring adds nothing"},
		{"by hand, the ring without a mark", plan.Assembly{Box: "sq4-1.5", Parts: ring(nil)}, "21", "314.16(A)"},
		{"by hand, marked 3.3", plan.Assembly{Box: "sq4-2.125", Parts: ring(marked("3.3"))}, "33.6", "life-improver.com, 30.3 + 3.3"},
		{"an extension of a listed size", plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}}}, "42", "314.16(A): made from a listed size, 2 × 21.0"},
		{"a mark on the box goes before the table", plan.Assembly{Box: "sq4-1.5", Marked: marked("22.5")}, "22.5", "314.16(A)(1): a larger mark may be used"},
		{"a plastic box goes by its mark", plan.Assembly{Box: "pn1-18", Marked: marked("20.3")}, "20.3", "314.16(A)(2)"},
		{"the box goes before the code", plan.Assembly{Code: "SQ2", Box: "pn1-18"}, "18", "what was put together by hand is what there is"},
		{"a metal barrier", plan.Assembly{Code: "PN5", Barriers: []string{"metal"}}, "34.5", "314.16(A): an unmarked metal barrier takes 0.5"},
		{"two barriers", plan.Assembly{Box: "pn2-35", Barriers: []string{"metal", "nonmetallic"}}, "33.5", "314.16(A): 0.5 and 1.0"},
		{"a cover adds nothing", plan.Assembly{Box: "sq4-2.125", Cover: "blank-4"}, "30.3", "314.16(A): a flat cover has no volume"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, ok, err := BuiltOf(tt.assembly)
			if !ok || err != nil {
				t.Fatalf("%v, %v", ok, err)
			}
			h := plan.Header{Edition: "2023"}
			fig, err := FiguresOf(plan.Plan{Header: &h})
			if err != nil {
				t.Fatal(err)
			}
			r, err := fillOf(fig, b)
			if err != nil || r.String() != tt.volume {
				t.Errorf("%s in³, want %s (%s), %v", r, tt.volume, tt.source, err)
			}
		})
	}
}

func TestAssembliesThatAreNotUnderstood(t *testing.T) {
	for _, tt := range []struct {
		assembly plan.Assembly
		want     string
	}{
		{plan.Assembly{Code: "ZZ9"}, `assembly "ZZ9" is not in the catalogue`},
		{plan.Assembly{Box: "tin"}, `box "tin" is not in the catalogue`},
		{plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "crown"}}}, `part "crown" is not in the catalogue`},
		{plan.Assembly{Box: "sq4-1.5", Cover: "lid"}, `cover "lid" is not in the catalogue`},
		{plan.Assembly{Box: "sq4-1.5", Barriers: []string{"wood"}}, `"wood" is no barrier: it is metal or nonmetallic`},
		{plan.Assembly{Box: "oct4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}}}, `Extension, 4 × 1-1/2 square does not go on Steel octagon or round, 4 × 1-1/2`},
	} {
		_, ok, err := BuiltOf(tt.assembly)
		var unresolved *UnresolvedError
		if ok || !errors.As(err, &unresolved) || err.Error() != tt.want {
			t.Errorf("%+v: %v, %v; want %s", tt.assembly, ok, err, tt.want)
		}
	}
	if _, ok, err := BuiltOf(plan.Assembly{}); ok || err != nil {
		t.Errorf("none chosen: %v, %v", ok, err)
	}
}

func TestBoxSizes(t *testing.T) {
	for _, tt := range []struct {
		name          string
		o             plan.Opening
		width, height unit.Length
	}{
		{"as the catalogue says", plan.Opening{Assembly: plan.Assembly{Box: "sq4-1.5"}}, in(4), in(4)},
		{"of a listed assembly", plan.Opening{Assembly: plan.Assembly{Code: "SQ1"}}, in(4), in(4)},
		{"none chosen", plan.Opening{Gangs: 1}, oneGangWidth, in(3.75)},
		{"none chosen, three gangs", plan.Opening{Gangs: 3}, oneGangWidth + 2*gangStep, in(3.75)},
		{"a round one", plan.Opening{Gangs: 0}, oneGangWidth, in(3.75)},
		{"a box nobody knows", plan.Opening{Gangs: 2, Assembly: plan.Assembly{Box: "tin"}}, oneGangWidth + gangStep, in(3.75)},
	} {
		if w, h := BoxSize(&tt.o); w != tt.width || h != tt.height {
			t.Errorf("%s: %s × %s, want %s × %s", tt.name, w, h, tt.width, tt.height)
		}
	}
}

// The height is told to a line of the box, from a floor; what is measured is the centre
// above the finished floor.
func TestCentreHeights(t *testing.T) {
	room := &plan.Room{Floor: []plan.Layer{{Thickness: in(0.75)}}}
	o := plan.Opening{Assembly: plan.Assembly{Box: "sq4-1.5"}} // 4 in high
	for _, tt := range []struct {
		height plan.Height
		want   unit.Length
	}{
		{plan.Height{Value: in(16), To: plan.BoxCentre, From: plan.FinishedFloor}, in(16)},
		{plan.Height{Value: in(16), To: plan.BoxBottom, From: plan.FinishedFloor}, in(18)},
		{plan.Height{Value: in(16), To: plan.BoxTop, From: plan.Subfloor}, in(13.25)},
	} {
		o.Height = tt.height
		if got := CentreHeight(&o, room); got != tt.want {
			t.Errorf("%+v: %s, want %s", tt.height, got, tt.want)
		}
	}
}
