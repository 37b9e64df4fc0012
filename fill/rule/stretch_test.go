package rule_test

import (
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"testing"
)

// A stretch of an island lies where its face is, from left to right as one sees it.
func TestStretchesOfFixtures(t *testing.T) {
	r := filltest.OneWall(t, 120)
	f := r.Fixture(plan.FixtureIsland, 0, 30, 60) // 24 in deep, its back at the wall
	view, _ := index.New(r.Plan()).RoomView(r.Room.ID)
	at := func(x, y float64) geom.Point { return geom.Point{X: filltest.In(x), Y: filltest.In(y)} }
	for _, tt := range []struct {
		face     plan.Part
		from, to unit.Length
		want     geom.Segment
	}{
		{plan.PartFront, filltest.In(10), filltest.In(20), geom.Segment{A: at(40, 24), B: at(50, 24)}},
		{plan.PartBack, filltest.In(10), filltest.In(20), geom.Segment{A: at(80, 0), B: at(70, 0)}},
		{plan.PartLeft, filltest.In(4), filltest.In(6), geom.Segment{A: at(30, 4), B: at(30, 6)}},
		{plan.PartRight, filltest.In(4), filltest.In(6), geom.Segment{A: at(90, 20), B: at(90, 18)}},
	} {
		s := rule.OnFixture(&view.Sides[0].Fixtures[0], tt.face, tt.from, tt.to)
		if s.Line != tt.want || s.Host != f.ID || s.Part != tt.face {
			t.Errorf("%s: %+v, want %v", tt.face, s, tt.want)
		}
	}
}
