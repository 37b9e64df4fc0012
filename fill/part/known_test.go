package part

import (
	"testing"

	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// TestAssembliesByHandAreDescribed: box first, then what is on it, in the words of the
// catalogue; volumes by 314.16(A) of NEC 2023, as Resolve's test has them.
func TestAssembliesByHandAreDescribed(t *testing.T) {
	three := unit.CubicInch * 3
	for _, tt := range []struct {
		a           plan.Assembly
		text        string
		gangs       int
		spaceOf     []string // what its volumes are said to be of
		isFromFresh bool     // from a mark that nobody has seen
	}{
		{plan.Assembly{Code: "SQ2"}, "Steel square 4 × 1-1/2, one-gang ring 1/2 marked 3.5", 1,
			[]string{"Steel square, 4 × 1-1/2", "Ring, 4 in square to one gang, raised 1/2"}, true},
		{plan.Assembly{Box: "pn2-32"}, "Plastic nail-on, two gang, 32.0", 2, []string{"Plastic nail-on, two gang, 32.0"}, true},
		{plan.Assembly{Box: "pn2-32", Code: "SQ2"}, "Steel square 4 × 1-1/2", 2, nil, true},
		{plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ext4-1.5"}, {Part: "raised4-1g"}}, Cover: "plate-1g"},
			"Steel square, 4 × 1-1/2 + Extension, 4 × 1-1/2 square + Raised cover, 4 in square, one gang", 1,
			[]string{"Steel square, 4 × 1-1/2", "Extension, 4 × 1-1/2 square", "Raised cover, 4 in square, one gang, without a mark: gives nothing"}, false},
		{plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-2g-0.5", Marked: &three}, {Part: "ext4-1.5"}}},
			"Steel square, 4 × 1-1/2 + Ring, 4 in square to two gang, raised 1/2 + Extension, 4 × 1-1/2 square", 2,
			[]string{"Steel square, 4 × 1-1/2", "Ring, 4 in square to two gang, raised 1/2", "Extension, 4 × 1-1/2 square"}, false},
		{plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-rd-0.5"}}}, "Steel square, 4 × 1-1/2 + Ring, 4 in square to round, raised 1/2", 0,
			[]string{"Steel square, 4 × 1-1/2", "Ring, 4 in square to round, raised 1/2, without a mark: gives nothing"}, false},
	} {
		b, ok, err := Resolve(tt.a)
		if !ok || err != nil {
			t.Fatalf("%+v: %v, %v", tt.a, ok, err)
		}
		if tt.spaceOf == nil { // the box goes before the code: what stands is the box
			same(t, b.Box.ID, tt.a.Box)
			continue
		}
		var of []string
		for _, p := range b.Space().Parts {
			of = append(of, p.What.String())
		}
		same(t, []any{b.Describe().String(), b.Gangs(), of, b.IsFromMemory()}, []any{tt.text, tt.gangs, tt.spaceOf, tt.isFromFresh})
	}
}

// TestVolumesFromMemoryAreTold: 32.0 is in the table from memory, 21.0 is a listed size.
func TestVolumesFromMemoryAreTold(t *testing.T) {
	var told []string
	for _, one := range []interface{ MarkedVolume() words.Text }{All().Box("pn2-32"), All().Box("sq4-1.5"), All().Assembly("SQ1"), All().Assembly("SQ2")} {
		told = append(told, one.MarkedVolume().String())
	}
	same(t, told, []string{"32 in³ (from memory, read the stamp)", "21 in³", "21 in³", "24.5 in³ (from memory, read the stamp)"})
}

// TestKnownTakesWhatIsThere: whatever the catalogue has of an assembly, whether it goes
// together or not.
func TestKnownTakesWhatIsThere(t *testing.T) {
	ring := []plan.AssemblyPart{{Part: "crown"}, {Part: "ring4-1g-0.5"}}
	for _, tt := range []struct {
		a    plan.Assembly
		box  string
		adds []string
	}{
		{plan.Assembly{}, "", nil},
		{plan.Assembly{Code: "ZZ9"}, "", nil},
		{plan.Assembly{Code: "SQ8"}, "sq4-1.5", []string{"ext4-1.5", "ring4-1g-0.5"}},
		{plan.Assembly{Code: "SQ8", Box: "pn1-18"}, "pn1-18", nil},
		{plan.Assembly{Box: "oct4-1.5", Parts: ring}, "oct4-1.5", []string{"ring4-1g-0.5"}},
		{plan.Assembly{Box: "tin", Parts: ring}, "", []string{"ring4-1g-0.5"}},
	} {
		found, adds := Known(tt.a)
		same(t, found, All().Box(tt.box))
		same(t, idsOf(adds), tt.adds)
	}
}

// TestTakenApartNamesItsParts, and an assembly that was put together by hand stays as it is,
// also where it kept a code.
func TestTakenApartNamesItsParts(t *testing.T) {
	mark := unit.CubicInch * 7 / 2
	same(t, TakenApart(plan.Assembly{Code: "SQ2"}), plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-1g-0.5", Marked: &mark}}, Cover: "plate-1g"})
	same(t, TakenApart(plan.Assembly{Code: "SQ1"}), plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-1g-0.5"}}, Cover: "plate-1g"})
	byHand := plan.Assembly{Code: "SQ2", Box: "pn1-18"}
	same(t, TakenApart(byHand), byHand)
}

// TestAnotherKindOfBreak keeps what that kind has: a sill of its own or the usual one, which
// is below the head; hand and swing where a leaf is hung.
func TestAnotherKindOfBreak(t *testing.T) {
	hung := plan.Break{Kind: plan.BreakDoor, Width: 36 * unit.Inch, Head: 80 * unit.Inch, Hand: plan.HandRight, Swing: plan.SwingOut}
	window := All().Break(plan.BreakWindow)
	asWindow := func(sill, head unit.Length) plan.Break {
		return plan.Break{Kind: plan.BreakWindow, Width: 36 * unit.Inch, Sill: sill, Head: head}
	}
	with := func(b plan.Break, sill, head unit.Length) plan.Break { b.Sill, b.Head = sill, head; return b }
	passage := with(hung, 0, 80*unit.Inch)
	passage.Kind, passage.Hand, passage.Swing = plan.BreakPassage, plan.HandUnknown, plan.SwingNone
	for _, tt := range []struct {
		name string
		b    plan.Break
		to   plan.BreakKind
		want plan.Break
	}{
		{"a door as a window has the usual sill and no leaf", hung, plan.BreakWindow, asWindow(window.Sill, 80*unit.Inch)},
		{"a sill of its own stays", with(hung, 30*unit.Inch, 80*unit.Inch), plan.BreakWindow, asWindow(30*unit.Inch, 80*unit.Inch)},
		{"a head at the sill is moved with it", with(hung, 80*unit.Inch, 80*unit.Inch), plan.BreakWindow, asWindow(window.Sill, window.Head)},
		{"a head just above stays", with(hung, 80*unit.Inch-1, 80*unit.Inch), plan.BreakWindow, asWindow(80*unit.Inch-1, 80*unit.Inch)},
		{"a head below the usual sill is moved", with(hung, 0, window.Sill), plan.BreakWindow, asWindow(window.Sill, window.Head)},
		{"a window as a door begins at the floor", asWindow(30*unit.Inch, 80*unit.Inch), plan.BreakDoor, plan.Break{Kind: plan.BreakDoor, Width: 36 * unit.Inch, Head: 80 * unit.Inch}},
		{"a door as a door keeps its leaf", hung, plan.BreakDoor, hung},
		{"a door as a passage loses it", hung, plan.BreakPassage, passage},
	} {
		t.Run(tt.name, func(t *testing.T) { same(t, ToBreakKind(tt.b, tt.to), edit.Edit(edit.ChangeBreak{Break: tt.want})) })
	}
}

// TestAnotherKindOfFixture: only stairs have risers and lead to a level.
func TestAnotherKindOfFixture(t *testing.T) {
	stairs := plan.Fixture{Kind: plan.FixtureStairs, Width: unit.Foot, Risers: 14, Leads: "vuppr2222"}
	same(t, ToFixtureKind(stairs, plan.FixtureStairs), edit.Edit(edit.ChangeFixture{Fixture: stairs}))
	same(t, ToFixtureKind(stairs, plan.FixturePanel), edit.Edit(edit.ChangeFixture{Fixture: plan.Fixture{Kind: plan.FixturePanel, Width: unit.Foot}}))
}

// TestWhatIsFixedFromBehind: old-work boxes, those on the surface and those that hang on
// raceways need no open framing (common practice).
func TestWhatIsFixedFromBehind(t *testing.T) {
	for _, b := range All().Boxes {
		front := b.Mounting == "old-work" || b.Mounting == "surface" || b.Mounting == "raceway"
		same(t, b.IsFixedFromBehind(), !front)
	}
}

// TestLikenessesOfWordsThatRepeat: a name of more words is only begun, also where its last
// word is the one looked for.
func TestLikenessesOfWordsThatRepeat(t *testing.T) {
	k := &Kind{spoken: [][]string{{"box", "in", "box"}}}
	for text, want := range map[string]Likeness{"box": NameBegun, "box in": NameBegun, "box in box": SameName, "box in boxes": SameName, "box in bo": NameBegun, "in box": WordsIn, "box in box in": WordsIn, "box out": Unlike} {
		if got := k.Called(text); got != want {
			t.Errorf("%q: %d, want %d", text, got, want)
		}
	}
}

// TestOutlinesAreWhole: a box of which one size is not known has none.
func TestOutlinesAreWhole(t *testing.T) {
	for _, tt := range []struct {
		b    Box
		want Outline
	}{
		{Box{Width: 2, Height: 3, Shape: DeviceShape}, Outline{2, 3, false}},
		{Box{Width: 2, Height: 2, Shape: OctagonShape}, Outline{2, 2, true}},
		{Box{Width: 2, Height: 2, Shape: RoundShape}, Outline{2, 2, true}},
		{Box{Width: 2}, Outline{}}, {Box{Height: 2}, Outline{}}, {Box{Width: 1, Height: 1}, Outline{1, 1, false}},
	} {
		same(t, tt.b.Outline(), tt.want)
	}
}

// TestPartsThatAreNotListed answers of things that no table has, so that each half of a
// question decides once: 314.27(C) of NEC 2023 asks for a fan's listing, and an old-work box
// grips the board alone.
func TestPartsThatAreNotListed(t *testing.T) {
	inch := unit.Inch
	priced := Part{Price: unit.Money{Cents: 1}}
	uncovered := &Assembly{Box: &Box{Gangs: 1, Depth: inch}}
	blank := &Assembly{Box: uncovered.Box, Cover: &Add{ID: "blank-1g"}}
	same(t, []bool{(&Add{Kind: Plate}).ComesAlong(), (&Add{Kind: Ring}).ComesAlong(), (&Add{Kind: Plate, Part: priced}).ComesAlong()}, []bool{true, false, false})
	same(t, []bool{(&Box{Listed: "fan", Mounting: Joist}).CarriesFan(), (&Box{Listed: "fan", Mounting: OldWork}).CarriesFan(), (&Box{Mounting: Joist}).CarriesFan()}, []bool{true, false, false})
	same(t, []bool{uncovered.IsBlank(), blank.IsBlank(), uncovered.FrontKind() == "", blank.standsInFor(uncovered), uncovered.standsInFor(blank)}, []bool{false, true, true, true, false})
	same(t, []bool{Resolved{}.IsParted(), Resolved{Barriers: make([]box.Barrier, 1)}.IsParted()}, []bool{false, true})
	ring := Added{Add: &Add{Raise: inch / 2, Volume: 2}}
	same(t, []unit.Length{(&Assembly{Box: &Box{Depth: inch}, Adds: []Added{ring, ring}}).Depth(), (&Assembly{Box: &Box{}, Adds: []Added{ring}}).Depth(), (&Assembly{Box: &Box{Depth: 1}, Adds: []Added{ring}}).Depth()}, []unit.Length{2 * inch, 0, inch/2 + 1})
	same(t, []unit.Volume{ring.Gives(), Added{Add: ring.Add, Marked: 1}.Gives()}, []unit.Volume{2, 1})
	same(t, OnBox(plan.Assembly{Parts: []plan.AssemblyPart{{Part: "crown"}}}, All().Box("sq4-1.5")).Parts, []plan.AssemblyPart(nil))
	same(t, []string{DeviceText("one-pole switch").String(), DeviceText("zither").String()}, []string{"single-pole switch", "zither"})
	_, unmarked := FixtureKind{}.LetterText()
	letter, marked := FixtureKind{Letter: "D"}.LetterText()
	same(t, []any{unmarked, marked, letter.String()}, []any{false, true, "D"})
}
