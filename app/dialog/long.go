package dialog

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
)

// Scrolled shows long content in a dialog of a size.
func (s *Stage) Scrolled(title string, width, height float32, content fyne.CanvasObject) {
	s.Spread(title, width, height, look.Wheeled(container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, content))))
}

// Spread shows what scrolls by itself, as large as it wants and the window lets it.
func (s *Stage) Spread(title string, width, height float32, content fyne.CanvasObject) {
	s.spread(title, width, height, content, nil)
}

// spread is Spread that says when it is closed.
func (s *Stage) spread(title string, width, height float32, content fyne.CanvasObject, closed func()) {
	size, unit := s.canvas().Size(), look.Scaled(1)
	width, height = min(width, size.Width/unit-96), min(height, size.Height/unit-160)
	s.Ask(Question{Title: title, Extra: look.Sized(width, height, content), Width: width, Answers: []Answer{{s.say("answer.close", "Close"), closed}}})
}

func (s *Stage) cautions() string {
	return s.say("caution.long", `Studbay is a planning aid. It says what it checked and what it found; it never says that an installation meets a code.

The local code as adopted, its amendments, the authority having jurisdiction and a licensed electrician decide. Read the volume marked on the box in your hand: it goes before any list.

Work on wiring only with the power off and proven off. Where you are not sure, do not.`)
}

// ShowCautions says what the program is not.
func (s *Stage) ShowCautions() { s.Tell(s.say("caution.title", "Before you rely on it"), s.cautions()) }

// ShowAbout says what it is.
func (s *Stage) ShowAbout() {
	s.Tell(s.say("about.title", "Studbay"),
		s.say("about.body", "Every opening settled before the drywall goes up: place, height, box, fill, sheets.")+"\n\n"+s.cautions())
}
