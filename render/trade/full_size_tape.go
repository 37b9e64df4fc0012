package trade

import (
	"slices"
	"strconv"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/fullsize"
	"studbay/render/layout"
	"studbay/render/scene"
)

// The measures of a strip of the tape, in millimeters: of what stands above its ruler and
// hangs below it, of a line of marks, and how far the cut lines at its ends run past it.
const (
	stripAbove = 26.0
	stripBelow = 12.0
	markLine   = 4.0
	firstMark  = 11.5 // above the figures of the ruler
	firstBelow = 4.0
)

// tape puts down the tape of a level in strips as long as the page is wide.
func (f *flow) tape(l *plan.Level) {
	b := f.b
	centers, bottoms := fullsize.Marks(b.Index, l)
	units := b.Voice.System
	strips := fullsize.Strips(centers, unit.FromMillimetres(f.Width()*b.Paper.Enlarged()), units)
	if len(strips) == 0 {
		return
	}
	f.Heading(b.Both("full-size.tape", "Heights, {0}", l.Name), stripAbove+stripBelow+2*layout.Fine.Line())
	f.BothParagraphs(layout.Fine, words.New("full-size.tape-how", "Cut the strips along their ends and paste them so that the same figures meet; stand the 0 on the subfloor. Above the ruler the centers of boxes, below it their bottoms."))
	for _, s := range strips {
		f.strip(s, centers, bottoms, units)
	}
}

// strip puts down one strip with its marks.
func (f *flow) strip(s fullsize.Strip, centers, bottoms []fullsize.Mark, units unit.System) {
	f.Need(stripAbove + stripBelow)
	p, b := f.On, f.b
	at := scene.Point{X: f.Left(), Y: f.Y + stripAbove}
	x := func(l unit.Length) float64 { return at.X + b.Paper.MM(l-s.From) }
	p.Add(s.Ticks(b.trueSize(), at, units, layout.Pen(layout.Hairline))...)
	f.rulerFigures(s, at, units)
	for _, end := range []float64{x(s.From), x(s.To)} {
		p.Add(layout.VLine(end, at.Y-stripAbove+2, at.Y+stripBelow-2, layout.Pen(layout.Hairline)))
	}
	for _, m := range b.beside(s, centers, layout.Strong, mostCenterTags) {
		y := at.Y - firstMark - float64(m.lane)*markLine
		p.Add(layout.VLine(at.X+m.at, y, at.Y-pastFigures, layout.Pen(layout.Divider)), layout.VLine(at.X+m.at, at.Y-underFigures, at.Y, layout.Pen(layout.Divider)))
		p.Add(layout.Strong.At(at.X+m.begin, y+layout.Strong.Cap(), m.text))
	}
	for _, m := range b.beside(s, bottoms, layout.Fine, mostBottomTags) {
		y := at.Y + firstBelow + float64(m.lane)*markLine
		p.Add(layout.VLine(at.X+m.at, at.Y, y, layout.Pen(layout.Hairline)), layout.Fine.At(at.X+m.begin, y, m.text))
	}
	f.Y += stripAbove + stripBelow
}

// rulerFigures writes the figures of a strip's ruler: inches, or millimeters.
func (f *flow) rulerFigures(s fullsize.Strip, at scene.Point, units unit.System) {
	step, counts := fullsize.Step(units), unit.Inch
	if units == unit.Metric {
		counts = unit.Millimetre
	}
	wide := layout.Style{Size: layout.Small}.Width(strconv.FormatInt(int64(s.To/counts), 10))
	isDense := f.b.Paper.MM(step) < 1.5*wide+figureIn+0.5 // the first and the last stand beside their marks
	for l := s.From; l <= s.To; l += step {
		if isDense && l != s.From && l != s.To && ((l-s.From)/step%2 == 1 || s.To-l == step) {
			continue // its neighbors tell it
		}
		figure, x := layout.Style{Size: layout.Small, Align: scene.Center}, at.X+f.b.Paper.MM(l-s.From)
		switch l {
		case s.From:
			figure.Align, x = scene.Start, x+figureIn
		case s.To:
			figure.Align, x = scene.End, x-figureIn
		}
		f.On.Add(figure.At(x, at.Y-figuresUp, strconv.FormatInt(int64(l/counts), 10)))
	}
}

// figuresUp is how far above the ruler its figures stand; the lines of marks leave out what is
// between underFigures and pastFigures.
const figuresUp, underFigures, pastFigures = 6.2, 5.7, 8.3

// figureIn is how far the first and the last figure stand in from the cut lines.
const figureIn = 0.8

// tapeMark is a mark with its text, in millimeters from the beginning of a strip.
type tapeMark struct {
	at, begin, end float64
	lane           int
	text           string
}

// beside sets the texts of the marks on a strip in lanes, the first nearest the ruler: right
// of their marks, or left of them at the end of the strip, so that no line of a mark runs
// through the text of another on the same side.
func (b *Book) beside(s fullsize.Strip, marks []fullsize.Mark, look layout.Style, most int) (all []tapeMark) {
	const gap = 1.2
	long := b.Paper.MM(s.To - s.From)
	var onRight []tapeMark
	for _, m := range marks {
		if !s.Holds(m.At) {
			continue
		}
		t := tapeMark{at: b.Paper.MM(m.At - s.From), text: b.Say("full-size.mark", "{0} · {1}", words.Height(m.At), b.fewTags(m.Tags, most))}
		wide := look.Width(t.text)
		if t.begin, t.end = t.at+gap, t.at+gap+wide; t.end <= long {
			onRight = append(onRight, t)
			continue
		}
		t.begin, t.end = t.at-gap-wide, t.at
		all = append(all, t.above(all, gap))
	}
	for _, t := range slices.Backward(onRight) {
		all = append(all, t.above(all, gap))
	}
	return all
}

// above returns the mark in the lane above all that it would meet.
func (t tapeMark) above(all []tapeMark, gap float64) tapeMark {
	for _, o := range all {
		if min(o.at, o.begin) <= max(t.at, t.end)+gap && min(t.at, t.begin) <= max(o.at, o.end)+gap {
			t.lane = max(t.lane, o.lane+1)
		}
	}
	return t
}
