package part

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestTakenApartHoldsWhatTheListedOneDid holds every assembly of the catalogue to its own
// volume, put together from its parts.
func TestTakenApartHoldsWhatTheListedOneDid(t *testing.T) {
	for _, listed := range All().Assemblies {
		apart := TakenApart(plan.Assembly{Code: listed.Code, Barriers: []string{"metal"}})
		b, ok, err := Resolve(apart)
		if !ok || err != nil {
			t.Errorf("%s: %+v: %v, %v", listed.Code, apart, ok, err)
			continue
		}
		if b.Volume() != listed.Volume() || !slices.Equal(apart.Barriers, []string{"metal"}) {
			t.Errorf("%s: %v of %+v, want %v", listed.Code, b.Volume(), apart, listed.Volume())
		}
	}
	byHand := plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}}}
	for _, a := range []plan.Assembly{byHand, {Code: "ZZ9"}} {
		if got := TakenApart(a); got.Box != a.Box || got.Code != a.Code || len(got.Parts) != len(a.Parts) {
			t.Errorf("%+v becomes %+v, want it as it was", a, got)
		}
	}
}

func TestAnotherBoxKeepsWhatGoesOnIt(t *testing.T) {
	a := plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}}, Cover: "blank-4", Barriers: []string{"metal"}}
	deeper := OnBox(a, All().Box("sq4-2.125"))
	if deeper.Box != "sq4-2.125" || len(deeper.Parts) != 1 || deeper.Cover != "blank-4" || len(deeper.Barriers) != 1 {
		t.Errorf("on a deeper square it is %+v", deeper)
	}
	if plastic := OnBox(a, All().Box("pn1-18")); plastic.Box != "pn1-18" || len(plastic.Parts) != 0 {
		t.Errorf("an extension of squares is kept on a plastic box: %+v", plastic)
	}
}

func TestAnotherKindIsAsItStartsOut(t *testing.T) {
	o := NewOpening(unit.Metric, "duplex", plan.OnFace("snaaaaaaa", unit.Foot))
	o.ID = "opaaaaaaa"
	fresh := NewOpening(unit.Imperial, "ceiling-light", plan.OnCeiling("rdenaaaaa", geom.Point{}))
	if got := ToKind(&o, "ceiling-light"); got.ID != o.ID || got.Kind != "ceiling-light" || got.Gangs != fresh.Gangs || got.Assembly.Code != fresh.Assembly.Code {
		t.Errorf("it becomes %+v, want what %+v has", got, fresh)
	}
}
