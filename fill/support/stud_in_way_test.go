package support_test

import (
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/words"
)

var in, mm = walltest.In, walltest.MM

// A wall of 12 ft, studs at 16 in from the left. The one at 48 stands from 47-1/4 to 48-3/4.
// A nail-on box of one gang is 2-5/16 wide: at 46-3/32 its right edge (46-3/32 + 1-5/32) is
// at 47-1/4 and touches. A 4 in square touches at 45-1/4 and at 50-3/4. Half of a tape's
// sixteenth, 1/32, is no clash.
func TestStudInWay(t *testing.T) {
	at := func(by string) []string {
		return []string{`stop: A1: a stud stands in its place, 47-1/4" from the left end of the wall`, by}
	}
	for _, tt := range []struct {
		name   string
		kind   string
		code   string
		along  float64
		centre float64
		want   []string // the message, and the clash in inches
	}{
		{"touching on the left", "duplex", "PN1", 46.09375, 16, nil},
		{"1/32 over", "duplex", "PN1", 46.125, 16, nil},
		{"1/16 over", "duplex", "PN1", 46.15625, 16, at(`1/16"`)},
		{"in its middle", "duplex", "PN1", 48, 16, at(`1-1/2"`)},
		{"touching on the right", "duplex", "PN1", 49.90625, 16, nil},
		{"1/16 over on the right", "duplex", "PN1", 49.84375, 16, at(`1/16"`)},
		{"a square beside it", "duplex", "SQ3", 45.25, 16, nil},
		{"a square 1/16 over", "duplex", "SQ3", 45.3125, 16, at(`1/16"`)},
		{"old work is cut in beside a stud too", "duplex", "OW1", 48, 16, at(`1-1/2"`)},
		{"a box on the surface stands before it", "outdoor", "WP1", 48, 16, nil},
		{"a light on a bar hanger spans it", "wall-light", "RD4", 48, 63, nil},
		{"nothing chosen", "duplex", "", 48, 16, nil},
		{"a housing", "panel-feed", "", 48, 60, at(`1-1/2"`)},
		{"a hole for a cable is bored", "under-cabinet", "", 48, 55, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], tt.kind, tt.code, tt.along, tt.centre, func(o *plan.Opening) {
			if o.Kind == "panel-feed" {
				o.Gangs = 0
			}
		})
		var got []string
		for _, f := range h.Found("stud-in-way") {
			got = append(got, f.Severity.String()+": "+h.Say(f.Message), h.Say(quantity(f.Measured)))
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("stud-in-way")
	}
}

// The nearer clear place comes first. A nail-on box of 2-5/16 at 48-1/2: to the left 46-3/32
// (by 2-13/32), to the right 49-29/32 (by 1-13/32). A square of 4 in at 49: right 50-3/4 by
// 1-3/4, left 45-1/4 by 3-3/4.
func TestStudInWayMovesToTheNearerClearPlace(t *testing.T) {
	for _, tt := range []struct {
		code  string
		along float64
		want  []string
	}{
		{"SQ3", 49, []string{`Move A1 to the right by 1-3/4"`, `Move A1 to the left by 3-3/4"`}},
		{"SQ3", 46, []string{`Move A1 to the left by 3/4"`, `Move A1 to the right by 4-3/4"`}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "duplex", tt.code, tt.along, 16, nil)
		var got []string
		for _, f := range h.Found("stud-in-way") {
			for _, r := range f.Remedies {
				got = append(got, h.Say(r.Label))
			}
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s at %v: %q, want %q", tt.code, tt.along, got, tt.want)
		}
	}
}

// A door slab of 32 at 20: rough opening 19 to 53, jacks to 17-1/2 and 54-1/2, kings to 16
// and 56. A box on the jack and the king is told, one against the king's flank at 56 is not
// (56 + 1-5/32). Over the door, at 90, the stud of the layout at 32 is a cripple. A box in
// the door is another rule's to tell.
func TestStudInWayAtADoor(t *testing.T) {
	for _, tt := range []struct {
		along, centre float64
		want          int
	}{{57.15625, 46, 0}, {57.09375, 46, 1}, {55, 46, 1}, {32, 90, 1}, {36, 90, 0}, {36, 46, 0}} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Door(room.Sides[0], 20, 32, 0)
		h.Box(room.Sides[0], "switch", "PN1", tt.along, tt.centre, nil)
		if got := h.Found("stud-in-way"); len(got) != tt.want {
			t.Errorf("at %v, %v up: %d told, want %d", tt.along, tt.centre, len(got), tt.want)
		}
	}
}

// Both faces of a partition see the same studs: of two alike walls of 12 ft each stud 16 n
// from the one end is 144 − 16 n from the other, and those are the same places.
func TestStudInWayFromEitherFace(t *testing.T) {
	h := walltest.New(t)
	face, back := h.Partition(3.5)
	h.Box(face, "duplex", "PN1", 48, 16, nil)
	h.Box(back, "duplex", "PN1", 144-48, 16, nil)
	if got := h.Found("stud-in-way"); len(got) != 2 {
		t.Errorf("%d told, want both", len(got))
	}
}

// What is taped is not called assumed.
func TestStudInWayTellsWhatIsAssumed(t *testing.T) {
	for _, state := range []plan.StudState{plan.StudAssumed, plan.StudMeasured} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			if state == plan.StudMeasured {
				r.Sides[0].Places = []plan.StudPlace{{At: in(47), State: state}}
			}
		})
		h.Box(room.Sides[0], "duplex", "PN1", 47, 16, nil)
		found := h.Found("stud-in-way")
		want := map[plan.StudState]string{
			plan.StudAssumed:  `It takes 29/32" of the 2-5/16" that the box needs. Its place is assumed from the spacing: verify it with a tape.`,
			plan.StudMeasured: `It takes 1-1/2" of the 2-5/16" that the box needs.`,
		}[state]
		if len(found) != 1 || state == plan.StudMeasured && h.Say(found[0].Why) != want {
			t.Errorf("%s: %v, want %s", state, found, want)
		}
		if state == plan.StudAssumed && (len(found) != 1 || found[0].Why.ID != "rule.stud-in-way.assumed.why") {
			t.Errorf("assumed: %v", found)
		}
	}
}

// Metric walls: studs at 400 mm, 38 thick; the second stands from 781 to 819. A box of 1 gang
// is 58.7375 wide (2-5/16): at 781 − 29.36875 = 751.63125 it touches, 1 mm on it overlaps by
// 1, more than 1/32 in (0.79375).
func TestStudInWayInMetric(t *testing.T) {
	for _, tt := range []struct {
		spacing, along float64
		want           int
	}{{400, 751.631, 0}, {400, 752.632, 1}, {400, 800, 1}, {600, 800, 0}, {600, 600, 1}, {600, 1151.631, 0}, {600, 1152.632, 1}} {
		h := walltest.New(t)
		h.Metric()
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			r.Sides[0].Studs = plan.Studs{Spacing: mm(tt.spacing), Depth: mm(89), Thick: mm(38)}
		})
		h.Box(room.Sides[0], "duplex", "PN1", 0, 16, func(o *plan.Opening) { o.At.Along = mm(tt.along) })
		if got := h.Found("stud-in-way"); len(got) != tt.want {
			t.Errorf("%v mm at %v: %d told, want %d", tt.along, tt.spacing, len(got), tt.want)
		}
	}
}

// A wall 9-1/2 in long has its end studs and 6-1/2 in between them (9-1/2 − 2 × 1-1/2): a
// square of 4 in goes in from 1-1/2 + 2 to 8 − 2.
func TestStudInWayInAShortWall(t *testing.T) {
	for _, tt := range []struct {
		along float64
		want  int
	}{{3.5, 0}, {3.4375, 1}, {6, 0}, {6.0625, 1}} {
		h := walltest.New(t)
		room := h.Room(0, 0, 9.5, 120, nil)
		h.Box(room.Sides[0], "duplex", "SQ3", tt.along, 16, nil)
		if got := h.Found("stud-in-way"); len(got) != tt.want {
			t.Errorf("at %v: %v, want %d", tt.along, got, tt.want)
		}
	}
}

// quantity returns a length as people read it.
func quantity(q rule.Quantity) words.Text { return words.New("x", "{0}", words.Height(q.Value)) }
