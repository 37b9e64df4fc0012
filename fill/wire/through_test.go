package wire

import (
	"strings"
	"testing"

	"studbay/fill/box"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestCurrentGoesThroughReceptacles: in a circuit that is said to go through its receptacles one
// between two cables has hot and neutral of each cable on a terminal of its own, grounds spliced
// (NEC 250.148(B)), and two wire connectors fewer. The last of the chain, a box of three cables,
// one that a switch works and a circuit of two poles (300.13(B)) are made up as ever.
func TestCurrentGoesThroughReceptacles(t *testing.T) {
	between := func(c *plan.Circuit) {}
	for _, tt := range []struct {
		name    string
		through bool
		circuit func(*plan.Circuit)
		kind    string
		wires   int
		more    int // cables that go on from it, beside the one that comes
		works   bool
		want    bool
	}{
		{"through", true, between, "duplex", 2, 1, false, true},
		{"on tails", false, between, "duplex", 2, 1, false, false},
		{"the last of a chain", true, between, "duplex", 2, 0, false, false},
		{"three cables", true, between, "duplex", 2, 2, false, false},
		{"three wires", true, between, "duplex", 3, 1, false, false},
		{"two poles", true, func(c *plan.Circuit) { c.Poles = 2 }, "duplex", 2, 1, false, false},
		{"no receptacle", true, between, "wall-light", 2, 1, false, false},
		{"worked by a switch", true, between, "duplex", 2, 1, true, false},
		{"half of it switched", true, between, "half-switched", 2, 1, false, false},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 240, 120)
		c := h.Circuit(15)
		c.Through = tt.through
		tt.circuit(c)
		put := func(kind string, along float64) *plan.Opening {
			return r.Opening(kind, r.On(0, along), ruletest.On(c), func(o *plan.Opening) { o.Assembly = plan.Assembly{Box: "pn1-22.5"} })
		}
		first, o, other := put("duplex", 20), put(tt.kind, 60), put("switch", 200)
		h.Cable(first.ID, o.ID, 14, tt.wires, c)
		for n := range tt.more {
			h.Cable(o.ID, put("duplex", 100+20*float64(n)).ID, 14, tt.wires, c)
		}
		if tt.works {
			h.Control([]*plan.Opening{other}, []*plan.Opening{o})
		}
		ix := index.New(h.Made())
		v, _ := ix.OpeningView(o.ID)
		if got := GoesThrough(ix, v); got != tt.want {
			t.Errorf("%s: %v", tt.name, got)
			continue
		}
		contents, err := box.ParseContents("cable 14/2 x2; device 14")
		if err != nil {
			t.Fatal(err)
		}
		connectors := 3
		if tt.want {
			connectors = 1 // the grounds
		}
		if got := SplicesAt(ix, v, contents, false); got != connectors {
			t.Errorf("%s: %d wire connectors, want %d", tt.name, got, connectors)
		}
		if !tt.want {
			continue
		}
		if three, _ := box.ParseContents("cable 14/2 x3; device 14"); SplicesAt(ix, v, three, false) != 3 {
			t.Error("with a third cable that is stated nothing goes through")
		}
		m, ok := MakeUpOf(ix, o.ID)
		if !ok {
			t.Fatal("its make-up cannot be told")
		}
		var said []string
		for _, n := range m.Nets {
			said = append(said, string(n.Conductor.Role)+" "+map[bool]string{true: "spliced", false: "direct"}[n.IsSplice()])
		}
		if got, want := strings.Join(said, ", "), "ground spliced, neutral direct, neutral direct, hot direct, hot direct"; got != want {
			t.Errorf("it is joined %s, want %s", got, want)
		}
		if n := len(m.Devices[0].Terminals); n != 5 {
			t.Errorf("%d terminals are taken, want ground, two neutrals and two hots", n)
		}
	}
}

// TestADraftSaysHowItIsFed: the cables of a circuit are the same either way, its step says that
// it goes through receptacles, and its boxes are made up so: of three in a row that in the
// middle alone, as one cable comes to each of the others.
func TestADraftSaysHowItIsFed(t *testing.T) {
	for _, tt := range []struct {
		through bool
		name    string
	}{
		{false, "Wire circuit 1"},
		{true, "Wire circuit 1, through its receptacles"},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 240, 120)
		c := h.Circuit(15)
		c.Through = tt.through
		var all []*plan.Opening
		for i, name := range []string{"a", "b", "c"} {
			all = append(all, r.Opening("duplex", r.On(0, 24+48*float64(i)), ruletest.On(c), func(o *plan.Opening) { o.Note = name }))
		}
		p := h.Made()
		steps, err := Draft(index.New(p), nil, c.ID, ids())
		if err != nil {
			t.Fatal(err)
		}
		if got := steps.Name().String(); got != tt.name {
			t.Errorf("the step is %q, want %q", got, tt.name)
		}
		if got, want := strings.Join(told(p, steps), ", "), "a-b 14/2, b-c 14/2"; got != want {
			t.Errorf("%s: %s, want %s", tt.name, got, want)
		}
		next, err := steps.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		ix := index.New(next)
		for i, want := range []bool{false, tt.through, false} {
			if v, _ := ix.OpeningView(all[i].ID); GoesThrough(ix, v) != want {
				t.Errorf("%s: the current goes through %s: %v, want %v", tt.name, all[i].Note, !want, want)
			}
		}
	}
}
