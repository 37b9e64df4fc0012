package trade

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill/drywall"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/fullsize"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/table"
)

// FullSize lays out at full size what is put on a wall or a board: a template of each cut-out,
// and for each level a tape with the height of every box, in strips.
func (b *Book) FullSize() error {
	holes := fullsize.CutOuts(b.Index)
	if len(holes) == 0 {
		return nil
	}
	f := b.flow(b.Both("full-size.title", "Full size"), wholePage)
	f.Whole()
	f.checkBar()
	f.BothParagraphs(layout.Fine, words.New("full-size.how", "Print at 100 %, scaling none, and measure the bar first. Lay a template with its two lines on the marks of a box, draw round it and cut {0} outside that line, as on the drywall sheets; where more than {1} stays open round a box the board is to be filled (NEC 314.21). Dashed, the plate that will cover it; dotted, the box behind, with rings at the screw heads of its ring (common practice, look at yours): hollow the back of the board there.",
		words.Height(drywall.Clearance), words.Height(drywall.MostGap)))
	f.templates(holes)
	for _, l := range b.Plan.Levels {
		f.tape(l)
	}
	return nil
}

// trueSize is how long a millimeter is laid out to be one on paper.
func (b *Book) trueSize() float64 { return b.Paper.MM(unit.Millimetre) }

// wholePage is the least width of a column where there is to be one.
const wholePage = 10_000.0

// checkBar puts down a bar of a known length, to be measured on the print.
func (f *flow) checkBar() {
	long := 6 * unit.Inch
	if f.b.Voice.System == unit.Metric {
		long = 150 * unit.Millimetre
	}
	const tall = 7.0
	f.Need(tall + 2)
	x, y := f.Left(), f.Y+tall/2
	end := x + f.b.Paper.MM(long)
	f.On.Add(layout.HLine(x, end, y, layout.Pen(layout.Divider)), layout.VLine(x, y-2, y+2, layout.Pen(layout.Divider)), layout.VLine(end, y-2, y+2, layout.Pen(layout.Divider)))
	f.On.Add(layout.Plain.At(end+3, y+layout.Plain.Cap()/2, f.b.Both("full-size.bar", "{0}, if printed true", words.Height(long))))
	f.Y += tall
}

// template is a cut-out with what is written below it.
type template struct {
	fullsize.CutOut
	wide, tall float64
	lines      []string
}

// templateGap is how far templates keep apart, and leastTemplate how wide what is written
// below one may be.
const templateGap, leastTemplate = 6.0, 42.0

// templates puts down cut-outs in rows, the tallest first, each in the first row that has room
// for it, and names those that are larger than the paper.
func (f *flow) templates(holes []fullsize.CutOut) {
	var all []template
	var tooLarge []template
	for _, c := range holes {
		if t := f.template(c); t.wide > f.Width() || t.tall > f.Column().Height()-20 {
			tooLarge = append(tooLarge, t)
		} else {
			all = append(all, t)
		}
	}
	slices.SortStableFunc(all, func(a, b template) int { return cmp.Compare(b.tall, a.tall) })
	var rows [][]template
	var wide []float64
	for _, t := range all {
		n := slices.IndexFunc(wide, func(w float64) bool { return w+t.wide <= f.Width() })
		if n < 0 {
			n, rows, wide = len(rows), append(rows, nil), append(wide, 0)
		}
		rows[n], wide[n] = append(rows[n], t), wide[n]+t.wide+templateGap
	}
	least := 0.0
	for i, row := range rows {
		if tall := rowTall(row); i == 0 || tall < least {
			least = tall
		}
	}
	f.Heading(f.b.Both("full-size.cut-outs", "Cut-outs"), least)
	for len(rows) > 0 { // the tallest that has room on the page, or else the tallest on the next
		n := max(0, slices.IndexFunc(rows, func(row []template) bool { return f.Fits(rowTall(row)) }))
		f.templateRow(rows[n])
		rows = slices.Delete(rows, n, n+1)
	}
	for _, t := range tooLarge {
		f.tiles(t)
	}
}

// The measures of a template in tiles, in millimeters: what is written over a tile, and half
// the size of a register mark.
const (
	tileHead = 8.0
	register = 4.0
)

// tiles puts down a template that is larger than the paper, in tiles to be taped together where
// their register marks meet.
func (f *flow) tiles(t template) {
	b := f.b
	parts, w, h := t.Tiles(b.trueSize(), f.Width()-2*register, f.Column().Height()-tileHead-2*register)
	for i, part := range parts {
		f.Need(tileHead + h + 2*register)
		text := b.Say("full-size.tile", "{0}: part {1} of {2}, row {3} from the top, {4} from the left; tape the crosses on one another", strings.Join(t.lines, " "), i+1, len(parts), part.Down+1, part.Across+1)
		f.On.Add(layout.Strong.At(f.Left(), f.Y+layout.Strong.Cap()+1, layout.Strong.Fit(text, f.Width())))
		middle := scene.Point{X: f.Left() + register + w/2, Y: f.Y + tileHead + h/2}
		window := scene.RectAround(middle, w, h)
		f.On.Add(scene.Group{
			Layer: scene.Layer{Name: "template", Clip: &window},
			Items: t.Draw(b.trueSize(), middle.Sub(part.Middle), layout.Pen(layout.Divider), layout.Pen(layout.Hairline)),
		})
		for _, at := range []scene.Point{window.Min, {X: window.Max.X, Y: window.Min.Y}, {X: window.Min.X, Y: window.Max.Y}, window.Max} {
			f.On.Add(layout.HLine(at.X-register, at.X+register, at.Y, layout.Pen(layout.Hairline)), layout.VLine(at.X, at.Y-register, at.Y+register, layout.Pen(layout.Hairline)))
		}
		f.Y += tileHead + h + 2*register
	}
}

func (f *flow) template(c fullsize.CutOut) template {
	t := template{CutOut: c}
	t.wide, t.tall = c.Extent(f.b.trueSize())
	t.wide = max(t.wide, leastTemplate)
	b := f.b
	var boxes, tags []string
	for _, o := range c.Openings {
		tags = append(tags, o.Tag)
		if code := table.AssemblyCode(o.Assembly); code != "" && !slices.Contains(boxes, code) {
			boxes = append(boxes, code)
		}
	}
	slices.Sort(boxes)
	t.lines = append(layout.Plain.Wrap(b.outlineText(c.Outline), t.wide), layout.Fine.Wrap(strings.Join(boxes, ", "), t.wide)...)
	t.lines = append(t.lines, layout.Fine.Wrap(b.fewTags(tags, mostTemplateTags), t.wide)...)
	return t
}

// mostTemplateTags, mostCenterTags and mostBottomTags are how many tags are written below a
// template and beside a height.
const mostTemplateTags, mostCenterTags, mostBottomTags = 8, 4, 2

// fewTags names some openings, and how many more there are.
func (b *Book) fewTags(tags []string, most int) string {
	if len(tags) <= most+1 {
		return strings.Join(tags, ", ")
	}
	return b.Say("full-size.tags", "{0} and {1} more", strings.Join(tags[:most], ", "), len(tags)-most)
}

// rowParts are how high the templates of a row are, and what is written below them.
func rowParts(row []template) (tall, under float64) {
	lines := 0
	for _, t := range row {
		tall, lines = max(tall, t.tall), max(lines, len(t.lines))
	}
	return tall, 2 + float64(lines)*layout.Plain.Line()
}

func rowTall(row []template) float64 {
	tall, under := rowParts(row)
	return tall + under + templateGap
}

// templateRow puts down templates side by side, their middles in one line.
func (f *flow) templateRow(row []template) {
	tall, under := rowParts(row)
	f.Need(rowTall(row))
	x := f.Left()
	for _, t := range row {
		f.On.Add(t.Draw(f.b.trueSize(), scene.Point{X: x + t.wide/2, Y: f.Y + tall/2}, layout.Pen(layout.Divider), layout.Pen(layout.Hairline))...)
		for n, text := range t.lines {
			s := layout.Fine
			if n == 0 {
				s = layout.Strong
			}
			f.On.Add(s.At(x, f.Y+tall+2+float64(n+1)*layout.Plain.Line(), text))
		}
		x += t.wide + templateGap
	}
	f.Y += tall + under + templateGap
}
