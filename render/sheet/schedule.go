package sheet

import (
	"slices"
	"strings"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/table"
)

// column is one column of the schedule as it stands on a sheet. Its width is in
// millimetres; the one with none takes what is left.
type column struct {
	id    string
	title words.Text
	width float64
	rank  int // 0: always shown; else the lower, the sooner it is shown where there is room
	style style
	right bool // set from the right
	// elastic columns among those chosen share the width that is left.
	elastic bool
	pad     float64 // more white at its right
	lines   func(*grid, table.Row) []string
}

var (
	plain  = style{size: body}
	strong = style{size: body, bold: true}
	fine   = style{size: small, muted: true}
)

// leastWhat is how wide the column that takes the rest must stay.
const leastWhat = 24.0

// columnsFor returns the columns for a width: as many as leave room to say what it is,
// up to a rank.
func columnsFor(width float64, most int) (chosen []column) {
	columns, rest, rank := siteColumns(), width-leastWhat, 0
	for want := 0; want <= most; want++ {
		sum := 0.0
		for _, c := range columns {
			if c.rank == want {
				sum += c.width
			}
		}
		if sum > rest && want > 0 {
			break
		}
		rest, rank = rest-sum, want
	}
	for _, c := range columns {
		if c.rank > rank {
			continue
		}
		if c.width == 0 {
			c.width = leastWhat + rest
		}
		chosen = append(chosen, c)
	}
	return chosen
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
	unseen  bool // a volume in it is from memory
}

// schedule puts down the rows, room by room.
func (f *flow) schedule(rows []table.Row) {
	if len(rows) == 0 {
		return
	}
	b := f.page.b
	f.heading(b.both("site.title", "Opening schedule"), 14)
	g := &grid{f: f}
	g.unseen = slices.ContainsFunc(rows, g.isUnseen)
	g.header()
	for i, r := range rows {
		isNew := i == 0 || rows[i-1].Group != r.Group
		want := g.row(r).tall
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
		g.draw(g.row(r))
	}
	f.y++
}

const (
	roomTall = 5.2
	noteTall = 5.0
)

func (g *grid) book() *book { return g.f.page.b }

// shows reports whether a column is among those chosen.
func (g *grid) shows(id string) bool {
	return slices.ContainsFunc(g.columns, func(c column) bool { return c.id == id })
}

// header puts down the titles over a rule.
func (g *grid) header() {
	g.columns = g.book().columnsFor(g.f.width())
	f, s := g.f, style{size: small, bold: true}
	if g.unseen {
		f.bothParagraphs(fine, words.New("site.unseen", "{0} from memory: read the stamp in the box before its volume is counted on.", unseen))
		f.y += 0.8
	}
	f.y += s.line()
	g.titleRow(s, f.y, f.page.b.o.Voice)
	if second := f.page.b.o.Second; second != nil {
		f.y += fine.line()
		g.titleRow(fine, f.y, *second)
	}
	f.y += 1.3
	f.page.add(hline(f.left()-overhang, f.right(), f.y, pen(divider)))
	g.shade = false
}

// onward says where the schedule goes on, and goes on there.
func (g *grid) onward() {
	f := g.f
	b := f.page.b
	s := style{size: small, muted: true}
	if f.isLast() {
		f.page.add(s.at(f.left(), f.y+3.6, b.say("site.continues", "The schedule continues on sheet {0}.", b.number(f.page)+1)))
	} else {
		f.page.add(s.at(f.left(), f.y+3.6, b.say("site.beside", "The schedule continues in the next column.")))
	}
	f.next()
	f.heading(b.both("site.again", "Opening schedule, continued"), 14)
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
	f.page.add(s.at(f.left(), f.y+roomTall-1.6, s.fit(name, f.width())))
	f.y += roomTall
	f.page.add(hline(f.left()-overhang, f.right(), f.y, pen(hairline)))
	g.shade = false
}

// gridRow is a row with its text broken to the columns.
type gridRow struct {
	of    plan.ID
	cells [][]scene.Run // each at its place from the row's upper left corner
	tall  float64
}

const rowPad = 1.2

// The most lines of a cell and of what follows under the kind: the table as a file has
// the whole.
const (
	mostLines   = 6
	mostRemarks = 4
)

func (g *grid) row(r table.Row) gridRow {
	row := gridRow{of: r.Of, tall: plain.line() + rowPad}
	x := 0.0
	for _, c := range g.columns {
		y := 0.0
		var runs []scene.Run
		put := func(s style, text string) {
			y += plain.line()
			if c.right {
				right := x + c.width - cellPad - c.pad
				figure, isUnseen := strings.CutSuffix(text, unseen)
				if s.width(figure) > c.width-1 {
					s.size = small
				}
				runs = append(runs, s.right().at(right, y-0.3, figure))
				if isUnseen { // it hangs, so that figures stand in line
					runs = append(runs, style{size: small}.at(right+0.2, y-0.3, unseen))
				}
				return
			}
			runs = append(runs, s.at(x, y-0.3, text))
		}
		if c.lines != nil {
			for _, text := range c.lines(g, r) {
				for _, line := range g.broken(c, text) {
					put(c.style, line)
				}
			}
		}
		if c.id == "what" {
			for _, line := range atMost(fine.wrap(g.remarks(r), c.width-cellPad-1.5), mostRemarks) {
				put(fine, line)
			}
		}
		row.cells = append(row.cells, runs)
		row.tall = max(row.tall, y+rowPad)
		x += c.width
	}
	return row
}

// broken breaks text to a column; figures stay whole, for a figure cut short misleads.
func (g *grid) broken(c column, text string) []string {
	if c.right {
		return []string{text}
	}
	return atMost(c.style.wrap(text, c.width-cellPad), mostLines)
}

// overhang is how far rules and grounds of rows begin left of the text, so that both are
// of one width.
const overhang = 1.0

// draw puts a row down, every other one on a faint ground.
func (g *grid) draw(row gridRow) {
	f := g.f
	if g.shade {
		f.page.add(band(f.left()-overhang, f.right(), f.y, row.tall))
	}
	g.shade = !g.shade
	for _, runs := range row.cells {
		for _, run := range runs {
			run.At = run.At.Add(scene.Point{X: f.left(), Y: f.y})
			f.page.add(run)
		}
	}
	if worst := f.page.b.worst(row.of); worst != nil {
		first := plain.line()
		f.page.add(markFor(*worst, scene.Point{X: f.right() - 1.2, Y: f.y + (first+rowPad)/2})...)
	}
	f.y += row.tall
}

// faint is the ground of every other row: it prints, and a figure on it reads.
var faint = scene.Color{R: 0xf1, G: 0xf1, B: 0xf1, A: 0xff}

// worst returns the gravest finding of an opening, or nil.
func (b *book) worst(id plan.ID) *rule.Finding { return b.found.worst[id] }
