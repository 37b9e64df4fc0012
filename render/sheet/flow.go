package sheet

import "studbay/render/scene"

// flow lays things into columns, one under the other, and goes on in the next column
// and then on further pages.
type flow struct {
	page    *page
	columns []scene.Rect
	at      int          // the column in hand
	y       float64      // how far down it is taken
	onward  func() *page // begins a further page; its columns are then taken
	least   float64      // the least width of columns on further pages; a page wide at most
}

// columnGap is the white between columns, and wideColumn the least width of those that
// fill a page: enough for a schedule with what the side column leaves out.
const (
	columnGap  = 8.0
	wideColumn = 184.0
)

// columnsOf divides a box into columns at least as wide as least.
func columnsOf(box scene.Rect, least float64) (columns []scene.Rect) {
	n := max(1, int((box.Width()+columnGap)/(least+columnGap)))
	width := (box.Width() - columnGap*float64(n-1)) / float64(n)
	for i := range n {
		x := box.Min.X + float64(i)*(width+columnGap)
		columns = append(columns, scene.Rect{Min: scene.Point{X: x, Y: box.Min.Y}, Max: scene.Point{X: x + width, Y: box.Max.Y}})
	}
	return columns
}

// newFlow begins a flow on a page that it fills, in columns of a least width.
func newFlow(p *page, least float64, onward func() *page) *flow {
	f := &flow{page: p, columns: columnsOf(p.main.Expanded(-gutter), least), least: least, onward: onward}
	f.y = f.column().Min.Y
	return f
}

func (f *flow) column() scene.Rect { return f.columns[f.at] }
func (f *flow) left() float64      { return f.column().Min.X }
func (f *flow) right() float64     { return f.column().Max.X }
func (f *flow) width() float64     { return f.column().Width() }
func (f *flow) rest() float64      { return f.column().Max.Y - f.y }
func (f *flow) isTop() bool        { return f.y == f.column().Min.Y }

// isLast reports whether what goes on does so on another page.
func (f *flow) isLast() bool { return f.at == len(f.columns)-1 }

// fits reports whether a height is left in the column, or never will be in any.
func (f *flow) fits(height float64) bool { return height <= f.rest() || f.isTop() }

// need goes on in the next column where a height is not left.
func (f *flow) need(height float64) {
	if !f.fits(height) {
		f.next()
	}
}

// next goes on at the top of the next column.
func (f *flow) next() {
	if f.isLast() {
		f.page = f.onward()
		f.columns = columnsOf(f.page.main.Expanded(-gutter), f.least)
		f.at = -1
	}
	f.at++
	f.y = f.column().Min.Y
}

// space leaves white, but not at the top of a column.
func (f *flow) space(height float64) {
	if !f.isTop() {
		f.y = min(f.y+height, f.column().Max.Y)
	}
}

// heading puts down a heading that keeps so much of what follows with it.
func (f *flow) heading(text string, with float64) {
	s := style{size: heading, bold: true}
	f.space(4.5)
	f.need(s.line() + with)
	f.y += s.cap()
	f.page.add(s.at(f.left(), f.y, text))
	f.y += 2.6
}

// keptLines is how many lines of a paragraph stay together.
const keptLines = 8

// paragraph puts down text broken to the column, moved in by so much.
func (f *flow) paragraph(s style, in float64, text string) {
	lines := s.wrap(text, f.width()-in)
	if len(lines) <= keptLines {
		f.need(float64(len(lines)) * s.line())
	}
	for _, line := range lines {
		f.need(s.line())
		f.y += s.line()
		f.page.add(s.at(f.left()+in, f.y-s.line()*0.28, line))
	}
}
