package desk

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/dialog"
	"studbay/app/shell"
	"studbay/app/tool"
)

// keyboard gives keys that no field has to the tool in hand, and then to the commands.
type keyboard struct {
	canvas   fyne.Canvas
	hand     *hand
	commands *shell.Commands
	stage    *dialog.Stage
	altAlone bool // Alt is down, and nothing else was done since
}

// listen takes the bare keys from the window.
func (k *keyboard) listen() {
	k.canvas.SetOnTypedKey(func(e *fyne.KeyEvent) { k.typed(e.Name) })
	k.canvas.SetOnTypedRune(func(r rune) { k.typedRune(r) })
	if on, ok := k.canvas.(desktop.Canvas); ok {
		on.SetOnKeyDown(k.down)
		on.SetOnKeyUp(k.up)
	}
}

func isAlt(name fyne.KeyName) bool {
	return name == desktop.KeyAltLeft || name == desktop.KeyAltRight
}

// down and up see every key go down and up: Alt alone opens the menus.
func (k *keyboard) down(e *fyne.KeyEvent) { k.altAlone = isAlt(e.Name) }

func (k *keyboard) up(e *fyne.KeyEvent) {
	if isAlt(e.Name) && k.altAlone && k.canvas.Overlays().Top() == nil {
		k.commands.Run("menus")
	}
	k.altAlone = false
}

// isText reports whether a key writes a character: it comes as one too, and would count
// twice.
func isText(name fyne.KeyName) bool { return len(name) == 1 }

// toolKeys are the keys a tool is told of by name.
var toolKeys = map[fyne.KeyName]string{
	fyne.KeyReturn: "Enter", fyne.KeyEnter: "Enter", fyne.KeyBackspace: "Backspace",
	fyne.KeyLeft: "Left", fyne.KeyRight: "Right", fyne.KeyUp: "Up", fyne.KeyDown: "Down",
	fyne.KeyDelete: "Delete", fyne.KeyTab: "Tab",
}

// typed takes a key: first the tool may use it, then Escape steps back, then the
// commands.
func (k *keyboard) typed(name fyne.KeyName) bool {
	if k.canvas.Overlays().Top() != nil {
		return k.stage.Key(name)
	}
	if isText(name) {
		return false
	}
	if key, ok := toolKeys[name]; ok && k.hand.tool().Type(k.hand.window, tool.Key{Name: key, Shift: shiftHeld()}) {
		k.hand.shown.showHint()
		return true
	}
	if name == fyne.KeyEscape {
		k.stepBack()
		return true
	}
	return k.commands.BareKey(name)
}

// typedRune takes a letter: the tool may be reading a length, else it is a command's.
func (k *keyboard) typedRune(r rune) bool {
	if k.canvas.Overlays().Top() != nil {
		return k.stage.Rune(r)
	}
	if k.hand.tool().Type(k.hand.window, tool.Key{Rune: r}) {
		k.hand.shown.showHint()
		return true
	}
	if !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune("+-=?", r) {
		return false
	}
	return k.commands.BareKey(fyne.KeyName(strings.ToUpper(string(r))))
}

// stepBack is what Escape does: the tool takes a step back, else another tool is
// given up for Select, else nothing is chosen any more.
func (k *keyboard) stepBack() {
	h := k.hand
	switch {
	case h.tool().Cancel(h.window):
	case h.inHand != 0:
		h.Take(0)
	default:
		h.session.Doc().Select()
	}
	h.shown.showHint()
}

// shiftHeld reports whether a shift key is down.
func shiftHeld() bool {
	driver, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && driver.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}
