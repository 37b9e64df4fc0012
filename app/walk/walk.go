package walk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/tell"
	"studbay/render/view"
)

// The sizes of the walk, in units: twice the editor's, to be read from two metres.
const (
	sizeRoom  = 40
	sizeHead  = 36
	sizeTold  = 26
	sizePress = 22
	sizeState = 20

	columnWide = 448
	columnPad  = 32
	fieldTall  = 262
	leastField = 90 // of less of the plan nothing is made out
	stepTall   = 80
	roomsTall  = 104
)

// Walk shows a tour.
type Walk struct {
	Object fyne.CanvasObject
	tour   *Tour
	host   Host
	eye    *eye
	column *fyne.Container
	step   *fyne.Container
	rooms  *fyne.Container
	note   *look.Entry

	isSummary bool // in place of what is spoken of
}

// New makes the walk through a plan, beginning in a room.
func New(h Host, room plan.ID) *Walk {
	w := &Walk{host: h, tour: NewTour(h, room), column: bare(), step: bare(), rooms: bare()}
	w.eye = newEye(func(id plan.ID) { w.tour.Speak(id); w.show() })
	w.eye.settle = w.settle
	w.eye.draw = func(id plan.ID, to view.Spot) {
		if w.keepNote() {
			w.said(w.tour.Draw(id, to))
		}
	}
	w.Object = &fyne.Container{Layout: w, Objects: []fyne.CanvasObject{w.eye, w.column, w.step, w.rooms}}
	w.show()
	return w
}

func bare() *fyne.Container { return &fyne.Container{Layout: filling{}} }

// filling gives each object all the room there is.
type filling struct{}

func (filling) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		o.Resize(size)
	}
}

func (filling) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, 0) }

// Layout implements fyne.Layout: the view at the left to three edges, the column at the
// right, the steps under the view, the rooms over the whole foot.
func (w *Walk) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	wide, foot, step := look.Scaled(columnWide), look.Scaled(roomsTall), look.Scaled(stepTall)
	at := func(o fyne.CanvasObject, x, y, width, height float32) {
		o.Move(fyne.NewPos(x, y))
		o.Resize(fyne.NewSize(max(0, width), max(0, height)))
	}
	view := size.Width - wide
	at(w.eye, 0, 0, view, size.Height-foot-step)
	at(w.step, 0, size.Height-foot-step, view, step)
	at(w.column, view, 0, wide, size.Height-foot)
	at(w.rooms, 0, size.Height-foot, size.Width, foot)
}

// MinSize implements fyne.Layout.
func (w *Walk) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(900, 640) }

func (w *Walk) say(id, english string, args ...any) string {
	return w.host.Voice().Say(words.New(id, english, args...))
}

// show brings everything up to where the tour is.
func (w *Walk) show() {
	if w.tour.IsEmpty() {
		w.column.Objects = []fyne.CanvasObject{look.Back(look.OnSurface, 0, look.Inset(32, 32, 32, 32,
			look.Column(24, look.NewParagraph(w.say("walk.empty", "There is no opening in this plan yet."), look.Style{Size: sizeTold}, look.Scaled(384)), w.leave())))}
		w.column.Refresh()
		return
	}
	o := w.tour.Opening()
	w.isSummary = false
	w.eye.title = w.roomName(w.tour.Room())
	w.eye.asked, w.eye.parts = w.asked(), w.tour.parts()
	w.eye.show(w.host.Index(), w.tour.Room().ID, o.Opening.ID, w.tour.Lit())
	w.column.Objects = []fyne.CanvasObject{look.Back(look.OnSurface, 0, w.told())}
	w.step.Objects = []fyne.CanvasObject{look.Back(look.OnSurface, 0, w.steps())}
	w.rooms.Objects = []fyne.CanvasObject{look.Back(look.OnPaper, 0, w.roomRow())}
	for _, c := range []*fyne.Container{w.column, w.step, w.rooms} {
		c.Refresh()
	}
}

func (w *Walk) leave() *look.Press {
	return look.NewPress(look.NewText(w.say("walk.leave", "Leave"), look.Style{Size: sizePress}), look.Boxed, 16, 10, w.end)
}

// end leaves the walk, once what was said is kept.
func (w *Walk) end() {
	if err := w.Done(); err != nil {
		w.said(err)
		return
	}
	w.host.Leave()
}

// Done keeps what is written, and that the house was walked through.
func (w *Walk) Done() error {
	w.keepNote()
	return w.tour.Done()
}

// told is the column: the plan, what is spoken of in plain words, and the answers.
func (w *Walk) told() fyne.CanvasObject {
	o, inner := w.tour.Opening(), look.Scaled(columnWide-2*columnPad)
	voice := w.host.Voice()
	title := ""
	if h := w.host.Index().Plan().Header; h != nil {
		title = h.Title
	}
	head := look.Row(look.Grid, 0, look.NewFlexible(title, look.Style{Size: sizePress, Bold: true}), w.leave())
	parts := []fyne.CanvasObject{
		head, newField(w),
		look.NewParagraph(voice.Say(o.Headline()), look.Style{Size: sizeHead, Bold: true}, inner),
		look.NewParagraph(voice.Say(o.Figures()), look.Style{Size: sizeTold}, inner),
	}
	if changed := w.tour.Changed(o.Opening.ID); !changed.IsZero() {
		parts = append(parts, look.NewParagraph(voice.Say(changed), look.Style{Size: sizeState, Bold: true, Tone: look.Warn}, inner))
	}
	if wished := w.tour.wished(o.Opening.ID); !wished.IsZero() {
		parts = append(parts, look.NewParagraph(w.say("walk.wished", "Asked for: {0}", wished), look.Style{Size: sizeState, Bold: true, Tone: look.Warn}, inner))
	}
	if !o.Lit.IsZero() {
		parts = append(parts, look.NewParagraph(voice.Say(o.Lit), look.Style{Size: sizePress, Bold: true, Tone: look.Accent}, inner))
	}
	if len(o.Lights) > 0 {
		text := w.say("walk.turn-on", "Turn it on")
		if w.tour.IsPressed(o.Opening.ID) {
			text = w.say("walk.turn-off", "Turn it off")
		}
		p := look.NewPress(look.Centred(look.NewText(text, look.Style{Size: sizePress, Bold: true})), look.Boxed, 16, 14, w.press)
		p.SetChosen(w.tour.IsPressed(o.Opening.ID))
		parts = append(parts, p)
	}
	column := &fyne.Container{Layout: spare{gap: 14, least: leastField, at: 1}, Objects: append(parts, w.answers(o.Opening.ID)...)}
	return look.Wheeled(container.NewVScroll(look.Inset(columnPad, 20, columnPad, 20, column)))
}

// answers are the three answers and the note to what is spoken of.
func (w *Walk) answers(about plan.ID) []fyne.CanvasObject {
	row := []fyne.CanvasObject{}
	given := w.tour.Answer(about)
	for _, a := range []struct {
		kind plan.WishKind
		text string
	}{
		{plan.WishAgreed, w.say("page.agreed", "Agreed")},
		{plan.WishChange, w.say("page.change", "Change")},
		{plan.WishQuestion, w.say("page.question", "Question")},
	} {
		frame := look.Boxed
		if given == a.kind {
			frame = look.Solid
		}
		style := look.Style{Size: sizePress, Bold: true}
		if given == a.kind {
			style.Tone = look.OnAccent
		}
		row = append(row, look.Sized(look.Scaled(122), look.Scaled(72), look.NewPress(look.Centred(look.NewText(a.text, style)), frame, 4, 4, func() { w.answer(a.kind) })))
	}
	w.note = look.NewEntry()
	w.note.SetPlaceHolder(w.say("page.your-note", "What you would like"))
	w.note.SetText(w.tour.Note(about))
	w.note.OnSubmitted = func(string) { giveKeys(w.note) } // it leaves the note, which keeps it
	w.note.OnEscape = func() { giveKeys(w.note) }
	w.note.OnLeave = func() { w.keepNote() }
	return []fyne.CanvasObject{look.Row(9, -1, row...), look.Larger(w.note, sizeState)}
}

// answer keeps an answer, with what is written.
func (w *Walk) answer(kind plan.WishKind) {
	if w.keepNote() {
		w.said(w.tour.Say(kind))
	}
}

// keepNote keeps what is written. It reports false where the plan refuses it: it stays in the
// field then, and why is said above.
func (w *Walk) keepNote() bool {
	if w.note == nil || w.tour.IsEmpty() {
		return true
	}
	err := w.tour.Write(w.note.Text)
	if err != nil {
		w.eye.title = look.ErrorText(w.host.Voice(), err)
		w.eye.Refresh()
	}
	return err == nil
}

// said shows what was kept, or why it was not.
func (w *Walk) said(err error) {
	w.show()
	if err != nil {
		w.eye.title = look.ErrorText(w.host.Voice(), err)
		w.eye.Refresh()
	}
}

// press turns what the switch spoken of works on or off.
func (w *Walk) press() {
	o := w.tour.Opening()
	w.tour.Press(o.Opening.ID)
	w.show()
	if w.tour.IsPressed(o.Opening.ID) && len(o.Lights) > 0 {
		w.eye.turnTo(o.Lights[0])
		w.eye.Refresh()
	}
}

// steps is the row under the view: back, one mark an opening, next.
func (w *Walk) steps() fyne.CanvasObject {
	side := func(by int, arrow string) fyne.CanvasObject {
		name := look.NewText(w.host.Voice().Say(w.tour.Beside(by)), look.Style{Size: sizePress})
		frame := look.Boxed
		style := look.Style{Size: 26, Bold: true}
		if by > 0 {
			frame, style.Tone = look.Solid, look.OnAccent
		}
		p := look.Sized(look.Scaled(56), look.Scaled(56), look.NewPress(look.Centred(look.NewText(arrow, style)), frame, 4, 4, func() { w.stepBy(by) }))
		if by < 0 {
			return look.Row(16, -1, p, name)
		}
		return look.Row(16, -1, name, p)
	}
	return look.Inset(24, 12, 24, 12, look.Row(16, 1, side(-1, "‹"), look.Centred(look.NewPicture(24*float32(min(len(w.tour.openings), 24)), 28, w.dots)), side(1, "›")))
}

func (w *Walk) stepBy(by int) {
	if !w.keepNote() {
		return
	}
	w.tour.Step(by)
	w.show()
}

// roomRow lists the rooms over the foot, with how far the client is with each.
func (w *Walk) roomRow() fyne.CanvasObject {
	var all []fyne.CanvasObject
	for i, r := range w.tour.rooms {
		state := look.NewText(w.host.Voice().Say(w.tour.Tally(i).Text()), look.Style{Size: sizeState, Tone: look.Muted})
		p := look.NewPress(look.Column(2, look.NewText(w.roomName(r), look.Style{Size: sizePress, Bold: i == w.tour.room}), state), look.Bare, 16, 8, func() { w.enter(i) })
		p.SetChosen(i == w.tour.room && !w.isSummary)
		all = append(all, p)
	}
	sum := look.NewPress(look.NewText(w.say("walk.summary", "Summary"), look.Style{Size: sizePress, Bold: true}), look.Boxed, 16, 14, w.showSummary)
	sum.SetChosen(w.isSummary)
	rooms := container.NewHScroll(look.Row(8, -1, all...))
	inSight := &fyne.Container{Layout: inView{rooms, all[w.tour.room]}, Objects: []fyne.CanvasObject{rooms}}
	return look.Inset(24, 12, 24, 12, look.Row(8, 0, inSight, sum))
}

// roomName is what a room is called, with its level where another one is called the same.
func (w *Walk) roomName(r *plan.Room) string {
	return w.host.Voice().Say(tell.RoomApart(w.host.Index(), r))
}

// ByRoom goes on or back by so many rooms.
func (w *Walk) ByRoom(by int) {
	if !w.tour.IsEmpty() {
		w.enter(w.tour.room + by)
	}
}

func (w *Walk) enter(room int) {
	w.keepNote()
	w.tour.Enter(room)
	w.show()
}

// Key does what a key asks for; those of remotes are among them.
func (w *Walk) Key(e *fyne.KeyEvent) {
	if w.tour.IsEmpty() {
		if e.Name == fyne.KeyEscape {
			w.host.Leave()
		}
		return
	}
	turn := float64(0)
	mod := fyne.KeyModifier(0)
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		mod = d.CurrentKeyModifiers()
	}
	switch {
	case mod&fyne.KeyModifierShift != 0 && e.Name == fyne.KeyRight:
		turn = 10
	case mod&fyne.KeyModifierShift != 0 && e.Name == fyne.KeyLeft:
		turn = -10
	}
	if turn != 0 {
		w.eye.turn(turn)
		return
	}
	if do := w.keys()[e.Name]; do != nil {
		do()
	}
}

// keys is what each key without a modifier does.
func (w *Walk) keys() map[fyne.KeyName]func() {
	next, back := func() { w.stepBy(1) }, func() { w.stepBy(-1) }
	return map[fyne.KeyName]func(){
		fyne.KeyRight: next, fyne.KeyPageDown: next, fyne.KeySpace: next,
		fyne.KeyLeft: back, fyne.KeyPageUp: back,
		fyne.KeyA: func() { w.answer(plan.WishAgreed) }, fyne.KeyC: func() { w.answer(plan.WishChange) }, fyne.KeyQ: func() { w.answer(plan.WishQuestion) },
		fyne.KeyN: func() { focusOn(w.note) }, fyne.Key1: w.press, fyne.KeyL: w.press,
		fyne.KeyPlus: func() { w.eye.widen(-5) }, fyne.KeyMinus: func() { w.eye.widen(5) }, fyne.KeyHome: w.eye.home,
		fyne.KeyS:      w.showSummary,
		fyne.KeyEscape: w.end,
	}
}

// giveKeys takes the keys from an entry, so that they are those of the walk again.
func giveKeys(e *look.Entry) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(e); c != nil {
		c.Unfocus()
	}
}

func focusOn(e *look.Entry) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(e); c != nil {
		c.Focus(e)
	}
}
