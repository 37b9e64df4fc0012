package fill

import (
	"fmt"
	"testing"

	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ids gives out well-formed IDs for tests.
type ids int

func (n *ids) next(kind byte) plan.ID {
	*n++
	letters := []byte(fmt.Sprintf("%c%08d", kind, *n))
	for i := range letters[1:] {
		letters[i+1] += 'a' - '0' // 0 and 1 stand in no ID
	}
	return plan.ID(letters)
}

// room is a room under test: sides in order, what is on them, and the edition.
type room struct {
	t       *testing.T
	ids     ids
	edition string
	level   plan.Level
	room    *plan.Room
}

// roomOf makes a bedroom of the corners, in inches.
func roomOf(t *testing.T, corners ...[2]float64) *room {
	r := &room{t: t, edition: "2023", room: &plan.Room{Name: "Bedroom", Use: plan.UseBedroom, Ceiling: 96 * unit.Inch}}
	r.room.ID = r.ids.next(plan.KindRoom)
	for _, c := range corners {
		r.room.Sides = append(r.room.Sides, &plan.Side{
			ID: r.ids.next(plan.KindSide), Kind: plan.SideWall, Start: geom.Point{X: in(c[0]), Y: in(c[1])},
		})
	}
	return r
}

// in returns a length of inches that eighths hold exactly.
func in(inches float64) unit.Length { return unit.Length(inches*8) * (unit.Inch / 8) }

// oneWall makes a room whose north side alone is a wall, of the length.
func oneWall(t *testing.T, inches float64) *room {
	r := roomOf(t, [2]float64{0, 0}, [2]float64{inches, 0}, [2]float64{inches, 120}, [2]float64{0, 120})
	for _, s := range r.room.Sides[1:] {
		s.Kind = plan.SideOpen
	}
	return r
}

func square(t *testing.T, inches float64) *room {
	return roomOf(t, [2]float64{0, 0}, [2]float64{inches, 0}, [2]float64{inches, inches}, [2]float64{0, inches})
}

func put[T plan.Noun](set *plan.Set[T], noun T) { *set = set.With(noun) }

func (r *room) door(side int, along, width float64) *plan.Break {
	b := &plan.Break{ID: r.ids.next(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(r.room.Sides[side].ID, in(along)), Width: in(width), Head: in(80), Swing: plan.SwingIn, Hand: plan.HandLeft}
	put(&r.level.Breaks, b)
	return b
}

func (r *room) fixture(kind plan.FixtureKind, side int, along, width float64) *plan.Fixture {
	f := &plan.Fixture{ID: r.ids.next(plan.KindFixture), Kind: kind, At: plan.OnFace(r.room.Sides[side].ID, in(along)), Width: in(width), Depth: in(24), Height: in(36)}
	put(&r.level.Fixtures, f)
	return f
}

func (r *room) receptacle(side int, along float64) *plan.Opening {
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[side].ID, in(along)))
	return r.opening(o)
}

func (r *room) inFloor(x, y float64) *plan.Opening {
	return r.opening(part.NewOpening(unit.Imperial, "floor", plan.OnFloor(r.room.ID, geom.Point{X: in(x), Y: in(y)})))
}

func (r *room) opening(o plan.Opening) *plan.Opening {
	o.ID = r.ids.next(plan.KindOpening)
	o.Tag = string(o.ID)
	put(&r.level.Openings, &o)
	return &o
}

func (r *room) plan() plan.Plan {
	p := plan.New("Test", "v22222222")
	p.Header.Edition = r.edition
	l := r.level
	l.ID = p.Levels[0].ID
	put(&l.Rooms, r.room)
	return p.WithLevel(&l)
}

// missed returns the uncovered stretches of the wall rule, in inches, in the order of
// the findings.
func (r *room) missed() (out []string) {
	for _, f := range r.reach() {
		if f.IsOpen {
			continue
		}
		text := ""
		for _, s := range f.Stretches {
			text += fmt.Sprintf("%d:%s-%s ", r.room.SideAt(s.Host), s.From.Inches(8), s.To.Inches(8))
		}
		out = append(out, text[:len(text)-1])
	}
	return out
}

// reach returns what a check of the whole plan says by the wall rule.
func (r *room) reach() (found []rule.Finding) {
	result, err := Check(index.New(r.plan()))
	if err != nil {
		r.t.Fatal(err)
	}
	for _, f := range result.Of(r.room.ID) {
		if f.Rule == spacing.WallReach.ID {
			found = append(found, f)
		}
	}
	return found
}

func TestWallReach(t *testing.T) {
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *room
		want   []string
		source string
	}{
		{"11 ft 10 in between breaks, one near the middle", func(t *testing.T) *room {
			r := oneWall(t, 142)
			r.receptacle(0, 71)
			return r
		}, nil, "forums.mikeholt.com 32172"},
		{"its place may be 5 ft 10 in to 6 ft from the end: 5 ft 10", func(t *testing.T) *room {
			r := oneWall(t, 142)
			r.receptacle(0, 70)
			return r
		}, nil, "the same page; arithmetic 142 - 72 = 70"},
		{"at 2 ft from an end the far point is 9 ft 10 in away", func(t *testing.T) *room {
			r := oneWall(t, 142)
			r.receptacle(0, 24)
			return r
		}, []string{`0:96"-142"`}, "the same page: begins where the reach ends"},
		{"12 ft is served from its exact middle", func(t *testing.T) *room {
			r := oneWall(t, 144)
			r.receptacle(0, 72)
			return r
		}, nil, "210.52(A)(1): 6 ft either way"},
		{"12 ft and an inch is not served by one", func(t *testing.T) *room {
			r := oneWall(t, 145)
			r.receptacle(0, 72)
			return r
		}, []string{`0:144"-145"`}, "210.52(A)(1)"},
		{"25 ft with three", func(t *testing.T) *room {
			r := oneWall(t, 300)
			for _, x := range []float64{50, 150, 250} {
				r.receptacle(0, x)
			}
			return r
		}, nil, "forums.mikeholt.com 32172: 25 ft needs 3"},
		{"25 ft with two leaves a foot", func(t *testing.T) *room {
			r := oneWall(t, 300)
			r.receptacle(0, 72)
			r.receptacle(0, 228)
			return r
		}, []string{`0:144"-156"`}, "ceil(25/12) = 3"},
		{"17 ft square with a 3 ft door and six", func(t *testing.T) *room {
			r := square(t, 204)
			r.door(0, 0, 36)
			r.receptacle(0, 101)
			r.receptacle(1, 27)
			r.receptacle(1, 157)
			r.receptacle(2, 83)
			r.receptacle(3, 9)
			r.receptacle(3, 139)
			return r
		}, nil, "one run of 65 ft, ceil(65/12) = 6; the published 7 breaks the run at corners: smartsolve.ai, kept as a trap"},
		{"the same with five", func(t *testing.T) *room {
			r := square(t, 204)
			r.door(0, 0, 36)
			r.receptacle(0, 101)
			r.receptacle(1, 27)
			r.receptacle(1, 157)
			r.receptacle(2, 83)
			r.receptacle(3, 9)
			return r
		}, []string{`3:81"-204"`}, "ceil(65/12) = 6; the last begins 72 in past the fifth"},
		{"wall behind a door counts", func(t *testing.T) *room {
			r := oneWall(t, 60)
			r.door(0, 0, 30)
			return r
		}, []string{`0:30"-60"`}, "ecmweb.com code Q&A 93: it counts however the door stands"},
		{"six panels of a slider, one fixed in the middle", func(t *testing.T) *room { return slider(t) },
			[]string{`0:96"-144"`}, "forums.mikeholt.com 2570348: the fixed panel is wall space"},
		{"a floor receptacle 18 in from it serves", func(t *testing.T) *room {
			r := slider(t)
			r.inFloor(120, 18)
			return r
		}, nil, "210.52(A)(3)"},
		{"one 18-1/8 in from it does not", func(t *testing.T) *room {
			r := slider(t)
			r.inFloor(120, 18.125)
			return r
		}, []string{`0:96"-144"`}, "210.52(A)(3)"},
		{"24 in between two doors needs its own", func(t *testing.T) *room { return betweenDoors(t, 24) },
			[]string{`0:36"-60"`}, "forums.mikeholt.com 2587744"},
		{"23-7/8 in does not", func(t *testing.T) *room { return betweenDoors(t, 23.875) },
			nil, "electricalcodeconnection.com, wall space"},
		{"outlets beyond the doors do not help", func(t *testing.T) *room {
			r := betweenDoors(t, 24)
			r.receptacle(0, 18) // in the door itself: not on wall space
			return r
		}, []string{`0:36"-60"`}, "forums.mikeholt.com 2587744"},
		{"a run goes round a corner", func(t *testing.T) *room {
			r := oneWall(t, 60)
			r.room.Sides[1].Kind = plan.SideWall // 120 in more
			r.receptacle(1, 30)                  // 90 from one end, 90 from the other
			return r
		}, []string{`0:0"-18"`, `1:102"-120"`}, "210.52(A)(2): corners do not break, arithmetic"},
		{"it goes on over the first corner", func(t *testing.T) *room {
			r := square(t, 100)
			r.door(1, 0, 36)
			r.receptacle(2, 8) // 72 in from the door, round one corner
			return r
		}, []string{`2:80"-100" 3:0"-100" 0:0"-100"`}, "210.52(A)(2), arithmetic"},
		{"a closed ring with one", func(t *testing.T) *room {
			r := square(t, 72)
			r.receptacle(0, 36)
			return r
		}, []string{`1:36"-72" 2:0"-72" 3:0"-36"`}, "ring of 24 ft: 6 ft each way of one, so half is left; arithmetic"},
		{"a closed ring with two, opposite", func(t *testing.T) *room {
			r := square(t, 72)
			r.receptacle(0, 36)
			r.receptacle(2, 36)
			return r
		}, nil, "ceil(24/12) = 2 on a ring"},
		{"66 in high counts", func(t *testing.T) *room { return high(t, 66) }, nil, "210.52: not above 5-1/2 ft"},
		{"66-1/8 in high does not", func(t *testing.T) *room { return high(t, 66.125) }, []string{`0:0"-100"`}, "210.52: above 5-1/2 ft"},
		{"wholly switched does not count", func(t *testing.T) *room { return switched(t, plan.WhollySwitched) },
			[]string{`0:0"-100"`}, "210.52: it is the room's lighting outlet"},
		{"half switched counts", func(t *testing.T) *room { return switched(t, plan.HalfSwitched) }, nil, "common reading, from memory"},
		{"one to be removed does not count", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.opening(plan.Opening{Kind: "duplex", At: plan.OnFace(r.room.Sides[0].ID, in(50)), Height: plan.CentreAt(in(16)), Status: plan.StatusRemove})
			return r
		}, []string{`0:0"-100"`}, "it will not be there"},
		{"a railing is wall space", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.room.Sides[0].Kind = plan.SideRailing
			return r
		}, []string{`0:0"-100"`}, "210.52(A)(2)(3)"},
		{"a fireplace ends a wall space", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.door(0, 23, 54).Kind = plan.BreakFireplace
			return r
		}, nil, "210.52(A)(2)(1): 23 in is left at either end"},
		{"a window does not", func(t *testing.T) *room {
			r := oneWall(t, 100)
			b := r.door(0, 23, 54)
			b.Kind, b.Sill = plan.BreakWindow, in(30)
			return r
		}, []string{`0:0"-100"`}, "from memory: the floor line runs on below it"},
		{"a fixed cabinet ends it", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.fixture(plan.FixtureCabinet, 0, 23, 54)
			return r
		}, nil, "ecmweb.com, changes of 2011"},
		{"an upper cabinet does not", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.fixture(plan.FixtureUpper, 0, 23, 54).Bottom = in(54)
			return r
		}, []string{`0:0"-100"`}, "the floor line runs on below it"},
		{"a refrigerator ends it from 2023", func(t *testing.T) *room { return withRefrigerator(t, "2023") }, nil, "serveacademy.it, changes of 2023"},
		{"before 2023 it does not", func(t *testing.T) *room { return withRefrigerator(t, "2020") }, []string{`0:0"-100"`}, "2020 text"},
		{"a range in a row of counters is the counters' matter in any edition", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.edition = "2017"
			r.room.Use = plan.UseKitchen
			r.fixture(plan.FixtureCounter, 0, 0, 35)
			r.fixture(plan.FixtureRange, 0, 35, 30)
			r.fixture(plan.FixtureCounter, 0, 65, 35)
			return r
		}, nil, "210.52(C)(1): the space behind a range is the counter rule's"},
		{"a bath has no such rule", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.room.Use = plan.UseBath
			return r
		}, nil, "210.52(A) does not name it"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := tt.make(t).missed()
			if fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("not served: %q, want %q (%s)", got, tt.want, tt.source)
			}
		})
	}
}

func slider(t *testing.T) *room {
	r := oneWall(t, 288)
	b := r.door(0, 0, 288)
	b.Kind = plan.BreakSlider
	for i := range 6 {
		panel := plan.PanelMoving
		if i == 2 {
			panel = plan.PanelFixed
		}
		b.Panels = append(b.Panels, panel)
	}
	return r
}

func betweenDoors(t *testing.T, apart float64) *room {
	r := oneWall(t, 72+apart)
	r.door(0, 0, 36)
	r.door(0, 36+apart, 36)
	return r
}

func high(t *testing.T, height float64) *room {
	r := oneWall(t, 100)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(50)))
	o.Height = plan.CentreAt(in(height))
	r.opening(o)
	return r
}

func switched(t *testing.T, how plan.Switching) *room {
	r := oneWall(t, 100)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(50)))
	o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: how}}
	r.opening(o)
	return r
}

func withRefrigerator(t *testing.T, edition string) *room {
	r := oneWall(t, 100)
	r.edition = edition
	r.fixture(plan.FixtureRefrigerator, 0, 23, 54)
	return r
}

func TestCountersAreLeftToTheirOwnRule(t *testing.T) {
	r := oneWall(t, 100)
	r.room.Use = plan.UseKitchen
	r.fixture(plan.FixtureCounter, 0, 20, 60)
	found := r.reach()
	if len(found) != 1 || !found[0].IsOpen || found[0].Severity != rule.Note || found[0].Measured != rule.LengthOf(in(60)) {
		t.Errorf("a counter of 60 in between stubs of 20 in: %+v", found)
	}
}

// The end of a counter on the next wall takes the floor line of this one.
func TestACounterTakesTheCornerToo(t *testing.T) {
	r := oneWall(t, 100)
	r.room.Sides[3].Kind = plan.SideWall // runs up the sheet to the north side's left end
	r.room.Use = plan.UseKitchen
	r.fixture(plan.FixtureCounter, 0, 0, 90)
	r.room.Use = plan.UseKitchen
	r.fixture(plan.FixtureCounter, 3, 0, 96)
	if got := r.missed(); got != nil {
		t.Errorf("10 in beside one counter, nothing beside the other: not served %q", got)
	}
}

func TestRemedyStandsAtAWholeInch(t *testing.T) {
	r := oneWall(t, 142.125)
	q, err := r.reach()[0].Remedies[0].Edit.Apply(r.plan())
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range q.Openings() {
		if o.At.Along != in(71) {
			t.Errorf("the middle of 142-1/8 in: %s along, want 71 in", o.At.Along.Inches(8))
		}
	}
}
