package edit_test

import (
	"math"
	"slices"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"testing"

	"pgregory.net/rapid"
)

// carrier is the thing among some that takes a thing along: the one that it is or stands
// on, however many stand between; nothing where none does.
func carrier(p plan.Plan, id plan.ID, among []plan.ID) (by plan.ID) {
	for id != "" {
		if slices.Contains(among, id) {
			by = id
		}
		t, _ := p.Find(id)
		switch t := t.(type) {
		case *plan.Side:
			ref, _ := p.Side(t.ID)
			id = ref.Room.ID
		case *plan.Room:
			id = ""
		default:
			id = plan.AnchorOf(t).Host
		}
	}
	return by
}

// wayOf is how a thing itself goes where it is asked to go a way of the sheet: along its
// face, on a top out too, else all of it. Less than an eighth of a millimetre is no way.
func wayOf(p plan.Plan, id plan.ID, by geom.Point) spot {
	way := spotAt(by)
	t, _ := p.Find(id)
	a := plan.AnchorOf(t)
	if a == nil || a.Part == plan.PartCeiling || a.Part == plan.PartFloor {
		return way
	}
	on := surfaceOf(p, *a)
	part := func(dir spot) spot {
		if d := way.dot(dir); math.Abs(d) >= float64(unit.Millimetre)/8 {
			return spot{}.plus(dir, d)
		}
		return spot{}
	}
	if a.Part == plan.PartTop {
		return part(on.along).plus(part(on.out), 1)
	}
	return part(on.along)
}

// Whatever is chosen to move, each thing goes the way of what takes it along, and what
// nothing takes along stays.
func TestEverythingMovesWithWhatTakesItAlong(t *testing.T) {
	moved := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		e := arrange.Move{Things: c.some(t), By: at(unit.Length(rapid.IntRange(-40, 40).Draw(t, "x"))*in/16, unit.Length(rapid.IntRange(-40, 40).Draw(t, "y"))*in/16)}
		if rapid.Bool().Draw(t, "room") {
			e.Things = append(e.Things, c.main)
		}
		now := applied(t, c.Plan, e)
		if plan.Equal(now, c.Plan) {
			return
		}
		moved++
		want := sheetOf(c.Plan)
		for key, was := range want {
			if by := carrier(c.Plan, plan.ID(key[:9]), e.Things); by != "" {
				want[key] = was.plus(wayOf(c.Plan, by, e.By), 1)
			}
		}
		sheetOf(now).want(t, "moved", want, nil)
	})
	if moved < 20 {
		t.Errorf("only %d moves were possible", moved)
	}
}

// Of less than an eighth of a millimetre along a face nobody can tell; an eighth counts.
func TestTheLeastWayAlongAFace(t *testing.T) {
	const eighth = unit.Millimetre / 8
	for _, tt := range []struct {
		by         geom.Point
		n1, sinkIn unit.Length // along the north side, and out on the bench, which faces right
	}{
		{at(eighth, 0), eighth, eighth}, {at(-eighth, 0), -eighth, -eighth},
		{at(eighth-1, 0), 0, 0}, {at(1-eighth, 0), 0, 0},
	} {
		p := after(t, shed(t), arrange.Move{Things: []plan.ID{n1, sink}, By: tt.by})
		if got, out := anchorIn(t, p, n1).Along-3*ft, anchorIn(t, p, sink).Out-ft; got != tt.n1 || out != tt.sinkIn {
			t.Errorf("by %v they go %v along and %v out, want %v and %v", tt.by, got, out, tt.n1, tt.sinkIn)
		}
	}
}

// middleOf is the middle of the box round rooms and what lies flat among things.
func middleOf(p plan.Plan, things []plan.ID) spot {
	low, high := spot{math.Inf(1), math.Inf(1)}, spot{math.Inf(-1), math.Inf(-1)}
	add := func(a spot) {
		low, high = spot{min(low.x, a.x), min(low.y, a.y)}, spot{max(high.x, a.x), max(high.y, a.y)}
	}
	for _, id := range things {
		if r, _ := p.Room(id); r != nil {
			for _, s := range r.Sides {
				add(spotAt(s.Start))
			}
			continue
		}
		t, _ := p.Find(id)
		if a := plan.AnchorOf(t); a.Part == plan.PartCeiling || a.Part == plan.PartFloor {
			add(spotAt(a.At))
		}
	}
	return spot{(low.x + high.x) / 2, (low.y + high.y) / 2}
}

// Rooms and what lies flat turn about their middle, a quarter clockwise; what is on a face
// of a room comes to the next face; what stands on a fixture turns with it alone.
func TestEverythingTurnsAQuarter(t *testing.T) {
	turned := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		things := slices.DeleteFunc(c.some(t), func(id plan.ID) bool {
			t, _ := c.Find(id)
			return plan.AnchorOf(t).Part == plan.PartFace // see below
		})
		if rapid.Bool().Draw(t, "room") {
			things = append(things, c.main)
		}
		now := applied(t, c.Plan, arrange.Turn{Things: things})
		if plan.Equal(now, c.Plan) {
			return
		}
		turned++
		middle, want := middleOf(c.Plan, things), sheetOf(c.Plan)
		for key, was := range want {
			by := carrier(c.Plan, plan.ID(key[:9]), things)
			t, _ := c.Find(by)
			if a := plan.AnchorOf(t); by != "" && (a == nil || isFlat(*a)) {
				want[key] = middle.plus(was.plus(middle, -1).clockwise(), 1)
			}
		}
		sheetOf(now).want(t, "turned", want, nil)
	})
	if turned < 20 {
		t.Errorf("only %d turns were possible", turned)
	}
}

func isFlat(a plan.Anchor) bool { return a.Part == plan.PartCeiling || a.Part == plan.PartFloor }

// As far along the next face, or as near to that as it fits: of the cabin the slanted side
// is 60 in long and follows the top one.
func TestOnFacesThingsTurnToTheNext(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		for _, id := range c.all {
			was := *plan.AnchorOf(thing(c.Plan, id))
			if was.Part != plan.PartFace {
				continue
			}
			i := slices.Index(c.sides, was.Host)
			if i < 0 {
				continue
			}
			now, err := arrange.Turn{Things: []plan.ID{id}}.Apply(c.Plan)
			if err != nil {
				continue // something stands there
			}
			next, _ := now.Side(c.sides[(i+1)%5])
			want := plan.OnFace(next.Key(), min(was.Along, next.Line().Length()-plan.WidthOf(thing(c.Plan, id))))
			if got := *plan.AnchorOf(thing(now, id)); got != want {
				t.Fatalf("from %+v it comes to %+v, want %+v", was, got, want)
			}
		}
	})
}

func thing(p plan.Plan, id plan.ID) plan.Thing {
	t, _ := p.Find(id)
	return t
}

// Four quarters, and two mirrors, are nothing: of a room with all that is in it.
func TestTurnsAndMirrorsComeRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		p := c.Plan
		for range 4 {
			p = applied(t, p, arrange.Turn{Things: []plan.ID{c.main, c.annex}})
		}
		sheetOf(p).want(t, "turned four times", sheetOf(c.Plan), nil)
		mirror := arrange.Mirror{Things: []plan.ID{c.main, c.annex}}
		if twice := applied(t, applied(t, c.Plan, mirror), mirror); !plan.Equal(twice, c.Plan) {
			t.Fatal("mirrored twice it is another plan")
		}
	})
}

// Everything of mirrored rooms comes to where a mirror upright through their middle shows
// it: the left end of what has ends is where the right one shows, hinges and panels where
// they show.
func TestEverythingOfARoomIsMirrored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		things := []plan.ID{c.main}
		if rapid.Bool().Draw(t, "both") {
			things = append(things, c.annex)
		}
		now := applied(t, c.Plan, arrange.Mirror{Things: things})
		line, want := middleOf(c.Plan, things).x, sheet{}
		for key, was := range sheetOf(c.Plan) {
			if carrier(c.Plan, plan.ID(key[:9]), things) == "" {
				want[key] = was
				continue
			}
			want[otherEnd(key)] = spot{2*line - was.x, was.y}
		}
		sheetOf(now).want(t, "mirrored", want, isStud)
		mirroredStuds(t, c, now)
	})
}

// mirroredStuds holds the studs told one by one to their order: each from the other end.
func mirroredStuds(t *rapid.T, c *cabin, now plan.Plan) {
	for _, id := range c.sides {
		was, _ := c.Side(id)
		is, _ := now.Side(id)
		long, n := was.Line().Length(), len(was.Side().Places)
		if len(is.Side().Places) != n {
			t.Fatalf("%d studs, want %d", len(is.Side().Places), n)
		}
		for i, p := range was.Side().Places {
			if got := is.Side().Places[n-1-i]; got.At != long-p.At || got.State != p.State {
				t.Fatalf("stud %d of %d is %+v, want it as far from the other end as %+v", i, n, got, p)
			}
		}
		if is.Side().Studs.FromRight == was.Side().Studs.FromRight || is.Side().Studs.First != was.Side().Studs.First {
			t.Fatalf("laid out %+v, want %+v from the other end", is.Side().Studs, was.Side().Studs)
		}
	}
}
