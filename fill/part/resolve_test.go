package part

import (
	"errors"
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
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

func TestResolve(t *testing.T) {
	ring := func(mark *unit.Volume) []plan.AssemblyPart {
		return []plan.AssemblyPart{{Part: "ring4-1g-0.5", Marked: mark}}
	}
	for _, tt := range []struct {
		name     string
		assembly plan.Assembly
		volume   string // less barriers, by NEC 2023, and of a parted box an equal part
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
		{"a metal barrier", plan.Assembly{Code: "PN5", Barriers: []string{"metal"}}, "17.25", "314.16(A): an unmarked metal barrier takes 0.5 of 35"},
		{"two barriers", plan.Assembly{Code: "PN6", Barriers: []string{"metal", "nonmetallic"}}, "14.1666", "314.16(A): 0.5 and 1.0 of 44"},
		{"a cover adds nothing", plan.Assembly{Box: "sq4-2.125", Cover: "blank-4"}, "30.3", "314.16(A): a flat cover has no volume"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, ok, err := Resolve(tt.assembly)
			if !ok || err != nil {
				t.Fatalf("%v, %v", ok, err)
			}
			fig, err := code.Edition("2023")
			if err != nil {
				t.Fatal(err)
			}
			begun := make(box.Contents, len(b.Barriers)+1)
			for i := range begun {
				begun[i].What = box.BeginsSpace
			}
			parted, err := box.Parted(fig, b.Space(), b.Gangs(), begun)
			if err != nil {
				t.Fatal(err)
			}
			r, err := box.Fill(fig, parted[0].Space, nil)
			if err != nil || r.Volume.String() != tt.volume {
				t.Errorf("%s in³, want %s (%s), %v", r.Volume, tt.volume, tt.source, err)
			}
		})
	}
}

func TestAssembliesThatAreNotUnderstood(t *testing.T) {
	for _, tt := range []struct {
		assembly plan.Assembly
		want     string
	}{
		{plan.Assembly{Code: "ZZ9"}, `box type "ZZ9" is not in the catalog`},
		{plan.Assembly{Box: "tin"}, `box "tin" is not in the catalog`},
		{plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "crown"}}}, `part "crown" is not in the catalog`},
		{plan.Assembly{Box: "sq4-1.5", Cover: "lid"}, `cover "lid" is not in the catalog`},
		{plan.Assembly{Box: "sq4-1.5", Barriers: []string{"wood"}}, `"wood" is not a barrier: it is metal or nonmetallic`},
		{plan.Assembly{Box: "oct4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}}}, `Extension, 4 × 1-1/2 square does not go on Steel octagon or round, 4 × 1-1/2`},
	} {
		_, ok, err := Resolve(tt.assembly)
		var unresolved *UnresolvedError
		if ok || !errors.As(err, &unresolved) || err.Error() != tt.want {
			t.Errorf("%+v: %v, %v; want %s", tt.assembly, ok, err, tt.want)
		}
	}
	if _, ok, err := Resolve(plan.Assembly{}); ok || err != nil {
		t.Errorf("none chosen: %v, %v", ok, err)
	}
}
