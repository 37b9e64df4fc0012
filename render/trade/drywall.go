package trade

import (
	"slices"
	"strconv"
	"strings"

	"studbay/fill/drywall"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/fullsize"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
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

var drywallHow = words.New("drywall.how", "Each face as seen standing in the room, sheets hung from the ceiling down. A cut-out is the outline of what comes through, the ring's collar or the box itself, and {0} all round; {1} is the most that may be left (NEC 314.21). Edges in bold are from the sheet's own left edge and bottom, gray from the left end of the wall and the subfloor: measure your own ring first. Studs that are assumed put joints where a spacing does: verify them. Dots beside a ring are the heads of its screws: hollow the back of the board there. Router no deeper than the board: wires lie folded right behind. Crossed boxes belong to the other room: do not cut. Ceilings are drawn as on the plan, from above: turn them over in mind when you look up; one of a room that is no rectangle is the rectangle about it. Marks on the floor: one dot a receptacle, two a switch, three a light, four anything else. Count again after hanging.",
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
	f.Heading(b.Say("drywall.heading", "{0} · {1}", name, scale.Words()), min(tall+20, f.Column().Height()-20))
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

// drawBoard draws a face at a scale, its floor line at the foot.
func (f *flow) drawBoard(l drywall.Layout, scale paper.Scale) {
	k := f.b.Paper.Times(scale)
	d := &boardDrawing{flow: f, left: f.Left(), foot: f.Y + l.Height.Millimetres()*k, k: k, layout: l}
	d.On.Add(layout.HLine(d.left, d.left+l.Face.Length.Millimetres()*d.k, d.foot, layout.Pen(layout.Border)))
	for _, p := range l.Pieces {
		r := d.rect(p.Left, p.Right, p.Bottom, p.Top)
		d.On.Add(scene.Stroke{Path: r.Path(), Pen: layout.Pen(layout.Divider)})
	}
	for _, h := range l.Holes {
		d.taken = append(d.taken, d.rect(h.Left, h.Right, h.Bottom, h.Top).Expanded(0.5))
	}
	for _, p := range l.Covered {
		r := d.rect(max(p.Left, 0), min(p.Right, l.Face.Length), p.Bottom, p.Top)
		d.taken = append(d.taken, r.Expanded(0.5))
		thin := layout.Pen(layout.Hairline)
		d.On.Add(scene.Stroke{Path: r.Path(), Pen: thin},
			scene.Stroke{Path: scene.LinePath(r.Min, r.Max), Pen: thin},
			scene.Stroke{Path: scene.LinePath(scene.Point{X: r.Min.X, Y: r.Max.Y}, scene.Point{X: r.Max.X, Y: r.Min.Y}), Pen: thin})
	}
	d.holes()
	d.names()
	if !l.IsCeiling {
		d.floorMarks()
	}
}

// collarCorner is how far the corners of a ring's collar are rounded: 1/4 in (common
// practice).
const collarCorner = unit.Inch / 4

// boardDrawing is a face in the making.
type boardDrawing struct {
	*flow
	left, foot, k float64
	layout        drywall.Layout
	taken         []scene.Rect // where no letter may stand
}

func (d *boardDrawing) rect(left, right, bottom, top unit.Length) scene.Rect {
	return scene.Rect{
		Min: scene.Point{X: d.left + left.Millimetres()*d.k, Y: d.foot - top.Millimetres()*d.k},
		Max: scene.Point{X: d.left + right.Millimetres()*d.k, Y: d.foot - bottom.Millimetres()*d.k},
	}
}

// holes draws the cut-outs, each with its tag where there is room beside it.
func (d *boardDrawing) holes() {
	heavy := layout.Pen(layout.Border)
	named := map[plan.ID]bool{}
	for _, h := range d.layout.Holes {
		r := d.rect(h.Left, h.Right, h.Bottom, h.Top)
		path := r.Path()
		body, _ := frame.BodyOf(h.Opening.Assembly)
		switch {
		case h.OnJoint:
		case h.Outline.IsRound:
			path = scene.Circle(r.Middle(), r.Width()/2)
		case body.HasRing:
			path = r.RoundedPath(collarCorner.Millimetres() * d.k)
		}
		d.On.Add(scene.Stroke{Path: path, Pen: heavy})
		if !h.OnJoint {
			d.screwHeads(h)
		}
		if !named[h.Opening.ID] {
			named[h.Opening.ID] = d.beside(r, h.Piece, layout.Strong, h.Opening.Tag)
		}
	}
	for _, p := range d.layout.Covered {
		r := d.rect(p.Left, p.Right, p.Bottom, p.Top)
		for i := range d.layout.Pieces {
			if d.beside(r, i, layout.Fine, p.Opening.Tag) {
				break
			}
		}
	}
}

// screwHeads marks the heads of a ring's screws, which stand behind the board.
func (d *boardDrawing) screwHeads(h drywall.Hole) {
	middle := d.rect(h.Left, h.Right, h.Bottom, h.Top).Middle()
	for _, at := range fullsize.CutOutOf(h.Opening).Heads() {
		head := middle.Add(at.Mul(d.k))
		d.taken = append(d.taken, scene.RectAround(head, 1.4, 1.4))
		d.On.Add(scene.Fill{Path: scene.Circle(head, 0.35), Color: layout.Theme.Ink})
	}
}

// beside writes a text over, under or to a side of a rectangle, within a piece, where it
// touches nothing. It reports whether there was room: the table has it all the same.
func (d *boardDrawing) beside(r scene.Rect, piece int, s layout.Style, text string) bool {
	wide, tall := s.Width(text), s.Cap()
	m := r.Middle()
	for _, at := range []scene.Point{
		{X: m.X - wide/2, Y: r.Min.Y - 1.2}, {X: r.Max.X + 1.2, Y: m.Y + tall/2}, {X: r.Min.X - 1.2 - wide, Y: m.Y + tall/2}, {X: m.X - wide/2, Y: r.Max.Y + 1.2 + tall},
	} {
		if d.write(at, piece, s, text) {
			return true
		}
	}
	return false
}

// write writes a text with its baseline at a place where that is free.
func (d *boardDrawing) write(at scene.Point, piece int, s layout.Style, text string) bool {
	box := scene.Rect{Min: scene.Point{X: at.X - 0.4, Y: at.Y - s.Cap() - 0.6}, Max: scene.Point{X: at.X + s.Width(text) + 0.4, Y: at.Y + 0.8}}
	p := d.layout.Pieces[piece]
	in := d.rect(p.Left, p.Right, p.Bottom, p.Top).Expanded(-0.4)
	if !in.Contains(box.Min) || !in.Contains(box.Max) || slices.ContainsFunc(d.taken, box.Overlaps) {
		return false
	}
	d.taken = append(d.taken, box)
	d.On.Add(s.At(at.X, at.Y, text))
	return true
}

// names writes letter and size of each piece where there is room in it.
func (d *boardDrawing) names() {
	b := d.b
	for i, p := range d.layout.Pieces {
		r := d.rect(p.Left, p.Right, p.Bottom, p.Top)
		size := b.Say("drywall.size", "{0}: {1} × {2}", p.Letter, words.Height(p.Right-p.Left), words.Height(p.Top-p.Bottom))
		for _, text := range []string{size, p.Letter} {
			if d.write(scene.Point{X: r.Min.X + 1.6, Y: r.Min.Y + 1.4 + layout.Strong.Cap()}, i, layout.Strong, text) ||
				d.write(scene.Point{X: r.Min.X + 1.6, Y: r.Max.Y - 1.6}, i, layout.Strong, text) {
				break
			}
		}
	}
}

// floorMarks sets dots under each cut-out as they are drawn on the floor.
func (d *boardDrawing) floorMarks() {
	right := d.left - 1
	for _, h := range d.layout.Holes {
		x := d.left + h.Opening.At.Along.Millimetres()*d.k
		n := dotsOf(h.Opening)
		wide := 1.6 * float64(n)
		if x-wide/2 < right {
			continue
		}
		for i := range n {
			at := scene.Point{X: x + 1.6*(float64(i)-float64(n-1)/2), Y: d.foot + 2}
			d.On.Add(scene.Fill{Path: scene.Circle(at, 0.55), Color: layout.Theme.Ink})
		}
		right = x + wide/2 + 0.6
	}
}

// dotsOf is how many dots mark an opening on the floor.
func dotsOf(o *plan.Opening) int {
	k := part.All().Kind(o.Kind)
	if k == nil {
		return 4
	}
	switch k.Family {
	case part.Receptacle:
		return 1
	case part.Switch:
		return 2
	case part.Light:
		return 3
	}
	return 4
}
