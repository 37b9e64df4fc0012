package fill

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

const allowances = "Table 314.16(B)(1) of NEC 2023: 14 takes 2.00, 12 takes 2.25, 10 takes 2.50"

// need returns what contents need by the 2023 figures, in in³.
func need(t *testing.T, edition string, c box.Contents) string {
	t.Helper()
	h := plan.Header{Edition: edition}
	fig, err := FiguresOf(plan.Plan{Header: &h})
	if err != nil {
		t.Fatal(err)
	}
	lines, _, err := box.Need(fig, c)
	if err != nil {
		t.Fatal(err)
	}
	var sum unit.Volume
	for _, l := range lines {
		sum += l.Volume
	}
	return sum.String()
}

func TestContents(t *testing.T) {
	const id = "o22222222"
	cable := func(c plan.Cable) *plan.Cable {
		if c.To == "" {
			c.From, c.To = "o33333333", id
		}
		return &c
	}
	romex := cable(plan.Cable{Size: 12, Wires: 2, Ground: true})
	stated := &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 14, Wires: 2, Times: 3}, {What: plan.ItemDevice, Size: 14}}}
	for _, tt := range []struct {
		name     string
		kind     string
		devices  []plan.Device
		contents *plan.Contents
		assembly plan.Assembly
		cables   []*plan.Cable
		source   boxes.Source
		need     string // in³ by NEC 2023
		why      string
	}{
		{name: "nothing drawn or stated", kind: "duplex", source: boxes.Assumed, need: "15.75",
			why: "two 12/2 and a yoke: 4 + 1 + 2 of 2.25, ask-the-electrician.com, 17.0 box of A5"},
		{name: "stated", kind: "duplex", contents: stated, source: boxes.Stated, need: "18",
			why: "three 14/2 and a receptacle: 9 of 2.00, diychatroom.com 102858"},
		{name: "drawn goes before stated", kind: "duplex", contents: stated, cables: []*plan.Cable{romex}, source: boxes.Drawn, need: "11.25",
			why: "one 12/2 and a yoke: 2 + 1 + 2 of 2.25; " + allowances},
		{name: "two drawn share the ground", kind: "duplex", cables: []*plan.Cable{romex, romex}, source: boxes.Drawn, need: "15.75",
			why: "4 + 1 + 2 of 2.25, ask-the-electrician.com"},
		{name: "not known", kind: "duplex", contents: &plan.Contents{Source: plan.ContentsNotKnown}, source: boxes.NotKnown},
		{name: "not known, but cables are drawn", kind: "duplex", contents: &plan.Contents{Source: plan.ContentsNotKnown}, cables: []*plan.Cable{romex}, source: boxes.Drawn, need: "11.25",
			why: "what is drawn is known; " + allowances},
		{name: "low voltage", kind: "data", source: boxes.NotKnown},
		{name: "a kind nobody knows", kind: "whatnot", source: boxes.NotKnown},
		{name: "cables drawn to a kind nobody knows", kind: "whatnot", cables: []*plan.Cable{romex}, source: boxes.Drawn, need: "6.75",
			why: "3 of 2.25, no yoke; " + allowances},
		{name: "a cable without a ground", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Wires: 2})}, source: boxes.Drawn, need: "9",
			why: "2 + 2 of 2.25; " + allowances},
		{name: "a ground of its own size", kind: "range", devices: []plan.Device{{Size: 6, Gangs: 2}},
			cables: []*plan.Cable{cable(plan.Cable{Size: 6, Wires: 3, Ground: true, GroundSize: 10})}, source: boxes.Drawn, need: "37.5",
			why: "3 of 5.00, a ground of 2.50, four of 5.00 for two gangs; the ground at its own size: 314.16(B)(5)"},
		{name: "a ground said to be of the cable's size", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Wires: 2, Ground: true, GroundSize: 12})}, source: boxes.Drawn, need: "11.25",
			why: "as without saying so"},
		{name: "a cable from the opening to itself", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 12, Wires: 2, Ground: true})}, source: boxes.Drawn, need: "15.75",
			why: "both its ends come in: 4 + 1 + 2 of 2.25; " + allowances},
		{name: "the same without a ground", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 12, Wires: 2})}, source: boxes.Drawn, need: "13.5",
			why: "4 + 2 of 2.25; " + allowances},
		{name: "with a ground of its own size", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 10, Wires: 2, Ground: true, GroundSize: 12})}, source: boxes.Drawn, need: "16.75",
			why: "4 of 2.50, one ground of 2.25, a yoke on 12; " + allowances},
		{name: "devices of the opening go before those of its kind", kind: "duplex", devices: []plan.Device{{Size: 14}, {Size: 12}}, source: boxes.Assumed, need: "19.75",
			why: "4 + 1 of 2.25 for two 12/2, two yokes at 4.00 and 4.50: each by its own wires, 314.16(B)(4)"},
		{name: "a luminaire's wires stay with it", kind: "ceiling-light", cables: []*plan.Cable{cable(plan.Cable{Size: 14, Wires: 2, Ground: true})}, source: boxes.Drawn, need: "6",
			why: "2 + 1 of 2.00, wires under 14 from the canopy free: electrical-contractor.net, pan box of A11"},
		{name: "a box with internal clamps", kind: "ceiling-light", assembly: plan.Assembly{Box: "oct4-1.5-c"}, cables: []*plan.Cable{cable(plan.Cable{Size: 14, Wires: 2, Ground: true})}, source: boxes.Drawn, need: "8",
			why: "the same and a clamp: electrical-contractor.net, pan box of A11"},
		{name: "clamps of the box count for what is stated too", kind: "duplex", contents: stated, assembly: plan.Assembly{Code: "DV2"}, source: boxes.Stated, need: "20",
			why: "three 14/2, a receptacle and a clamp: 10 of 2.00, diychatroom.com 102858"},
		{name: "once", kind: "duplex", assembly: plan.Assembly{Code: "DV2"}, source: boxes.Stated, need: "20",
			contents: &plan.Contents{Source: plan.ContentsStated, Items: append(stated.Items[:2:2], plan.Item{What: plan.ItemClamps})},
			why:      "any number of clamps take one allowance, 314.16(B)(2)"},
		{name: "assumed in a box with clamps", kind: "duplex", assembly: plan.Assembly{Box: "dev3-2.75-c"}, source: boxes.Assumed, need: "18",
			why: "7 of 2.25 and a clamp: ask-the-electrician.com, 18.00 of A5"},
		{name: "a cable without wires", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Ground: true, GroundSize: 10})}, source: boxes.Drawn, need: "7",
			why: "a ground of 2.50 and a yoke of 4.50; none is not one"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			v := index.OpeningView{Opening: &plan.Opening{ID: id, Kind: tt.kind, Devices: tt.devices, Contents: tt.contents, Assembly: tt.assembly}, Cables: tt.cables}
			got, source := boxes.ContentsOf(v)
			if source != tt.source {
				t.Errorf("%s, want %s", source, tt.source)
			}
			if source == boxes.NotKnown {
				if got != nil {
					t.Errorf("not known, yet %v", got)
				}
				return
			}
			if sum := need(t, "2023", got); sum != tt.need {
				t.Errorf("%s needs %s in³, want %s (%s)", got, sum, tt.need, tt.why)
			}
		})
	}
}

// The catalogue's own lists are lent out: asking twice must give the same.
func TestContentsAreNotWornOut(t *testing.T) {
	v := index.OpeningView{Opening: &plan.Opening{Kind: "ceiling-light", Assembly: plan.Assembly{Box: "oct4-1.5-c"}}}
	first, _ := boxes.ContentsOf(v)
	want := first.String()
	for range 3 {
		again, _ := boxes.ContentsOf(v)
		if again.String() != want {
			t.Fatalf("first %s, then %s", want, again)
		}
	}
	other, _ := boxes.ContentsOf(index.OpeningView{Opening: &plan.Opening{Kind: "ceiling-light"}})
	for _, i := range other {
		if i.What == box.Clamps {
			t.Error("clamps of one box in another")
		}
	}
}

func TestStatedContentsComeBack(t *testing.T) {
	items, err := box.ParseContents("cable 12/2 x3; through 10; device 12:2; fitting stud; clamps; terminal-block 12")
	if err != nil {
		t.Fatal(err)
	}
	v := index.OpeningView{Opening: &plan.Opening{Kind: "duplex", Contents: boxes.StatedContents(items)}}
	if got, source := boxes.ContentsOf(v); source != boxes.Stated || got.String() != items.String() {
		t.Errorf("%s %s, want %s", source, got, items)
	}
}

func TestSourcesAreToldApart(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range []boxes.Source{boxes.Drawn, boxes.Stated, boxes.Assumed, boxes.NotKnown} {
		if text := s.Text().String(); text == "" || seen[text] {
			t.Errorf("%s reads %q", s, text)
		} else {
			seen[text] = true
		}
	}
}
