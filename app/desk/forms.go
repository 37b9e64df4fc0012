package desk

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// asked is one line to fill in of a small form.
type asked struct {
	label string
	text  string // it begins with
	hint  string // how it may be written
	// options are what there is to choose from, in place of a text to write.
	options []string
}

// formEntry is a line of a form: Escape gives the form up.
type formEntry struct {
	widget.Entry
	giveUp func()
}

// FocusGained implements fyne.Focusable. Typing replaces a line reached by the keys.
func (e *formEntry) FocusGained() {
	e.Entry.FocusGained()
	e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// TypedKey implements fyne.Focusable.
func (e *formEntry) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape {
		e.giveUp()
		return
	}
	e.Entry.TypedKey(key)
}

// form asks for a few texts. Do gets them and returns what is wrong, which keeps the
// form open.
func (d *Desk) form(title, body, yes string, lines []asked, do func([]string) error) {
	width := look.Scaled(dialogWidth)
	wrong := look.NewParagraph("", look.Style{Tone: look.Stop}, width)
	wrong.Hide()
	rows := []fyne.CanvasObject{look.NewParagraph(title, look.Title, width)}
	if body != "" {
		rows = append(rows, look.NewParagraph(body, look.Quiet, width))
	}
	var shown *raised
	var reads []func() string
	var first fyne.Focusable
	var column *fyne.Container
	submit := func() {
		texts := make([]string, len(reads))
		for i, read := range reads {
			texts[i] = strings.TrimSpace(read())
		}
		if err := do(texts); err != nil {
			wrong.SetWords(d.errorText(err))
			wrong.Show()
			column.Refresh()
			return
		}
		shown.lower()
	}
	for _, l := range lines {
		if l.options != nil {
			c, read := oneOf(l)
			c.OnEscape(func() { shown.lower() })
			reads, rows = append(reads, read), append(rows, c)
			continue
		}
		e := &formEntry{giveUp: func() { shown.lower() }}
		e.ExtendBaseWidget(e)
		e.SetText(l.text)
		e.SetPlaceHolder(l.hint)
		e.OnSubmitted = func(string) { submit() }
		reads = append(reads, func() string { return e.Text })
		if first == nil {
			first = e
		}
		name := look.Sized(formLabel, 0, look.NewFlexible(l.label, look.Quiet))
		rows = append(rows, look.Row(look.Grid, 1, name, look.Sized(0, look.HitTarget, e)))
	}
	buttons := []*look.Press{
		button(d.say("answer.stay", "Go back"), false, func() { shown.lower() }),
		button(yes, true, submit),
	}
	column = look.Column(look.Grid, append(rows, wrong, look.Gap(1, look.Grid/2), buttonRow(buttons...))...)
	shown = d.raise(column)
	d.window.Canvas().Focus(first)
	first.(*formEntry).TypedShortcut(&fyne.ShortcutSelectAll{})
}

const formLabel = 140

// oneOf is a line of a form that is chosen, and what is chosen of it.
func oneOf(l asked) (*card.Choice, func() string) {
	chosen := l.text
	var c *card.Choice
	c = card.NewChoice(l.label, "", func() (options []card.Option) {
		for _, text := range l.options {
			options = append(options, card.Option{Label: text, Now: text == chosen, Do: func() {
				chosen = text
				c.Update()
			}})
		}
		return options
	})
	return c, func() string { return chosen }
}

// askRoom asks for a room's width and depth and stands it beside what is there.
func (d *Desk) askRoom() {
	width, depth := "14'", "12'"
	if d.doc.System() == unit.Metric {
		width, depth = "4.2 m", "3.6 m"
	}
	d.form(d.say("room-form.title", "A room by width × depth"), d.say("room-form.body", "Measured inside, between the finished faces."),
		d.say("room-form.yes", "Draw it"), []asked{
			{d.say("room-form.name", "Name"), d.say("room-form.name.first", "Room"), "", nil},
			{d.say("room-form.width", "Width"), width, d.say("hint.length", "such as 14' 6 or 4.4 m"), nil},
			{d.say("room-form.depth", "Depth"), depth, d.say("hint.length", "such as 14' 6 or 4.4 m"), nil},
		}, func(texts []string) error {
			w, err := unit.Parse(texts[1], d.doc.System().Bare())
			if err != nil {
				return err
			}
			h, err := unit.Parse(texts[2], d.doc.System().Bare())
			if err != nil {
				return err
			}
			return d.addRoom(texts[0], w, h)
		})
}

// addRoom draws a rectangle to the right of what is on the level.
func (d *Desk) addRoom(name string, w, h unit.Length) error {
	var at geom.Point
	if box, ok := d.doc.Index().Extent(d.doc.Level()); ok {
		at = geom.Point{X: box.Max.X + 4*unit.Inch + unit.Inch/2, Y: box.Min.Y}
	}
	corners := geom.Polygon{at, {X: at.X + w, Y: at.Y}, {X: at.X + w, Y: at.Y + h}, {X: at.X, Y: at.Y + h}}
	sides := make([]plan.ID, len(corners))
	for i := range sides {
		sides[i] = newID(plan.KindSide)
	}
	id := newID(plan.KindRoom)
	room := fill.NewRoom(id, name, corners, sides)
	if err := d.Do(plan.AddRoom{Level: d.doc.Level(), Room: room}); err != nil {
		return err
	}
	d.Select(id)
	d.fit()
	return nil
}

// askCopies asks how many copies of an opening to set and how far apart.
func (d *Desk) askCopies() {
	id := d.doc.Selection()[0]
	spacing := "6'"
	if d.doc.System() == unit.Metric {
		spacing = "1.8 m"
	}
	d.form(d.say("copies.title", "Copy along the face"), d.say("copies.body", "To the right as seen standing in the room; a spacing below zero goes to the left."),
		d.say("copies.yes", "Set them"), []asked{
			{d.say("copies.count", "How many more"), "1", "", nil},
			{d.say("copies.spacing", "Centre to centre"), spacing, "", nil},
		}, func(texts []string) error {
			n, err := countOf(texts[0])
			if err != nil {
				return err
			}
			l, err := unit.Parse(texts[1], d.doc.System().Bare())
			if err != nil {
				return err
			}
			copies := make([]plan.ID, n)
			for i := range copies {
				copies[i] = newID(plan.KindOpening)
			}
			return d.Do(plan.CopyOpening{ID: id, Copies: copies, Along: l, By: geom.Point{X: l}})
		})
}

// askCircuit adds a circuit and puts the openings chosen on it.
func (d *Desk) askCircuit() {
	d.form(d.say("circuit.title", "A circuit"), "", d.say("circuit.yes", "Add it"), []asked{
		{d.say("circuit.number", "Number at the panel"), d.nextCircuit(), "", nil},
		{d.say("circuit.name", "What it serves"), "", d.say("circuit.name.hint", "such as bedroom receptacles"), nil},
		{d.say("circuit.amps", "Amperes"), "20", "", nil},
	}, func(texts []string) error {
		amps, err := countOf(texts[2])
		if err != nil {
			return err
		}
		id := newID(plan.KindCircuit)
		edits := []plan.Edit{plan.AddCircuit{Circuit: plan.Circuit{ID: id, Number: texts[0], Name: texts[1], Amps: amps, Volts: 120, Poles: 1}}}
		for _, chosen := range d.doc.Selection() {
			if o, _ := d.doc.Plan().Opening(chosen); o != nil {
				on := *o
				on.Circuit = id
				edits = append(edits, plan.ChangeOpening{Opening: on})
			}
		}
		return d.Do(plan.Steps{Label: words.New("edit.circuit.add", "Add circuit"), Edits: edits})
	})
}

// askDecision writes down a question that is open, about what is chosen.
func (d *Desk) askDecision() {
	d.form(d.say("decision.title", "An open decision"), d.say("decision.body", "It is listed with the findings, and printed, until it is settled. It is about what is chosen now."),
		d.say("decision.yes", "Write it down"), []asked{
			{d.say("decision.question", "What is open"), "", d.say("decision.hint", "such as: how thick is the tile?"), nil},
		}, func(texts []string) error {
			about := append([]plan.ID{}, d.doc.Selection()...)
			return d.Do(plan.AddDecision{Decision: plan.Decision{ID: newID(plan.KindDecision), Question: texts[0], About: about}})
		})
}

// askWaiver sets the finding in hand aside with a reason.
func (d *Desk) askWaiver() {
	f := d.findingInHand()
	if f == nil {
		return
	}
	d.form(d.say("waiver.title", "Set this finding aside"), d.voice.Say(f.Message)+"\n"+d.say("waiver.body", "It stays in the list and on the sheets, with your reason."),
		d.say("waiver.yes", "Set it aside"), []asked{
			{d.say("waiver.reason", "Reason"), "", "", nil},
			{d.say("waiver.by", "Who decided"), "", "", nil},
		}, func(texts []string) error {
			return d.Do(plan.AddWaiver{Waiver: plan.Waiver{ID: newID(plan.KindWaiver), Rule: f.Rule, About: f.About, Reason: texts[0], By: texts[1]}})
		})
}

// nextCircuit suggests the number after the greatest in use.
func (d *Desk) nextCircuit() string {
	most := 0
	for c := range d.doc.Plan().Circuits.All() {
		if n, err := strconv.Atoi(c.Number); err == nil {
			most = max(most, n)
		}
	}
	return strconv.Itoa(most + 1)
}
