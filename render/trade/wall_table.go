package trade

import (
	"slices"
	"strconv"
	"strings"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/face"
	"studbay/render/layout"
	"studbay/render/table"
)

// wallColumn is a column of the table under walls, with what fills it. Where the paper is
// narrow those of the highest rank are left out first: they stand on other pages too.
type wallColumn struct {
	layout.Column
	rank int
	cell func(*Book, face.Face, face.Box) string
}

var wallTable = []wallColumn{
	{layout.Column{Title: words.New("walls.tag", "Tag"), Width: 12, Style: layout.Strong}, 0, func(b *Book, _ face.Face, o face.Box) string { return o.Opening.Tag }},
	{layout.Column{Title: words.New("walls.what", "What"), Style: layout.Plain}, 0, func(b *Book, _ face.Face, o face.Box) string { return b.Voice.Say(table.What(o.Opening)) }},
	{layout.Column{Title: words.New("walls.left", "From left"), Width: 18, Right: true, Style: layout.Plain}, 0, func(b *Book, _ face.Face, o face.Box) string { return b.Length(o.Along()) }},
	{layout.Column{Title: words.New("walls.right", "From right"), Width: 18, Right: true, Style: layout.Plain}, 0, func(b *Book, w face.Face, o face.Box) string { return b.Length(w.Wall.Length - o.Along()) }},
	{layout.Column{Title: words.New("walls.bottom", "Bottom"), Width: wallHeight, Right: true, Style: layout.Plain}, 0, func(b *Book, w face.Face, o face.Box) string { return b.edgeHeights(w, o, o.Rect.Bottom) }},
	{layout.Column{Title: words.New("walls.centre", "Center"), Width: wallHeight, Right: true, Style: layout.Strong}, 0, func(b *Book, w face.Face, o face.Box) string {
		return b.bothHeights(w, frame.CentreHeight(o.Opening, w.Room))
	}},
	{layout.Column{Title: words.New("walls.top", "Top"), Width: wallHeight, Right: true, Style: layout.Plain}, 0, func(b *Book, w face.Face, o face.Box) string { return b.edgeHeights(w, o, o.Rect.Top) }},
	{layout.Column{Title: words.New("walls.held", "Held by"), Width: 40, Style: layout.Plain}, 0, func(b *Book, w face.Face, o face.Box) string { return w.HeldBy(b.Voice, o) }},
	{layout.Column{Title: words.New("walls.block", "Block set back, bottom"), Width: 34, Style: layout.Plain}, 3, (*Book).blockCell},
	{layout.Column{Title: words.New("walls.set", "Set"), Width: 30, Style: layout.Plain}, 1, func(b *Book, w face.Face, o face.Box) string {
		if !o.IsBuiltIn {
			return ""
		}
		return w.Set(b.Voice, o)
	}},
	{layout.Column{Title: words.New("walls.box", "Box"), Width: 46, Style: layout.Plain}, 1, func(b *Book, _ face.Face, o face.Box) string { return b.BoxWords(o.Opening) }},
	{layout.Column{Title: words.New("walls.cables", "Cables in"), Width: 22, Style: layout.Plain}, 1, func(b *Book, _ face.Face, o face.Box) string { return b.cablesIn(o.Opening) }},
	{layout.Column{Title: words.New("walls.circuit", "Circuit"), Width: 13, Style: layout.Plain}, 0, func(b *Book, _ face.Face, o face.Box) string { return b.scheduled(o.Opening, "circuit") }},
	{layout.Column{Title: words.New("walls.serves", "Serves"), Width: 26, Style: layout.Plain}, 2, func(b *Book, _ face.Face, o face.Box) string { return b.scheduled(o.Opening, "controls") }},
}

// wallHeight is how wide a column of heights is, in millimeters: of "fin. 83-15/16".
const wallHeight = 20.0

// bothHeights says a height above the subfloor and above the finished floor, each on a line of
// its own, that first from which the wall is measured; where nobody tells what is laid on the
// subfloor the two are one.
func (b *Book) bothHeights(w face.Face, finished unit.Length) string {
	up, over := b.Length(finished+w.Room.FloorThickness()), b.Voice.Say(face.Finished(finished))
	switch {
	case w.Room.FloorThickness() == 0:
		return up
	case w.Datum() == plan.FinishedFloor:
		return over + "\n" + up
	}
	return up + "\n" + over
}

// edgeHeights says the height of an edge of a box, nothing of one that nobody has read.
func (b *Book) edgeHeights(w face.Face, o face.Box, finished unit.Length) string {
	if o.Opening.IsUnread() {
		return ""
	}
	return b.bothHeights(w, finished)
}

// leastWallWhat is how wide what an opening is stands at least.
const leastWallWhat = 44.0

// wallTableFor returns the columns that a width holds.
func wallTableFor(width float64) []wallColumn {
	all := slices.Clone(wallTable)
	for rank := 3; rank > 0; rank-- {
		need := leastWallWhat
		for _, c := range all {
			need += c.Width
		}
		if need <= width {
			break
		}
		all = slices.DeleteFunc(all, func(c wallColumn) bool { return c.rank == rank })
	}
	return all
}

// wallRows are what the boxes of walls are, a row each, with the columns that say anything.
func (b *Book) wallRows(row []drawnWall, width float64) (columns []layout.Column, rows []layout.Row) {
	var cells []wallColumn
	for _, c := range wallTableFor(width) {
		if slices.ContainsFunc(row, func(d drawnWall) bool {
			return slices.ContainsFunc(d.Boxes, func(o face.Box) bool { return c.cell(b, d.Face, o) != "" })
		}) {
			cells, columns = append(cells, c), append(columns, c.Column)
		}
	}
	for _, d := range row {
		boxes := slices.Clone(d.Boxes)
		slices.SortStableFunc(boxes, func(x, y face.Box) int { return plan.CompareTags(x.Opening.Tag, y.Opening.Tag) })
		for _, o := range boxes {
			r := layout.Row{Group: b.wallName(d.Face)}
			for _, c := range cells {
				r.Cells = append(r.Cells, c.cell(b, d.Face, o))
			}
			rows = append(rows, r)
		}
	}
	return columns, rows
}

func (b *Book) blockCell(w face.Face, o face.Box) string {
	k := o.Hold.Block
	if !o.IsBuiltIn || k == nil {
		return ""
	}
	return b.Say("walls.block-at", "{0} back, bottom {1}", words.Height(k.SetBack), w.Height(k.Bottom))
}

// scheduled is what the schedule says of an opening in a column.
func (b *Book) scheduled(o *plan.Opening, column string) string {
	if b.rowOf == nil {
		b.rowOf = map[plan.ID]table.Row{}
		for _, r := range b.Schedule().Rows {
			b.rowOf[r.Of] = r
		}
	}
	return b.Schedule().Cell(b.rowOf[o.ID], column).Text
}

// Serves says what a switch works, gang by gang where there are several, or what an opening
// is worked by.
func (b *Book) Serves(o *plan.Opening) string {
	all, ok := b.switchBoxes()[o.ID]
	if !ok || len(all.Gangs) < 2 {
		return b.scheduled(o, "controls")
	}
	var gangs []string
	for n, g := range all.Gangs {
		works := b.Say("list.unsaid", "nobody says what")
		switch {
		case g.Control != nil:
			works = b.tags(g.Control.Loads)
		case g.Beside != "":
			works = b.Say("list.beside", "none: {0}", part.DeviceText(g.Beside))
		}
		gangs = append(gangs, b.Say("walls.gang", "gang {0}: {1}", table.Gang(b.Voice, all, n), works))
	}
	return strings.Join(gangs, "; ")
}

// switchBoxes are the boxes of switches by their openings.
func (b *Book) switchBoxes() map[plan.ID]wire.SwitchBox {
	if b.switches == nil {
		b.switches = map[plan.ID]wire.SwitchBox{}
		for _, l := range b.Plan.Levels {
			for _, s := range wire.SwitchBoxes(b.Index, l) {
				b.switches[s.Opening.ID] = s
			}
		}
	}
	return b.switches
}

func (b *Book) tags(ids []plan.ID) string {
	var tags []string
	for _, id := range ids {
		if o, _ := b.Plan.Opening(id); o != nil {
			tags = append(tags, o.Tag)
		}
	}
	slices.SortFunc(tags, plan.CompareTags)
	return strings.Join(tags, ", ")
}

// cablesIn lists the cables that enter a box, those of one kind together, as they are drawn or
// said; what is only assumed says so.
func (b *Book) cablesIn(o *plan.Opening) string {
	v, ok := b.Index.OpeningView(o.ID)
	if !ok {
		return ""
	}
	contents, source := boxes.ContentsOf(v)
	type kind struct {
		size  string
		wires int
	}
	var order []kind
	count := map[kind]int{}
	for _, i := range contents {
		if i.What != box.Cable {
			continue
		}
		k := kind{i.Size.String(), i.Wires}
		if count[k] == 0 {
			order = append(order, k)
		}
		count[k] += max(i.Times, 1)
	}
	var all []string
	for _, k := range order {
		text := k.size + "/" + strconv.Itoa(k.wires)
		if n := count[k]; n > 1 {
			text = b.Say("walls.cables-times", "{0} × {1}", n, text)
		}
		all = append(all, text)
	}
	text := strings.Join(all, ", ")
	if text != "" && source == boxes.Assumed {
		return b.Say("walls.cables-assumed", "{0}, assumed", text)
	}
	return text
}
