package wall_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// after returns what a rule finds of a thing once the first remedy of a finding is taken.
func after(t *testing.T, r *filltest.Room, f rule.Finding) (of []rule.Finding) {
	t.Helper()
	if len(f.Remedies) == 0 {
		t.Fatalf("%s: no remedy", f.Message)
	}
	p, err := f.Remedies[0].Edit.Apply(r.Plan())
	if err != nil {
		t.Fatalf("%s: %v", f.Remedies[0].Label, err)
	}
	result, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	for g := range result.Each() {
		if g.Rule == f.Rule && g.About == f.About {
			of = append(of, g)
		}
	}
	return of
}

// A room of 100 × 100 with another over its right edge by 10 in, and 2x4 framing with
// boards of 1/2 in between when they are apart: 14-1/2 in to go, in whole steps of 1 in.
func TestARoomIsMovedClearOfAnother(t *testing.T) {
	r := filltest.Square(t, 100)
	r.Neighbour([2]float64{90, 0}, [2]float64{170, 0}, [2]float64{170, 100}, [2]float64{90, 100})
	found := r.Found(wall.RoomsApart.ID)
	if len(found) != 1 {
		t.Fatalf("%+v", found)
	}
	if got, want := found[0].Remedies[0].Label.String(), `Move Bedroom by 1' 3" to the left`; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if left := after(t, r, found[0]); len(left) > 0 {
		t.Errorf("left: %q", filltest.Said(left))
	}
}

// Boxes 4 in square and round in a ceiling of 100 × 100.
func TestABoxOfACeilingIsSetClear(t *testing.T) {
	for _, tt := range []struct {
		name  string
		boxes [][2]float64
		to    [2]float64 // of the first, the shortest way in whole inches
	}{
		{"out of a wall", [][2]float64{{1, 50}}, [2]float64{2, 50}},
		{"out of a corner", [][2]float64{{1, 99}}, [2]float64{2, 98}},
		{"off another", [][2]float64{{50, 50}, {53, 50}}, [2]float64{49, 50}},
		{"off another in the very place", [][2]float64{{50, 50}, {50, 50}}, [2]float64{46, 50}},
		{"off another, with no room at the wall", [][2]float64{{3, 50}, {5, 50}}, [2]float64{3, 46}},
	} {
		r := filltest.Square(t, 100)
		for _, b := range tt.boxes {
			o := part.NewOpening(unit.Imperial, "light", plan.OnCeiling(r.Room.ID, geom.Point{X: in(b[0]), Y: in(b[1])}))
			o.Assembly = plan.Assembly{Box: "sq4-1.5"}
			r.Opening(o)
		}
		found := r.Found(wall.FlatPlace.ID)
		if len(found) != 1 {
			t.Fatalf("%s: %q", tt.name, filltest.Said(found))
		}
		if left := after(t, r, found[0]); len(left) > 0 {
			t.Errorf("%s: left %q", tt.name, filltest.Said(left))
		}
		p, _ := found[0].Remedies[0].Edit.Apply(r.Plan())
		o, _ := p.Opening(found[0].Opening)
		if want := (geom.Point{X: in(tt.to[0]), Y: in(tt.to[1])}); o.At.At != want {
			t.Errorf("%s: to %v, want %v", tt.name, o.At.At, want)
		}
	}
}

// What is in the wall already stays where it is.
func TestAnExistingBoxIsNotMoved(t *testing.T) {
	r := filltest.Square(t, 100)
	for range 2 {
		o := part.NewOpening(unit.Imperial, "light", plan.OnCeiling(r.Room.ID, geom.Point{X: in(50), Y: in(50)}))
		o.Status = plan.StatusExisting
		r.Opening(o)
	}
	for range 2 {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50)))
		o.Status = plan.StatusExisting
		r.Opening(o)
	}
	for _, id := range []string{wall.FlatPlace.ID, wall.BoxPlace.ID} {
		for _, f := range r.Found(id) {
			if len(f.Remedies) > 0 {
				t.Errorf("%s: %s", f.Message, f.Remedies[0].Label)
			}
		}
	}
}

// Two boxes 2-5/16 in wide an inch apart on a face: the first goes to the left until their
// edges touch, in whole inches.
func TestABoxOfAFaceIsSetBesideAnother(t *testing.T) {
	r := filltest.Square(t, 100)
	for _, along := range []float64{50, 51} {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(along)))
		o.Assembly = plan.Assembly{Box: "pn1-18"}
		r.Opening(o)
	}
	found := r.Found(wall.BoxPlace.ID)
	if len(found) != 1 {
		t.Fatalf("%q", filltest.Said(found))
	}
	if left := after(t, r, found[0]); len(left) > 0 {
		t.Errorf("left %q", filltest.Said(left))
	}
	p, _ := found[0].Remedies[0].Edit.Apply(r.Plan())
	if o, _ := p.Opening(found[0].Opening); o.At.Along != in(48) {
		t.Errorf("to %s, want 48 in", o.At.Along)
	}
}
