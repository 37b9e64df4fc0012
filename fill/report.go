package fill

import (
	"cmp"
	"iter"
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// Light is what a room shows of its findings at one glance.
type Light string

// The lights. None of them says that a room complies.
const (
	Calm    Light = "calm"    // nothing in what was checked but what asks for no deed
	Amber   Light = "amber"   // something to look at, or a choice still open
	Red     Light = "red"     // a figure of the code exceeded
	Unknown Light = "unknown" // not checked, or nothing found where not every rule was judged
)

// LightOf returns the light of a room in which nothing is graver than a finding.
func LightOf(f *rule.Finding) Light {
	switch {
	case f.Waived != nil:
		return Calm
	case f.IsOpen || f.Severity == rule.Warn:
		return Amber
	case f.Severity == rule.Stop:
		return Red
	}
	return Calm
}

// LightOver returns the light of a room by all that was found in it. Where rules were not judged,
// since their figures are not confirmed, nothing found is not known to be calm.
func LightOver(found iter.Seq[*rule.Finding], isPartly bool) Light {
	light := Calm
	for f := range found {
		if one := LightOf(f); light == Calm || one == Red {
			light = one
		}
	}
	if light == Calm && isPartly {
		return Unknown
	}
	return light
}

// RoomReport is what was found in one room.
type RoomReport struct {
	Level *plan.Level
	Room  *plan.Room // nil for what is of no room: the plan as a whole
	Light Light
	Found []rule.Finding // worst first; those set aside are left out
	// Settle, Look and Open count those that the code stops at, those worth a look, and
	// choices still open; Notes the rest.
	Settle, Look, Open, Notes int

	isPartly bool // not every rule was judged
}

// Rooms reports on every room of a plan, the worst first, rooms alike in the plan's order,
// and first of all on what is of no room, where anything is.
func (r Result) Rooms(p plan.Plan) (all []RoomReport) {
	found := map[plan.ID][]rule.Finding{}
	for _, f := range r.All() {
		if f.Waived == nil {
			found[f.Room] = append(found[f.Room], f)
		}
	}
	isPartly := len(r.Unconfirmed()) > 0
	for _, l := range p.Levels {
		for room := range l.Rooms.All() {
			all = append(all, r.report(l, room, found[room.ID], isPartly))
		}
	}
	slices.SortStableFunc(all, func(a, b RoomReport) int {
		return cmp.Or(cmp.Compare(b.Settle, a.Settle), cmp.Compare(b.Look, a.Look), cmp.Compare(b.Open, a.Open), cmp.Compare(b.Notes, a.Notes))
	})
	if of := found[""]; len(of) > 0 {
		all = slices.Insert(all, 0, r.report(nil, nil, of, isPartly))
	}
	return all
}

// RoomOf reports on one room, as Rooms does.
func (r Result) RoomOf(p plan.Plan, id plan.ID) (RoomReport, bool) {
	room, level := p.Room(id)
	if room == nil {
		return RoomReport{}, false
	}
	var found []rule.Finding
	for f := range r.Each() {
		if f.Room == id && f.Waived == nil {
			found = append(found, f)
		}
	}
	return r.report(level, room, found, len(r.Unconfirmed()) > 0), true
}

func (r Result) report(l *plan.Level, room *plan.Room, found []rule.Finding, isPartly bool) RoomReport {
	one := RoomReport{Level: l, Room: room, Found: found, isPartly: isPartly}
	one.Light = LightOver(func(yield func(*rule.Finding) bool) {
		for i := range found {
			if !yield(&found[i]) {
				return
			}
		}
	}, isPartly)
	for _, f := range found {
		switch {
		case f.IsOpen:
			one.Open++
		case f.Severity == rule.Stop:
			one.Settle++
		case f.Severity == rule.Warn:
			one.Look++
		default:
			one.Notes++
		}
	}
	if r.Figures == nil {
		one.Light = Unknown
	}
	return one
}

// Sentence tells the report in one sentence, by the worst in it.
func (r RoomReport) Sentence() words.Text {
	name := words.New("check.plan", "The plan as a whole")
	if r.Room != nil {
		name = namesOf([]*plan.Room{r.Room})
	}
	return r.SentenceOf(name)
}

// SentenceOf is Sentence with another name of the room, where two are called alike.
func (r RoomReport) SentenceOf(name words.Text) words.Text {
	switch {
	case r.Light == Unknown && !r.isPartly:
		return words.New("report.unknown", "{0}: NOT CHECKED", name)
	case r.Settle == 1:
		return words.New("report.settle-one", "{0}: 1 thing to settle", name)
	case r.Settle > 0:
		return words.New("report.settle", "{0}: {1} things to settle", name, r.Settle)
	case r.Look == 1:
		return words.New("report.look-one", "{0}: 1 thing to look at", name)
	case r.Look > 0:
		return words.New("report.look", "{0}: {1} things to look at", name, r.Look)
	case r.Open == 1:
		return words.New("report.open-one", "{0}: one choice is still open", name)
	case r.Open > 0:
		return words.New("report.open", "{0}: {1} choices are still open", name, r.Open)
	case r.Notes > 0:
		return words.New("report.notes", "{0}: nothing to settle in what was checked, {1} to know", name, r.Notes)
	}
	return words.New("report.calm", "{0}: nothing found in what was checked", name)
}
