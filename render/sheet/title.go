package sheet

import (
	"slices"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// titleBlock draws what stands at the foot of a page: what it is, the caution, and the
// fields that tell one print from another.
func (p *page) titleBlock(number, of int) {
	box := scene.Rect{Min: scene.Point{X: p.frame.Min.X, Y: p.main.Max.Y}, Max: scene.Point{X: p.main.Max.X, Y: p.frame.Max.Y}}
	right := box.Max.X
	if p.north {
		right = p.northBox(box)
	}
	if p.key != nil {
		right = p.keyBox(box, right)
	}
	if len(p.changes) > 0 {
		right = p.revisionBox(box, right)
	}
	left := p.titleCells(box, right, number, of)
	p.titles(scene.Rect{Min: box.Min, Max: scene.Point{X: left, Y: box.Max.Y}})
}

func (p *page) titles(box scene.Rect) {
	x, width := box.Min.X+gutter, box.Width()-2*gutter
	big := style{size: title, bold: true}
	for big.size > heading && big.width(p.b.plan.Header.Title) > width {
		big.size--
	}
	y := box.Min.Y + 3.2 + big.cap()
	p.add(big.at(x, y, big.fit(p.b.plan.Header.Title, width)))
	name := style{size: 8.5}
	y += name.line() + 0.6
	p.add(name.at(x, y, name.fit(p.fullName(), width)))
	lines := p.cautionLines(width, box.Max.Y-1.4-y)
	y = max(y+fine.line()+0.4, box.Max.Y-2.6-float64(len(lines)-1)*fine.line())
	for _, line := range lines {
		if y <= box.Max.Y-1 {
			p.add(fine.at(x, y, line))
		}
		y += fine.line()
	}
}

func (p *page) fullName() string {
	if p.part == "" {
		return p.name
	}
	return p.name + ", " + p.part
}

// caution is the two lines that go on every page: what was checked against, or that and
// why nothing was.
func (b *book) caution(v words.Voice) string {
	if not := b.result.NotChecked(); !not.IsZero() {
		return v.Say(words.New("sheet.not-checked",
			"{0}. A planning aid: the adopted local code, the authority having jurisdiction and a licensed electrician decide. Work on wiring only with the power off and proven off.", not))
	}
	return v.Say(words.New("sheet.caution",
		"Checked against {0}{1}. A planning aid: the adopted local code, the authority having jurisdiction and a licensed electrician decide. Work on wiring only with the power off and proven off.",
		b.edition(), b.amended()))
}

// edition names what was checked against.
func (b *book) edition() string {
	if b.result.Figures == nil {
		return b.plan.Header.Edition
	}
	return b.result.Figures.Title
}

func (b *book) amended() words.Text {
	switch n := b.plan.Amendments.Len(); n {
	case 0:
		return words.Text{}
	case 1:
		return words.New("sheet.amended.one", " with one local amendment")
	default:
		return words.New("sheet.amended", " with {0} local amendments", n)
	}
}

// titleCell is a value under its name.
type titleCell struct{ name, value string }

// titleCells draws them from the right, two a column, leaving out the empty ones, and
// returns where they begin.
func (p *page) titleCells(box scene.Rect, right float64, number, of int) float64 {
	h := p.b.plan.Header
	var all []titleCell
	for _, f := range []titleCell{
		{p.b.both("sheet.scale", "Scale"), p.scale},
		{p.b.both("sheet.number", "Sheet"), p.b.say("sheet.of", "{0} of {1}", number, of)},
		{p.b.both("sheet.drawn", "Drawn"), h.Date},
		{p.b.both("sheet.revision", "Revision"), h.Revision},
		{p.b.both("sheet.author", "By"), h.Author},
		{p.b.both("sheet.site", "Site"), h.Site},
		{p.b.both("sheet.client", "For"), h.Client},
	} {
		if f.value != "" {
			all = append(all, f)
		}
	}
	x := right
	for pair := range slices.Chunk(all, 2) {
		x = p.cellColumn(box, x, pair)
	}
	return x
}

// mostCell is how wide a value may be before it is cut.
const mostCell = 42

// cellColumn draws one or two of them left of a place and returns where they begin.
func (p *page) cellColumn(box scene.Rect, right float64, pair []titleCell) float64 {
	label, value := style{size: small, muted: true}, style{size: 8}
	wide := 0.0
	for _, f := range pair {
		wide = max(wide, label.width(f.name), min(value.width(f.value), mostCell))
	}
	x := right - wide - 8
	half := box.Height() / 2
	for k, f := range pair {
		y := box.Min.Y + float64(k)*half + 4.4
		if len(pair) == 1 {
			y += half / 2
		}
		p.add(label.at(x+4, y, f.name))
		p.add(value.at(x+4, y+value.line()+0.6, value.fit(f.value, wide+0.1)))
	}
	if len(pair) == 2 {
		p.add(hline(x, right, box.Min.Y+half, pen(hairline)))
	}
	p.add(vline(x, box.Min.Y, box.Max.Y, pen(hairline)))
	return x
}

// northBox draws the arrow in a box of its own, and returns where that begins.
func (p *page) northBox(box scene.Rect) float64 {
	x := box.Max.X - 17
	p.add(symbol.North{
		Middle: scene.Point{X: x + 8.5, Y: box.Min.Y + 14.5}, Size: 11, Turn: -float64(p.b.plan.Header.North),
		Letter: p.b.say("wind.short.n", "N"), Ink: theme.Ink,
	}.Items()...)
	p.add(vline(x, box.Min.Y, box.Max.Y, pen(hairline)))
	return x
}

// scaleBar draws a ruler of the plan's scale with what it counts and the scale in words,
// and returns where that ends.
func (p *page) scaleBar(at scene.Point, s paper.Scale) float64 {
	step, labels, counts := unit.Length(0), []string{}, words.New("sheet.feet", "feet")
	if s.System == unit.Metric {
		counts = words.New("sheet.metres", "meters")
	}
	for _, c := range barSteps(s) {
		if step = c.step; scene.MM(c.step)*s.Times() >= 8 {
			labels = c.labels
			break
		}
		labels = c.labels
	}
	bar := symbol.ScaleBar{
		At: at, Step: scene.MM(step) * s.Times(), Height: 1.5, Labels: labels, TextSize: style{size: small}.mm(),
		Line: pen(divider).Width, Ink: theme.Ink, Paper: theme.Paper,
	}
	p.add(bar.Items()...)
	text := p.b.say("sheet.scale-bar", "{0} · {1} on {2}", counts, s.Words(), p.b.o.Paper.Size())
	words := style{size: small}
	x := at.X + bar.Step*float64(len(labels)-1) + gutter
	p.add(words.at(x, at.Y+1.6, text))
	return x + words.width(text)
}

type barStep struct {
	step   unit.Length
	labels []string
}

// barSteps lists what a step of the scale bar may stand for.
func barSteps(s paper.Scale) []barStep {
	if s.System == unit.Metric {
		return []barStep{
			{unit.Metre / 2, strings.Fields("0 0.5 1 1.5 2")}, {unit.Metre, strings.Fields("0 1 2 3 4")},
			{2 * unit.Metre, strings.Fields("0 2 4 6 8")}, {5 * unit.Metre, strings.Fields("0 5 10 15 20")},
		}
	}
	return []barStep{
		{unit.Foot, strings.Fields("0 1 2 3 4 5")}, {2 * unit.Foot, strings.Fields("0 2 4 6 8 10")},
		{5 * unit.Foot, strings.Fields("0 5 10 15 20")}, {10 * unit.Foot, strings.Fields("0 10 20 30 40")},
	}
}

// both says a text in the language of the set and, on a set in two, in the second beside it.
func (b *book) both(id, english string, args ...any) string {
	return b.bothOf(func(v words.Voice) string { return v.Say(words.New(id, english, args...)) })
}

// bothOf is both for what is put together of several texts.
func (b *book) bothOf(say func(words.Voice) string) string {
	first, second, two := b.apart(say)
	if !two {
		return first
	}
	return first + " · " + second
}

// apart says a text in either language, and whether there are two that differ.
func (b *book) apart(say func(words.Voice) string) (first, second string, two bool) {
	first = say(b.o.Voice)
	if b.o.Second == nil {
		return first, "", false
	}
	second = say(*b.o.Second)
	return first, second, second != first
}

// bothParagraphs puts down a note, and below it the same in the second language.
func (f *flow) bothParagraphs(s style, t words.Text) {
	first, second, two := f.page.b.apart(func(v words.Voice) string { return v.Say(t) })
	f.paragraph(s, 0, first)
	if two {
		f.space(0.6)
		f.paragraph(s, 0, second)
	}
}

// titleRow puts down the titles of a schedule in one language.
func (g *grid) titleRow(s style, y float64, v words.Voice) {
	f := g.f
	x := f.left()
	for i, c := range g.columns {
		text := v.Say(c.title)
		switch {
		case c.title.IsZero():
		case c.right:
			f.page.add(s.right().at(x+c.width-cellPad-c.pad, y, text))
		case i > 0 && g.columns[i-1].title.IsZero():
			f.page.add(s.at(x-g.columns[i-1].width+cellPad, y, text)) // over a figure and its name
		default:
			f.page.add(s.at(x, y, text))
		}
		x += c.width
	}
}

// cautionLines are those of the title block: in both languages where they have room.
func (p *page) cautionLines(width, tall float64) []string {
	first, second, two := p.b.apart(p.b.caution)
	lines := fine.wrap(first, width)
	if !two {
		return lines
	}
	if more := append(lines, fine.wrap(second, width)...); float64(len(more))*fine.line() <= tall {
		return more
	}
	return lines
}
