package sheet

import (
	"strings"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/paper"
	"studbay/render/scene"
)

// closets is a plan of square rooms in a row, so wide, each with a receptacle.
func closets(t *testing.T, n int, side unit.Length) plan.Plan {
	t.Helper()
	ids := plantest.NewIDs(5)
	p := plan.New("Closets", ids.New(plan.KindLevel))
	level := p.Levels[0].ID
	for i := range n {
		at := geom.Point{X: unit.Length(i) * (side + unit.Foot)}
		outline := geom.Box{Min: at, Max: geom.Point{X: at.X + side, Y: side}}.Corners()
		room := plan.NewRoom(ids.New(plan.KindRoom), "Closet "+string(rune('A'+i)), plan.UseHall, outline, ids.Row(plan.KindSide, 4))
		room.Ceiling = 8 * unit.Foot
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(room.Sides[0].ID, side/2))
		o.ID = ids.New(plan.KindOpening)
		for _, e := range []edit.Edit{edit.AddRoom{Level: level, Room: room}, edit.AddOpening{Opening: o}} {
			next, err := e.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p = next
		}
	}
	return p
}

// groupsOf lists the groups of a page: the drawings on it.
func groupsOf(items []scene.Item) (all []scene.Group) {
	for _, it := range items {
		if g, ok := it.(scene.Group); ok {
			all = append(all, g)
		}
	}
	return all
}

// runsOf lists the texts of a page, in groups or not.
func runsOf(items []scene.Item) (all []scene.Run) {
	for _, it := range items {
		switch it := it.(type) {
		case scene.Run:
			all = append(all, it)
		case scene.Group:
			all = append(all, runsOf(it.Items)...)
		}
	}
	return all
}

func TestShortStripsStandSideBySide(t *testing.T) {
	size, err := paper.Named("archd")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name string
		side unit.Length
		rows int // that three rooms take
	}{
		{"each a fifth of the page wide", 4 * unit.Foot, 1},
		{"two to a row", 7 * unit.Foot, 2},
		{"each more than half of it", 12 * unit.Foot, 3},
	} {
		rows, heads := map[float64]bool{}, 0
		for _, page := range build(t, closets(t, 3, tt.side), Options{Paper: size}) {
			if !strings.Contains(page.Meta.Title, "Interior elevations") {
				continue
			}
			for _, r := range runsOf(page.Items) {
				if strings.HasPrefix(r.Text, "Closet ") {
					rows[r.At.Y], heads = true, heads+1
				}
			}
		}
		if len(rows) != tt.rows || heads != 3 {
			t.Errorf("%s: %d rooms stand in %d rows, want 3 in %d", tt.name, heads, len(rows), tt.rows)
		}
	}
}
