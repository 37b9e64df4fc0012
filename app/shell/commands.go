package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// Commands is everything a window can be told to do, in the order of its menus. It is
// what menus, shortcuts and the sheet of keys are made of.
type Commands struct {
	All []Command

	canvas fyne.Canvas
	ran    func() // told after each
	// byShortcut holds the commands by the toolkit's name of their keys.
	byShortcut map[string]*Command
}

// NewCommands makes the commands of a window; ran is told after each that has run.
func NewCommands(on fyne.Canvas, ran func(), all ...Command) *Commands {
	c := &Commands{All: all, canvas: on, ran: ran, byShortcut: map[string]*Command{}}
	for i := range c.All {
		one := &c.All[i]
		for _, k := range one.Keys {
			if k.Mod == 0 {
				continue
			}
			s := k.Shortcut()
			c.byShortcut[s.ShortcutName()] = one
			on.AddShortcut(s, func(fyne.Shortcut) { c.byKeys(one) })
		}
	}
	return c
}

// ByID returns the command, or nil.
func (c *Commands) ByID(id string) *Command {
	for i := range c.All {
		if c.All[i].ID == id {
			return &c.All[i]
		}
	}
	return nil
}

// Run gives a command by its ID and reports whether it could run.
func (c *Commands) Run(id string) bool {
	one := c.ByID(id)
	if one == nil || !one.can() {
		return false
	}
	one.Run()
	c.ran()
	return true
}

// byKeys gives a command by its keys. Nothing runs behind a dialog or an open menu:
// the toolkit itself would let it.
func (c *Commands) byKeys(one *Command) bool {
	return c.canvas.Overlays().Top() == nil && c.Run(one.ID)
}

// Shortcut gives the command of keys with a modifier.
func (c *Commands) Shortcut(s fyne.Shortcut) bool {
	one, ok := c.byShortcut[s.ShortcutName()]
	return ok && c.byKeys(one)
}

// BareKey gives the command of a key without a modifier.
func (c *Commands) BareKey(name fyne.KeyName) bool {
	for i := range c.All {
		for _, k := range c.All[i].Keys {
			if k.Mod == 0 && k.Key == name {
				return c.byKeys(&c.All[i])
			}
		}
	}
	return false
}

// Items lists the commands of a menu as they are now.
func (c *Commands) Items(which Menu, v words.Voice) (items []look.MenuItem) {
	subs := map[string]int{}
	for i := range c.All {
		one := &c.All[i]
		if one.Menu != which {
			continue
		}
		item := c.item(one, v)
		if one.Items != nil {
			if item.Sub = one.Items(); len(item.Sub) > 0 {
				items = append(items, item)
			}
			continue
		}
		if one.Sub.IsZero() {
			items = append(items, item)
			continue
		}
		at, ok := subs[one.Sub.ID]
		if !ok {
			at = len(items)
			subs[one.Sub.ID] = at
			items = append(items, look.MenuItem{Label: v.Say(one.Sub), Line: one.Line})
		}
		item.Line = false
		items[at].Sub = append(items[at].Sub, item)
	}
	return items
}

// Palette lists every command, to be found by words: before the menu it stands in, with its
// keys. One that cannot run now is dimmed.
func (c *Commands) Palette(v words.Voice) (items []look.MenuItem) {
	for i := range c.All {
		one := &c.All[i]
		if one.Items != nil {
			continue
		}
		item := c.item(one, v)
		item.Line, item.Also = false, v.Say(one.Also)
		in := menuTitles[one.Menu]
		if !one.Sub.IsZero() {
			in = one.Sub
		}
		item.Label = v.Say(words.New("palette.row", "{0}   ({1})", one.title(), in))
		items = append(items, item)
	}
	return items
}

// ItemsOf lists some commands by their IDs, those that can run now and the menus that hold
// something; an empty ID draws a line.
func (c *Commands) ItemsOf(v words.Voice, ids ...string) (items []look.MenuItem) {
	line := false
	for _, id := range ids {
		one := c.ByID(id)
		if one == nil || one.Items == nil && !one.can() {
			line = line || id == ""
			continue
		}
		item := c.item(one, v)
		if one.Items != nil {
			if item.Sub = one.Items(); len(item.Sub) == 0 {
				continue
			}
		}
		item.Line = line && len(items) > 0
		items, line = append(items, item), false
	}
	return items
}

func (c *Commands) item(one *Command, v words.Voice) look.MenuItem {
	item := look.MenuItem{
		Label: v.Say(one.title()), Line: one.Line, Disabled: one.Items == nil && !one.can(), Checked: one.On != nil && one.On(),
	}
	if one.Items == nil {
		item.Do = func() { c.Run(one.ID) }
	}
	if len(one.Keys) > 0 {
		item.Keys = one.Keys[0].Said(v)
	}
	return item
}
