package trade

import (
	"studbay/plan/unit"
	"studbay/render/face"
	"studbay/render/layout"
	"studbay/render/paper"
)

// wallRow is as many walls as stand beside one another, with the table of their boxes.
type wallRow struct {
	walls      []drawnWall
	head, tall float64 // how high what stands over them and they are
	table      *layout.Table
	rows       []layout.Row
	below      float64 // how high the table is
}

// need is how high all of the row is, in millimeters.
func (r wallRow) need() float64 { return r.head + r.tall + wallToTable + r.below }

// leastNeed is how high the walls are with the first line of their table.
func (r wallRow) leastNeed() float64 {
	return r.head + r.tall + wallToTable + r.table.TallOf(r.rows[:1])
}

// The white between walls and their table, and what is kept for it, in millimeters.
const (
	wallOverTable = 2.0
	wallToTable   = 4.0
)

// wallRow returns the first of some walls that stand beside one another, at a scale at most.
func (f *flow) wallRow(faces []face.Face, most paper.Scale) (r wallRow) {
	if len(faces) == 0 {
		return r
	}
	r.walls, r.head, r.tall = f.besideOneAnother(faces, most)
	columns, rows := f.b.wallRows(r.walls, f.Width())
	r.table, r.rows = &layout.Table{Columns: columns}, rows
	r.table.Fill(f.Width())
	r.below = r.table.TallOf(rows)
	return r
}

// at returns the same walls at another scale, and whether they still stand beside one another.
func (f *flow) at(r wallRow, s paper.Scale) (wallRow, bool) {
	faces := make([]face.Face, len(r.walls))
	for i, d := range r.walls {
		faces[i] = d.Face
	}
	r.walls, r.head, r.tall = f.besideOneAnother(faces, s)
	return r, len(r.walls) == len(faces)
}

// stand puts a row of walls down. Where what stands under a name of the page is all that it
// has, the table rather goes on on the next page than the walls. A row after which the next
// finds no room on the page grows with it; after the last other kinds of pages go on.
func (f *flow) stand(r, after wallRow, isFirst bool) {
	if isFirst && f.Column().Height() < f.pageTall() && f.shrunk(r, f.Rest()).leastNeed() > f.Rest() {
		f.Next() // what is left under other things is too low for it at any scale
		isFirst = false
	}
	high := f.Column().Height()
	if isFirst {
		high = f.Rest()
	}
	r = f.shrunk(r, high)
	if begins := isFirst || r.need() > f.Rest(); begins && len(after.walls) > 0 && r.need()+wallBelow+after.need() > high {
		r = f.grown(r, high)
	}
	if !isFirst || r.need() <= f.Rest() {
		f.Need(r.need())
	} else {
		f.Need(r.leastNeed())
	}
	x := f.Left()
	for _, d := range r.walls {
		f.wall(d, x, f.Y, r.head+r.tall)
		x += d.wide() + wallGap
	}
	f.Y += r.head + r.tall + wallOverTable
	f.Table(r.table, "", r.rows)
	f.Space(wallBelow)
}

// shrunk returns the row at the largest scale at which it is no higher than there is room, or
// the smallest that walls are drawn at for that.
func (f *flow) shrunk(r wallRow, high float64) wallRow {
	for _, s := range wallScales[f.b.Voice.System] {
		if r.need() <= high || s.Times() < leastWall[f.b.Voice.System].Times() {
			break
		}
		if s.Times() < r.walls[0].scale.Times() {
			r, _ = f.at(r, s)
		}
	}
	return r
}

// grown returns the row at the largest scale at which it is no higher than a page leaves room.
func (f *flow) grown(r wallRow, high float64) wallRow {
	for _, s := range wallScales[f.b.Voice.System] {
		if s.Times() <= r.walls[0].scale.Times() {
			break
		}
		if larger, ok := f.at(r, s); ok && larger.need() <= high {
			return larger
		}
	}
	return r
}

// leastWall is the smallest scale that walls are drawn at for their table to stand on their page.
var leastWall = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(3), unit.Metric: paper.Metric(50)}

// besideOneAnother draws as many of the first walls as the page is wide, and returns how high
// what stands over them and they are.
func (f *flow) besideOneAnother(faces []face.Face, most paper.Scale) (row []drawnWall, head, tall float64) {
	wide := 0.0
	for _, w := range faces {
		d := f.drawWall(w, most)
		if len(row) > 0 {
			if wide+wallGap+d.wide() > f.Width() {
				break
			}
			wide += wallGap
		}
		wide += d.wide()
		tall, head = max(tall, d.bounds.Height()), max(head, f.b.headTall(d))
		row = append(row, d)
	}
	return row, head, tall
}
