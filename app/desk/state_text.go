package desk

import (
	"studbay/plan"
	"studbay/plan/words"
)

// windowTitle is what the desktop shows of the window.
func (d *Desk) windowTitle() string {
	title := d.doc().Title() + " · " + appName
	if d.doc().IsDirty() {
		return "• " + title
	}
	return title
}

// stateText says whether the plan is saved.
func (d *Desk) stateText() string {
	switch {
	case d.doc().IsDirty():
		return d.voice.say("state.dirty", "· not saved")
	case d.doc().Path() == "":
		return ""
	}
	return d.voice.say("state.saved", "· saved {0}", d.doc().SavedAt().Format("15:04"))
}

// editionText says what the plan is checked by.
func (d *Desk) editionText() string {
	if err := d.doc().CheckError(); err != nil {
		return d.voice.say("edition.trouble", "Not checked")
	}
	figures := d.doc().Result().Figures
	switch {
	case figures == nil:
		return ""
	case len(figures.Amendments) == 0:
		return figures.Title
	case len(figures.Amendments) == 1:
		return d.voice.say("edition.amended-one", "{0} · 1 amendment", figures.Title)
	}
	return d.voice.say("edition.amended", "{0} · {1} amendments", figures.Title, len(figures.Amendments))
}

// faceText says what the face in hand is made of.
func (d *Desk) faceText(side plan.ID) words.Text {
	ref, ok := d.doc().Index().Side(side)
	if !ok {
		return words.Text{}
	}
	said := words.New("pane.face", "{0} face selected", d.context().Facing(side))
	if studs := ref.Side().Studs; studs.Spacing > 0 {
		said = words.New("pane.studs", "{0}: studs at {1}", said, words.Height(studs.Spacing))
	}
	if finish := plan.Thickness(ref.Side().Finish); finish > 0 {
		said = words.New("pane.finish", "{0}, {1} finish", said, words.Height(finish))
	}
	return said
}
