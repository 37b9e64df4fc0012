package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/plan/words"
)

// Menu is one of the menus at the top of the window.
type Menu int

// The menus, from left to right.
const (
	MenuFile Menu = iota
	MenuEdit
	MenuView
	MenuPlace
	MenuCheck
	MenuHand
	MenuHelp
)

var menuTitles = [...]words.Text{
	MenuFile:  words.New("menu.file", "File"),
	MenuEdit:  words.New("menu.edit", "Edit"),
	MenuView:  words.New("menu.view", "View"),
	MenuPlace: words.New("menu.place", "Place"),
	MenuCheck: words.New("menu.check", "Check"),
	MenuHand:  words.New("menu.hand", "Hand over"),
	MenuHelp:  words.New("menu.help", "Help"),
}

// Keys is one way to give a command by the keyboard. A key without a modifier counts
// only while no field has the focus.
type Keys struct {
	Mod fyne.KeyModifier
	Key fyne.KeyName
}

// ctrl is the platform's own modifier for commands.
const ctrl = fyne.KeyModifierShortcutDefault

// Command is everything the window can be told to do.
type Command struct {
	ID    string     // stable
	Title words.Text // in menus and on the sheet of shortcuts
	Menu  Menu
	Sub   words.Text // of the menu within the menu that it stands in, if any
	Line  bool       // a line stands above it
	Keys  []Keys
	// Can reports whether it may run now; nil: always. Every way to the command asks.
	Can func(*Desk) bool
	// On reports whether the setting it stands for is in force; nil: it is no setting.
	On func(*Desk) bool
	// Named returns the title with what it would act on, such as the step undone.
	Named func(*Desk) words.Text
	Run   func(*Desk)
}

// title returns what the menu shows now.
func (c *Command) title(d *Desk) words.Text {
	if c.Named != nil {
		return c.Named(d)
	}
	return c.Title
}

func (c *Command) can(d *Desk) bool { return c.Can == nil || c.Can(d) }

// shortcut returns the toolkit's name for keys with a modifier.
func (k Keys) shortcut() fyne.Shortcut {
	if k.Mod == ctrl {
		switch k.Key {
		case fyne.KeyZ:
			return &fyne.ShortcutUndo{}
		case fyne.KeyY:
			return &fyne.ShortcutRedo{}
		case fyne.KeyA:
			return &fyne.ShortcutSelectAll{}
		case fyne.KeyC:
			return &fyne.ShortcutCopy{}
		case fyne.KeyX:
			return &fyne.ShortcutCut{}
		case fyne.KeyV:
			return &fyne.ShortcutPaste{}
		}
	}
	return &desktop.CustomShortcut{KeyName: k.Key, Modifier: k.Mod}
}

// keyNames says what is written on keys, as people read it.
var keyNames = map[fyne.KeyName]words.Text{
	fyne.KeyDelete: words.New("key.delete", "Del"), fyne.KeyBackspace: words.New("key.backspace", "Backspace"),
	fyne.KeyEscape: words.New("key.escape", "Esc"), fyne.KeyReturn: words.New("key.enter", "Enter"),
	fyne.KeyPlus: words.New("plain", "{0}", "+"), fyne.KeyEqual: words.New("plain", "{0}", "="), fyne.KeyMinus: words.New("plain", "{0}", "−"),
	fyne.KeyPageUp: words.New("key.page-up", "Page Up"), fyne.KeyPageDown: words.New("key.page-down", "Page Down"),
	fyne.KeyHome: words.New("key.home", "Home"),
}

// said spells the keys, such as Ctrl+Shift+S.
func (k Keys) said(v words.Voice) string {
	text := ""
	for _, m := range []struct {
		mod  fyne.KeyModifier
		name words.Text
	}{
		{fyne.KeyModifierControl, words.New("key.control", "Ctrl")}, {fyne.KeyModifierSuper, words.New("key.command", "Cmd")},
		{fyne.KeyModifierAlt, words.New("key.alt", "Alt")}, {fyne.KeyModifierShift, words.New("key.shift", "Shift")},
	} {
		if k.Mod&m.mod != 0 {
			text += v.Say(m.name) + "+"
		}
	}
	if name, ok := keyNames[k.Key]; ok {
		return text + v.Say(name)
	}
	return text + string(k.Key)
}

// commandByID returns the command, or nil.
func (d *Desk) commandByID(id string) *Command {
	for i := range d.commands {
		if d.commands[i].ID == id {
			return &d.commands[i]
		}
	}
	return nil
}

// Run gives a command by its ID and reports whether it could run.
func (d *Desk) Run(id string) bool {
	c := d.commandByID(id)
	if c == nil || !c.can(d) {
		return false
	}
	c.Run(d)
	d.refreshMenus()
	return true
}

// byKeys gives a command by its keys. Nothing runs behind a dialog or an open menu:
// the toolkit itself would let it.
func (d *Desk) byKeys(c *Command) bool {
	if d.window.Canvas().Overlays().Top() != nil {
		return false
	}
	return d.Run(c.ID)
}
