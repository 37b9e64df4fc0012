package sheet

import (
	"slices"
	"strings"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/trade"
)

// column is one column of the schedule as it stands on a sheet. Its width is in
// millimetres.
type column struct {
	id    string
	title words.Text
	width float64
	share float64 // of the width that is left, where the columns are those of the site
	style layout.Style
	right bool // set from the right
	// elastic columns among those chosen share the width that is left.
	elastic bool
	pad     float64 // more white at its right
	lines   func(*grid, table.Row) []string
}

// rowsOn returns the rows of a level.
func (b *book) rowsOn(l *plan.Level) (rows []table.Row) {
	for _, r := range b.schedule().Rows {
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
	g := &grid{f: f, columns: b.columnsFor(f.Width())}
	f.Heading(b.Both("site.title", "Opening schedule"), headTall+layout.GroupTall+g.row(rows[0]).tall+noteTall)
	g.unseen = slices.ContainsFunc(rows, g.isUnseen)
	g.header()
	for i, r := range rows {
		isNew := i == 0 || rows[i-1].Group != r.Group
		want := g.row(r).tall
		if isNew {
			want += layout.GroupTall
		}
		if i+1 < len(rows) {
			want += noteTall
		}
		if !f.Fits(want) {
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
	f.Y++
}

const noteTall = 5.0

func (g *grid) book() *book { return g.f.page.b }

// shows reports whether a column is among those chosen.
func (g *grid) shows(id string) bool {
	return slices.ContainsFunc(g.columns, func(c column) bool { return c.id == id })
}

// headTall is how high the titles of a schedule are with what may stand over them.
const headTall = 14.0

// header puts down the titles over a rule.
func (g *grid) header() {
	g.columns = g.book().columnsFor(g.f.Width())
	f, s := g.f, layout.Style{Size: layout.Small, Bold: true}
	if g.unseen {
		f.BothParagraphs(layout.Fine, words.New("site.unseen", "{0} from memory: read the stamp in the box before its volume is counted on.", unseen))
		f.Y += 0.8
	}
	f.Y += s.Line()
	g.titleRow(s, f.Y, f.page.b.Voice)
	if second := f.page.b.Second; second != nil {
		f.Y += layout.Fine.Line()
		g.titleRow(layout.Fine, f.Y, *second)
	}
	f.Y += 1.3
	f.page.Add(layout.HLine(f.Left()-layout.Overhang, f.Right(), f.Y, layout.Pen(layout.Divider)))
	g.shade = false
}

// onward says where the schedule goes on, and goes on there.
func (g *grid) onward() {
	f := g.f
	b := f.page.b
	s := layout.Style{Size: layout.Small, Muted: true}
	if f.IsLast() {
		f.page.Add(s.At(f.Left(), f.Y+3.6, b.Say("site.continues", "The schedule continues on sheet {0}.", b.number(f.page)+1)))
	} else {
		f.page.Add(s.At(f.Left(), f.Y+3.6, b.Say("site.beside", "The schedule continues in the next column.")))
	}
	f.Next()
	f.Heading(b.Both("site.again", "Opening schedule, continued"), 14)
	g.header()
}

// room puts down the name of the room over its rows.
func (g *grid) room(r table.Row, again bool) {
	f := g.f
	b := f.page.b
	name := b.schedule().Cell(r, "room").Text
	if name == "" {
		name = b.Say("site.nowhere", "In no room")
	}
	if again {
		name = b.Say("site.room-again", "{0}, continued", name)
	}
	s := layout.Style{Size: layout.Body, Bold: true}
	f.page.Add(s.At(f.Left(), f.Y+layout.GroupTall-1.6, s.Fit(name, f.Width())))
	f.Y += layout.GroupTall
	f.page.Add(layout.HLine(f.Left()-layout.Overhang, f.Right(), f.Y, layout.Pen(layout.Hairline)))
	g.shade = false
}

// gridRow is a row with its text broken to the columns.
type gridRow struct {
	of    plan.ID
	cells [][]scene.Run // each at its place from the row's upper left corner
	tall  float64
}

// The most lines of a cell and of what follows under the kind: the table as a file has
// the whole.
const (
	mostLines   = 6
	mostRemarks = 4
)

func (g *grid) row(r table.Row) gridRow {
	row := gridRow{of: r.Of, tall: layout.Plain.Line() + layout.RowPad}
	x := 0.0
	for _, c := range g.columns {
		y := 0.0
		var runs []scene.Run
		put := func(s layout.Style, text string) {
			y += layout.Plain.Line()
			if c.right {
				right := x + c.width - layout.CellPad - c.pad
				figure, isUnseen := strings.CutSuffix(text, unseen)
				if s.Width(figure) > c.width-1 {
					s.Size = layout.Small
				}
				runs = append(runs, s.Right().At(right, y-0.3, figure))
				if isUnseen { // it hangs, so that figures stand in line
					runs = append(runs, layout.Style{Size: layout.Small}.At(right+0.2, y-0.3, unseen))
				}
				return
			}
			runs = append(runs, s.At(x, y-0.3, text))
		}
		if c.lines != nil {
			for _, text := range c.lines(g, r) {
				for _, line := range g.broken(c, text) {
					put(c.style, line)
				}
			}
		}
		if c.id == "what" {
			for _, line := range layout.AtMost(layout.Fine.Wrap(g.remarks(r), c.width-layout.CellPad-1.5), mostRemarks) {
				put(layout.Fine, line)
			}
		}
		row.cells = append(row.cells, runs)
		row.tall = max(row.tall, y+layout.RowPad)
		x += c.width
	}
	return row
}

// broken breaks text to a column; figures stay whole, for a figure cut short misleads.
func (g *grid) broken(c column, text string) []string {
	if c.right {
		return []string{text}
	}
	return layout.AtMost(c.style.Wrap(text, c.width-layout.CellPad), mostLines)
}

// draw puts a row down, every other one on a faint ground.
func (g *grid) draw(row gridRow) {
	f := g.f
	if g.shade {
		f.page.Add(layout.Band(f.Left()-layout.Overhang, f.Right(), f.Y, row.tall))
	}
	g.shade = !g.shade
	for _, runs := range row.cells {
		for _, run := range runs {
			run.At = run.At.Add(scene.Point{X: f.Left(), Y: f.Y})
			f.page.Add(run)
		}
	}
	if worst := f.page.b.worst(row.of); worst != nil {
		first := layout.Plain.Line()
		f.page.Add(trade.Mark(*worst, scene.Point{X: f.Right() - 1.2, Y: f.Y + (first+layout.RowPad)/2})...)
	}
	f.Y += row.tall
}

// worst returns the gravest finding of an opening, or nil.
func (b *book) worst(id plan.ID) *rule.Finding { return b.found.worst[id] }
