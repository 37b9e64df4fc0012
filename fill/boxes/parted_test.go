package boxes

import (
	"errors"
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// partedBox is the working of a two-gang box of 35.0 that a nonmetallic barrier parts: 17
// in³ a side, 314.16(A).
func partedBox(t *testing.T, o plan.Opening, cables ...*plan.Cable) Work {
	t.Helper()
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	o.ID, o.Gangs = "o22222222", 2
	o.Assembly = plan.Assembly{Code: "PN5", Barriers: []string{"nonmetallic"}}
	b, _, err := part.Resolve(o.Assembly)
	if err != nil {
		t.Fatal(err)
	}
	return WorkOf(index.OpeningView{Opening: &o, Cables: cables}, b, fig)
}

func statedAs(t *testing.T, text string) *plan.Contents {
	t.Helper()
	c, err := box.ParseContents(text)
	if err != nil {
		t.Fatal(err)
	}
	return StatedContents(c)
}

func enters(space int, c plan.Cable) *plan.Cable {
	c.From, c.To, c.ToSpace = "o33333333", "o22222222", space
	return &c
}

// By Table 314.16(B)(1) of NEC 2023 14 AWG takes 2.00, 12 AWG 2.25; a yoke two allowances,
// the grounding conductors of each space one, since each space is added up by itself.
func TestEachSideOfABarrierIsWorkedOutByItself(t *testing.T) {
	nm14, nm12 := plan.Cable{Size: 14, Wires: 2, Ground: true}, plan.Cable{Size: 12, Wires: 2, Ground: true}
	two := []plan.Device{{Kind: "one-pole switch"}, {Kind: "dimmer"}}
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		cables []*plan.Cable
		source Source
		need   []string
		why    string
	}{
		{"stated on each side", plan.Opening{Kind: "duplex", Contents: statedAs(t, "space; cable 14/2 x3; device 14; space; cable 12/2; device 12")}, nil,
			Stated, []string{"18", "11.25"}, "nine of 2.00; five of 2.25"},
		{"drawn to each side, a yoke on each", plan.Opening{Kind: "duplex", Devices: two}, []*plan.Cable{enters(1, nm14), enters(1, nm14), enters(2, nm12)},
			Drawn, []string{"14", "11.25"}, "4 + 1 + 2 of 2.00; 2 + 1 + 2 of 2.25"},
		{"all drawn to one side", plan.Opening{Kind: "duplex", Devices: two}, []*plan.Cable{enters(2, nm14), enters(2, nm14)},
			Drawn, []string{"4.5", "14"}, "a yoke that nothing reaches is taken for 12 AWG: 2 of 2.25; 4 + 1 + 2 of 2.00"},
		{"drawn in place of what was stated there", plan.Opening{Kind: "duplex", Devices: two, Contents: statedAs(t, "space; cable 10/2; clamps; space; cable 10/2; fitting stud")},
			[]*plan.Cable{enters(1, nm14), enters(2, nm12)},
			DrawnAndStated, []string{"12", "13.5"}, "2 + 1 + 2 + clamps of 2.00; 2 + 1 + 2 + stud of 2.25"},
		{"added to what was found in an existing box", plan.Opening{Kind: "duplex", Status: plan.StatusExisting, Contents: statedAs(t, "space; cable 14/2; device 14; space; device 14")},
			[]*plan.Cable{enters(2, nm14)},
			DrawnAndStated, []string{"10", "10"}, "five of 2.00 each"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			w := partedBox(t, tt.o, tt.cables...)
			if w.Err != nil || w.Source != tt.source || len(w.Spaces) != len(tt.need) {
				t.Fatalf("%s, %d spaces, %v", w.Source, len(w.Spaces), w.Err)
			}
			for i, r := range w.Spaces {
				if r.Required.String() != tt.need[i] || r.Volume.String() != "17" {
					t.Errorf("space %d needs %s of %s, want %s of 17 (%s)", i+1, r.Required, r.Volume, tt.need[i], tt.why)
				}
			}
		})
	}
}

// Nobody but the user knows on which side of a barrier a thing is.
func TestWhatIsOnWhichSideIsAsked(t *testing.T) {
	nm14 := plan.Cable{Size: 14, Wires: 2, Ground: true}
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		cables []*plan.Cable
		want   string
	}{
		{"nothing but the kind", plan.Opening{Kind: "duplex"}, nil, "parted.assumed"},
		{"stated in one", plan.Opening{Kind: "duplex", Contents: statedAs(t, "cable 14/2 x3; device 14")}, nil, "parted.untold"},
		{"a cable drawn to no side", plan.Opening{Kind: "duplex", Contents: statedAs(t, "space; device 14; space; device 14")}, []*plan.Cable{enters(0, nm14)}, "parted.cable"},
		{"a cable drawn to a side there is not", plan.Opening{Kind: "duplex", Contents: statedAs(t, "space; device 14; space; device 14")}, []*plan.Cable{enters(3, nm14)}, "parted.cable"},
		{"one yoke for two sides", plan.Opening{Kind: "duplex"}, []*plan.Cable{enters(1, nm14)}, "parted.yokes"},
		{"a luminaire", plan.Opening{Kind: "wall-light"}, []*plan.Cable{enters(1, nm14)}, "parted.luminaire"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			w := partedBox(t, tt.o, tt.cables...)
			var asked *words.Error
			if w.Source != NotKnown || !errors.As(w.Err, &asked) || asked.Text.ID != tt.want {
				t.Errorf("%s, %v; want %s", w.Source, w.Err, tt.want)
			}
			if w.Fits() {
				t.Error("it is said to fit")
			}
		})
	}
}

// What was typed of one side is not taken away while the other is not told.
func TestWhatIsStatedSoFarStays(t *testing.T) {
	const text = "space 16; cable 14/2; device 14"
	o := plan.Opening{ID: "o22222222", Kind: "duplex", Gangs: 2, Contents: statedAs(t, text), Assembly: plan.Assembly{Code: "PN5", Barriers: []string{"metal"}}}
	v := index.OpeningView{Opening: &o}
	if got := ToState(v).String(); got != text {
		t.Errorf("to state: %q", got)
	}
	o.Contents = statedAs(t, text+"; space; cable 12/2; device 12")
	if got := ToState(v).String(); got != text+"; space; cable 12/2; device 12" {
		t.Errorf("to state: %q", got)
	}
}

// Cables that are drawn hide what was stated in their place; it stays, each in its space.
func TestHiddenCablesStayOnTheirSide(t *testing.T) {
	o := plan.Opening{ID: "o22222222", Kind: "duplex", Gangs: 2, Assembly: plan.Assembly{Code: "PN5", Barriers: []string{"metal"}},
		Contents: statedAs(t, "space; cable 14/2; device 14; space; cable 12/2; device 12")}
	v := index.OpeningView{Opening: &o, Cables: []*plan.Cable{enters(1, plan.Cable{Size: 10, Wires: 2, Ground: true})}}
	items := ToState(v)
	if got := items.String(); got != "space; device 10; space; device 12" {
		t.Errorf("beside the cable drawn: %q", got)
	}
	o.Contents = Restated(v, items)
	v.Cables = nil
	back, _ := statedBy(&o)
	spaces, _ := back.Spaces()
	if len(spaces) != 2 || !spaces[0].Tells(box.Cable) || !spaces[1].Tells(box.Cable) {
		t.Errorf("without the cable: %q", back)
	}
}

func TestAnExistingBoxIsNotReplacedByOneForAnOpenWall(t *testing.T) {
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name, box, contents string
		kind                string
		want                []string // codes and parts
		why                 string
	}{
		{"one gang of 14.0, needs 15.75", "dev3-2.75", "cable 12/2 x2; device 12", "duplex", []string{"OW1", "OW2"}, "17.0 and 20.0, the only old-work ones of one gang"},
		{"an octagon of 15.5, needs 18", "oct4-1.5", "cable 14/2 x4", "junction", []string{"extoct-1.5"}, "15.5 more by Table 314.16(A); the round old-work box has 14.0"},
		{"a square of 21.0, needs 24.75", "sq4-1.5", "cable 12/2 x5", "junction", []string{"ext4-1.5"}, "21.0 more by Table 314.16(A)"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			o := plan.Opening{ID: "o22222222", Kind: tt.kind, Status: plan.StatusExisting, Contents: statedAs(t, tt.contents), Assembly: plan.Assembly{Box: tt.box}}
			if tt.kind == "junction" {
				o.Assembly.Cover = "blank-4"
				if tt.box == "oct4-1.5" {
					o.Assembly.Cover = "blank-rd"
				}
			}
			found := checkBoxFill(index.OpeningView{Opening: &o}, fig)
			if len(found) != 1 {
				t.Fatalf("%+v", found)
			}
			var got []string
			for _, r := range found[0].Remedies {
				made := r.Edit.(edit.SetAssembly).Assembly
				if len(made.Parts) > 0 {
					got = append(got, made.Parts[0].Part)
					continue
				}
				if got = append(got, made.Code); part.All().Assembly(made.Code).Box.Mounting != part.OldWork {
					t.Errorf("%s does not go into a finished wall", made.Code)
				}
			}
			if len(got) != len(tt.want) {
				t.Fatalf("%q, want %q (%s)", got, tt.want, tt.why)
			}
			for i := range got {
				if got[i] != tt.want[i] {
					t.Errorf("%q, want %q (%s)", got, tt.want, tt.why)
				}
			}
		})
	}
}

// A box that is there already, and of which nobody said what is in it, has no sum: a sum of
// nothing would say that it fits.
func TestWhatIsNotKnownHasNoSum(t *testing.T) {
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	o := plan.Opening{ID: "o22222222", Kind: "duplex", Status: plan.StatusExisting, Assembly: plan.Assembly{Code: "PN2"}}
	b, _, err := part.Resolve(o.Assembly)
	if err != nil {
		t.Fatal(err)
	}
	if w := WorkOf(index.OpeningView{Opening: &o}, b, fig); w.Source.IsKnown() || len(w.Spaces) > 0 || w.Fits() || w.Err != nil {
		t.Errorf("%+v", w)
	}
}
