package boxes

import (
	"studbay/fill/box"
	"studbay/plan"
)

// cableItems returns the cables that end in an opening; one that begins and ends there
// is counted at both ends.
func cableItems(o *plan.Opening, cables []*plan.Cable) (items box.Contents) {
	if len(cables) > 0 {
		items = make(box.Contents, 0, len(cables))
	}
	for _, c := range cables {
		ends := 1
		if c.From == o.ID && c.To == o.ID {
			ends = 2
		}
		if c.Ground && (c.GroundSize == 0 || c.GroundSize == c.Size) {
			items = append(items, box.Item{What: box.Cable, Size: c.Size, Wires: c.Wires, Times: ends})
			continue
		}
		if c.Wires > 0 {
			items = append(items, box.Item{What: box.Conductor, Size: c.Size, Times: c.Wires * ends})
		}
		if c.Ground {
			items = append(items, box.Item{What: box.Ground, Size: c.GroundSize, Times: ends})
		}
	}
	return items
}
