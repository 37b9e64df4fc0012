package sheet

import (
	"studbay/render/paper"
	"studbay/render/scene"
)

// flow lays things into columns, one under the other, and goes on in the next column
// and then on further pages.
type flow struct {
	page    *page
	columns []scene.Rect
	at      int          // the column in hand
	y       float64      // how far down it is taken
	onward  func() *page // begins a further page; its columns are then taken
	least   float64      // the least width of columns on further pages; a page wide at most
	tall    float64      // how high columns are at most; 0: as the page is
	top     float64      // where columns begin on the first page; 0: as the page does
	shelf   shelf
	most    paper.Scale // the largest that rooms are unfolded at
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
	f := &flow{least: least, onward: onward}
	f.begin(p)
	return f
}

// newEvenFlow begins a flow whose columns are no higher than lay needs to get by with as
// few pages as it can: on a large page all columns then end about alike, and none is left
// empty beside full ones.
func newEvenFlow(b *book, least float64, onward func() *page, lay func(*flow)) *flow {
	pages := func(tall float64) int { return b.pagesOf(&flow{least: least, tall: tall}, lay) }
	f := &flow{least: least, onward: onward}
	f.begin(onward())
	const steps = 24
	whole, fewest := f.column().Height(), pages(0)
	for i := range steps {
		f.tall = whole * float64(i+1) / steps
		if f.tall >= leastColumn && pages(f.tall) == fewest {
			break
		}
	}
	f.begin(f.page)
	return f
}

// pagesOf counts the pages that something laid into a flow like f would take.
func (b *book) pagesOf(f *flow, lay func(*flow)) int {
	draft := &book{ix: b.ix, plan: b.plan, result: b.result, found: b.found, o: b.o, isDraft: true}
	f.onward = func() *page { return draft.newPage("", 0) }
	f.begin(f.onward())
	lay(f)
	return len(draft.pages)
}

// leastColumn is how high a column is at least.
const leastColumn = 110.0

// begin takes the columns of a page that the flow fills, from the first.
func (f *flow) begin(p *page) {
	f.page, f.at, f.columns = p, 0, columnsOf(p.main.Expanded(-gutter), f.least)
	for i := range f.columns {
		c := &f.columns[i]
		c.Min.Y = max(c.Min.Y, f.top)
		if f.tall > 0 {
			c.Max.Y = min(c.Max.Y, c.Min.Y+f.tall)
		}
	}
	f.top = 0
	f.y = f.column().Min.Y
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
		f.begin(f.onward())
		return
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
