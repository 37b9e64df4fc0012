package spacing_test

import (
	"fmt"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// cured applies the remedies of a room's wall findings one after another, and fails
// where one cannot be, where a wall is left that is not served, or where a box is put in
// the way of another thing.
func cured(r *filltest.Room) plan.Plan {
	r.T.Helper()
	p := r.Plan()
	for range 8 {
		result, err := fill.Check(index.New(p))
		if err != nil {
			r.T.Fatal(err)
		}
		next, done := p, true
		for _, f := range result.Of(r.Room.ID) {
			if f.Rule == wall.BoxPlace.ID {
				r.T.Errorf("%s", f.Message)
			}
			if f.Rule != spacing.WallReach.ID || f.IsOpen {
				continue
			}
			done = false
			if len(f.Remedies) == 0 {
				r.T.Fatalf("%s: no remedy", f.Message)
			}
			// All of one result: their edits must not meet.
			if next, err = f.Remedies[0].Edit.Apply(next); err != nil {
				r.T.Fatalf("%s: %s: %v", f.Message, f.Remedies[0].Label, err)
			}
		}
		if done {
			return p
		}
		p = next
	}
	r.T.Fatal("the remedies never clear the room")
	return p
}

func TestRemediesOfWallsApplyAndClear(t *testing.T) {
	for _, tt := range []struct {
		name string
		make func(t *testing.T) *filltest.Room
	}{
		{"an empty room", func(t *testing.T) *filltest.Room { return filltest.Square(t, 200) }},
		{"two walls that both begin at a door", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 200)
			r.Door(0, 80, 40)
			return r
		}},
		{"a wall of glass", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 200)
			r.Room.Sides[0].Kind = plan.SideGlass
			return r
		}},
		{"a railing round an outside corner", func(t *testing.T) *filltest.Room {
			r := elbow(t)
			r.Room.Sides[1].Kind, r.Room.Sides[2].Kind = plan.SideRailing, plan.SideRailing
			return r
		}},
		{"glass that meets glass at a sharp corner", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{60, 6}, [2]float64{0, 12})
			r.Room.Sides[0].Kind, r.Room.Sides[1].Kind = plan.SideGlass, plan.SideGlass
			r.Room.Sides[2].Kind = plan.SideOpen
			return r
		}},
		{"an inch of wall between panes", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 81)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 0, 40, plan.PanelFixed)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 41, 40, plan.PanelFixed)
			return r
		}},
		{"a jack where the receptacle would go", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Opening(part.NewOpening(unit.Imperial, "data", plan.OnFace(r.Room.Sides[0].ID, in(50))))
			return r
		}},
		{"jacks all along the wall leave the floor", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 30)
			for x := 4.0; x < 30; x += 3 {
				r.Opening(part.NewOpening(unit.Imperial, "data", plan.OnFace(r.Room.Sides[0].ID, in(x))))
			}
			return r
		}},
		{"a floor built up", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 100)
			r.Room.Floor = []plan.Layer{{Name: "oak", Thickness: in(0.75)}}
			return r
		}},
		{"a long ring", func(t *testing.T) *filltest.Room { return filltest.Square(t, 600) }},
	} {
		t.Run(tt.name, func(t *testing.T) { cured(tt.make(t)) })
	}
}

// The receptacle of a remedy that was taken may go to another room; the same remedy can
// be taken again all the same.
func TestARemedyCanBeTakenTwice(t *testing.T) {
	r := filltest.OneWall(t, 100)
	hall := r.Neighbour([2]float64{200, 0}, [2]float64{300, 0}, [2]float64{300, 100}, [2]float64{200, 100})
	p := r.Plan()
	for i := range 3 {
		result, err := fill.Check(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		var change edit.Edit
		for _, f := range result.Of(r.Room.ID) {
			if f.Rule == spacing.WallReach.ID {
				change = f.Remedies[0].Edit
			}
		}
		before := p
		if p, err = change.Apply(p); err != nil {
			t.Fatalf("time %d: %v", i, err)
		}
		again, err := change.Apply(before)
		if err != nil || !plan.Equal(p, again) {
			t.Errorf("time %d: not the same twice: %v", i, err)
		}
		for _, o := range p.Openings() {
			if o.At.Host == r.Room.Sides[0].ID {
				if p, err = (edit.MoveOpening{ID: o.ID, To: plan.OnFace(hall.Sides[0].ID, in(float64(10+20*i)))}).Apply(p); err != nil {
					t.Fatal(err)
				}
				break
			}
		}
	}
	if n := p.Levels[0].Openings.Len(); n != 3 {
		t.Errorf("%d openings after three remedies", n)
	}
}

// amended returns what a check finds of the room under local figures.
func amended(r *filltest.Room, figures map[string]string) []rule.Finding {
	p := r.Plan()
	for figure, value := range figures {
		a := plan.Amendment{ID: r.ID(plan.KindAmendment), Figure: figure, Value: value, Reason: "local"}
		p.Amendments = p.Amendments.With(&a)
	}
	result, err := fill.Check(index.New(p))
	if err != nil {
		r.T.Fatal(err)
	}
	return result.Of(r.Room.ID)
}

// A slip of the pen in an amendment must not offer thousands of boxes, or stop the
// program.
func TestAnAmendedReachOfNothing(t *testing.T) {
	found := amended(filltest.OneWall(t, 100), map[string]string{"wall-reach": "0.001"})
	if len(found) != 1 || len(found[0].Remedies) != 0 {
		t.Errorf("a reach of a thousandth of an inch: %d findings, remedies %v", len(found), found[0].Remedies)
	}
}

// added returns the opening that a remedy adds to a room without any.
func added(r *filltest.Room, remedy rule.Remedy) *plan.Opening {
	r.T.Helper()
	p, err := remedy.Edit.Apply(r.Plan())
	if err != nil {
		r.T.Fatal(err)
	}
	var only *plan.Opening
	for _, o := range p.Openings() {
		if only != nil {
			r.T.Fatal("it adds more than one")
		}
		only = o
	}
	return only
}

// A remedy goes by the plan's own figures.
func TestRemediesGoByAmendedFigures(t *testing.T) {
	r := filltest.OneWall(t, 100)
	r.Room.Sides[0].Kind = plan.SideGlass
	for _, f := range amended(r, map[string]string{"floor-receptacle-reach": "4"}) {
		for _, remedy := range f.Remedies {
			if o := added(r, remedy); o.At.At.Y > in(4) {
				t.Errorf("offered %s off the wall, where 4 in is the most", o.At.At.Y)
			}
		}
	}
	r = filltest.OneWall(t, 100)
	for _, f := range amended(r, map[string]string{"receptacle-max-height": "12"}) {
		for _, remedy := range f.Remedies {
			if o := added(r, remedy); frame.CentreHeight(o, r.Room) > in(12) {
				t.Errorf("offered at %s, where 12 in is the highest", frame.CentreHeight(o, r.Room))
			}
		}
	}
}

func TestLabelsOfRemedies(t *testing.T) {
	r := filltest.OneWall(t, 300)
	r.Door(0, 0, 30)
	want := "Add 2 receptacles there"
	for _, f := range reach(r) {
		if got := f.Remedies[0].Label.String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
		if got := fmt.Sprint(f.Remedies[0].Edit.Name()); got != want {
			t.Errorf("undo would say %q, want %q", got, want)
		}
	}
}

// Where one more receptacle keeps them all in the wall, none is offered in the floor: as in
// a closed room of 16 by 13 ft, where the fewest would put one into a corner.
func TestTheFloorIsTheLastResort(t *testing.T) {
	for _, size := range [][2]float64{{192, 156}, {168, 144}, {144, 120}, {200, 130}} {
		r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{size[0], 0}, size, [2]float64{0, size[1]})
		for o := range cured(r).Levels[0].Openings.All() {
			if o.At.Part == plan.PartFloor {
				t.Errorf("%v in: a receptacle in the floor", size)
			}
		}
	}
}
