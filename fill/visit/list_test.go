package visit_test

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/fill/visit"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func listed(h *ruletest.House) visit.List {
	h.T.Helper()
	p := h.Made()
	return visit.Of(index.New(p), filltest.Check(h.T, p))
}

func coded(code string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
}

func said(all []words.Text) (out []string) {
	for _, t := range all {
		out = append(out, t.String())
	}
	return out
}

// TestWhatIsMissingOnTheList: what nobody drew is not looked at, and told.
func TestWhatIsMissingOnTheList(t *testing.T) {
	const outdoors, panel, cables, circuits, fuel = "the outdoors", "the panel", "cables", "circuits", "anything that burns fuel"
	for _, tt := range []struct {
		name string
		make func(h *ruletest.House, r *ruletest.Room)
		want []string
	}{
		{"nothing drawn", func(*ruletest.House, *ruletest.Room) {}, []string{outdoors, panel, cables, circuits, fuel}},
		{"an outdoors before another room", func(h *ruletest.House, _ *ruletest.Room) {
			h.Square(plan.UseOutdoors, 300, 0, 100, 100)
			h.Square(plan.UseHall, 500, 0, 100, 100)
		}, []string{panel, cables, circuits, fuel}},
		{"a panel before a bed", func(_ *ruletest.House, r *ruletest.Room) {
			r.Stand(plan.FixturePanel, r.On(0, 20), 14, 4)
			r.Fixture(plan.FixtureBed, 2, 20, 60)
		}, []string{outdoors, cables, circuits, fuel}},
		{"a gas range before a bed", func(_ *ruletest.House, r *ruletest.Room) {
			r.Fixture(plan.FixtureRange, 0, 20, 30).Fuel = "gas"
			r.Fixture(plan.FixtureBed, 2, 20, 60)
		}, []string{outdoors, panel, cables, circuits}},
		{"a circuit and a cable", func(h *ruletest.House, r *ruletest.Room) {
			c := h.Circuit(20)
			h.Cable(r.Opening("duplex", r.On(0, 20)).ID, r.Opening("duplex", r.On(0, 60)).ID, 12, 2, c)
		}, []string{outdoors, panel, fuel}},
		{"what is there, and what goes", func(_ *ruletest.House, r *ruletest.Room) {
			r.Opening("duplex", r.On(0, 20), ruletest.Existing)
			r.Opening("duplex", r.On(0, 50), ruletest.Existing)
			r.Opening("duplex", r.On(0, 80), ruletest.Removed)
			r.Opening("duplex", r.On(0, 100))
		}, []string{"2 boxes that are there already", outdoors, panel, cables, circuits, fuel}},
	} {
		h := ruletest.New(t)
		tt.make(h, h.Square(plan.UseBedroom, 0, 0, 120, 120))
		if got := said(listed(h).Missing); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// TestWhatIsPointedAt: each tick with how many boxes it is of, then fans, alarms and counters by
// their tags. 314.20, 314.17 and 334.30, 300.4(A)(1), 250.148(C), 404.2(C), 314.27(C), IRC R314.3
// and 210.52(C)(1).
func TestWhatIsPointedAt(t *testing.T) {
	h := ruletest.New(t)
	kitchen := h.Square(plan.UseKitchen, 0, 0, 240, 160)
	garage := h.Square(plan.UseGarage, 300, 0, 240, 160)
	for _, s := range kitchen.Sides {
		s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	}
	for _, s := range garage.Sides {
		s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5) + 1}
	}
	put := func(r *ruletest.Room, tag, kind, code string, at plan.Anchor) {
		r.Opening(kind, at, ruletest.Tagged(tag), coded(code))
	}
	put(kitchen, "S1", "switch", "PN3", kitchen.On(0, 20))           // plastic of one gang, thin, neutral
	put(kitchen, "S2", "switch", "SQ1", kitchen.On(0, 40))           // steel, thin, neutral
	put(kitchen, "C1", "counter", "PN3", kitchen.On(0, 80))          // plastic of one gang, thin
	put(kitchen, "I1", "island", "PN3", kitchen.On(0, 100))          // the same
	put(kitchen, "Q1", "quad", "PN4", kitchen.On(0, 120))            // plastic of two gangs, thin
	put(kitchen, "F1", "fan-light", "FN1", kitchen.Ceiling(120, 80)) // steel, in no wall
	put(kitchen, "F2", "fan-light", "FN1", kitchen.Ceiling(60, 80))
	put(kitchen, "A1", "smoke", "RD1", kitchen.Ceiling(200, 120)) // plastic, round
	put(garage, "G1", "switch", "DV2", garage.On(0, 40))          // steel that clamps, thick
	put(garage, "N1", "duplex", "", garage.On(0, 80))             // nobody chose a box
	list := listed(h)
	var got []string
	for _, p := range list.Points {
		got = append(got, strings.Join([]string{p.Title.String(), p.Detail.String(), p.Section}, "; "))
	}
	want := []string{
		`Box fronts: 9; even with the finish, or at most 1/4 in behind it where it does not burn; 314.20`,
		`First staples: 9; within 8" of 3 plastic boxes of one gang without a clamp, within 12" of 6 others; 334.30, 314.17`,
		`Plates: 5 boxes on thin walls; where the edge of a hole is nearer than 1-1/4" to that of the wood; 300.4(A)(1)`,
		`Bonded: 4 metal boxes; a ground screw used for nothing else, and a pigtail; 250.148(C)`,
		`Neutrals: 2 switch boxes; a white left long in each, capped where not used; 404.2(C)`,
		`Fan boxes: F1, F2; marked for a fan; over 35 lb, the limit on the box; 314.27(C)`,
		`Alarms: A1; wired, all on one signal, away from bath doors and cooking; IRC R314.3`,
		`Counter boxes: C1, I1; no point along a counter farther than the reach of one; 210.52(C)(1)`,
	}
	if !slices.Equal(got, want) {
		t.Errorf("pointed at %q,\nwant %q", got, want)
	}
	for i, c := range append(slices.Clone(visit.Columns), -1, -1, -1) {
		if i < len(list.Points) && list.Points[i].Column != c {
			t.Errorf("%s explains column %d, want %d", list.Points[i].Title, list.Points[i].Column, c)
		}
	}
	// Five in thin walls, four of metal, two neutrals; nine fronts and as many staples.
	if list.Boxes != 10 || list.Ticks != 9+9+5+4+2 || len(list.Rooms) != 2 {
		t.Errorf("%d boxes, %d ticks, %d rooms", list.Boxes, list.Ticks, len(list.Rooms))
	}
	if bare := visit.Of(index.New(h.Made()), fill.Result{}); bare.Points != nil || bare.Boxes != 10 {
		t.Errorf("without figures %+v are pointed at of %d boxes", bare.Points, bare.Boxes)
	}
}

// TestOneBoxOfTheList: its circuit, what it holds and what is in it, and the gravest that was
// found of it. In a box of 18 in³ two cables 12/2 with ground and one device on 12: four
// conductors, two for the device, one for all grounds (314.16(B)): 7 × 2.25 = 15.75.
func TestOneBoxOfTheList(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseHall, 0, 0, 120, 120)
	c := h.Circuit(20, func(c *plan.Circuit) { c.Number = "7" })
	r.Opening("duplex", r.On(0, 80), ruletest.Tagged("R10"), coded("PN1"), ruletest.On(c))
	r.Opening("duplex", r.On(0, 40), ruletest.Tagged("R9"), coded(""))
	r.Opening("duplex", r.On(1, 40), ruletest.Tagged("R2"), coded("PN1"), ruletest.Up(94))
	h.Square(plan.UseDen, 300, 0, 120, 120)
	list := listed(h)
	if len(list.Rooms) != 1 || list.Rooms[0].Room != r.Room || list.Rooms[0].Report.Room != r.Room || list.Rooms[0].Level.Rooms.Len() != 2 {
		t.Fatalf("%+v", list.Rooms)
	}
	var tags []string
	for _, b := range list.Rooms[0].Boxes {
		tags = append(tags, b.Opening.Tag)
		switch b.Opening.Tag {
		case "R9":
			if b.There != 0 || b.Used != 0 || b.Circuit != "" || b.Ticks[visit.Set].Applies {
				t.Errorf("without a box: %+v", b)
			}
		case "R10":
			if b.There != 18*unit.CubicInch || b.Used != 63*unit.CubicInch/4 || b.Circuit != "7" || b.Ticks[visit.Plate].Applies {
				t.Errorf("in a box of 18 in³: %+v", b)
			}
		}
	}
	if want := []string{"R2", "R9", "R10"}; !slices.Equal(tags, want) {
		t.Errorf("in the order %q, want %q", tags, want)
	}
	// It runs into the ceiling: 94 + 1-7/8 in of 96 are not, its plate of 4.49 in is.
	box := list.Rooms[0].Boxes[0]
	var gravest *rule.Finding
	for _, f := range filltest.Check(t, h.Made()).All() {
		if f.Opening == box.Opening.ID && (gravest == nil || f.Weight() > gravest.Weight()) {
			gravest = &f
		}
	}
	if (gravest == nil) != (box.Worst == nil) || gravest != nil && gravest.Weight() != box.Worst.Weight() {
		t.Errorf("the gravest is %+v, want %+v", box.Worst, gravest)
	}
}

// TestWhatIsToBeSettled: faults and open questions; no plain notes, and nothing set aside.
func TestWhatIsToBeSettled(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
	r.Opening("duplex", r.On(0, 60), ruletest.Tagged("R1"), coded("PN1"))
	p := h.Made()
	result := filltest.Check(t, p)
	list := visit.Of(index.New(p), result)
	want := 0
	for _, f := range result.All() {
		if f.Severity != rule.Note || f.IsOpen {
			want++
		}
	}
	if len(list.Settle) != want || want == 0 {
		t.Errorf("%d to be settled, want %d", len(list.Settle), want)
	}
	for _, f := range list.Settle {
		if f.Rule != "wall-reach" {
			continue
		}
		aside := plan.Waiver{ID: h.ID(plan.KindWaiver), Rule: f.Rule, About: f.About, Reason: "as agreed", Seen: f.Seen()}
		p.Waivers = p.Waivers.With(&aside)
		again := visit.Of(index.New(p), filltest.Check(t, p))
		if slices.ContainsFunc(again.Settle, func(g rule.Finding) bool { return g.Rule == f.Rule && g.About == f.About }) {
			t.Errorf("%s is set aside and told all the same", f.Message)
		}
		if len(again.Settle) != want-1 {
			t.Errorf("%d to be settled after one was set aside, want %d", len(again.Settle), want-1)
		}
		return
	}
	t.Error("the wall past 6 ft is served")
}

// TestCircuitsOfTheList: by the first number of each, those without one last; what protects
// each, at the breaker or by devices on it; what goes is not counted.
func TestCircuitsOfTheList(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
	numbered := func(number string, ground, arc plan.Flag) *plan.Circuit {
		return h.Circuit(20, func(c *plan.Circuit) { c.Number, c.GFCI, c.AFCI = number, ground, arc })
	}
	const yes, no = plan.FlagYes, plan.FlagNo
	numbered("spare", no, no)
	numbered("10/12", yes, yes)
	numbered("9B", no, yes)
	numbered("9A", yes, no)
	numbered("", no, no)
	devices := numbered("2", no, yes)
	r.Opening("gfci", r.On(0, 20), ruletest.Tagged("R1"), ruletest.On(devices))
	r.Opening("duplex", r.On(0, 50), ruletest.Tagged("R2"), ruletest.On(devices))
	r.Opening("counter", r.On(0, 80), ruletest.Tagged("R3"), ruletest.On(devices))
	r.Opening("gfci", r.On(0, 110), ruletest.Tagged("R4"), ruletest.On(devices), ruletest.Removed)
	breaker := numbered("4", yes, no)
	r.Opening("gfci", r.On(0, 140), ruletest.Tagged("R5"), ruletest.On(breaker))
	var got []string
	for _, c := range listed(h).Circuits {
		got = append(got, strings.Join([]string{c.Number, c.Protection(), strings.Repeat("o", c.Openings)}, "|"))
	}
	if want := []string{"2|AF, GF R1 R3|ooo", "4|GF|o", "9A|GF|", "9B|AF|", "10/12|AF, GF|", "||", "spare||"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestTicksOfTheList: each tick of the plan stands at its box, circuit or line and nowhere
// else, those that no line asks for at none; one is put in where it is open, and all that
// stand there are taken back together.
func TestTicksOfTheList(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseHall, 0, 0, 120, 120)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	}
	c := h.Circuit(20, func(c *plan.Circuit) { c.Number = "7" })
	spare := h.Circuit(15, func(c *plan.Circuit) { c.Number = "9" })
	one := r.Opening("duplex", r.On(0, 80), ruletest.Tagged("R1"), coded("PN1"), ruletest.On(c))
	other := r.Opening("duplex", r.On(0, 20), ruletest.Tagged("R2"), coded("PN1"), ruletest.On(c))
	p := h.Made()
	is := func(list visit.List) (ticked []string) {
		for _, room := range list.Rooms {
			for _, b := range room.Boxes {
				for _, col := range visit.Columns {
					if b.Ticks[col].Done.Is() {
						ticked = append(ticked, b.Opening.Tag+" "+col.ID())
					}
				}
			}
		}
		for _, x := range list.Circuits {
			if x.Done.Is() {
				ticked = append(ticked, x.Number)
			}
		}
		for _, x := range list.Points {
			if x.Done.Is() {
				ticked = append(ticked, x.ID)
			}
		}
		return ticked
	}
	list := func() visit.List { return visit.Of(index.New(p), filltest.Check(t, p)) }
	turn := func(at func(visit.List) visit.Done, of plan.ID, what string) {
		t.Helper()
		next, err := at(list()).Turned(&plan.Tick{ID: h.ID(plan.KindTick), About: of, What: what}).Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	staple := func(l visit.List) visit.Done { return l.Rooms[0].Boxes[0].Ticks[visit.Staple].Done }
	if list := list(); is(list) != nil || list.Ticked != 0 || list.Ticks != 6 {
		t.Errorf("at first %q of %d", is(list), list.Ticks)
	}
	turn(staple, one.ID, "staple")
	turn(func(l visit.List) visit.Done { return l.Rooms[0].Boxes[1].Ticks[visit.Plate].Done }, other.ID, "plate")
	turn(func(l visit.List) visit.Done { return l.Circuits[1].Done }, spare.ID, visit.Protection)
	turn(func(l visit.List) visit.Done { return l.Points[1].Done }, "", "staple")
	for _, idle := range []*plan.Tick{{About: one.ID, What: "neutral"}, {About: one.ID, What: "paint"}, {What: "fan"}} {
		idle.ID = h.ID(plan.KindTick)
		p.Ticks = p.Ticks.With(idle)
	}
	want := []string{"R1 staple", "R2 plate", "9", "staple"}
	if got := list(); !slices.Equal(is(got), want) || got.Ticked != 2 {
		t.Errorf("%d ticked: %q, want %q", got.Ticked, is(got), want)
	}
	p.Ticks = p.Ticks.With(&plan.Tick{ID: h.ID(plan.KindTick), About: one.ID, What: "staple"}) // another's, of the same
	if n := list().Ticked; n != 2 {
		t.Errorf("one place ticked twice makes %d", n)
	}
	turn(staple, one.ID, "staple")
	if got := is(list()); !slices.Equal(got, want[1:]) {
		t.Errorf("taken back: %q, want %q", got, want[1:])
	}
	gone, err := edit.Remove{Things: []plan.ID{other.ID}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if p = gone; !slices.Equal(is(list()), want[2:]) {
		t.Errorf("without its box a tick is still told: %q", is(list()))
	}
}
