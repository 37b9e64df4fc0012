package look

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/plan/words"
)

// MenuFind is what a long menu says of finding a line by typing.
type MenuFind struct {
	Hint string // while nothing is typed
	None string // where no line holds what is typed
}

// menuFind is the line at the top of a menu that shows what is typed and leaves only the
// lines below that hold it, accents or none. Backspace takes a letter back, Escape all of them.
type menuFind struct {
	of   *menuPanel
	says MenuFind
	all  []MenuItem
	text string
	said *Text
	line *fyne.Container
}

func newMenuFind(p *menuPanel, says MenuFind, all []MenuItem) *menuFind {
	f := &menuFind{of: p, says: says, all: all}
	f.said = NewFlexible(says.Hint, Quiet)
	typed := Back(OnPaper, Radius, Inset(Grid, Grid-2, Grid, Grid-2, f.said))
	f.line = Inset(menuGap+2, menuGap+2, menuGap+2, 0, typed)
	return f
}

// key takes a key that changes what is typed and reports whether it did.
func (f *menuFind) key(name fyne.KeyName) bool {
	switch {
	case f.text == "":
		// Space chooses the line in hand, as in any menu.
		return false
	case name == fyne.KeyBackspace:
		letters := []rune(f.text)
		f.set(string(letters[:len(letters)-1]))
	case name == fyne.KeyEscape:
		f.set("")
	case name == fyne.KeySpace: // comes as a letter too
	default:
		return false
	}
	return true
}

// set leaves the lines that hold a text; in hand is the first that begins with it, else the
// first that is also called something that does.
func (f *menuFind) set(text string) {
	if f.text == "" {
		text = strings.TrimLeft(text, " ")
	}
	if text == f.text {
		return
	}
	f.text = text
	find := words.Folded(strings.TrimSpace(text))
	var held []MenuItem
	first, called := -1, -1
	for _, item := range f.all {
		label := words.Folded(item.Label)
		if !holds(label+" "+words.Folded(item.Also), find) {
			continue
		}
		item.Line = item.Line && find == ""
		switch {
		case item.Disabled:
		case first < 0 && strings.HasPrefix(label, find):
			first = len(held)
		case called < 0 && anyBegins(words.Folded(item.Also), find):
			called = len(held)
		}
		held = append(held, item)
	}
	f.of.fill(held)
	f.of.fit()
	f.of.scroll.ScrollToTop()
	f.tell(len(held) > 0)
	switch {
	case find == "":
		f.of.showChecked()
	case first >= 0:
		f.of.point(first)
	case called >= 0:
		f.of.point(called)
	default:
		f.of.step(1)
	}
	f.of.Refresh()
}

// holds reports whether a label has every word of a text, each as a part of it, in any order.
func holds(label, find string) bool {
	for word := range strings.FieldsSeq(find) {
		if !strings.Contains(label, word) {
			return false
		}
	}
	return true
}

// anyBegins reports whether one of several names with commas between begins with a text.
func anyBegins(names, find string) bool {
	for name := range strings.SplitSeq(names, ",") {
		if strings.HasPrefix(strings.TrimSpace(name), find) {
			return true
		}
	}
	return false
}

// tell shows what is typed, or how to begin.
func (f *menuFind) tell(any bool) {
	switch {
	case f.text == "":
		f.said.SetTone(Muted)
		f.said.SetWords(f.says.Hint)
	case any:
		f.said.SetTone(Ink)
		f.said.SetWords(f.text + "|")
	default:
		f.said.SetTone(Stop)
		f.said.SetWords(f.text + "|  " + f.says.None)
	}
}
