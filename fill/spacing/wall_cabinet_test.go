package spacing_test

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// A base cabinet with a countertop, 40 in wide, in the middle of 200 in of wall with a
// receptacle at either side of it. What the editions say of it outside kitchens stands at
// jadelearning.com, 2017 changes, 210.52(A)(2)(1).
func cabinetIn(t *testing.T, edition string, use plan.Use) *filltest.Room {
	r := filltest.OneWall(t, 200)
	r.Edition, r.Room.Use = edition, use
	r.Fixture(plan.FixtureCounter, 0, 80, 40)
	return r
}

func TestACabinetWithAWorkSurface(t *testing.T) {
	for _, tt := range []struct {
		name    string
		edition string
		use     plan.Use
		place   []float64
		want    []string
		source  string
	}{
		{"2014: any fixed cabinet ends a wall space", "2014", plan.UseBedroom, []float64{70}, []string{`0:120"-200"`}, "210.52(A)(2)(1) of 2014"},
		{"2017: the wall goes on behind it", "2017", plan.UseBedroom, []float64{70}, []string{`0:142"-200"`}, "210.52(A)(2)(1) of 2017: cabinets that do not have countertops"},
		{"2023: so it does", "2023", plan.UseFamily, []float64{70}, []string{`0:142"-200"`}, "2023 text"},
		{"2023: a kitchen's is the counter rule's", "2023", plan.UseKitchen, []float64{70}, []string{`0:120"-200"`}, "210.52(C)"},
		{"2023: a dining room's is", "2023", plan.UseDining, []float64{70}, []string{`0:120"-200"`}, "210.52(C)"},
		{"within the cabinet one does not count", "2023", plan.UseBedroom, []float64{100}, []string{`0:0"-200"`}, "210.52(3): within cabinets"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := cabinetIn(t, tt.edition, tt.use)
			for _, x := range tt.place {
				r.Receptacle(0, x)
			}
			if got := missed(r); !slices.Equal(got, tt.want) {
				t.Errorf("missed %v, want %v (%s)", got, tt.want, tt.source)
			}
			along := r.Found(spacing.CounterReach.ID)
			if isKitchen := tt.use == plan.UseKitchen || tt.use == plan.UseDining; (len(along) > 0) != isKitchen {
				t.Errorf("along counters: %+v", along)
			}
		})
	}
}

func TestAReceptacleAboveACounterServesTheWallOfABedroom(t *testing.T) {
	r := cabinetIn(t, "2023", plan.UseBedroom)
	o := part.NewOpening(unit.Imperial, "counter", plan.OnFace(r.Room.Sides[0].ID, in(100))) // 42 in high
	r.Opening(o)
	if got, want := missed(r), []string{`0:0"-28"`, `0:172"-200"`}; !slices.Equal(got, want) {
		t.Errorf("missed %v, want %v: 72 in either way of 100, 210.52(A)(1)", got, want)
	}
}

// known returns the findings but for those of what nobody has entered, such as circuits.
func known(found []rule.Finding) []rule.Finding {
	return slices.DeleteFunc(slices.Clone(found), func(f rule.Finding) bool { return f.IsOpen })
}

func TestARemedyIsNotSetIntoACabinet(t *testing.T) {
	for _, fixture := range []plan.Fixture{
		{Kind: plan.FixtureCounter, Height: in(36), Depth: in(24)},
		{Kind: plan.FixtureCabinet, Height: in(40), Depth: in(24), Bottom: in(8)},
	} {
		r := filltest.OneWall(t, 72)
		f := r.Fixture(fixture.Kind, 0, 0, 72)
		f.Height, f.Depth, f.Bottom = fixture.Height, fixture.Depth, fixture.Bottom
		for _, found := range reach(r) {
			if len(found.Remedies) == 0 {
				t.Fatalf("%s: nothing is offered", fixture.Kind)
			}
			p, err := found.Remedies[0].Edit.Apply(r.Plan())
			if err != nil {
				t.Fatal(err)
			}
			result, err := fill.Check(index.New(p))
			if err != nil {
				t.Fatal(err)
			}
			if left := known(result.Of(r.Room.ID)); len(left) > 0 {
				t.Errorf("%s: after %q there is %v", fixture.Kind, found.Remedies[0].Label, filltest.Said(left))
			}
		}
	}
}

// 72 in either way, 210.52(A)(1): of 146-1/4 in with one at 72 in the last 2-1/4 are left.
func TestASmallGapMovesTheNeighborFirst(t *testing.T) {
	r := filltest.OneWall(t, 146.25)
	r.Receptacle(0, 72)
	r.Receptacle(0, 8) // serves the rest of the wall, where the first is moved
	found := reach(r)
	if len(found) != 1 || len(found[0].Remedies) < 2 {
		t.Fatalf("%+v", found)
	}
	if got, want := found[0].Remedies[0].Label.String(), `Move `+string(r.OpeningAt(0, 72).Tag)+` by 2-1/4"`; got != want {
		t.Errorf("offers %q, want %q", got, want)
	}
	p, err := found[0].Remedies[0].Edit.Apply(r.Plan())
	if err != nil {
		t.Fatal(err)
	}
	result, _ := fill.Check(index.New(p))
	if left := known(result.Of(r.Room.ID)); len(left) > 0 {
		t.Errorf("after it: %v", filltest.Said(left))
	}
	existing := *r.OpeningAt(0, 72)
	existing.Status = plan.StatusExisting
	filltest.Put(&r.Level.Openings, &existing)
	if got := reach(r)[0].Remedies[0].Label.ID; got == "rule.wall-reach.remedy.move" {
		t.Error("a box that is in the wall already is to be moved")
	}
}

func TestARoomWhoseUseIsNotKnownIsTold(t *testing.T) {
	for _, use := range []plan.Use{plan.UseUnknown, "", "grotto"} {
		r := filltest.OneWall(t, 200)
		r.Room.Use = use
		found := reach(r)
		if len(found) != 1 || !found[0].IsOpen || found[0].Message.ID != "rule.wall-reach.use" {
			t.Errorf("%q: %v", use, filltest.Said(found))
		}
	}
	r := filltest.OneWall(t, 200)
	r.Room.Use = plan.UseHall
	if found := reach(r); len(found) > 0 {
		t.Errorf("a hall, which 210.52(A) does not name: %v", filltest.Said(found))
	}
}
