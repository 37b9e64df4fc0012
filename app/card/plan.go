package card

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
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
		second := f.say("plan.second", "{0}, {1} · {2}", roomsText(len(rooms)), areaOf(rooms), openingsText(openings))
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
	}, NewFold(f.say("circuit.all", "Circuits"), circuits.Container))
	return f.ready()
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
	return look.NewPress(row, look.Bare, look.Grid/2, look.Grid, func() { l.form.Window.Select(x.ID) })
}
