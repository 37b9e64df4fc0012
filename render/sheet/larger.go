package sheet

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
)

// largerAround is how far beyond a room's faces its larger drawing reaches: a wall and what
// stands at its other face.
const largerAround = 10 * unit.Inch

// leastLarger is the smallest scale that a room is drawn larger at, if the page holds it:
// what a plan of a house is usually drawn at (common practice).
var leastLarger = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(4), unit.Metric: paper.Metric(50)}

// largerHead is the height of the line over a room drawn larger, in millimetres of paper.
const largerHead = 8.0

// larger lays out once more, at a larger scale, each room with an opening whose tag found
// no room on the plan of its level.
func (b *book) larger() error {
	for _, l := range b.plan.Levels {
		rooms := b.crowdedRooms(l)
		if len(rooms) == 0 {
			continue
		}
		name := b.Both("larger.title", "{0}, rooms drawn larger", l.Name)
		first := true
		onward := func() *page {
			p := b.newPage(name, 0)
			p.north = true
			if !first {
				p.part = b.Say("sheet.continued", "continued")
				p.Scene.Meta.Title = b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
			}
			first = false
			return p
		}
		f := newFlow(onward(), scene.MM(b.o.Paper.Width), onward)
		for _, r := range rooms {
			f.largerRoom(l, r)
		}
	}
	return nil
}

// crowdedRooms returns the rooms of a level, in order, that have an opening without its tag
// on some page so far and with it on none.
func (b *book) crowdedRooms(l *plan.Level) (rooms []*plan.Room) {
	crowded := map[plan.ID]bool{}
	for _, p := range b.pages {
		for _, id := range p.untagged {
			o, on := b.plan.Opening(id)
			if o == nil || on != l {
				continue
			}
			if place, ok := b.ix.Place(o.At); ok && place.Room != nil {
				crowded[place.Room.ID] = true
			}
		}
	}
	return slices.DeleteFunc(table.RoomsInOrder(l), func(r *plan.Room) bool { return !crowded[r.ID] })
}

// largerRoom puts a room down beside or below the one before: at the smallest larger scale
// that has room for its tags, or else at the largest that the page holds.
func (f *flow) largerRoom(l *plan.Level, r *plan.Room) {
	b := f.page.b
	box := r.Outline().Box().Expand(largerAround)
	scale := b.largerScale(l, r, box, f)
	k := b.o.Paper.Times(scale)
	wide, tall := box.Width().Millimetres()*k, largerHead+box.Height().Millimetres()*k
	wide = max(wide, headWidth(r.Name, scale.Words(b.Voice)))
	left, y, column := f.shelf.right+layout.ColumnGap, f.Y, f.Column()
	if isBeside := f.shelf.page == f.page && left+wide <= column.Max.X && f.shelf.top+tall <= column.Max.Y; isBeside {
		f.Y, f.Columns[f.At].Min.X = f.shelf.top, left
	} else {
		f.Need(tall)
		y, column = f.Y, f.Column()
	}
	f.roomHead(r.Name, scale.Words(b.Voice))
	d := b.drawRoom(l, box, scale, scene.Point{X: f.Left(), Y: f.Y + largerHead})
	f.page.Add(scene.Group{Layer: scene.Layer{Name: r.Name, Clip: &d.medium.Window}, Items: render.Items(inWindow(d.pieces, d.medium.Window))})
	f.shelf = shelf{f.page, f.Y, f.Left() + wide, f.Y + tall}
	f.Y += tall
	f.Space(unfoldGap)
	f.Y, f.Columns[f.At] = max(y, f.Y), column
}

// largerScale is the scale that a room is drawn larger at.
func (b *book) largerScale(l *plan.Level, r *plan.Room, box geom.Box, f *flow) (best paper.Scale) {
	free := f.page.Main.Expanded(-layout.Gutter)
	free.Min.Y += largerHead
	scales := paper.ScalesOf(b.Voice.System)
	slices.Reverse(scales)
	for _, s := range scales {
		if !b.mayFit(box, s, free) {
			break
		}
		best = s
		if s.Times() < leastLarger[s.System].Times() {
			continue
		}
		d := b.drawRoom(l, box, s, scene.Point{})
		left := b.untaggedIn(d.pieces)
		if !slices.ContainsFunc(left, func(o *plan.Opening) bool { return b.isIn(o, r) }) && b.hasAll(d.pieces, r) {
			break
		}
	}
	if best.IsFit() { // larger than the page at any: as small as there is
		best = scales[0]
	}
	return best
}

// isIn reports whether an opening is of a room.
func (b *book) isIn(o *plan.Opening, r *plan.Room) bool {
	place, ok := b.ix.Place(o.At)
	return ok && place.Room == r
}

// openingsOf lists the openings of a room.
func (b *book) openingsOf(r *plan.Room) []*plan.Opening {
	if b.byRoom == nil {
		b.byRoom = map[plan.ID][]*plan.Opening{}
		for _, o := range b.plan.Openings() {
			if place, ok := b.ix.Place(o.At); ok && place.Room != nil {
				b.byRoom[place.Room.ID] = append(b.byRoom[place.Room.ID], o)
			}
		}
	}
	return b.byRoom[r.ID]
}

// hasAll reports whether all openings of a room are drawn.
func (b *book) hasAll(pieces []render.Piece, r *plan.Room) bool {
	drawn := map[plan.ID]bool{}
	for _, p := range pieces {
		if p.Symbol != nil {
			for _, id := range p.Symbol.IDs {
				drawn[id] = true
			}
		}
	}
	for _, o := range b.openingsOf(r) {
		if o.Tag != "" && !drawn[o.ID] {
			return false
		}
	}
	return true
}

// drawRoom draws a part of a level with its upper left corner at a place.
func (b *book) drawRoom(l *plan.Level, box geom.Box, s paper.Scale, at scene.Point) drawnLevel {
	m := layout.Medium(b.o.Paper, s, b.Voice)
	m.Origin, m.At = box.Min, at
	m.Window = scene.Rect{Min: at, Max: at.Add(scene.Point{X: box.Width().Millimetres() * m.Scale, Y: box.Height().Millimetres() * m.Scale})}
	return b.drawAt(l, box, m, s)
}
