package sheet

import (
	"slices"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// titleBlock draws what stands at the foot of a page: what it is, the caution, and the
// fields that tell one print from another.
func (p *page) titleBlock(number, of int) {
	box := scene.Rect{Min: scene.Point{X: p.Frame.Min.X, Y: p.Main.Max.Y}, Max: scene.Point{X: p.Main.Max.X, Y: p.Frame.Max.Y}}
	titles := box
	if p.Paper.IsUpright() {
		titles.Max.Y = titles.Min.Y + layout.TitlesTall
		box.Min.Y = titles.Max.Y
		p.Add(layout.HLine(box.Min.X, box.Max.X, box.Min.Y, layout.Pen(layout.Hairline)))
		if len(p.changes) > 0 {
			titles.Max.X = p.revisionBox(titles, titles.Max.X)
		}
	}
	right := box.Max.X
	if p.north {
		right = p.northBox(box)
	}
	if p.key != nil {
		right = p.keyBox(box, right)
	}
	if len(p.changes) > 0 && titles == box {
		right = p.revisionBox(box, right)
	}
	left := p.titleCells(box, right, number, of)
	if titles == box {
		titles.Max.X = left
	}
	p.titles(titles)
}

func (p *page) titles(box scene.Rect) {
	x, width := box.Min.X+layout.Gutter, box.Width()-2*layout.Gutter
	big := layout.Style{Size: layout.Title, Bold: true}
	for big.Size > layout.Heading && big.Width(p.b.plan.Header.Title) > width {
		big.Size--
	}
	y := box.Min.Y + 3.2 + big.Cap()
	p.Add(big.At(x, y, big.Fit(p.b.plan.Header.Title, width)))
	name := layout.Style{Size: 8.5}
	y += name.Line() + 0.6
	p.Add(name.At(x, y, name.Fit(p.fullName(), width)))
	lines := p.cautionLines(width, box.Max.Y-1.4-y)
	y = max(y+layout.Fine.Line()+0.4, box.Max.Y-2.6-float64(len(lines)-1)*layout.Fine.Line())
	for _, line := range lines {
		if y <= box.Max.Y-1 {
			p.Add(layout.Fine.At(x, y, line))
		}
		y += layout.Fine.Line()
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

// amended tells what of the edition does not hold here as it stands: local amendments, and
// how many rules are without confirmed figures.
func (b *book) amended() words.Text {
	if n := len(b.result.Unconfirmed()); n > 0 {
		return words.New("sheet.unconfirmed", "{0}, NOT CHECKED by {1} rules whose figures in it are not confirmed", b.changed(), n)
	}
	return b.changed()
}

func (b *book) changed() words.Text {
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
		{p.b.Both("sheet.scale", "Scale"), p.scale},
		{p.b.Both("sheet.number", "Sheet"), p.b.Say("sheet.of", "{0} of {1}", number, of)},
		{p.b.Both("sheet.drawn", "Drawn"), h.Date},
		{p.b.Both("sheet.revision", "Revision"), h.Revision},
		{p.b.Both("sheet.author", "By"), h.Author},
		{p.b.Both("sheet.site", "Site"), h.Site},
		{p.b.Both("sheet.client", "For"), h.Client},
	} {
		if f.value != "" {
			all = append(all, f)
		}
	}
	if len(p.changes) > 0 && p.Paper.MayStand() {
		all = all[:min(len(all), 4)] // who it is by and for stands on the other pages: the caution stands on each
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
	label, value := layout.Style{Size: layout.Small, Muted: true}, layout.Style{Size: 8}
	wide := 0.0
	for _, f := range pair {
		wide = max(wide, label.Width(f.name), min(value.Width(f.value), mostCell))
	}
	x := right - wide - 8
	half := box.Height() / 2
	for k, f := range pair {
		y := box.Min.Y + float64(k)*half + 4.4
		if len(pair) == 1 {
			y += half / 2
		}
		p.Add(label.At(x+4, y, f.name))
		p.Add(value.At(x+4, y+value.Line()+0.6, value.Fit(f.value, wide+0.1)))
	}
	if len(pair) == 2 {
		p.Add(layout.HLine(x, right, box.Min.Y+half, layout.Pen(layout.Hairline)))
	}
	p.Add(layout.VLine(x, box.Min.Y, box.Max.Y, layout.Pen(layout.Hairline)))
	return x
}

// northBox draws the arrow in a box of its own, and returns where that begins.
func (p *page) northBox(box scene.Rect) float64 {
	x := box.Max.X - 17
	p.Add(symbol.North{
		Middle: scene.Point{X: x + 8.5, Y: box.Min.Y + 14.5}, Size: 11, Turn: -float64(p.b.plan.Header.North),
		Letter: p.b.Say("wind.short.n", "N"), Ink: layout.Theme.Ink,
	}.Items()...)
	p.Add(layout.VLine(x, box.Min.Y, box.Max.Y, layout.Pen(layout.Hairline)))
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
		if step = c.step; scene.MM(c.step)*p.b.o.Paper.Times(s) >= 8 {
			labels = c.labels
			break
		}
		labels = c.labels
	}
	bar := symbol.ScaleBar{
		At: at, Step: scene.MM(step) * p.b.o.Paper.Times(s), Height: 1.5, Labels: labels, TextSize: layout.Style{Size: layout.Small}.MM(),
		Line: layout.Pen(layout.Divider).Width, Ink: layout.Theme.Ink, Paper: layout.Theme.Paper,
	}
	p.Add(bar.Items()...)
	text := p.b.Say("sheet.scale-bar", "{0} · {1} on {2}", counts, s.Words(p.b.Voice), p.b.o.Paper.Size(p.b.Voice))
	words := layout.Style{Size: layout.Small}
	x := at.X + bar.Step*float64(len(labels)-1) + layout.Gutter
	p.Add(words.At(x, at.Y+1.6, text))
	return x + words.Width(text)
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

// titleRow puts down the titles of a schedule in one language.
func (g *grid) titleRow(s layout.Style, y float64, v words.Voice) {
	f := g.f
	x := f.Left()
	for _, c := range g.columns {
		text := v.Say(c.title)
		switch {
		case c.title.IsZero():
		case c.right:
			f.page.Add(s.Right().At(x+c.width-layout.CellPad-c.pad, y, text))
		default:
			f.page.Add(s.At(x, y, text))
		}
		x += c.width
	}
}

// cautionLines are those of the title block: in both languages where they have room.
func (p *page) cautionLines(width, tall float64) []string {
	first, second, two := p.b.Apart(p.b.caution)
	lines := layout.Fine.Wrap(first, width)
	if !two {
		return lines
	}
	if more := append(lines, layout.Fine.Wrap(second, width)...); float64(len(more))*layout.Fine.Line() <= tall {
		return more
	}
	return lines
}
