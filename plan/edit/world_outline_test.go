package edit_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// runs are the lines that the sides of a room lie on, each from a place and in a direction.
func runs(r *plan.Room) (all []surface) {
	p := plan.Plan{Levels: []*plan.Level{{ID: ground, Rooms: plan.Set[*plan.Room]{}.With(r)}}}
	for _, s := range r.Sides {
		all = append(all, surfaceOf(p, plan.OnFace(s.ID, 0)))
	}
	return all
}

// crossing is where two lines cross.
func crossing(a, b surface) spot {
	sine := a.along.x*b.along.y - a.along.y*b.along.x
	way := b.from.plus(a.from, -1)
	return a.from.plus(a.along, (way.x*b.along.y-way.y*b.along.x)/sine)
}

// isOfLayout leaves out the first stud, which may be any of the same layout.
func isOfLayout(key string) bool { return strings.HasSuffix(key, "first stud") }

// A side moved square to itself, or made longer by moving its neighbor, moves one line of
// the outline; corners are where lines cross. What is on that line goes with it, square to
// it, and all else stays where it is on the sheet.
func TestOneLineOfAnOutlineMoves(t *testing.T) {
	moved := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		i := rapid.IntRange(0, 4).Draw(t, "side")
		by := unit.Length(rapid.IntRange(-40, 40).Draw(t, "by")) * in / 16
		ref, _ := c.Side(c.sides[i])
		var e edit.Edit = edit.MoveSide{Side: c.sides[i], By: by}
		line, out := i, -float64(by)
		lines := runs(ref.Room)
		switch rapid.IntRange(0, 2).Draw(t, "how") {
		case 1:
			e = edit.SetSideLength{Side: c.sides[i], Length: ref.Line().Length() + by}
			line = (i + 1) % 5
			out = spot{}.plus(lines[i].along, float64(by)).dot(lines[line].out)
		case 2:
			e = edit.SetSideLength{Side: c.sides[i], Length: ref.Line().Length() + by, FromRight: true}
			line = (i + 4) % 5
			out = spot{}.plus(lines[i].along, -float64(by)).dot(lines[line].out)
		}
		now := applied(t, c.Plan, e)
		if plan.Equal(now, c.Plan) {
			return
		}
		moved++
		lines[line].from = lines[line].from.plus(lines[line].out, out)
		want := sheetOf(c.Plan)
		for key, was := range want {
			if carrier(c.Plan, plan.ID(key[:9]), []plan.ID{c.sides[line]}) != "" {
				want[key] = was.plus(lines[line].out, out)
			}
		}
		for i, id := range c.sides {
			want.put(id, "left end", crossing(lines[(i+4)%5], lines[i]))
			want.put(id, "right end", crossing(lines[i], lines[(i+1)%5]))
		}
		sheetOf(now).want(t, fmt.Sprintf("%+v", e), want, isOfLayout)
		for i, id := range c.sides {
			sameLayout(t, c.Plan, now, id, id, lines[i])
		}
	})
	if moved < 20 {
		t.Errorf("only %d outlines could be changed", moved)
	}
}

// sameLayout holds that the studs of a side stand where they would have stood: as far along
// its line, but for whole spacings.
func sameLayout(t *rapid.T, was, now plan.Plan, old, id plan.ID, line surface) {
	first := func(p plan.Plan, id plan.ID) float64 {
		return sheetOf(p).of(id)[string(id)+" first stud"].dot(line.along)
	}
	ref, _ := was.Side(old)
	spacing := float64(ref.Side().Studs.Spacing)
	off := math.Remainder(first(now, id)-first(was, old), spacing)
	if is, _ := now.Side(id); math.Abs(off) > near || is.Side().Studs.First <= 0 || is.Side().Studs.First > is.Side().Studs.Spacing {
		t.Fatalf("the first stud of %s is %+v, %.6f mm off the layout", id, is.Side().Studs, off/1e6)
	}
}

// Where one corner moves, what is on the two sides that meet there keeps its distance from
// their other ends; all else stays.
func TestOneCornerMoves(t *testing.T) {
	moved := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		i := rapid.IntRange(0, 4).Draw(t, "corner")
		before := (i + 4) % 5
		ref, _ := c.Side(c.sides[i])
		to := ref.Line().A.Add(at(unit.Length(rapid.IntRange(-40, 40).Draw(t, "x"))*in/16, unit.Length(rapid.IntRange(-40, 40).Draw(t, "y"))*in/16))
		now := applied(t, c.Plan, edit.MoveCorner{Side: c.sides[i], To: to})
		if plan.Equal(now, c.Plan) {
			return
		}
		moved++
		two := []plan.ID{c.sides[before], c.sides[i]}
		want := sheetOf(c.Plan)
		isAway := func(key string) bool { return carrier(c.Plan, plan.ID(key[:9]), two) != "" }
		sheetOf(now).want(t, "elsewhere", want, isAway)
		if now, _ := now.Side(c.sides[i]); now.Line().A != to {
			t.Fatalf("the corner is at %v, want %v", now.Line().A, to)
		}
		// Along each of the two from its fixed end, in place of where that is on the sheet.
		for n, id := range two {
			wasOn, nowOn := alongOf(c.Plan, id, n == 1), alongOf(now, id, n == 1)
			for key, was := range wasOn {
				if got, ok := nowOn[key]; !ok || math.Abs(got-was) > near {
					t.Fatalf("%s is %.6f mm from the end that stays, was %.6f", key, got/1e6, was/1e6)
				}
			}
		}
	})
	if moved < 20 {
		t.Errorf("only %d corners could be moved", moved)
	}
}

// alongOf is how far from one end of a side everything on it is.
func alongOf(p plan.Plan, side plan.ID, fromRight bool) map[string]float64 {
	all := map[string]float64{}
	ref, _ := p.Side(side)
	on := surfaceOf(p, plan.OnFace(side, 0))
	for key, at := range sheetOf(p) {
		if carrier(p, plan.ID(key[:9]), []plan.ID{side}) == "" || strings.HasSuffix(key, " end") && key[:9] == string(side) || isOfLayout(key) {
			continue
		}
		off := at.plus(on.from, -1).dot(on.along)
		if fromRight {
			off = float64(ref.Line().Length()) - off
		}
		all[key] = off
	}
	return all
}

// A side is split where nothing stands across; the longer part keeps its ID, and nothing
// moves. What the side told of places along it, the two parts tell of the same places.
func TestASplitMovesNothing(t *testing.T) {
	split := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		i := rapid.IntRange(0, 4).Draw(t, "side")
		ref, l := c.Side(c.sides[i])
		long := ref.Line().Length()
		e := edit.SplitSide{Side: c.sides[i], At: unit.Length(rapid.IntRange(-1, int(long/in)+1).Draw(t, "at")) * in, NewID: c.ids.New(plan.KindSide)}
		now, err := e.Apply(c.Plan)
		fits := e.At > 0 && e.At < long
		for thing := range l.AnchoredTo(e.Side) {
			from := plan.AnchorOf(thing).Along
			fits = fits && !(from < e.At && from+plan.WidthOf(thing) > e.At)
		}
		if fits != (err == nil) {
			t.Fatalf("split at %v of %v: %v, want that it fits: %v", e.At, long, err, fits)
		}
		if err != nil {
			return
		}
		split++
		applied(t, c.Plan, e)
		sheetOf(now).want(t, "beside it", sheetOf(c.Plan), func(key string) bool { return key[:9] == string(e.Side) || key[:9] == string(e.NewID) })
		left, right := e.Side, e.NewID
		if e.At*2 < long {
			left, right = right, left
		}
		a, _ := now.Side(left)
		b, _ := now.Side(right)
		if a.Line().A != ref.Line().A || b.Line().B != ref.Line().B || a.Line().B != b.Line().A || a.Line().A.Distance(a.Line().B)-e.At > 1 {
			t.Fatalf("the parts run %v and %v", a.Line(), b.Line())
		}
		for _, id := range []plan.ID{left, right} {
			sameLayout(t, c.Plan, now, e.Side, id, surfaceOf(c.Plan, plan.OnFace(e.Side, 0)))
		}
		partsTellTheSame(t, ref.Side(), a.Side(), b.Side(), e.At, long)
		back := applied(t, now, edit.RemoveCorner{Side: b.Side().ID})
		sheetOf(back).want(t, "joined again", sheetOf(c.Plan), func(key string) bool { return key[:9] == string(e.Side) || key[:9] == string(e.NewID) })
		if again, _ := back.Side(e.Side); again == nil || again.Line() != ref.Line() || back.Has(e.NewID) {
			t.Fatal("joined again, the side is another")
		}
	})
	if split < 20 {
		t.Errorf("only %d sides could be split", split)
	}
}

// partsTellTheSame asks the whole and the part at each inch and a half inch along.
func partsTellTheSame(t *rapid.T, whole, left, right *plan.Side, at, long unit.Length) {
	for along := unit.Length(0); along < long; along += in / 2 {
		part, there := left, along
		if along >= at {
			part, there = right, along-at
		}
		if got, want := told(part, there), told(whole, along); got != want {
			t.Fatalf("at %v of a side split at %v is told %q, was %q", along, at, got, want)
		}
	}
	if part := left.Studs; part.Depth != whole.Studs.Depth || !slices.Equal(left.Finish, whole.Finish) || !slices.Equal(right.Finish, whole.Finish) || left.Kind != whole.Kind {
		t.Fatalf("the parts are built %+v and %+v, the whole %+v", left, right, whole)
	}
}

// told is what a side says of a place along it: whether a stud is there, which zone it is
// in and what somebody saw there. What begins at a place is there, what ends is not.
func told(s *plan.Side, along unit.Length) (what string) {
	for _, p := range s.Places {
		if p.At == along {
			what += "stud " + string(p.State) + " "
		}
	}
	for _, z := range s.Zones {
		if z.From <= along && along < z.To {
			what += "zone " + string(z.Condition) + " "
		}
	}
	for _, p := range s.Probes {
		if p.From <= along && along < p.To {
			what += fmt.Sprint("probe ", p.What, p.Clear)
		}
	}
	return what
}
