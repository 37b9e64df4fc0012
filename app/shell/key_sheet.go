package shell

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// KeySheet lists every command that has keys, menu by menu, and the keys of tools.
func (c *Commands) KeySheet(v words.Voice) fyne.CanvasObject {
	say := func(id, english string) string { return v.Say(words.New(id, english)) }
	var rows []fyne.CanvasObject
	for m := range menuTitles {
		first := true
		for i := range c.All {
			one := &c.All[i]
			if one.Menu != Menu(m) || len(one.Keys) == 0 {
				continue
			}
			if first {
				rows = append(rows, look.Gap(1, look.Grid/2), look.NewText(v.Say(menuTitles[m]), look.Title))
				first = false
			}
			spelled := make([]string, len(one.Keys))
			for k, key := range one.Keys {
				spelled[k] = key.Said(v)
			}
			rows = append(rows, look.Row(look.Grid, 0,
				look.NewFlexible(v.Say(one.Title), look.Body),
				look.NewText(strings.Join(spelled, ", "), look.Quiet)))
		}
	}
	rows = append(rows, look.Gap(1, look.Grid/2), look.NewText(say("keys.tools", "While a tool is selected"), look.Title))
	for _, k := range toolKeyRows {
		rows = append(rows, look.Row(look.Grid, 0, look.NewFlexible(v.Say(k.does), look.Body), look.NewText(v.Say(k.keys), look.Quiet)))
	}
	rows = append(rows, look.Gap(1, look.Grid/2),
		look.NewParagraph(say("keys.bare", "A key without Ctrl works while you are not typing in a field. Esc steps back, then leaves the tool, then clears the selection. While drawing, digits type a length."), look.Quiet, look.Scaled(400)))
	return look.Column(look.Grid/2, rows...)
}

// toolKeyRows are the keys that tools take for themselves.
var toolKeyRows = []struct{ does, keys words.Text }{
	{words.New("keys.length", "A length or a distance from the corner"), words.New("keys.length.keys", "digits, then Enter")},
	{words.New("keys.size", "Width, depth or height of what is placed"), words.New("keys.size.keys", "W, D, H")},
	{words.New("keys.turn", "The other hand of a door; turn a cabinet or furniture"), words.New("keys.turn.keys", "R")},
	{words.New("keys.choice", "The previous or next kind, where a tool has several"), words.New("keys.choice.keys", "[, ]")},
	{words.New("keys.free", "Leave the snaps; add to the selection"), words.New("keys.free.keys", "Shift held")},
	{words.New("keys.other", "The other way: a swing outward, in the floor, off the wall"), words.New("keys.other.keys", "Alt held")},
	{words.New("keys.nudge", "Move what is selected; by a little"), words.New("keys.nudge.keys", "arrows; Shift+arrows")},
	{words.New("keys.close", "Close the room, end the cable, set what is typed"), words.New("keys.close.keys", "Enter")},
	{words.New("keys.back", "Step back: the last corner, the tool, the selection"), words.New("keys.back.keys", "Esc")},
}
