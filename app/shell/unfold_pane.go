package shell

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/words"
)

// UnfoldPane is the unfolded room with its heading.
type UnfoldPane struct {
	voice   words.Voice
	title   *look.Text
	second  *look.Text
	sub     *look.Press
	fin     *look.Press
	heading *fyne.Container
	Object  fyne.CanvasObject
}

// NewUnfoldPane makes the pane about the unfolded room; datum is told from which floor
// heights are to be told.
func NewUnfoldPane(v words.Voice, unfold fyne.CanvasObject, datum func(plan.Datum)) *UnfoldPane {
	u := &UnfoldPane{voice: v}
	u.title, u.second = look.NewText("", look.Title), look.NewFlexible("", look.Second)
	second := look.Style{Size: look.SecondSize}
	u.sub = look.NewPress(look.NewText(u.say("datum.short.subfloor", "subfloor"), second), look.Bare, look.Grid, 5, func() { datum(plan.Subfloor) })
	u.fin = look.NewPress(look.NewText(u.say("datum.short.finished", "finished floor"), second), look.Bare, look.Grid, 5, func() { datum(plan.FinishedFloor) })
	u.heading = look.Inset(2*look.Grid, look.Grid/2, look.Grid, 0, look.Row(look.Grid, 1, u.title, u.second, u.sub, u.fin))
	u.Object = look.Back(look.OnSurface, 0, container.NewBorder(u.heading, nil, nil, nil, unfold))
	return u
}

// Show names the room shown, or none, and says what of its face in hand there is to say.
func (u *UnfoldPane) Show(room *plan.Room, face words.Text, datum plan.Datum) {
	defer u.heading.Refresh() // its texts have other widths
	u.sub.SetChosen(datum == plan.Subfloor)
	u.fin.SetChosen(datum != plan.Subfloor)
	if room == nil {
		u.title.SetWords(u.say("pane.none", "No room selected"))
		u.second.SetWords(u.say("pane.none.hint", "Select a room or something in it, and its faces stand here in a row."))
		return
	}
	name := room.Name
	if name == "" {
		name = u.voice.Say(room.Use.Text())
	}
	u.title.SetWords(u.say("pane.title", "{0} unfolded", name))
	u.second.SetWords(u.voice.Say(face))
}

// SetVoice speaks in other units.
func (u *UnfoldPane) SetVoice(v words.Voice) { u.voice = v }

func (u *UnfoldPane) say(id, english string, args ...any) string {
	return u.voice.Say(words.New(id, english, args...))
}
