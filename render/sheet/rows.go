package sheet

import "studbay/plan/words"

// tabled is a table of its own on a page: columns of fixed width, but for the one with
// none, which takes what is left.
type tabled struct {
	columns []tableColumn
	shade   bool
}

// tableColumn is a column of one. Its width is in millimetres.
type tableColumn struct {
	title words.Text
	width float64
	right bool
	style style
}

// tableRow is a row with what it stands under: rows of one group come together.
type tableRow struct {
	group string
	cells []string
}

// table puts down rows, the name of their group over each, under a heading.
func (f *flow) table(t *tabled, heading string, rows []tableRow) {
	if len(rows) == 0 {
		return
	}
	if heading != "" {
		f.heading(heading, 16)
	}
	t.fill(f.width())
	t.header(f)
	for i, r := range rows {
		lines := t.broken(r)
		isNew := r.group != "" && (i == 0 || rows[i-1].group != r.group)
		want := t.tall(lines)
		if isNew {
			want += roomTall
		}
		if !f.fits(want) {
			f.next()
			t.header(f)
			isNew = r.group != ""
		}
		if isNew {
			t.group(f, r.group)
		}
		t.row(f, lines)
	}
	f.space(2)
}

// fill gives the column without a width what is left.
func (t *tabled) fill(width float64) {
	rest, open := width, -1
	for i, c := range t.columns {
		rest -= c.width
		if c.width == 0 {
			open = i
		}
	}
	if open >= 0 {
		t.columns[open].width = max(rest, leastWhat)
	}
}

func (t *tabled) header(f *flow) {
	s := style{size: small, bold: true}
	voices := []struct {
		s style
		v *words.Voice
	}{{s, &f.page.b.o.Voice}, {fine, f.page.b.o.Second}}
	for _, in := range voices {
		if in.v == nil {
			continue
		}
		f.y += in.s.line()
		x := f.left()
		for _, c := range t.columns {
			t.put(f, c, in.s, x, f.y, in.s.fit(in.v.Say(c.title), c.width-0.6))
			x += c.width
		}
	}
	f.y += 1.3
	f.page.add(hline(f.left()-overhang, f.right(), f.y, pen(divider)))
	t.shade = false
}

func (t *tabled) put(f *flow, c tableColumn, s style, x, y float64, text string) {
	if c.right {
		f.page.add(s.right().at(x+c.width-2*cellPad, y, text))
		return
	}
	f.page.add(s.at(x, y, text))
}

func (t *tabled) group(f *flow, name string) {
	s := style{size: body, bold: true}
	f.page.add(s.at(f.left(), f.y+roomTall-1.6, s.fit(name, f.width())))
	f.y += roomTall
	f.page.add(hline(f.left()-overhang, f.right(), f.y, pen(hairline)))
	t.shade = false
}

func (t *tabled) broken(r tableRow) [][]string {
	lines := make([][]string, len(t.columns))
	for i, c := range t.columns {
		if i >= len(r.cells) || r.cells[i] == "" {
			continue
		}
		if lines[i] = []string{r.cells[i]}; !c.right {
			lines[i] = c.style.wrap(r.cells[i], c.width-cellPad)
		}
	}
	return lines
}

// tallOf is how high rows are with their header, once the columns are filled.
func (t *tabled) tallOf(rows []tableRow) (tall float64) {
	for i, r := range rows {
		if tall += t.tall(t.broken(r)); r.group != "" && (i == 0 || rows[i-1].group != r.group) {
			tall += roomTall
		}
	}
	return tall + style{size: small, bold: true}.line() + fine.line() + 3.3
}

func (t *tabled) tall(lines [][]string) float64 {
	most := 1
	for _, l := range lines {
		most = max(most, len(l))
	}
	return float64(most)*plain.line() + rowPad
}

func (t *tabled) row(f *flow, lines [][]string) {
	tall := t.tall(lines)
	if t.shade {
		f.page.add(band(f.left()-overhang, f.right(), f.y, tall))
	}
	t.shade = !t.shade
	x := f.left()
	for i, c := range t.columns {
		for k, line := range lines[i] {
			t.put(f, c, c.style, x, f.y+float64(k+1)*plain.line()-0.3, line)
		}
		x += c.width
	}
	f.y += tall
}
