package fill

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// found makes a result of findings, each in a scope of its own.
func found(fig *code.Figures, all ...rule.Finding) Result {
	r := Result{Figures: fig}
	for i, f := range all {
		r.scopes = r.scopes.With(&scoped{plan.ID([]byte{'r', byte('a' + i)}), []rule.Finding{f}})
	}
	return r
}

func said(text string) words.Text { return words.New("x", "{0}", text) }

// TestFindingsInOrder: the worst first, faults before what is open, then by room, thing and rule;
// what is set aside last.
func TestFindingsInOrder(t *testing.T) {
	r := found(code.Latest(),
		rule.Finding{Rule: "i", Severity: rule.Stop, Waived: &plan.Waiver{}}, rule.Finding{Rule: "h", Severity: rule.Note, IsOpen: true}, rule.Finding{Rule: "g"},
		rule.Finding{Rule: "f", Severity: rule.Warn}, rule.Finding{Rule: "e", Severity: rule.Stop, IsOpen: true},
		rule.Finding{Rule: "d", Severity: rule.Stop, Room: "r2", About: "s1"}, rule.Finding{Rule: "c", Severity: rule.Stop, Room: "r1", About: "s2"},
		rule.Finding{Rule: "b", Severity: rule.Stop, Room: "r1", About: "s1"}, rule.Finding{Rule: "a", Severity: rule.Stop, Room: "r1", About: "s1"},
	)
	var order []string
	for _, f := range r.All() {
		order = append(order, f.Rule)
	}
	if got := strings.Join(order, ""); got != "abcdefghi" {
		t.Errorf("in the order %s", got)
	}
	if got, want := r.Tally(), (Tally{Stop: 4, Warn: 1, Note: 1, Open: 2, Waived: 1}); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	for f := range r.Each() {
		if f.Rule != "i" {
			t.Errorf("first is %s", f.Rule)
		}
		break
	}
}

// TestWhatIsSaidInPlaceOfFindings where nothing was checked.
func TestWhatIsSaidInPlaceOfFindings(t *testing.T) {
	for _, tt := range []struct {
		r       Result
		want    string
		refused bool
	}{
		{Result{}, "NOT CHECKED", false},
		{Result{Figures: code.Latest()}, "", false},
		{Result{refused: errors.New("no such edition")}, "NOT CHECKED: no such edition", true},
		{Result{refused: words.Fault("y", "said so")}, "NOT CHECKED: said so", true},
	} {
		if got := tt.r.NotChecked().String(); got != tt.want || tt.r.IsRefused() != tt.refused {
			t.Errorf("%q, refused %v; want %q", got, tt.r.IsRefused(), tt.want)
		}
	}
}

// TestWhatEachRuleLookedAt: rooms, those that it leaves with the reason, and those where what is
// open kept it from judging all.
func TestWhatEachRuleLookedAt(t *testing.T) {
	bath, hall := &plan.Room{ID: "ra", Name: "Bath", Use: plan.UseBath, Reach: true}, &plan.Room{ID: "rb", Name: "Hall", Use: plan.UseHall}
	level := &plan.Level{ID: "v"}
	level.Rooms = level.Rooms.With(bath).With(hall)
	open := func(room plan.ID, of, text string) rule.Finding {
		return rule.Finding{Room: room, Rule: of, IsOpen: true, Message: said(text)}
	}
	r := found(code.Latest(), open("rb", "box-fill", "one"), open("rb", "box-fill", "two"), open("rb", "box-fill", "three"), open("ra", "casing", "four"), rule.Finding{Room: "ra", Rule: "box-fill"})
	byRule := func(r Result) map[string]string {
		told := map[string]string{}
		for _, l := range r.Looked(level) {
			text := ""
			for _, room := range l.At {
				text += room.Name + ". "
			}
			for _, not := range l.Not {
				text += not.Room.Name + ": " + not.Why.String()
				if not.IsOpen {
					text += " (open)"
				}
				text += ". "
			}
			told[l.Rule.ID] = strings.TrimSpace(text)
			if l.Rule.Plan != nil {
				t.Errorf("%s is of the plan", l.Rule.ID)
			}
		}
		return told
	}
	got := byRule(r)
	for id, want := range map[string]string{
		"box-fill": "Bath. Hall: one, and 2 more like it (open).",
		"casing":   "Hall. Bath: four (open).",
		"reach":    "Bath. Hall: reach from a seat was not asked for.",
	} {
		if got[id] != want {
			t.Errorf("%s: %q, want %q", id, got[id], want)
		}
	}
	off, err := code.Latest().WithAmendments([]code.Amendment{{Rule: "casing", Value: "off", Reason: "no trim here"}})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := byRule(found(off))["casing"], "Bath: switched off by a local amendment, no trim here. Hall: switched off by a local amendment, no trim here."; got != want {
		t.Errorf("switched off: %q, want %q", got, want)
	}
	if got, want := byRule(Result{})["casing"], "Bath: NOT CHECKED. Hall: NOT CHECKED."; got != want {
		t.Errorf("not checked: %q, want %q", got, want)
	}
	if got := namesOf([]*plan.Room{bath, {}, hall}).String(); got != "Bath, a room without a name, Hall" {
		t.Errorf("rooms are named %q", got)
	}
}

// TestHowThingsBegin: a baseboard of an old house 7 in high, a bay at 16 in found clear, board of
// 1/2 in; the next part of a face goes on from the last (common practice).
func TestHowThingsBegin(t *testing.T) {
	if got := NewTrim("baseboard"); got != (plan.Trim{Name: "baseboard", Height: 7 * unit.Inch}) {
		t.Errorf("%+v", got)
	}
	if got := NewProbe(10 * unit.Inch); got.From != 10*unit.Inch || got.To-got.From != 29*unit.Inch/2 || !got.Clear {
		t.Errorf("%+v", got)
	}
	if got := NewLayer("tile"); got.Name != "tile" || got.Thickness != unit.Inch/2 {
		t.Errorf("%+v", got)
	}
	for _, before := range [][]plan.Zone{nil, {{To: unit.Foot}}, {{To: unit.Foot}, {From: unit.Foot, To: 3 * unit.Foot}}} {
		want := unit.Length(0)
		if n := len(before); n > 0 {
			want = before[n-1].To
		}
		if got := NewZone(before, 9*unit.Foot); got.From != want || got.To != 9*unit.Foot || got.Condition != plan.ConditionOpened {
			t.Errorf("after %+v: %+v", before, got)
		}
	}
}

// TestAmendmentsByName: by the figure or the rule that they are of; one that an edition cannot
// take is refused.
func TestAmendmentsByName(t *testing.T) {
	for _, f := range code.Amendables {
		if got := AmendmentName(plan.Amendment{Figure: f.Name}); got.ID != f.Text.ID {
			t.Errorf("%s is called %q", f.Name, got)
		}
	}
	for _, r := range Rules {
		if got := AmendmentName(plan.Amendment{Rule: r.ID}); got.ID != r.Title.ID || RuleName(r.ID).ID != r.Title.ID {
			t.Errorf("%s is called %q", r.ID, got)
		}
	}
	if got := RuleName("no-such").String(); got != "no-such" {
		t.Errorf("an unknown rule is called %q", got)
	}
	for _, tt := range []struct {
		edition string
		a       plan.Amendment
		ok      bool
	}{
		{"2023", plan.Amendment{Figure: "device-allowances", Value: "3", Reason: "r"}, true},
		{"2023", plan.Amendment{Figure: "device-allowances", Value: "many", Reason: "r"}, false},
		{"2023", plan.Amendment{Rule: "casing", Value: "off", Reason: "r"}, true},
		{"1999", plan.Amendment{Figure: "device-allowances", Value: "3", Reason: "r"}, false},
	} {
		if err := CheckAmendment(tt.edition, tt.a); (err == nil) != tt.ok {
			t.Errorf("%s, %+v: %v", tt.edition, tt.a, err)
		}
	}
	p := plan.New("Den", "vaaaaaaaa")
	if fig, err := FiguresOf(plan.Plan{Header: p.Header}); err != nil || fig.Edition != code.Latest().Edition {
		t.Errorf("no edition is said: %v, %v", fig, err)
	}
	header := *p.Header
	header.Edition = "2017"
	if fig, err := FiguresOf(plan.Plan{Header: &header}); err != nil || fig.Edition != "2017" {
		t.Errorf("of 2017: %v, %v", fig, err)
	}
	header.Edition = "1999"
	if _, err := FiguresOf(plan.Plan{Header: &header}); err == nil {
		t.Error("of an edition that there is not")
	}
	p.Amendments = p.Amendments.With(&plan.Amendment{ID: "maaaaaaaa", Figure: "device-allowances", Value: "many", Reason: "r"})
	if _, err := FiguresOf(p); err == nil || !strings.HasPrefix(err.Error(), "the plan's local amendments: ") {
		t.Errorf("an amendment that is none: %v", err)
	}
}

// TestWhatAWaiverIsOf: of what it names and of each face it was seen on; a side is judged with
// its room, an opening by itself too.
func TestWhatAWaiverIsOf(t *testing.T) {
	w := &plan.Waiver{About: "s1", Seen: &plan.Seen{Stretches: []plan.SeenStretch{{Host: "s1"}, {Host: "s2"}, {Host: "s2"}, {Host: "s3"}}}}
	if got := aboutOf(w); !slices.Equal(got, []plan.ID{"s1", "s2", "s3"}) {
		t.Errorf("of %v", got)
	}
	if got := aboutOf(&plan.Waiver{About: "r1"}); !slices.Equal(got, []plan.ID{"r1"}) {
		t.Errorf("of %v", got)
	}
	room := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, geom.Polygon{{}, {X: 12 * unit.Foot}, {X: 12 * unit.Foot, Y: 10 * unit.Foot}, {Y: 10 * unit.Foot}},
		[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	room.Ceiling = 8 * unit.Foot
	p := plan.New("Den", "vaaaaaaaa")
	for _, e := range []edit.Edit{
		edit.AddRoom{Level: "vaaaaaaaa", Room: room},
		edit.AddOpening{Opening: plan.Opening{ID: "oaaaaaaaa", Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace("saaaaaaaa", 2*unit.Foot), Height: plan.CentreAt(16 * unit.Inch)}},
		edit.AddFixture{Fixture: plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureCounter, At: plan.OnFace("sbaaaaaaa", 0), Width: 6 * unit.Foot, Depth: 2 * unit.Foot, Height: 3 * unit.Foot}},
	} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	ix := index.New(p)
	for id, want := range map[plan.ID][]plan.ID{
		"raaaaaaaa": {"raaaaaaaa"}, "scaaaaaaa": {"raaaaaaaa"}, "oaaaaaaaa": {"oaaaaaaaa", "raaaaaaaa"}, "faaaaaaaa": {"raaaaaaaa"},
		"o99999999": nil, "s99999999": nil, "vaaaaaaaa": nil,
	} {
		if got := judgedWith(ix, id); !slices.Equal(got, want) {
			t.Errorf("%s is judged with %v, want %v", id, got, want)
		}
	}
}

// TestNoWorse: nothing is stopped at or warned of that was not before; notes and what is open
// may come, and what was there may go.
func TestNoWorse(t *testing.T) {
	stop := rule.Finding{Rule: "a", About: "o1", Severity: rule.Stop, Message: said("x")}
	with := func(change func(*rule.Finding)) rule.Finding {
		f := stop
		change(&f)
		return f
	}
	for _, tt := range []struct {
		name  string
		after []rule.Finding
		want  bool
	}{
		{"the same", []rule.Finding{stop}, true},
		{"gone", nil, true},
		{"twice", []rule.Finding{stop, stop}, false},
		{"another rule", []rule.Finding{with(func(f *rule.Finding) { f.Rule = "b" })}, false},
		{"of another thing", []rule.Finding{with(func(f *rule.Finding) { f.About = "o2" })}, false},
		{"something else", []rule.Finding{with(func(f *rule.Finding) { f.Message = words.New("z", "z") })}, false},
		{"a warning in place of it", []rule.Finding{with(func(f *rule.Finding) { f.Severity = rule.Warn })}, false},
		{"a note more", []rule.Finding{stop, with(func(f *rule.Finding) { f.Severity, f.Rule = rule.Note, "b" })}, true},
		{"an open one more", []rule.Finding{stop, with(func(f *rule.Finding) { f.IsOpen, f.Rule = true, "b" })}, true},
	} {
		if got := isNoWorse(found(nil, stop), found(nil, tt.after...)); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
	was := rule.Finding{Rule: "a", Opening: "o1", Severity: rule.Warn, Message: said("x"), Measured: rule.CountOf(3)}
	for _, tt := range []struct {
		name   string
		change func(*rule.Finding)
		want   bool
	}{
		{"the same", func(*rule.Finding) {}, true},
		{"less of it", func(f *rule.Finding) { f.Measured = rule.CountOf(2) }, true},
		{"more of it", func(f *rule.Finding) { f.Measured = rule.CountOf(4) }, false},
		{"heavier", func(f *rule.Finding) { f.Severity = rule.Stop }, false},
		{"of another rule", func(f *rule.Finding) { f.Rule = "b" }, false},
		{"of another opening", func(f *rule.Finding) { f.Opening = "o2" }, false},
	} {
		f := was
		tt.change(&f)
		if got := isNoMoreThan(f, was); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
