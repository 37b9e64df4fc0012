package edit_test

import (
	"errors"
	"math"
	"slices"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"testing"

	"pgregory.net/rapid"
)

// ends are how far along its face a thing begins and ends.
func ends(p plan.Plan, id plan.ID) (from, to unit.Length) {
	t := thing(p, id)
	from = plan.AnchorOf(t).Along
	return from, from + plan.WidthOf(t)
}

// isTogether reports whether two things are on one face of a room or a fixture.
func isTogether(p plan.Plan, a, b plan.ID) bool {
	x, y := plan.AnchorOf(thing(p, a)), plan.AnchorOf(thing(p, b))
	return a != b && x.Host == y.Host && x.Part == y.Part && !isFlat(*x)
}

// Two things of one face are as far apart as there is between their nearer ends; set at
// another distance, the first comes so far from the other, on the side where it is.
func TestThingsAreSetApart(t *testing.T) {
	set := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		for _, a := range c.some(t) {
			for _, b := range c.all {
				away, ok := arrange.Apart(c.Plan, a, b)
				if ok != isTogether(c.Plan, a, b) {
					t.Fatalf("%s and %s are on one face: %v", a, b, ok)
				}
				if !ok {
					continue
				}
				a0, a1 := ends(c.Plan, a)
				b0, b1 := ends(c.Plan, b)
				if want := max(a0-b1, b0-a1); away != want {
					t.Fatalf("%s and %s are %v apart, want %v", a, b, away, want)
				}
				want := unit.Length(rapid.IntRange(0, 30).Draw(t, "away")) * in
				next, err := arrange.SetApart{ID: a, From: b, Away: want}.Apply(c.Plan)
				if err != nil {
					continue
				}
				set++
				n0, n1 := ends(next, a)
				if isRight := a0-b1 >= b0-a1; isRight && n0 != b1+want || !isRight && n1 != b0-want {
					t.Fatalf("set %v from %v to %v, %s is from %v to %v; it was at the right: %v", want, b0, b1, a, n0, n1, isRight)
				}
				if from := *plan.FromOf(thing(next, a)); from != b {
					t.Fatalf("its distance is told from %s, want %s", from, b)
				}
			}
		}
		for _, none := range [][2]plan.ID{{"ozzzzzzzz", c.all[0]}, {c.all[0], "ozzzzzzzz"}, {c.main, c.all[0]}, {c.all[0], c.main}} {
			if _, ok := arrange.Apart(c.Plan, none[0], none[1]); ok {
				t.Fatalf("%v are some way apart", none)
			}
		}
	})
	if set < 50 {
		t.Errorf("only %d distances could be set", set)
	}
}

// Where two things reach over one another as far from either end, they count as beside
// each other in their order.
func TestThingsOverOneAnother(t *testing.T) {
	// The window is from 3 to 6 ft: an opening in its middle is 1 ft 6 in over either end.
	p := after(t, shed(t), edit.MoveOpening{ID: n2, To: plan.OnFace(east, 4*ft+6*in)})
	if away, ok := arrange.Apart(p, n2, window); !ok || away != -18*in {
		t.Errorf("they are %v apart (%v), want −18 in", away, ok)
	}
	p = after(t, p, arrange.SetApart{ID: n2, From: window, Away: 6 * in})
	if got := anchorIn(t, p, n2).Along; got != 6*ft+6*in {
		t.Errorf("set 6 in off it comes to %v, want to the right of it", got)
	}
	for _, id := range []plan.ID{"", n1} { // told from nothing, and again from the same
		p = after(t, p, arrange.MeasureFrom{ID: n2, From: id})
		again := after(t, p, arrange.MeasureFrom{ID: n2, From: id})
		if o := opening(t, again, n2); o.From != id || !same(p, again) {
			t.Errorf("told from %q it says %q", id, o.From)
		}
	}
	if again := after(t, p, arrange.MeasureFrom{ID: circuit, From: n1}); !same(p, again) {
		t.Error("a circuit has a distance")
	}
}

// Spread out, things have the same space between them, to the nanometre; the outer ones
// stay, or have that space beside them too. Their order along the face stays.
func TestSpreadThingsHaveTheSameSpace(t *testing.T) {
	spread, empty := 0, shed(t)
	rapid.Check(t, func(t *rapid.T) {
		p := empty
		var ids []plan.ID
		for i := range rapid.IntRange(0, 4).Draw(t, "openings") {
			id := plan.ID("oaaaaaaa" + string(rune('a'+i)))
			o := plan.Opening{ID: id, Kind: "duplex", At: plan.OnFace(south, unit.Length(rapid.Int64Range(0, int64(12*ft)).Draw(t, "along"))), Height: plan.CentreAt(18 * in), Status: plan.StatusNew}
			p = put(t, p, o)
			ids = append(ids, id)
		}
		ids = append(ids, door, panel)
		e := arrange.Spread{Things: rapid.Permutation(ids).Draw(t, "things"), ToEnds: rapid.Bool().Draw(t, "to ends")}
		now, err := e.Apply(p)
		if err != nil {
			return
		}
		applied(t, p, e)
		spread++
		order := func(p plan.Plan) []plan.ID {
			return slices.SortedStableFunc(slices.Values(e.Things), func(a, b plan.ID) int {
				x, _ := ends(p, a)
				y, _ := ends(p, b)
				return int(max(-1, min(1, x-y)))
			})
		}
		row := order(p)
		first, _ := ends(now, row[0])
		_, last := ends(now, row[len(row)-1])
		was, _ := ends(p, row[0])
		_, wasLast := ends(p, row[len(row)-1])
		gaps := []unit.Length{}
		if e.ToEnds {
			gaps = append(gaps, first, 12*ft-last)
		} else if first != was || last != wasLast {
			t.Fatalf("the outer ones went from %v and %v to %v and %v", was, wasLast, first, last)
		}
		for i := 1; i < len(row); i++ {
			_, before := ends(now, row[i-1])
			next, _ := ends(now, row[i])
			gaps = append(gaps, next-before)
		}
		if slices.Max(gaps)-slices.Min(gaps) > 2 || slices.Min(gaps) < 0 {
			t.Fatalf("spread %+v the spaces are %v", e, gaps)
		}
	})
	if spread < 20 {
		t.Errorf("only %d could be spread", spread)
	}
}

// In a ceiling, things are set evenly on the line between the two that are farthest apart
// across or down the sheet, whichever is more; those two stay.
func TestSpreadLampsStandInALine(t *testing.T) {
	before := shed(t)
	rapid.Check(t, func(t *rapid.T) {
		p := before
		ids := []plan.ID{lamp}
		for i := range rapid.IntRange(2, 4).Draw(t, "lamps") {
			id := plan.ID("oaaaaaaa" + string(rune('a'+i)))
			spot := at(unit.Length(rapid.IntRange(0, 144).Draw(t, "x"))*in, unit.Length(rapid.IntRange(0, 120).Draw(t, "y"))*in)
			p = put(t, p, plan.Opening{ID: id, Kind: "light", At: plan.OnCeiling(shedRoom, spot), Status: plan.StatusNew})
			ids = append(ids, id)
		}
		now := applied(t, p, arrange.Spread{Things: ids})
		var was, is []spot
		low, high := spot{math.Inf(1), math.Inf(1)}, spot{math.Inf(-1), math.Inf(-1)}
		for _, id := range ids {
			a := spotAt(plan.AnchorOf(thing(p, id)).At)
			was, is = append(was, a), append(is, spotAt(plan.AnchorOf(thing(now, id)).At))
			low, high = spot{min(low.x, a.x), min(low.y, a.y)}, spot{max(high.x, a.x), max(high.y, a.y)}
		}
		across := func(a, b spot) int {
			if high.y-low.y > high.x-low.x {
				return int(max(-1, min(1, a.y-b.y)))
			}
			return int(max(-1, min(1, a.x-b.x)))
		}
		slices.SortStableFunc(was, across)
		slices.SortStableFunc(is, across)
		n := len(ids) - 1
		isOuter := func(a, b spot) bool { return across(a, b) == 0 }
		if !isOuter(was[0], is[0]) || !isOuter(was[n], is[n]) {
			t.Fatalf("the outer ones went from %v and %v to %v and %v", was[0], was[n], is[0], is[n])
		}
		for i := range is {
			want := is[0].plus(is[n].plus(is[0], -1), float64(i)/float64(n))
			if d := is[i].plus(want, -1); math.Hypot(d.x, d.y) > near {
				t.Fatalf("lamp %d of %d is at %v, want %v", i, n, is[i], want)
			}
		}
	})
	refused(t, shed(t), arrange.Spread{Things: []plan.ID{lamp}, ToEnds: true}, plan.ErrNoRoom)
}

// Set as far from an end as another is, each thing is that far from the same end of its
// own face: of a side or of a fixture.
func TestThingsAreAsFarFromTheirEnds(t *testing.T) {
	set := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		e := arrange.SameDistance{As: rapid.SampledFrom(c.all).Draw(t, "as"), Things: c.some(t), IsRight: rapid.Bool().Draw(t, "right")}
		like := *plan.AnchorOf(thing(c.Plan, e.As))
		now, err := e.Apply(c.Plan)
		isOnFaces := !isFlat(like)
		for _, id := range e.Things {
			isOnFaces = isOnFaces && !isFlat(*plan.AnchorOf(thing(c.Plan, id)))
		}
		if !isOnFaces && !isNotOnFace(err) {
			t.Fatalf("%+v: %v, want that one is on no face", e, err)
		}
		if err != nil {
			return
		}
		set++
		fromEnd := func(p plan.Plan, id plan.ID) float64 {
			from, to := ends(p, id)
			if e.IsRight {
				return faceLength(p, *plan.AnchorOf(thing(p, id))) - float64(to)
			}
			return float64(from)
		}
		want := fromEnd(c.Plan, e.As)
		for _, id := range e.Things {
			if got := fromEnd(now, id); got != want {
				t.Fatalf("%s is %v from its end, want %v", id, got, want)
			}
		}
	})
	if set < 10 {
		t.Errorf("only %d could be set", set)
	}
}

func isNotOnFace(err error) bool {
	var r *plan.Refusal
	return errors.As(err, &r) && r.Text.ID == "refuse.not-on-face" && errors.Is(err, plan.ErrNoRoom)
}

func put(t *rapid.T, p plan.Plan, o plan.Opening) plan.Plan {
	next, err := edit.AddOpening{Opening: o}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	return next
}
