package fill

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
)

// usualWire is the wire of a yoke whose kind assumes none, in AWG: common practice.
const usualWire = 12

// NewDevice returns a device as it is put on one more yoke.
func NewDevice(kind string) plan.Device { return plan.Device{Kind: kind, Size: usualWire} }

// DevicesOf returns what is on the yokes of an opening: what the plan says, else what its
// kind does. The caller may write to it.
func DevicesOf(o *plan.Opening) []plan.Device {
	if len(o.Devices) > 0 {
		return slices.Clone(o.Devices)
	}
	k := part.All().Kind(o.Kind)
	if k == nil {
		return nil
	}
	usual := NewDevice(k.Device)
	switch k.Switched {
	case part.HalfSwitched:
		usual.Switched = plan.HalfSwitched
	case part.WhollySwitched:
		usual.Switched = plan.WhollySwitched
	}
	for _, item := range k.Wiring {
		if item.What == "device" {
			usual.Size = item.Size
		}
	}
	return slices.Repeat([]plan.Device{usual}, max(k.Yokes, 0))
}
