package tool

import (
	"fmt"
	"slices"

	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// cableSort is one sort of cable: conductors of a size, a ground with them.
type cableSort struct {
	size  unit.AWG
	wires int
}

// cableSorts are the sorts offered, common in houses; a cable's card takes any other.
var cableSorts = []cableSort{{14, 2}, {14, 3}, {12, 2}, {12, 3}, {10, 2}, {10, 3}, {8, 3}, {6, 3}}

// The choices beside them.
const (
	usualSort   = ""        // as the opening it goes to is usually wired
	controlSort = "control" // no cable, but which switch serves what
)

func (s cableSort) id() string { return fmt.Sprintf("%d/%d", s.size, s.wires) }

func (s cableSort) text() words.Text {
	return words.New("cable.sort", "cable {0}/{1}", int(s.size), s.wires)
}

func sortOf(id string) (cableSort, bool) {
	i := slices.IndexFunc(cableSorts, func(s cableSort) bool { return s.id() == id })
	if i < 0 {
		return cableSort{}, false
	}
	return cableSorts[i], true
}

// sortAt returns the place of a cable's sort in the list, or -1.
func sortAt(c *plan.Cable) int {
	return slices.Index(cableSorts, cableSort{c.Size, c.Wires})
}

// Choices implements Chooser.
func (*cable) Choices() []Choice {
	all := []Choice{
		{controlSort, words.New("cable.control", "switch to light")},
		{usualSort, words.New("cable.usual", "the usual cable")},
	}
	for _, s := range cableSorts {
		all = append(all, Choice{s.id(), s.text()})
	}
	return all
}

// Choice implements Chooser.
func (c *cable) Choice() string { return c.sort }

// asUsual wires a cable as the kind of an opening usually is, where that is known.
func asUsual(c *plan.Cable, o *plan.Opening) {
	k := part.All().Kind(o.Kind)
	if k == nil {
		return
	}
	stated := boxes.StatedContents(k.Wiring)
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
