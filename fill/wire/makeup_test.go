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
