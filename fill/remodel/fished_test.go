package remodel_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// fishing makes a closed wall with studs at 16 in on center and two old-work boxes in it at
// some places, 16 in up, with a cable from one to the other.
func fishing(h *ruletest.House, from, to float64, change func(r *ruletest.Room, c *plan.Cable)) {
	r := closed(h)
	r.Sides[0].Studs.Spacing = ruletest.In(16)
	c := *h.Cable(put(r, "A", "duplex", from, coded("OW1")).ID, put(r, "B", "duplex", to, coded("OW1")).ID, 14, 2, nil)
	if change != nil {
		change(r, &c)
	}
	h.Plan.Cables = h.Plan.Cables.With(&c)
}

func by(way plan.CableWay) func(*ruletest.Room, *plan.Cable) {
	return func(_ *ruletest.Room, c *plan.Cable) { c.Way = way }
}

// Studs at 16, 32, 48 in and so on: 40 and 44 are in one bay, 40 and 60 are not.
func TestWhatIsToldOfFishedCables(t *testing.T) {
	const unsaid = `
			note, open, NEC 2023 334.30(B)(1): A in living
			A: say which way its cable to B leaves the closed wall
			It crosses no stud. It has no length until the way is said.
			Say: up, over the ceiling:
			Say: down, under the floor:`
	ruletest.Tells(t, &remodel.FishedCable, []ruletest.Telling{
		ruletest.Told("two bays", func(h *ruletest.House) { fishing(h, 40, 60, nil) }, unsaid, "a cable crosses no stud of a closed wall"),
		ruletest.Told("up", func(h *ruletest.House) { fishing(h, 40, 60, by(plan.WayAttic)) }, ``, "it is said"),
		ruletest.Told("down", func(h *ruletest.House) { fishing(h, 40, 60, by(plan.WayCellar)) }, ``, "it is said"),
		ruletest.Told("one bay", func(h *ruletest.House) { fishing(h, 35, 45, nil) }, ``, "no stud is crossed: the bay is from 32-3/4 to 47-1/4"),
		ruletest.Told("no studs told", func(h *ruletest.House) {
			fishing(h, 35, 45, func(r *ruletest.Room, _ *plan.Cable) { r.Sides[0].Studs.Spacing = 0 })
		}, unsaid, "nobody knows whether one is crossed"),
		ruletest.Told("past the last stud that was taped", func(h *ruletest.House) {
			fishing(h, 60, 70, func(r *ruletest.Room, _ *plan.Cable) {
				for _, at := range []float64{16, 32, 48} {
					r.Sides[0].Places = append(r.Sides[0].Places, plan.StudPlace{At: ruletest.In(at), State: plan.StudMeasured})
				}
			})
		}, unsaid, "nobody knows whether one is crossed"),
		ruletest.Told("there already", func(h *ruletest.House) {
			fishing(h, 40, 60, func(_ *ruletest.Room, c *plan.Cable) { c.Existing = true })
		}, ``, "nothing is fished"),
		ruletest.Told("an open wall", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, _ *plan.Cable) { r.Sides[0].Condition = plan.ConditionOpened })
		}, ``, "its studs are bored"),
		ruletest.Told("to an open ceiling", func(h *ruletest.House) {
			r := closed(h)
			h.Cable(put(r, "A", "switch", 40, coded("OW1")).ID, r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Tagged("B")).ID, 14, 2, nil)
		}, ``, "it goes up to the light"),
		ruletest.Told("to a closed ceiling", func(h *ruletest.House) {
			r := closed(h)
			r.Room.Overhead = plan.ConditionClosed
			h.Cable(put(r, "A", "switch", 40, coded("OW1")).ID, r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Tagged("B"), coded("OW4")).ID, 14, 2, nil)
		}, unsaid, "attic or cellar"),
		ruletest.Told("through what is opened", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, c *plan.Cable) {
				c.Way = plan.WayOpenParts
				r.Sides[0].Zones = []plan.Zone{{From: ruletest.In(42), To: ruletest.In(45), Condition: plan.ConditionOpened}}
			})
		}, `
			warn, by practice: B in living
			B: its bay does not lead to anything that is opened
			Its cable would have to cross a stud in a wall that stays closed.`, "the bay of A, from 32-3/4 to 47-1/4, is opened from 42 on; that of B begins at 48-3/4"),
		ruletest.Told("both bays opened", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, c *plan.Cable) {
				c.Way = plan.WayOpenParts
				r.Sides[0].Zones = []plan.Zone{{From: ruletest.In(42), To: ruletest.In(55), Condition: plan.ConditionOpened}}
			})
		}, ``, "between the bays the studs are laid open"),
		ruletest.Told("a fire block above one", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, c *plan.Cable) {
				c.Way = plan.WayAttic
				r.Sides[0].Probes = []plan.Probe{{From: ruletest.In(48), To: ruletest.In(64), Bottom: ruletest.In(44), Top: ruletest.In(46)}, {From: ruletest.In(32), To: ruletest.In(48), Top: ruletest.In(10)}}
			})
		}, `
			warn, by practice: B in living
			B: its bay is blocked on the way of the cable
			From 4' 0" to 5' 4" along the wall there is something in the way, 44" above the floor.`, "what is below A is not on its way up"),
		ruletest.Told("a fire block below one", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, c *plan.Cable) {
				c.Way = plan.WayCellar
				r.Sides[0].Probes = []plan.Probe{
					{From: ruletest.In(48), To: ruletest.In(64), Bottom: ruletest.In(44), Top: ruletest.In(46)}, {From: ruletest.In(48), To: ruletest.In(64), Top: ruletest.In(10), Clear: true},
					{From: ruletest.In(32), To: ruletest.In(48), Bottom: ruletest.In(2), Top: ruletest.In(4)}, {From: ruletest.In(38), To: ruletest.In(42), Bottom: ruletest.In(4), Top: ruletest.In(16)},
				}
			})
		}, `
			warn, by practice: A in living
			A: its bay is blocked on the way of the cable
			From 2' 8" to 4' 0" along the wall there is something in the way, 2" above the floor.`, "what is above B is not on its way down, nor what was found clear; what A itself meets is told for that"),
		ruletest.Told("a fire block on the way to an open ceiling", func(h *ruletest.House) {
			r := closed(h)
			r.Sides[0].Studs.Spacing = ruletest.In(16)
			r.Sides[0].Probes = []plan.Probe{{From: ruletest.In(32), To: ruletest.In(48), Bottom: ruletest.In(95), Top: ruletest.In(96)}}
			light := r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Tagged("B"))
			h.Cable(light.ID, put(r, "A", "switch", 40, coded("OW1")).ID, 14, 2, nil)
			h.Cable(light.ID, put(r, "C", "switch", 60, coded("OW1")).ID, 14, 2, nil)
		}, `
			warn, by practice: A in living
			A: its bay is blocked on the way of the cable
			From 2' 8" to 4' 0" along the wall there is something in the way, 95" above the floor.`, "the ceiling is 96 in up"),
		ruletest.Told("where both bays meet what is opened, and from a panel", func(h *ruletest.House) {
			r := closed(h)
			r.Room.Overhead = plan.ConditionOpened
			r.Sides[0].Studs.Spacing = ruletest.In(16)
			a, b := put(r, "A", "duplex", 40, coded("OW1")), put(r, "B", "duplex", 60, coded("OW1"))
			h.Cable(a.ID, b.ID, 14, 2, nil)
			h.Cable(r.Stand(plan.FixturePanel, r.On(2, 20), 14, 4).ID, a.ID, 14, 2, nil)
		}, `
			note, open, NEC 2023 334.30(B)(1): A in living
			A: say which way its cable to B leaves the closed wall
			It crosses no stud. It has no length until the way is said.
			Say: up, over the ceiling:
			Say: down, under the floor:
			Say: through what is opened:

			note, open, NEC 2023 334.30(B)(1): A in living
			A: say which way its cable to the panel leaves the closed wall
			It crosses no stud. It has no length until the way is said.
			Say: up, over the ceiling:
			Say: down, under the floor:
			Say: through what is opened:`, "the ceiling over both is opened"),
		ruletest.Told("an old-work box of one's own without a clamp", func(h *ruletest.House) {
			r := closed(h)
			r.Sides[0].Studs.Spacing = ruletest.In(16)
			own := func(name string, material string, clamps bool) func(*plan.Opening) {
				x := &plan.Own{ID: h.ID(plan.KindOwn), Kind: plan.OwnBox, Name: name, Shape: "device", Material: material, Mounting: plan.OldWork, Gangs: 1,
					Width: ruletest.In(2.3125), Height: ruletest.In(3.75), Depth: ruletest.In(2.75), Volume: 18 * unit.CubicInch, From: plan.VolumeMarked, Clamps: clamps, GripLeast: ruletest.In(0.25), GripMost: ruletest.In(1)}
				h.Plan.Owns = h.Plan.Owns.With(x)
				return func(o *plan.Opening) { o.Assembly = h.Plan.Own(plan.Assembly{Box: string(x.ID)}) }
			}
			a := put(r, "A", "duplex", 35, own("bare", "plastic", false))
			h.Cable(a.ID, put(r, "B", "duplex", 41, own("with a clamp", "plastic", true)).ID, 14, 2, nil)
			h.Cable(a.ID, put(r, "C", "duplex", 45, own("steel", "steel", false)).ID, 14, 2, nil)
		}, `
			stop, NEC 2023 334.30(B)(1): A in living
			A: nothing in its box holds a cable that is fished
			Where a cable cannot be fastened in the wall, the clamp of the box holds it; a plastic box without one does not (also 314.17).`, "of two cables of one box it is told once; one of metal is entered through a connector"),
		ruletest.Told("where one bay alone meets it", func(h *ruletest.House) {
			fishing(h, 40, 60, func(r *ruletest.Room, _ *plan.Cable) {
				r.Sides[0].Zones = []plan.Zone{{From: ruletest.In(42), To: ruletest.In(45), Condition: plan.ConditionOpened}}
			})
		}, unsaid, "the bay of B leads to nothing that is opened"),
	})
}

// What a cable is told changes with what it depends on, without a check from nothing: the boxes,
// the studs and the condition of its wall, and the cable.
func TestFishedCablesAreJudgedAgain(t *testing.T) {
	h := ruletest.New(t)
	r := closed(h)
	r.Sides[0].Studs.Spacing = ruletest.In(16)
	a, b := put(r, "A", "duplex", 35, coded("OW1")), put(r, "B", "duplex", 45, coded("OW1"))
	c := h.Cable(a.ID, b.ID, 14, 2, nil)
	p := h.Made()
	ix := index.New(p)
	var checker fill.Checker
	said := func() (n int) {
		result, err := checker.Update(ix)
		if err != nil {
			t.Fatal(err)
		}
		for f := range result.Each() {
			if f.Rule == remodel.FishedCable.ID {
				n++
			}
		}
		return n
	}
	if n := said(); n != 0 {
		t.Fatalf("one bay: %d", n)
	}
	wide, opened := *r.Sides[0], *r.Sides[0]
	wide.Studs.Spacing = ruletest.In(24) // one bay from 24-3/4 to 47-1/4 and the next from 48-3/4
	opened.Studs.Spacing, opened.Condition = ruletest.In(24), plan.ConditionOpened
	there := *c
	there.Existing = true
	for _, tt := range []struct {
		name string
		edit edit.Edit
		want int
	}{
		{"the second box in the next bay", edit.MoveOpening{ID: b.ID, To: r.On(0, 60)}, 1},
		{"the first too", edit.MoveOpening{ID: a.ID, To: r.On(0, 52)}, 0},
		{"back", edit.MoveOpening{ID: a.ID, To: r.On(0, 35)}, 1},
		{"other studs, in two bays yet", edit.ChangeSide{Side: wide}, 1},
		{"an opened wall", edit.ChangeSide{Side: opened}, 0},
		{"a closed one", edit.ChangeSide{Side: wide}, 1},
		{"a cable that is there", edit.Change{Thing: &there}, 0},
	} {
		next, err := tt.edit.Apply(p)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		p, ix = next, ix.Updated(next)
		if got := said(); got != tt.want {
			t.Errorf("%s: %d told, want %d", tt.name, got, tt.want)
		}
	}
}
