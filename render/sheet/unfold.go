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
		f.BothParagraphs(layout.Fine, words.New("unfold.how",
			"Each face as seen standing in the room, clockwise in plan from left to right, beginning with the north. Under each box: how far its center is from the left corner of its face, then how high its bottom, center and top are above the finished floor and, where a floor is laid on it, above the subfloor. Studs in dashes are assumed: verify them. Hatched: a block. Boxes in dashes: set from the other side."))
		f.Space(2)
		for _, s := range strips {
			f.unfold(s)
		}
	}
	name := b.Both("unfold.title", "Interior elevations")
	first := len(b.pages)
	onward := func() *page {
		p := b.newPage(name, 0)
		if len(b.pages) > first+1 {
			p.part = b.Say("sheet.continued", "continued")
			p.Scene.Meta.Title = b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		return p
	}
	most := b.fewestAt(lay)
	f := (&flow{Flow: &layout.Flow{Least: scene.MM(b.o.Paper.Width)}, most: most}).goesOn(onward)
	f.begin(onward())
	lay(f)
	b.foot = foot{f.page, f.Y}
	return nil
}

// foot is how far down the last page of the rooms is taken.
type foot struct {
	page *page
	y    float64
}

// belowRooms begins a flow under the rooms on their last page, headed by its name, where
// all that is laid has room there in columns no lower than the tallest thing; else it
// returns nil.
func (b *book) belowRooms(name string, least, tallest float64, lay func(*flow)) *flow {
	p := b.foot.page
	if p == nil || p != b.pages[len(b.pages)-1] {
		return nil
	}
	const step, head = 4.0, 9.0
	top := b.foot.y + head
	for tall := max(6*step, tallest); top+tall <= p.Main.Expanded(-layout.Gutter).Max.Y; tall += step {
		if b.pagesOf(&flow{Flow: &layout.Flow{Least: least, Tall: tall}}, lay) > 1 {
			continue
		}
		s := layout.Style{Size: layout.Heading, Bold: true}
		f := (&flow{Flow: &layout.Flow{Least: least, Tall: tall, Top: top}}).goesOn(func() *page { return b.newPage(name, 0) })
		f.begin(p)
		p.Add(s.At(f.Left(), top-3, name))
		p.name = b.Say("sheet.both", "{0} · {1}", p.name, name)
		p.Scene.Meta.Title = b.Say("sheet.both", "{0} · {1}", p.Scene.Meta.Title, name)
		return f
	}
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
	rows := b.stripRows(s, unit.FromMillimetres((f.Width()-2*stripAside)/scale.Times()))
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
	system := f.page.b.Voice.System
	free := scene.Rect{Max: scene.Point{X: f.Width() - 2*stripAside, Y: f.Column().Height() - unfoldHead - unfoldNames - f.page.b.figuresTall(s)}}
	for _, scale = range paper.ScalesOf(system) {
		if scale.Times() > f.most.Times() || scene.MM(s.Ceiling+s.Floor)*scale.Times() > free.Height() {
			continue
		}
		if scene.MM(s.Width)*scale.Times() <= free.Width() || scale.Times() <= leastUnfold[system].Times() {
			return scale
		}
	}
	return scale
}
