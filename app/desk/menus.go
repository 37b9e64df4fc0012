package desk

import (
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/fill/rule"
)

// mostUndone is how many steps the list of them shows.
const mostUndone = 20

// undoList lists the steps that can be taken back, the last first: one that is chosen is
// taken back with all after it.
func (d *Desk) undoList() (items []look.MenuItem) {
	for i, name := range d.doc().History().Done() {
		if i == mostUndone {
			break
		}
		items = append(items, look.MenuItem{Label: d.voice.Say(name), Do: func() {
			for range i + 1 {
				d.doc().Undo()
			}
		}})
	}
	return items
}

// paletteWidth is that of the list of all commands, in units.
const paletteWidth = 460

// showPalette lists all commands, to be found by words of them.
func (d *Desk) showPalette() {
	on := d.window.Canvas()
	width := look.Scaled(paletteWidth)
	at := fyne.NewPos((on.Size().Width-width)/2, look.Scaled(48))
	look.ShowFinder(on, at, width, d.commands.Palette(d.voice.Voice), look.MenuFind{
		Hint: d.voice.say("palette.find", "Type what you want to do …"),
		None: d.voice.say("palette.none", "no command is called that now"),
	})
}

// showMenuOfFinding shows what can be done about a finding.
func (d *Desk) showMenuOfFinding(f rule.Finding, at fyne.Position) {
	items := []look.MenuItem{{Label: d.voice.say("finding.go", "Show where it is"), Do: func() { d.findings.Go(f) }}}
	for i, r := range f.Remedies {
		items = append(items, look.MenuItem{Label: d.voice.Say(r.Label), Line: i == 0, Do: func() { _ = d.editor.Do(r.Edit) }})
	}
	if f.Waived == nil {
		items = append(items, look.MenuItem{Label: d.voice.say("command.set-aside", "Set the finding aside …"), Line: true, Do: func() { d.forms.askWaiverOf(f) }})
	} else {
		items = append(items, look.MenuItem{Label: d.voice.say("finding.waiver", "Show why it is set aside"), Line: true, Do: func() { d.doc().Select(f.Waived.ID) }})
	}
	items = append(items, look.MenuItem{Label: d.voice.say("command.rules", "What is checked"), Line: true, Do: func() { d.commands.Run("rules") }})
	look.ShowMenu(d.window.Canvas(), at, 0, items)
}

// showMenuOf shows what can be done with what is under the pointer, which is chosen; with
// nothing, what can be done with the level.
func (d *Desk) showMenuOf(p tool.Pointer, at fyne.Position) {
	if id := tool.Under(d.tools, p); id == "" {
		d.doc().Select()
	} else if !slices.Contains(d.doc().Selection(), id) {
		d.doc().Select(id)
	}
	items := d.commands.ItemsOf(d.voice.Voice,
		"cut", "copy", "paste", "duplicate", "copy-row", "", "turn", "mirror", "spread", "align-heights", "", "delete", "", "remedy", "set-aside", "", "zoom-selected")
	if len(d.doc().Selection()) == 0 {
		items = d.commands.ItemsOf(d.voice.Voice, "paste", "select-all", "", "room-by-size", "add-level", "copy-level", "copy-outlines", "", "undo", "redo", "", "fit", "zoom-in", "zoom-out")
	}
	if len(items) > 0 {
		look.ShowMenu(d.window.Canvas(), at, 0, items)
	}
}
