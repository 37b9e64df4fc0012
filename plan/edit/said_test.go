package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

// TestHowThingsAreCalled: by tag, name, kind or number where they have one, as sentences
// about them go on.
func TestHowThingsAreCalled(t *testing.T) {
	for _, tt := range []struct {
		thing plan.Thing
		want  string
	}{
		{&plan.Opening{ID: "oaaaaaaaa", Tag: "K1"}, "opening K1"},
		{&plan.Opening{ID: "oaaaaaaaa"}, "the opening"},
		{&plan.Room{ID: "raaaaaaaa", Name: "Den"}, "the room “Den”"},
		{&plan.Room{ID: "raaaaaaaa"}, "the room"},
		{&plan.Break{ID: "baaaaaaaa", Kind: plan.BreakDoor}, "the door"},
		{&plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureBed}, "the bed"},
		{&plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureBed, Name: "Big"}, "the bed “Big”"},
		{&plan.Circuit{ID: "kaaaaaaaa", Number: "7"}, "circuit 7"},
		{&plan.Cable{ID: "caaaaaaaa"}, "the cable"},
		{&plan.Level{ID: "vaaaaaaaa", Name: "Loft"}, "the level “Loft”"},
	} {
		if got := plan.TextOf(tt.thing).String(); got != tt.want {
			t.Errorf("%T is called %q, want %q", tt.thing, got, tt.want)
		}
	}
}

// TestWhatARemovalIsCalled, by the one thing that goes, or by how many.
func TestWhatARemovalIsCalled(t *testing.T) {
	for _, tt := range []struct {
		things []plan.ID
		want   string
	}{
		{[]plan.ID{"vaaaaaaaa"}, "Delete level"},
		{[]plan.ID{"saaaaaaaa"}, "Delete corner"},
		{[]plan.ID{"oaaaaaaaa", "vaaaaaaaa"}, "Delete 2 things"},
		{nil, "Delete 0 things"},
		{[]plan.ID{"raaaaaaaa"}, plan.RemoveName(plan.KindRoom).String()},
	} {
		if got := (edit.Remove{Things: tt.things}).Name().String(); got != tt.want {
			t.Errorf("removing %v is called %q, want %q", tt.things, got, tt.want)
		}
	}
}
