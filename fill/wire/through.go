package wire

import (
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
)

// GoesThrough reports whether the current goes on by the terminals of what is in a box, as its
// circuit is said to: of one receptacle, always on, between two cables of two wires. At any
// other box the conductors are spliced and the device is on tails: one terminal takes one wire
// (NEC 110.14(A)), and a neutral that two hot conductors share hangs on no device (300.13(B)).
// Grounds are spliced everywhere (250.148(B)).
func GoesThrough(ix *index.Index, v index.OpeningView) bool {
	o := v.Opening
	k := part.All().Kind(o.Kind)
	if k == nil || k.Family != part.Receptacle || k.Switched != part.NotSwitched || len(v.Cables) != 2 || len(ix.ControlsOf(o.ID)) > 0 {
		return false
	}
	if devices := boxes.DevicesOf(o); len(devices) != 1 || devices[0].Switched == plan.HalfSwitched || devices[0].Switched == plan.WhollySwitched {
		return false
	}
	for _, c := range v.Cables {
		circuit, ok := ix.Plan().Circuits.Get(c.Circuit)
		if !ok || !circuit.Through || circuit.Poles > 1 || c.Wires != 2 || c.Circuit != v.Cables[0].Circuit {
			return false
		}
	}
	return true
}

// SplicesAt is Splices at an opening: where the current goes through the device, neither hot nor
// neutral is spliced.
func SplicesAt(ix *index.Index, v index.OpeningView, contents box.Contents, isMetal bool) int {
	n := Splices(contents, isMetal)
	if Cables(contents) == 2 && GoesThrough(ix, v) {
		n -= 2
	}
	return n
}
