package boxes

import (
	"slices"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
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
