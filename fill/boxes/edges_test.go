package boxes

import (
	"slices"
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestDepthsOfConductors: 314.24(B) of NEC 2023: 15/16 in for 14 AWG and smaller, 1-3/16 for 12
// and 10, 2-1/16 for 8 to 4; larger ones are not spoken of. The largest that reaches a yoke
// counts.
func TestDepthsOfConductors(t *testing.T) {
	fig := code.Latest()
	const inch = unit.Inch
	for _, tt := range []struct {
		contents string
		depth    unit.Length
		figure   string
	}{
		{"device 18", inch * 15 / 16, "box-depth-14"}, {"device 14", inch * 15 / 16, "box-depth-14"},
		{"device 12", inch * 19 / 16, "box-depth-12"}, {"device 10", inch * 19 / 16, "box-depth-12"},
		{"device 8", inch * 33 / 16, "box-depth-8"}, {"device 6", inch * 33 / 16, "box-depth-8"}, {"device 4", inch * 33 / 16, "box-depth-8"},
		{"device 3", inch / 2, "box-depth-bare"},
		{"device 14; device 12", inch * 19 / 16, "box-depth-12"}, {"device 12; device 14", inch * 19 / 16, "box-depth-12"},
		{"conductor 8; device 14", inch * 15 / 16, "box-depth-14"}, {"conductor 8", inch / 2, "box-depth-bare"}, {"no device", inch / 2, "box-depth-bare"}, {"", inch / 2, "box-depth-bare"},
	} {
		if got := leastDepth(nil, contentsOf(t, tt.contents), fig); got.depth != tt.depth || got.figure != tt.figure || got.why.IsZero() {
			t.Errorf("%q: %v by %s, want %v by %s", tt.contents, got.depth, got.figure, tt.depth, tt.figure)
		}
	}
}

// TestDepthsBehindDevices: 314.24(B): one on 12 or 10 AWG that reaches more than 1 in behind
// its yoke, and any that reaches more than 1-7/8, wants its own depth and 1/4 in. One at the
// limit does not: the limit is put there, to the nanometre.
func TestDepthsBehindDevices(t *testing.T) {
	const device = "ground-fault receptacle"
	behind := part.All().Device(device).Behind
	if behind <= unit.Inch {
		t.Fatalf("a %s reaches %v", device, behind)
	}
	for _, tt := range []struct {
		contents   string
		usual, any unit.Length
		isAsked    bool
	}{
		{"device 12", behind, behind, false}, {"device 12", behind - 1, behind, true}, {"device 10", behind - 1, behind, true},
		{"device 14", behind - 1, behind, false}, {"device 8", behind - 1, behind, false},
		{"device 14", behind, behind - 1, true}, {"device 8", behind, behind - 1, true}, {"device 12", behind, behind - 1, true},
		{"no device", behind - 1, behind - 1, false},
	} {
		fig := *code.Latest()
		fig.Build.BehindUsual, fig.Build.BehindAny = tt.usual, tt.any
		fig.Build.DepthThick, fig.Build.DepthUsual, fig.Build.DepthFine, fig.Build.DepthBare = 1, 1, 1, 1 // nothing else asks for more
		devices := []plan.Device{{Kind: "no such"}, {Kind: device}}
		got := leastDepth(devices, contentsOf(t, tt.contents), &fig)
		if (got.figure == "device-spare") != tt.isAsked || tt.isAsked && got.depth != behind+fig.Build.DepthSpare {
			t.Errorf("%s, 12 AWG from %v and any from %v: %v by %s", tt.contents, tt.usual, tt.any, got.depth, got.figure)
		}
		if most := mostDepth(devices, &fig); most != behind+fig.Build.DepthSpare || got.depth > most {
			t.Errorf("at most %v, where %v is asked", most, got.depth)
		}
	}
}

// TestWhatAnotherCostsMore: the prices of all parts, and nothing where one has none.
func TestWhatAnotherCostsMore(t *testing.T) {
	made := func(cents int64, currency string) *part.Assembly {
		return &part.Assembly{Box: &part.Box{Part: part.Part{Price: unit.Money{Cents: cents, Currency: currency}}}}
	}
	for _, tt := range []struct {
		a, than *part.Assembly
		want    int64 // 0: none
	}{
		{made(300, "USD"), made(100, "USD"), 200}, {made(100, "USD"), made(300, "USD"), -200}, {made(1, "USD"), made(3, "USD"), -2},
		{made(0, "USD"), made(100, "USD"), 0}, {made(100, "USD"), made(0, "USD"), 0}, {made(300, "USD"), made(100, "EUR"), 0},
	} {
		got := dearer(tt.a, tt.than)
		if (got != nil) != (tt.want != 0) || got != nil && (got.Cents != tt.want || got.Currency != "USD") {
			t.Errorf("%v in place of %v: %v, want %d", tt.a.Price(), tt.than.Price(), got, tt.want)
		}
	}
}

// TestTheTightestSpace is the first of those with the least to spare.
func TestTheTightestSpace(t *testing.T) {
	for _, tt := range []struct {
		spare  []unit.Volume
		number int
	}{{nil, 0}, {[]unit.Volume{5}, 1}, {[]unit.Volume{5, 3, 4}, 2}, {[]unit.Volume{3, 3}, 1}, {[]unit.Volume{0, -1}, 2}, {[]unit.Volume{-1, 0}, 1}} {
		var w Work
		fits := len(tt.spare) > 0
		for _, s := range tt.spare {
			w.Spaces = append(w.Spaces, box.Result{Spare: s, Fits: s >= 0})
			fits = fits && s >= 0
		}
		r, number := w.Tightest()
		if number != tt.number || number > 0 && r.Spare != tt.spare[number-1] || w.Fits() != fits {
			t.Errorf("of %v it is %d, %v; fits %v", tt.spare, number, r.Spare, w.Fits())
		}
		w.Spaces = append(w.Spaces, box.Result{Required: 7}, box.Result{Required: 5})
		if need := neededOf(w); need != 12 {
			t.Errorf("all need %d", need)
		}
	}
}

// TestWhatDrawnCablesReplace: cables, conductors and grounds of a new box.
func TestWhatDrawnCablesReplace(t *testing.T) {
	for _, what := range []box.Word{box.Cable, box.Conductor, box.Ground, box.Device, box.Clamps, box.Through, box.Loop} {
		isSupply := what == box.Cable || what == box.Conductor || what == box.Ground
		for cables := range 2 {
			for _, status := range plan.Statuses {
				v := opened(t, "duplex", "", "", cables, func(o *plan.Opening) { o.Status = status })
				want := cables > 0 && isSupply && status == plan.StatusNew
				if got := Replaced(v, box.Item{What: what}); got != want {
					t.Errorf("%d cables to a %s box, %s: %v", cables, status, what, got)
				}
			}
		}
	}
}

// TestCablesSeenAndNotRead takes the place of those before, beside what else was seen.
func TestCablesSeenAndNotRead(t *testing.T) {
	clamps, read := plan.Item{What: plan.ItemClamps}, plan.Item{What: plan.ItemCable, Size: 12, Wires: 2}
	unread := func(n int) plan.Item { return plan.Item{What: plan.ItemCable, Times: n} }
	for _, tt := range []struct {
		was  []plan.Item
		n    int
		want []plan.Item
	}{
		{nil, 0, nil}, {nil, 2, []plan.Item{unread(2)}}, {[]plan.Item{unread(3), clamps, read}, 1, []plan.Item{clamps, read, unread(1)}},
		{[]plan.Item{unread(3), clamps}, 0, []plan.Item{clamps}},
	} {
		o := &plan.Opening{Contents: &plan.Contents{Source: plan.ContentsStated, Items: slices.Clone(tt.was)}}
		got := WithSeenCables(o, tt.n)
		if got.Source != plan.ContentsInPart || !slices.Equal(got.Items, tt.want) || !slices.Equal(o.Contents.Items, tt.was) {
			t.Errorf("%d beside %v: %v", tt.n, tt.was, got)
		}
		if n := SeenCables(&plan.Opening{Contents: got}); n != tt.n {
			t.Errorf("%d are seen, want %d", n, tt.n)
		}
	}
}

// TestExtensionsOfferedForABareFront: by Table 314.16(A) a 4 × 1-1/2 square has 21.0 in³, and an
// extension of a listed size gives its own. Eleven 14 AWG need 22.0.
func TestExtensionsOfferedForABareFront(t *testing.T) {
	fig := code.Latest()
	for _, tt := range []struct {
		name, kind, contents string
		a                    plan.Assembly
		want                 string // the part put on it; empty: none
	}{
		{"a bare front", "junction", "conductor 14 x11", plan.Assembly{Box: "sq4-1.5"}, "ext4-1.5"},
		{"more than the first gives", "junction", "conductor 14 x25", plan.Assembly{Box: "sq4-1.5"}, "ext4-2.125"},
		{"more than any gives", "junction", "conductor 14 x26", plan.Assembly{Box: "sq4-1.5"}, ""},
		{"a ring on it", "junction", "conductor 14 x11", plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-1g-0.5"}}}, ""},
		{"an octagon", "junction", "conductor 14 x8", plan.Assembly{Box: "oct4-1.5"}, "extoct-1.5"},
		{"a device box, whose extender has no volume", "duplex", "conductor 14 x20", plan.Assembly{Box: "dev3-2.5"}, ""},
		{"a larger square", "junction", "conductor 14 x15", plan.Assembly{Box: "sq411-1.5"}, "ext411-1.5"},
	} {
		v := opened(t, tt.kind, plan.ContentsStated, tt.contents, 0, old, func(o *plan.Opening) { o.Assembly = tt.a })
		b, ok, err := part.Resolve(tt.a)
		if !ok || err != nil {
			t.Fatal(err)
		}
		offers := extended(v, fig, b)
		if tt.want == "" {
			if len(offers) != 0 {
				t.Errorf("%s: %v is offered", tt.name, offers[0].Label)
			}
			continue
		}
		if len(offers) != 1 {
			t.Errorf("%s: %d offers", tt.name, len(offers))
			continue
		}
		set := offers[0].Edit.(edit.SetAssembly)
		add := part.All().Add(tt.want)
		if set.ID != v.Opening.ID || set.Assembly.Box != tt.a.Box || len(set.Assembly.Parts) != 1 || set.Assembly.Parts[0].Part != tt.want ||
			(offers[0].Price != nil) != (add.Price.Cents > 0) || offers[0].Price != nil && offers[0].Price.Cents != add.Price.Cents {
			t.Errorf("%s: %+v for %v", tt.name, set.Assembly, offers[0].Price)
		}
	}
}

// TestWhatGoesIntoAnotherBox: what is in it fits, a fan hangs from a box listed for one
// (314.27(C)), and a blank cover leaves no way to a yoke.
func TestWhatGoesIntoAnotherBox(t *testing.T) {
	fig := code.Latest()
	light := opened(t, "fan-light", plan.ContentsStated, "cable 14/2", 0)
	duplex := opened(t, "duplex", plan.ContentsStated, "cable 14/2; device 14", 0)
	wires := opened(t, "junction", plan.ContentsStated, "cable 14/2", 0)
	for _, tt := range []struct {
		v    index.OpeningView
		a    plan.Assembly
		want bool
	}{
		{duplex, plan.Assembly{Code: "PN1"}, true}, {duplex, plan.Assembly{Code: "SQ9"}, false}, {wires, plan.Assembly{Code: "SQ9"}, true},
		{duplex, plan.Assembly{Code: "ZZ9"}, false}, {duplex, plan.Assembly{}, false}, {duplex, plan.Assembly{Box: "dev3-1.5"}, false},
		{light, plan.Assembly{Code: "FN1"}, true}, {light, plan.Assembly{Code: "RD3"}, false}, {wires, plan.Assembly{Code: "RD3"}, true},
	} {
		if got := fitsIn(tt.a, fig, tt.v); got != tt.want {
			t.Errorf("%s into %+v: %v", tt.v.Opening.Kind, tt.a, got)
		}
	}
}

// TestSectionsAreCitedOnce, in order, the article once; an item without a volume is no ground.
func TestSectionsAreCitedOnce(t *testing.T) {
	r := box.Result{
		VolumeLines: []box.VolumeLine{{Section: "314.16(A)"}, {Section: "314.16(A)"}},
		Lines:       []box.Line{{Section: "314.16(B)(1)", Volume: 1}, {Section: "314.16(B)(2)"}, {Section: "250.148(C)", Volume: 1}, {Section: "314.16(B)(1)", Volume: 1}},
	}
	if got := sectionsOf(r); got != "314.16(A), (B)(1), 250.148(C)" {
		t.Errorf("cites %s", got)
	}
}
