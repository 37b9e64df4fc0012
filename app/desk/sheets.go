package desk

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/demo"
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/plan/words"
)

// scrolled shows long content in a dialog of a size.
func (d *Desk) scrolled(title string, width, height float32, content fyne.CanvasObject) {
	d.spread(title, width, height, look.Wheeled(container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, content))))
}

// spread shows what scrolls by itself, as large as it wants and the window lets it.
func (d *Desk) spread(title string, width, height float32, content fyne.CanvasObject) {
	size, unit := d.window.Canvas().Size(), look.Scaled(1)
	width, height = min(width, size.Width/unit-96), min(height, size.Height/unit-160)
	d.ask(question{title: title, extra: look.Sized(width, height, content), width: width, answers: []answer{{d.say("answer.close", "Close"), nil}}})
}

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
	d.scrolled(d.say("keys.title", "Keys"), 430, 520, look.Column(look.Grid/2, rows...))
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

// showRules prints what each rule looks at, from the rules themselves.
func (d *Desk) showRules() {
	figures := d.doc().Result().Figures
	if figures == nil {
		figures = code.Latest()
	}
	const width = 520
	var rows []fyne.CanvasObject
	for _, r := range fill.Rules {
		section := r.Section(figures)
		rows = append(rows,
			look.NewParagraph(d.voice.Say(r.Title), look.Title, look.Scaled(width)),
			look.NewParagraph(d.voice.Say(r.Doc), look.Body, look.Scaled(width)))
		if section != "" {
			rows = append(rows, look.NewText(section, look.Second))
		}
		rows = append(rows, look.Gap(1, look.Grid/2))
	}
	d.scrolled(d.say("rules.title", "What is checked"), width+40, 520, look.Column(look.Grid/2, rows...))
}

func (d *Desk) cautions() string {
	return d.say("caution.long", `Studbay is a planning aid. It says what it looked at and what it found; it never says that an installation meets a code.

The local code as adopted, its amendments, the authority having jurisdiction and a licensed electrician decide. Read the volume marked on the box in your hand: it goes before any list.

Work on wiring only with the power off and proven off. Where you are not sure, do not.`)
}

func (d *Desk) showCautions() { d.tell(d.say("caution.title", "Before you rely on it"), d.cautions()) }

func (d *Desk) showAbout() {
	d.tell(d.say("about.title", "Studbay"),
		d.say("about.body", "Every opening settled before the drywall goes up: place, height, box, fill, sheets.")+"\n\n"+d.cautions())
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
