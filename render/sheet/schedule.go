package sheet

import (
	"slices"
	"strings"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/table"
)

// column is one column of the schedule on a sheet. Its width is in millimetres; the
// one with none takes what is left.
type column struct {
	title words.Text
	width float64
	bold  bool
	muted bool
	right bool // set from the right
	wide  bool // left out where the sheet's column is narrow
	lines func(*book, table.Row) []string
}

// columns are those of the site schedule, short enough to hold a hammer beside.
var columns = []column{
	{title: words.New("site.tag", "Tag"), width: 9.5, bold: true, lines: cellText("tag")},
	{title: words.New("site.what", "What"), lines: whatLines},
	{title: words.New("site.centre", "Centre"), width: 13.5, right: true, lines: centreLines},
	{width: 15.5, right: true, lines: distanceLines},
	{title: words.New("site.from", "From"), width: 17.5, lines: fromLines},
	{title: words.New("site.box", "Box"), width: 9.5, lines: cellText("assembly")},
	{title: words.New("site.fill", "Fill / volume"), width: 21, right: true, lines: fillLines},
	{title: words.New("site.source", "Known by"), width: 13.5, muted: true, wide: true, lines: sourceLines},
	{title: words.New("site.circuit", "Circuit"), width: 10.5, wide: true, lines: cellText("circuit")},
	{width: 3.5},
}

// cellPad is the white at the right of each column.
const cellPad = 1.6

func cellText(id string) func(*book, table.Row) []string {
	return func(b *book, r table.Row) []string { return oneLine(b.schedule.Cell(r, id).Text) }
}

func oneLine(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}

// whatLines names the kind, and the status where it is not new.
func whatLines(b *book, r table.Row) []string {
	what := b.schedule.Cell(r, "what").Text
	if o, _ := b.plan.Opening(r.Of); o != nil && o.Status != plan.StatusNew {
		what = b.say("site.status", "{0}, {1}", what, o.Status.Text())
	}
	return []string{what}
}

func centreLines(b *book, r table.Row) []string {
	c := b.schedule.Cell(r, "centre")
	if c.Kind == table.Empty {
		return oneLine(b.schedule.Cell(r, "face").Text)
	}
	return []string{b.say("site.height", "{0}", words.Height(c.Length))}
}

// froms are the distances of a row, again as the installer measures them.
func (b *book) froms(r table.Row) []table.From {
	o, _ := b.plan.Opening(r.Of)
	return table.Froms(b.ix, o)
}

func distanceLines(b *book, r table.Row) (lines []string) {
	for _, f := range b.froms(r) {
		lines = append(lines, b.say("site.distance", "{0}", f.Centre))
	}
	return lines
}

func fromLines(b *book, r table.Row) (lines []string) {
	for _, f := range b.froms(r) {
		lines = append(lines, b.o.Voice.Say(f.Brief))
	}
	return lines
}

// fillLines is what enters the box over what it holds, in cubic inches, in which it is
// decided.
func fillLines(b *book, r table.Row) []string {
	need, volume := b.schedule.Cell(r, "fill"), b.schedule.Cell(r, "volume")
	switch {
	case need.Kind == table.Empty && volume.Kind == table.Empty:
		return []string{"–"}
	case need.Kind == table.Empty:
		return []string{"– / " + places(volume)}
	case volume.Kind == table.Empty:
		return []string{places(need) + " / –"}
	}
	return []string{places(need) + " / " + places(volume)}
}

// places writes a volume with two decimals, or more where it has more, so that the
// points of a column stand under each other.
func places(c table.Cell) string {
	whole, decimals, _ := strings.Cut(c.Volume.String(), ".")
	return whole + "." + decimals + strings.Repeat("0", max(0, 2-len(decimals)))
}

func sourceLines(b *book, r table.Row) []string {
	return oneLine(b.schedule.Cell(r, "source").Text)
}

// rowsOn returns the rows of a level.
func (b *book) rowsOn(l *plan.Level) (rows []table.Row) {
	for _, r := range b.schedule.Rows {
		if _, level := b.plan.Opening(r.Of); level == l {
			rows = append(rows, r)
		}
	}
	return rows
}

// grid is the schedule on its way down a flow.
type grid struct {
	f       *flow
	columns []column
	shade   bool
}

// schedule puts down the rows, room by room.
func (f *flow) schedule(rows []table.Row) {
	if len(rows) == 0 {
		return
	}
	b := f.page.b
	f.heading(b.say("site.title", "Opening schedule"), 14)
	g := &grid{f: f}
	g.header()
	for i, r := range rows {
		isNew := i == 0 || rows[i-1].Group != r.Group
		row := g.row(r)
		want := row.tall
		if isNew {
			want += roomTall
		}
		if i+1 < len(rows) {
			want += noteTall
		}
		if !f.fits(want) {
			g.onward()
			if !isNew {
				g.room(r, true)
			}
		}
		if isNew {
			g.room(r, false)
		}
		g.draw(row)
	}
	f.y += 1
}

const (
	roomTall = 5.2
	noteTall = 5.0
)

// layout gives each column its width in the flow's column.
func (g *grid) layout() {
	g.columns = nil
	rest := g.f.width()
	for _, c := range columns {
		if c.wide && g.f.width() < 120 {
			continue
		}
		g.columns = append(g.columns, c)
		rest -= c.width
	}
	for i := range g.columns {
		if g.columns[i].width == 0 {
			g.columns[i].width = rest
		}
	}
}

// header puts down the titles over a rule.
func (g *grid) header() {
	g.layout()
	f, s := g.f, style{size: small, bold: true}
	y := f.y + s.line()
	x := f.left()
	for i, c := range g.columns {
		text := f.page.b.o.Voice.Say(c.title)
		if c.right {
			f.page.add(s.right().at(x+c.width-cellPad, y, text))
		} else if !c.title.IsZero() {
			if i > 0 && g.columns[i-1].title.IsZero() {
				x0 := x - g.columns[i-1].width // a title over a figure and its name
				f.page.add(s.at(x0+cellPad, y, text))
			} else {
				f.page.add(s.at(x, y, text))
			}
		}
		x += c.width
	}
	f.y = y + 1.3
	f.page.add(hline(f.left(), f.right(), f.y, pen(rule)))
	g.shade = false
}

// onward says where the schedule goes on, and goes on there.
func (g *grid) onward() {
	f := g.f
	b := f.page.b
	s := style{size: small, muted: true}
	if f.isLast() {
		f.page.add(s.at(f.left(), f.y+3.6, b.say("site.continues", "The schedule goes on, on sheet {0}.", b.number(f.page)+1)))
	} else {
		f.page.add(s.at(f.left(), f.y+3.6, b.say("site.beside", "The schedule goes on in the next column.")))
	}
	f.next()
	f.heading(b.say("site.again", "Opening schedule, continued"), 14)
	g.header()
}

// room puts down the name of the room over its rows.
func (g *grid) room(r table.Row, again bool) {
	f := g.f
	b := f.page.b
	name := b.schedule.Cell(r, "room").Text
	if name == "" {
		name = b.say("site.nowhere", "In no room")
	}
	if again {
		name = b.say("site.room-again", "{0}, continued", name)
	}
	s := style{size: body, bold: true}
	f.page.add(s.at(f.left(), f.y+roomTall-1.6, name))
	f.y += roomTall
	f.page.add(hline(f.left(), f.right(), f.y, pen(hairline)))
	g.shade = false
}

// gridRow is a row with its text broken to the columns.
type gridRow struct {
	of    plan.ID
	cells [][]string
	note  []string
	tall  float64
}

const rowPad = 1.2

func (g *grid) row(r table.Row) gridRow {
	b := g.f.page.b
	s := style{size: body}
	row := gridRow{of: r.Of}
	most := 1
	for _, c := range g.columns {
		var lines []string
		if c.lines != nil {
			for _, text := range c.lines(b, r) {
				if !c.right {
					lines = append(lines, s.wrap(text, c.width-cellPad)...)
				} else {
					lines = append(lines, text)
				}
			}
		}
		row.cells = append(row.cells, lines)
		most = max(most, len(lines))
	}
	fine := style{size: small, muted: true}
	if note := b.schedule.Cell(r, "note").Text; note != "" {
		row.note = fine.wrap(note, g.f.width()-g.columns[0].width-cellPad)
	}
	row.tall = float64(most)*s.line() + float64(len(row.note))*fine.line() + rowPad
	return row
}

// draw puts a row down, every other one on a faint ground.
func (g *grid) draw(row gridRow) {
	f := g.f
	if g.shade {
		ground := scene.Rect{Min: scene.Point{X: f.left() - 1, Y: f.y}, Max: scene.Point{X: f.right() + 1, Y: f.y + row.tall}}
		f.page.add(scene.Fill{Path: ground.Path(), Color: faint})
	}
	g.shade = !g.shade
	x, most := f.left(), 1
	for i, c := range g.columns {
		s := style{size: body, bold: c.bold, muted: c.muted}
		if c.muted {
			s.size = small
		}
		for k, line := range row.cells[i] {
			y := f.y + float64(k+1)*style{size: body}.line() - 0.3
			if c.right {
				f.page.add(s.right().at(x+c.width-cellPad, y, line))
			} else {
				f.page.add(s.at(x, y, line))
			}
		}
		most = max(most, len(row.cells[i]))
		x += c.width
	}
	if worst := f.page.b.worst(row.of); worst != nil {
		f.page.add(markFor(*worst, scene.Point{X: f.right() - 1.2, Y: f.y + row.tall/2})...)
	}
	y := f.y + float64(most)*style{size: body}.line()
	fine := style{size: small, muted: true}
	for _, line := range row.note {
		y += fine.line()
		f.page.add(fine.at(f.left()+g.columns[0].width, y-0.4, line))
	}
	f.y += row.tall
}

// faint is the ground of every other row: it prints, and a figure on it reads.
var faint = scene.Color{R: 0xf1, G: 0xf1, B: 0xf1, A: 0xff}

// worst returns the gravest finding of an opening, or nil.
func (b *book) worst(id plan.ID) *fill.Finding {
	i := slices.IndexFunc(b.findings, func(f fill.Finding) bool { return f.Opening == id })
	if i < 0 {
		return nil
	}
	return &b.findings[i]
}
