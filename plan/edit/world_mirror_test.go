package edit_test

import (
	"strings"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"testing"

	"pgregory.net/rapid"
)

// otherEnd names the place of a thing that a mirror shows where this one is.
func otherEnd(key string) string {
	swap := strings.NewReplacer(" left", " right", " right", " left")
	return swap.Replace(renumbered(key))
}

// renumbered counts the zones of a cabin's side, which are two, from the other end.
func renumbered(key string) string {
	return strings.NewReplacer("zone 0", "zone 1", "zone 1", "zone 0").Replace(key)
}

// isStud leaves out studs told one by one: which is which goes by their number.
func isStud(key string) bool { return strings.Contains(key[9:], " stud ") }

// What is mirrored by itself is mirrored about the middle of its face, or of the room where
// it lies flat; what stands on it goes with it. Everything else stays.
func TestThingsAreMirroredWhereTheyAre(t *testing.T) {
	mirrored := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		id := rapid.SampledFrom(c.all).Draw(t, "thing")
		now := applied(t, c.Plan, arrange.Mirror{Things: []plan.ID{id}})
		if plan.Equal(now, c.Plan) {
			return
		}
		mirrored++
		was := *plan.AnchorOf(thing(c.Plan, id))
		want := sheet{}
		for key, place := range sheetOf(c.Plan) {
			if carrier(c.Plan, plan.ID(key[:9]), []plan.ID{id}) == "" {
				want[key] = place
			} else {
				want[otherEnd(key)] = shown(c.Plan, was, place)
			}
		}
		sheetOf(now).want(t, "mirrored", want, func(key string) bool { return false })
	})
	if mirrored < 20 {
		t.Errorf("only %d could be mirrored", mirrored)
	}
}

// shown is where a mirror shows a place that stands square to the middle of what an anchor
// is on.
func shown(p plan.Plan, on plan.Anchor, place spot) spot {
	if isFlat(on) {
		return spot{2*middleOf(p, []plan.ID{on.Host}).x - place.x, place.y}
	}
	s := surfaceOf(p, on)
	long := faceLength(p, on)
	off := place.plus(s.from, -1).dot(s.along)
	return place.plus(s.along, long-2*off)
}

// faceLength is how long what an anchor is on is along it.
func faceLength(p plan.Plan, on plan.Anchor) float64 {
	if on.Part == plan.PartFace {
		ref, _ := p.Side(on.Host)
		return float64(ref.Line().Length())
	}
	f, _ := p.Fixture(on.Host)
	if on.Part == plan.PartLeft || on.Part == plan.PartRight {
		return float64(f.Depth)
	}
	return float64(f.Width)
}

// A thing in the left of a fixture comes to its right where the fixture is mirrored; alone
// it is mirrored on its face. The bench is 24 in deep: 24 − 4 = 20.
func TestLeftAndRightOfAFixtureChangePlaces(t *testing.T) {
	left, right := plan.Anchor{Host: bench, Part: plan.PartLeft, Along: 4 * in}, plan.Anchor{Host: bench, Part: plan.PartRight, Along: 20 * in}
	there := plan.Anchor{Host: bench, Part: plan.PartLeft, Along: 20 * in}
	p := after(t, shed(t), edit.MoveOpening{ID: front, To: left})
	for what, want := range map[plan.ID]plan.Anchor{shedRoom: right, bench: right, front: there} {
		now := after(t, p, arrange.Mirror{Things: []plan.ID{what}})
		if got := anchorIn(t, now, front); got != want {
			t.Errorf("with %s it comes to %+v, want %+v", what, got, want)
		}
		if back := after(t, now, arrange.Mirror{Things: []plan.ID{what}}); anchorIn(t, back, front) != left {
			t.Errorf("with %s twice it comes to %+v, want %+v", what, anchorIn(t, back, front), left)
		}
	}
}

// Without a spacing there is no layout that could begin at the other end.
func TestNoStudsAreMirrored(t *testing.T) {
	for _, spacing := range []unit.Length{0, 16 * in} {
		ref, _ := shed(t).Side(north)
		side := *ref.Side()
		side.Studs.Spacing = spacing
		p := after(t, shed(t), edit.ChangeSide{Side: side}, arrange.Mirror{Things: []plan.ID{shedRoom}})
		if now, _ := p.Side(north); now.Side().Studs.FromRight != (spacing > 0) {
			t.Errorf("spaced %v they are laid out %+v", spacing, now.Side().Studs)
		}
	}
}
