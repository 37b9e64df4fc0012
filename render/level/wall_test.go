package level

import (
	"testing"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// corners is a plan of everything walls do where they meet: four rooms about a cross,
// a T, an L-shaped room, a slanted partition, a door at the very end of a wall, rooms
// that share an edge, glass, railing and open sides.
func corners(t testing.TB) (*index.Index, plan.ID) {
	b := rendertest.NewBuilder(t)
	// Four rooms meet at a cross of partitions.
	a := b.Box("A", plan.UseBedroom, 0, 0, 96, 72)
	c := b.Box("B", plan.UseBath, 100.5, 0, 180, 72)
	d := b.Box("C", plan.UseHall, 0, 76.5, 96, 140)
	b.Box("D", plan.UseLaundry, 100.5, 76.5, 180, 140)
	b.Door(a, 1, 0, 28, plan.HandLeft, plan.SwingIn)    // at the left end of its wall
	b.Door(a, 2, 68, 28, plan.HandRight, plan.SwingOut) // at the right end of its wall
	b.Door(c, 2, 20, 48, plan.HandDouble, plan.SwingIn)
	b.Cut(d, 2, plan.BreakSlider, 16, 60)
	b.Cut(d, 1, plan.BreakPassage, 10, 36)
	// An L-shaped room whose notch holds another, and a slanted partition.
	b.Room("L", plan.UseLiving, 220, 0, 340, 0, 340, 60, 280, 60, 280, 140, 220, 140)
	b.Box("N", plan.UseCloset, 284.5, 64.5, 340, 140)
	b.Room("S", plan.UseDen, 380, 0, 440, 0, 500, 140, 380, 140)
	b.Room("U", plan.UseOffice, 444.896, 0, 520, 0, 520, 140, 504.896, 140)
	// Two rooms that share an edge, and light sides.
	e := b.Box("E", plan.UseDining, 0, 180, 80, 250)
	g := b.Box("G", plan.UseKitchen, 80, 180, 160, 250)
	e.Sides[1].Kind, g.Sides[3].Kind = plan.SideOpen, plan.SideOpen
	h := b.Box("H", plan.UseSunroom, 200, 180, 280, 250)
	h.Sides[0].Kind, h.Sides[1].Kind, h.Sides[2].Kind = plan.SideGlass, plan.SideGlass, plan.SideRailing
	b.Box("I", plan.UseDen, 320, 180, 400, 250)
	b.Box("J", plan.UseDen, 400, 180, 480, 250) // shares an edge, both of wall
	return b.Index(), b.Level.ID
}

func TestWallsLookAsKept(t *testing.T) {
	ix, level := corners(t)
	m := render.BoardMedium(2.0/25.4, 1, render.Light, words.Voice{}).Centred(rendertest.At(-20, -20), scene.Point{})
	rendertest.Golden(t, "walls.png", 96, rendertest.Page(m, 1120, 580, Draw(ix, level, nil, m, rendertest.Everything)))
}

// solidAt reports whether the wall shows at a place: a body is drawn there, and no
// room or break lies over it.
func solidAt(m render.Medium, pieces []render.Piece, x, y float64) bool {
	p := m.ToScene(rendertest.At(x, y))
	solid := false
	for _, piece := range pieces {
		for _, it := range piece.Items {
			fill, ok := it.(scene.Fill)
			if !ok || piece.Layer > render.LayerBreaks || !covers(fill.Path, p) {
				continue
			}
			solid = piece.Layer == render.LayerWalls
		}
	}
	return solid
}

// covers reports whether a point lies inside a path of straight lines, by the
// non-zero rule.
func covers(path scene.Path, p scene.Point) bool {
	winding := 0
	var first, from scene.Point
	edge := func(to scene.Point) {
		if (from.Y > p.Y) != (to.Y > p.Y) && p.X < from.X+(p.Y-from.Y)/(to.Y-from.Y)*(to.X-from.X) {
			if to.Y > from.Y {
				winding++
			} else {
				winding--
			}
		}
		from = to
	}
	path.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			first, from = points[0], points[0]
		case scene.CloseOp:
			edge(first)
		default:
			edge(points[len(points)-1])
		}
	})
	return winding != 0
}

func TestWallsAreSolidWhereTheyMeet(t *testing.T) {
	ix, level := corners(t)
	m := render.SheetMedium(1, 48, render.Print, words.Voice{})
	pieces := Draw(ix, level, nil, m, rendertest.Everything)
	for _, tt := range []struct {
		name string
		x, y float64
		want bool
	}{
		{"middle of a partition", 98, 50, true},
		{"middle of the cross", 98.25, 74.25, true},
		{"outer corner of the house", -4, -4, true},
		{"just outside of it", -7, -7, false},
		{"outer wall over the end of a partition", 98, -3, true},
		{"inside a room", 50, 40, false},
		{"a door at the left end of its wall", 98, 14, false},
		{"a door at the right end of its wall", 10, 74, false},
		{"beside that door", 40, 74, true},
		{"a passage", 98, 100, false},
		{"a slider", 50, 143, false},
		{"beside the slider", 88, 143, true},
		{"inner corner of an L", 282, 62, true},
		{"partition of the notch", 310, 62, true},
		{"slanted partition", 472.4, 70, true},
		{"beside the slanted partition", 465, 70, false},
		{"an open side", 80.5, 215, false},
		{"outer wall above an open side", 80, 178, true},
		{"glass", 240, 179, false},
		{"wall beside glass", 196, 200, true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := solidAt(m, pieces, tt.x, tt.y); got != tt.want {
				t.Errorf("at (%v, %v) in: solid is %v", tt.x, tt.y, got)
			}
		})
	}
}
