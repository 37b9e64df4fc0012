package choose_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/choose"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func finder(t *testing.T, p plan.Plan) *choose.Finder {
	t.Helper()
	fig, err := fill.FiguresOf(p)
	if err != nil {
		t.Fatal(err)
	}
	return choose.NewFinder(index.New(p), fig, price.Trial())
}

// walled returns a room whose walls have studs of a depth and one layer of board, in inches.
func walled(t *testing.T, use plan.Use, studs float64, layers ...float64) (*ruletest.House, *ruletest.Room) {
	h := ruletest.New(t)
	r := h.Square(use, 0, 0, 160, 120)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: ruletest.In(studs)}
		for _, l := range layers {
			s.Finish = append(s.Finish, plan.Layer{Name: "layer", Thickness: ruletest.In(l)})
		}
	}
	return h, r
}

func holding(code string, items ...plan.Item) func(*plan.Opening) {
	return func(o *plan.Opening) {
		o.Assembly = plan.Assembly{Code: code}
		o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: items}
	}
}

func cables(size unit.AWG, n int) plan.Item {
	return plan.Item{What: plan.ItemCable, Size: size, Wires: 2, Times: n}
}

var yoke = plan.Item{What: plan.ItemDevice, Size: 12}

// found returns the candidate that is built of a box and a ring.
func found(t *testing.T, all []choose.Candidate, box, ring string) choose.Candidate {
	t.Helper()
	for _, c := range all {
		if c.Resolved.Box.ID == box && (ring == "" && len(c.Resolved.Adds) == 0 || len(c.Resolved.Adds) == 1 && c.Resolved.Adds[0].ID == ring && c.Resolved.Adds[0].Marked == 0) && c.DoesTheWork() {
			return c
		}
	}
	t.Fatalf("no %s with %q among %d", box, ring, len(all))
	return choose.Candidate{}
}

func why(c choose.Candidate) string {
	var all []string
	for _, r := range c.Reasons {
		all = append(all, r.Text.String())
	}
	return strings.Join(all, "; ")
}

// TestFinderSaysWhyEachFails tries boxes whose fill and depth can be worked out on paper.
func TestFinderSaysWhyEachFails(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 2.5, 0.5)
	o := r.Opening("duplex", r.On(0, 18), holding("PN2", cables(12, 3), yoke))
	all := finder(t, h.Made()).For(o.ID)
	for _, tt := range []struct {
		box, ring string
		passes    bool
		says      string
		source    string
	}{
		{"pn1-20", "", false, "too small by", "6 + 1 + 2 allowances of 2.25 = 20.25 of 20.0, NEC 2023 314.16(B)"},
		{"pn1-22.5", "", false, "deeper than the framing", "3-1/2 less 1/2 of board is 3 in framing of 2-1/2"},
		{"sq4-1.5", "ring4-1g-0.5", true, "", "20.25 of 21.0, 1-1/2 deep"},
		{"sq4-2.125", "ring4-1g-0.5", true, "", "20.25 of 30.3, 2-1/8 of 2-1/2 deep"},
		{"dev3-3.5", "", false, "", "20.25 of 18.0, and 3 in framing of 2-1/2"},
	} {
		c := found(t, all, tt.box, tt.ring)
		if c.Passes() != tt.passes || !strings.Contains(why(c), tt.says) {
			t.Errorf("%s %s: passes %v, “%s”; want %v, %q (%s)", tt.box, tt.ring, c.Passes(), why(c), tt.passes, tt.says, tt.source)
		}
	}
	c := found(t, all, "sq4-2.125", "ring4-1g-0.5")
	if want := unit.Volume(100500); c.Spare != want || !c.HasSpare {
		t.Errorf("30.3 − 20.25 leaves %v", c.Spare)
	}
}

// TestFinderReadsTheFinish offers the ring that the layers ask for, and no box through tile
// that cannot stand so far out.
func TestFinderReadsTheFinish(t *testing.T) {
	h, r := walled(t, plan.UseKitchen, 3.5, 0.5, 0.5)
	o := r.Opening("duplex", r.On(0, 18), holding("PN2", cables(12, 2), yoke))
	all := finder(t, h.Made()).For(o.ID)
	if c := found(t, all, "sq4-1.5", "ring4-1g-1"); !c.Passes() {
		t.Errorf("a ring of the layers' 1 in fails: %s", why(c))
	}
	if c := found(t, all, "sq4-1.5", "ring4-1g-0.5"); c.Passes() {
		t.Error("a ring 1/2 behind 1 in of finish passes; 1/4 is the most by NEC 314.20")
	}
}

// TestFinderKeepsToTheWork holds that what does other work says so.
func TestFinderKeepsToTheWork(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	fresh := r.Opening("duplex", r.On(0, 18), holding("PN2", cables(12, 2), yoke))
	closed := r.Opening("duplex", r.On(0, 60), holding("OW2", cables(12, 2), yoke))
	fan := r.Opening("fan-light", r.Ceiling(60, 60))
	f := finder(t, h.Made())
	says := func(id plan.ID, code string) string {
		for _, c := range f.For(id) {
			if c.Assembly.Code == code {
				return why(c)
			}
		}
		return "not tried"
	}
	for _, tt := range []struct {
		id         plan.ID
		code, want string
	}{
		{fresh.ID, "PN2", ""}, {fresh.ID, "PN4", "2 gangs"}, {fresh.ID, "OW2", "the wall is open"}, {fresh.ID, "WP1", "another place"}, {fresh.ID, "LV1", "another front"},
		{closed.ID, "OW2", ""}, {closed.ID, "PN2", "the wall is closed"}, {closed.ID, "SQ3", "the wall is closed"},
		{fan.ID, "RD1", "another place"}, {fan.ID, "FN3", ""},
	} {
		if got := says(tt.id, tt.code); tt.want == "" && got != "" || !strings.Contains(got, tt.want) {
			t.Errorf("%s: “%s”, want %q", tt.code, got, tt.want)
		}
	}
}

// TestPoliciesByHand takes each policy in a room whose answer is plain on paper.
func TestPoliciesByHand(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	k := h.Square(plan.UseKitchen, 300, 0, 160, 120)
	for _, s := range k.Sides {
		s.Studs, s.Finish = r.Sides[0].Studs, r.Sides[0].Finish
	}
	plain := r.Opening("duplex", r.On(0, 17.875), holding("SQ3", cables(14, 1), yoke))
	kitchen := k.Opening("duplex", k.On(0, 17.875), holding("PN3", cables(12, 2), yoke))
	f := finder(t, h.Made())
	for _, tt := range []struct {
		policy      choose.Policy
		plain, kits string
		source      string
	}{
		{choose.Plastic, "pn1-18", "pn1-18", "2×2 + 2 + 2×2.25 and 4×2.25 + 2.25 + 4.5 = 15.75 go into 18.0, the cheapest at .60"},
		{choose.Steel, "sq4-1.5", "sq4-1.5", "a square box at 1.90 before one at 2.60; a device box takes no ring"},
		{choose.Cheapest, "pn1-18", "pn1-20", "15.75 is 87.5 % of 18.0 and 78.75 % of 20.0"},
		{choose.WhereItCounts, "pn1-18", "sq4-1.5", "steel in the kitchen alone"},
	} {
		c, err := f.Column(tt.policy)
		if err != nil {
			t.Fatal(err)
		}
		a, _ := c.Plan.Opening(plain.ID)
		b, _ := c.Plan.Opening(kitchen.ID)
		for i, o := range []*plan.Opening{a, b} {
			want := []string{tt.plain, tt.kits}[i]
			if got := boxOf(o); got != want {
				t.Errorf("%s: %s, want %s (%s)", tt.policy.ID, got, want, tt.source)
			}
		}
		if len(c.OverFill)+len(c.Failing) > 0 {
			t.Errorf("%s: over %v, failing %v", tt.policy.ID, c.OverFill, c.Failing)
		}
	}
}

func boxOf(o *plan.Opening) string {
	box, _ := part.Known(o.Assembly)
	if box == nil {
		return ""
	}
	return box.ID
}

// TestPoliciesOnRandomPlans takes each policy of random plans: its edit is one step, gives
// boxes and changes nothing else, is undone to the very plan, and is the cheapest of what
// passes in its material.
func TestPoliciesOnRandomPlans(t *testing.T) {
	for seed := range 20 {
		p := filltest.Furnished(rand.New(rand.NewPCG(uint64(seed), 11)).IntN)
		f := finder(t, p)
		for _, policy := range choose.Standing {
			step, any := choose.Column{Policy: policy, Changes: f.Changes(policy)}.Edit()
			next, err := step.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			if err := plan.Check(next); err != nil {
				t.Errorf("plan %d, %s: %v", seed, policy.ID, err)
			}
			changed := 0
			for _, o := range p.Openings() {
				n, _ := next.Opening(o.ID)
				if n == o {
					continue
				}
				changed++
				back := *n
				back.Assembly = o.Assembly
				if back.Tag != o.Tag || back.At != o.At || back.Status != o.Status || back.Kind != o.Kind || back.Contents != o.Contents {
					t.Errorf("plan %d, %s: %s is changed beside its box", seed, policy.ID, o.Tag)
				}
			}
			if any != (changed > 0) || policy.ID == "as-is" && changed > 0 {
				t.Errorf("plan %d, %s: %d changed, any %v", seed, policy.ID, changed, any)
			}
		}
		for _, c := range f.Changes(choose.Cheapest) {
			all := f.For(c.Opening.ID)
			i := slices.IndexFunc(all, func(x choose.Candidate) bool {
				return x.Assembly.Code == c.To.Code && x.Assembly.Box == c.To.Box && slices.Equal(x.Assembly.Parts, c.To.Parts)
			})
			if i < 0 {
				t.Fatalf("plan %d: what was chosen was not tried", seed)
			}
			if !all[i].Passes() && slices.ContainsFunc(all, func(x choose.Candidate) bool {
				return x.Passes() && !slices.ContainsFunc(x.Resolved.Adds, isFromMemory)
			}) {
				t.Errorf("plan %d: %s fails though another passes", seed, c.Opening.Tag)
			}
		}
	}
}

// TestTrialsSayWhatACheckSays compares the reasons of candidates with a check of the plan in
// which they are built in.
func TestTrialsSayWhatACheckSays(t *testing.T) {
	compared := 0
	for seed := range 14 {
		p := filltest.Furnished(rand.New(rand.NewPCG(uint64(seed), 5)).IntN)
		f := finder(t, p)
		for _, o := range p.Openings() {
			for i, c := range f.For(o.ID) {
				if i%7 != seed%7 || !c.DoesTheWork() {
					continue
				}
				changed := *o
				changed.Assembly = c.Assembly
				next, err := p.With(nil, &changed)
				if err != nil {
					t.Fatal(err)
				}
				result, err := fill.Check(index.New(next))
				if err != nil {
					t.Fatal(err)
				}
				var want []string
				for found := range result.Each() {
					of := found.Opening == o.ID || slices.Contains(found.Message.Args, any(o.Tag))
					if of && found.Opening != "" && fill.IsOfBox(found.Rule) && found.Severity > rule.Note && !found.IsOpen {
						want = append(want, found.Message.String())
					}
				}
				var got []string
				for _, r := range c.Reasons {
					got = append(got, r.Text.String())
				}
				slices.Sort(want)
				slices.Sort(got)
				compared++
				if !slices.Equal(slices.Compact(got), slices.Compact(want)) {
					t.Errorf("plan %d, %s with %s: %q, a check says %q", seed, o.Tag, c.Resolved.Describe(), got, want)
				}
			}
		}
	}
	if compared < 200 {
		t.Errorf("only %d were compared", compared)
	}
}

// TestOwn reads a policy by room and kind.
func TestOwn(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	a := r.Opening("duplex", r.On(0, 17.875), holding("PN3", cables(12, 1), yoke))
	b := r.Opening("gfci", r.On(0, 50), holding("PN3", cables(12, 1), yoke))
	p, err := choose.Own("own.csv", strings.NewReader("room,kind,take\nbedroom,gfci,SQ3\n,duplex,plastic\n"))
	if err != nil {
		t.Fatal(err)
	}
	c, err := finder(t, h.Made()).Column(p)
	if err != nil {
		t.Fatal(err)
	}
	x, _ := c.Plan.Opening(a.ID)
	y, _ := c.Plan.Opening(b.ID)
	if boxOf(x) != "pn1-18" || y.Assembly.Code != "SQ3" {
		t.Errorf("%+v, %+v", x.Assembly, y.Assembly)
	}
	for text, want := range map[string]string{
		"a,b\n":                            "own.csv:1: the first line is not room,kind,take",
		"room,kind,take\n,lamp,steel\n":    `own.csv:2: kind: no kind "lamp"`,
		"room,kind,take\n,duplex,golden\n": `own.csv:2: take: "golden" is neither`,
		"room,kind,take\n,duplex\n":        "own.csv:2",
	} {
		if _, err := choose.Own("own.csv", strings.NewReader(text)); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
	}
}

func isFromMemory(a part.Added) bool { return a.FromMemory }

// TestSteelWhereTheOtherFaceSaysRated takes steel for a wall that only the face behind it
// says to be rated, as the rule on rated walls reads it.
func TestSteelWhereTheOtherFaceSaysRated(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	next := h.Square(plan.UseBedroom, 0, -124.5, 160, 120)
	for _, s := range next.Sides {
		s.Studs, s.Finish = r.Sides[0].Studs, r.Sides[0].Finish
	}
	next.Sides[2].Rated = true
	o := r.Opening("duplex", r.On(0, 17.875), holding("PN1", cables(14, 1), yoke))
	c, err := finder(t, h.Made()).Column(choose.WhereItCounts)
	if err != nil {
		t.Fatal(err)
	}
	if now, _ := c.Plan.Opening(o.ID); boxOf(now) != "sq4-1.5" {
		t.Errorf("it takes %s, want a box of steel", boxOf(now))
	}
}

// TestEverywhereAndSmart: one box is used at each opening that it passes at and no other, and
// what leaves room for a smart device (4 in³ and 2 in of depth, common practice) comes first
// where that is asked.
func TestEverywhereAndSmart(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	light := r.Opening("duplex", r.On(0, 18), holding("PN1", cables(14, 1), yoke))
	full := r.Opening("duplex", r.On(0, 60), holding("PN3", cables(12, 3), yoke))
	two := r.Opening("switch-2", r.On(0, 100), holding("PN4", cables(14, 2), yoke, yoke))
	p := h.Made()
	f := finder(t, p)
	step, any := f.Everywhere(plan.Assembly{Code: "PN2"})
	if !any || len(step.Edits) != 1 {
		t.Fatalf("%d openings take a box of 20 in³, want one: the other needs 6 + 1 + 2 allowances of 2.25 = 20.25 (NEC 2023 314.16(B)), the third two gangs", len(step.Edits))
	}
	next, err := step.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	for id, want := range map[plan.ID]string{light.ID: "PN2", full.ID: "PN3", two.ID: "PN4"} {
		if o, _ := next.Opening(id); o.Assembly.Code != want {
			t.Errorf("%s has %s, want %s", o.Tag, o.Assembly.Code, want)
		}
	}
	last := true
	for _, c := range choose.Sorted(f.For(full.ID), choose.BySmart) {
		if !c.Passes() {
			break
		}
		if c.IsSmart && !last {
			t.Errorf("%s has room for a smart device and comes after one that has none", c.Resolved.Describe())
		}
		if want := c.Spare >= 4*unit.CubicInch && c.Resolved.Depth() >= 2*unit.Inch; c.IsSmart != want {
			t.Errorf("%s, %v to spare and %v deep: smart %v", c.Resolved.Describe(), c.Spare, c.Resolved.Depth(), c.IsSmart)
		}
		last = c.IsSmart
	}
}

// A policy fails where the plan after it cannot be checked; a box of 1-1/2 in with a ring of
// 1/2 leaves 1 in behind a receptacle of 1 in (devices.csv).
func TestColumnsAndCandidatesTellAll(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	o := r.Opening("duplex", r.On(0, 40), holding("SQ1", cables(14, 1), yoke))
	f := finder(t, h.Made())
	if c := found(t, f.For(o.ID), "sq4-1.5", "ring4-1g-0.5"); c.Behind != unit.Inch {
		t.Errorf("%v behind the device, want 1 in", c.Behind)
	}
	fig, err := fill.FiguresOf(h.Made())
	if err != nil {
		t.Fatal(err)
	}
	h.Edition = "1066"
	if _, err := choose.NewFinder(index.New(h.Made()), fig, price.Trial()).Column(choose.Standing[0]); err == nil {
		t.Error("a plan of an edition nobody knows has a column")
	}
}

// What a column names: openings that a rule on boxes stops, each once, those over full by
// themselves; not what is set aside, nor what other rules stop. 12/2 three times with a device is
// 6 + 1 + 2 allowances of 2.25, 20.25 in³ (NEC 2023 314.16(B)); 3-1/2 in of box want as much
// framing, of which there is 2-1/2 behind the board.
func TestWhatAColumnStopsAt(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 2.5, 0.5)
	at := func(tag string, along float64, more func(*plan.Opening)) *plan.Opening {
		return r.Opening("duplex", r.On(0, along), more, ruletest.Tagged(tag))
	}
	at("over", 18, holding("PN1", cables(12, 3), yoke))
	aside := at("aside", 34, holding("PN1", cables(12, 3), yoke))
	at("deep", 50, holding("PN3", cables(14, 1), yoke))
	at("both", 66, holding("DV1", cables(12, 3), yoke))
	at("well", 82, holding("SQ1", cables(14, 1), yoke))
	at("two over", 98, func(o *plan.Opening) { holding("PN1", cables(12, 3), yoke)(o); o.Status = plan.StatusRemove })
	p := h.Made()
	p.Waivers = p.Waivers.With(&plan.Waiver{ID: "waaaaaaaa", Rule: "box-fill", About: aside.ID, Reason: "seen"})
	c, err := finder(t, p).Column(choose.AsIs)
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(c.OverFill, []string{"both", "over"}) || !slices.Equal(c.Failing, []string{"both", "deep"}) {
		t.Errorf("over full %q, failing %q", c.OverFill, c.Failing)
	}
}

// A box that is there stays, whatever a policy would take, unless a rule stops it: 14/2 three
// times with a device of 14 is 6 × 2.00 + 2.00 + 2 × 2.00 = 18.00 in³ (NEC 2023 314.16(B)), too
// much for 17 and not for 20; twice is 14.
func TestWhatIsThereStays(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	small := plan.Item{What: plan.ItemDevice, Size: 14}
	put := func(along float64, code string, n int, status plan.Status) *plan.Opening {
		return r.Opening("duplex", r.On(0, along), holding(code, cables(14, n), small), func(o *plan.Opening) { o.Status = status })
	}
	stays, full := put(18, "OW2", 2, plan.StatusExisting), put(50, "OW1", 3, plan.StatusExisting)
	fresh, gone := put(82, "PN3", 2, plan.StatusNew), put(114, "PN3", 2, plan.StatusRemove)
	f := finder(t, h.Made())
	got := map[plan.ID]string{}
	for _, c := range f.Changes(choose.Plastic) {
		changed := *c.Opening
		changed.Assembly = c.To
		got[c.Opening.ID] = boxOf(&changed)
	}
	for _, tt := range []struct {
		name string
		id   plan.ID
		want string
	}{{"one that stays", stays.ID, ""}, {"one that is over full", full.ID, "ow1-20"}, {"a new one", fresh.ID, "pn1-18"}, {"one that goes", gone.ID, ""}} {
		if got[tt.id] != tt.want {
			t.Errorf("%s gets %q, want %q", tt.name, got[tt.id], tt.want)
		}
	}
	step, _ := f.Everywhere(plan.Assembly{Code: "PN1"})
	if len(step.Edits) != 1 || step.Edits[0].(edit.SetAssembly).ID != fresh.ID {
		t.Errorf("one box everywhere: %+v, want at the new one alone", step.Edits)
	}
	if step, any := f.Everywhere(plan.Assembly{Code: "PN3"}); any {
		t.Errorf("what it has already: %+v", step)
	}
	if all := f.For(gone.ID); all != nil {
		t.Errorf("%d boxes are tried for one that goes", len(all))
	}
	if all := f.For("ogone"); all != nil {
		t.Errorf("%d boxes are tried for one that is not there", len(all))
	}
}
