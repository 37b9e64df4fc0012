package wire

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestOrderAgainstEveryOrder tries every order of up to seven stops, with no pruning, and of
// more every swap of two.
func TestOrderAgainstEveryOrder(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for n := 2; n <= 14; n++ {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 300, 240)
		var stops []plan.ID
		for range n {
			stops = append(stops, r.Opening("duplex", r.On(random.IntN(4), float64(6+random.IntN(220)))).ID)
		}
		start := r.Opening("duplex", r.On(0, 20)).ID
		ix := index.New(h.Made())
		got := Order(ix, start, stops)
		least := lengthOf(ix, start, got)
		if sorted := slices.Sorted(slices.Values(got)); !slices.Equal(sorted, slices.Sorted(slices.Values(stops))) {
			t.Fatalf("%d stops: other ones came back", n)
		}
		if n <= exact {
			eachOrder(slices.Clone(stops), 0, func(order []plan.ID) {
				if l := lengthOf(ix, start, order); l < least {
					t.Fatalf("%d stops: %v is shorter than %v", n, l, least)
				}
			})
			continue
		}
		for i := range got {
			for k := i + 1; k < n; k++ {
				swapped := slices.Clone(got)
				swapped[i], swapped[k] = swapped[k], swapped[i]
				if l := lengthOf(ix, start, swapped); l < least {
					t.Errorf("%d stops: %d and %d swapped is %v, not %v", n, i, k, l, least)
				}
			}
		}
	}
}

func lengthOf(ix *index.Index, from plan.ID, order []plan.ID) (sum unit.Length) {
	for _, to := range order {
		run, _ := Between(ix, from, to)
		sum, from = sum+run.Total, to
	}
	return sum
}

func eachOrder(all []plan.ID, done int, do func([]plan.ID)) {
	if done == len(all) {
		do(all)
		return
	}
	for i := done; i < len(all); i++ {
		all[done], all[i] = all[i], all[done]
		eachOrder(all, done+1, do)
		all[done], all[i] = all[i], all[done]
	}
}

func ids() func() plan.ID {
	n := 500
	return func() plan.ID { n++; return filltest.IDOf(plan.KindCable, n) }
}

// told writes the cables of a draft as from-to wires.
func told(p plan.Plan, steps edit.Steps) (all []string) {
	tag := func(id plan.ID) string {
		if o, _ := p.Opening(id); o != nil {
			return o.Note
		}
		return "panel"
	}
	for _, e := range steps.Edits {
		c := e.(edit.Add).Thing.(*plan.Cable)
		all = append(all, fmt.Sprintf("%s-%s %s/%d", tag(c.From), tag(c.To), c.Size, c.Wires))
	}
	slices.Sort(all)
	return all
}

// TestDraftByHand wires a room whose answer is plain on paper: a three-way takes a third
// conductor between its pair, and every switch reaches its light.
func TestDraftByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c := h.Circuit(15)
	called := func(name string) func(*plan.Opening) { return func(o *plan.Opening) { o.Note = name } }
	a := r.Opening("duplex", r.On(0, 24), ruletest.On(c), called("a"))
	r.Opening("duplex", r.On(0, 72), ruletest.On(c), called("b"))
	s1 := r.Opening("three-way", r.On(0, 120), ruletest.On(c), called("s1"))
	s2 := r.Opening("three-way", r.On(1, 60), ruletest.On(c), called("s2"))
	light := r.Opening("ceiling-light", r.Ceiling(120, 60), ruletest.On(c), called("light"))
	h.Control([]*plan.Opening{s1, s2}, []*plan.Opening{light})
	p := h.Made()
	steps, err := Draft(index.New(p), nil, c.ID, ids())
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"a-b 14/2", "b-s1 14/2", "s1-s2 14/3", "s2-light 14/2"}
	if got := told(p, steps); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	next, err := steps.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if err := plan.Check(next); err != nil {
		t.Error(err)
	}
	if _, err := Draft(index.New(next), nil, c.ID, ids()); err == nil {
		t.Error("a circuit with cables is wired again")
	}
	_ = a
}

// TestDraftRefuses tells of controls that cannot work and of circuits with nothing on them.
func TestDraftRefuses(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c, empty := h.Circuit(20), h.Circuit(20)
	one := r.Opening("switch", r.On(0, 24), ruletest.On(c))
	other := r.Opening("switch", r.On(1, 24), ruletest.On(c))
	light := r.Opening("ceiling-light", r.Ceiling(120, 60), ruletest.On(c))
	h.Control([]*plan.Opening{one, other}, []*plan.Opening{light})
	ix := index.New(h.Made())
	for name, id := range map[string]plan.ID{"two single-pole switches of one light": c.ID, "an empty circuit": empty.ID, "no circuit": "k99999999"} {
		if _, err := Draft(ix, nil, id, ids()); err == nil {
			t.Errorf("%s is wired", name)
		}
	}
}

// TestDraftMindsWhatFits: a box of 12.5 in³ holds a device and one 12/2 (2 + 1 + 2 allowances of
// 2.25 is 11.25 by NEC 2023 314.16(B)), and not two (7 of them are 15.75). So it comes last, though the
// cable is longer: 106 + 48 in along the wall, where it would be 48 + 58 with it in the middle.
func TestDraftMindsWhatFits(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c := h.Circuit(20)
	for i, name := range []string{"a", "b", "c"} {
		r.Opening("duplex", r.On(0, []float64{24, 72, 130}[i]), ruletest.On(c), func(o *plan.Opening) {
			if o.Note = name; name == "b" {
				o.Assembly = plan.Assembly{Box: "dev3-2.5"}
			}
		})
	}
	p := h.Made()
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		fig  *code.Figures
		want string
	}{{nil, "[a-b 12/2 b-c 12/2]"}, {fig, "[b-a 12/2 a-c 12/2]"}} {
		steps, err := Draft(index.New(p), tt.fig, c.ID, ids())
		if err != nil {
			t.Fatal(err)
		}
		var drawn []string
		for _, e := range steps.Edits {
			drawn = append(drawn, told(p, edit.Steps{Edits: []edit.Edit{e}})...)
		}
		if got := fmt.Sprint(drawn); got != tt.want {
			t.Errorf("figures %v: %s, want %s", tt.fig != nil, got, tt.want)
		}
	}
}

// TestFourWaysStandBetween: travelers run from one three-way through the four-ways to the
// other (any trade handbook on switching; from memory), wherever the four-way is.
func TestFourWaysStandBetween(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c := h.Circuit(15)
	called := func(name string) func(*plan.Opening) { return func(o *plan.Opening) { o.Note = name } }
	s1 := r.Opening("three-way", r.On(0, 20), ruletest.On(c), called("s1"))
	s2 := r.Opening("three-way", r.On(0, 60), ruletest.On(c), called("s2"))
	far := r.Opening("four-way", r.On(2, 20), ruletest.On(c), called("four")) // the farthest of them
	light := r.Opening("ceiling-light", r.Ceiling(120, 60), ruletest.On(c), called("light"))
	h.Control([]*plan.Opening{s1, s2, far}, []*plan.Opening{light})
	p := h.Made()
	steps, err := Draft(index.New(p), nil, c.ID, ids())
	if err != nil {
		t.Fatal(err)
	}
	if got, want := told(p, steps), []string{"four-s2 14/3", "s1-four 14/3", "s2-light 14/2"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestDraftLeavesWhatItCannot: a breaker of 60 A has a cable, one of 70 none; a half that is
// always on is served past one switch, through a light before it, and not past two.
func TestDraftLeavesWhatItCannot(t *testing.T) {
	for amps, ok := range map[int]bool{60: true, 70: false} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 240, 120)
		c := h.Circuit(amps)
		r.Opening("range", r.On(0, 20), ruletest.On(c))
		r.Opening("range", r.On(0, 60), ruletest.On(c))
		if _, err := Draft(index.New(h.Made()), nil, c.ID, ids()); (err == nil) != ok {
			t.Errorf("%d A: %v", amps, err)
		}
	}
	for switches, ok := range map[int]bool{1: true, 2: false} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 240, 120)
		c := h.Circuit(15)
		called := func(name string) func(*plan.Opening) { return func(o *plan.Opening) { o.Note = name } }
		var by []*plan.Opening
		for i := range switches {
			by = append(by, r.Opening([]string{"switch", "three-way"}[switches-1], r.On(0, 20+10*float64(i)), ruletest.On(c), called("s")))
		}
		near := r.Opening("wall-light", r.On(0, 80), ruletest.On(c), called("light"))
		half := r.Opening("half-switched", r.On(0, 140), ruletest.On(c), called("half"))
		h.Control(by, []*plan.Opening{near, half})
		p := h.Made()
		steps, err := Draft(index.New(p), nil, c.ID, ids())
		if (err == nil) != ok {
			t.Errorf("%d switches: %v", switches, err)
		}
		if want := []string{"light-half 14/3", "s-light 14/3"}; ok && !slices.Equal(told(p, steps), want) {
			t.Errorf("%q, want %q", told(p, steps), want)
		}
	}
}
