package fill

import (
	"fmt"
	"testing"

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
func (r *room) cured() plan.Plan {
	r.t.Helper()
	p := r.plan()
	for range 8 {
		result, err := Check(index.New(p))
		if err != nil {
			r.t.Fatal(err)
		}
		next, done := p, true
		for _, f := range result.Of(r.room.ID) {
			if f.Rule == wall.BoxPlace.ID {
				r.t.Errorf("%s", f.Message)
			}
			if f.Rule != spacing.WallReach.ID || f.IsOpen {
				continue
			}
			done = false
			if len(f.Remedies) == 0 {
				r.t.Fatalf("%s: no remedy", f.Message)
			}
			// All of one result: their edits must not meet.
			if next, err = f.Remedies[0].Edit.Apply(next); err != nil {
				r.t.Fatalf("%s: %s: %v", f.Message, f.Remedies[0].Label, err)
			}
		}
		if done {
			return p
		}
		p = next
	}
	r.t.Fatal("the remedies never clear the room")
	return p
}

func TestRemediesOfWallsApplyAndClear(t *testing.T) {
	for _, tt := range []struct {
		name string
		make func(t *testing.T) *room
	}{
		{"an empty room", func(t *testing.T) *room { return square(t, 200) }},
		{"two walls that both begin at a door", func(t *testing.T) *room {
			r := oneWall(t, 200)
			r.door(0, 80, 40)
			return r
		}},
		{"a wall of glass", func(t *testing.T) *room {
			r := oneWall(t, 200)
			r.room.Sides[0].Kind = plan.SideGlass
			return r
		}},
		{"a railing round an outside corner", func(t *testing.T) *room {
			r := elbow(t)
			r.room.Sides[1].Kind, r.room.Sides[2].Kind = plan.SideRailing, plan.SideRailing
			return r
		}},
		{"glass that meets glass at a sharp corner", func(t *testing.T) *room {
			r := roomOf(t, [2]float64{0, 0}, [2]float64{60, 6}, [2]float64{0, 12})
			r.room.Sides[0].Kind, r.room.Sides[1].Kind = plan.SideGlass, plan.SideGlass
			r.room.Sides[2].Kind = plan.SideOpen
			return r
		}},
		{"an inch of wall between panes", func(t *testing.T) *room {
			r := oneWall(t, 81)
			r.on(r.room.Sides[0].ID, plan.BreakSlider, 0, 40, plan.PanelFixed)
			r.on(r.room.Sides[0].ID, plan.BreakSlider, 41, 40, plan.PanelFixed)
			return r
		}},
		{"a jack where the receptacle would go", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.opening(part.NewOpening(unit.Imperial, "data", plan.OnFace(r.room.Sides[0].ID, in(50))))
			return r
		}},
		{"jacks all along the wall leave the floor", func(t *testing.T) *room {
			r := oneWall(t, 30)
			for x := 4.0; x < 30; x += 3 {
				r.opening(part.NewOpening(unit.Imperial, "data", plan.OnFace(r.room.Sides[0].ID, in(x))))
			}
			return r
		}},
		{"a floor built up", func(t *testing.T) *room {
			r := square(t, 100)
			r.room.Floor = []plan.Layer{{Name: "oak", Thickness: in(0.75)}}
			return r
		}},
		{"a long ring", func(t *testing.T) *room { return square(t, 600) }},
	} {
		t.Run(tt.name, func(t *testing.T) { tt.make(t).cured() })
	}
}

// The receptacle of a remedy that was taken may go to another room; the same remedy can
// be taken again all the same.
func TestARemedyCanBeTakenTwice(t *testing.T) {
	r := oneWall(t, 100)
	hall := r.neighbour([2]float64{200, 0}, [2]float64{300, 0}, [2]float64{300, 100}, [2]float64{200, 100})
	p := r.plan()
	for i := range 3 {
		result, err := Check(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		var change edit.Edit
		for _, f := range result.Of(r.room.ID) {
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
			if o.At.Host == r.room.Sides[0].ID {
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
func (r *room) amended(figures map[string]string) []rule.Finding {
	p := r.plan()
	for figure, value := range figures {
		a := plan.Amendment{ID: r.ids.next(plan.KindAmendment), Figure: figure, Value: value, Reason: "local"}
		p.Amendments = p.Amendments.With(&a)
	}
	result, err := Check(index.New(p))
	if err != nil {
		r.t.Fatal(err)
	}
	return result.Of(r.room.ID)
}

// A slip of the pen in an amendment must not offer thousands of boxes, or stop the
// program.
func TestAnAmendedReachOfNothing(t *testing.T) {
	found := oneWall(t, 100).amended(map[string]string{"wall-reach": "0.001"})
	if len(found) != 1 || len(found[0].Remedies) != 0 {
		t.Errorf("a reach of a thousandth of an inch: %d findings, remedies %v", len(found), found[0].Remedies)
	}
}

// added returns the opening that a remedy adds to a room without any.
func (r *room) added(remedy rule.Remedy) *plan.Opening {
	r.t.Helper()
	p, err := remedy.Edit.Apply(r.plan())
	if err != nil {
		r.t.Fatal(err)
	}
	var only *plan.Opening
	for _, o := range p.Openings() {
		if only != nil {
			r.t.Fatal("it adds more than one")
		}
		only = o
	}
	return only
}

// A remedy goes by the plan's own figures.
func TestRemediesGoByAmendedFigures(t *testing.T) {
	r := oneWall(t, 100)
	r.room.Sides[0].Kind = plan.SideGlass
	for _, f := range r.amended(map[string]string{"floor-receptacle-reach": "4"}) {
		for _, remedy := range f.Remedies {
			if o := r.added(remedy); o.At.At.Y > in(4) {
				t.Errorf("offered %s off the wall, where 4 in is the most", o.At.At.Y)
			}
		}
	}
	r = oneWall(t, 100)
	for _, f := range r.amended(map[string]string{"receptacle-max-height": "12"}) {
		for _, remedy := range f.Remedies {
			if o := r.added(remedy); frame.CentreHeight(o, r.room) > in(12) {
				t.Errorf("offered at %s, where 12 in is the highest", frame.CentreHeight(o, r.room))
			}
		}
	}
}

func TestLabelsOfRemedies(t *testing.T) {
	r := oneWall(t, 300)
	r.door(0, 0, 30)
	want := "Add 2 receptacles there"
	for _, f := range r.reach() {
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
		r := roomOf(t, [2]float64{0, 0}, [2]float64{size[0], 0}, size, [2]float64{0, size[1]})
		for o := range r.cured().Levels[0].Openings.All() {
			if o.At.Part == plan.PartFloor {
				t.Errorf("%v in: a receptacle in the floor", size)
			}
		}
	}
}
