package layout

import (
	"studbay/plan/words"
	"studbay/render/scene"
)

// Flow lays things into columns, one under the other, and goes on in the next column
// and then on further pages.
type Flow struct {
	On      *Page
	Columns []scene.Rect
	At      int          // the column in hand
	Y       float64      // how far down it is taken
	Onward  func() *Page // begins a further page; its columns are then taken
	Least   float64      // the least width of columns on further pages; a page wide at most
	Tall    float64      // how high columns are at most; 0: as the page is
	Top     float64      // where columns begin on the first page; 0: as the page does
	isShort bool         // columns of the page in hand begin under what was there
}

// ColumnGap is the white between columns, and WideColumn the least width of those that
// fill a page: enough for a schedule with what the side column leaves out.
const (
	ColumnGap  = 8.0
	WideColumn = 184.0
)

// ColumnsOf divides a box into columns at least as wide as least.
func ColumnsOf(box scene.Rect, least float64) (columns []scene.Rect) {
	n := max(1, int((box.Width()+ColumnGap)/(least+ColumnGap)))
	width := (box.Width() - ColumnGap*float64(n-1)) / float64(n)
	for i := range n {
		x := box.Min.X + float64(i)*(width+ColumnGap)
		columns = append(columns, scene.Rect{Min: scene.Point{X: x, Y: box.Min.Y}, Max: scene.Point{X: x + width, Y: box.Max.Y}})
	}
	return columns
}

// Begin takes the columns of a page that the flow fills, from the first.
func (f *Flow) Begin(p *Page) {
	f.On, f.At, f.Columns = p, 0, ColumnsOf(p.Main.Expanded(-Gutter), f.Least)
	for i := range f.Columns {
		c := &f.Columns[i]
		c.Min.Y = max(c.Min.Y, f.Top, p.Taken)
		if f.Tall > 0 {
			c.Max.Y = min(c.Max.Y, c.Min.Y+f.Tall)
		}
	}
	f.Top, f.isShort = 0, p.Taken > 0
	f.Y = f.Column().Min.Y
}

func (f *Flow) Column() scene.Rect { return f.Columns[f.At] }
func (f *Flow) Left() float64      { return f.Column().Min.X }
func (f *Flow) Right() float64     { return f.Column().Max.X }
func (f *Flow) Width() float64     { return f.Column().Width() }
func (f *Flow) Rest() float64      { return f.Column().Max.Y - f.Y }
func (f *Flow) IsTop() bool        { return f.Y == f.Column().Min.Y }

// IsLast reports whether what goes on does so on another page.
func (f *Flow) IsLast() bool { return f.At == len(f.Columns)-1 }

// Fits reports whether a height is left in the column, or never will be in any.
func (f *Flow) Fits(height float64) bool { return height <= f.Rest() || f.IsTop() && !f.isShort }

// Need goes on in the next column where a height is not left; past columns that are short.
func (f *Flow) Need(height float64) {
	for !f.Fits(height) {
		f.Next()
	}
}

// Whole goes on at the top of a column as tall as a page has room for: what is laid out at full
// size is else taken to be larger than the paper where a page is begun already.
func (f *Flow) Whole() {
	for f.isShort {
		f.Next()
	}
}

// Next goes on at the top of the next column.
func (f *Flow) Next() {
	if f.IsLast() {
		f.Begin(f.Onward())
		return
	}
	f.At++
	f.Y = f.Column().Min.Y
}

// Space leaves white, but not at the top of a column.
func (f *Flow) Space(height float64) {
	if !f.IsTop() {
		f.Y = min(f.Y+height, f.Column().Max.Y)
	}
}

// Heading puts down a heading that keeps so much of what follows with it.
func (f *Flow) Heading(text string, with float64) {
	s := Style{Size: Heading, Bold: true}
	f.Space(4.5)
	f.Need(s.Line() + with)
	f.Y += s.Cap()
	f.On.Add(s.At(f.Left(), f.Y, text))
	f.Y += 2.6
}

// keptLines is how many lines of a paragraph stay together.
const keptLines = 8

// Paragraph puts down text broken to the column, moved in by so much.
func (f *Flow) Paragraph(s Style, in float64, text string) {
	lines := s.Wrap(text, f.Width()-in)
	if len(lines) <= keptLines {
		f.Need(float64(len(lines)) * s.Line())
	}
	for _, line := range lines {
		f.Need(s.Line())
		f.Y += s.Line()
		f.On.Add(s.At(f.Left()+in, f.Y-s.Line()*0.28, line))
	}
}

// BothParagraphs puts down a note, and below it the same in the second language.
func (f *Flow) BothParagraphs(s Style, t words.Text) {
	first, second, two := f.On.Apart(func(v words.Voice) string { return v.Say(t) })
	f.Paragraph(s, 0, first)
	if two {
		f.Space(0.6)
		f.Paragraph(s, 0, second)
	}
}

// Bullet puts down a paragraph behind a short dash.
func (f *Flow) Bullet(s Style, text string) {
	for i, line := range s.Wrap(text, f.Width()-3) {
		f.Need(s.Line())
		f.Y += s.Line()
		if i == 0 {
			f.On.Add(s.At(f.Left(), f.Y-s.Line()*0.28, "–"))
		}
		f.On.Add(s.At(f.Left()+3, f.Y-s.Line()*0.28, line))
	}
}

// Even makes columns no higher than they need to be to get by with as few pages as they can,
// by how many pages are taken where columns are so high (0: as the page is): on a large page
// all columns then end about alike, and none is left empty beside full ones.
func (f *Flow) Even(pages func(tall float64) int) {
	const steps = 24
	whole, fewest := f.Column().Height(), pages(0)
	for i := range steps {
		f.Tall = whole * float64(i+1) / steps
		if f.Tall >= leastColumn && pages(f.Tall) == fewest {
			break
		}
	}
	f.Begin(f.On)
}

// leastColumn is how high a column is at least.
const leastColumn = 110.0

// Count returns how many pages are taken by what is laid into a flow, on drafts of a page.
func (f *Flow) Count(draft *Page, lay func()) int {
	n, further := 1, *draft
	further.Taken = 0
	f.Onward = func() *Page {
		n++
		return &further
	}
	f.Begin(draft)
	lay()
	return n
}
