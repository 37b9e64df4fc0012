package table

import (
	"slices"
	"strings"

	"studbay/fill"
	"studbay/fill/frame"
	"studbay/fill/remodel"
	"studbay/fill/rule"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/unfold"
)

// known is what the plan tells of openings from elsewhere, by opening.
type known struct {
	index    *index.Index
	plan     plan.Plan
	serves   map[plan.ID][]*plan.Control // as a switch
	served   map[plan.ID][]*plan.Control // as a load
	findings map[plan.ID][]rule.Finding
	framed   map[plan.ID]frame.Framed // by side, worked out once
	// notChecked says why there are none; zero where the plan was checked.
	notChecked words.Text
}

func gather(ix *index.Index, result fill.Result) *known {
	p := ix.Plan()
	k := &known{
		index: ix, plan: p, serves: wire.Works(ix), served: map[plan.ID][]*plan.Control{},
		findings: map[plan.ID][]rule.Finding{}, framed: map[plan.ID]frame.Framed{}, notChecked: result.NotChecked(),
	}
	for c := range p.Controls.All() {
		for _, id := range c.Loads {
			k.served[id] = append(k.served[id], c)
		}
	}
	for _, f := range result.All() {
		if f.Opening != "" {
			k.findings[f.Opening] = append(k.findings[f.Opening], f)
		}
	}
	return k
}

func (e *entry) say(t words.Text) Cell { return TextOf(e.voice.Say(t)) }

func (e *entry) roomName() string {
	if e.room == nil {
		return ""
	}
	return e.room.Name
}

func (e *entry) roomID() plan.ID {
	if e.room == nil {
		return ""
	}
	return e.room.ID
}

// face names what the opening sits in.
func (e *entry) face() words.Text {
	switch e.o.At.Part {
	case plan.PartCeiling:
		return words.New("face.ceiling", "ceiling")
	case plan.PartFloor:
		return words.New("face.floor", "floor")
	case plan.PartFace:
		if e.room == nil || e.view.Side == nil {
			return words.Text{}
		}
		return Wall(e.known.index, e.room, e.view.Side.ID)
	}
	if e.view.On == nil {
		return words.Text{}
	}
	return unfold.FixtureFaceName(e.view.On, e.o.At.Part)
}

// note is what the user wrote, and before it from where an opening was moved and what becomes
// of its old box.
func (e *entry) note() Cell {
	old, by, ok := remodel.MovedFrom(e.known.index, e.o)
	if !ok {
		return TextOf(e.o.Note)
	}
	said := e.voice.Say(words.New("schedule.moved", "moved {0} from its old place; old box: {1}", by, old.Fate.Text()))
	if e.o.Note != "" {
		said += "\n" + e.o.Note
	}
	return TextOf(said)
}

func (e *entry) gangs() Cell {
	if e.o.Gangs == 0 {
		return Cell{}
	}
	return NumberOf(e.o.Gangs)
}

// height returns that of the centre, or of the bottom (−1) or top (1) of the box.
func (e *entry) height(line int) Cell {
	switch e.o.At.Part {
	case plan.PartCeiling, plan.PartFloor, plan.PartTop:
		return Cell{}
	}
	box := frame.RectOf(e.o, e.room)
	if line != 0 && e.o.IsUnread() { // nobody knows where its edges are
		return Cell{}
	}
	switch line {
	case -1:
		return LengthOf(box.Bottom)
	case 1:
		return LengthOf(box.Top)
	}
	return LengthOf(frame.CentreHeight(e.o, e.room))
}

// fromPart says what of a From is wanted.
type fromPart int

const (
	fromName fromPart = iota
	fromCentre
	fromEdge
)

func (e *entry) from(i int, want fromPart) Cell {
	if i >= len(e.froms) {
		return Cell{}
	}
	switch want {
	case fromCentre:
		return LengthOf(e.froms[i].Centre)
	case fromEdge:
		if e.o.IsUnread() {
			return Cell{}
		}
		return LengthOf(e.froms[i].Edge)
	}
	return e.say(e.froms[i].Name)
}

func (e *entry) circuit() Cell {
	if e.view.Circuit == nil {
		return Cell{}
	}
	return TextOf(spaces(e.view.Circuit.Number))
}

// spaces writes the number of a circuit that takes more than one space of the panel as
// "5,7": what is written "5/7" or "5-7" a spreadsheet takes for a day of May.
func spaces(number string) string {
	parts := strings.FieldsFunc(number, func(r rune) bool { return strings.ContainsRune(",/-–+& ", r) })
	if slices.ContainsFunc(parts, func(part string) bool { return strings.Trim(part, "0123456789") != "" }) {
		return number
	}
	return strings.Join(parts, ",")
}

// onTape writes a length as a tape is read: in feet and inches, or metric.
func (e *entry) onTape(c Cell) Cell {
	if c.Kind != Length {
		return Cell{}
	}
	return e.say(words.New("schedule.tape", "{0}", c.Length()))
}

// controls says what a switch serves, and what a load is served by.
func (e *entry) controls() Cell {
	var all []string
	for _, c := range e.known.serves[e.o.ID] {
		all = append(all, e.voice.Say(words.New("schedule.serves", "serves {0}", e.tags(c.Loads))))
	}
	for _, c := range e.known.served[e.o.ID] {
		all = append(all, e.voice.Say(words.New("schedule.served", "by {0}", e.tags(c.Switches))))
	}
	return TextOf(strings.Join(all, "; "))
}

func (e *entry) tags(ids []plan.ID) string {
	var tags []string
	for _, id := range ids {
		if o, _ := e.known.plan.Opening(id); o != nil {
			tags = append(tags, o.Tag)
		}
	}
	return strings.Join(tags, ", ")
}

// findings puts down each with its weight before it, or that nothing was checked and why.
func (e *entry) findings() Cell {
	if not := e.known.notChecked; !not.IsZero() {
		return e.say(not)
	}
	var all []string
	for _, f := range e.known.findings[e.o.ID] {
		all = append(all, e.voice.Say(words.New("schedule.finding", "{0}: {1}", Weight(f), f.Message)))
	}
	return TextOf(strings.Join(all, "; "))
}

// Weight names how much a finding weighs: its severity, or that it is open or waived.
func Weight(f rule.Finding) words.Text {
	switch {
	case f.Waived != nil:
		return words.New("weight.waived", "set aside")
	case f.IsOpen:
		return words.New("weight.open", "open")
	}
	return words.New("weight."+f.Severity.String(), f.Severity.String())
}
