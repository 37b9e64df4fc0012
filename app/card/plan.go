package card

import (
	"cmp"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill/code"
	"studbay/plan"
)

// newPlanCard shows the plan as a whole: it stands where nothing is chosen.
func newPlanCard(c Context) Card {
	f := &form{Context: c}
	now := func() plan.Header {
		if h := f.Index.Plan().Header; h != nil {
			return *h
		}
		return plan.Header{}
	}
	change := func(do func(*plan.Header)) error {
		h := now()
		do(&h)
		return f.Window.Do(plan.ChangeHeader{Header: h})
	}
	f.heading = func() (string, string, bool) {
		p := f.Index.Plan()
		var rooms []*plan.Room
		openings := 0
		for _, l := range p.Levels {
			for r := range l.Rooms.All() {
				if r.Use != plan.UseOutdoors {
					rooms = append(rooms, r)
				}
			}
			openings += l.Openings.Len()
		}
		second := f.say("plan.second", "{0}, {1} · {2}", work.RoomsText(len(rooms)), areaOf(rooms), work.OpeningsText(openings))
		return now().Title, second, true
	}
	text := func(label string, read func(plan.Header) string, write func(*plan.Header, string)) line {
		return f.textField(label, func() string { return read(now()) }, func(text string) error {
			return change(func(h *plan.Header) { write(h, text) })
		})
	}
	edition := NewChoice(f.say("plan.edition", "Checked by"), now().Edition, func() (options []Option) {
		for _, name := range code.Editions() {
			figures, err := code.Edition(name)
			if err != nil {
				continue
			}
			options = append(options, Option{Label: figures.Title, Now: now().Edition == name, Do: func() {
				f.shown(change(func(h *plan.Header) { h.Edition = name }))
			}})
		}
		return options
	})
	circuits := &circuitList{Container: look.Column(0), form: f}
	f.fields = append(f.fields, circuits)
	f.lay([]line{
		text(f.say("plan.title", "Title"), func(h plan.Header) string { return h.Title }, func(h *plan.Header, t string) { h.Title = t }),
		edition,
	}, []line{
		text(f.say("plan.client", "For"), func(h plan.Header) string { return h.Client }, func(h *plan.Header, t string) { h.Client = t }),
		text(f.say("plan.site", "Site"), func(h plan.Header) string { return h.Site }, func(h *plan.Header, t string) { h.Site = t }),
		text(f.say("plan.author", "Drawn by"), func(h plan.Header) string { return h.Author }, func(h *plan.Header, t string) { h.Author = t }),
		text(f.say("plan.revision", "Revision"), func(h plan.Header) string { return h.Revision }, func(h *plan.Header, t string) { h.Revision = t }),
		text(f.say("plan.date", "Date"), func(h plan.Header) string { return h.Date }, func(h *plan.Header, t string) { h.Date = t }),
		f.north(now, change),
		text(f.say("plan.currency", "Prices in"), func(h plan.Header) string { return h.Currency }, func(h *plan.Header, t string) { h.Currency = t }),
	}, NewFold(f.Context, f.say("plan.noted", "Circuits, levels and what is decided"), look.Inset(look.Grid, 0, 0, 0,
		look.Column(0, append([]fyne.CanvasObject{NewFold(f.Context, f.say("circuit.all", "Circuits"), circuits.Container)}, f.noted()...)...))))
	return f.ready()
}

// north is where the sheet's upper edge looks.
func (f *form) north(now func() plan.Header, change func(func(*plan.Header)) error) line {
	return f.textField(f.say("plan.north", "Up is, degrees"), func() string { return strconv.Itoa(now().North) }, func(text string) error {
		n, err := strconv.Atoi(text)
		if err != nil || n < 0 || n > 359 {
			return f.wanted("plan.north.wanted", "write whole degrees clockwise from north, 0 to 359: 90 where up is east")
		}
		return change(func(h *plan.Header) { h.North = n })
	})
}

// noted is what else is written down in the plan: levels, decisions, findings set aside
// and amendments; pressing a row shows its card.
func (f *form) noted() (folds []fyne.CanvasObject) {
	p := func() plan.Plan { return f.Index.Plan() }
	list := func(title, none string, ids func() []plan.ID, say func(plan.ID) string, add *pressLine) {
		rows := newRebuilt(func() string { return joined(ids()) }, func() (lines []line) {
			for _, id := range ids() {
				lines = append(lines, f.row(id, func() string { return say(id) }))
			}
			if len(lines) == 0 {
				lines = append(lines, f.sentenceLine(func() string { return none }))
			}
			return lines
		})
		f.fields = append(f.fields, rows)
		body := look.Column(look.Grid/2, rows.Container)
		if add != nil {
			body.Add(add)
		}
		folds = append(folds, NewFold(f.Context, title, body))
	}
	command := func(label, id string) *pressLine { return f.newPressLine(label, func() { f.Window.Run(id) }) }
	list(f.say("level.all", "Levels"), "", func() (ids []plan.ID) {
		for _, l := range p().Levels {
			ids = append(ids, l.ID)
		}
		return ids
	}, func(id plan.ID) string {
		if l := p().Level(id); l != nil {
			return f.say("level.row", "{0}, subfloor at {1}", l.Name, l.Elevation)
		}
		return ""
	}, command(f.say("level.add", "Another level"), "add-level"))
	list(f.say("decision.all", "Open decisions"), f.say("decision.none", "None is open."), func() []plan.ID { return idsOf(p().Decisions) }, func(id plan.ID) string {
		x, _ := p().Decisions.Get(id)
		if x == nil {
			return ""
		}
		return x.Question
	}, command(f.say("decision.add", "Another one …"), "add-decision"))
	list(f.say("waiver.all", "Set aside"), f.say("waiver.none", "No finding is set aside. Check, Set the finding aside does it."), func() []plan.ID { return idsOf(p().Waivers) }, func(id plan.ID) string {
		x, _ := p().Waivers.Get(id)
		if x == nil {
			return ""
		}
		return f.say("waiver.row", "{0}: {1}", ruleName(x.Rule), x.Reason)
	}, nil)
	list(f.say("amendment.all", "Local amendments"), f.say("amendment.none", "The edition holds as it is."), func() []plan.ID { return idsOf(p().Amendments) }, func(id plan.ID) string {
		x, _ := p().Amendments.Get(id)
		switch {
		case x == nil:
			return ""
		case x.Rule != "":
			return f.say("amendment.row.rule", "{0} switched off: {1}", AmendmentName(*x), x.Reason)
		}
		return f.say("amendment.row", "{0} is {1}: {2}", AmendmentName(*x), x.Value, x.Reason)
	}, command(f.say("amendment.add", "Another one …"), "amend-figure"))
	return folds
}

// idsOf lists the IDs of a set in its order.
func idsOf[T plan.Noun](set plan.Set[T]) (ids []plan.ID) {
	for x := range set.All() {
		ids = append(ids, x.Key())
	}
	return ids
}

// circuitList is the circuits by number; pressing one shows its card.
type circuitList struct {
	*fyne.Container
	form  *form
	shown plan.Set[*plan.Circuit]
	built bool
}

// Update lists the circuits anew where they are others.
func (l *circuitList) Update() {
	now := l.form.Index.Plan().Circuits
	if l.built && now == l.shown {
		return
	}
	l.shown, l.built = now, true
	l.Objects = nil
	all := slices.SortedFunc(now.All(), func(a, b *plan.Circuit) int {
		return cmp.Or(cmp.Compare(len(a.Number), len(b.Number)), cmp.Compare(a.Number, b.Number))
	})
	for _, x := range all {
		l.Objects = append(l.Objects, l.row(x))
	}
	if len(all) == 0 {
		l.Objects = append(l.Objects, look.NewParagraph(l.form.say("circuit.none", "None is drawn yet: Place, Another circuit."), look.Quiet, l.form.Width))
	}
	l.Refresh()
}

func (l *circuitList) row(x *plan.Circuit) fyne.CanvasObject {
	number := look.Sized(32, 0, look.NewText(x.Number, look.Strong))
	name := look.NewFlexible(x.Name, look.Body)
	amps := look.NewText(l.form.say("circuit.row.amps", "{0} A", x.Amps), look.Second)
	row := look.Row(look.Grid/2, 1, number, name, amps)
	return l.form.newPress(row, look.Bare, look.Grid/2, look.Grid, func() { l.form.Window.Select(x.ID) })
}
