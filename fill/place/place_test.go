package place_test

import (
	"slices"
	"testing"

	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// What is said of a ceiling is of the ceiling, what of a wall of the place along it, and of a
// floor, or of what is not in the room, nobody says anything.
func TestConditionOfAPlace(t *testing.T) {
	r := &plan.Room{ID: "r1", Overhead: plan.ConditionOpened, Sides: []*plan.Side{
		{ID: "s1", Condition: plan.ConditionClosed, Zones: []plan.Zone{{From: walltest.In(20), To: walltest.In(30), Condition: plan.ConditionNew}}},
		{ID: "s2", Condition: plan.ConditionNew},
	}}
	for _, tt := range []struct {
		name string
		at   plan.Anchor
		want plan.Condition
	}{
		{"the ceiling", plan.OnCeiling("r1", geom.Point{}), plan.ConditionOpened},
		{"the floor", plan.OnFloor("r1", geom.Point{}), plan.ConditionUnsaid},
		{"the first side", plan.OnFace("s1", walltest.In(10)), plan.ConditionClosed},
		{"a part of it", plan.OnFace("s1", walltest.In(25)), plan.ConditionNew},
		{"the second", plan.OnFace("s2", 0), plan.ConditionNew},
		{"another's", plan.OnFace("s3", 0), plan.ConditionUnsaid},
	} {
		if got := place.ConditionOf(r, tt.at); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// Of every listed box: in what stays closed one that is fixed from behind gives way to an
// old-work box, one that carries a fan where a fan hangs, and keeps its barriers; elsewhere,
// and of what is there already, nothing changes.
func TestBoxesForWallsThatStayClosed(t *testing.T) {
	closed := func(r *plan.Room) {
		r.Overhead, r.Sides[0].Condition = plan.ConditionClosed, plan.ConditionClosed
	}
	for _, isClosed := range []bool{true, false} {
		h := walltest.New(t)
		change := func(*plan.Room) {}
		if isClosed {
			change = closed
		}
		room := h.Room(0, 0, 144, 120, change)
		for _, a := range part.All().Assemblies {
			for kind, at := range map[string]plan.Anchor{"duplex": plan.OnFace(room.Sides[0], walltest.In(40)), "fan-light": plan.OnCeiling(room.ID, geom.Point{X: walltest.In(60), Y: walltest.In(60)})} {
				for _, status := range []plan.Status{plan.StatusNew, plan.StatusExisting} {
					o := plan.Opening{Kind: kind, At: at, Gangs: a.Gangs(), Status: status, Assembly: plan.Assembly{Code: a.Code, Barriers: []string{"metal"}}}
					got := place.ForWall(h.Plan, o)
					serves := func(b *part.Assembly) bool { return kind != "fan-light" || b.Box.CarriesFan() }
					offers := slices.DeleteFunc(slices.Clone(part.All().OldWork(a, 0)), func(b *part.Assembly) bool { return !serves(b) })
					want := o.Assembly.Code
					if isClosed && status == plan.StatusNew && a.Box.IsFixedFromBehind() && len(offers) > 0 {
						want = offers[0].Code
						for _, b := range offers { // the two kinds need 15.75 and 14.5 in³ (NEC 314.16(B))
							if need := map[string]unit.Volume{"duplex": 63 * unit.CubicInch / 4, "fan-light": 29 * unit.CubicInch / 2}[kind]; b.Volume() >= need {
								want = b.Code
								break
							}
						}
					}
					if got.Assembly.Code != want || !slices.Equal(got.Assembly.Barriers, o.Assembly.Barriers) || got.Kind != kind || got.At != at {
						t.Errorf("%s in %s, closed %v, %s: %+v, want %s", kind, a.Code, isClosed, status, got.Assembly, want)
					}
				}
			}
		}
		for _, none := range []plan.Assembly{{}, {Code: "X1"}} {
			o := plan.Opening{Kind: "duplex", At: plan.OnFace(room.Sides[0], walltest.In(40)), Assembly: none}
			if got := place.ForWall(h.Plan, o).Assembly; got.Code != none.Code || got.Box != "" {
				t.Errorf("%+v becomes %+v", none, got)
			}
		}
		gone := plan.Opening{Kind: "duplex", At: plan.OnFace("sgone", 0), Assembly: plan.Assembly{Code: "PN1"}}
		if got := place.ForWall(h.Plan, gone).Assembly.Code; got != "PN1" {
			t.Errorf("in a wall that is gone: %s", got)
		}
	}
}

// A door from 60 to 90 in of a partition of 144: its switches stand within 18 in of its edges,
// on either face (common practice); behind, where places run the other way, it is from 54 to
// 84.
func TestSwitchesOfADoor(t *testing.T) {
	h := walltest.New(t)
	face, back := h.Partition(3.5)
	door, other := h.Door(face, 60, 30, 0), h.Door(face, 2, 20, 0)
	put := func(side plan.ID, kind string, along unit.Length) plan.ID {
		o := &plan.Opening{ID: h.IDs.New(plan.KindOpening), Kind: kind, Gangs: 1, Status: plan.StatusNew, At: plan.OnFace(side, along), Height: plan.CentreAt(walltest.In(46))}
		l := *h.Plan.Levels[0]
		l.Openings = l.Openings.With(o)
		h.Plan = h.Plan.WithLevel(&l)
		return o.ID
	}
	var want []plan.ID
	for _, side := range []struct {
		id       plan.ID
		from, to unit.Length
	}{{face, walltest.In(60), walltest.In(90)}, {back, walltest.In(54), walltest.In(84)}} {
		for _, kind := range []string{"switch", "three-way", "dimmer"} {
			for _, along := range []unit.Length{side.from - walltest.In(18), side.from - 1, side.to + 1, side.to + walltest.In(18)} {
				want = append(want, put(side.id, kind, along))
			}
			for _, along := range []unit.Length{side.from - walltest.In(18) - 1, side.from, side.from + walltest.In(15), side.to, side.to + walltest.In(18) + 1} {
				put(side.id, kind, along)
			}
		}
		put(side.id, "duplex", side.from-walltest.In(6))
		put(side.id, "unheard-of", side.to+walltest.In(6))
	}
	got := place.SwitchesOf(index.New(h.Plan), door)
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) {
		t.Errorf("%d switches %v, want %d %v", len(got), got, len(want), want)
	}
	// The other door, from 2 to 22: up to 40, which is none of the first's.
	if got := place.SwitchesOf(index.New(h.Plan), other); len(got) != 0 {
		t.Errorf("by the other door: %v", got)
	}
}

// In a ceiling and a floor steps go from the left upper corner, on a cabinet from the left of
// its face; a box at a stud stays at it, to the sixteenth; what is there already stays.
func TestStepsElsewhere(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(10.0625, 20.125, 154, 140, nil)
	island := plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: plan.FixtureIsland, At: plan.OnFloor(room.ID, geom.Point{X: walltest.In(100), Y: walltest.In(100)}), Width: walltest.In(48), Depth: walltest.In(30), Height: walltest.In(36)}
	h.Do(edit.AddFixture{Fixture: island})
	at := func(x, y float64) geom.Point { return geom.Point{X: walltest.In(x), Y: walltest.In(y)} }
	for _, tt := range []struct {
		name, kind, code string
		at, want         plan.Anchor
		status           plan.Status
	}{
		{"in the ceiling", "ceiling-light", "RD1", plan.OnCeiling(room.ID, at(60.25, 80.3125)), plan.OnCeiling(room.ID, at(60.0625, 80.125)), plan.StatusNew},
		{"in the floor", "floor", "", plan.OnFloor(room.ID, at(60.375, 60.5)), plan.OnFloor(room.ID, at(60.5625, 60.625)), plan.StatusNew},
		{"on a front", "duplex", "", plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: walltest.In(20.3125)}, plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: walltest.In(20.5)}, plan.StatusNew},
		{"at a stud", "duplex", "PN1", plan.OnFace(room.Sides[0], walltest.In(33.890625)), plan.OnFace(room.Sides[0], walltest.In(33.875)), plan.StatusNew},
		{"in a bay", "duplex", "SQ1", plan.OnFace(room.Sides[0], walltest.In(40.1875)), plan.OnFace(room.Sides[0], walltest.In(40)), plan.StatusNew},
		{"there already", "duplex", "SQ1", plan.OnFace(room.Sides[0], walltest.In(56.1875)), plan.OnFace(room.Sides[0], walltest.In(56.1875)), plan.StatusExisting},
	} {
		o := plan.Opening{ID: h.IDs.New(plan.KindOpening), Kind: tt.kind, Gangs: 1, Status: tt.status, At: tt.at, Assembly: plan.Assembly{Code: tt.code}}
		if tt.at.Part == plan.PartFace || tt.at.Part == plan.PartFront {
			o.Height = plan.CentreAt(walltest.In(16))
		}
		h.Do(edit.AddOpening{Opening: o})
		made := place.ToSteps(index.New(h.Plan), []plan.ID{"ogone", o.ID})
		next, err := made.Apply(h.Plan)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		now, _ := next.Opening(o.ID)
		if now.At != tt.want || len(made.Places) > 1 || (len(made.Places) == 0) != (tt.at == tt.want) {
			t.Errorf("%s: at %+v, want %+v", tt.name, now.At, tt.want)
		}
	}
}

// An alarm comes with two cables 14/3 and three fixture wires: six conductors and one allowance
// for grounds of 2.00 in³, three of 1.50 (NEC 314.16(B)(1), (5)), 18.5 in all. In a ceiling that
// stays closed it gets the old-work box of 20 in³, not the one of 14; a light, which needs
// 2 × 2 × 2.00 + 2.00 = 10, the one of 14.
func TestOldWorkBoxesAreLargeEnough(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Overhead = plan.ConditionClosed })
	for kind, want := range map[string]string{"smoke": "OW5", "smoke-co": "OW5", "ceiling-light": "OW4"} {
		o := part.NewOpening(unit.Imperial, kind, plan.OnCeiling(room.ID, geom.Point{X: walltest.In(60), Y: walltest.In(60)}))
		if got := place.ForWall(h.Plan, o).Assembly.Code; got != want {
			t.Errorf("%s gets %s, want %s", kind, got, want)
		}
	}
}
