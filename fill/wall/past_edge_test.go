package wall_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The remedy of a box past an edge clears it, in round lengths of the plan's units.
func TestBoxesPastAnEdgeAreSetBack(t *testing.T) {
	for _, at := range []struct {
		name          string
		along, height unit.Length
	}{
		{"left", unit.Millimetre, in(16)}, {"right", in(100) - 1, in(16)}, {"floor", in(50), in(1)}, {"ceiling", in(50), in(96)},
	} {
		for _, units := range []string{plan.UnitsImperial, plan.UnitsMetric} {
			r := filltest.OneWall(t, 100)
			r.Room.Ceiling = in(96)
			o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, at.along))
			o.Height = plan.CentreAt(at.height)
			id := r.Opening(o).ID
			p, err := edit.SetUnits{Units: units}.Apply(r.Plan())
			if err != nil {
				t.Fatal(err)
			}
			result, err := fill.Check(index.New(p))
			if err != nil {
				t.Fatal(err)
			}
			var edge []rule.Finding
			for f := range result.Each() {
				if f.Rule == wall.BoxPlace.ID {
					edge = append(edge, f)
				}
			}
			if len(edge) != 1 || len(edge[0].Remedies) != 1 {
				t.Fatalf("%s, %s: %v", at.name, units, filltest.Said(edge))
			}
			if p, err = edge[0].Remedies[0].Edit.Apply(p); err != nil {
				t.Fatal(err)
			}
			if result, err = fill.Check(index.New(p)); err != nil {
				t.Fatal(err)
			}
			for f := range result.Each() {
				if f.Rule == wall.BoxPlace.ID {
					t.Errorf("%s, %s: still %s", at.name, units, f.Message)
				}
			}
			if set, _ := p.Opening(id); !set.At.Along.IsMultiple(p.Header.System().Grid()) && at.name == "left" {
				t.Errorf("%s, %s: set at %s", at.name, units, unit.Metric.Format(set.At.Along))
			}
		}
	}
}

func TestAWallThatGoesStraightOnHasNoEdge(t *testing.T) {
	for _, bend := range []float64{0, 1} {
		r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{200, bend}, [2]float64{200, 144}, [2]float64{0, 144})
		r.Room.Ceiling = in(96)
		r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(99.5))))
		if found := filltest.FoundIn(t, r.Plan(), wall.BoxPlace.ID); (len(found) > 0) != (bend > 0) {
			t.Errorf("bent by %v in: %v", bend, filltest.Said(found))
		}
	}
}

func TestTheRemedyOfAnEdge(t *testing.T) {
	t.Run("keeps how the height is meant", func(t *testing.T) {
		r := filltest.OneWall(t, 100)
		r.Room.Ceiling, r.Room.Floor = in(96), []plan.Layer{{Name: "tile", Thickness: in(1)}}
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50)))
		o.Height = plan.Height{Value: in(0.5), To: plan.BoxBottom, From: plan.Subfloor}
		id := r.Opening(o).ID
		p, err := filltest.FoundIn(t, r.Plan(), wall.BoxPlace.ID)[0].Remedies[0].Edit.Apply(r.Plan())
		if err != nil {
			t.Fatal(err)
		}
		if set, _ := p.Opening(id); set.Height.To != plan.BoxBottom || set.Height.From != plan.Subfloor || frame.CentreHeight(set, r.Room) != in(2) {
			t.Errorf("set to %+v", set.Height)
		}
	})
	t.Run("finds the middle of a narrow face", func(t *testing.T) {
		r := filltest.OneWall(t, 2.5) // the box is 2-5/16 in wide
		r.Room.Ceiling = in(96)
		r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(1))))
		p, err := filltest.FoundIn(t, r.Plan(), wall.BoxPlace.ID)[0].Remedies[0].Edit.Apply(r.Plan())
		if err != nil {
			t.Fatal(err)
		}
		if found := filltest.FoundIn(t, p, wall.BoxPlace.ID); len(found) > 0 {
			t.Errorf("still %v", filltest.Said(found))
		}
	})
	t.Run("is there for each edge of two", func(t *testing.T) {
		r := filltest.OneWall(t, 100)
		r.Room.Ceiling = in(96)
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, 0))
		o.Height = plan.CentreAt(0)
		r.Opening(o)
		p := r.Plan()
		found := filltest.FoundIn(t, p, wall.BoxPlace.ID)
		if len(found) != 2 {
			t.Fatalf("%v", filltest.Said(found))
		}
		for _, f := range found {
			var err error
			if p, err = f.Remedies[0].Edit.Apply(p); err != nil {
				t.Fatal(err)
			}
		}
		if left := filltest.FoundIn(t, p, wall.BoxPlace.ID); len(left) > 0 {
			t.Errorf("still %v", filltest.Said(left))
		}
	})
	t.Run("is none where the box would meet another", func(t *testing.T) {
		r := filltest.OneWall(t, 100)
		r.Room.Ceiling = in(96)
		at := r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, 0))).ID
		r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(3))))
		for _, f := range filltest.FoundIn(t, r.Plan(), wall.BoxPlace.ID) {
			if f.Opening == at && len(f.Remedies) > 0 {
				t.Errorf("%s: %s", f.Message, f.Remedies[0].Label)
			}
		}
	})
}
