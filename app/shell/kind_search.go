package shell

import (
	"slices"
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan/words"
)

// kindSearch is the line that looks for a kind of opening: Up and Down mark one of those
// found, Enter takes it, Escape first clears the line and then leaves it.
type kindSearch struct {
	widget.Entry
	of *KindDrawer
}

func newKindSearch(w *KindDrawer, keys string) *kindSearch {
	f := &kindSearch{of: w}
	f.ExtendBaseWidget(f)
	f.SetPlaceHolder(w.say("drawer.find", "Find a kind … {0}", keys))
	f.OnChanged = func(string) { w.fill(); w.reveal(w.mark()) }
	f.OnSubmitted = func(string) { w.takeMarked() }
	return f
}

// wanted is what is looked for, in small letters without accents.
func (f *kindSearch) wanted() string {
	if f == nil {
		return ""
	}
	return words.Folded(strings.TrimSpace(f.Text))
}

// findHint says how the search is worked.
var findHint = words.New("drawer.find.hint", "Type part of a name; Up and Down mark a kind, Enter selects it, Esc clears the line and then leaves it")

// FocusGained implements fyne.Focusable.
func (f *kindSearch) FocusGained() {
	f.Entry.FocusGained()
	f.of.kinds.Explain(findHint)
	f.of.Refresh()
}

// FocusLost implements fyne.Focusable.
func (f *kindSearch) FocusLost() {
	f.Entry.FocusLost()
	f.of.kinds.Explained(findHint)
}

// TypedKey implements fyne.Focusable.
func (f *kindSearch) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyDown:
		f.of.step(1)
	case fyne.KeyUp:
		f.of.step(-1)
	case fyne.KeyEscape:
		if f.Text != "" {
			f.SetText("")
			return
		}
		f.of.canvas.Unfocus()
	default:
		f.Entry.TypedKey(key)
	}
}

// TypedShortcut implements fyne.Shortcutable: what a line of text has no use for is the
// window's.
func (f *kindSearch) TypedShortcut(s fyne.Shortcut) {
	switch s.(type) {
	case *fyne.ShortcutCopy, *fyne.ShortcutCut, *fyne.ShortcutPaste, *fyne.ShortcutSelectAll:
		f.Entry.TypedShortcut(s)
		return
	}
	if !f.of.kinds.Shortcut(s) {
		f.Entry.TypedShortcut(s)
	}
}

// mark returns the kind that Enter would take, or nil where nothing is looked for.
func (w *KindDrawer) mark() *part.Kind {
	if w.search.wanted() == "" || w.marked >= len(w.found) {
		return nil
	}
	return w.found[w.marked]
}

// best returns which of the kinds found is most likely meant: one whose name begins with
// what is looked for or that people call just so, then one that has it as a word, then
// one that has a word beginning with it, then the first.
func (w *KindDrawer) best(find string) (best int) {
	least := 4
	for i, k := range w.found {
		r := min(nameRank(words.Folded(w.voice.Say(k.Text())), find), int(k.Called(find)))
		if r < least {
			best, least = i, r
		}
	}
	return best
}

// nameRank is 0 where a name begins with a text, 1 where one of its words is it, 2 where
// one begins with it, else 3.
func nameRank(name, find string) int {
	if strings.HasPrefix(name, find) {
		return 0
	}
	words := strings.FieldsFunc(name, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	switch {
	case slices.Contains(words, find):
		return 1
	case slices.ContainsFunc(words, func(word string) bool { return strings.HasPrefix(word, find) }):
		return 2
	}
	return 3
}

// step marks the kind so many after the one marked.
func (w *KindDrawer) step(by int) {
	if n := len(w.found); n > 0 && w.search.wanted() != "" {
		w.marked = (w.marked + by + n) % n
		w.Refresh()
		w.reveal(w.mark())
	}
}

// takeMarked takes the kind marked in hand, so that a click places it; with nothing
// looked for, the kind in hand stays that.
func (w *KindDrawer) takeMarked() {
	if k := w.mark(); k != nil {
		w.kinds.TakeKind(k.ID)
	} else if w.search.wanted() == "" {
		w.canvas.Unfocus()
	}
}

// reveal scrolls so that a kind is in sight; nil is the top of the list.
func (w *KindDrawer) reveal(k *part.Kind) {
	if k == nil || w.places[k.ID] == nil {
		w.scroll.ScrollToTop()
		return
	}
	// Its place is that in the list: the toolkit knows none of what was just made.
	place := w.places[k.ID]
	top := place.Position().Y
	bottom, room := top+place.Size().Height, w.scroll.Size().Height
	switch at := w.scroll.Offset.Y; {
	case top < at:
		w.scroll.ScrollToOffset(fyne.NewPos(0, max(0, top-look.Scaled(4*look.Grid))))
	case bottom > at+room:
		w.scroll.ScrollToOffset(fyne.NewPos(0, bottom-room+look.Scaled(look.Grid)))
	}
}
