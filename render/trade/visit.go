package trade

import (
	"strconv"

	"studbay/fill/rule"
	"studbay/fill/visit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/table"
)

// Visits lays out the list for a visit before the walls are closed: every box by room with
// what is to be ticked at it, then what will be looked at, the circuits, what to settle
// first and what is not on the list.
func (b *Book) Visits() error {
	list := visit.Of(b.Index, b.Result)
	if list.Boxes == 0 {
		return nil
	}
	f := b.flow(b.Both("visit.title", "Before the rough-in visit: every box, by room"), visitColumn)
	f.Even(func(tall float64) int {
		draft := &flow{&layout.Flow{Least: visitColumn, Tall: tall}, b}
		return draft.Count(f.On.Draft(), func() { (&visitGrid{draft}).lay(list) })
	})
	(&visitGrid{f}).lay(list)
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

func (g *visitGrid) say(t words.Text) string { return g.f.b.Voice.Say(t) }

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
	return g.f.Right() - visitTick*float64(len(visit.Columns)-int(n)) + visitTick/2
}

// header puts down the words over the ticks.
func (g *visitGrid) header() {
	f, s := g.f, layout.Style{Size: layout.Small, Bold: true}
	f.Need(s.Line() + 3*visitRow)
	f.Y += s.Line()
	for _, c := range visit.Columns {
		mid := s
		mid.Align = scene.Center
		f.On.Add(mid.At(g.tickAt(c), f.Y, strconv.Itoa(int(c)+1)+" "+g.say(c.Text())))
	}
	right := g.f.Right() - visitTick*float64(len(visit.Columns))
	f.On.Add(s.Right().At(right-visitCircuit, f.Y, f.b.Say("visit.used", "in³ used / there")))
	f.On.Add(s.Right().At(right, f.Y, f.b.Say("visit.circuit", "circ.")))
	f.Y += 1.4
}

func (g *visitGrid) room(r visit.Room) {
	f, s := g.f, layout.Style{Size: layout.Body, Bold: true}
	f.Space(1.6)
	if !f.Fits(s.Line() + 2*visitRow) {
		f.Next()
		g.header()
	}
	f.Y += s.Line()
	f.On.Add(s.At(f.Left(), f.Y-1, s.Fit(g.say(r.Report.Sentence()), f.Width())))
	f.On.Add(layout.HLine(f.Left()-layout.Overhang, f.Right(), f.Y, layout.Pen(layout.Hairline)))
	shade := false
	for _, b := range r.Boxes {
		if !f.Fits(visitRow) {
			f.Next()
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
		f.On.Add(layout.Band(f.Left()-layout.Overhang, f.Right(), f.Y, visitRow))
	}
	y := f.Y + visitRow - 1.35
	if b.Worst != nil {
		f.On.Add(Mark(*b.Worst, scene.Point{X: f.Left() + 1.1, Y: f.Y + visitRow/2})...)
	}
	f.On.Add(layout.Strong.At(f.Left()+3.2, y, b.Opening.Tag))
	right := f.Right() - visitTick*float64(len(visit.Columns))
	f.On.Add(layout.Plain.Right().At(right, y, layout.Plain.Fit(b.Circuit, visitCircuit-1)))
	f.On.Add(layout.Plain.Right().At(right-visitCircuit, y, table.UsedAndThere(b)))
	what := right - visitCircuit - visitFill - f.Left() - visitTag - 3.2
	f.On.Add(layout.Plain.At(f.Left()+visitTag+3.2, y, layout.Plain.Fit(g.say(table.What(b.Opening)), what)))
	for _, c := range visit.Columns {
		x := g.tickAt(c)
		if !b.Ticks[c].Applies {
			mid := layout.Style{Size: layout.Body, Muted: true, Align: scene.Center}
			f.On.Add(mid.At(x, y, "·"))
			continue
		}
		g.tick(x, f.Y+visitRow/2, b.Ticks[c].Done)
		if within := b.Ticks[c].Beside(g.f.b.Voice.System); within != "" {
			f.On.Add(layout.Fine.At(x+tickSide/2+0.5, y, within))
		}
	}
	f.Y += visitRow
}

// tick draws a square about a point: empty, or with a tick in it that was made.
func (g *visitGrid) tick(x, y float64, done visit.Done) {
	box := scene.Rect{Min: scene.Point{X: x - tickSide/2, Y: y - tickSide/2}, Max: scene.Point{X: x + tickSide/2, Y: y + tickSide/2}}
	g.f.On.Add(scene.Stroke{Path: box.Path(), Pen: layout.Pen(layout.Divider)})
	if done.Is() {
		g.f.On.Add(symbol.DrawSign(symbol.Ticked, scene.Point{X: x + 0.3, Y: y - 0.3}, tickSide*1.2, layout.Theme.Ink, layout.Theme.Paper)...)
	}
}

// points puts down what will be looked at, each with a tick.
func (g *visitGrid) points(list visit.List) {
	f := g.f
	f.Heading(f.b.Both("visit.points", "What will be inspected here"), 12)
	for i, p := range list.Points {
		detail := layout.Fine.Wrap(g.say(p.Detail), f.Width()-10)
		f.Need(layout.Strong.Line() + float64(len(detail))*layout.Fine.Line() + 1)
		f.Y += layout.Strong.Line()
		f.On.Add(layout.Strong.At(f.Left(), f.Y-1, strconv.Itoa(i+1)))
		for j, line := range layout.Strong.Wrap(g.say(p.Title), f.Width()-40) {
			if j > 0 {
				f.Y += layout.Strong.Line()
			}
			f.On.Add(layout.Strong.At(f.Left()+5, f.Y-1, line))
		}
		f.On.Add(layout.Fine.Right().At(f.Right()-5, f.Y-1, p.Section))
		g.tick(f.Right()-tickSide/2, f.Y-1.8, p.Done)
		for _, line := range detail {
			f.Y += layout.Fine.Line()
			f.On.Add(layout.Fine.At(f.Left()+5, f.Y-1, line))
		}
		f.Y++
	}
}

func (g *visitGrid) circuits(all []visit.Circuit) {
	if len(all) == 0 {
		return
	}
	f := g.f
	f.Heading(f.b.Both("visit.circuits", "Circuits and protection"), 12)
	for _, c := range all {
		f.Need(visitRow)
		y := f.Y + visitRow - 1.35
		f.On.Add(layout.Strong.At(f.Left(), y, layout.Plain.Fit(c.Number, 10)))
		f.On.Add(layout.Plain.At(f.Left()+11, y, layout.Plain.Fit(c.Name, f.Width()*0.42)))
		f.On.Add(layout.Plain.At(f.Left()+13+f.Width()*0.42, y, f.b.Say("visit.amps", "{0} A", c.Amps)))
		f.On.Add(layout.Strong.At(f.Left()+26+f.Width()*0.42, y, layout.Strong.Fit(c.Protection(), f.Width()*0.58-34)))
		g.tick(f.Right()-tickSide/2, f.Y+visitRow/2, c.Done)
		f.Y += visitRow
	}
	f.Paragraph(layout.Fine, 0, f.b.Say("visit.letters", "GF is GFCI and AF is AFCI, at the breaker or at the receptacles named."))
}

// settle lists what was found, to be settled before the visit.
func (g *visitGrid) settle(found []rule.Finding) {
	if len(found) == 0 {
		return
	}
	f := g.f
	f.Heading(f.b.Both("visit.settle", "Settle before the visit"), 12)
	for _, one := range found {
		lines := layout.Plain.Wrap(g.say(one.Message), f.Width()-MarkIn-8)
		f.Need(float64(len(lines)) * layout.Plain.Line())
		f.On.Add(Mark(one, scene.Point{X: f.Left() + 1.4, Y: f.Y + layout.Plain.Line()*0.55})...)
		g.tick(f.Right()-tickSide/2, f.Y+layout.Plain.Line()*0.55, nil)
		for _, line := range lines {
			f.Y += layout.Plain.Line()
			f.On.Add(layout.Plain.At(f.Left()+MarkIn, f.Y-layout.Plain.Line()*0.24, line))
		}
		f.Y += 0.8
	}
}

// rest says what is not on the list, and leaves room for who walks it.
func (g *visitGrid) rest(list visit.List) {
	f := g.f
	b := f.b
	if len(list.Missing) > 0 {
		f.Heading(b.Both("visit.missing", "Not drawn, so not on this list"), 6)
		for _, m := range list.Missing {
			f.Bullet(layout.Fine, g.say(m))
		}
	}
	f.Space(2)
	f.Paragraph(layout.Plain, 0, b.Say("visit.count", "{0} boxes, {1} ticks by box; leave none open.", list.Boxes, list.Ticks))
	if list.Ticked > 0 {
		f.Paragraph(layout.Plain, 0, b.Say("visit.ticked", "Ticked so far, by box: {0} of {1}.", list.Ticked, list.Ticks))
	}
	f.Paragraph(layout.Fine, 0, b.Say("visit.aid", "Made from this plan alone. What an inspector asks for is for the inspector to say."))
	f.Need(16)
	f.Y += 12
	half := f.Width() / 2
	for i, who := range []string{b.Say("visit.walked", "Walked by"), b.Say("visit.date", "Date")} {
		x := f.Left() + half*float64(i)
		f.On.Add(layout.HLine(x, x+half-6, f.Y, layout.Pen(layout.Hairline)), layout.Fine.At(x, f.Y+3, who))
	}
	f.Y += 4
}
