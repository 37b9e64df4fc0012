package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/cut"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
)

// framing lays out how each box in a wall is held, the cut through the wall at each way of
// building one in, and the sticks that set heights.
func (b *book) framing() error {
	cuts := b.cuts()
	if len(cuts) == 0 {
		return nil
	}
	name := b.both("framing.title", "Framing and blocks")
	first := true
	onward := func() *page {
		p := b.newPage(name, 0)
		if !first {
			p.part = b.say("sheet.continued", "continued")
			p.scene.Meta.Title = b.say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		first = false
		return p
	}
	f := newFlow(onward(), framingColumn, onward)
	f.bothParagraphs(fine, framingHow)
	f.table(&tabled{columns: slices.Clone(framingColumns)}, b.both("framing.table", "How each box is held"), b.framingRows(cuts))
	f.cuts(cuts)
	f.sticks(cuts)
	return nil
}

// framingColumn is the least width of the page's one column: all of a usual page.
const framingColumn = 240.0

var framingHow = words.New("framing.how",
	"Studs by their near faces, from the left end of the wall as seen standing in the room. Heights are above the subfloor. Studs that are assumed stand where a spacing puts them: verify them with a tape before nailing.")

var framingColumns = []tableColumn{
	{title: words.New("framing.tag", "Tag"), width: 11, style: strong},
	{title: words.New("framing.wall", "Wall"), width: 22, style: plain},
	{title: words.New("framing.from-left", "From left"), width: 18, right: true, style: plain},
	{title: words.New("framing.left", "Left stud"), width: 18, right: true, style: plain},
	{title: words.New("framing.right", "Right stud"), width: 18, right: true, style: plain},
	{title: words.New("framing.state", "Studs"), width: 17, style: fine},
	{title: words.New("framing.held", "Held by"), width: 28, style: plain},
	{title: words.New("framing.block", "Block"), width: 16, right: true, style: plain},
	{title: words.New("framing.back", "Set back"), width: 16, right: true, style: plain},
	{title: words.New("framing.low", "Block bottom"), width: 20, right: true, style: plain},
	{title: words.New("framing.box-low", "Box bottom"), width: 18, right: true, style: plain},
	{title: words.New("framing.proud", "Set proud"), width: 17, right: true, style: plain},
	{title: words.New("framing.rings", "Ring"), style: plain},
}

// boxCut is the cut at one box with where it is.
type boxCut struct {
	cut.Cut
	level *plan.Level
	room  *plan.Room
}

// cuts gathers the cuts at all boxes in walls, in the order of the schedule.
func (b *book) cuts() (all []boxCut) {
	if b.result.Figures == nil {
		return nil
	}
	for _, l := range b.plan.Levels {
		for _, r := range b.roomsInOrder(l) {
			view, ok := b.ix.RoomView(r.ID)
			if !ok {
				continue
			}
			var in []boxCut
			for i := range view.Sides {
				for _, o := range view.Sides[i].Openings {
					if c, ok := cut.Of(&view.Sides[i], r, o, b.result.Figures.Build.SetBack); ok && !o.Status.IsOld() {
						in = append(in, boxCut{c, l, r})
					}
				}
			}
			slices.SortStableFunc(in, func(x, y boxCut) int { return plan.CompareTags(x.Opening.Tag, y.Opening.Tag) })
			all = append(all, in...)
		}
	}
	return all
}

// framingRows says of each box between which studs it is and how it is held.
func (b *book) framingRows(cuts []boxCut) (rows []tableRow) {
	for _, c := range cuts {
		row := tableRow{group: c.room.Name, cells: []string{
			c.Opening.Tag, b.o.Voice.Say(table.Wall(b.ix, c.room, c.Wall.Side.ID)), b.length(c.Opening.At.Along),
			"", "", b.o.Voice.Say(table.StudState(c.Hold.State)), b.o.Voice.Say(table.Held(c.Hold.By)), "", "", "",
			b.length(c.Box.Bottom + c.room.FloorThickness()), b.length(c.Proud), b.rings(c.Cut),
		}}
		if c.Hold.HasBay && c.Hold.Bay.Left != nil {
			row.cells[3] = b.length(c.Hold.Bay.From)
		}
		if c.Hold.HasBay && c.Hold.Bay.Right != nil {
			row.cells[4] = b.length(c.Hold.Bay.To)
		}
		if k := c.Hold.Block; k != nil {
			row.cells[7], row.cells[8], row.cells[9] = b.length(k.Length), b.length(k.SetBack), b.length(k.Bottom+c.room.FloorThickness())
		}
		rows = append(rows, row)
	}
	return rows
}

// length writes a length as a tape under a hand is read: in inches or millimetres alone.
func (b *book) length(l unit.Length) string { return b.say("framing.length", "{0}", words.Height(l)) }

// rings lists the raises that pass, nothing where the box takes none.
func (b *book) rings(c cut.Cut) string {
	if !c.Body.HasRing {
		return ""
	}
	if len(c.Rings) == 0 {
		return b.say("framing.no-ring", "none ends right")
	}
	var all []string
	for _, raise := range c.Rings {
		all = append(all, b.length(raise))
	}
	return b.joinedOr(all)
}

// joinedOr joins what may be taken one for the other.
func (b *book) joinedOr(all []string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	last := len(all) - 1
	return b.say("framing.or", "{0} or {1}", strings.Join(all[:last], ", "), all[last])
}

// alike is one way of building a box in, with the boxes that are built in so.
type alike struct {
	boxCut
	tags []string
}

// waysOf puts together the boxes whose cuts look the same.
func waysOf(cuts []boxCut) (ways []*alike) {
	by := map[string]*alike{}
	for _, c := range cuts {
		far, hasFar := c.Far()
		key := fmt.Sprint(c.Wall.Side.Finish, c.Framing, c.IsTold, far, hasFar, c.Body, c.Box.Right-c.Box.Left, c.Hold.By, len(c.Behind(cutReach)) > 0, c.Rings)
		if by[key] == nil {
			by[key] = &alike{boxCut: c}
			ways = append(ways, by[key])
		}
		by[key].tags = append(by[key].tags, c.Opening.Tag)
	}
	return ways
}

// cutReach is how far to either hand of a box its cut is drawn.
const cutReach = 8 * unit.Inch

// cutScales are what cuts are drawn at.
var cutScales = map[unit.System]paper.Scale{
	unit.Imperial: paper.Imperial(24), unit.Metric: paper.Metric(8),
}

// The measures of a cut with what it says, in millimetres of paper.
const (
	cutWide = 58.0
	cutGap  = 6.0
)

// cuts puts down the cuts in rows.
func (f *flow) cuts(cuts []boxCut) {
	b := f.page.b
	scale := cutScales[b.o.Voice.System]
	f.heading(b.both("cut.title", "Cuts through the wall, from above, the room at the foot, {0}", scale.Words()), 40)
	m := b.medium(scale)
	perRow := max(1, int((f.width()+cutGap)/(cutWide+cutGap)))
	for row := range slices.Chunk(waysOf(cuts), perRow) {
		says, names := make([][]string, len(row)), make([][]string, len(row))
		tall, lines, over := 0.0, 0, 0
		for i, w := range row {
			says[i], names[i] = b.cutSays(w), strong.wrap(strings.Join(w.tags, ", "), cutWide)
			over = max(over, len(names[i]))
			tall, lines = max(tall, w.Tall(m)), max(lines, len(says[i]))
		}
		f.need(float64(over)*strong.line() + plain.line() + tall + float64(lines)*fine.line() + 5)
		for i, w := range row {
			x := f.left() + float64(i)*(cutWide+cutGap)
			y := f.y
			for _, line := range names[i] {
				y += strong.line()
				f.page.add(strong.at(x, y-0.6, line))
			}
			y = f.y + float64(over)*strong.line()
			middle := cut.Frame{Middle: x + cutWide/2, Top: y + 1.5 + tall - w.Tall(m), Width: min(cutWide, 2*m.Length(cutReach))}
			if !b.isDraft {
				f.page.add(cut.Draw(w.Cut, m, middle)...)
			}
			y += tall + 3
			for _, line := range says[i] {
				y += fine.line()
				f.page.add(fine.at(x, y, line))
			}
		}
		f.y += float64(over)*strong.line() + tall + float64(lines)*fine.line() + 8
	}
}

// cutSays is what stands under a cut.
func (b *book) cutSays(w *alike) []string {
	depth := b.say("cut.framing", "studs {0} deep", words.Height(w.Framing))
	if !w.IsTold {
		depth = b.say("cut.framing-assumed", "studs {0} deep, assumed", words.Height(w.Framing))
	}
	set := b.say("cut.even", "box even with the studs, front {0} proud", words.Height(w.Proud))
	if !w.Body.HasRing {
		set = b.say("cut.proud", "set {0} proud of the studs", words.Height(w.Proud))
	}
	if rings := b.rings(w.Cut); rings != "" {
		set = b.say("cut.ring", "{0}; ring {1}", set, rings)
	}
	if w.IsUndecided {
		set = b.say("cut.undecided", "{0}; a layer is undecided", set)
	}
	text := []string{b.say("cut.wall", "{0} · {1}", depth, b.layersText(w.Wall.Side)), set}
	if k := w.Hold.Block; k != nil && k.KnowsDepth && k.Over > 0 {
		text = append(text, b.say("cut.over", "block and box are {0} deeper than the studs", words.Height(k.Over)))
	}
	if box := frame.BoxOf(w.Opening.Assembly); box != nil {
		text = append(text, b.say("cut.staple", "NM cable fastened within {0}", words.Height(frame.StapleWithin(box))))
	}
	for _, p := range w.Behind(cutReach) {
		spare := frame.Spare(w.Framing, w.Body.InFraming(w.Proud), p.InFraming())
		if p.Left < w.Box.Right && w.Box.Left < p.Right && spare < 0 {
			text = append(text, b.say("cut.behind-over", "{0} is behind: {1} too deep", p.Opening.Tag, words.Height(-spare)))
			continue
		}
		text = append(text, b.say("cut.behind", "{0} is behind", p.Opening.Tag))
	}
	var lines []string
	for _, t := range text {
		lines = append(lines, fine.wrap(t, cutWide)...)
	}
	return lines
}

// stickColumns are those of the table of sticks.
var stickColumns = []tableColumn{
	{title: words.New("stick.centre", "Center above finished floor"), width: 44, right: true, style: plain},
	{title: words.New("stick.box", "Box stick from subfloor"), width: 40, right: true, style: strong},
	{title: words.New("stick.box-finished", "from finished floor"), width: 36, right: true, style: plain},
	{title: words.New("stick.block", "Block stick from subfloor"), width: 42, right: true, style: strong},
	{title: words.New("stick.block-finished", "from finished floor"), width: 36, right: true, style: plain},
	{title: words.New("stick.for", "For"), style: plain},
}

// stick is one length that sets boxes, and the block behind them where they have one.
type stick struct {
	level              *plan.Level
	floor              unit.Length
	centre, box, block unit.Length // above the finished floor
	hasBlock           bool
}

// sticks puts down the lengths of the sticks that boxes and blocks are set on, one for each
// height that there is on a level.
func (f *flow) sticks(cuts []boxCut) {
	b := f.page.b
	tags := map[stick][]string{}
	for _, c := range cuts {
		s := stick{level: c.level, floor: c.room.FloorThickness(), centre: (c.Box.Bottom + c.Box.Top) / 2, box: c.Box.Bottom}
		if k := c.Hold.Block; k != nil {
			s.block, s.hasBlock = k.Bottom, true
		}
		tags[s] = append(tags[s], c.Opening.Tag)
	}
	var all []stick
	for s := range tags {
		all = append(all, s)
	}
	order := map[*plan.Level]int{}
	for i, l := range b.plan.Levels {
		order[l] = i
	}
	slices.SortFunc(all, func(x, y stick) int {
		return cmp.Or(cmp.Compare(order[x.level], order[y.level]), cmp.Compare(x.centre, y.centre), cmp.Compare(x.box, y.box), cmp.Compare(x.floor, y.floor), cmp.Compare(x.block, y.block))
	})
	var rows []tableRow
	for _, s := range all {
		row := tableRow{group: b.say("stick.level", "{0}, finished floor {1} above subfloor", s.level.Name, words.Height(s.floor)), cells: []string{
			b.length(s.centre), b.length(s.box + s.floor), b.length(s.box), "", "", strings.Join(tags[s], ", "),
		}}
		if s.hasBlock {
			row.cells[3], row.cells[4] = b.length(s.block+s.floor), b.length(s.block)
		}
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(x, y tableRow) int { return cmp.Compare(x.group, y.group) })
	f.table(&tabled{columns: slices.Clone(stickColumns)}, b.both("stick.title", "Sticks: box and block rest on the stick"), rows)
}

// band is the faint ground of a row.
func band(left, right, top, tall float64) scene.Item {
	return scene.Fill{Path: scene.Rect{Min: scene.Point{X: left, Y: top}, Max: scene.Point{X: right, Y: top + tall}}.Path(), Color: faint}
}
