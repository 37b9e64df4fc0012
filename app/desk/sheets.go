package desk

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/demo"
	"studbay/app/look"
	"studbay/plan/words"
)

// showShortcuts lists every command that has keys, menu by menu.
func (d *Desk) showShortcuts() {
	var rows []fyne.CanvasObject
	for m := range menuTitles {
		first := true
		for i := range d.commands {
			c := &d.commands[i]
			if c.Menu != Menu(m) || len(c.Keys) == 0 {
				continue
			}
			if first {
				rows = append(rows, look.Gap(1, look.Grid/2), look.NewText(d.voice.Say(menuTitles[m]), look.Title))
				first = false
			}
			spelled := make([]string, len(c.Keys))
			for k, key := range c.Keys {
				spelled[k] = key.said(d.voice)
			}
			rows = append(rows, look.Row(look.Grid, 0,
				look.NewFlexible(d.voice.Say(c.Title), look.Body),
				look.NewText(strings.Join(spelled, ", "), look.Quiet)))
		}
	}
	rows = append(rows, look.Gap(1, look.Grid/2), look.NewText(d.say("keys.tools", "With a tool in hand"), look.Title))
	for _, k := range toolKeyRows {
		rows = append(rows, look.Row(look.Grid, 0, look.NewFlexible(d.voice.Say(k.does), look.Body), look.NewText(d.voice.Say(k.keys), look.Quiet)))
	}
	rows = append(rows, look.Gap(1, look.Grid/2),
		look.NewParagraph(d.say("keys.bare", "A key without Ctrl works while no field is being written in. Esc steps back, then gives up the tool, then the choice. While drawing, figures type a length."), look.Quiet, look.Scaled(400)))
	d.stage.Scrolled(d.say("keys.title", "Keys"), 430, 520, look.Column(look.Grid/2, rows...))
}

// toolKeyRows are the keys that tools take for themselves.
var toolKeyRows = []struct{ does, keys words.Text }{
	{words.New("keys.length", "A length or a distance from the corner"), words.New("keys.length.keys", "figures, then Enter")},
	{words.New("keys.size", "Width, depth or height of what is placed"), words.New("keys.size.keys", "W, D, H")},
	{words.New("keys.turn", "The other hand of a door; turn a fixture"), words.New("keys.turn.keys", "R")},
	{words.New("keys.choice", "The sort before or after, where a tool has several"), words.New("keys.choice.keys", "[, ]")},
	{words.New("keys.free", "Leave the snaps; add to the choice"), words.New("keys.free.keys", "Shift held")},
	{words.New("keys.other", "The other way: a swing outward, in the floor, off the wall"), words.New("keys.other.keys", "Alt held")},
	{words.New("keys.nudge", "Move what is chosen; by a little"), words.New("keys.nudge.keys", "arrows; Shift+arrows")},
	{words.New("keys.close", "Close the room, end the cable, set what is typed"), words.New("keys.close.keys", "Enter")},
	{words.New("keys.back", "Step back: the last corner, the tool, the choice"), words.New("keys.back.keys", "Esc")},
}

// openDemo shows the demo as a plan of its own, not saved anywhere.
func (d *Desk) openDemo() { d.session.Begin(demo.All[0].Build) }

// showLevels lets another level be shown, renamed or made.
func (d *Desk) showLevels() {
	var items []look.MenuItem
	for _, l := range d.doc().Plan().Levels {
		items = append(items, look.MenuItem{Label: l.Name, Checked: l.ID == d.doc().Level(), Do: func() { d.doc().SetLevel(l.ID) }})
	}
	items = append(items,
		look.MenuItem{Label: d.say("level.card", "This level's card"), Line: true, Do: func() { d.Select(d.doc().Level()) }},
		look.MenuItem{Label: d.say("command.add-level", "Another level"), Do: func() { d.Run("add-level") }})
	at := d.app.Driver().AbsolutePositionForObject(d.strip.object)
	look.ShowMenu(d.window.Canvas(), at.AddXY(look.Grid, 0), 0, items)
}
