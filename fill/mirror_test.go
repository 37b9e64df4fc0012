package fill_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"testing"
)

// TestMirroredPlanHasMirroredFindings holds that left and right are alike to every rule: a
// plan that is turned round is found to have the same faults, each where its mirror is.
func TestMirroredPlanHasMirroredFindings(t *testing.T) {
	sameFaults(t, func(things []plan.ID) edit.Edit { return arrange.Mirror{Things: things} }, mirroredStretch)
}

// TestTurnedPlanHasTheSameFindings holds that no rule knows north.
func TestTurnedPlanHasTheSameFindings(t *testing.T) {
	sameFaults(t, func(things []plan.ID) edit.Edit { return arrange.Turn{Things: things} }, func(_ plan.Plan, s rule.Stretch) rule.Stretch { return s })
}

// sameFaults holds that random plans are found to have the same faults before and after an
// edit of all their rooms that changes nothing in them; back turns a stretch of the latter
// into that of the former.
func sameFaults(t *testing.T, change func([]plan.ID) edit.Edit, back func(plan.Plan, rule.Stretch) rule.Stretch) {
	t.Helper()
	same := func(_ plan.Plan, s rule.Stretch) rule.Stretch { return s }
	rules := map[string]bool{}
	for seed := range uint64(300) {
		r := rand.New(rand.NewPCG(seed, 7))
		p := framed(filltest.Furnished(r.IntN), r)
		q, err := change(roomsOf(p)).Apply(p)
		if err != nil {
			continue // a corner of it is cut off where it comes to
		}
		a, b := findingsOf(t, p, same), findingsOf(t, q, back)
		for _, s := range a {
			id, _, _ := strings.Cut(s, " ")
			rules[id] = true
			if !slices.Contains(b, s) {
				t.Errorf("seed %d: only as drawn: %s", seed, s)
			}
		}
		for _, s := range b {
			if !slices.Contains(a, s) {
				t.Errorf("seed %d: only once changed: %s", seed, s)
			}
		}
	}
	if len(rules) < 30 {
		t.Errorf("only %d rules had something to say: the plans are too tame", len(rules))
	}
}

// framed says of every face where its studs begin: an assumed layout begins at the left.
func framed(p plan.Plan, r *rand.Rand) plan.Plan {
	for _, l := range p.Levels {
		for room := range l.Rooms.All() {
			for i, s := range room.Sides {
				now := *s
				now.Studs = plan.Studs{
					Spacing: []unit.Length{16, 24}[r.IntN(2)] * unit.Inch, Depth: []unit.Length{7, 11}[r.IntN(2)] * unit.Inch / 2,
					First: unit.Length(1+r.IntN(20)) * unit.Inch, FromRight: r.IntN(2) == 0,
				}
				if r.IntN(6) == 0 {
					now.Places = []plan.StudPlace{{At: room.Segment(i).Length() / 3, State: plan.StudMeasured}}
				}
				if r.IntN(6) == 0 {
					now.Rated = true
				}
				now.Finish = []plan.Layer{{Name: "board", Thickness: unit.Length(r.IntN(20)) * unit.Inch / 16}}
				if next, err := (edit.ChangeSide{Side: now}).Apply(p); err == nil {
					p = next
				}
			}
		}
	}
	return p
}

func roomsOf(p plan.Plan) (ids []plan.ID) {
	for _, l := range p.Levels {
		for room := range l.Rooms.All() {
			ids = append(ids, room.ID)
		}
	}
	return ids
}

// findingsOf tells what is found without the words, which name walls by where they face.
func findingsOf(t *testing.T, p plan.Plan, back func(plan.Plan, rule.Stretch) rule.Stretch) (out []string) {
	t.Helper()
	result, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	for f := range result.Each() {
		var marks []string
		for _, s := range f.Stretches {
			s = back(p, s)
			// on a slanted wall an end is off by a hair
			marks = append(marks, fmt.Sprintf("%s %s %.2f to %.2f mm", s.Host, s.Part, s.From.Millimetres(), s.To.Millimetres()))
		}
		about := fmt.Sprint(f.About, " ", f.Opening)
		switch {
		case f.Rule == "flat-place": // a box in a ceiling lies along the sheet, and is not turned with the room
			continue
		case f.Rule == "box-place": // told of one of those that meet: the first
			if line := fmt.Sprintf("%s %s", f.Rule, f.Severity); !slices.Contains(out, line) {
				out = append(out, line)
			}
			continue
		case len(marks) > 0: // a run of walls has the name of its first
			about = ""
		}
		slices.Sort(marks)
		if f.Measured.Unit == rule.OfLength {
			f.Measured.Value = (f.Measured.Value + 5000) / 10000 // of a place on a slanted wall, too
		}
		out = append(out, fmt.Sprintf("%s %s %s: %v of %v, %v", f.Rule, f.Severity, about, f.Measured, f.Limit, marks))
	}
	slices.Sort(out)
	return out
}

func mirroredStretch(of plan.Plan, s rule.Stretch) rule.Stretch {
	long := of.FaceLength(plan.Anchor{Host: s.Host, Part: s.Part})
	switch s.Part {
	case plan.PartLeft:
		s.Part = plan.PartRight
	case plan.PartRight:
		s.Part = plan.PartLeft
	}
	s.From, s.To = plan.FromRight(long, s.To, 0), plan.FromRight(long, s.From, 0)
	return s
}
