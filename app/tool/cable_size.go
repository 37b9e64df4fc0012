package tool

import (
	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
)

// asUsual wires a cable as the kind of an opening usually is, where that is known.
func asUsual(c *plan.Cable, o *plan.Opening) {
	k := part.All().Kind(o.Kind)
	if k == nil {
		return
	}
	stated := fill.StatedContents(k.Wiring)
	if stated == nil {
		return
	}
	for _, it := range stated.Items {
		if it.What == plan.ItemCable {
			c.Size, c.Wires = it.Size, it.Wires
			return
		}
	}
}
