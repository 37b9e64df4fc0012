package sheet

import (
	"errors"
	"math"
	"slices"
	"strconv"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/revision"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// ErrNoChange is returned for a list that names no change.
var ErrNoChange = errors.New("no opening differs: there is nothing to draw")

// BuildRevision returns the pages that show how a plan differs from an older one: each
// level with a change, what changed in a cloud with its numbered triangle, an arrow from
// the old place of what was moved, the list in the title block and, with what was found
// on either side, beside the plan. It fails with ErrNoChange where no opening differs.
// Reader and Columns of the options do not count.
func BuildRevision(list revision.List, o Options) ([]*scene.Scene, error) {
	if len(list.Changes) == 0 {
		return nil, ErrNoChange
	}
	b := newBook(list.New.Index, list.New.Result, o)
	if err := b.revisions(list); err != nil {
		return nil, err
	}
	return b.finished(), nil
}

// since lays out what changed since an older plan, where the set is asked to tell it and an
// opening differs.
func (b *book) since() error {
	if b.o.Since == nil || len(b.o.Since.Changes) == 0 {
		return nil
	}
	return b.revisions(*b.o.Since)
}

// revisions lays out each level with what changed on it.
func (b *book) revisions(list revision.List) error {
	first := len(b.pages)
	for _, l := range b.plan.Levels {
		if changes := list.Of(l.ID); len(changes) > 0 {
			if err := b.revised(l, list, changes); err != nil {
				return err
			}
		}
	}
	if len(b.pages) == first { // what is gone was on a level that is gone
		b.revisionList(list, nil)
	}
	return nil
}

// revised lays out one level with what changed on it.
func (b *book) revised(l *plan.Level, list revision.List, changes []revision.Change) error {
	name := b.Both("revision.page", "{0}, what changed", l.Name)
	columns := min(1, sideColumns(b.o.Paper))
	p := b.newPage(name, columns)
	p.changes = changes
	drawn, err := b.drawLevel(l, p.planArea())
	if err != nil {
		return err
	}
	onward := func() *page {
		q := b.newPage(b.Say("sheet.more", "{0}, sheet {1}", name, len(b.pages)+1), 0)
		q.name, q.part = name, b.Say("sheet.continued", "continued")
		return q
	}
	var f *flow
	switch {
	case drawn.tiles != nil:
		b.pages = b.pages[:len(b.pages)-1]
		first := len(b.pages)
		b.over = func(p *page, d drawnLevel, window scene.Rect) { p.clouds(d, changes, window) }
		b.tiled(l, name, drawn)
		b.over = nil
		for _, p := range b.pages[first:] {
			p.changes = changes
		}
		f = newFlow(onward(), layout.WideColumn, onward)
	case p.Side.IsEmpty():
		p.plan(l, drawn)
		p.clouds(drawn, changes, p.Main)
		f = newFlow(onward(), layout.WideColumn, onward)
	default:
		p.plan(l, drawn)
		p.clouds(drawn, changes, p.Main)
		f = b.besidePlan(p, onward)
	}
	f.revisionTable(list, changes)
	return nil
}

// revisionList lays out the list alone.
func (b *book) revisionList(list revision.List, changes []revision.Change) {
	name := b.Both("revision.list-page", "What changed")
	onward := func() *page { return b.newPage(name, 0) }
	f := newFlow(onward(), layout.WideColumn, onward)
	if changes == nil {
		changes = list.Changes
	}
	f.revisionTable(list, changes)
}

// revisionColumns are those of the list of changes.
var revisionColumns = []layout.Column{
	{Title: words.New("revision.column.number", "No."), Width: 9, Right: true, Style: layout.Strong},
	{Title: words.New("revision.column.tag", "Tag"), Width: 13, Style: layout.Strong},
	{Title: words.New("revision.column.change", "Change"), Style: layout.Plain},
	{Title: words.New("revision.column.found", "Findings"), Width: 52, Style: layout.Fine},
}

// revisionTable puts down the list of changes with what was found on either side.
func (f *flow) revisionTable(list revision.List, changes []revision.Change) {
	b := f.page.b
	f.Heading(b.Both("revision.title", "Revisions"), 10)
	f.Paragraph(layout.Plain, 0, b.Voice.Say(list.Sum()))
	if rest := list.Besides(); !rest.IsZero() {
		f.Paragraph(layout.Fine, 0, b.Voice.Say(rest))
	}
	if b.result.Figures == nil || list.Old.Result.Figures == nil {
		f.Paragraph(layout.Style{Size: layout.Body, Bold: true}, 0, b.Say("revision.not-checked", "NOT CHECKED on both sides: findings cannot be compared."))
	}
	var rows []layout.Row
	for _, c := range changes {
		row := layout.Row{Cells: []string{strconv.Itoa(c.Number), c.Opening().Tag, b.changeText(c), b.foundText(c)}}
		if c.At().Room != nil {
			row.Group = c.At().Room.Name
		}
		rows = append(rows, row)
	}
	f.Table(&layout.Table{Columns: slices.Clone(revisionColumns)}, b.Both("revision.list", "List of changes"), rows)
}

// changeText says what became of an opening, and what else it says otherwise.
func (b *book) changeText(c revision.Change) string {
	text := b.Voice.Say(c.Text())
	for _, d := range c.Differs {
		text = b.Say("revision.and", "{0}; {1}", text, d.Text())
	}
	if c.Cost != nil {
		text = b.Say("revision.cost", "{0}; cost {1}", text, *c.Cost)
	}
	return text
}

// foundText says what is found no more and what is found now.
func (b *book) foundText(c revision.Change) string {
	text := ""
	join := func(t words.Text) {
		if text != "" {
			text += " · "
		}
		text += b.Voice.Say(t)
	}
	for _, g := range c.Raised {
		join(words.New("revision.raised", "now: {0}", g.Message))
	}
	for _, g := range c.Cleared {
		join(words.New("revision.cleared", "no more: {0}", g.Message))
	}
	return text
}

// The measures of what marks a revision, in millimetres of paper.
const (
	cloudAir   = 1.6 // between what changed and its cloud
	cloudBump  = 3.4
	deltaSide  = 5.2
	ghostRound = 1.5 // of the ring where something was
	arrowLine  = 0.9 // points
	cloudLine  = 0.75
)

// cloudOf is one cloud with the numbers of what is in it.
type cloudOf struct {
	box     scene.Rect
	numbers []int
}

// clouds marks what changed on a drawn level, as far as a window shows it.
func (p *page) clouds(d drawnLevel, changes []revision.Change, window scene.Rect) {
	var clouds []cloudOf
	var under, over []scene.Item
	for _, c := range changes {
		box, arrow := p.changed(d, c)
		over = append(over, arrow...)
		if box.Overlaps(window) {
			clouds = append(clouds, cloudOf{box.Expanded(cloudAir), []int{c.Number}})
		}
	}
	for _, c := range merged(clouds) {
		under = append(under, scene.Stroke{Path: symbol.Cloud(c.box, cloudBump), Pen: layout.Pen(cloudLine)})
		at := scene.Point{X: c.box.Max.X, Y: c.box.Min.Y - 0.3*deltaSide}
		for i, n := range c.numbers {
			over = append(over, symbol.RevisionDelta(n, at.Sub(scene.Point{X: float64(len(c.numbers)-1-i) * deltaSide * 0.95}), deltaSide, layout.Theme.Ink, layout.Theme.Paper)...)
		}
	}
	p.Add(scene.Group{Layer: scene.Layer{Name: "revision", Clip: &window}, Items: append(under, over...)})
}

// changed returns the box of what is drawn of a changed opening and, of one that was moved,
// the arrow with its distance; of one that is gone, a ring where it was.
func (p *page) changed(d drawnLevel, c revision.Change) (box scene.Rect, items []scene.Item) {
	if c.New == nil {
		at := d.medium.ToScene(c.From.Foot)
		dashes := layout.Pen(layout.Divider)
		dashes.Dash = []float64{0.8, 0.6}
		cross := ghostRound * 0.7
		return scene.RectAround(at, 2*ghostRound, 2*ghostRound), []scene.Item{
			scene.Stroke{Path: scene.Circle(at, ghostRound), Pen: dashes},
			scene.Stroke{Path: scene.LinePath(at.Add(scene.Point{X: -cross, Y: -cross}), at.Add(scene.Point{X: cross, Y: cross})), Pen: layout.Pen(layout.Divider)},
		}
	}
	for _, piece := range d.pieces {
		if piece.ID == c.New.ID && piece.Layer == render.LayerLabels || piece.Symbol != nil && slices.Contains(piece.Symbol.IDs, c.New.ID) {
			box = box.Union(piece.Bounds)
		}
	}
	if box.IsEmpty() {
		box = scene.RectAround(d.medium.ToScene(c.To.Foot), 2*ghostRound, 2*ghostRound)
	}
	if c.Kind == revision.Moved && c.From.Level == c.To.Level {
		items = p.moveArrow(d.medium.ToScene(c.From.Foot), d.medium.ToScene(c.To.Foot), c)
	}
	return box, items
}

// moveArrow draws the way from an old place, with a ring there and the distance.
func (p *page) moveArrow(from, to scene.Point, c revision.Change) []scene.Item {
	width := arrowLine * scene.PointSize
	items := symbol.MoveArrow(from, to, width, layout.Theme.Ink)
	long := math.Hypot(to.X-from.X, to.Y-from.Y)
	if len(items) == 0 || long < 2*ghostRound {
		return nil // nearer than its own body: the list tells how far
	}
	dashes := layout.Pen(layout.Divider)
	dashes.Dash = []float64{0.8, 0.6}
	items = append(items, scene.Stroke{Path: scene.Circle(from, ghostRound), Pen: dashes})
	s := layout.Style{Size: layout.Body, Bold: true}
	middle := from.Add(to).Mul(0.5)
	text := p.b.Say("revision.distance", "{0}", c.Moved)
	if s.Width(text)+4*ghostRound > long {
		return items
	}
	patch := scene.RectAround(middle, s.Width(text)+1, s.Cap()+1)
	return append(items, scene.Fill{Path: patch.Path(), Color: layout.Theme.Paper}, s.Centered().At(middle.X, middle.Y+s.Cap()/2, text))
}

// merged puts clouds that overlap together, with all their numbers.
func merged(clouds []cloudOf) (all []cloudOf) {
	for _, c := range clouds {
		for {
			i := slices.IndexFunc(all, func(o cloudOf) bool { return o.box.Overlaps(c.box) })
			if i < 0 {
				break
			}
			c = cloudOf{c.box.Union(all[i].box), append(all[i].numbers, c.numbers...)}
			all = slices.Delete(all, i, i+1)
		}
		slices.Sort(c.numbers)
		all = append(all, c)
	}
	return all
}

// The list of changes in the title block.
const (
	revisionWide  = 74.0
	revisionSmall = 50.0 // on the smallest paper
	revisionRow   = 3.3
)

// revisionBox lists the changes in a box of the title block left of a place, and returns
// where that begins. What has no room there is counted.
func (p *page) revisionBox(box scene.Rect, right float64) float64 {
	wide := revisionWide
	if p.Paper.MayStand() {
		wide = revisionSmall
	}
	x := right - min(wide, box.Width()*0.45)
	head := layout.Style{Size: layout.Small, Bold: true}
	y := box.Min.Y + 3.6
	p.Add(head.At(x+2, y, head.Fit(p.b.Both("revision.title", "Revisions"), right-x-4)))
	rows := int((box.Max.Y - 1 - y) / revisionRow)
	for i, c := range p.changes {
		y += revisionRow
		if i == rows-1 && len(p.changes) > rows {
			p.Add(layout.Fine.At(x+2, y, p.b.Say("revision.rest", "and {0} more: see the list", len(p.changes)-i)))
			break
		}
		p.Add(symbol.RevisionDelta(c.Number, scene.Point{X: x + 4, Y: y - 0.7}, 3.1, layout.Theme.Ink, layout.Theme.Paper)...)
		p.Add(layout.Fine.At(x+7.5, y, layout.Fine.Fit(p.b.Say("revision.brief", "{0} {1}", c.Opening().Tag, p.b.Voice.Say(c.Text())), right-x-9)))
	}
	p.Add(layout.VLine(x, box.Min.Y, box.Max.Y, layout.Pen(layout.Hairline)))
	return x
}
