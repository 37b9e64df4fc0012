package card

import (
	"studbay/app/work"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ruleName is the title of a rule, or its ID where it is not known.
func ruleName(id string) words.Text {
	for _, r := range fill.Rules {
		if r.ID == id {
			return r.Title
		}
	}
	return words.New("plain", "{0}", id)
}

// newWaiverCard shows a finding that was set aside: by whom and why.
func newWaiverCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() (plan.Waiver, bool) {
		if x, ok := f.Index.Plan().Waivers.Get(id); ok {
			return *x, true
		}
		return plan.Waiver{ID: id}, false
	}
	if _, ok := now(); !ok {
		return nil
	}
	f.heading = func() (string, string, bool) {
		x, ok := now()
		return f.say("waiver.card", "Set aside: {0}", ruleName(x.Rule)), f.called(x.About), ok
	}
	text := func(label string, of func(*plan.Waiver) *string) line {
		return f.textField(label, func() string { x, _ := now(); return *of(&x) }, func(text string) error {
			x, _ := now()
			*of(&x) = text
			return f.Window.Do(plan.ChangeWaiver{Waiver: x})
		})
	}
	f.lay([]line{
		text(f.say("waiver.reason", "Reason"), func(x *plan.Waiver) *string { return &x.Reason }),
		text(f.say("waiver.by", "Who decided"), func(x *plan.Waiver) *string { return &x.By }),
		text(f.say("plan.date", "Date"), func(x *plan.Waiver) *string { return &x.Date }),
		f.sentenceLine(func() string {
			return f.say("waiver.still", "It stays in the list and on the sheets, with its reason, until it is taken back.")
		}),
	}, nil, f.newPressLine(f.say("waiver.back", "Take it back"), func() { f.Window.Run("delete") }))
	return f.ready()
}

// newLevelCard shows a storey: its name and how high it is.
func newLevelCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() plan.Level {
		if l := f.Index.Plan().Level(id); l != nil {
			return *l
		}
		return plan.Level{ID: id}
	}
	if f.Index.Plan().Level(id) == nil {
		return nil
	}
	f.heading = func() (string, string, bool) {
		l := f.Index.Plan().Level(id)
		if l == nil {
			return "", "", false
		}
		return l.Name, f.say("level.second", "{0} · {1}", work.RoomsText(l.Rooms.Len()), work.OpeningsText(l.Openings.Len())), true
	}
	f.lay([]line{
		f.textField(f.say("level-form.name", "Name"), func() string { return now().Name }, func(text string) error {
			return f.Window.Do(plan.ChangeLevel{ID: id, Title: text, Elevation: now().Elevation})
		}),
		f.lengthField(f.say("level.elevation", "Subfloor at"), func() unit.Length { return now().Elevation }, func(l unit.Length) error {
			return f.Window.Do(plan.ChangeLevel{ID: id, Title: now().Name, Elevation: l})
		}, f.long),
		f.sentenceLine(func() string {
			return f.say("level.above", "Measured from the subfloor of the lowest level.")
		}),
	}, nil, f.newPressLine(f.say("level.out", "Take the level out"), func() { f.Window.Run("delete") }))
	return f.ready()
}
