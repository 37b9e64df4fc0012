package spacing_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// NEC 2020 and 2023, 210.52: a receptacle that a wall switch controls in place of a light is
// not among those required; that one with a half always on counts is a common reading.
func TestAReceptacleDrawnAsTheLoadOfASwitchServesNoWall(t *testing.T) {
	half := []plan.Device{{Kind: "duplex receptacle", Switched: plan.HalfSwitched}}
	for _, tt := range []struct {
		name    string
		kind    string
		devices []plan.Device
		load    bool
		status  plan.Status
		told    []string
		served  bool
	}{
		{"no switch", "duplex", nil, false, plan.StatusNew, nil, true},
		{"a plain duplex", "duplex", nil, true, plan.StatusNew, []string{"note: oaaaaaaag is drawn as the load of a switch and does not count for the wall"}, false},
		{"a duplex of which one half is switched", "duplex", half, true, plan.StatusNew, nil, true},
		{"a half-switched one by its kind", "half-switched", nil, true, plan.StatusNew, nil, true},
		{"a wholly switched one by its kind", "switched", nil, true, plan.StatusNew, nil, false},
		{"one to be removed", "duplex", nil, true, plan.StatusRemove, nil, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, 60)
			o := part.NewOpening(unit.Imperial, tt.kind, plan.OnFace(r.Room.Sides[0].ID, in(30)))
			o.Devices, o.Status = tt.devices, tt.status
			load := r.Opening(o).ID
			p := r.Plan()
			if tt.load {
				swtch := part.NewOpening(unit.Imperial, "switch", plan.OnFace(r.Room.Sides[0].ID, in(5)))
				swtch.ID, swtch.Tag = r.ID(plan.KindOpening), "S"
				p = with(t, p, edit.AddOpening{Opening: swtch},
					edit.Add{Thing: &plan.Control{ID: r.ID(plan.KindControl), Switches: []plan.ID{swtch.ID}, Loads: []plan.ID{load}}})
			}
			found := filltest.FoundIn(t, p, spacing.Controlled.ID)
			if got := filltest.Said(found); !slices.Equal(got, tt.told) {
				t.Errorf("told %q, want %q", got, tt.told)
			}
			if served := len(filltest.FoundIn(t, p, spacing.WallReach.ID)) == 0; served != tt.served {
				t.Errorf("the wall is served: %v, want %v", served, tt.served)
			}
			for _, f := range found {
				after := with(t, p, f.Remedies[0].Edit)
				if left := filltest.FoundIn(t, after, spacing.Controlled.ID); len(left) > 0 || len(filltest.FoundIn(t, after, spacing.WallReach.ID)) > 0 {
					t.Errorf("%s leaves %q", f.Remedies[0].Label, filltest.Said(left))
				}
			}
		})
	}
}

func with(t *testing.T, p plan.Plan, edits ...edit.Edit) plan.Plan {
	t.Helper()
	for _, e := range edits {
		var err error
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	return p
}

// A control that comes, changes or goes is seen by what is kept of a room.
func TestWhatIsKeptSeesTheSwitchesDrawn(t *testing.T) {
	r := filltest.OneWall(t, 60)
	load := r.Receptacle(0, 30)
	p := r.Plan()
	swtch := part.NewOpening(unit.Imperial, "switch", plan.OnFace(r.Room.Sides[0].ID, in(5)))
	swtch.ID = r.ID(plan.KindOpening)
	p = with(t, p, edit.AddOpening{Opening: swtch})
	ix := index.New(p)
	control := plan.Control{ID: r.ID(plan.KindControl), Switches: []plan.ID{swtch.ID}, Loads: []plan.ID{load.ID}}
	drawn := with(t, p, edit.Add{Thing: &control})
	loadless := control
	loadless.Loads = nil
	for _, tt := range []struct {
		name string
		to   plan.Plan
		want int
	}{{"drawn", drawn, 1}, {"without its load", with(t, drawn, edit.Change{Thing: &loadless}), 0}, {"drawn again", drawn, 1}, {"gone", p, 0}} {
		next := ix.Updated(tt.to)
		rooms, _ := index.Touched(ix, next)
		if !slices.Contains(rooms, r.Room.ID) {
			t.Errorf("%s: the room is not touched", tt.name)
		}
		ix = next
		if v, _ := ix.RoomView(r.Room.ID); len(v.Controls) != tt.want || v.IsLoad(load.ID) != (tt.want > 0) {
			t.Errorf("%s: %d controls", tt.name, len(v.Controls))
		}
	}
}

// 210.52(1) to (4) of NEC 2020 and 2023: what is within a cabinet does not count; and no box
// can be set in glass (common practice).
func TestNoReceptacleInGlassOrInACabinetCounts(t *testing.T) {
	for _, tt := range []struct {
		name string
		room func(r *filltest.Room)
		want bool // served
	}{
		{"in the wall", func(r *filltest.Room) { r.Receptacle(0, 30) }, true},
		{"in a side of glass", func(r *filltest.Room) { r.Receptacle(0, 30); r.Room.Sides[0].Kind = plan.SideGlass }, false},
		{"in a window", func(r *filltest.Room) {
			w := r.Break(r.Room.Sides[0].ID, plan.BreakWindow, 20, 20)
			w.Sill, w.Head = in(10), in(80)
			r.Receptacle(0, 30)
		}, false},
		{"behind a base cabinet with a work surface", func(r *filltest.Room) {
			r.Fixture(plan.FixtureCounter, 0, 20, 20)
			r.Receptacle(0, 30)
		}, false},
		{"above it", func(r *filltest.Room) {
			r.Fixture(plan.FixtureCounter, 0, 20, 20)
			r.Receptacle(0, 30).Height = plan.CentreAt(in(42))
		}, true},
		{"beside it", func(r *filltest.Room) {
			r.Fixture(plan.FixtureCounter, 0, 20, 20)
			r.Receptacle(0, 45)
		}, true},
		{"in the end of a cabinet at the next wall", func(r *filltest.Room) {
			r.Fixture(plan.FixtureCounter, 1, 0, 40)
			r.Receptacle(0, 50)
		}, false},
		{"in the floor within a cabinet", func(r *filltest.Room) {
			r.Fixture(plan.FixtureCounter, 0, 0, 60)
			r.InFloor(30, 10)
		}, false},
		{"in the floor before the wall", func(r *filltest.Room) { r.InFloor(30, 10) }, true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, 60)
			tt.room(r)
			found := r.Found(spacing.WallReach.ID)
			if (len(found) == 0) != tt.want {
				t.Fatalf("%q", filltest.Said(found))
			}
			for _, f := range found {
				for _, remedy := range f.Remedies {
					p := with(t, r.Plan(), remedy.Edit)
					if left := filltest.FoundIn(t, p, spacing.WallReach.ID); len(left) > 0 {
						t.Errorf("%s leaves %q", remedy.Label, filltest.Said(left))
					}
				}
			}
		})
	}
}
