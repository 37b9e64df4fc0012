package layout

import (
	"strings"

	"studbay/plan/words"
	"studbay/render/scene"
)

// The measures of a table, in millimetres.
const (
	CellPad   = 1.6  // white at the right of a cell
	RowPad    = 1.2  // white of a row above and below its lines
	Overhang  = 1.0  // how far rules and grounds of rows begin left of the text, so that both are of one width
	GroupTall = 5.2  // height of the name of a group
	LeastOpen = 24.0 // how wide the column that takes the rest must stay
)

// Table is a table of its own on a page: columns of fixed width, but for the one with
// none, which takes what is left.
type Table struct {
	Columns []Column
	shade   bool
}

// Column is a column of one. Its width is in millimetres.
type Column struct {
	Title words.Text
	Width float64
	Right bool
	Style Style
}

// Row is a row with what it stands under: rows of one group come together.
type Row struct {
	Group string
	Cells []string
}

// Table puts down rows, the name of their group over each, under a heading.
func (f *Flow) Table(t *Table, heading string, rows []Row) {
	if len(rows) == 0 {
		return
	}
	if heading != "" {
		f.Heading(heading, 16)
	}
	t.Fill(f.Width())
	t.header(f)
	for i, r := range rows {
		lines := t.broken(r)
		isNew := r.Group != "" && (i == 0 || rows[i-1].Group != r.Group)
		want := t.tall(lines)
		if isNew {
			want += GroupTall
		}
		if !f.Fits(want) {
			f.Next()
			t.header(f)
			isNew = r.Group != ""
		}
		if isNew {
			t.group(f, r.Group)
		}
		t.row(f, lines)
	}
	f.Space(2)
}

// Fill gives the column without a width what is left.
func (t *Table) Fill(width float64) {
	rest, open := width, -1
	for i, c := range t.Columns {
		rest -= c.Width
		if c.Width == 0 {
			open = i
		}
	}
	if open >= 0 {
		t.Columns[open].Width = max(rest, LeastOpen)
	}
}

func (t *Table) header(f *Flow) {
	s := Style{Size: Small, Bold: true}
	voices := []struct {
		s Style
		v *words.Voice
	}{{s, &f.On.Voice}, {Fine, f.On.Second}}
	for _, in := range voices {
		if in.v == nil {
			continue
		}
		f.Y += in.s.Line()
		x := f.Left()
		for _, c := range t.Columns {
			t.put(f, c, in.s, x, f.Y, in.s.Fit(in.v.Say(c.Title), c.Width-0.6))
			x += c.Width
		}
	}
	f.Y += 1.3
	f.On.Add(HLine(f.Left()-Overhang, f.Right(), f.Y, Pen(Divider)))
	t.shade = false
}

func (t *Table) put(f *Flow, c Column, s Style, x, y float64, text string) {
	if c.Right {
		f.On.Add(s.Right().At(x+c.Width-2*CellPad, y, text))
		return
	}
	f.On.Add(s.At(x, y, text))
}

func (t *Table) group(f *Flow, name string) {
	s := Style{Size: Body, Bold: true}
	f.On.Add(s.At(f.Left(), f.Y+GroupTall-1.6, s.Fit(name, f.Width())))
	f.Y += GroupTall
	f.On.Add(HLine(f.Left()-Overhang, f.Right(), f.Y, Pen(Hairline)))
	t.shade = false
}

func (t *Table) broken(r Row) [][]string {
	lines := make([][]string, len(t.Columns))
	for i, c := range t.Columns {
		if i >= len(r.Cells) || r.Cells[i] == "" {
			continue
		}
		if lines[i] = strings.Split(r.Cells[i], "\n"); !c.Right {
			lines[i] = c.Style.Wrap(r.Cells[i], c.Width-CellPad)
		}
	}
	return lines
}

// TallOf is how high rows are with their header, once the columns are filled.
func (t *Table) TallOf(rows []Row) (tall float64) {
	for i, r := range rows {
		if tall += t.tall(t.broken(r)); r.Group != "" && (i == 0 || rows[i-1].Group != r.Group) {
			tall += GroupTall
		}
	}
	return tall + Style{Size: Small, Bold: true}.Line() + Fine.Line() + 3.3
}

func (t *Table) tall(lines [][]string) float64 {
	most := 1
	for _, l := range lines {
		most = max(most, len(l))
	}
	return float64(most)*Plain.Line() + RowPad
}

func (t *Table) row(f *Flow, lines [][]string) {
	tall := t.tall(lines)
	if t.shade {
		f.On.Add(Band(f.Left()-Overhang, f.Right(), f.Y, tall))
	}
	t.shade = !t.shade
	for k := 0; ; k++ { // line by line, so that a text read off the page keeps a row's figures together
		x, any := f.Left(), false
		for i, c := range t.Columns {
			if k < len(lines[i]) {
				t.put(f, c, c.Style, x, f.Y+float64(k+1)*Plain.Line()-0.3, lines[i][k])
				any = true
			}
			x += c.Width
		}
		if !any {
			break
		}
	}
	f.Y += tall
}

// Band is the faint ground of a row.
func Band(left, right, top, tall float64) scene.Item {
	return scene.Fill{Path: scene.Rect{Min: scene.Point{X: left, Y: top}, Max: scene.Point{X: right, Y: top + tall}}.Path(), Color: Faint}
}
