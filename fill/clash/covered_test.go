package clash_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

func stand(h *walltest.House, side plan.ID, kind plan.FixtureKind, along, width, bottom, height, splash float64) {
	h.Do(edit.AddFixture{Fixture: plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: kind, At: plan.OnFace(side, in(along)),
		Width: in(width), Depth: in(25), Bottom: in(bottom), Height: in(height), Splash: in(splash)}})
}

// Plates are 2-3/4 wide and 4.49 high. A counter of 36 with a splash of 4 ends at 40: a plate
// clears it with its middle at 42-1/4 (40 + 2.245) or more. 314.29 asks that boxes stay
// accessible; what is pulled out is practice.
func TestCovered(t *testing.T) {
	for _, tt := range []struct {
		name          string
		kind          string
		thing         plan.FixtureKind
		bottom, high  float64
		splash        float64
		along, centre float64 // the thing is from 60 to 90
		want          []string
	}{
		{"behind a refrigerator", "duplex", plan.FixtureRefrigerator, 0, 70, 0, 75, 16, []string{"warn: A1 is behind the refrigerator"}},
		{"its own", "refrigerator", plan.FixtureRefrigerator, 0, 70, 0, 75, 48, nil},
		{"of a range", "range", plan.FixtureRange, 0, 36, 0, 75, 5, nil},
		{"behind a base cabinet", "duplex", plan.FixtureCounter, 0, 36, 0, 75, 16, []string{"stop: A1 is covered by the counter"}},
		{"beside it, touching", "duplex", plan.FixtureCounter, 0, 36, 0, 58.625, 16, nil},
		{"beside it, 1/16 over", "duplex", plan.FixtureCounter, 0, 36, 0, 58.6875, 16, []string{"stop: A1 is covered by the counter"}},
		{"behind a mirror", "switch", plan.FixtureMirror, 42, 36, 0, 75, 46, []string{"stop: A1 is covered by the mirror"}},
		{"within an upper cabinet", "duplex", plan.FixtureUpper, 54, 30, 0, 75, 60, []string{"stop: A1 is covered by the upper cabinet"}},
		{"the hood's", "microwave", plan.FixtureUpper, 54, 30, 0, 75, 73, nil},
		{"behind a headboard", "duplex", plan.FixtureBed, 0, 46, 0, 75, 26, []string{"warn: A1 is behind the bed"}},
		{"under a desk", "duplex", plan.FixtureDesk, 0, 30, 0, 75, 16, nil},
		{"over a counter", "counter", plan.FixtureCounter, 0, 36, 0, 75, 38.25, nil},
		{"over its edge", "counter", plan.FixtureCounter, 0, 36, 0, 75, 38.1875, []string{"warn: A1: its plate does not clear the top of the counter"}},
		{"over the splash", "counter", plan.FixtureCounter, 0, 36, 4, 75, 42.25, nil},
		{"over the edge of the splash", "counter", plan.FixtureCounter, 0, 36, 4, 75, 42.1875, []string{"warn: A1: its plate lies over the edge of the splash"}},
		{"all on a full splash", "counter", plan.FixtureCounter, 0, 36, 18, 75, 42, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		stand(h, room.Sides[0], tt.thing, 60, 30, tt.bottom, tt.high, tt.splash)
		h.Box(room.Sides[0], tt.kind, "PN1", tt.along, tt.centre, nil)
		if got := h.Said("covered"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("covered")
	}
}

// A receptacle 36 high behind a counter of 36 from 60 to 90 goes along to where its plate of
// 2-3/4 ends at 60, to 58-5/8, or up to where it begins at 36: its middle at 36 + 2.245,
// which a tape has as 38-1/4.
func TestWhatIsCoveredIsMovedOrRaised(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
	stand(h, room.Sides[0], plan.FixtureCounter, 60, 30, 0, 36, 0)
	h.Box(room.Sides[0], "counter", "OW1", 61, 36, nil)
	found := h.Found("covered")
	if len(found) != 1 || len(found[0].Remedies) == 0 {
		t.Fatalf("%+v", found)
	}
	raised, err := found[0].Remedies[len(found[0].Remedies)-1].Edit.Apply(h.Plan)
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range raised.Openings() {
		if o.Height.Value != in(38.25) {
			t.Errorf("it is raised to %v", o.Height.Value)
		}
	}
	h.Cures("covered")
}

// A room of 144 × 120 whose upper wall has a door of 32 from 10 on, its hinges at the left:
// open at 90° the leaf stands 10 in off the left wall and reaches 32 in along it. Seen from
// within, that wall's right end is that corner: it is covered from 88 on.
func TestDoorSwing(t *testing.T) {
	type door struct {
		along float64
		hand  plan.Hand
		swing plan.Swing
	}
	near := door{10, plan.HandLeft, plan.SwingIn}
	for _, tt := range []struct {
		name   string
		door   door
		along  float64 // of a box 2-5/16 wide on the left wall
		centre float64
		want   int
	}{
		{"behind it", near, 100, 46, 1},
		{"at the end of the leaf", near, 88 - 1.15625, 46, 0},
		{"1/16 behind", near, 88 - 1.09375, 46, 1},
		{"over the door's head", near, 100, 82, 0},
		{"12 in off", door{12, plan.HandLeft, plan.SwingIn}, 100, 46, 1},
		{"1/16 more", door{12.0625, plan.HandLeft, plan.SwingIn}, 100, 46, 0},
		{"hinged at the right", door{10, plan.HandRight, plan.SwingIn}, 100, 46, 0},
		{"out of the room", door{10, plan.HandLeft, plan.SwingOut}, 100, 46, 0},
		{"of unknown hand", door{10, plan.HandUnknown, plan.SwingIn}, 100, 46, 0},
		{"double: each leaf is 16 wide", door{10, plan.HandDouble, plan.SwingIn}, 104 - 1.15625, 46, 0},
		{"double, 1/16 behind", door{10, plan.HandDouble, plan.SwingIn}, 104 - 1.09375, 46, 1},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		b := *h.Door(room.Sides[0], tt.door.along, 32, 0)
		b.Hand, b.Swing = tt.door.hand, tt.door.swing
		h.Do(edit.ChangeBreak{Break: b})
		h.Box(room.Sides[3], "switch", "PN1", tt.along, tt.centre, nil)
		if got := h.Found("door-swing"); len(got) != tt.want {
			t.Errorf("%s: %v", tt.name, got)
		}
		h.Cures("door-swing")
	}
}

// A door told from the other face swings into this room where it swings out of that one, and
// its left is this room's right: from 10 on there it is from 102 to 134 here, hinged at 134,
// 10 in off the right wall.
func TestDoorSwingFromTheOtherRoom(t *testing.T) {
	for hand, want := range map[plan.Hand]int{plan.HandLeft: 1, plan.HandRight: 0} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		b := *h.Door(back, 10, 32, 0)
		b.Hand, b.Swing = hand, plan.SwingOut
		h.Do(edit.ChangeBreak{Break: b})
		ref, _ := h.Plan.Side(face)
		h.Box(ref.Room.Sides[1].ID, "switch", "PN1", 20, 46, nil)
		if got := h.Found("door-swing"); len(got) != want {
			t.Errorf("%s: %v", hand, got)
		}
	}
}
