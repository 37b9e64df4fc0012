package sheet

import (
	"slices"
	"strings"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/face"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/unfold"
)

// walls lays out every wall with a box on it by itself, at a scale that is read at the
// studs: beside one another as many as a page is wide, and under them what their boxes are.
func (b *book) walls() error {
	faces := b.faces()
	if len(faces) == 0 {
		return nil
	}
	name := b.Both("walls.title", "Walls, face by face")
	onward := b.pagesNamed(name)
	f := newFlow(onward(), scene.MM(b.o.Paper.Width), onward)
	f.BothParagraphs(layout.Fine, words.New("walls.how",
		"Each wall as seen standing in its room, before the board goes up. Lengths are from the ends of the wall as it will be finished: over a line from the left, under it from the right, to the centers of boxes and to the sides of rough openings. Where the wall round the corner is still bare studs, add the thickness of its finish. Heights are above the subfloor. Studs are counted from the left; over each its near edge. In a black disc: measured or stated; in dashes: assumed, verify before nailing. Heavy edge: the side that is nailed. Hatched: a block."))
	f.Space(2)
	for len(faces) > 0 {
		faces = faces[f.wallRow(faces):]
	}
	return nil
}

// faces lists the walls with boxes, room by room.
func (b *book) faces() (all []face.Face) {
	if b.result.Figures == nil {
		return nil
	}
	for _, l := range b.plan.Levels {
		for _, r := range table.RoomsInOrder(l) {
			all = append(all, face.Of(b.ix, r.ID, b.result.Figures.Build.SetBack)...)
		}
	}
	return all
}

// wallScales are what walls are drawn at, the largest at which one fits.
var wallScales = map[unit.System][]paper.Scale{
	unit.Imperial: {paper.Imperial(8), paper.Imperial(6), paper.Imperial(4), paper.Imperial(3), paper.Imperial(2), paper.Imperial(1)},
	unit.Metric:   {paper.Metric(25), paper.Metric(50), paper.Metric(75), paper.Metric(100), paper.Metric(200)},
}

// wallGap is the white between walls beside one another, and wallHead what stands over
// each, in millimetres.
const (
	wallGap  = 9.0
	wallHead = 9.0
)

// drawnWall is a wall with its drawing.
type drawnWall struct {
	face.Face
	bounds scene.Rect // about the origin
	scale  paper.Scale
}

// drawWall takes the largest scale at which a wall fits a width and a height.
func (b *book) drawWall(w face.Face, wide, tall float64) (d drawnWall) {
	for _, s := range wallScales[b.Voice.System] {
		d = drawnWall{w, w.Bounds(b.wallMedium(s, scene.Point{})), s}
		if d.bounds.Width() <= wide && d.bounds.Height() <= tall {
			break
		}
	}
	return d
}

func (b *book) wallMedium(s paper.Scale, at scene.Point) unfold.Medium {
	m := unfold.Medium{Medium: layout.Medium(s, b.Voice), Datum: plan.Subfloor}
	m.Text = b.siteText() * scene.PointSize
	m.At = at
	return m
}

// siteText is the size in points of what is read at the studs: on large paper, which hangs
// on a wall, capitals of 3/32 in, which architects letter by (common practice).
func (b *book) siteText() float64 {
	if b.o.Paper.Height < 16*unit.Inch {
		return layout.TagText
	}
	return 9.5
}

// wallRow puts down as many of the first walls as stand beside one another, with the table
// of their boxes, and returns how many.
func (f *flow) wallRow(faces []face.Face) int {
	b := f.page.b
	var row []drawnWall
	wide, tall := 0.0, 0.0
	most := (f.Column().Height() - wallHead) * 0.72
	for _, w := range faces {
		d := b.drawWall(w, f.Width(), most)
		if len(row) > 0 && wide+wallGap+b.wallWide(d) > f.Width() {
			break
		}
		if len(row) > 0 {
			wide += wallGap
		}
		wide += b.wallWide(d)
		tall = max(tall, d.bounds.Height())
		row = append(row, d)
	}
	columns, rows := b.wallRows(row, f.Width())
	t := &layout.Table{Columns: columns}
	t.Fill(f.Width())
	f.Need(wallHead + tall + 4 + t.TallOf(rows))
	x := f.Left()
	for _, d := range row {
		f.wall(d, x, f.Y, tall)
		x += b.wallWide(d) + wallGap
	}
	f.Y += wallHead + tall + 2
	f.Table(t, "", rows)
	f.Space(unfoldGap)
	return len(row)
}

// wallWide is the room that a wall takes beside others: its drawing, and what is written
// over it.
func (b *book) wallWide(d drawnWall) float64 {
	return max(d.bounds.Width(), headWidth(b.wallName(d.Face), b.wallSays(d)))
}

// wall puts down one wall with its name over it, its foot level with those beside it.
func (f *flow) wall(d drawnWall, x, y, tall float64) {
	b := f.page.b
	name := b.wallName(d.Face)
	f.page.headAt(scene.Point{X: x, Y: y}, f.Right(), name, b.wallSays(d))
	if b.isDraft {
		return
	}
	at := scene.Point{X: x, Y: y + wallHead + tall - d.bounds.Height()}.Sub(d.bounds.Min)
	items, _ := d.Draw(b.wallMedium(d.scale, at))
	f.page.Add(scene.Group{Layer: scene.Layer{Name: name}, Items: items})
}

func (b *book) wallName(w face.Face) string {
	return b.Say("walls.name", "{0} · {1}", roomTitle.Fit(w.Room.Name, mostWallRoom), w.Name())
}

// mostWallRoom is how much of the name of a room stands over its walls, in millimetres.
const mostWallRoom = 70.0

// wallSays is what is known of a wall: its scale, its studs and what is put on them.
func (b *book) wallSays(d drawnWall) string {
	all := []string{d.scale.Words()}
	deep := d.Wall.FramingAt(d.Wall.Length / 2)
	switch {
	case len(d.Wall.Studs()) == 0: // nobody tells any; masonry has none
	case deep > 0:
		all = append(all, b.Say("walls.studs-deep", "studs {0} deep, {1}", words.Height(deep), table.StudState(d.Wall.State)))
	default:
		all = append(all, b.Say("walls.studs", "studs {0}", table.StudState(d.Wall.State)))
	}
	switch layers := table.Layers(b.Voice, d.Wall.Side); len(d.Wall.Side.Finish) {
	case 0:
	case 1:
		all = append(all, layers)
	default:
		all = append(all, b.Say("walls.finish", "{0} = {1}", layers, words.Height(frame.SetProud(d.Wall.Side))))
	}
	if floor := d.Room.FloorThickness(); floor > 0 {
		all = append(all, b.Say("walls.floor", "finished floor {0} above subfloor", words.Height(floor)))
	}
	return strings.Join(all, " · ")
}

// wallColumn is a column of the table under walls, with what fills it. Where the paper is
// narrow those of the highest rank are left out first: they stand on other pages too.
type wallColumn struct {
	layout.Column
	rank int
	cell func(*book, face.Face, face.Box) string
}

var wallTable = []wallColumn{
	{layout.Column{Title: words.New("walls.tag", "Tag"), Width: 12, Style: layout.Strong}, 0, func(b *book, _ face.Face, o face.Box) string { return o.Opening.Tag }},
	{layout.Column{Title: words.New("walls.what", "What"), Style: layout.Plain}, 0, func(b *book, _ face.Face, o face.Box) string { return b.Voice.Say(table.What(o.Opening)) }},
	{layout.Column{Title: words.New("walls.left", "From left"), Width: 19, Right: true, Style: layout.Plain}, 0, func(b *book, _ face.Face, o face.Box) string { return b.Length(o.Along()) }},
	{layout.Column{Title: words.New("walls.right", "From right"), Width: 19, Right: true, Style: layout.Plain}, 0, func(b *book, w face.Face, o face.Box) string { return b.Length(w.Wall.Length - o.Along()) }},
	{layout.Column{Title: words.New("walls.bottom", "Bottom"), Width: 16, Right: true, Style: layout.Plain}, 2, func(b *book, w face.Face, o face.Box) string { return b.Length(w.AboveSubfloor(o.Rect.Bottom)) }},
	{layout.Column{Title: words.New("walls.centre", "Center"), Width: 16, Right: true, Style: layout.Strong}, 0, func(b *book, w face.Face, o face.Box) string {
		return b.Length(w.AboveSubfloor(frame.CentreHeight(o.Opening, w.Room)))
	}},
	{layout.Column{Title: words.New("walls.top", "Top"), Width: 16, Right: true, Style: layout.Plain}, 2, func(b *book, w face.Face, o face.Box) string { return b.Length(w.AboveSubfloor(o.Rect.Top)) }},
	{layout.Column{Title: words.New("walls.finished", "Finished floor"), Width: 20, Right: true, Style: layout.Plain}, 1, func(b *book, w face.Face, o face.Box) string {
		return b.Length(frame.CentreHeight(o.Opening, w.Room))
	}},
	{layout.Column{Title: words.New("walls.held", "Held by"), Width: 40, Style: layout.Plain}, 0, func(b *book, w face.Face, o face.Box) string { return w.HeldBy(b.Voice, o) }},
	{layout.Column{Title: words.New("walls.block", "Block set back, bottom"), Width: 34, Style: layout.Plain}, 3, (*book).blockCell},
	{layout.Column{Title: words.New("walls.set", "Set"), Width: 30, Style: layout.Plain}, 1, func(b *book, w face.Face, o face.Box) string {
		if !o.IsBuiltIn {
			return ""
		}
		return w.Set(b.Voice, o)
	}},
	{layout.Column{Title: words.New("walls.box", "Box"), Width: 46, Style: layout.Plain}, 1, func(b *book, _ face.Face, o face.Box) string { return b.boxWords(o.Opening) }},
	{layout.Column{Title: words.New("walls.circuit", "Circuit"), Width: 13, Style: layout.Plain}, 0, func(b *book, _ face.Face, o face.Box) string { return b.scheduled(o.Opening, "circuit") }},
	{layout.Column{Title: words.New("walls.serves", "Serves"), Width: 26, Style: layout.Plain}, 2, func(b *book, _ face.Face, o face.Box) string { return b.scheduled(o.Opening, "controls") }},
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
func (b *book) wallRows(row []drawnWall, width float64) (columns []layout.Column, rows []layout.Row) {
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

func (b *book) blockCell(w face.Face, o face.Box) string {
	k := o.Hold.Block
	if !o.IsBuiltIn || k == nil {
		return ""
	}
	return b.Say("walls.block-at", "{0} back, bottom {1}", words.Height(k.SetBack), words.Height(w.AboveSubfloor(k.Bottom)))
}

// scheduled is what the schedule says of an opening in a column.
func (b *book) scheduled(o *plan.Opening, column string) string {
	if b.rowOf == nil {
		b.rowOf = map[plan.ID]table.Row{}
		for _, r := range b.schedule.Rows {
			b.rowOf[r.Of] = r
		}
	}
	return b.schedule.Cell(b.rowOf[o.ID], column).Text
}
