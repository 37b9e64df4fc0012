package boxes

import (
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func TestDevicesAreThoseStatedElseTheKinds(t *testing.T) {
	stated := []plan.Device{{Kind: "one-pole switch", Size: 14}}
	for _, tt := range []struct {
		name string
		of   plan.Opening
		want []plan.Device
	}{
		{"as stated", plan.Opening{Kind: "duplex", Devices: stated}, stated},
		{"as its kind", plan.Opening{Kind: "duplex"}, []plan.Device{{Kind: "duplex receptacle"}}},
		{"as wide as its kind", plan.Opening{Kind: "range"}, []plan.Device{{Kind: "range receptacle", Gangs: 2}}},
		{"no such kind", plan.Opening{Kind: "nothing"}, nil},
	} {
		if got := DevicesOf(&tt.of); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %+v, want %+v", tt.name, got, tt.want)
		}
	}
	o := plan.Opening{Devices: slices.Clone(stated)}
	moved := o
	if moved.Status = plan.StatusMoved; len(DevicesOf(&moved)) > 0 {
		t.Error("a box whose opening moved has a device under its blank cover")
	}
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

func cubic(t *testing.T, text string) unit.Volume {
	t.Helper()
	v, err := unit.ParseVolume(text)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// Another yoke takes two allowances of the largest conductor that reaches it, 314.16(B)(4):
// of 14 AWG 4.00, of 12 AWG 4.50 (Table 314.16(B)(1), 2023), whatever its size is said to be
// by its kind. The box has 18.0: two yokes of 14 AWG fill it exactly.
func TestAnotherYokeIsSizedByWhatReachesIt(t *testing.T) {
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	for size, want := range map[unit.AWG][2]string{14: {"14", "18"}, 12: {"15.75", "20.25"}} {
		o := plan.Opening{ID: "o22222222", Kind: "duplex", Status: plan.StatusNew, Assembly: plan.Assembly{Code: "PN1"}}
		b, _, err := part.Resolve(o.Assembly)
		if err != nil {
			t.Fatal(err)
		}
		// Four conductors and the grounds are five allowances, the yoke two.
		cables := []*plan.Cable{enters(0, plan.Cable{Size: size, Wires: 2, Ground: true}), enters(0, plan.Cable{Size: size, Wires: 2, Ground: true})}
		for more, want := range want {
			o.Devices = slices.Repeat([]plan.Device{NewDevice("duplex receptacle")}, more+1)
			w := WorkOf(index.OpeningView{Opening: &o, Cables: cables}, b, fig)
			if len(w.Spaces) != 1 || w.Spaces[0].Required != cubic(t, want) || w.Fits() != (want != "20.25") {
				t.Errorf("%d yokes, %d AWG: %+v, want %s in³", more+1, size, w, want)
			}
		}
	}
}
