package wall_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Common practice: two things cannot be in one place; edge to edge they are beside each
// other.
func TestRoomsApart(t *testing.T) {
	for _, tt := range []struct {
		name  string
		rooms [][4]float64 // x, y, width, depth beside a room of 100 × 100 at 0, 0
		want  []string
	}{
		{"alone", nil, nil},
		{"with a wall between", [][4]float64{{104, 0, 80, 100}}, nil},
		{"edge to edge", [][4]float64{{100, 0, 80, 100}}, nil},
		{"corner to corner", [][4]float64{{100, 100, 80, 100}}, nil},
		{"an eighth over", [][4]float64{{99.875, 0, 80, 100}}, []string{"stop: Bedroom and Next overlap"}},
		{"one in the other", [][4]float64{{20, 20, 30, 30}}, []string{"stop: Bedroom and Next overlap"}},
		{"the same", [][4]float64{{0, 0, 100, 100}}, []string{"stop: Bedroom and Next overlap"}},
		{"three in a row, two overlaps", [][4]float64{{90, 0, 80, 100}, {-70, 0, 80, 100}}, []string{
			"stop: Bedroom overlaps 2 other rooms, Next among them", "stop: Next and Bedroom overlap", "stop: Next and Bedroom overlap"}},
	} {
		r := filltest.Square(t, 100)
		for _, at := range tt.rooms {
			x, y, w, h := at[0], at[1], at[2], at[3]
			r.Neighbour([2]float64{x, y}, [2]float64{x + w, y}, [2]float64{x + w, y + h}, [2]float64{x, y + h})
		}
		found := r.Found(wall.RoomsApart.ID)
		if got := filltest.Said(found); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		for _, f := range found {
			if f.Room == "" || f.About != f.Room || f.Level == "" {
				t.Errorf("%s: %+v", tt.name, f)
			}
		}
	}
}

// Boxes 4 in across, round (pan4-4) and square (sq4-1.5), in a room of 100 × 100.
func TestBoxesInCeilingsAndFloors(t *testing.T) {
	type at struct {
		x, y float64
		box  string
	}
	const round, square4 = "oct4-1.5", "sq4-1.5"
	for _, tt := range []struct {
		name  string
		boxes []at
		want  []string
	}{
		{"clear", []at{{50, 50, round}, {60, 50, round}}, nil},
		{"round, touching", []at{{50, 50, round}, {54, 50, round}}, nil},
		{"round, an eighth into each other", []at{{50, 50, round}, {53.875, 50, round}}, []string{"stop: A and B are in one place"}},
		{"round, corner to corner", []at{{50, 50, round}, {53, 53, round}}, nil}, // 4.24 apart
		{"square, corner to corner", []at{{50, 50, square4}, {53, 53, square4}}, []string{"stop: A and B are in one place"}},
		{"round over the corner of a square", []at{{50, 50, square4}, {53, 53, round}}, []string{"stop: A and B are in one place"}}, // 1.41 from it
		{"round clear of the corner of a square", []at{{50, 50, square4}, {53.5, 53.5, round}}, nil},                                // 2.12 from it
		{"three in one place", []at{{50, 50, round}, {50, 50, round}, {50, 50, round}}, []string{
			"stop: A and 2 other boxes are in one place, B among them", "stop: B and 2 other boxes are in one place, A among them", "stop: C and 2 other boxes are in one place, A among them"}},
		{"at a wall", []at{{2, 50, square4}, {50, 98, round}}, nil},
		{"an eighth in a wall", []at{{1.875, 50, square4}}, []string{"stop: A is partly in a wall"}},
		{"round, an eighth in a wall", []at{{50, 98.125, round}}, []string{"stop: A is partly in a wall"}},
		{"in a corner", []at{{1, 1, round}}, []string{"stop: A is partly in a wall"}},
	} {
		for _, on := range []func(plan.ID, geom.Point) plan.Anchor{plan.OnCeiling, plan.OnFloor} {
			r := filltest.Square(t, 100)
			for i, b := range tt.boxes {
				o := part.NewOpening(unit.Imperial, "light", on(r.Room.ID, geom.Point{X: in(b.x), Y: in(b.y)}))
				o.Assembly = plan.Assembly{Box: b.box}
				o = *r.Opening(o)
				o.Tag = string(rune('A' + i))
				filltest.Put(&r.Level.Openings, &o)
			}
			if got := filltest.Said(r.Found(wall.FlatPlace.ID)); !slices.Equal(got, tt.want) {
				t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
			}
		}
	}
}

func TestABoxOverALineThatIsNoWall(t *testing.T) {
	for _, tt := range []struct {
		kind           plan.SideKind
		ceiling, floor int
	}{{plan.SideWall, 1, 1}, {plan.SideGlass, 1, 1}, {plan.SideRailing, 0, 1}, {plan.SideOpen, 0, 0}} {
		for i, on := range []func(plan.ID, geom.Point) plan.Anchor{plan.OnCeiling, plan.OnFloor} {
			r := filltest.Square(t, 100)
			r.Room.Sides[0].Kind = tt.kind
			o := part.NewOpening(unit.Imperial, "light", on(r.Room.ID, geom.Point{X: in(50), Y: in(1)}))
			o.Assembly = plan.Assembly{Box: "sq4-1.5"}
			r.Opening(o)
			if got := len(r.Found(wall.FlatPlace.ID)); got != []int{tt.ceiling, tt.floor}[i] {
				t.Errorf("%s, place %d: %d findings", tt.kind, i, got)
			}
		}
	}
}
