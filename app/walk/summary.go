package walk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
	"studbay/render/tell"
)

// Asked is a change that the client asked for or a question, with the room that it is in.
type Asked struct {
	Room    *plan.Room
	Opening tell.Opening
	Kind    plan.WishKind
	Note    string
}

// Asked lists what the client asks, room by room in the order of the walk.
func (t *Tour) Asked() (all []Asked) {
	for _, r := range t.rooms {
		for _, o := range tell.Room(t.host.Index(), r.ID) {
			if kind := t.Answer(o.Opening.ID); kind == plan.WishChange || kind == plan.WishQuestion {
				all = append(all, Asked{r, o, kind, t.Note(o.Opening.ID)})
			}
		}
	}
	return all
}

func isInitials(k plan.WishKind) bool { return k == plan.WishInitials }

// Initials are those that the client put to a room, or nothing.
func (t *Tour) Initials(room plan.ID) string {
	if w := t.wish(room, isInitials); w != nil {
		return w.Note
	}
	return ""
}

// Initial keeps the client's initials to a room, with the day; none takes them back.
func (t *Tour) Initial(room plan.ID, initials string) error {
	was := t.wish(room, isInitials)
	switch {
	case was == nil && initials == "" || was != nil && was.Note == initials:
		return nil
	case initials == "":
		return t.keep(edit.Remove{Things: []plan.ID{was.ID}})
	}
	var edits []edit.Edit
	if was != nil {
		edits = append(edits, edit.Remove{Things: []plan.ID{was.ID}})
	}
	now := &plan.Wish{ID: work.NewID(plan.KindWish), Kind: plan.WishInitials, About: room, Note: initials, By: t.by(), Date: t.host.Today()}
	return t.keep(edit.Steps{Edits: append(edits, edit.Add{Thing: now})})
}

// showSummary shows, in place of what is spoken of, what was said of the whole house.
func (w *Walk) showSummary() {
	if !w.keepNote() {
		return
	}
	w.note = nil
	w.isSummary = true
	w.column.Objects = []fyne.CanvasObject{look.Back(look.OnSurface, 0, w.summary())}
	w.rooms.Objects = []fyne.CanvasObject{look.Back(look.OnPaper, 0, w.roomRow())}
	w.column.Refresh()
	w.rooms.Refresh()
}

// summary is whose word it is and of which day, each room with a place for initials, and all
// that is asked.
func (w *Walk) summary() fyne.CanvasObject {
	inner := look.Scaled(columnWide - 2*columnPad)
	voice := w.host.Voice()
	line := func(text string, s look.Style) fyne.CanvasObject { return look.NewParagraph(text, s, inner) }
	parts := []fyne.CanvasObject{
		look.Row(look.Grid, 0, look.NewFlexible(w.say("walk.summary", "Summary"), look.Style{Size: sizeHead, Bold: true}), w.leave()),
		line(w.whose(), look.Style{Size: sizeState}),
		line(w.say("walk.initial-how", "Initials say that a room was gone through. They say nothing about the code."), look.Style{Size: sizeState, Tone: look.Muted}),
	}
	for i, r := range w.tour.rooms {
		initials := look.NewEntry()
		initials.SetPlaceHolder(w.say("walk.initials", "Initials"))
		initials.SetText(w.tour.Initials(r.ID))
		keep := func() {
			if err := w.tour.Initial(r.ID, initials.Text); err != nil {
				w.eye.title = look.ErrorText(voice, err)
				w.eye.Refresh()
			}
		}
		initials.OnSubmitted = func(string) { giveKeys(initials) } // it leaves them, which keeps them
		initials.OnEscape = func() { giveKeys(initials) }
		initials.OnLeave = keep
		told := look.Column(2, look.NewFlexible(w.roomName(r), look.Style{Size: sizePress, Bold: true}),
			look.NewText(voice.Say(w.tour.Tally(i).Text()), look.Style{Size: sizeState, Tone: look.Muted}))
		parts = append(parts, look.Row(12, 0, told, look.Sized(look.Scaled(132), look.Scaled(52), look.Larger(initials, sizeState))))
	}
	for _, a := range w.tour.Asked() {
		text := voice.Say(words.New("walk.asked", "{0}: {1}, {2}", a.Kind.Text(), w.roomName(a.Room), a.Opening.Headline()))
		if wished := w.tour.wished(a.Opening.Opening.ID); !wished.IsZero() {
			text = voice.Say(words.New("walk.asked-drawn", "{0}, {1}", text, wished))
		}
		if a.Note != "" {
			text = voice.Say(words.New("walk.asked-note", "{0}: “{1}”", text, a.Note))
		}
		parts = append(parts, line(text, look.Style{Size: sizeState}))
	}
	parts = append(parts, w.changed(inner)...)
	return look.Wheeled(container.NewVScroll(look.Inset(columnPad, 20, columnPad, 20, look.Column(14, parts...))))
}

// changed lists what changed since the walk before, where one is kept, or says that it cannot be
// told.
func (w *Walk) changed(inner float32) (parts []fyne.CanvasObject) {
	if w.tour.head.IsZero() {
		return nil
	}
	voice := w.host.Voice()
	parts = append(parts, look.HairLine(), look.NewParagraph(voice.Say(w.tour.head), look.Style{Size: sizePress, Bold: true}, inner))
	for _, c := range w.tour.since.Changes {
		parts = append(parts, look.NewParagraph(voice.Say(c.Line()), look.Style{Size: sizeState}, inner))
	}
	return parts
}

// whose says whose word it is, and of which day.
func (w *Walk) whose() string {
	if by := w.tour.by(); by != "" {
		return w.say("walk.whose", "{0}, {1}", by, w.host.Today())
	}
	return w.host.Today()
}
