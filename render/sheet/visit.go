package sheet

import (
	"strconv"

	"studbay/fill/rule"
	"studbay/fill/visit"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/table"
)

// visits lays out the list for a visit before the walls are closed: every box by room with
// what is to be ticked at it, then what will be looked at, the circuits, what to settle
// first and what is not on the list.
func (b *book) visits() error {
	list := visit.Of(b.ix, b.result)
	if list.Boxes == 0 {
		return nil
	}
	name := b.both("visit.title", "Before the rough-in visit: every box, by room")
	onward := b.pagesNamed(name)
	lay := func(f *flow) { (&visitGrid{f}).lay(list) }
	lay(newEvenFlow(b, visitColumn, onward, lay))
	return nil
}

// The widths of the list, in millimetres.
const (
	visitColumn  = 124.0
	visitTag     = 11.0
	visitFill    = 21.0
	visitCircuit = 10.0
	visitTick    = 10.5
	visitRow     = 4.7
	tickSide     = 2.6
)

// visitGrid is the list on its way down a flow.
type visitGrid struct{ f *flow }

func (g *visitGrid) say(t words.Text) string { return g.f.page.b.o.Voice.Say(t) }

func (g *visitGrid) lay(list visit.List) {
	for i, r := range list.Rooms {
		if i == 0 {
			g.header()
		}
		g.room(r)
	}
	g.points(list)
	g.circuits(list.Circuits)
	g.settle(list.Settle)
	g.rest(list)
}

// tickAt is where the n-th tick stands, from the left of the column.
func (g *visitGrid) tickAt(n visit.Column) float64 {
	return g.f.right() - visitTick*float64(len(visit.Columns)-int(n)) + visitTick/2
}

// header puts down the words over the ticks.
func (g *visitGrid) header() {
	f, s := g.f, style{size: small, bold: true}
	f.need(s.line() + 3*visitRow)
	f.y += s.line()
	for _, c := range visit.Columns {
		mid := s
		mid.align = scene.Center
		f.page.add(mid.at(g.tickAt(c), f.y, strconv.Itoa(int(c)+1)+" "+g.say(c.Text())))
	}
	right := g.f.right() - visitTick*float64(len(visit.Columns))
	f.page.add(s.right().at(right-visitCircuit, f.y, f.page.b.say("visit.used", "in³ used / there")))
	f.page.add(s.right().at(right, f.y, f.page.b.say("visit.circuit", "circ.")))
	f.y += 1.4
}

func (g *visitGrid) room(r visit.Room) {
	f, s := g.f, style{size: body, bold: true}
	f.space(1.6)
	if !f.fits(s.line() + 2*visitRow) {
		f.next()
		g.header()
	}
	f.y += s.line()
	f.page.add(s.at(f.left(), f.y-1, s.fit(g.say(r.Report.Sentence()), f.width())))
	f.page.add(hline(f.left()-overhang, f.right(), f.y, pen(hairline)))
	shade := false
	for _, b := range r.Boxes {
		if !f.fits(visitRow) {
			f.next()
			g.header()
			shade = false
		}
		g.box(b, shade)
		shade = !shade
	}
}

// box puts down one row: what it is, how full, its circuit and what is to be ticked.
func (g *visitGrid) box(b visit.Box, shade bool) {
	f := g.f
	if shade {
		f.page.add(band(f.left()-overhang, f.right(), f.y, visitRow))
	}
	y := f.y + visitRow - 1.35
	if b.Worst != nil {
		f.page.add(markFor(*b.Worst, scene.Point{X: f.left() + 1.1, Y: f.y + visitRow/2})...)
	}
	f.page.add(strong.at(f.left()+3.2, y, b.Opening.Tag))
	right := f.right() - visitTick*float64(len(visit.Columns))
	f.page.add(plain.right().at(right, y, plain.fit(b.Circuit, visitCircuit-1)))
	f.page.add(plain.right().at(right-visitCircuit, y, g.fill(b)))
	what := right - visitCircuit - visitFill - f.left() - visitTag - 3.2
	f.page.add(plain.at(f.left()+visitTag+3.2, y, plain.fit(g.say(table.What(b.Opening)), what)))
	for _, c := range visit.Columns {
		x := g.tickAt(c)
		if !b.Ticks[c].Applies {
			mid := style{size: body, muted: true, align: scene.Center}
			f.page.add(mid.at(x, y, "·"))
			continue
		}
		g.tick(x, f.y+visitRow/2)
		if in := b.Ticks[c].Inches; in > 0 {
			f.page.add(fine.at(x+tickSide/2+0.5, y, strconv.Itoa(in)))
		}
	}
	f.y += visitRow
}

// tick draws an empty square about a point.
func (g *visitGrid) tick(x, y float64) {
	box := scene.Rect{Min: scene.Point{X: x - tickSide/2, Y: y - tickSide/2}, Max: scene.Point{X: x + tickSide/2, Y: y + tickSide/2}}
	g.f.page.add(scene.Stroke{Path: box.Path(), Pen: pen(divider)})
}

func (g *visitGrid) fill(b visit.Box) string {
	in3 := func(v unit.Volume) string {
		if v == 0 {
			return "–"
		}
		return v.String()
	}
	if b.There == 0 {
		return "–"
	}
	return in3(b.Used) + " / " + in3(b.There)
}

// points puts down what will be looked at, each with a tick.
func (g *visitGrid) points(list visit.List) {
	f := g.f
	f.heading(f.page.b.both("visit.points", "What will be inspected here"), 12)
	for i, p := range list.Points {
		detail := fine.wrap(g.say(p.Detail), f.width()-10)
		f.need(strong.line() + float64(len(detail))*fine.line() + 1)
		f.y += strong.line()
		f.page.add(strong.at(f.left(), f.y-1, strconv.Itoa(i+1)))
		for j, line := range strong.wrap(g.say(p.Title), f.width()-40) {
			if j > 0 {
				f.y += strong.line()
			}
			f.page.add(strong.at(f.left()+5, f.y-1, line))
		}
		f.page.add(fine.right().at(f.right()-5, f.y-1, p.Section))
		g.tick(f.right()-tickSide/2, f.y-1.8)
		for _, line := range detail {
			f.y += fine.line()
			f.page.add(fine.at(f.left()+5, f.y-1, line))
		}
		f.y++
	}
}

func (g *visitGrid) circuits(all []visit.Circuit) {
	if len(all) == 0 {
		return
	}
	f := g.f
	f.heading(f.page.b.both("visit.circuits", "Circuits and protection"), 12)
	for _, c := range all {
		f.need(visitRow)
		y := f.y + visitRow - 1.35
		f.page.add(strong.at(f.left(), y, plain.fit(c.Number, 10)))
		f.page.add(plain.at(f.left()+11, y, plain.fit(c.Name, f.width()*0.42)))
		f.page.add(plain.at(f.left()+13+f.width()*0.42, y, f.page.b.say("visit.amps", "{0} A", c.Amps)))
		f.page.add(strong.at(f.left()+26+f.width()*0.42, y, strong.fit(c.Protection(), f.width()*0.58-34)))
		g.tick(f.right()-tickSide/2, f.y+visitRow/2)
		f.y += visitRow
	}
	f.paragraph(fine, 0, f.page.b.say("visit.letters", "GF is GFCI and AF is AFCI, at the breaker or at the receptacles named."))
}

// settle lists what was found, to be settled before the visit.
func (g *visitGrid) settle(found []rule.Finding) {
	if len(found) == 0 {
		return
	}
	f := g.f
	f.heading(f.page.b.both("visit.settle", "Settle before the visit"), 12)
	for _, one := range found {
		lines := plain.wrap(g.say(one.Message), f.width()-markIn-8)
		f.need(float64(len(lines)) * plain.line())
		f.page.add(markFor(one, scene.Point{X: f.left() + 1.4, Y: f.y + plain.line()*0.55})...)
		g.tick(f.right()-tickSide/2, f.y+plain.line()*0.55)
		for _, line := range lines {
			f.y += plain.line()
			f.page.add(plain.at(f.left()+markIn, f.y-plain.line()*0.24, line))
		}
		f.y += 0.8
	}
}

// rest says what is not on the list, and leaves room for who walks it.
func (g *visitGrid) rest(list visit.List) {
	f := g.f
	b := f.page.b
	if len(list.Missing) > 0 {
		f.heading(b.both("visit.missing", "Not drawn, so not on this list"), 6)
		for _, m := range list.Missing {
			f.bullet(fine, g.say(m))
		}
	}
	f.space(2)
	f.paragraph(plain, 0, b.say("visit.count", "{0} boxes, {1} ticks by box; leave none open.", list.Boxes, list.Ticks))
	f.paragraph(fine, 0, b.say("visit.aid", "Made from this plan alone. What an inspector asks for is for the inspector to say."))
	f.need(16)
	f.y += 12
	half := f.width() / 2
	for i, who := range []string{b.say("visit.walked", "Walked by"), b.say("visit.date", "Date")} {
		x := f.left() + half*float64(i)
		f.page.add(hline(x, x+half-6, f.y, pen(hairline)), fine.at(x, f.y+3, who))
	}
	f.y += 4
}
