package desk

import (
	"slices"
	"strconv"
	"studbay/app/card"
	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/frame"
	"studbay/fill/naming"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// forms are the commands that ask for a few texts first.
type forms struct {
	*editor
	clips    *clips
	findings *findings
	view     *view
}

// askRoom asks for a room's width and depth and stands it beside what is there.
func (d *forms) askRoom() {
	width, depth := "14'", "12'"
	if d.doc().System() == unit.Metric {
		width, depth = "4.2 m", "3.6 m"
	}
	d.askRoomOf([]string{d.voice.say("room-form.name.first", "Room"), "", width, depth})
}

// askRoomOf is askRoom with what stands in its lines at first; a use that the name does not
// tell of was chosen by hand.
func (d *forms) askRoomOf(texts []string) {
	told := d.toldUse
	if guess, _ := told(texts); texts[1] != "" && texts[1] != guess {
		told = nil
	}
	uses := card.Uses(d.voice.Voice)
	var names []string
	for _, use := range uses {
		names = append(names, d.useName(use))
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("room-form.title", "A room by width × depth"),
		Body:  d.voice.say("room-form.body", "Measured inside, between the finished faces."),
		Yes:   d.voice.say("room-form.yes", "Draw it"),
		Lines: []dialog.Line{
			{Label: d.voice.say("room-form.name", "Name"), Text: texts[0]},
			{Label: d.voice.say("room.use", "Use"), Text: texts[1], Options: names, Told: told},
			{Label: d.voice.say("room-form.width", "Width"), Text: texts[2], Hint: d.voice.say("hint.length", "such as 14' 6 or 4.4 m"), Check: d.stage.IsLengthOverNothing},
			{Label: d.voice.say("room-form.depth", "Depth"), Text: texts[3], Hint: d.voice.say("hint.length", "such as 14' 6 or 4.4 m"), Check: d.stage.IsLengthOverNothing},
		},
		Echo: func(texts []string) string {
			w, h, err := d.doc().System().ParseTwo(texts[2], texts[3])
			if err != nil {
				return ""
			}
			return d.voice.say("room-form.read", "Read as {0} × {1}", w, h)
		},
		Do: func(texts []string) error {
			w, h, err := d.doc().System().ParseTwo(texts[2], texts[3])
			if err != nil {
				return words.Fault("room-form.unread", "one of the sizes cannot be read")
			}
			return d.addRoom(texts[0], uses[slices.Index(names, texts[1])], w, h, func() { d.askRoomOf(texts) })
		},
	})
}

// useName is a use as a form and a card show it.
func (d *forms) useName(use plan.Use) string { return look.Capital(d.voice.Say(use.Text())) }

// toldUse is what a room's name, the first of some texts, tells of its use.
func (d *forms) toldUse(texts []string) (use, shown string) {
	told := naming.UseOf(texts[0])
	use = d.useName(told)
	if told == plan.UseUnknown {
		return use, d.voice.say("room-form.use.unknown", "{0}: the name tells none", use)
	}
	return use, d.voice.say("room-form.use.guess", "{0}, a guess from the name", use)
}

// freePlace returns where the top left corner of another room would stand.
func (d *forms) freePlace() (at geom.Point) {
	isFirst := true
	for r := range d.doc().Plan().Level(d.doc().Level()).Rooms.All() {
		box := r.Outline().Box()
		if right := box.Max.X + frame.PartitionBehind(r.Sides[0]); isFirst || right > at.X {
			at, isFirst = geom.Point{X: right, Y: box.Min.Y}, false
		}
	}
	return at
}

// addRoom draws a rectangle a partition to the right of the rooms on the level, in line
// with the top of the one farthest right. A tiny one that was not meant is not drawn: then
// again is done.
func (d *forms) addRoom(name string, use plan.Use, w, h unit.Length, again func()) error {
	at := d.freePlace()
	corners := geom.Polygon{at, {X: at.X + w, Y: at.Y}, {X: at.X + w, Y: at.Y + h}, {X: at.X, Y: at.Y + h}}
	sides := make([]plan.ID, len(corners))
	for i := range sides {
		sides[i] = work.NewID(plan.KindSide)
	}
	id := work.NewID(plan.KindRoom)
	room := fill.NewRoom(d.doc().System(), id, name, corners, sides)
	room.Use = use
	var err error
	ask := func(question, body, yes words.Text, do func()) { d.askOr(question, body, yes, do, again) }
	tool.AskIfTiny(room, ask, func() {
		if err = d.Do(edit.AddRoom{Level: d.doc().Level(), Room: room}); err == nil {
			d.doc().Select(id)
			d.view.Fit()
		}
	})
	return err
}

// askCopies asks how many copies of what is chosen to set and how far apart.
func (d *forms) askCopies() {
	clip := d.clips.taken()
	if clip.IsFlat() {
		d.askGrid(clip)
		return
	}
	spacing := "6'"
	if d.doc().System() == unit.Metric {
		spacing = "1.8 m"
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("copies.title", "Copy along the face"),
		Body:  d.voice.say("copies.body", "To the right as seen standing in the room; a spacing below zero goes to the left."),
		Yes:   d.voice.say("copies.yes", "Place them"),
		Lines: []dialog.Line{
			{Label: d.voice.say("copies.count", "How many more"), Text: "1", Check: d.stage.IsCount},
			{Label: d.voice.say("copies.spacing", "Center to center"), Text: spacing, Check: d.stage.IsLength},
		},
		Do: func(texts []string) error {
			n, _ := d.stage.Count(texts[0]) // each was checked at its line
			l, _ := d.stage.Length(texts[1])
			if err := d.tooMany(n * clip.Len()); err != nil {
				return err
			}
			return d.Do(d.rowOf(clip, n, l))
		},
	})
}

// rowOf sets so many copies in a row along their faces.
func (d *forms) rowOf(clip arrange.Clip, n int, apart unit.Length) edit.Edit {
	all := edit.Steps{Label: arrange.Paste{}.Name()}
	for i := 1; i <= n; i++ {
		all.Edits = append(all.Edits, arrange.Paste{Clip: clip, As: fresh(clip), Level: d.doc().Level(), Along: unit.Length(i) * apart})
	}
	return all
}

// askCircuit adds a circuit and puts the openings chosen on it.
func (d *forms) askCircuit() {
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("circuit.title", "A circuit"),
		Yes:   d.voice.say("circuit.yes", "Add it"),
		Lines: []dialog.Line{
			{Label: d.voice.say("circuit.number", "Number at the panel"), Text: d.nextCircuit()},
			{Label: d.voice.say("circuit.name", "What it serves"), Hint: d.voice.say("circuit.name.hint", "such as bedroom receptacles")},
			{Label: d.voice.say("circuit.amps", "Amperes"), Text: "20", Check: d.stage.IsCount},
		},
		Do: func(texts []string) error {
			amps, _ := d.stage.Count(texts[2]) // checked at its line
			id := work.NewID(plan.KindCircuit)
			edits := []edit.Edit{edit.Add{Thing: &plan.Circuit{ID: id, Number: texts[0], Name: texts[1], Amps: amps, Volts: 120, Poles: 1}}}
			for _, chosen := range d.doc().Selection() {
				if chosen.Kind() == plan.KindOpening {
					edits = append(edits, edit.SetCircuit{ID: chosen, Circuit: id})
				}
			}
			return d.Do(edit.Steps{Label: words.New("edit.circuit.add", "Add circuit"), Edits: edits})
		},
	})
}

// askDecision writes down a question that is open, about what is chosen.
func (d *forms) askDecision() {
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("decision.title", "An open decision"),
		Body:  d.voice.say("decision.body", "It is listed with the findings, and printed, until it is settled. It is about what is selected now."),
		Yes:   d.voice.say("decision.yes", "Write it down"),
		Lines: []dialog.Line{
			{Label: d.voice.say("decision.question", "What is open"), Hint: d.voice.say("decision.hint", "such as: how thick is the tile?"), Check: d.stage.IsSaid(d.voice.say("decision.hint", "such as: how thick is the tile?"))},
		},
		Do: func(texts []string) error {
			about := append([]plan.ID{}, d.doc().Selection()...)
			return d.Do(edit.Add{Thing: &plan.Decision{ID: work.NewID(plan.KindDecision), Question: texts[0], About: about}})
		},
	})
}

// askWaiver sets the finding in hand aside with a reason.
func (d *forms) askWaiver() {
	if f := d.findings.inHand(); f != nil {
		d.askWaiverOf(*f)
	}
}

// askWaiverOf sets a finding aside with a reason.
func (d *forms) askWaiverOf(f rule.Finding) {
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("waiver.title", "Set this finding aside"),
		Body:  d.voice.Say(f.Message) + "\n" + d.voice.say("waiver.body", "It stays in the list and on the sheets, with your reason."),
		Yes:   d.voice.say("waiver.yes", "Set it aside"),
		Lines: []dialog.Line{
			{Label: d.voice.say("waiver.reason", "Reason"), Hint: d.voice.say("waiver.reason.hint", "such as: a built-in bench stands there"), Check: d.stage.IsSaid(d.voice.say("waiver.reason.hint", "such as: a built-in bench stands there"))},
			{Label: d.voice.say("waiver.by", "Who decided")},
		},
		Do: func(texts []string) error {
			return d.Do(edit.Add{Thing: &plan.Waiver{ID: work.NewID(plan.KindWaiver), Rule: f.Rule, About: f.About, Reason: texts[0], By: texts[1], Seen: f.Seen()}})
		},
	})
}

// nextCircuit suggests the number after the greatest in use.
func (d *forms) nextCircuit() string {
	most := 0
	for c := range d.doc().Plan().Circuits.All() {
		if n, err := strconv.Atoi(c.Number); err == nil {
			most = max(most, n)
		}
	}
	return strconv.Itoa(most + 1)
}
