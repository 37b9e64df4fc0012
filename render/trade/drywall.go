package trade

import (
	"slices"
	"strconv"
	"strings"

	"studbay/fill/drywall"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/table"
)

// CutMap lays out the faces that board is hung on, room by room: its sheets, what is cut out
// of each, and what is not.
func (b *Book) CutMap() error {
	type face struct {
		drywall.Layout
		name string
	}
	var all []face
	for _, l := range b.Plan.Levels {
		for _, r := range table.RoomsInOrder(l) {
			view, ok := b.Index.RoomView(r.ID)
			if !ok || r.Use == plan.UseOutdoors {
				continue
			}
			for i := range view.Sides {
				if laid, ok := drywall.Lay(&view.Sides[i], r); ok {
					all = append(all, face{laid, b.Say("drywall.face", "{0}, {1}", r.Name, table.Wall(b.Index, r, view.Sides[i].Side.ID))})
				}
			}
			if laid, ok := drywall.LayCeiling(&view); ok {
				all = append(all, face{laid, b.Say("drywall.ceiling", "{0}, ceiling from above, as on the plan", r.Name)})
			}
		}
	}
	if len(all) == 0 {
		return nil
	}
	f := b.flow(b.Both("drywall.title", "Drywall sheets and cut-outs"), boardColumn)
	f.BothParagraphs(layout.Fine, drywallHow)
	for _, l := range all {
		f.boardFace(l.Layout, l.name)
	}
	return nil
}

var drywallHow = words.New("drywall.how", "Each face as seen standing in the room, sheets hung from the ceiling down. A cut-out is the outline of what comes through, the ring's collar or the box itself, and {0} all round; {1} is the most that may be left (NEC 314.21). Edges in bold are from the sheet's own left edge and bottom, gray from the left end of the wall and the subfloor: measure your own ring first. Studs that are assumed put joints where a spacing does: verify them. Dots beside a ring are the heads of its screws: hollow the back of the board there. Router no deeper than the board: wires lie folded right behind. Crossed boxes belong to the other room: do not cut. Ceilings are drawn as on the plan, from above: turn them over in mind when you look up; where walls trim a sheet its size is that of the rectangle about what is left. Marks on the floor: one dot a receptacle, two a switch, three a light, four anything else. Count again after hanging.",
	words.Height(drywall.Clearance), words.Height(drywall.MostGap))

// The measures of a face with its table, in millimetres of paper.
const (
	boardColumn = 186.0
	boardLow    = 9.0 // under the floor line: marks and their places
)

// boardScales are what faces are drawn at, the largest that fits the column.
func boardScales(s unit.System) []paper.Scale {
	if s == unit.Metric {
		return []paper.Scale{paper.Metric(20), paper.Metric(25), paper.Metric(50), paper.Metric(75), paper.Metric(100), paper.Metric(200)}
	}
	return []paper.Scale{paper.Imperial(8), paper.Imperial(6), paper.Imperial(4), paper.Imperial(3), paper.Imperial(2), paper.Imperial(1)}
}

var holeColumns = []layout.Column{
	{Title: words.New("framing.tag", "Tag"), Width: 11, Style: layout.Strong},
	{Title: words.New("drywall.piece", "Piece"), Width: 11, Style: layout.Plain},
	{Title: words.New("drywall.outline", "Cut-out"), Style: layout.Plain},
	{Title: words.New("drywall.left", "Left"), Width: 16, Right: true, Style: layout.Strong},
	{Title: words.New("drywall.right", "Right"), Width: 16, Right: true, Style: layout.Strong},
	{Title: words.New("drywall.bottom", "Bottom"), Width: 16, Right: true, Style: layout.Strong},
	{Title: words.New("drywall.top", "Top"), Width: 16, Right: true, Style: layout.Strong},
	{Title: words.New("drywall.from-end", "From wall end"), Width: 26, Right: true, Style: layout.Fine},
	{Title: words.New("drywall.from-floor", "Above subfloor"), Width: 26, Right: true, Style: layout.Fine},
}

// columnsOf are the columns of the holes of a face, or of a ceiling: there from the room's ends.
func columnsOf(l drywall.Layout) []layout.Column {
	if !l.IsCeiling {
		return holeColumns
	}
	columns := slices.Clone(holeColumns)
	columns[len(columns)-2].Title = words.New("drywall.from-left", "From the left")
	columns[len(columns)-1].Title = words.New("drywall.from-lower", "From lower end")
	return columns
}

// boardFace puts down one face: the drawing, the table of its holes, and the counts.
func (f *flow) boardFace(l drywall.Layout, name string) {
	b := f.b
	scale := f.boardScale(l)
	tall := l.Height.Millimetres()*b.Paper.Times(scale) + boardLow
	rows := b.holeRows(l)
	f.Heading(b.Say("drywall.heading", "{0} · {1}", name, scale.Words(b.Voice)), min(tall+20, f.Column().Height()-20))
	f.Need(tall)
	if !f.On.IsDraft {
		f.drawBoard(l, scale)
	}
	f.Y += tall
	f.Table(&layout.Table{Columns: wideEnough(columnsOf(l), rows)}, b.Say("drywall.table", "Cut-outs: {0}", l.Count()), rows)
	for _, t := range b.boardSays(l) {
		f.Paragraph(layout.Fine, 0, b.Voice.Say(t))
	}
	f.Space(3)
}

// wideEnough returns columns of which those of figures hold what stands in them.
func wideEnough(columns []layout.Column, rows []layout.Row) []layout.Column {
	columns = slices.Clone(columns)
	for i := range columns {
		if c := &columns[i]; c.Right {
			for _, r := range rows {
				c.Width = max(c.Width, c.Style.Width(r.Cells[i])+3)
			}
		}
	}
	return columns
}

// boardScale returns the largest scale that a face fits the column at, in less than half of its
// height, or that a ceiling does in less than two thirds.
func (f *flow) boardScale(l drywall.Layout) (scale paper.Scale) {
	most := 0.42
	if l.IsCeiling {
		most = 0.62
	}
	for _, scale = range boardScales(f.b.Voice.System) {
		k := f.b.Paper.Times(scale)
		wide, tall := l.Face.Length.Millimetres()*k, l.Height.Millimetres()*k
		if wide <= f.Width()-2 && tall <= most*f.Column().Height() {
			return scale
		}
	}
	return scale
}

// holeRows says where the edges of each hole are.
func (b *Book) holeRows(l drywall.Layout) (rows []layout.Row) {
	holes := slices.Clone(l.Holes)
	slices.SortStableFunc(holes, func(x, y drywall.Hole) int { return plan.CompareTags(x.Opening.Tag, y.Opening.Tag) })
	span := func(from, to unit.Length) string {
		return b.Say("drywall.span", "{0} to {1}", words.Height(from), words.Height(to))
	}
	for _, h := range holes {
		from := l.From(h)
		what := b.outlineText(h.Outline)
		if h.OnJoint {
			what = b.Say("drywall.on-joint", "{0}, on a joint", what)
		}
		rows = append(rows, layout.Row{Cells: []string{
			h.Opening.Tag, l.Pieces[h.Piece].Letter, what, b.Length(from.Left), b.Length(from.Right), b.Length(from.Bottom), b.Length(from.Top),
			span(h.Left, h.Right), span(h.Bottom, h.Top),
		}})
	}
	return rows
}

func (b *Book) outlineText(o part.Outline) string {
	if o.IsRound {
		return b.Say("drywall.round", "{0} round", words.Height(o.Width))
	}
	return b.Say("drywall.square", "{0} × {1}", words.Height(o.Width), words.Height(o.Height))
}

// boardSays counts sheets and joints, and names what a joint crosses and what is covered.
func (b *Book) boardSays(l drywall.Layout) (all []words.Text) {
	way := words.New("drywall.flat", "laid flat")
	switch {
	case l.Way.Upright:
		way = words.New("drywall.upright", "on end")
	case l.AcrossJoists:
		way = words.New("drywall.across", "across the joists")
	case l.IsCeiling:
		way = words.New("drywall.along", "along the room, for nobody tells the joists")
	}
	all = append(all, words.New("drywall.sheets", "Sheets {0} × {1}, {2}: {3}. Joints {4}.", words.Height(drywall.Wide), words.Height(l.Way.Long), way, len(l.Sheets.Boards), l.Joints))
	var cut []string
	for i, board := range l.Sheets.Boards {
		var letters []string
		for _, p := range board.Pieces {
			letters = append(letters, p.For+" "+b.Length(p.Length))
		}
		cut = append(cut, b.Say("drywall.sheet", "{0}: {1}", strconv.Itoa(i+1), strings.Join(letters, " + ")))
	}
	all = append(all, words.New("drywall.cut-from", "Cut from sheets {0}.", strings.Join(cut, "; ")))
	if tags := l.OnJoints(); len(tags) > 0 {
		all = append(all, words.New("drywall.joined", "On a joint, cut in both pieces: {0}.", strings.Join(tags, ", ")))
	}
	if len(l.Covered) > 0 {
		var tags []string
		for _, p := range l.Covered {
			tags = append(tags, p.Opening.Tag)
		}
		all = append(all, words.New("drywall.covered", "Do not cut, they are the other room's: {0}.", strings.Join(tags, ", ")))
	}
	return all
}
