package boxes

import (
	"testing"

	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// contentsOf reads contents; empty text is none.
func contentsOf(t *testing.T, text string) box.Contents {
	t.Helper()
	c, err := box.ParseContents(text)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// opened is an opening of a kind with contents as the user told them, and so many cables of
// 12/2 with ground drawn to it.
func opened(t *testing.T, kind string, source plan.ContentsSource, text string, cables int, more ...func(*plan.Opening)) index.OpeningView {
	t.Helper()
	o := &plan.Opening{ID: "o22222222", Tag: "A", Kind: kind, Status: plan.StatusNew}
	if source != "" {
		o.Contents = StatedContents(contentsOf(t, text))
		o.Contents.Source = source
	}
	for _, m := range more {
		m(o)
	}
	v := index.OpeningView{Opening: o}
	for range cables {
		v.Cables = append(v.Cables, &plan.Cable{From: "o33333333", To: o.ID, Size: 12, Wires: 2, Ground: true})
	}
	return v
}

func old(o *plan.Opening)     { o.Status = plan.StatusExisting }
func clamped(o *plan.Opening) { o.Assembly = plan.Assembly{Box: "dev3-2.75-c"} }

// TestWhatIsInABoxWordForWord: drawn cables of a new box stand in place of the cables, conductors
// and grounds that are stated; the yokes, the wires and canopy of a light, and the clamps of
// the box are in it unless the user tells of them; in an old box all that was stated stays.
func TestWhatIsInABoxWordForWord(t *testing.T) {
	const stated, part, unknown = plan.ContentsStated, plan.ContentsInPart, plan.ContentsNotKnown
	for _, tt := range []struct {
		name   string
		v      index.OpeningView
		source Source
		has    string // what is in it
		states string // what the user may put other items in place of
		least  string // what is surely in it
	}{
		{"assumed", opened(t, "duplex", "", "", 0), Assumed, "cable 12/2 x2; device 12", "cable 12/2 x2; device 12", ""},
		{"drawn", opened(t, "duplex", "", "", 2), Drawn, "cable 12/2; cable 12/2; device 12", "device 12", "cable 12/2; cable 12/2; device 12"},
		{"stated", opened(t, "duplex", stated, "cable 14/3; clamps", 0), Stated, "cable 14/3; clamps; device 14", "cable 14/3; clamps; device 14", "cable 14/3; clamps; device 14"},
		{"stated and drawn", opened(t, "duplex", stated, "cable 14/3; conductor 10; ground 10; through 14; clamps", 1), DrawnAndStated,
			"cable 12/2; through 14; clamps; device 12", "through 14; clamps; device 12", "cable 12/2; through 14; clamps; device 12"},
		{"with clamps of its own", opened(t, "duplex", stated, "cable 14/3", 0, clamped), Stated, "cable 14/3; device 14; clamps", "cable 14/3; device 14; clamps", "cable 14/3; device 14; clamps"},
		{"whose clamps are said not to be there", opened(t, "duplex", stated, "cable 14/3; no clamps", 0, clamped), Stated, "cable 14/3; no clamps; device 14", "cable 14/3; no clamps; device 14", "cable 14/3; no clamps; device 14"},
		{"old, stated and drawn", opened(t, "duplex", stated, "cable 14/3", 1, old), DrawnAndStated, "cable 12/2; cable 14/3; device 12", "cable 14/3; device 12", "cable 12/2; cable 14/3; device 12"},
		{"old, nothing said", opened(t, "duplex", "", "", 0, old), NotKnown, "", "", ""},
		{"old, nothing said, drawn to", opened(t, "duplex", "", "", 1, old), NotKnown, "", "", "cable 12/2; device 12"},
		{"not known", opened(t, "duplex", unknown, "cable 14/3", 1), NotKnown, "", "", "cable 12/2; device 12"},
		{"in part", opened(t, "duplex", part, "conductor 14 x3; clamps", 0, old), InPart, "", "", "conductor 14 x3; clamps; device 14"},
		{"low voltage", opened(t, "data", "", "", 0), NotCounted, "", "", ""},
		{"low voltage, drawn to", opened(t, "data", "", "", 1), Drawn, "cable 12/2", "", "cable 12/2"},
		{"low voltage there already", opened(t, "data", "", "", 1, old), NotCounted, "", "", "cable 12/2"},
		{"a kind nobody knows", opened(t, "whatnot", "", "", 0), NotKnown, "", "", ""},
		{"a light", opened(t, "ceiling-light", stated, "cable 14/2", 0), Stated, "cable 14/2; fixture-wire 18 x2; canopy", "cable 14/2; fixture-wire 18 x2; canopy", "cable 14/2; fixture-wire 18 x2; canopy"},
		{"a light without its canopy", opened(t, "ceiling-light", stated, "cable 14/2; no canopy", 0), Stated, "cable 14/2; no canopy; fixture-wire 18 x2", "cable 14/2; no canopy; fixture-wire 18 x2", "cable 14/2; no canopy; fixture-wire 18 x2"},
		{"a light whose wires are told", opened(t, "ceiling-light", stated, "cable 14/2; fixture-wire 16", 0), Stated, "cable 14/2; fixture-wire 16", "cable 14/2; fixture-wire 16", "cable 14/2; fixture-wire 16"},
		{"a light seen in part", opened(t, "ceiling-light", part, "cable 14/2", 0, old), InPart, "", "", "cable 14/2; fixture-wire 18 x2; canopy"},
		{"a light whose canopy was seen", opened(t, "ceiling-light", part, "cable 14/2; canopy", 0, old), InPart, "", "", "cable 14/2; canopy; fixture-wire 18 x2"},
	} {
		got, source := ContentsOf(tt.v)
		if source != tt.source || got.String() != tt.has {
			t.Errorf("%s: %s %q, want %s %q", tt.name, source, got, tt.source, tt.has)
		}
		if states := ToState(tt.v).String(); states != tt.states {
			t.Errorf("%s: %q is to be stated, want %q", tt.name, states, tt.states)
		}
		if least := LeastOf(tt.v).String(); least != tt.least {
			t.Errorf("%s: at least %q, want %q", tt.name, least, tt.least)
		}
	}
}

// TestWhatWasNotReadIsTakenForTheLeast: two conductors of 14 AWG for a cable, 14 for a conductor.
func TestWhatWasNotReadIsTakenForTheLeast(t *testing.T) {
	seen := box.Contents{
		{What: box.Cable, Times: 3}, {What: box.Cable, Wires: 3}, {What: box.Conductor, Times: 2}, {What: box.Through}, {What: box.Loop}, {What: box.Ground},
		{What: box.Conductor, Size: 10}, {What: box.Clamps}, {What: box.Cable, None: true},
	}
	const want = "conductor 14 x6; conductor 14 x3; conductor 14 x2; through 14; loop 14; ground 14; conductor 10; clamps; no cable"
	if got := smallest(seen).String(); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// TestCablesSeen counts those that nobody read, and puts so many down beside what else was seen.
func TestCablesSeen(t *testing.T) {
	o := &plan.Opening{}
	if n := SeenCables(o); n != 0 {
		t.Errorf("nothing seen: %d", n)
	}
	for _, n := range []int{2, 0, 3} {
		o.Contents = WithSeenCables(o, n)
		if got := SeenCables(o); got != n || o.Contents.Source != plan.ContentsInPart {
			t.Errorf("%d seen: %d, %+v", n, got, o.Contents)
		}
	}
	o.Contents.Items = append(o.Contents.Items, plan.Item{What: plan.ItemCable}, plan.Item{What: plan.ItemCable, Size: 12, Wires: 2, Times: 4}, plan.Item{What: plan.ItemClamps})
	if n := SeenCables(o); n != 4 {
		t.Errorf("%d, want 4: three, and one more; those of 12/2 were read", n)
	}
	if c := WithSeenCables(o, 1); len(c.Items) != 3 || c.Items[0].Size != 12 || c.Items[1].What != plan.ItemClamps || c.Items[2] != (plan.Item{What: plan.ItemCable, Times: 1}) {
		t.Errorf("%+v", c.Items)
	}
}

// TestToldByAnotherSource: what is kept when the user says who tells what is in a box.
func TestToldByAnotherSource(t *testing.T) {
	v := opened(t, "duplex", plan.ContentsStated, "cable 14/3; through 14", 1)
	for _, tt := range []struct {
		source Source
		want   string // empty: nothing is kept
		kept   plan.ContentsSource
	}{
		{Stated, "through 14; device 12; cable 14/3", plan.ContentsStated},
		{DrawnAndStated, "through 14; device 12; cable 14/3", plan.ContentsStated},
		{NotKnown, "", plan.ContentsNotKnown},
		{InPart, "cable 14/3; through 14", plan.ContentsInPart},
		{Drawn, "", ""}, {Assumed, "", ""}, {NotCounted, "", ""},
	} {
		got := ToldBy(v, tt.source)
		if (got == nil) != (tt.kept == "") {
			t.Errorf("%s: %+v", tt.source, got)
			continue
		}
		if got == nil {
			continue
		}
		kept := *got
		kept.Source = plan.ContentsStated
		items, _ := statedBy(&plan.Opening{Contents: &kept})
		if got.Source != tt.kept || items.String() != tt.want {
			t.Errorf("%s: %s %q, want %s %q", tt.source, got.Source, items, tt.kept, tt.want)
		}
	}
	if got := ToldBy(opened(t, "duplex", "", "", 0), InPart); got == nil || got.Source != plan.ContentsInPart || got.Items != nil {
		t.Errorf("nothing was stated: %+v", got)
	}
	for source, want := range map[Source]string{Drawn: "drawn", DrawnAndStated: "drawn and entered", Stated: "entered", Assumed: "assumed", InPart: "known in part", NotCounted: "not counted", NotKnown: "not known"} {
		if got := source.Text().String(); got != want {
			t.Errorf("%s is told as %q, want %q", source, got, want)
		}
	}
}

// TestStatingWhatIsInBoxes: text that is none is refused with how it is written, and so are
// cables for a new box that cables are drawn to.
func TestStatingWhatIsInBoxes(t *testing.T) {
	room := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, geom.Polygon{{}, {X: 12 * unit.Foot}, {X: 12 * unit.Foot, Y: 10 * unit.Foot}, {Y: 10 * unit.Foot}},
		[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	room.Ceiling = 8 * unit.Foot
	p := plan.New("Den", "vaaaaaaaa")
	do := func(e edit.Edit) {
		t.Helper()
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	do(edit.AddRoom{Level: "vaaaaaaaa", Room: room})
	const a, b, c plan.ID = "o22222222", "o33333333", "o44444444"
	for i, id := range []plan.ID{a, b, c} {
		do(edit.AddOpening{Opening: plan.Opening{ID: id, Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace("saaaaaaaa", unit.Length(i+2)*2*unit.Foot), Height: plan.CentreAt(16 * unit.Inch)}})
	}
	do(edit.Add{Thing: &plan.Cable{ID: plan.ID([]byte{plan.KindCable}) + "22222222", From: a, To: b, Size: 12, Wires: 2, Ground: true}})
	ix := index.New(p)
	drawn, _ := p.Opening(b)
	for _, tt := range []struct {
		text string
		of   []plan.ID
		want string // of the error; empty: it is taken
	}{
		{"cable 12", []plan.ID{c}, "“12”: the number of insulated conductors is missing; want a cable such as 12/2, or 12/2x3 for three. Write it such as cable 12/2 x2 or device 12"},
		{"cable 14/2", []plan.ID{b}, "Cables are drawn to this box and go before what is typed; change the cables, or delete them."},
		{"conductor 14", []plan.ID{b}, "Cables are drawn to this box and go before what is typed; change the cables, or delete them."},
		{"ground 14", []plan.ID{c, b}, "Cables are drawn to " + drawn.Tag + " and go before what is typed; leave it out, change its cables, or take them out."},
		{"device 14; clamps", []plan.ID{c, b}, ""},
		{"cable 14/2", []plan.ID{c}, ""},
		{"cable 14/2", []plan.ID{c, "o99999999"}, ""},
	} {
		e, err := Stating(ix, tt.text, tt.of...)
		if tt.want != "" {
			if err == nil || err.Error() != tt.want {
				t.Errorf("%s: %v, want %s", tt.text, err, tt.want)
			}
			continue
		}
		if err != nil {
			t.Errorf("%s: %v", tt.text, err)
			continue
		}
		next, err := e.Apply(p)
		if err != nil {
			continue // one of them is not there
		}
		for _, id := range tt.of {
			o, _ := next.Opening(id)
			if items, ok := statedBy(o); !ok || items.String() != tt.text {
				t.Errorf("%s of %s: stated %q", tt.text, o.Tag, items)
			}
		}
	}
}

// TestDrawnCablesAsItems: a cable that begins and ends in a box comes in twice; one whose ground
// is of another size, or is none, is told by its conductors.
func TestDrawnCablesAsItems(t *testing.T) {
	o := &plan.Opening{ID: "o22222222"}
	for _, tt := range []struct {
		c    plan.Cable
		want string
	}{
		{plan.Cable{To: o.ID, Size: 12, Wires: 2, Ground: true}, "cable 12/2"},
		{plan.Cable{From: o.ID, Size: 12, Wires: 2, Ground: true, GroundSize: 12}, "cable 12/2"},
		{plan.Cable{From: o.ID, To: o.ID, Size: 12, Wires: 2, Ground: true}, "cable 12/2 x2"},
		{plan.Cable{To: o.ID, Size: 12, Wires: 3}, "conductor 12 x3"},
		{plan.Cable{From: o.ID, To: o.ID, Size: 6, Wires: 3, Ground: true, GroundSize: 10}, "conductor 6 x6; ground 10 x2"},
		{plan.Cable{To: o.ID, Size: 12, Ground: true, GroundSize: 10}, "ground 10"},
	} {
		if got := cableItems(o, []*plan.Cable{&tt.c}).String(); got != tt.want {
			t.Errorf("%+v: %s, want %s", tt.c, got, tt.want)
		}
	}
	if got := cableItems(o, nil); got != nil {
		t.Errorf("no cable: %v", got)
	}
}
