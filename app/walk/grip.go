package walk

import (
	"fyne.io/fyne/v2"

	"studbay/plan"
	"studbay/render/view"
)

// asked is where an opening is asked for, and how far off that is.
type asked struct {
	id  plan.ID
	to  view.Spot
	far string
}

// grip drags an opening in a picture to where it is asked for.
type grip struct {
	asked  []asked                         // where openings are asked for
	parts  map[plan.ID]plan.Part           // of what each opening is on
	settle func(plan.ID, view.Spot) *asked // what a spot under the pointer asks for; nil: nothing
	draw   func(plan.ID, view.Spot)        // keeps what was dragged

	isDragged bool
	held      plan.ID // the opening that is dragged
	drag      *asked  // where to
}

// take takes hold of the opening that a drag begins at.
func (g *grip) take(at func(fyne.Position) plan.ID, d *fyne.DragEvent) {
	if g.isDragged {
		return
	}
	g.isDragged = true
	g.held = at(d.Position.Subtract(d.Dragged))
	if part := g.parts[g.held]; part != plan.PartFace && part != plan.PartCeiling {
		g.held = "" // what is on a cabinet or in the floor goes with it
	}
}

// let lets go, and keeps where to. It reports whether there was anything to keep.
func (g *grip) let() bool {
	to := g.drag
	g.isDragged, g.held, g.drag = false, "", nil
	if to != nil {
		g.draw(to.id, to.to)
	}
	return to != nil
}

// all is what is asked for: what was kept, and what is dragged now in its place.
func (g *grip) all() (all []asked) {
	if g.drag != nil {
		all = append(all, *g.drag)
	}
	for _, a := range g.asked {
		if g.drag == nil || a.id != g.drag.id {
			all = append(all, a)
		}
	}
	return all
}
