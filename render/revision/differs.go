package revision

import (
	"strconv"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/table"
)

// Differing is one thing that an opening says otherwise. Before and Now are empty where
// telling that it differs is all there is to tell, and either is where it says nothing.
type Differing struct {
	Field       string // of the file: kind, gangs ...
	Name        words.Text
	Before, Now words.Text
}

// Text says it in a sentence's part: "kind: duplex receptacle, was GFCI receptacle".
func (d Differing) Text() words.Text {
	switch {
	case d.Before.IsZero() && d.Now.IsZero():
		return d.Name
	case d.Before.IsZero():
		return words.New("revision.now", "{0}: {1}", d.Name, d.Now)
	case d.Now.IsZero():
		return words.New("revision.was", "{0}: none, was {1}", d.Name, d.Before)
	}
	return words.New("revision.now-was", "{0}: {1}, was {2}", d.Name, d.Now, d.Before)
}

// fields are what an opening says besides where it is. Take copies the field from one
// opening to another. Say is nil where a change is all that is told.
var fields = []struct {
	field string
	name  words.Text
	take  func(to, from *plan.Opening)
	say   func(plan.Plan, *plan.Opening) words.Text
}{
	{"kind", words.New("revision.kind", "kind"), func(to, from *plan.Opening) { to.Kind = from.Kind }, func(_ plan.Plan, o *plan.Opening) words.Text { return table.What(o) }},
	{"tag", words.New("revision.tag", "tag"), func(to, from *plan.Opening) { to.Tag = from.Tag }, func(_ plan.Plan, o *plan.Opening) words.Text { return plainly(o.Tag) }},
	{"gangs", words.New("revision.gangs", "gangs"), func(to, from *plan.Opening) { to.Gangs = from.Gangs }, func(_ plan.Plan, o *plan.Opening) words.Text { return plainly(strconv.Itoa(o.Gangs)) }},
	{"assembly", words.New("revision.box", "box"), func(to, from *plan.Opening) { to.Assembly = from.Assembly }, func(_ plan.Plan, o *plan.Opening) words.Text { return plainly(table.AssemblyCode(o.Assembly)) }},
	{"status", words.New("revision.status", "status"), func(to, from *plan.Opening) { to.Status = from.Status }, func(_ plan.Plan, o *plan.Opening) words.Text { return o.Status.Text() }},
	{"circuit", words.New("revision.circuit", "circuit"), func(to, from *plan.Opening) { to.Circuit = from.Circuit }, circuit},
	{"devices", words.New("revision.devices", "devices"), func(to, from *plan.Opening) { to.Devices = from.Devices }, nil},
	{"contents", words.New("revision.contents", "what was entered as in the box"), func(to, from *plan.Opening) { to.Contents = from.Contents }, nil},
	{"grounded", words.New("revision.grounded", "grounding of an old box"), func(to, from *plan.Opening) { to.Grounded = from.Grounded }, nil},
	{"grip", words.New("revision.grip", "grip of a switch"), func(to, from *plan.Opening) { to.Grip = from.Grip }, func(_ plan.Plan, o *plan.Opening) words.Text {
		return orNone(o.Grip != 0, words.New("plain", "{0}", o.Grip))
	}},
	{"senses", words.New("revision.senses", "how it senses smoke"), func(to, from *plan.Opening) { to.Senses = from.Senses }, func(_ plan.Plan, o *plan.Opening) words.Text { return orNone(o.Senses != "", o.Senses.Text()) }},
	{"joined", words.New("revision.joined", "whether it sounds with the other alarms"), func(to, from *plan.Opening) { to.Joined = from.Joined }, nil},
	{"for", words.New("revision.for", "the appliance it is for"), func(to, from *plan.Opening) { to.For = from.For }, func(_ plan.Plan, o *plan.Opening) words.Text { return orNone(o.For != "", o.For.Text()) }},
	{"milliamps", words.New("revision.draws", "what the appliance draws"), func(to, from *plan.Opening) { to.Draws = from.Draws }, func(_ plan.Plan, o *plan.Opening) words.Text {
		return orNone(o.Draws != 0, words.New("revision.amperes", "{0} A", o.Draws.Text()))
	}},
	{"note", words.New("revision.note", "note"), func(to, from *plan.Opening) { to.Note = from.Note }, nil},
}

// other is what differs in something that no field above holds.
var other = words.New("revision.other", "a detail")

// orNone is a text, or nothing where it is not said.
func orNone(isSaid bool, text words.Text) words.Text {
	if !isSaid {
		return words.Text{}
	}
	return text
}

func plainly(text string) words.Text {
	if text == "" {
		return words.Text{}
	}
	return words.New("plain", "{0}", text)
}

func circuit(p plan.Plan, o *plan.Opening) words.Text {
	if c, ok := p.Circuits.Get(o.Circuit); ok {
		return plainly(c.Number)
	}
	return words.Text{}
}

// differing lists what an opening says otherwise than before, but for where it is: one
// that another host carries at the same spot says nothing else.
func (l List) differing(old, now *plan.Opening) (all []Differing) {
	a, b := *old, *now
	for _, x := range []*plan.Opening{&a, &b} {
		x.At, x.From, x.Height = plan.Anchor{}, "", plan.Height{}
	}
	for _, f := range fields {
		x, y, none := plan.Opening{}, plan.Opening{}, plan.Opening{}
		f.take(&x, &a)
		f.take(&y, &b)
		f.take(&a, &none)
		f.take(&b, &none)
		if plan.Same(&x, &y) {
			continue
		}
		d := Differing{Field: f.field, Name: f.name}
		if f.say != nil {
			d.Before, d.Now = f.say(l.Old.Index.Plan(), old), f.say(l.New.Index.Plan(), now)
		}
		all = append(all, d)
	}
	if !plan.Same(&a, &b) {
		all = append(all, Differing{Field: "other", Name: other})
	}
	return all
}
