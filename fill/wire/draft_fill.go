package wire

import (
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
)

// order returns stops in the order in which the fewest of their boxes are over full, and of
// those the one of the shortest cable.
func (d *draft) order(start plan.ID, stops []plan.ID, wires int) []plan.ID {
	c := chainOf(d.ix, start, stops)
	if d.fig != nil {
		c.over = make([][2]bool, len(c.ends))
		for i, id := range stops {
			for n := range c.over[i+c.from] {
				c.over[i+c.from][n] = d.isOver(id, n+1, wires)
			}
		}
	}
	return c.sorted(stops)
}

// isOver reports whether the box of an opening is over full with so many cables of the chain
// besides those that are drawn or drafted already. What cannot be worked out is not over.
func (d *draft) isOver(id plan.ID, cables, wires int) bool {
	v, ok := d.ix.OpeningView(id)
	if !ok {
		return false
	}
	b, ok, _ := part.Resolve(v.Opening.Assembly)
	if !ok {
		return false
	}
	v.Cables = append([]*plan.Cable(nil), v.Cables...)
	for _, e := range d.edits {
		if c := e.(edit.Add).Thing.(*plan.Cable); c.From == id || c.To == id {
			v.Cables = append(v.Cables, c)
		}
	}
	for range cables {
		v.Cables = append(v.Cables, d.cable("", id, wires))
	}
	w := boxes.WorkOf(v, b, d.fig)
	return len(w.Spaces) > 0 && !w.Fits()
}
