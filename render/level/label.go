package level

import (
	"math"

	"studbay/fill/wire"
	"studbay/plan"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// letter writes all names, tags and marks. It ranks: a tag beside its body; else with
// a leader line; else, on a board alone, it is left out until nearer.
func (d *drawing) letter() {
	if d.Medium.IsFar() {
		d.stopsFar()
		for _, r := range d.rooms {
			d.roomName(r)
		}
		return
	}
	d.keepOffWalls()
	d.rings()
	d.fixtureNames()
	d.stretches()
	if d.Medium.NamesLead() {
		for _, r := range d.rooms {
			d.roomName(r)
		}
	}
	letters := d.controlLetters()
	for _, r := range d.rooms {
		for _, g := range r.groups {
			for i, o := range g.openings {
				text := joinedText(o.Tag, g.beside[i], letters[o.ID])
				if p := d.places[o.ID]; p != nil && !p.isOff && !p.isBundle && text != "" {
					d.tag(p, text)
				}
			}
		}
	}
	if !d.Medium.NamesLead() {
		for _, r := range d.rooms {
			d.roomName(r)
		}
	}
	for _, l := range d.Wanting {
		d.Lead(l)
	}
	d.marks()
}

// keepOffWalls keeps texts off every wall from face to face, and off what is ruled over.
func (d *drawing) keepOffWalls() {
	for _, l := range d.Medium.Ruled {
		d.Obstacles.Line(l[0], l[1], "")
	}
	for _, r := range d.rooms {
		for i, w := range r.walls {
			d.Obstacles.Line(r.Outline[i], r.Outline[(i+1)%len(r.Outline)], w.side.Side.ID)
			f := d.face(w.side.Frame)
			for _, b := range w.bodies {
				t := b.thickness.Millimetres()
				// A thick wall has room for a tag between its faces, over its windows and doors.
				layers := math.Ceil(d.Medium.Length(b.thickness) / (d.Medium.Text / 2))
				for k := 1.0; k <= layers; k++ {
					deep := t * k / layers
					d.Obstacles.Line(f.at(b.from.Millimetres()-deep, -deep), f.at(b.to.Millimetres()+deep, -deep), w.side.Side.ID)
				}
			}
		}
	}
}

// controlLetters returns the letters of the controls that each opening is part of: those of
// what it works in the order of its gangs, then those of what works it.
func (d *drawing) controlLetters() map[plan.ID]string {
	letters, works := map[plan.ID]string{}, map[plan.ID][]*plan.Control{}
	for _, c := range d.joins {
		for _, id := range c.Switches {
			if d.places[id] != nil {
				works[id] = append(works[id], c)
			}
		}
	}
	for id, controls := range works {
		for _, c := range wire.InOrder(d.Index, d.places[id].opening, controls) {
			letters[id] = joinedText(letters[id], c.Letter)
		}
	}
	for _, c := range d.joins {
		for _, id := range c.Loads {
			if d.places[id] != nil {
				letters[id] = joinedText(letters[id], c.Letter)
			}
		}
	}
	return letters
}

// tag writes an opening's tag, with what follows it, beside its body, or puts it off.
func (d *drawing) tag(p *openingPlace, text string) {
	color := d.Theme.Muted
	if d.Medium.Kind == render.Sheet {
		color = d.Theme.Ink
	}
	f := d.Found.Worst(p.opening.ID)
	if f != nil && !f.IsOpen && d.Medium.Kind == render.Board {
		color = d.Theme.Severity(f.Severity)
	}
	l := &draft.Label{
		ID: p.opening.ID, Area: &p.room.Area, From: p.box, Into: p.into, IsRinged: f != nil,
		Run: scene.Run{Text: text, Size: d.Medium.Text, Weight: glyph.Bold, Color: color},
	}
	if !d.Beside(l) {
		d.Wanting = append(d.Wanting, l)
	}
}
