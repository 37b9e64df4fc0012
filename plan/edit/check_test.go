package edit_test

import (
	"errors"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// TestCheckNamesThePlace breaks a sound plan in one way each, as a hand in the file
// might, and asks for the place.
func TestCheckNamesThePlace(t *testing.T) {
	for _, tt := range []struct {
		name string
		harm func(*plan.Plan, *plan.Level)
		path string
		id   plan.ID
	}{
		{"no header", func(p *plan.Plan, _ *plan.Level) { p.Header = nil }, "/header", ""},
		{"unknown units", func(p *plan.Plan, _ *plan.Level) { p.Header = &plan.Header{Edition: "2023", Units: "ells"} }, "/header/units", ""},
		{"an empty level", func(p *plan.Plan, _ *plan.Level) { p.Levels = append(p.Levels, nil) }, "/levels/1", ""},
		{"a level twice", func(p *plan.Plan, l *plan.Level) { p.Levels = append(p.Levels, l) }, "/levels/1/id", ground},
		{"a room on two levels", func(p *plan.Plan, l *plan.Level) {
			p.Levels = append(p.Levels, &plan.Level{ID: "vaaaaaaaa", Rooms: l.Rooms})
		}, "/levels/1/rooms/0/id", shedRoom},
		{"a side in two rooms", func(_ *plan.Plan, l *plan.Level) {
			r, _ := l.Rooms.Get(shedRoom)
			c := *r
			c.ID = "rzzzzzzzz"
			l.Rooms = l.Rooms.With(&c)
		}, "/levels/0/rooms/1/sides/0/id", north},
		{"a tag twice", func(_ *plan.Plan, l *plan.Level) { change(l, n2, func(o *plan.Opening) { o.Tag = "S1" }) }, "/levels/0/openings/3/tag", n2},
		{"an opening past the end", func(_ *plan.Plan, l *plan.Level) {
			change(l, n1, func(o *plan.Opening) { o.At.Along = 13 * unit.Foot })
		}, "/levels/0/openings/2/at/along", n1},
		{"an opening on nothing", func(_ *plan.Plan, l *plan.Level) { change(l, n1, func(o *plan.Opening) { o.At.Host = "szzzzzzzz" }) }, "/levels/0/openings/2/at/host", n1},
		{"an opening on a host of another level", func(p *plan.Plan, l *plan.Level) {
			o, _ := l.Openings.Get(n1)
			l.Openings = l.Openings.Without(n1)
			p.Levels = append(p.Levels, &plan.Level{ID: "vaaaaaaaa", Openings: plan.Set[*plan.Opening]{}.With(o)})
		}, "/levels/1/openings/0/at/host", n1},
		{"a circuit that is not there", func(_ *plan.Plan, l *plan.Level) { change(l, n1, func(o *plan.Opening) { o.Circuit = "kzzzzzzzz" }) }, "/levels/0/openings/2/circuit", n1},
		{"an ill-formed ID", func(_ *plan.Plan, l *plan.Level) {
			l.Openings = l.Openings.With(&plan.Opening{ID: "o1"})
		}, "/levels/0/openings/0/id", "o1"},
		{"fixtures in a ring", func(_ *plan.Plan, l *plan.Level) {
			f, _ := l.Fixtures.Get(bench)
			c := *f
			c.At = plan.Anchor{Host: sink, Part: plan.PartTop}
			l.Fixtures = l.Fixtures.With(&c)
		}, "/levels/0/fixtures/0/at/host", bench},
		{"doors one over the other", func(_ *plan.Plan, l *plan.Level) {
			b, _ := l.Breaks.Get(door)
			c := *b
			c.ID, c.At.Along = "baaaaaaaa", 2*unit.Foot
			l.Breaks = l.Breaks.With(&c)
		}, "/levels/0/breaks/0/at/along", "baaaaaaaa"},
		{"a side without length", func(_ *plan.Plan, l *plan.Level) {
			changeRoom(l, func(r *plan.Room) { r.Sides[1].Start = r.Sides[0].Start })
		}, "/levels/0/rooms/0/sides", shedRoom},
		{"against the clock", func(_ *plan.Plan, l *plan.Level) {
			changeRoom(l, func(r *plan.Room) { r.Sides[1].Start, r.Sides[3].Start = r.Sides[3].Start, r.Sides[1].Start })
		}, "/levels/0/rooms/0/sides", shedRoom},
		{"a hedge for a wall", func(_ *plan.Plan, l *plan.Level) { changeRoom(l, func(r *plan.Room) { r.Sides[2].Kind = "hedge" }) }, "/levels/0/rooms/0/sides/2/kind", shedRoom},
		{"a layer below zero", func(_ *plan.Plan, l *plan.Level) {
			changeRoom(l, func(r *plan.Room) { r.Sides[2].Finish = []plan.Layer{{}, {Thickness: -1}} })
		}, "/levels/0/rooms/0/sides/2/finish/1/thickness", shedRoom},
		{"11 km out", func(_ *plan.Plan, l *plan.Level) {
			changeRoom(l, func(r *plan.Room) { r.Sides[2].Start.X = 11_000 * unit.Metre })
		}, "/levels/0/rooms/0/sides/2/start", shedRoom},
		{"a cable to nowhere", func(p *plan.Plan, _ *plan.Level) {
			p.Cables = p.Cables.With(&plan.Cable{ID: run, From: n1, To: "ozzzzzzzz", Size: 12, Wires: 2})
		}, "/cables/1/to", run},
		{"a control of a fixture", func(p *plan.Plan, _ *plan.Level) {
			p.Controls = p.Controls.With(&plan.Control{ID: control, Loads: []plan.ID{lamp, bench}})
		}, "/controls/0/loads/1", control},
		{"a waiver without a reason", func(p *plan.Plan, _ *plan.Level) {
			p.Waivers = p.Waivers.With(&plan.Waiver{ID: w, Rule: "wall-reach", About: north})
		}, "/waivers/0/reason", w},
		{"a decision about nothing there", func(p *plan.Plan, _ *plan.Level) {
			p.Decisions = p.Decisions.With(&plan.Decision{ID: question, Question: "?", About: []plan.ID{"ozzzzzzzz"}})
		}, "/decisions/0/about/0", question},
		{"an amendment of nothing", func(p *plan.Plan, _ *plan.Level) {
			p.Amendments = p.Amendments.With(&plan.Amendment{ID: "aaaaaaaaa", Reason: "Town."})
		}, "/amendments/0/figure", "aaaaaaaaa"},
		{"a panel that is a bench", func(p *plan.Plan, _ *plan.Level) {
			p.Circuits = p.Circuits.With(&plan.Circuit{ID: circuit, Panel: bench})
		}, "/circuits/0/panel", circuit},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p := shed(t)
			l := *p.Levels[0]
			p.Levels = []*plan.Level{&l}
			tt.harm(&p, &l)
			err := plan.Check(p)
			var f *plan.Fault
			var r *plan.Refusal
			if !errors.As(err, &f) || !errors.As(err, &r) {
				t.Fatalf("Check: %v", err)
			}
			if f.Path != tt.path || f.ID != tt.id {
				t.Errorf("Check: %v (%s), want it at %s (%s)", err, f.ID, tt.path, tt.id)
			}
		})
	}
}

func change(l *plan.Level, id plan.ID, how func(*plan.Opening)) {
	o, _ := l.Openings.Get(id)
	c := *o
	how(&c)
	l.Openings = l.Openings.With(&c)
}

func changeRoom(l *plan.Level, how func(*plan.Room)) {
	r, _ := l.Rooms.Get(shedRoom)
	c := *r
	c.Sides = nil
	for _, s := range r.Sides {
		side := *s
		c.Sides = append(c.Sides, &side)
	}
	how(&c)
	l.Rooms = l.Rooms.With(&c)
}

func TestTheEmptyPlanIsSound(t *testing.T) {
	if err := plan.Check(plan.New("Empty", ground)); err != nil {
		t.Error(err)
	}
}
