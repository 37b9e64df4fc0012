package rule_test

import (
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// TestWeights: a worse finding goes first, an open one after a fault of its severity, and a
// waived one last of all.
func TestWeights(t *testing.T) {
	order := []rule.Finding{
		{Severity: rule.Stop}, {Severity: rule.Stop, IsOpen: true}, {Severity: rule.Warn}, {Severity: rule.Warn, IsOpen: true},
		{Severity: rule.Note}, {Severity: rule.Note, IsOpen: true}, {Severity: rule.Stop, Waived: &plan.Waiver{}},
	}
	for i := range order[1:] {
		if order[i].Weight() <= order[i+1].Weight() {
			t.Errorf("%+v weighs %d, %+v %d", order[i], order[i].Weight(), order[i+1], order[i+1].Weight())
		}
	}
	if a, b := order[6].Weight(), (rule.Finding{IsOpen: true, Waived: &plan.Waiver{}}).Weight(); a != b || a != 0 {
		t.Errorf("what is set aside weighs %d and %d", a, b)
	}
	for s, want := range map[rule.Severity]string{rule.Note: "note", rule.Warn: "warn", rule.Stop: "stop"} {
		if s.String() != want {
			t.Errorf("%d is %s", s, s)
		}
	}
}

func TestQuantitiesInWords(t *testing.T) {
	for _, tt := range []struct {
		q    rule.Quantity
		want string
	}{
		{rule.LengthOf(40 * unit.Inch), `3' 4"`}, {rule.VolumeOf(45 * unit.CubicInch / 2), "22.5 in³"}, {rule.CountOf(3), "3"},
		{rule.AreaOf((4 * unit.Inch).Times(5 * unit.Inch / 2)), "10 in²"}, {rule.Quantity{}, ""},
	} {
		if got := (words.Voice{}).Say(tt.q.Text()); got != tt.want {
			t.Errorf("%+v is told as %q, want %q", tt.q, got, tt.want)
		}
	}
	// 10 in² at 6.4516 cm² each, exactly.
	if got, want := (words.Voice{System: unit.Metric}).Say(rule.AreaOf(unit.SquareInch.Mul(10)).Text()), "64.516 cm²"; got != want {
		t.Errorf("10 in² are told in a metric plan as %q, want %q", got, want)
	}
}

// TestToldToWhoLivesThereAndToWhoBuilds: the one hears what to do and why, the other the
// section, the figures and the working.
func TestToldToWhoLivesThereAndToWhoBuilds(t *testing.T) {
	text := func(s string) words.Text { return words.New("plain", "{0}", s) }
	remedy := []rule.Remedy{{Label: text("Move it")}}
	of := rule.Finding{Message: text("too high"), Measured: rule.CountOf(5), Limit: rule.CountOf(4)}
	with := func(change func(*rule.Finding)) rule.Finding {
		f := of
		change(&f)
		return f
	}
	for _, tt := range []struct {
		name         string
		f            rule.Finding
		plain, trade string
	}{
		{"of the plan", of, "", "the plan itself: too high (5; limit 4)"},
		{"of a section", with(func(f *rule.Finding) { f.Section, f.Why = "NEC 1", text("Because.") }), "Because.", "NEC 1: too high (5; limit 4). Because."},
		{"by practice", with(func(f *rule.Finding) { f.ByPractice, f.Remedies = true, remedy }), "What to do: Move it.", "common practice: too high (5; limit 4)"},
		{"with both", with(func(f *rule.Finding) { f.Remedies, f.Why = remedy, text("Because.") }), "What to do: Move it. Because.", "the plan itself: too high (5; limit 4). Because."},
		{"of no limit", with(func(f *rule.Finding) { f.Limit = rule.Quantity{} }), "", "the plan itself: too high"},
		{"of nothing measured", with(func(f *rule.Finding) { f.Measured, f.Limit = rule.Quantity{}, rule.Quantity{} }), "", "the plan itself: too high"},
	} {
		if got := rule.Plain(tt.f).String(); got != tt.plain {
			t.Errorf("%s, plainly: %q, want %q", tt.name, got, tt.plain)
		}
		if got := rule.Trade(tt.f).String(); got != tt.trade {
			t.Errorf("%s, to the trade: %q, want %q", tt.name, got, tt.trade)
		}
	}
}

// TestWhatAWaiverStillCovers: the same thing, no heavier, no farther from its limit and nowhere
// else than it was; 100 nm are what rounding adds.
func TestWhatAWaiverStillCovers(t *testing.T) {
	const slack = 100 * unit.Nanometre
	was := func() rule.Finding {
		return rule.Finding{
			Severity: rule.Warn, Message: words.New("a", "a"), Measured: rule.LengthOf(10 * unit.Inch), Limit: rule.LengthOf(8 * unit.Inch),
			Stretches: []rule.Stretch{{Host: "s1", Part: plan.PartFace, From: unit.Foot, To: 2 * unit.Foot}, {Host: "s1", Part: plan.PartFace, From: 5 * unit.Foot, To: 6 * unit.Foot}},
		}
	}
	if s := was().Seen(); s.What != "a" || s.Severity != "warn" || s.Over != 2*unit.Inch || s.Excess != 0 || s.Count != 0 || len(s.Stretches) != 2 || s.Stretches[0] != (plan.SeenStretch{Host: "s1", Part: plan.PartFace, From: unit.Foot, To: 2 * unit.Foot}) {
		t.Errorf("seen: %+v", s)
	}
	for _, tt := range []struct {
		name   string
		now    func(*rule.Finding)
		within bool
	}{
		{"the same", func(*rule.Finding) {}, true},
		{"another thing", func(f *rule.Finding) { f.Message = words.New("b", "b") }, false},
		{"lighter", func(f *rule.Finding) { f.Severity = rule.Note }, true},
		{"heavier", func(f *rule.Finding) { f.Severity = rule.Stop }, false},
		{"as much under its limit", func(f *rule.Finding) { f.Measured = rule.LengthOf(6 * unit.Inch) }, true},
		{"a hair more", func(f *rule.Finding) { f.Measured.Value += int64(slack) }, true},
		{"more than a hair", func(f *rule.Finding) { f.Measured.Value += int64(slack) + 1 }, false},
		{"a part of it", func(f *rule.Finding) { f.Stretches[0].From += unit.Inch; f.Stretches[0].To -= unit.Inch }, true},
		{"one of two", func(f *rule.Finding) { f.Stretches = f.Stretches[1:] }, true},
		{"a hair longer", func(f *rule.Finding) { f.Stretches[0].From -= slack; f.Stretches[0].To += slack }, true},
		{"longer at its left", func(f *rule.Finding) { f.Stretches[0].From -= slack + 1 }, false},
		{"longer at its right", func(f *rule.Finding) { f.Stretches[0].To += slack + 1 }, false},
		{"on another side", func(f *rule.Finding) { f.Stretches[0].Host = "s2" }, false},
		{"on another part", func(f *rule.Finding) { f.Stretches[0].Part = plan.PartBack }, false},
		{"farther on", func(f *rule.Finding) { f.Stretches[1].From += unit.Foot; f.Stretches[1].To += unit.Foot }, false},
	} {
		now := was()
		tt.now(&now)
		if got := now.IsWithin(was().Seen()); got != tt.within {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.within)
		}
	}
	for _, tt := range []struct {
		name     string
		was, now rule.Finding
		within   bool
	}{
		{"a stop stays one", rule.Finding{Severity: rule.Stop}, rule.Finding{Severity: rule.Stop}, true},
		{"a stop that is a warning now", rule.Finding{Severity: rule.Stop}, rule.Finding{Severity: rule.Warn}, true},
		{"a note that is a warning now", rule.Finding{}, rule.Finding{Severity: rule.Warn}, false},
		{"a volume", rule.Finding{Measured: rule.VolumeOf(20), Limit: rule.VolumeOf(18)}, rule.Finding{Measured: rule.VolumeOf(20), Limit: rule.VolumeOf(18)}, true},
		{"a larger one", rule.Finding{Measured: rule.VolumeOf(20), Limit: rule.VolumeOf(18)}, rule.Finding{Measured: rule.VolumeOf(21), Limit: rule.VolumeOf(18)}, false},
		{"a count", rule.Finding{Measured: rule.CountOf(3)}, rule.Finding{Measured: rule.CountOf(3)}, true},
		{"a larger count", rule.Finding{Measured: rule.CountOf(3)}, rule.Finding{Measured: rule.CountOf(4)}, false},
		{"a larger area", rule.Finding{Measured: rule.Quantity{Unit: rule.OfArea, Value: 3}}, rule.Finding{Measured: rule.Quantity{Unit: rule.OfArea, Value: 4}}, false},
		{"nothing was measured then", rule.Finding{}, rule.Finding{Measured: rule.CountOf(4)}, true},
	} {
		if got := tt.now.IsWithin(tt.was.Seen()); got != tt.within {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.within)
		}
	}
}

// TestMovesOffered: the nearest to either hand, the second no farther than 2 ft (common
// practice), the first however far.
func TestMovesOffered(t *testing.T) {
	o := &plan.Opening{ID: "o1", Tag: "A", At: plan.OnFace("s1", 50*unit.Inch)}
	b := frame.Placed{Opening: o, Rect: frame.Rect{Left: 49 * unit.Inch, Right: 51 * unit.Inch}}
	for _, tt := range []struct {
		places []float64
		want   []string
		to     []float64
	}{
		{nil, nil, nil},
		{[]float64{52, 47, 53, 40}, []string{`Move A to the right by 2"`, `Move A to the left by 3"`}, []float64{52, 47}},
		{[]float64{47, 52}, []string{`Move A to the left by 3"`, `Move A to the right by 2"`}, []float64{47, 52}},
		{[]float64{10, 120}, []string{`Move A to the left by 40"`}, []float64{10}},
		{[]float64{52, 26}, []string{`Move A to the right by 2"`, `Move A to the left by 24"`}, []float64{52, 26}},
		{[]float64{52, 25.9375}, []string{`Move A to the right by 2"`}, []float64{52}},
	} {
		var places []unit.Length
		for _, p := range tt.places {
			places = append(places, unit.Length(p*16)*unit.Inch/16)
		}
		var got []string
		for i, r := range rule.MovesAlong(b, places) {
			got = append(got, r.Label.String())
			if want := (edit.MoveOpening{ID: "o1", To: plan.OnFace("s1", unit.Length(tt.to[i]*16)*unit.Inch/16)}); i < len(tt.to) && r.Edit != want {
				t.Errorf("%v: %+v, want %+v", tt.places, r.Edit, want)
			}
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%v: %q, want %q", tt.places, got, tt.want)
		}
	}
	old, fresh := &plan.Opening{Tag: "A", Status: plan.StatusExisting}, &plan.Opening{Tag: "B", Status: plan.StatusNew}
	other := &plan.Opening{Tag: "C", Status: plan.StatusNew}
	for _, tt := range []struct {
		of, with *plan.Opening
		want     bool
	}{{fresh, old, true}, {old, fresh, false}, {fresh, other, true}, {other, fresh, false}} {
		if got := rule.TellsOf(tt.of, tt.with); got != tt.want {
			t.Errorf("told of %s beside %s: %v", tt.of.Tag, tt.with.Tag, got)
		}
	}
}

// TestWhichRoomsARuleLeaves, and which section it cites: one of the residential code stands by
// itself.
func TestWhichRoomsARuleLeaves(t *testing.T) {
	only := rule.OnlyIn(plan.UseBath, plan.UseKitchen)
	for use, want := range map[plan.Use][2]words.Text{
		plan.UseBath: {}, plan.UseKitchen: {}, plan.UseHall: {rule.NoSuchRoom, {}}, "": {rule.UseUnknown, rule.UseUnknown}, "attic lab": {rule.UseUnknown, rule.UseUnknown},
	} {
		r := &plan.Room{Use: use}
		if a, b := only(r, nil), rule.IfKnown(r, nil); a.ID != want[0].ID || b.ID != want[1].ID {
			t.Errorf("%q is left for %q and %q", use, a, b)
		}
	}
	fig := code.Latest()
	for _, tt := range []struct{ figure, section, cited string }{
		{"", "", "Title"}, {"conductor", fig.Title + " " + fig.Section("conductor"), "Title [" + fig.Title + " " + fig.Section("conductor") + "]"},
	} {
		r := &rule.Rule{Title: words.New("t", "Title"), Figure: tt.figure}
		if r.Section(fig) != tt.section || r.Cited(fig).String() != tt.cited {
			t.Errorf("%q cites %q as %q", tt.figure, r.Section(fig), r.Cited(fig))
		}
	}
}

// TestFreshOpenings: a remedy's ID that is taken already gives way to one that follows from it,
// the same each time; a wall that stays closed gets an old-work box.
func TestFreshOpenings(t *testing.T) {
	ids := rule.IDsFor([]any{&plan.Opening{ID: "o1"}, nil, (*plan.Opening)(nil), "s"}, "what", "for")
	first, second := ids.Next(), ids.Next()
	again := rule.IDsFor([]any{&plan.Opening{ID: "o1"}}, "what", "for")
	if first == second || again.Next() != first || again.Next() != second || first.Kind() != plan.KindOpening {
		t.Errorf("%s and %s are not the same each time", first, second)
	}
	for _, other := range []*rule.IDs{rule.IDsFor([]any{&plan.Opening{ID: "o2"}}, "what", "for"), rule.IDsFor([]any{&plan.Opening{ID: "o1"}}, "what"), rule.NewIDs(nil)} {
		if other.Next() == first {
			t.Error("another thing gets the same ID")
		}
	}
	room := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, geom.Polygon{{}, {X: 12 * unit.Foot}, {X: 12 * unit.Foot, Y: 10 * unit.Foot}, {Y: 10 * unit.Foot}},
		[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	room.Ceiling, room.Sides[0].Condition = 8*unit.Foot, plan.ConditionClosed
	p, err := edit.AddRoom{Level: "vaaaaaaaa", Room: room}.Apply(plan.New("Den", "vaaaaaaaa"))
	if err != nil {
		t.Fatal(err)
	}
	o := plan.Opening{ID: first, Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace("saaaaaaaa", 2*unit.Foot), Height: plan.CentreAt(16 * unit.Inch), Assembly: plan.Assembly{Code: "PN1"}}
	for n := 1; n <= 3; n++ {
		if p, err = rule.Add(o).Apply(p); err != nil {
			t.Fatal(err)
		}
		made := 0
		for _, o := range p.Openings() {
			if made++; o.Assembly.Code != "OW1" {
				t.Errorf("in a closed wall it has %q", o.Assembly.Code)
			}
		}
		if made != n {
			t.Errorf("%d openings after %d", made, n)
		}
	}
}
