package desk

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"

	"studbay/app/tool"
)

// listen takes every shortcut of the table and the bare keys from the window.
func (d *Desk) listen() {
	d.shortcuts = map[string]*Command{}
	on := d.window.Canvas()
	for i := range d.commands {
		c := &d.commands[i]
		for _, k := range c.Keys {
			if k.Mod == 0 {
				continue
			}
			s := k.shortcut()
			d.shortcuts[s.ShortcutName()] = c
			on.AddShortcut(s, func(fyne.Shortcut) { d.byKeys(c) })
		}
	}
	on.SetOnTypedKey(func(e *fyne.KeyEvent) { d.typedKey(e.Name) })
	on.SetOnTypedRune(func(r rune) { d.typedRune(r) })
}

// Shortcut implements card.Window.
func (d *Desk) Shortcut(s fyne.Shortcut) bool {
	c, ok := d.shortcuts[s.ShortcutName()]
	return ok && d.byKeys(c)
}

// toolKeys are the keys a tool is told of by name.
var toolKeys = map[fyne.KeyName]string{
	fyne.KeyReturn: "Enter", fyne.KeyEnter: "Enter", fyne.KeyBackspace: "Backspace",
	fyne.KeyLeft: "Left", fyne.KeyRight: "Right", fyne.KeyUp: "Up", fyne.KeyDown: "Down",
	fyne.KeyDelete: "Delete", fyne.KeyTab: "Tab",
}

// typedKey takes a key that no field has: first the tool may use it, then Escape steps
// back, then the commands.
func (d *Desk) typedKey(name fyne.KeyName) bool {
	if d.window.Canvas().Overlays().Top() != nil {
		return false
	}
	if key, ok := toolKeys[name]; ok && d.tool().Type(d.table, tool.Key{Name: key, Shift: d.shiftHeld()}) {
		d.showHint()
		return true
	}
	if name == fyne.KeyEscape {
		d.stepBack()
		return true
	}
	return d.bareKey(name)
}

// bareKey gives the command of a key without a modifier.
func (d *Desk) bareKey(name fyne.KeyName) bool {
	for i := range d.commands {
		for _, k := range d.commands[i].Keys {
			if k.Mod == 0 && k.Key == name {
				return d.byKeys(&d.commands[i])
			}
		}
	}
	return false
}

// typedRune takes a letter that no field has: the tool may be reading a length, else
// it is a command's.
func (d *Desk) typedRune(r rune) bool {
	if d.window.Canvas().Overlays().Top() != nil {
		return false
	}
	if d.tool().Type(d.table, tool.Key{Rune: r}) {
		d.showHint()
		return true
	}
	if !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune("+-=?", r) {
		return false
	}
	return d.bareKey(fyne.KeyName(strings.ToUpper(string(r))))
}

// stepBack is what Escape does: the tool takes a step back, else another tool is
// given up for Select, else nothing is chosen any more.
func (d *Desk) stepBack() {
	switch {
	case d.tool().Cancel(d.table):
	case d.inHand != 0:
		d.TakeTool(0)
	default:
		d.Select()
	}
	d.showHint()
}
