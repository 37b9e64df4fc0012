package place

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// besideDoor is how far from the edge of a door a switch is still the door's: common
// practice.
const besideDoor = 18 * unit.Inch

// SwitchesOf lists the switches beside a break, on either face of its wall.
func SwitchesOf(ix *index.Index, b *plan.Break) (all []plan.ID) {
	sides := []plan.ID{b.At.Host}
	for _, behind := range ix.Behind(b.At.Host) {
		sides = append(sides, behind.Side.ID)
	}
	for _, side := range sides {
		for _, c := range ix.Cuts(side) {
			if c.Break.ID != b.ID {
				continue
			}
			for _, o := range ix.OpeningsOn(side) {
				if k := part.All().Kind(o.Kind); k == nil || k.Family != part.Switch {
					continue
				}
				if off := max(c.From-o.At.Along, o.At.Along-c.To); 0 < off && off <= besideDoor {
					all = append(all, o.ID)
				}
			}
		}
	}
	return all
}
