package trade

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
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/table"
)

// Framing lays out how each box in a wall is held, the cut through the wall at each way of
// building one in, and the sticks that set heights.
func (b *Book) Framing() error {
	cuts := b.cuts()
	if len(cuts) == 0 {
		return nil
	}
	f := b.flow(b.Both("framing.title", "Framing and blocks"), framingColumn)
	f.BothParagraphs(layout.Fine, framingHow)
	if how, ok := b.screws(); ok {
		f.BothParagraphs(layout.Fine, how)
	}
	f.Table(&layout.Table{Columns: slices.Clone(framingColumns)}, b.Both("framing.table", "How each box is held"), b.framingRows(cuts))
	f.cuts(cuts)
	f.sticks(cuts)
	return nil
}

// framingColumn is the least width of the page's one column: all of a usual page.
const framingColumn = 240.0

var framingHow = words.New("framing.how",
	"Studs by their near faces, from the left end of the wall as seen standing in the room; joists from the wall that they run beside. Heights are above the subfloor. Studs that are assumed stand where a spacing puts them: verify them with a tape before nailing.")

var framingColumns = []layout.Column{
	{Title: words.New("framing.tag", "Tag"), Width: 11, Style: layout.Strong},
	{Title: words.New("framing.wall", "Wall"), Width: 22, Style: layout.Plain},
	{Title: words.New("framing.from-left", "From left"), Width: 18, Right: true, Style: layout.Plain},
	{Title: words.New("framing.left", "Left stud"), Width: 18, Right: true, Style: layout.Plain},
	{Title: words.New("framing.right", "Right stud"), Width: 18, Right: true, Style: layout.Plain},
	{Title: words.New("framing.state", "Studs"), Width: 17, Style: layout.Fine},
	{Title: words.New("framing.held", "Held by"), Width: 28, Style: layout.Plain},
	{Title: words.New("framing.block", "Block"), Width: 16, Right: true, Style: layout.Plain},
	{Title: words.New("framing.back", "Set back"), Width: 16, Right: true, Style: layout.Plain},
	{Title: words.New("framing.low", "Block bottom"), Width: 20, Right: true, Style: layout.Plain},
	{Title: words.New("framing.box-low", "Box bottom"), Width: 18, Right: true, Style: layout.Plain},
	{Title: words.New("framing.proud", "Set proud"), Width: 17, Right: true, Style: layout.Plain},
	{Title: words.New("framing.rings", "Ring"), Style: layout.Plain},
}

// boxCut is the cut at one box with where it is.
type boxCut struct {
	cut.Cut
	level *plan.Level
	room  *plan.Room
}

// cuts gathers the cuts at all boxes in walls, in the order of the schedule.
func (b *Book) cuts() (all []boxCut) {
	if b.Result.Figures == nil {
		return nil
	}
	for _, l := range b.Plan.Levels {
		for _, r := range table.RoomsInOrder(l) {
			view, ok := b.Index.RoomView(r.ID)
			if !ok {
				continue
			}
			var in []boxCut
			for i := range view.Sides {
				for _, o := range view.Sides[i].Openings {
					if c, ok := cut.Of(&view.Sides[i], r, o, b.Result.Figures.Build.SetBack); ok && !o.Status.IsOld() {
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

// rings lists the raises that pass, nothing where the box takes none.
func (b *Book) rings(c cut.Cut) string {
	if !c.Body.HasRing {
		return ""
	}
	if len(c.Rings) == 0 {
		return b.Say("framing.no-ring", "none ends right")
	}
	var all []string
	for _, raise := range c.Rings {
		all = append(all, b.Length(raise))
	}
	return b.joinedOr(all)
}

// joinedOr joins what may be taken one for the other.
func (b *Book) joinedOr(all []string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	last := len(all) - 1
	return b.Say("framing.or", "{0} or {1}", strings.Join(all[:last], ", "), all[last])
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
		key := fmt.Sprint(c.Side().Finish, c.IsClosed(), c.Framing, c.IsTold, far, hasFar, c.Body, c.Box.Right-c.Box.Left, c.Hold.By, len(c.Behind(cutReach)) > 0, c.Rings)
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
	b := f.b
	scale := cutScales[b.Voice.System]
	f.Heading(b.Both("cut.title", "Cuts through the wall, from above, the room at the foot, {0}", scale.Words(b.Voice)), 40)
	m := layout.Medium(b.Paper, scale, b.Voice)
	perRow := max(1, int((f.Width()+cutGap)/(cutWide+cutGap)))
	for row := range slices.Chunk(waysOf(cuts), perRow) {
		says, names := make([][]string, len(row)), make([][]string, len(row))
		tall, lines, over := 0.0, 0, 0
		for i, w := range row {
			says[i], names[i] = b.cutSays(w), layout.Strong.Wrap(strings.Join(w.tags, ", "), cutWide)
			over = max(over, len(names[i]))
			tall, lines = max(tall, w.Tall(m)), max(lines, len(says[i]))
		}
		f.Need(float64(over)*layout.Strong.Line() + layout.Plain.Line() + tall + float64(lines)*layout.Fine.Line() + 5)
		for i, w := range row {
			x := f.Left() + float64(i)*(cutWide+cutGap)
			y := f.Y
			for _, line := range names[i] {
				y += layout.Strong.Line()
				f.On.Add(layout.Strong.At(x, y-0.6, line))
			}
			y = f.Y + float64(over)*layout.Strong.Line()
			middle := cut.Frame{Middle: x + cutWide/2, Top: y + 1.5 + tall - w.Tall(m), Width: min(cutWide, 2*m.Length(cutReach))}
			if !f.On.IsDraft {
				f.On.Add(cut.Draw(w.Cut, m, middle)...)
			}
			y += tall + 3
			for _, line := range says[i] {
				y += layout.Fine.Line()
				f.On.Add(layout.Fine.At(x, y, line))
			}
		}
		f.Y += float64(over)*layout.Strong.Line() + tall + float64(lines)*layout.Fine.Line() + 8
	}
}

// cutSays is what stands under a cut.
func (b *Book) cutSays(w *alike) []string {
	depth := b.Say("cut.framing", "studs {0} deep", words.Height(w.Framing))
	if keys := w.Wall.KeysAt(w.Opening.At.Along); keys > 0 && w.IsTold {
		depth = b.Say("cut.framing-keyed", "studs {0} deep, {1} of it clear of plaster keys", words.Height(w.Framing+keys), words.Height(w.Framing))
	}
	if !w.IsTold {
		depth = b.Say("cut.framing-assumed", "studs {0} deep, assumed", words.Height(w.Framing))
	}
	set := b.Say("cut.even", "box even with the studs, front {0} proud", words.Height(w.Proud))
	if !w.Body.HasRing {
		set = b.Say("cut.proud", "set {0} proud of the studs", words.Height(w.Proud))
	}
	if box := frame.BoxOf(w.Opening.Assembly); box != nil && box.Fit.Adjusts {
		set = b.Say("cut.adjusts", "{0}; adjusts to {1}", set, words.Height(box.Fit.ProudMax))
	}
	if rings := b.rings(w.Cut); rings != "" {
		set = b.Say("cut.ring", "{0}; ring {1}", set, rings)
	}
	if w.IsUndecided {
		set = b.Say("cut.undecided", "{0}; a layer is undecided", set)
	}
	text := []string{b.Say("cut.wall", "{0} · {1}", depth, table.Layers(b.Voice, w.Side())), set}
	if k := w.Hold.Block; k != nil && k.KnowsDepth && k.Over > 0 {
		text = append(text, b.Say("cut.over", "block and box are {0} deeper than the studs", words.Height(k.Over)))
	}
	switch box := frame.BoxOf(w.Opening.Assembly); {
	case w.IsClosed():
		text = append(text, b.Say("cut.fished", "cable fished, held by the box’s clamp (334.30(B)(1))"))
	case box != nil:
		text = append(text, b.Say("cut.staple", "NM cable fastened within {0}", words.Height(frame.StapleWithin(box))))
	}
	if w.Hold.By == frame.ByBoard && frame.IsOnWoodLath(w.Side()) {
		text = append(text, b.Say("cut.lath", "cut one lath whole, notch the next two; height may move {0} up or down to center on a lath", words.Height(frame.LathPlay)))
	}
	for _, p := range w.Behind(cutReach) {
		spare := frame.Spare(w.Framing, w.Body.InFraming(w.Proud), p.InFraming())
		if p.Left < w.Box.Right && w.Box.Left < p.Right && spare < 0 {
			text = append(text, b.Say("cut.behind-over", "{0} is behind: {1} too deep", p.Opening.Tag, words.Height(-spare)))
			continue
		}
		text = append(text, b.Say("cut.behind", "{0} is behind", p.Opening.Tag))
	}
	var lines []string
	for _, t := range text {
		lines = append(lines, layout.Fine.Wrap(t, cutWide)...)
	}
	return lines
}

// stickColumns are those of the table of sticks.
var stickColumns = []layout.Column{
	{Title: words.New("stick.centre", "Center above finished floor"), Width: 44, Right: true, Style: layout.Plain},
	{Title: words.New("stick.box", "Box stick from subfloor"), Width: 40, Right: true, Style: layout.Strong},
	{Title: words.New("stick.box-finished", "from finished floor"), Width: 36, Right: true, Style: layout.Plain},
	{Title: words.New("stick.block", "Block stick from subfloor"), Width: 42, Right: true, Style: layout.Strong},
	{Title: words.New("stick.block-finished", "from finished floor"), Width: 36, Right: true, Style: layout.Plain},
	{Title: words.New("stick.for", "For"), Style: layout.Plain},
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
	b := f.b
	tags := map[stick][]string{}
	for _, c := range cuts {
		if c.IsClosed() { // nothing stands on the floor behind the finish
			continue
		}
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
	for i, l := range b.Plan.Levels {
		order[l] = i
	}
	slices.SortFunc(all, func(x, y stick) int {
		return cmp.Or(cmp.Compare(order[x.level], order[y.level]), cmp.Compare(x.centre, y.centre), cmp.Compare(x.box, y.box), cmp.Compare(x.floor, y.floor), cmp.Compare(x.block, y.block))
	})
	var rows []layout.Row
	for _, s := range all {
		row := layout.Row{Group: b.Say("stick.level", "{0}, finished floor {1} above subfloor", s.level.Name, words.Height(s.floor)), Cells: []string{
			b.Length(s.centre), b.Length(s.box + s.floor), b.Length(s.box), "", "", strings.Join(tags[s], ", "),
		}}
		if s.hasBlock {
			row.Cells[3], row.Cells[4] = b.Length(s.block+s.floor), b.Length(s.block)
		}
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(x, y layout.Row) int { return cmp.Compare(x.Group, y.Group) })
	f.Table(&layout.Table{Columns: slices.Clone(stickColumns)}, b.Both("stick.title", "Sticks: box and block rest on the stick"), rows)
}
