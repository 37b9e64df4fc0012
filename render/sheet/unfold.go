package sheet

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/unfold"
)

// The measures of an unfolded room, in millimetres of paper.
const (
	unfoldHead  = 7.0 // its name above
	unfoldNames = 5.4 // the names of faces under its floor
	unfoldGap   = 4.0
	unfoldHow   = 16.0 // what is told before the first room
)

// largestUnfold is the largest scale rooms are unfolded at: more shows nothing more.
var largestUnfold = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(8), unit.Metric: paper.Metric(25)}

// unfolded lays out every room with an opening in a wall: its faces in a row.
func (b *book) unfolded() error {
	strips := b.strips()
	if len(strips) == 0 {
		return nil
	}
	lay := func(f *flow) {
		if first := strips[0]; f.Rest() < unfoldHow+b.stripTall(first, f.scaleFor(first)) { // what is told first stays with a room
			f.Whole()
		}
		f.BothParagraphs(layout.Fine, words.New("unfold.how",
			"Each face as seen standing in the room, clockwise in plan from left to right, beginning with the north. Under each box: how far its center is from the left corner of its face, then how high its bottom, center and top are above the finished floor and, where a floor is laid on it, above the subfloor. Studs in dashes are assumed: verify them. Hatched: a block. Crossed: something is in the way behind; in a dashed frame: found clear. Boxes in dashes: set from the other side, or behind the collar of their ring."))
		f.Space(2)
		for _, s := range strips {
			f.unfold(s)
		}
	}
	name := b.Both("unfold.title", "Interior elevations")
	onward := b.pagesNamed(name)
	most := b.fewestAt(lay)
	f := (&flow{Flow: &layout.Flow{Least: scene.MM(b.o.Paper.Width)}, most: most}).goesOn(onward)
	f.begin(onward())
	lay(f)
	return nil
}

// strips lists the rooms that are unfolded: those with an opening in a wall or in what
// stands in them.
func (b *book) strips() (all []unfold.Strip) {
	for _, l := range b.plan.Levels {
		for _, r := range table.RoomsInOrder(l) {
			strip, ok := unfold.StripOf(b.ix, r.ID)
			if ok && (b.hasFaceOpening(r) || len(unfold.FixtureFaces(b.ix, r.ID)) > 0) {
				all = append(all, strip)
			}
		}
	}
	return all
}

// fewestAt returns the largest scale at which the rooms take as few pages as they can at
// one that is still easy to read: a page is not begun for the last small room.
func (b *book) fewestAt(lay func(*flow)) paper.Scale {
	system := b.Voice.System
	best, fewest := largestUnfold[system], 0
	for _, scale := range paper.ScalesOf(system) {
		if scale.Times() > largestUnfold[system].Times() || scale.Times() < easyUnfold[system].Times() {
			continue
		}
		n := b.pagesOf(&flow{Flow: &layout.Flow{Least: scene.MM(b.o.Paper.Width)}, most: scale}, lay)
		if fewest == 0 || n < fewest {
			best, fewest = scale, n
		}
	}
	return best
}

// easyUnfold is the smallest scale that rooms are unfolded at to save a page.
var easyUnfold = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(4), unit.Metric: paper.Metric(50)}

func (b *book) hasFaceOpening(r *plan.Room) bool {
	return slices.ContainsFunc(r.Sides, func(s *plan.Side) bool { return len(b.ix.OpeningsOn(s.ID)) > 0 })
}

// unfold puts down one room at the largest scale that its strip fits the column at. A
// strip too long for the smallest scale of use goes on in further rows. The faces of
// fixtures with openings follow.
func (f *flow) unfold(s unfold.Strip) {
	b := f.page.b
	scale := f.scaleFor(s)
	if scale.Times() < leastUnfold[b.Voice.System].Times() { // under what the page has already there is no room
		f.Whole()
		scale = f.scaleFor(s)
	}
	rows := b.stripRows(s, unit.FromMillimetres((f.Width()-2*stripAside)/b.o.Paper.Times(scale)))
	if len(rows) == 1 && len(unfold.FixtureFaces(b.ix, s.Room.ID)) == 0 && f.beside(s, scale) {
		return
	}
	for i, row := range rows {
		f.stripRow(s, scale, row, i > 0, i+1 < len(rows))
	}
	f.fixtureFaces(s, scale)
}

// leastUnfold is the smallest scale rooms are unfolded at as long as they are low enough
// for it: under it a box is a dot.
var leastUnfold = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(3), unit.Metric: paper.Metric(75)}

// scaleFor returns the largest standard scale for a strip; the smallest of use where it
// is too long for all, and a smaller one only where it is too high.
func (f *flow) scaleFor(s unfold.Strip) (scale paper.Scale) {
	system, on := f.page.b.Voice.System, f.page.b.o.Paper
	free := scene.Rect{Max: scene.Point{X: f.Width() - 2*stripAside, Y: f.Column().Height() - unfoldHead - unfoldNames - f.page.b.figuresTall(s)}}
	for _, scale = range paper.ScalesOf(system) {
		if scale.Times() > f.most.Times() || scene.MM(s.Ceiling+s.Floor)*on.Times(scale) > free.Height() {
			continue
		}
		if scene.MM(s.Width)*on.Times(scale) <= free.Width() || scale.Times() <= leastUnfold[system].Times() {
			return scale
		}
	}
	return scale
}
