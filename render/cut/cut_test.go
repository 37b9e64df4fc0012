package cut

import (
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// cutAt returns the cut at a box of a code in a room of 12 × 10 ft whose upper wall is a
// 2×4 at 16 in behind 1 in of finish.
func cutAt(t *testing.T, code string, along unit.Length) Cut {
	t.Helper()
	ids := plantest.NewIDs(3)
	p := plan.New("Bath", ids.New(plan.KindLevel))
	outline := geom.Box{Max: geom.Point{X: 12 * unit.Foot, Y: 10 * unit.Foot}}.Corners()
	room := plan.NewRoom(ids.New(plan.KindRoom), "Bath", plan.UseBath, outline, ids.Row(plan.KindSide, 4))
	room.Prefix, room.Ceiling = "T", 8*unit.Foot
	side := *room.Sides[0]
	side.Finish = []plan.Layer{{Name: "board", Thickness: unit.Inch / 2}, {Name: "thinset", Thickness: unit.Inch / 8}, {Name: "tile", Thickness: 3 * unit.Inch / 8}}
	side.Studs.Spacing, side.Studs.Depth = 16*unit.Inch, 7*unit.Inch/2
	room.Sides[0] = &side
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(side.ID, along))
	o.ID, o.Tag, o.Assembly = ids.New(plan.KindOpening), "T1", plan.Assembly{Code: code}
	for _, e := range []edit.Edit{edit.AddRoom{Level: p.Levels[0].ID, Room: room}, edit.AddOpening{Opening: o}} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	ix := index.New(p)
	view, ok := ix.RoomView(room.ID)
	if !ok {
		t.Fatal("the room has no view")
	}
	at, _ := p.Opening(o.ID)
	c, ok := Of(&view.Sides[0], view.Room, at, unit.Inch/4) // NEC 314.20: 1/4 in
	if !ok {
		t.Fatalf("no cut at %s", code)
	}
	return c
}

// TestTheBoxStandsWhereItIsBuilt compares what is drawn with what is worked out by hand for
// a wall with 1/2 + 1/8 + 3/8 = 1 in of finish.
func TestTheBoxStandsWhereItIsBuilt(t *testing.T) {
	for _, tt := range []struct {
		code         string
		front, proud unit.Length
		rings        []unit.Length
		why          string
	}{
		{"SQ1", 0, unit.Inch, []unit.Length{3 * unit.Inch / 4, unit.Inch}, "a box with a ring is even with the stud; a ring ends at most 1/4 in back, NEC 314.20"},
		{"PN1", unit.Inch, unit.Inch, nil, "a box without a ring comes through to the finish itself"},
	} {
		c := cutAt(t, tt.code, 5*unit.Foot)
		if c.Front() != tt.front || c.Proud != tt.proud {
			t.Errorf("%s stands %s before the stud and is set %s proud, want %s and %s: %s", tt.code, c.Front(), c.Proud, tt.front, tt.proud, tt.why)
		}
		if tt.rings == nil {
			continue
		}
		for _, raise := range tt.rings {
			found := false
			for _, got := range c.Rings {
				found = found || got == raise
			}
			if !found {
				t.Errorf("%s: a ring of %s does not pass: %v; %s", tt.code, raise, c.Rings, tt.why)
			}
		}
	}
}

// TestDrawnToScale: at 1-1/2 in to the foot a stud of 3-1/2 in and a finish of 1 in are
// 4-1/2 ÷ 8 = 9/16 in of paper, and nothing is drawn outside of the width.
func TestDrawnToScale(t *testing.T) {
	c := cutAt(t, "SQ1", 5*unit.Foot)
	m := render.SheetMedium(3*unit.Inch/2, unit.Foot, render.Print, render.Medium{}.Voice)
	const want = 9.0 / 16 * 25.4
	if got := c.Tall(m); got < want-0.01 || got > want+0.01 {
		t.Errorf("the cut is %.3f mm high, want %.3f", got, want)
	}
	items := Draw(c, m, Frame{Middle: 50, Top: 10, Width: 40})
	if b := scene.Bounds(items...); b.Min.X < 29.5 || b.Max.X > 70.5 || b.Min.Y < 9.5 || b.Max.Y > 10+want+0.5 {
		t.Errorf("it is drawn in %v", b)
	}
}
