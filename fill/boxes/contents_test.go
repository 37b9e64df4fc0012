package boxes

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

const allowances = "Table 314.16(B)(1) of NEC 2023: 14 takes 2.00, 12 takes 2.25, 10 takes 2.50"

// need returns what contents need by the 2023 figures, in in³.
func need(t *testing.T, edition string, c box.Contents) string {
	t.Helper()
	fig, err := code.Edition(edition)
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
	nm14 := cable(plan.Cable{Size: 14, Wires: 2, Ground: true})
	says := func(items ...plan.Item) *plan.Contents {
		return &plan.Contents{Source: plan.ContentsStated, Items: items}
	}
	stated := &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 14, Wires: 2, Times: 3}, {What: plan.ItemDevice, Size: 14}}}
	for _, tt := range []struct {
		name     string
		kind     string
		devices  []plan.Device
		contents *plan.Contents
		assembly plan.Assembly
		cables   []*plan.Cable
		status   plan.Status
		source   Source
		need     string // in³ by NEC 2023
		why      string
	}{
		{name: "nothing drawn or stated", kind: "duplex", source: Assumed, need: "15.75",
			why: "two 12/2 and a yoke: 4 + 1 + 2 of 2.25, ask-the-electrician.com, 17.0 box of A5"},
		{name: "stated", kind: "duplex", contents: stated, source: Stated, need: "18",
			why: "three 14/2 and a receptacle: 9 of 2.00, diychatroom.com 102858"},
		{name: "drawn goes before stated", kind: "duplex", contents: stated, cables: []*plan.Cable{romex}, source: DrawnAndStated, need: "11.25",
			why: "one 12/2 and a yoke: 2 + 1 + 2 of 2.25; " + allowances},
		{name: "two drawn share the ground", kind: "duplex", cables: []*plan.Cable{romex, romex}, source: Drawn, need: "15.75",
			why: "4 + 1 + 2 of 2.25, ask-the-electrician.com"},
		{name: "not known", kind: "duplex", contents: &plan.Contents{Source: plan.ContentsNotKnown}, source: NotKnown},
		{name: "not known, whatever is drawn", kind: "duplex", contents: &plan.Contents{Source: plan.ContentsNotKnown}, cables: []*plan.Cable{romex}, source: NotKnown},
		{name: "low voltage", kind: "data", source: NotCounted},
		{name: "a kind nobody knows", kind: "whatnot", source: NotKnown},
		{name: "cables drawn to a kind nobody knows", kind: "whatnot", cables: []*plan.Cable{romex}, source: Drawn, need: "6.75",
			why: "3 of 2.25, no yoke; " + allowances},
		{name: "a cable without a ground", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Wires: 2})}, source: Drawn, need: "9",
			why: "2 + 2 of 2.25; " + allowances},
		{name: "a ground of its own size", kind: "range", devices: []plan.Device{{Size: 6, Gangs: 2}},
			cables: []*plan.Cable{cable(plan.Cable{Size: 6, Wires: 3, Ground: true, GroundSize: 10})}, source: Drawn, need: "37.5",
			why: "3 of 5.00, a ground of 2.50, four of 5.00 for two gangs; the ground at its own size: 314.16(B)(5)"},
		{name: "a ground said to be of the cable's size", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Wires: 2, Ground: true, GroundSize: 12})}, source: Drawn, need: "11.25",
			why: "as without saying so"},
		{name: "a cable from the opening to itself", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 12, Wires: 2, Ground: true})}, source: Drawn, need: "15.75",
			why: "both its ends come in: 4 + 1 + 2 of 2.25; " + allowances},
		{name: "the same without a ground", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 12, Wires: 2})}, source: Drawn, need: "13.5",
			why: "4 + 2 of 2.25; " + allowances},
		{name: "with a ground of its own size", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{From: id, To: id, Size: 10, Wires: 2, Ground: true, GroundSize: 12})}, source: Drawn, need: "17.25",
			why: "4 of 2.50, one ground of 2.25, a yoke on 10; " + allowances},
		{name: "devices of the opening go before those of its kind", kind: "duplex", devices: []plan.Device{{Size: 14}, {Size: 12}}, source: Assumed, need: "19.75",
			why: "4 + 1 of 2.25 for two 12/2, two yokes at 4.00 and 4.50: each by its own wires, 314.16(B)(4)"},
		{name: "a luminaire's wires stay with it", kind: "ceiling-light", cables: []*plan.Cable{cable(plan.Cable{Size: 14, Wires: 2, Ground: true})}, source: Drawn, need: "6",
			why: "2 + 1 of 2.00, wires under 14 from the canopy free: electrical-contractor.net, pan box of A11"},
		{name: "a box with internal clamps", kind: "ceiling-light", assembly: plan.Assembly{Box: "oct4-1.5-c"}, cables: []*plan.Cable{cable(plan.Cable{Size: 14, Wires: 2, Ground: true})}, source: Drawn, need: "8",
			why: "the same and a clamp: electrical-contractor.net, pan box of A11"},
		{name: "clamps of the box count for what is stated too", kind: "duplex", contents: stated, assembly: plan.Assembly{Code: "DV2"}, source: Stated, need: "20",
			why: "three 14/2, a receptacle and a clamp: 10 of 2.00, diychatroom.com 102858"},
		{name: "once", kind: "duplex", assembly: plan.Assembly{Code: "DV2"}, source: Stated, need: "20",
			contents: &plan.Contents{Source: plan.ContentsStated, Items: append(stated.Items[:2:2], plan.Item{What: plan.ItemClamps})},
			why:      "any number of clamps take one allowance, 314.16(B)(2)"},
		{name: "assumed in a box with clamps", kind: "duplex", assembly: plan.Assembly{Box: "dev3-2.75-c"}, source: Assumed, need: "18",
			why: "7 of 2.25 and a clamp: ask-the-electrician.com, 18.00 of A5"},
		{name: "a cable without wires", kind: "duplex", cables: []*plan.Cable{cable(plan.Cable{Size: 12, Ground: true, GroundSize: 10})}, source: Drawn, need: "7.5",
			why: "a ground of 2.50 and a yoke of 5.00 on it; none is not one"},
		{name: "a yoke by the largest that reaches it", kind: "switch", cables: []*plan.Cable{romex, romex, romex}, source: Drawn, need: "20.25",
			why: "6 + 1 + 2 of 2.25: 314.16(B)(4), the largest conductor connected to the yoke"},
		{name: "a yoke no larger than what reaches it", kind: "duplex", cables: []*plan.Cable{nm14, nm14}, source: Drawn, need: "14",
			why: "4 + 1 + 2 of 2.00: doityourself.com 377340, A14 with a device"},
		{name: "a stated yoke that nothing drawn is as thin as", kind: "switch", devices: []plan.Device{{Size: 14}}, cables: []*plan.Cable{romex, romex, romex}, source: Drawn, need: "20.25",
			why: "6 + 1 + 2 of 2.25: no 14 is there to be connected to it, 314.16(B)(4)"},
		{name: "yokes of several sizes", kind: "switch-3", devices: []plan.Device{{Size: 14}, {Size: 12}, {Size: 12}}, cables: []*plan.Cable{romex, romex, nm14, nm14}, source: Drawn, need: "32.25",
			why: "4 of 2.25, 4 of 2.00, grounds of 2.25, yokes of 4.00, 4.50 and 4.50, each by its own: the parts of diychatroom.com 378353, A15"},
		{name: "a yoke with no size said, by the largest", kind: "switch-2", devices: []plan.Device{{Size: 14}, {}}, cables: []*plan.Cable{romex, nm14}, source: Drawn, need: "19.25",
			why: "2 of 2.25, 2 of 2.00, grounds of 2.25, yokes of 4.00 and 4.50: 314.16(B)(4)"},
		{name: "a yoke of two gangs with no size said", kind: "dryer", devices: []plan.Device{{Gangs: 2}}, cables: []*plan.Cable{cable(plan.Cable{Size: 10, Wires: 3, Ground: true})}, source: Drawn, need: "20",
			why: "3 + 1 + 4 of 2.50: electriciantalk.com 63352, A8"},
		{name: "the yoke a kind must hold", kind: "duplex", contents: says(plan.Item{What: plan.ItemConductor, Size: 14, Times: 4}, plan.Item{What: plan.ItemClamps}), source: Stated, need: "14",
			why: "4 of 2.00, a clamp of 2.00, a yoke of 4.00 on 14: 314.16(B)(1), (2), (4)"},
		{name: "a yoke said not to be there", kind: "duplex", contents: says(plan.Item{What: plan.ItemConductor, Size: 14, Times: 4}, plan.Item{What: plan.ItemDevice, None: true}), source: Stated, need: "8",
			why: "4 of 2.00; a blank cover takes nothing"},
		{name: "the wires and canopy a light must hold", kind: "ceiling-light", contents: says(plan.Item{What: plan.ItemCable, Size: 14, Wires: 2, Times: 2}), source: Stated, need: "10",
			why: "4 + 1 of 2.00; two wires of 18 come from the canopy: 314.16(B)(1) exception"},
		{name: "a canopy said not to be there", kind: "ceiling-light", contents: says(plan.Item{What: plan.ItemCable, Size: 14, Wires: 2, Times: 2}, plan.Item{What: plan.ItemCanopy, None: true}), source: Stated, need: "13",
			why: "the same and two of 18 at 1.50: stallcupeducation.learnworlds.com, A2"},
		{name: "fixture wires stated without a canopy", kind: "ceiling-light", contents: says(plan.Item{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}, plan.Item{What: plan.ItemFitting, Type: "stud"}, plan.Item{What: plan.ItemClamps}, plan.Item{What: plan.ItemFixtureWire, Size: 18, Times: 2}), source: Stated, need: "18.75",
			why: "stallcupeducation.learnworlds.com, A2: no canopy, 18.75"},
		{name: "all that is stated beside the cables stays", kind: "ceiling-light", contents: says(plan.Item{What: plan.ItemCable, Size: 14, Wires: 3}, plan.Item{What: plan.ItemConductor, Size: 10}, plan.Item{What: plan.ItemGround, Size: 10, Times: 9},
			plan.Item{What: plan.ItemFitting, Type: "stud"}, plan.Item{What: plan.ItemFitting, Type: "hickey"}, plan.Item{What: plan.ItemClamps}, plan.Item{What: plan.ItemTerminalBlock, Size: 12}, plan.Item{What: plan.ItemThrough, Size: 12}, plan.Item{What: plan.ItemLoop, Size: 12},
			plan.Item{What: plan.ItemFixtureWire, Size: 14}, plan.Item{What: plan.ItemCanopy, None: true}), cables: []*plan.Cable{romex}, source: DrawnAndStated, need: "24.5",
			why: "2 + 1 of 2.25 drawn; stud, hickey, clamps, block, through once and loop twice of 2.25; a fixture wire of 2.00: 314.16(B)(1) to (6)"},
		{name: "what is stated and drawn of a new box", kind: "duplex", contents: says(plan.Item{What: plan.ItemFitting, Type: "hickey"}, plan.Item{What: plan.ItemFitting, Type: "stud"}, plan.Item{What: plan.ItemClamps}, plan.Item{What: plan.ItemDevice, Size: 12, Times: 2}, plan.Item{What: plan.ItemTerminalBlock, Size: 12}), cables: []*plan.Cable{romex}, source: DrawnAndStated, need: "24.75",
			why: "2 + 1 drawn, 2 fittings, clamps, a block and two yokes of two, all of 2.25: 11 allowances"},
		{name: "there already and nothing said of it", kind: "duplex", status: plan.StatusExisting, source: NotKnown},
		{name: "there already and drawn to, nothing said", kind: "duplex", status: plan.StatusExisting, cables: []*plan.Cable{romex}, source: NotKnown},
		{name: "there already, low voltage", kind: "data", status: plan.StatusExisting, source: NotCounted},
		{name: "there already: drawn is added to stated", kind: "duplex", status: plan.StatusExisting, contents: stated, cables: []*plan.Cable{nm14}, source: DrawnAndStated, need: "22",
			why: "8 + 1 + 2 of 2.00, four grounds as one: 314.16(B)(1), (4), (5)"},
		{name: "there already: a larger cable reaches the yoke", kind: "duplex", status: plan.StatusExisting, contents: stated, cables: []*plan.Cable{romex}, source: DrawnAndStated, need: "23.25",
			why: "6 of 2.00, 2 of 2.25, grounds of 2.25, the yoke of 4.50 on 12: 314.16(B)(4)"},
		{name: "there already: stated in part is stated", kind: "duplex", status: plan.StatusExisting, contents: says(plan.Item{What: plan.ItemCable, Size: 12, Wires: 2}), source: Stated, need: "11.25",
			why: "2 + 1 + 2 of 2.25; " + allowances},
	} {
		t.Run(tt.name, func(t *testing.T) {
			v := index.OpeningView{Opening: &plan.Opening{ID: id, Kind: tt.kind, Status: tt.status, Devices: tt.devices, Contents: tt.contents, Assembly: tt.assembly}, Cables: tt.cables}
			got, source := ContentsOf(v)
			if source != tt.source {
				t.Errorf("%s, want %s", source, tt.source)
			}
			if !source.IsKnown() {
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
	first, _ := ContentsOf(v)
	want := first.String()
	for range 3 {
		again, _ := ContentsOf(v)
		if again.String() != want {
			t.Fatalf("first %s, then %s", want, again)
		}
	}
	other, _ := ContentsOf(index.OpeningView{Opening: &plan.Opening{Kind: "ceiling-light"}})
	for _, i := range other {
		if i.What == box.Clamps {
			t.Error("clamps of one box in another")
		}
	}
}

func TestStatedContentsComeBack(t *testing.T) {
	items, err := box.ParseContents("cable 12/2 x3; through 10; device 12:2; fitting stud; clamps; terminal-block 12; no canopy")
	if err != nil {
		t.Fatal(err)
	}
	v := index.OpeningView{Opening: &plan.Opening{Kind: "duplex", Contents: StatedContents(items)}}
	if got, source := ContentsOf(v); source != Stated || got.String() != items.String() {
		t.Errorf("%s %s, want %s", source, got, items)
	}
}

func TestSourcesAreToldApart(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range []Source{Drawn, DrawnAndStated, Stated, Assumed, NotKnown, NotCounted} {
		if text := s.Text().String(); text == "" || seen[text] {
			t.Errorf("%s reads %q", s, text)
		} else {
			seen[text] = true
		}
	}
}
