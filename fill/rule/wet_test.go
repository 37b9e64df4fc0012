package rule_test

import (
	"testing"

	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestWetZones: 3 ft about a tub or shower and 8 ft over its rim or threshold (410.10(D));
// for receptacles from 2020, and within it alone before (406.9(C)). The tub stands in the upper
// left corner, 60 by 30 in and 20 high.
func TestWetZones(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBath, 0, 0, 144, 120)
	r.Stand(plan.FixtureTub, r.On(0, 0), 60, 30, func(f *plan.Fixture) { f.Height = ruletest.In(20) })
	r.Stand(plan.FixtureShower, r.On(2, 0), 36, 36, func(f *plan.Fixture) { f.Height = ruletest.In(80) })
	r.Fixture(plan.FixtureBasin, 1, 40, 20)
	v, _ := index.New(h.Made()).RoomView(r.Room.ID)
	for edition, out := range map[string]unit.Length{"2017": 1, "2023": ruletest.In(36) - rule.Grain} {
		fig, err := code.Edition(edition)
		if err != nil {
			t.Fatal(err)
		}
		zones := rule.WetZones(&v, fig)
		if len(zones) != 2 || zones[0].Out != out || zones[0].Top != ruletest.In(20+96) || zones[1].Top != ruletest.In(96) || zones[0].IsAllOfRoom() {
			t.Errorf("%s: %+v", edition, zones)
		}
	}
	tub := rule.WetZones(&v, code.Latest())[:1]
	at := func(x, y float64) geom.Point { return geom.Point{X: ruletest.In(x), Y: ruletest.In(y)} }
	for _, tt := range []struct {
		x, y, up float64
		want     bool
	}{
		{96, 0, 16, false}, {95.9375, 0, 16, true}, {95.9375, 0, 116, true}, {95.9375, 0, 116.0625, false}, {0, 66, 16, false}, {0, 65.9375, 16, true}, {30, 10, 16, true},
	} {
		if got := rule.IsWet(tub, at(tt.x, tt.y), ruletest.In(tt.up)); got != tt.want {
			t.Errorf("at (%v, %v), %v up: %v, want %v", tt.x, tt.y, tt.up, got, tt.want)
		}
	}
	if away := tub[0].Away(at(63, 34)); away != ruletest.In(5) {
		t.Errorf("(63, 34) is %v from the tub, want 5 in: 3 and 4", away)
	}
	// Seen from within, the upper wall is in it to 96, the left one from 120 − 66 on, the lower one,
	// 120 off, not at all, nor the right one, which begins 84 in off.
	for side, want := range map[int][2]float64{0: {0, 96}, 3: {54, 120}} {
		all := rule.WetOn(tub, &v.Sides[side])
		if len(all) != 1 || (all[0].Left-ruletest.In(want[0])).Abs() > 2*rule.Grain || (all[0].Right-ruletest.In(want[1])).Abs() > 2*rule.Grain || all[0].Top != ruletest.In(116) || all[0].Bottom != -plan.Reach {
			t.Errorf("side %d: %+v, want %v", side, all, want)
		}
	}
	for _, side := range []int{1, 2} {
		if all := rule.WetOn(tub, &v.Sides[side]); len(all) != 0 {
			t.Errorf("side %d: %+v", side, all)
		}
	}
}

// TestAZoneThatIsAllOfARoom has no outside, and then asks nothing.
func TestAZoneThatIsAllOfARoom(t *testing.T) {
	for deep, all := range map[float64]bool{65.9375: true, 66: false} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBath, 0, 0, 60, deep)
		r.Stand(plan.FixtureTub, r.On(0, 0), 60, 30)
		v, _ := index.New(h.Made()).RoomView(r.Room.ID)
		zones := rule.WetZones(&v, code.Latest())
		if len(zones) != 1 || zones[0].IsAllOfRoom() != all {
			t.Errorf("%v deep: %+v", deep, zones)
		}
		if rule.IsWet(zones, geom.Point{X: ruletest.In(30), Y: ruletest.In(40)}, ruletest.In(16)) == all || (len(rule.WetOn(zones, &v.Sides[1])) == 0) != all {
			t.Errorf("%v deep: the zone is told wrongly", deep)
		}
	}
}

// TestZonesAlongAFaceAreThoseOfAPlainWalk goes along each face of random rooms an inch at a
// time.
func TestZonesAlongAFaceAreThoseOfAPlainWalk(t *testing.T) {
	random := []int{7, 3, 11, 2, 9, 5, 13, 1, 8, 4, 12, 6, 10, 14, 17, 19, 23}
	seen := 0
	for seed := range 120 {
		at := seed
		p := filltest.Furnished(func(below int) int { at += random[at%len(random)] * (seed + 1); return at % below })
		ix := index.New(p)
		for r := range p.Levels[0].Rooms.All() {
			v, ok := ix.RoomView(r.ID)
			if !ok {
				continue
			}
			for _, z := range rule.WetZones(&v, code.Latest()) {
				for i := range v.Sides {
					s := &v.Sides[i]
					all := rule.WetOn([]rule.Wet{z}, s)
					for along := unit.Length(0); along <= s.Length; along += unit.Inch {
						in := !z.IsAllOfRoom() && z.Away(s.Frame.Point(along, 0)) < z.Out
						got := len(all) == 1 && all[0].Left <= along && along <= all[0].Right
						edge := len(all) == 1 && ((along-all[0].Left).Abs() <= 1 || (along-all[0].Right).Abs() <= 1)
						if in != got && !edge {
							t.Fatalf("seed %d, side %d at %v: %v, by the walk %v", seed, i, along, got, in)
						}
						if in {
							seen++
						}
					}
				}
			}
		}
	}
	if seen < 100 {
		t.Errorf("%d places in a zone: too few to say anything", seen)
	}
}
