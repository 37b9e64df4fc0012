package fill

import (
	"slices"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestTakenApartHoldsWhatTheListedOneDid holds every assembly of the catalogue to its own
// volume, put together from its parts.
func TestTakenApartHoldsWhatTheListedOneDid(t *testing.T) {
	for _, listed := range part.All().Assemblies {
		apart := TakenApart(plan.Assembly{Code: listed.Code, Barriers: []string{"metal"}})
		b, ok, err := part.Resolve(apart)
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
	deeper := OnBox(a, part.All().Box("sq4-2.125"))
	if deeper.Box != "sq4-2.125" || len(deeper.Parts) != 1 || deeper.Cover != "blank-4" || len(deeper.Barriers) != 1 {
		t.Errorf("on a deeper square it is %+v", deeper)
	}
	if plastic := OnBox(a, part.All().Box("pn1-18")); plastic.Box != "pn1-18" || len(plastic.Parts) != 0 {
		t.Errorf("an extension of squares is kept on a plastic box: %+v", plastic)
	}
}

func TestDevicesAreThoseStatedElseTheKinds(t *testing.T) {
	stated := []plan.Device{{Kind: "one-pole switch", Size: 14}}
	for _, tt := range []struct {
		name string
		of   plan.Opening
		want []plan.Device
	}{
		{"as stated", plan.Opening{Kind: "duplex", Devices: stated}, stated},
		{"as its kind", plan.Opening{Kind: "duplex"}, []plan.Device{{Kind: "duplex receptacle", Size: 12}}},
		{"no such kind", plan.Opening{Kind: "nothing"}, nil},
	} {
		if got := DevicesOf(&tt.of); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %+v, want %+v", tt.name, got, tt.want)
		}
	}
	o := plan.Opening{Devices: slices.Clone(stated)}
	if DevicesOf(&o)[0].Size = 10; o.Devices[0].Size != 14 {
		t.Error("what is returned is the plan's own")
	}
	for _, k := range part.All().Kinds {
		devices := DevicesOf(&plan.Opening{Kind: k.ID})
		if len(devices) != max(k.Yokes, 0) {
			t.Errorf("%s: %d devices, want %d", k.ID, len(devices), k.Yokes)
		}
		for _, d := range devices {
			if string(k.Switched) != string(d.Switched) && !(k.Switched == part.NotSwitched && d.Switched == plan.NotSwitched) {
				t.Errorf("%s: switched %q, want %q", k.ID, d.Switched, k.Switched)
			}
		}
	}
}

func TestAnotherKindIsAsItStartsOut(t *testing.T) {
	o := part.NewOpening(unit.Metric, "duplex", plan.OnFace("snaaaaaaa", unit.Foot))
	o.ID = "opaaaaaaa"
	fresh := part.NewOpening(unit.Imperial, "ceiling-light", plan.OnCeiling("rdenaaaaa", geom.Point{}))
	if got := part.ToKind(&o, "ceiling-light"); got.ID != o.ID || got.Kind != "ceiling-light" || got.Gangs != fresh.Gangs || got.Assembly.Code != fresh.Assembly.Code {
		t.Errorf("it becomes %+v, want what %+v has", got, fresh)
	}
}
