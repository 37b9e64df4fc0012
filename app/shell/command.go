package shell

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/look"
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

// Ctrl is the platform's own modifier for commands.
const Ctrl = fyne.KeyModifierShortcutDefault

// Command is everything the window can be told to do.
type Command struct {
	ID    string     // stable
	Title words.Text // in menus and on the sheet of shortcuts
	Menu  Menu
	Sub   words.Text // of the menu within the menu that it stands in, if any
	Also  words.Text // other words that people look for it by
	Line  bool       // a line stands above it
	Keys  []Keys
	// Can reports whether it may run now; nil: always. Every way to the command asks.
	Can func() bool
	// On reports whether the setting it stands for is in force; nil: it is no setting.
	On func() bool
	// Named returns the title with what it would act on, such as the step undone.
	Named func() words.Text
	Run   func()
	// Items makes it a menu within the menu, which is left out where it holds nothing.
	Items func() []look.MenuItem
}

// title returns what the menu shows now.
func (c *Command) title() words.Text {
	if c.Named != nil {
		return c.Named()
	}
	return c.Title
}

func (c *Command) can() bool { return c.Run != nil && (c.Can == nil || c.Can()) }

// Shortcut returns the toolkit's name for keys with a modifier.
func (k Keys) Shortcut() fyne.Shortcut {
	if k.Mod == Ctrl {
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

// Said spells the keys, such as Ctrl+Shift+S.
func (k Keys) Said(v words.Voice) string {
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
