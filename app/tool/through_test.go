package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
)

// A door is moved and widened from the room behind it as from its own.
func TestADoorIsDraggedFromTheRoomBehindIt(t *testing.T) {
	f, r, _, door, _ := windowed(t)
	box := r.Outline().Box()
	top := box.Max.Y + inch(4.5)
	sides := []plan.ID{f.NewID(plan.KindSide), f.NewID(plan.KindSide), f.NewID(plan.KindSide), f.NewID(plan.KindSide)}
	behind := plan.NewRoom(f.NewID(plan.KindRoom), "Behind", plan.UseHall, geom.Polygon{
		{X: box.Min.X, Y: top}, {X: box.Max.X, Y: top}, {X: box.Max.X, Y: top + inch(60)}, {X: box.Min.X, Y: top + inch(60)},
	}, sides)
	behind.Ceiling = inch(96)
	if f.Do(edit.AddRoom{Level: f.Level(), Room: behind}); f.failed != nil {
		t.Fatal(f.failed)
	}
	cuts := f.Index().Cuts(sides[0])
	if len(cuts) != 1 || cuts[0].Break.ID != door {
		t.Fatalf("the door does not show in the room behind: %v", cuts)
	}
	at := cuts[0].Start.Millimetres() / 25.4
	was, _ := uprightOf(f.Plan(), door)
	c := &choose{}
	f.drag(c, f.onFaceOf(sides[0], at+10, 40), freely(f.onFaceOf(sides[0], at+17, 40)))
	now, _ := uprightOf(f.Plan(), door)
	if now.at.Host != was.at.Host || now.at.Along != was.at.Along-inch(7) || now.foot != was.foot || now.top != was.top {
		t.Errorf("dragged 7 in to the right as seen from behind, it went from %v to %v", was.at, now.at)
	}
	f.chosen = []plan.ID{door}
	f.drag(c, f.onFaceOf(sides[0], at+7, 40), freely(f.onFaceOf(sides[0], at+4, 40)))
	if wide, _ := uprightOf(f.Plan(), door); wide.width != was.width+inch(3) || wide.at.Along != now.at.Along {
		t.Errorf("its left edge as seen from behind dragged 3 in: %v wide at %v", wide.width, wide.at)
	}
}

// A door dragged along its wall in plan keeps its room, and so its swing, also where the
// pointer strays to the other face of the partition.
func TestADoorDraggedAlongItsWallKeepsItsSwing(t *testing.T) {
	f, r, _, door, _ := windowed(t)
	box := r.Outline().Box()
	behindTop := box.Max.Y + inch(4.5)
	behind := plan.NewRoom(f.NewID(plan.KindRoom), "Behind", plan.UseHall, geom.Polygon{
		{X: box.Min.X, Y: behindTop}, {X: box.Max.X, Y: behindTop}, {X: box.Max.X, Y: behindTop + inch(60)}, {X: box.Min.X, Y: behindTop + inch(60)},
	}, []plan.ID{f.NewID(plan.KindSide), f.NewID(plan.KindSide), f.NewID(plan.KindSide), f.NewID(plan.KindSide)})
	behind.Ceiling = inch(96)
	if f.Do(edit.AddRoom{Level: f.Level(), Room: behind}); f.failed != nil {
		t.Fatal(f.failed)
	}
	was, _ := f.Plan().Break(door)
	from := Pointer{At: geom.Point{X: f.onFaceOf(was.At.Host, was.At.Along.Millimetres()/25.4+10, 0).At.X, Y: box.Max.Y}, Reach: inch(2)}
	to := from
	to.At.X, to.At.Y, to.Shift = from.At.X-inch(8), behindTop+inch(1), true
	f.chosen = []plan.ID{door}
	f.drag(&choose{}, from, to)
	now, _ := f.Plan().Break(door)
	if now.At.Host != was.At.Host || now.At.Along != was.At.Along+inch(8) {
		t.Errorf("it went from %v to %v", was.At, now.At)
	}
}
