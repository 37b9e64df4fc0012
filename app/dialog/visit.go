package dialog

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill/visit"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/table"
)

// The measures of the list for a visit.
const (
	visitTag     = 56
	visitWhat    = 236
	visitFill    = 112
	visitCircuit = 52
	visitTick    = 66
	visitWidth   = visitTag + visitWhat + visitFill + visitCircuit + 5*visitTick + look.Grid
	visitHeight  = 560
)

// visitList is the list for a visit in the window: one room of it, or what is of the whole
// house, with its ticks.
type visitList struct {
	stage *Stage
	of    Chosen
	do    func(edit.Edit) error
	list  visit.List
	room  plan.ID // empty: the whole house

	which *look.Choice
	sum   *look.Text
	rows  *fyne.Container
	view  *container.Scroll
	ticks []*look.Press
}

// ShowVisit shows what an inspector will check, to be ticked: each tick is a step of its own.
func (s *Stage) ShowVisit(of Chosen, do func(edit.Edit) error) {
	title := s.say("visit.title", "Before the rough-in visit: every box, by room")
	v := &visitList{stage: s, of: of, do: do, list: visit.Of(of.Index(), of.Result()), sum: look.NewText("", look.Strong), rows: look.Column(2)}
	if v.list.Boxes == 0 {
		s.Tell(title, s.say("visit.none", "No new box is drawn yet. Each that you place is listed here by its room, with what an inspector checks before the walls are closed."))
		return
	}
	v.room = v.list.Rooms[0].Room.ID
	v.which = look.NewChoice(s.say("visit.room", "Room"), "", v.rooms)
	v.which.SetWidth(look.Scaled(visitWidth - 180))
	v.which.Finds(s.voice)
	v.view = container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, v.rows))
	v.refill()
	head := look.Inset(0, 0, 2*look.Grid, look.Grid, look.Row(2*look.Grid, 0, v.which, v.sum))
	s.Spread(title, visitWidth+4*look.Grid, visitHeight, container.NewBorder(head, nil, nil, nil, look.Wheeled(v.view)))
}

func (v *visitList) say(t words.Text) string { return v.stage.voice.Say(t) }

// rooms are what can be shown: the whole house, then each room with how much of it is ticked.
func (v *visitList) rooms() (all []look.Option) {
	add := func(label string, room plan.ID) {
		all = append(all, look.Option{Label: label, Now: room == v.room, Do: func() {
			v.room = room
			v.which.Update()
			v.refill()
			v.view.ScrollToTop()
		}})
	}
	add(v.stage.say("visit.house", "The whole house"), "")
	for _, r := range v.list.Rooms {
		done, of := r.Count()
		add(v.stage.say("visit.room-count", "{0}: {1} of {2} ticked", r.Room.Name, done, of), r.Room.ID)
	}
	return all
}

// refill makes the rows anew.
func (v *visitList) refill() {
	v.rows.Objects, v.ticks = nil, nil
	v.sum.SetWords(v.stage.say("visit.sum", "{0} of {1} ticked", v.list.Ticked, v.list.Ticks))
	if v.room == "" {
		v.house()
	}
	for _, r := range v.list.Rooms {
		if r.Room.ID == v.room {
			v.boxes(r)
		}
	}
	v.rows.Refresh()
}

// turn ticks a place of the list or takes its tick back.
func (v *visitList) turn(at int, done visit.Done, about plan.ID, what string) {
	if v.do(done.Turned(&plan.Tick{ID: work.NewID(plan.KindTick), About: about, What: what, Date: time.Now().Format(time.DateOnly)})) != nil {
		return
	}
	v.list = visit.Of(v.of.Index(), v.of.Result())
	v.which.Update()
	v.refill()
	if at < len(v.ticks) {
		v.stage.canvas().Focus(v.ticks[at])
	}
}

// tick is one tick with what stands beside it; the arrows go on to others.
func (v *visitList) tick(done visit.Done, about plan.ID, what, beside string) fyne.CanvasObject {
	const side = 18
	at := len(v.ticks)
	box := look.NewPicture(side, side, func(w, h float64, p *look.Palette) []scene.Item {
		frame := scene.Rect{Min: scene.Point{X: 1.5, Y: 1.5}, Max: scene.Point{X: w - 1.5, Y: h - 1.5}}
		items := []scene.Item{scene.Stroke{Path: frame.Path(), Pen: scene.Pen{Width: 1.2, Color: p.Ink}}}
		if done.Is() {
			items = append(items, symbol.DrawSign(symbol.Ticked, scene.Point{X: w / 2, Y: h / 2}, w*.8, p.Accent, p.Surface)...)
		}
		return items
	})
	press := look.NewPress(look.Row(look.Grid/2, -1, box, look.NewText(beside, look.Second)), look.Bare, look.Grid/2, look.Grid/2, func() { v.turn(at, done, about, what) })
	press.OnKey = func(key fyne.KeyName) bool {
		to := at
		switch key {
		case fyne.KeyDown, fyne.KeyRight:
			to++
		case fyne.KeyUp, fyne.KeyLeft:
			to--
		default:
			return false
		}
		if 0 <= to && to < len(v.ticks) {
			v.stage.canvas().Focus(v.ticks[to])
		}
		return true
	}
	v.ticks = append(v.ticks, press)
	return look.Sized(0, look.HitTarget, press)
}

// boxes puts down the boxes of a room with their ticks.
func (v *visitList) boxes(r visit.Room) {
	right := look.Style{Size: look.SecondSize, Tone: look.Muted, Align: fyne.TextAlignTrailing}
	head := []fyne.CanvasObject{look.Sized(visitTag, 0, look.NewText("", look.Second)), look.Sized(visitWhat, 0, look.NewText("", look.Second)),
		look.Sized(visitFill, 0, look.NewText(v.stage.say("visit.used", "in³ used / there"), right)), look.Sized(visitCircuit, 0, look.Inset(0, 0, look.Grid, 0, look.NewText(v.stage.say("visit.circuit", "circ."), right)))}
	for _, c := range visit.Columns {
		head = append(head, look.Sized(visitTick, 0, look.Inset(look.Grid, 0, 0, 0, look.NewText(v.say(c.Text()), look.Second))))
	}
	v.rows.Add(look.NewParagraph(v.say(r.Report.Sentence()), look.Strong, look.Scaled(visitWidth)))
	v.rows.Add(look.Row(0, -1, head...))
	v.rows.Add(look.HairLine())
	for _, b := range r.Boxes {
		v.rows.Add(v.box(b, right))
	}
}

func (v *visitList) box(b visit.Box, right look.Style) fyne.CanvasObject {
	row := []fyne.CanvasObject{
		look.Sized(visitTag, 0, look.NewText(b.Opening.Tag, look.Strong)), look.Sized(visitWhat, 0, look.NewFlexible(v.say(table.What(b.Opening)), look.Body)),
		look.Sized(visitFill, 0, look.NewText(table.UsedAndThere(b), right)), look.Sized(visitCircuit, 0, look.Inset(0, 0, look.Grid, 0, look.NewText(b.Circuit, right))),
	}
	for _, c := range visit.Columns {
		t := b.Ticks[c]
		var cell fyne.CanvasObject = look.Inset(look.Grid, 0, 0, 0, look.NewText("·", look.Quiet))
		if t.Applies {
			cell = v.tick(t.Done, b.Opening.ID, c.ID(), t.Beside(v.stage.voice.System))
		}
		row = append(row, look.Sized(visitTick, look.HitTarget, cell))
	}
	return look.Row(0, -1, row...)
}

// house puts down what is looked at in the whole house: points, circuits, what is to be
// settled, and what is not on the list.
func (v *visitList) house() {
	width := look.Scaled(visitWidth - 60)
	line := func(tick fyne.CanvasObject, title, under string) {
		text := look.Column(0, look.NewParagraph(title, look.Strong, width))
		if under != "" {
			text.Add(look.NewParagraph(under, look.Quiet, width))
		}
		v.rows.Add(look.TopRow(look.Grid, 1, tick, look.Inset(0, look.Grid/2, 0, 0, text)))
	}
	v.heading("visit.points", "What will be inspected here")
	for _, p := range v.list.Points {
		under := v.say(p.Detail)
		if p.Section != "" {
			under += " [" + p.Section + "]"
		}
		line(v.tick(p.Done, "", p.ID, ""), v.say(p.Title), under)
	}
	if len(v.list.Circuits) > 0 {
		v.heading("visit.circuits", "Circuits and protection")
	}
	for _, c := range v.list.Circuits {
		line(v.tick(c.Done, c.ID, visit.Protection, ""), v.stage.say("visit.circuit-line", "{0}  {1}, {2} A  {3}", c.Number, c.Name, c.Amps, c.Protection()), "")
	}
	if len(v.list.Settle) > 0 {
		v.heading("visit.settle", "Settle before the visit")
	}
	for _, f := range v.list.Settle {
		v.rows.Add(look.TopRow(look.Grid, 1, look.NewMark(render.MarkOf(&f)), look.NewParagraph(v.say(f.Message), look.Body, width)))
	}
	if len(v.list.Missing) > 0 {
		v.heading("visit.missing", "Not drawn, so not on this list")
	}
	for _, m := range v.list.Missing {
		v.rows.Add(look.NewParagraph("· "+v.say(m), look.Body, width))
	}
	v.rows.Add(look.Gap(1, look.Grid))
	v.rows.Add(look.NewParagraph(v.stage.say("visit.aid", "Made from this plan alone. What an inspector asks for is for the inspector to say."), look.Quiet, width))
}

func (v *visitList) heading(id, english string) {
	v.rows.Add(look.Gap(1, look.Grid))
	v.rows.Add(look.NewText(v.stage.say(id, english), look.Strong))
	v.rows.Add(look.HairLine())
}
