package wire

import (
	"fmt"
	"strings"
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// made tells a make-up as one reads it off: each cable, each device, each net.
func made(t *testing.T, p plan.Plan, o *plan.Opening) string {
	t.Helper()
	m, ok := MakeUpOf(index.New(p), o.ID)
	if !ok {
		return "cannot be told"
	}
	var lines []string
	says := func(all []Conductor) string {
		var texts []string
		for _, w := range all {
			text := w.Text().String()
			if w.Color != "" {
				text += " " + string(w.Color)
			}
			texts = append(texts, text)
		}
		return strings.Join(texts, ", ")
	}
	for _, c := range m.Cables {
		way := "to"
		if c.IsFeed {
			way = "from"
		}
		other := "panel"
		if c.Other != nil {
			other = c.Other.Note
		}
		lines = append(lines, fmt.Sprintf("%s %s: %s", way, other, says(c.Conductors)))
	}
	for _, d := range m.Devices {
		lines = append(lines, fmt.Sprintf("%d %s: %s", d.Gang, d.Kind, says(d.Terminals)))
	}
	for _, n := range m.Nets {
		lines = append(lines, fmt.Sprintf("%s: %d + %d splice %v capped %v box %v", n.Conductor.Text(), len(n.Cables), len(n.Terminals), n.IsSplice(), n.IsCapped(), n.IsBonded))
	}
	return strings.Join(lines, "\n")
}

// TestMakeUpByHand wires a box of three switches, its partner, a light and a receptacle, and
// reads their make-up as any handbook of house wiring has it (from memory): the pair by two
// travelers, current on one's common and the light on the other's, neutrals past the switches,
// grounds all together, receptacles on tails.
func TestMakeUpByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c := h.Circuit(15)
	put := func(kind, name string, at plan.Anchor) *plan.Opening {
		return r.Opening(kind, at, ruletest.On(c), func(o *plan.Opening) { o.Note, o.Assembly = name, plan.Assembly{Box: "pn1-22.5"} })
	}
	bank := put("switch-3", "bank", r.On(0, 24))
	bank.Devices = []plan.Device{{Kind: "three-way switch"}, {Kind: "one-pole switch"}, {Kind: "one-pole switch"}}
	far := put("three-way", "far", r.On(1, 24))
	ceiling := put("ceiling-light", "ceiling", r.Ceiling(100, 60))
	wall, porch := put("wall-light", "wall", r.On(2, 60)), put("wall-light", "porch", r.On(2, 100))
	plug, last := put("duplex", "plug", r.On(3, 60)), put("duplex", "last", r.On(3, 90))
	last.Assembly = plan.Assembly{Box: "sq4-1.5"}
	h.Control([]*plan.Opening{bank, far}, []*plan.Opening{ceiling}).Letter = "a"
	h.Control([]*plan.Opening{bank}, []*plan.Opening{wall}).Letter = "b"
	h.Control([]*plan.Opening{bank}, []*plan.Opening{porch}).Letter = "c"
	p := h.Made()
	id := ids()
	for _, run := range []struct {
		from, to *plan.Opening
		wires    int
	}{{plug, bank, 2}, {bank, far, 3}, {far, ceiling, 2}, {bank, wall, 2}, {bank, porch, 2}, {plug, last, 2}} {
		cable := &plan.Cable{ID: id(), From: run.from.ID, To: run.to.ID, Size: 14, Wires: run.wires, Ground: true, Circuit: c.ID}
		var err error
		if p, err = (edit.Add{Thing: cable}).Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	for _, tt := range []struct {
		o    *plan.Opening
		want string
	}{
		{bank, `from plug: ground bare, neutral white, hot black
to far: ground bare, neutral white, traveler 1 black, traveler 2 red
to wall: ground bare, neutral white, switched b black
to porch: ground bare, neutral white, switched c black
1 three-way switch: ground, traveler 1, traveler 2, hot
2 one-pole switch: ground, hot, switched b
3 one-pole switch: ground, hot, switched c
ground: 4 + 3 splice true capped false box false
neutral: 4 + 0 splice true capped false box false
hot: 1 + 3 splice true capped false box false
switched b: 1 + 1 splice false capped false box false
switched c: 1 + 1 splice false capped false box false
traveler 1: 1 + 1 splice false capped false box false
traveler 2: 1 + 1 splice false capped false box false`},
		{far, `from bank: ground bare, neutral white, traveler 1 black, traveler 2 red
to ceiling: ground bare, neutral white, switched a black
0 three-way switch: ground, traveler 1, traveler 2, switched a
ground: 2 + 1 splice true capped false box false
neutral: 2 + 0 splice true capped false box false
switched a: 1 + 1 splice false capped false box false
traveler 1: 1 + 1 splice false capped false box false
traveler 2: 1 + 1 splice false capped false box false`},
		{ceiling, `from far: ground bare, neutral white, switched a black
0 : ground, neutral, switched a
ground: 1 + 1 splice false capped false box false
neutral: 1 + 1 splice false capped false box false
switched a: 1 + 1 splice false capped false box false`},
		{plug, `to bank: ground bare, neutral white, hot black
to last: ground bare, neutral white, hot black
0 duplex receptacle: ground, neutral, hot
ground: 2 + 1 splice true capped false box false
neutral: 2 + 1 splice true capped false box false
hot: 2 + 1 splice true capped false box false`},
		{last, `from plug: ground bare, neutral white, hot black
0 duplex receptacle: ground, neutral, hot
ground: 1 + 1 splice true capped false box true
neutral: 1 + 1 splice false capped false box false
hot: 1 + 1 splice false capped false box false`},
	} {
		if got := made(t, p, tt.o); got != tt.want {
			t.Errorf("%s:\n%s\nwant\n%s", tt.o.Note, got, tt.want)
		}
	}
	if _, ok := MakeUpOf(index.New(h.Made()), plug.ID); ok {
		t.Error("a box without a cable is made up")
	}
	// A cable of more conductors than its work asks for cannot be told.
	var feed *plan.Cable
	for c := range p.Cables.All() {
		if c.To == bank.ID {
			feed = c
		}
	}
	odd := *feed
	odd.Wires = 5
	next, err := edit.Change{Thing: &odd}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if got := made(t, next, bank); got != "cannot be told" {
		t.Errorf("a feed of five: %s", got)
	}
}

// wired tells the cables and devices of a make-up, without what is joined.
func wired(t *testing.T, p plan.Plan, o *plan.Opening) string {
	t.Helper()
	told, _, _ := strings.Cut(made(t, p, o), "\nground: ")
	return told
}

// TestMakeUpsOfManyKinds reads make-ups as handbooks of house wiring have them (from memory); in
// a loop of two wires the white one, marked anew, brings the current to the switch (NEC
// 200.7(C)(1), from memory).
func TestMakeUpsOfManyKinds(t *testing.T) {
	type house struct {
		*ruletest.House
		r     *ruletest.Room
		c     *plan.Circuit
		named map[string]*plan.Opening
		n     float64
	}
	put := func(h *house, kind, name string, more ...func(*plan.Opening)) *plan.Opening {
		at := h.r.On(0, 20+20*h.n)
		if kind == "ceiling-light" {
			at = h.r.Ceiling(20+20*h.n, 60)
		}
		h.n++
		o := h.r.Opening(kind, at, append(more, ruletest.On(h.c), func(o *plan.Opening) { o.Note, o.Tag, o.Assembly = name, name, plan.Assembly{Box: "pn1-22.5"} })...)
		h.named[name] = o
		return o
	}
	run := func(h *house, from, to *plan.Opening, wires int) { h.Cable(from.ID, to.ID, 14, wires, h.c) }
	feed := func(h *house, to *plan.Opening, wires int) {
		h.Cable(h.r.Stand(plan.FixturePanel, h.r.On(2, 20+20*h.n), 14, 4).ID, to.ID, 14, wires, h.c)
	}
	works := func(h *house, letter string, switches []*plan.Opening, loads ...*plan.Opening) {
		h.Control(switches, loads).Letter = letter
	}
	type openings = []*plan.Opening
	pair := func(h *house, wires int) (a, b *plan.Opening) {
		a, b = put(h, "three-way", "a"), put(h, "three-way", "b")
		feed(h, a, 2)
		run(h, a, b, wires)
		return a, b
	}
	const no = "cannot be told"
	for _, tt := range []struct {
		name string
		make func(h *house)
		want map[string]string
	}{
		{"a loop with its neutral", func(h *house) {
			light, sw := put(h, "ceiling-light", "light"), put(h, "switch", "sw")
			feed(h, light, 2)
			run(h, light, sw, 3)
			works(h, "a", openings{sw}, light)
		}, map[string]string{
			"light": "from panel: ground bare, neutral white, hot black\nto sw: ground bare, neutral white, hot black, switched a red\n0 : ground, neutral, switched a",
			"sw":    "from light: ground bare, neutral white, hot black, switched a red\n0 one-pole switch: ground, hot, switched a",
		}},
		{"a loop of two", func(h *house) {
			light, sw := put(h, "ceiling-light", "light"), put(h, "switch", "sw")
			feed(h, light, 2)
			run(h, sw, light, 2) // drawn from its end
			works(h, "a", openings{sw}, light)
		}, map[string]string{"sw": "from light: ground bare, switched a black, hot remarked\n0 one-pole switch: ground, hot, switched a"}},
		{"two lights, and a junction past them", func(h *house) {
			sw, one, two, past := put(h, "switch", "sw"), put(h, "ceiling-light", "one"), put(h, "ceiling-light", "two"), put(h, "junction", "past")
			feed(h, sw, 2)
			run(h, sw, one, 2)
			run(h, one, two, 2)
			run(h, two, past, 2)
			works(h, "a", openings{sw}, one, two)
		}, map[string]string{
			"one": "from sw: ground bare, neutral white, switched a black\nto two: ground bare, neutral white, switched a black\n0 : ground, neutral, switched a",
			"two": "from one: ground bare, neutral white, switched a black\nto past: ground bare, neutral white, switched a black\n0 : ground, neutral, switched a",
		}},
		{"a dryer", func(h *house) { h.c.Poles = 2; feed(h, put(h, "dryer", "dryer"), 3) }, map[string]string{
			"dryer": "from panel: ground bare, neutral white, hot 1 black, hot 2 red\n0 dryer receptacle: ground, neutral, hot 1, hot 2",
		}},
		{"240 V alone", func(h *house) { h.c.Poles = 2; feed(h, put(h, "dryer", "dryer"), 2) }, map[string]string{
			"dryer": "from panel: ground bare, hot 1 black, hot 2 remarked\n0 dryer receptacle: ground, hot 1, hot 2",
		}},
		{"an old cable without a ground", func(h *house) {
			feed(h, put(h, "duplex", "plug"), 2)
			for c := range h.Plan.Cables.All() {
				bare := *c
				bare.Ground, bare.Existing = false, true
				h.Plan.Cables = h.Plan.Cables.With(&bare)
			}
		}, map[string]string{"plug": "from panel: neutral white, hot black\n0 duplex receptacle: ground, neutral, hot"}},
		{"from two sides", func(h *house) {
			a, b := pair(h, 3)
			light := put(h, "ceiling-light", "light")
			run(h, b, light, 2)
			works(h, "a", openings{a, b}, light)
		}, map[string]string{
			"a": "from panel: ground bare, neutral white, hot black\nto b: ground bare, neutral white, traveler 1 black, traveler 2 red\n0 three-way switch: ground, traveler 1, traveler 2, hot",
			"b": "from a: ground bare, neutral white, traveler 1 black, traveler 2 red\nto light: ground bare, neutral white, switched a black\n0 three-way switch: ground, traveler 1, traveler 2, switched a",
		}},
		{"travelers without a neutral", func(h *house) {
			a, b := pair(h, 2)
			works(h, "a", openings{a, b}, put(h, "ceiling-light", "light"))
		}, map[string]string{
			"a": "from panel: ground bare, neutral white, hot black\nto b: ground bare, traveler 1 black, traveler 2 remarked\n0 three-way switch: ground, traveler 1, traveler 2, hot",
			"b": no, // what it works is nowhere
		}},
		{"from three sides", func(h *house) {
			a, b := put(h, "three-way", "a"), put(h, "four-way", "b")
			c, light := put(h, "three-way", "c"), put(h, "ceiling-light", "light")
			feed(h, a, 2)
			run(h, a, b, 3)
			run(h, b, c, 3)
			run(h, c, light, 2)
			works(h, "a", openings{a, b, c}, light)
		}, map[string]string{"b": "from a: ground bare, neutral white, traveler 1 black, traveler 2 red\nto c: ground bare, neutral white, traveler 1 black, traveler 2 red\n0 four-way switch: ground, traveler 1, traveler 2, traveler 1, traveler 2"}},
		{"a light at the first of two", func(h *house) {
			a, b := pair(h, 3)
			light := put(h, "ceiling-light", "light")
			run(h, a, light, 2)
			works(h, "a", openings{a, b}, light)
		}, map[string]string{"a": no}},
		{"a receptacle past travelers", func(h *house) {
			a, b := pair(h, 3)
			run(h, b, put(h, "duplex", "plug"), 2)
			works(h, "a", openings{a, b}, put(h, "ceiling-light", "light"))
		}, map[string]string{"b": no, "plug": no}},
		{"a light that no cable goes to", func(h *house) {
			sw := put(h, "switch", "sw")
			feed(h, sw, 2)
			works(h, "a", openings{sw}, put(h, "ceiling-light", "light"))
		}, map[string]string{"sw": no, "light": no}},
		{"half of a receptacle", func(h *house) {
			sw, plug := put(h, "switch", "sw"), put(h, "half-switched", "plug")
			feed(h, sw, 2)
			run(h, sw, plug, 3)
			works(h, "a", openings{sw}, plug)
		}, map[string]string{
			"plug": "from sw: ground bare, neutral white, hot black, switched a red\n0 split duplex receptacle: ground, neutral, hot, switched a",
			"sw":   "from panel: ground bare, neutral white, hot black\nto plug: ground bare, neutral white, hot black, switched a red\n0 one-pole switch: ground, hot, switched a",
		}},
		{"all of one", func(h *house) {
			sw, plug := put(h, "switch", "sw"), put(h, "switched", "plug")
			feed(h, sw, 2)
			run(h, sw, plug, 3)
			works(h, "a", openings{sw}, plug)
		}, map[string]string{"plug": "from sw: ground bare, neutral white, hot black, switched a red\n0 duplex receptacle: ground, neutral, switched a"}},
		{"two receptacles", func(h *house) { feed(h, put(h, "quad", "plugs"), 2) }, map[string]string{
			"plugs": "from panel: ground bare, neutral white, hot black\n1 duplex receptacle: ground, neutral, hot\n2 duplex receptacle: ground, neutral, hot",
		}},
		{"a receptacle beside a switch of nothing", func(h *house) {
			feed(h, put(h, "switch-2", "sw", func(o *plan.Opening) {
				o.Devices = []plan.Device{{Kind: "duplex receptacle"}, {Kind: "one-pole switch"}}
			}), 2)
		}, map[string]string{"sw": "from panel: ground bare, neutral white, hot black\n1 one-pole switch: ground\n2 duplex receptacle: ground, neutral, hot"}},
		{"a feed of three", func(h *house) { feed(h, put(h, "duplex", "plug"), 3) }, map[string]string{
			"plug": "from panel: ground bare, neutral white, hot 1 black, hot 2 red\n0 duplex receptacle: ground, neutral, hot 1, hot 2",
		}},
		{"a feed of four", func(h *house) { feed(h, put(h, "duplex", "plug"), 4) }, map[string]string{"plug": no}},
		{"on by tags, the feed first", func(h *house) {
			m, z, b, a := put(h, "duplex", "m"), put(h, "duplex", "z"), put(h, "duplex", "b"), put(h, "duplex", "a")
			run(h, m, b, 2)
			run(h, m, a, 2)
			run(h, z, m, 2)
		}, map[string]string{"m": "from z: ground bare, neutral white, hot black\nto a: ground bare, neutral white, hot black\nto b: ground bare, neutral white, hot black\n0 duplex receptacle: ground, neutral, hot"}},
	} {
		h := &house{House: ruletest.New(t), named: map[string]*plan.Opening{}}
		h.r, h.c = h.Square(plan.UseLiving, 0, 0, 240, 120), h.Circuit(20)
		tt.make(h)
		p := h.Made()
		for name, want := range tt.want {
			if got := wired(t, p, h.named[name]); got != want {
				t.Errorf("%s, %s:\n%s\nwant\n%s", tt.name, name, got, want)
			}
		}
	}
}

// Two circuits in one box share grounds alone (NEC 300.13(B), 200.4: each has its own neutral);
// a neutral that goes to nothing is capped.
func TestCircuitsInOneBoxStayApart(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	one, two := h.Circuit(15), h.Circuit(20)
	sw := r.Opening("switch", r.On(0, 60), ruletest.Tagged("sw"), func(o *plan.Opening) { o.Assembly = plan.Assembly{Box: "pn1-22.5"} })
	light := r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Tagged("light"))
	for _, c := range []*plan.Circuit{one, two} {
		h.Cable(r.Stand(plan.FixturePanel, r.On(2, 20), 14, 4).ID, sw.ID, 14, 2, c)
	}
	h.Cable(sw.ID, light.ID, 14, 2, one)
	h.Control([]*plan.Opening{sw}, []*plan.Opening{light}).Letter = "a"
	_, nets, _ := strings.Cut(made(t, h.Made(), sw), "\nground: ")
	want := `3 + 1 splice true capped false box false
neutral: 2 + 0 splice true capped false box false
neutral: 1 + 0 splice false capped true box false
hot: 1 + 1 splice false capped false box false
hot: 1 + 0 splice false capped true box false
switched a: 1 + 1 splice false capped false box false`
	if nets != want {
		t.Errorf("%s\nwant\n%s", nets, want)
	}
	if _, ok := MakeUpOf(index.New(h.Made()), "ogone"); ok {
		t.Error("a box that is not there is made up")
	}
}

func TestWordsOfConductors(t *testing.T) {
	for color, want := range map[Color]string{Bare: "bare", White: "white", Black: "black", Red: "red", Blue: "blue", Remarked: "white, re-marked"} {
		if got := color.Text().String(); got != want {
			t.Errorf("%s reads %q, want %q", color, got, want)
		}
	}
	for _, tt := range []struct {
		c    Conductor
		want string
	}{
		{Conductor{Role: Ground}, "ground"}, {Conductor{Role: Neutral}, "neutral"}, {Conductor{Role: Hot}, "hot"}, {Conductor{Role: Hot, Number: 2}, "hot 2"},
		{Conductor{Role: Traveler, Number: 1}, "traveler 1"}, {Conductor{Role: Switched, Control: &plan.Control{Letter: "d"}}, "switched d"},
	} {
		if got := tt.c.Text().String(); got != tt.want {
			t.Errorf("%+v reads %q, want %q", tt.c, got, tt.want)
		}
	}
}
