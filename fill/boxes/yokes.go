package boxes

import (
	"slices"

	"studbay/fill/box"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// usualWire is the wire of a yoke that no conductor is known to reach and whose kind
// assumes none, in AWG: common practice.
const usualWire unit.AWG = 12

// NewDevice returns a device as it is put on one more yoke. It is sized by what reaches
// it until the user says another size.
func NewDevice(kind string) plan.Device { return plan.Device{Kind: kind} }

// DevicesOf returns what is on the yokes of an opening: what the plan says, else what its
// kind does. The caller may write to it.
func DevicesOf(o *plan.Opening) []plan.Device {
	return slices.Clone(devicesOf(o))
}

// devicesOf is DevicesOf without a copy: nobody may write to it.
func devicesOf(o *plan.Opening) []plan.Device {
	if o.Status == plan.StatusMoved {
		return nil // a blank cover at most
	}
	if len(o.Devices) > 0 {
		return o.Devices
	}
	return usualOf()[o.Kind].devices
}

// usualDevice returns what is on each yoke of a kind.
func usualDevice(k *part.Kind) plan.Device {
	usual := NewDevice(k.Device)
	switch k.Switched {
	case part.HalfSwitched:
		usual.Switched = plan.HalfSwitched
	case part.WhollySwitched:
		usual.Switched = plan.WhollySwitched
	}
	for _, item := range k.Wiring {
		if item.What == box.Device {
			usual.Gangs = item.Gangs
		}
	}
	return usual
}

// yokesOf returns the yokes of an opening as items, of no size where none is said.
func yokesOf(o *plan.Opening) (items box.Contents) {
	devices := devicesOf(o)
	if len(devices) > 0 {
		items = make(box.Contents, 0, len(devices))
	}
	for _, d := range devices {
		items = append(items, box.Item{What: box.Device, Size: d.Size, Gangs: d.Gangs})
	}
	return items
}

// addReaching adds the conductors that can reach a yoke: those that end or are spliced in
// the box, or loop in it, and the grounding conductors.
func addReaching(sizes []unit.AWG, items box.Contents) []unit.AWG {
	for _, i := range items {
		switch i.What {
		case box.Cable, box.Conductor, box.Loop, box.Ground, box.IsolatedGround:
			if !i.None && (i.What != box.Cable || i.Wires > 0) {
				sizes = append(sizes, i.Size)
			}
		}
	}
	return sizes
}

// sizeYokes gives each yoke the largest of the conductors that reach it, 314.16(B)(4). A
// size that was said is kept where it may hold: which of several conductors is connected
// to a yoke, only the user knows.
func sizeYokes(items box.Contents, reach []unit.AWG, mayHold func(unit.AWG) bool, usual unit.AWG) {
	for n := range items {
		i := &items[n]
		if i.What != box.Device || i.None || i.Size != 0 && mayHold(i.Size) {
			continue
		}
		switch {
		case len(reach) > 0:
			i.Size = slices.MinFunc(reach, thickest)
		case i.Size == 0:
			i.Size = usual
		}
	}
}

// thickest orders conductors from the thickest.
func thickest(a, b unit.AWG) int {
	switch {
	case a.Larger(b):
		return -1
	case b.Larger(a):
		return 1
	}
	return 0
}
