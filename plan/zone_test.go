package plan

import (
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// square is a square of some inches, clockwise.
func square(inches unit.Length) geom.Polygon {
	n := inches * unit.Inch
	return geom.Polygon{{}, {X: n}, {X: n, Y: n}, {Y: n}}
}

// Zones from 2 to 5, from 5 to 6 and from 8 to 9: what begins at a place is there; what
// ends there is there where nothing begins.
// A trim holds what lies on it whole, its edges included.
func TestWhatATrimHolds(t *testing.T) {
	rail := Trim{Bottom: 30, Height: 4}
	for _, tt := range []struct {
		bottom, top unit.Length
		want        bool
	}{{30, 34, true}, {29, 34, false}, {30, 35, false}, {31, 33, true}, {0, 10, false}, {35, 40, false}} {
		if got := rail.Holds(tt.bottom, tt.top); got != tt.want {
			t.Errorf("from %d to %d: %v", tt.bottom, tt.top, got)
		}
	}
}

func TestTheZoneOfAPlace(t *testing.T) {
	s := &Side{Condition: ConditionNew, Finish: []Layer{{Name: "board", Thickness: 5}}, Studs: Studs{Depth: 90, Spacing: 400}, Zones: []Zone{
		{From: 2, To: 5, Condition: ConditionClosed, Finish: []Layer{{Name: "tile", Thickness: 9}}},
		{From: 5, To: 6, Condition: ConditionOpened, Depth: 140},
		{From: 8, To: 9, Condition: ConditionClosed, Depth: 60, Finish: []Layer{{Name: "plaster", Thickness: 20}}},
	}}
	for along, want := range []int{-1, -1, 0, 0, 0, 1, 1, -1, 2, 2, -1} {
		at := unit.Length(along)
		z, condition, finish, depth := s.ZoneAt(at), s.Condition, s.Finish, s.Studs.Depth
		if want >= 0 {
			is := &s.Zones[want]
			if condition = is.Condition; len(is.Finish) > 0 {
				finish = is.Finish
			}
			if is.Depth > 0 {
				depth = is.Depth
			}
			if z != is {
				t.Errorf("at %d is %+v, want %+v", along, z, is)
			}
		} else if z != nil {
			t.Errorf("at %d is %+v, want none", along, z)
		}
		there := s.At(at)
		if s.ConditionAt(at) != condition || there.Finish[0] != finish[0] || there.Studs.Depth != depth || there.Studs.Spacing != 400 {
			t.Errorf("at %d it is %q, %+v and %v deep", along, s.ConditionAt(at), there.Finish, there.Studs.Depth)
		}
	}
	if plain := s.Zones[0]; s.At(3) == s || s.At(0) != s || plain.Depth != 0 || s.Studs.Depth != 90 || s.Finish[0].Name != "board" {
		t.Error("a look at a place has changed the side, or copies it for nothing")
	}
	s.Zones = []Zone{{From: 0, To: 4, Condition: ConditionClosed, Depth: 1}}
	if there := s.At(0); there.Studs.Depth != 1 {
		t.Errorf("a zone 1 nm deep is %v deep", there.Studs.Depth)
	}
	s.Zones = []Zone{{From: 0, To: 4, Condition: ConditionClosed}}
	if s.At(2) != s {
		t.Error("a zone built as its face is another side")
	}
}

// What ceiling and faces of a room have in common.
func TestTheConditionOfARoom(t *testing.T) {
	for _, tt := range []struct {
		overhead Condition
		sides    []Condition
		want     Condition
	}{
		{ConditionClosed, []Condition{ConditionClosed, ConditionClosed}, ConditionClosed},
		{ConditionClosed, []Condition{ConditionClosed, ConditionNew}, ConditionUnsaid},
		{ConditionNew, []Condition{ConditionClosed, ConditionClosed}, ConditionUnsaid},
		{ConditionOpened, nil, ConditionOpened}, {ConditionUnsaid, []Condition{ConditionUnsaid}, ConditionUnsaid},
	} {
		r := Room{Overhead: tt.overhead}
		for _, c := range tt.sides {
			r.Sides = append(r.Sides, &Side{Condition: c})
		}
		if got := r.Condition(); got != tt.want {
			t.Errorf("%+v have %q in common, want %q", tt, got, tt.want)
		}
	}
}

// The words for each, and one for what nobody said.
func TestWordsForStates(t *testing.T) {
	for _, tt := range []struct{ got, want string }{
		{ConditionNew.Text().String(), "new"}, {ConditionOpened.Text().String(), "opened"}, {ConditionClosed.Text().String(), "stays closed"}, {ConditionUnsaid.Text().String(), "not said"},
		{WoodLath.Text().String(), "wood lath"}, {MetalLath.Text().String(), "metal lath"}, {NoLath.Text().String(), "no lath"},
		{FlagYes.Text().String(), "Yes"}, {FlagNo.Text().String(), "No"}, {FlagUnsaid.Text().String(), "not said"},
		{FateStays.Text().String(), "stays, blank cover"}, {FateUnsaid.Text().String(), "not decided"}, {FateOut.Text().String(), "old box taken out"},
		{FateDead.Text().String(), "dead, disconnected at both ends"}, {FateReused.Text().String(), "old box kept for the new one"}, {FateEmptied.Text().String(), "emptied, cables pulled to the new box"},
		{BreakSlider.Text().String(), "sliding door"}, {BreakPassage.Text().String(), "cased opening"}, {BreakDoor.Text().String(), "door"},
		{FixtureWaterHeater.Text().String(), "water heater"}, {FixtureWaterHeater.Text().ID, "fixture.water-heater"}, {UseBasement.Text().ID, "use.unfinished-basement"}, {SideGlass.Text().ID, "side.glass"}, {StatusMoved.Text().ID, "status.moved"}, {WishAgreed.Text().ID, "wish.agreed"},
	} {
		if tt.got != tt.want {
			t.Errorf("says %q, want %q", tt.got, tt.want)
		}
	}
}

// A flag is true or false in a file, and is left out where it is not said.
func TestFlagsInAFile(t *testing.T) {
	for text, want := range map[string]Flag{"true": FlagYes, "false": FlagNo} {
		var f Flag
		if err := f.UnmarshalJSON([]byte(text)); err != nil || f != want {
			t.Errorf("%s is read as %d, %v", text, f, err)
		}
		if data, err := want.MarshalJSON(); err != nil || string(data) != text {
			t.Errorf("%d is written as %s, %v", want, data, err)
		}
	}
	for _, text := range []string{"", "null", "1", `"true"`, "True"} {
		f := FlagYes
		if err := f.UnmarshalJSON([]byte(text)); err == nil || f != FlagYes {
			t.Errorf("%s is read as %d", text, f)
		}
	}
	for _, f := range []Flag{FlagUnsaid, 3, -1} {
		if data, err := f.MarshalJSON(); err == nil {
			t.Errorf("%d is written as %s", f, data)
		}
	}
}
