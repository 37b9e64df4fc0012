package spacing_test

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func serve(t *testing.T, p plan.Plan, room plan.ID) (spacing.Service, plan.Plan) {
	t.Helper()
	v, ok := index.New(p).RoomView(room)
	if !ok {
		t.Fatal("no such room")
	}
	fig, err := code.Edition(p.Header.Edition)
	if err != nil {
		t.Fatal(err)
	}
	s := spacing.Serve(v, fig)
	if s.Edit == nil {
		return s, p
	}
	after, err := s.Edit.Apply(p)
	if err != nil {
		t.Fatalf("the proposal: %v", err)
	}
	return s, after
}

// How many receptacles an empty wall takes: published sums of 210.52(A)(1) and (C)(1).
func TestServeTakesTheFewest(t *testing.T) {
	for _, tt := range []struct {
		name   string
		make   func(*filltest.Room)
		long   float64
		want   int
		source string
	}{
		{"11 ft 10 in of wall", nil, 142, 1, "worked example: ceil(11.83/12) = 1"},
		{"12 ft of wall", nil, 144, 1, "210.52(A)(1): 6 ft to either side"},
		{"a sixteenth more", nil, 144.0625, 2, "210.52(A)(1)"},
		{"two are there", func(r *filltest.Room) { r.Receptacle(0, 60); r.Receptacle(0, 240) }, 300, 1, "between 132 and 168 in none serves"},
		{"all is served", func(r *filltest.Room) { r.Receptacle(0, 60) }, 120, 0, "60 in to either side"},
		{"26 in of counter beside a sink", func(r *filltest.Room) {
			r.Room.Use = plan.UseKitchen
			r.Fixture(plan.FixtureCounter, 0, 0, 26)
			r.Fixture(plan.FixtureRange, 0, 26, 30)
			r.Fixture(plan.FixtureRefrigerator, 0, 56, 36)
		}, 92, 1, "worked example: ceil(26/48) = 1"},
		{"121-1/2 in of counter", func(r *filltest.Room) {
			r.Room.Use = plan.UseKitchen
			r.Fixture(plan.FixtureCounter, 0, 0, 121.5)
		}, 121.5, 3, "picture of the code book: ceil(121-1/2 ÷ 48) = 3"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, tt.long)
			if tt.make != nil {
				tt.make(r)
			}
			s, after := serve(t, r.Plan(), r.Room.ID)
			if len(s.Added) != tt.want || len(s.Left) > 0 {
				t.Errorf("adds %d and leaves %v, want %d (%s)", len(s.Added), s.Left, tt.want, tt.source)
			}
			if left := unserved(after, r.Room.ID); left > 0 {
				t.Errorf("%v are left unserved", left)
			}
		})
	}
}

// unserved sums the stretches of a room that the rules on walls and counters stop at.
func unserved(p plan.Plan, room plan.ID) (sum unit.Length) {
	v, _ := index.New(p).RoomView(room)
	fig, _ := code.Edition(p.Header.Edition)
	for _, by := range []*rule.Rule{&spacing.WallReach, &spacing.CounterReach} {
		for _, f := range by.Room(v, fig) {
			if f.Message.ID != "rule."+by.ID+".missed" {
				continue
			}
			for _, s := range f.Stretches {
				sum += s.Length()
			}
		}
	}
	return sum
}

// Rooms of any shape and furniture are served whole, but for what is told to be left, and
// what was there stays.
func TestServeServesAnyRoom(t *testing.T) {
	served := 0
	for seed := range uint64(200) {
		p := filltest.Furnished(rand.New(rand.NewPCG(seed, 3)).IntN)
		for r := range p.Levels[0].Rooms.All() {
			before := index.New(p)
			v, _ := before.RoomView(r.ID)
			fig, _ := code.Edition(p.Header.Edition)
			s := spacing.Serve(v, fig)
			if s.Edit == nil {
				continue
			}
			after, err := s.Edit.Apply(p)
			if err != nil {
				t.Fatalf("seed %d: %v", seed, err)
			}
			served++
			left, told := unserved(after, r.ID), unit.Length(0)
			for _, part := range s.Left {
				told += part.Length()
			}
			if left > told+unit.Inch/16 {
				t.Errorf("seed %d: %s: %v are left, told are %v", seed, r.ID, left, told)
				for _, l := range s.Lines {
					t.Log(l.Text(), l.Stretches)
				}
				for _, o := range s.Added {
					t.Log(o.Kind, o.At, o.Height.Value)
				}
				v, _ := index.New(after).RoomView(r.ID)
				for _, f := range append(spacing.WallReach.Room(v, fig), spacing.CounterReach.Room(v, fig)...) {
					t.Log(f.Message, f.Stretches)
				}
			}
			for _, o := range p.Openings() {
				if now, _ := after.Opening(o.ID); now != o {
					t.Errorf("seed %d: %s is another", seed, o.Tag)
				}
			}
		}
	}
	if served < 50 {
		t.Errorf("only %d rooms were served", served)
	}
}

// Of choices with the fewest, those against a stud come before others, then those even
// about a bed.
func TestServePrefersBaysThenEvenness(t *testing.T) {
	r := filltest.OneWall(t, 200)
	r.Room.Sides[0].Studs = plan.Studs{Spacing: filltest.In(16), Depth: filltest.In(3.5)}
	bed := r.Fixture(plan.FixtureBed, 0, 70, 60)
	s, after := serve(t, r.Plan(), r.Room.ID)
	if len(s.Added) != 2 {
		t.Fatalf("%d, want 2", len(s.Added))
	}
	middle := bed.At.Along + bed.Width/2
	left, right := middle-s.Added[0].At.Along, s.Added[1].At.Along-middle
	if (left-right).Abs() > 16*unit.Inch || left < bed.Width/2 || right < bed.Width/2 {
		t.Errorf("they stand %v and %v from the middle of the bed, want beside it and alike but for studs", left, right)
	}
	if found := filltest.FoundIn(t, after, "stud-in-way"); len(found) > 0 {
		t.Errorf("studs are in the way: %v", filltest.Said(found))
	}
}

// A further receptacle never lengthens what is not served.
func TestAReceptacleMoreNeverServesLess(t *testing.T) {
	tried := 0
	for seed := range uint64(150) {
		r := rand.New(rand.NewPCG(seed, 11))
		p := filltest.Furnished(r.IntN)
		for room := range p.Levels[0].Rooms.All() {
			before := unserved(p, room.ID)
			side := room.Sides[r.IntN(len(room.Sides))]
			length := p.FaceLength(plan.OnFace(side.ID, 0))
			kind := []string{"duplex", "counter"}[r.IntN(2)]
			o := part.NewOpening(unit.Imperial, kind, plan.OnFace(side.ID, unit.Length(r.Int64N(int64(length)+1))))
			o.ID = filltest.IDOf(plan.KindOpening, 1)
			after, err := rule.Add(o).Apply(p)
			if err != nil {
				continue
			}
			tried++
			if now := unserved(after, room.ID); now > before+unit.Inch/16 {
				t.Errorf("seed %d: %v is not served after a %s more, %v before", seed, now, kind, before)
			}
		}
	}
	if tried < 100 {
		t.Errorf("only %d were tried", tried)
	}
}

// TestServeKeepsClearOfStairs: one receptacle in the middle of 12 ft of wall serves all of it,
// 210.52(A)(1); where a flight runs along the middle 6 ft nobody reaches one there (common
// practice), and it takes one at either side of it.
func TestServeKeepsClearOfStairs(t *testing.T) {
	for _, isBy := range []bool{false, true} {
		r := filltest.OneWall(t, 144)
		y := 60.0
		if isBy {
			y = 0
		}
		r.Standing(plan.FixtureStairs, 36, y, 72, 36)
		s, after := serve(t, r.Plan(), r.Room.ID)
		want := map[bool]int{false: 1, true: 2}[isBy]
		if len(s.Added) != want || len(s.Left) > 0 || unserved(after, r.Room.ID) > 0 {
			t.Errorf("stairs along the wall %v: adds %d and leaves %v, want %d", isBy, len(s.Added), s.Left, want)
		}
		for _, o := range after.Openings() {
			if isBy && o.At.Along > filltest.In(36) && o.At.Along < filltest.In(108) {
				t.Errorf("a receptacle is offered in the flight, %v along", o.At.Along)
			}
		}
	}
}
