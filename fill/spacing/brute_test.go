package spacing_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

// A walled room is looked at point by point, an inch apart round its walls: whole inches hold
// all that is in it, points stand half an inch and receptacles a quarter of an inch past one.
type walled struct {
	*ruletest.Room
	w, d   int          // inches
	things []thing      // what stands at the walls
	plugs  [][2]float64 // along all walls, and how high
}

// thing takes a part of the walls, in inches along all of them.
type thing struct {
	kind     string
	from, to int
	low      int // of a fixture, its bottom
	high     int
}

func (r *walled) around() int { return 2 * (r.w + r.d) }

// start is where a side begins along all of them.
func (r *walled) start(side int) int { return []int{0, r.w, r.w + r.d, 2*r.w + r.d}[side] }

func (r *walled) length(side int) int { return []int{r.w, r.d}[side%2] }

// fixture stands one at a side, 24 in deep; near a corner its end takes the next wall too.
func (r *walled) fixture(kind plan.FixtureKind, side, at, width, low, high int) {
	r.Fixture(kind, side, float64(at), float64(width), func(f *plan.Fixture) {
		f.Bottom, f.Height = ruletest.In(float64(low)), ruletest.In(float64(high-low))
	})
	s := r.start(side)
	r.things = append(r.things, thing{string(kind), s + at, s + at + width, low, high})
	if at <= 1 {
		end := (s + r.around() - 24) % r.around()
		r.things = append(r.things, thing{string(kind), end, end + 24, low, high})
	}
	if next := s + r.length(side); at+width >= r.length(side)-1 {
		r.things = append(r.things, thing{string(kind), next, next + 24, low, high})
	}
}

// opens cuts a break into a side.
func (r *walled) opens(kind plan.BreakKind, side, at, width, sill int, panels ...plan.Panel) {
	r.Break(kind, side, float64(at), float64(width), func(b *plan.Break) { b.Sill, b.Panels = ruletest.In(float64(sill)), panels })
	s := r.start(side)
	r.things = append(r.things, thing{string(kind), s + at, s + at + width, sill, 80})
	for i, p := range panels {
		r.things = append(r.things, thing{"panel " + string(p), s + at + i*width/len(panels), s + at + (i+1)*width/len(panels), 0, 80})
	}
}

func (r *walled) plug(kind string, side, at int, up float64) {
	r.Opening(kind, r.On(side, float64(at)+0.25), ruletest.Up(up))
	r.plugs = append(r.plugs, [2]float64{float64(r.start(side)+at) + 0.25, up})
}

// at yields what is at a place along all walls.
func (r *walled) at(place float64, is func(thing) bool) bool {
	for _, t := range r.things {
		for _, turn := range []int{-r.around(), 0, r.around()} {
			if p := place + float64(turn); float64(t.from) < p && p < float64(t.to) && is(t) {
				return true
			}
		}
	}
	return false
}

// missed says of each point whether it is line and no plug that counts is within reach of it
// along the line; runs shorter than least are none.
func (r *walled) missed(isLine func(place float64) bool, counts func(plug [2]float64) bool, reach, least int) []bool {
	n := r.around()
	line, out := make([]bool, n), make([]bool, n)
	for i := range line {
		line[i] = isLine(float64(i) + 0.5)
	}
	for i := range line {
		if !line[i] {
			continue
		}
		length, served := 1, false
		for _, way := range []int{1, -1} {
			for k := 0; k < n; k++ {
				at := ((i+way*k)%n + n) % n
				if !line[at] {
					break
				}
				length += min(k, 1)
				for _, p := range r.plugs {
					away := (p[0] - float64(at) - 0.5) * float64(way) // past this point
					isHere := int(p[0]) == at
					served = served || isHere && counts(p) && float64(k)+away <= float64(reach)
				}
			}
		}
		out[i] = !served && length >= least
	}
	return out
}

// told says of each point whether a finding's stretch holds it.
func (r *walled) told(found []rule.Finding) []bool {
	out := make([]bool, r.around())
	for _, f := range found {
		for _, s := range f.Stretches {
			side := r.SideAt(s.Host)
			if side < 0 || f.IsOpen {
				continue
			}
			for i := range r.length(side) {
				at := unit.Length(i)*unit.Inch + unit.Inch/2
				out[r.start(side)+i] = out[r.start(side)+i] || s.From <= at && at <= s.To
			}
		}
	}
	return out
}

func (r *walled) holds(t *testing.T, name string, want, got []bool) {
	t.Helper()
	for i := range want {
		if want[i] != got[i] {
			t.Errorf("%s, %s, %d by %d with %v and receptacles at %v: %d in round is not served %v, told %v", name, r.Edition, r.w, r.d, r.things, r.plugs, i, want[i], got[i])
			return
		}
	}
}

// aWalled makes a room of a use and an edition by chance.
func aWalled(t *testing.T, use plan.Use, n *rand.Rand) *walled {
	h := ruletest.New(t)
	h.Edition = []string{"2014", "2017", "2020", "2023"}[n.IntN(4)]
	w, d := 70+n.IntN(200), 60+n.IntN(160)
	return &walled{Room: h.Square(use, 0, 0, float64(w), float64(d)), w: w, d: d}
}

// place draws a side and a place on it where so much has room, now and then in a corner.
func (r *walled) place(n *rand.Rand, width int) (side, at int, ok bool) {
	side = n.IntN(4)
	room := r.length(side) - width
	if room < 0 {
		return 0, 0, false
	}
	switch n.IntN(4) {
	case 0:
		return side, 0, true
	case 1:
		return side, room, true
	}
	return side, n.IntN(room + 1), true
}

// 210.52(A)(1) to (3), the floor line read point by point: doorways, fireplaces, moving
// panels and fixed cabinets break it, of 2014 those with a work surface too and from 2023 on
// appliances; windows, furniture and what hangs do not. No point is more than 6 ft along it
// from a receptacle that is no higher than 5-1/2 ft, in no cabinet and in no glass.
func TestWallsPointByPoint(t *testing.T) {
	spoke := 0
	for seed := range uint64(200) {
		n := rand.New(rand.NewPCG(seed, 3))
		r := aWalled(t, plan.UseBedroom, n)
		for range n.IntN(4) {
			width := 20 + 2*n.IntN(20)
			side, at, ok := r.place(n, width)
			if !ok {
				continue
			}
			switch n.IntN(5) {
			case 0:
				r.opens(plan.BreakDoor, side, at, width, 0)
			case 1:
				r.opens(plan.BreakFireplace, side, at, width, 0)
			case 2:
				r.opens(plan.BreakWindow, side, at, width, []int{0, 12, 30}[n.IntN(3)])
			case 3:
				r.opens(plan.BreakPassage, side, at, width, []int{0, 0, 10, 30}[n.IntN(4)])
			case 4:
				panels := [][]plan.Panel{{plan.PanelFixed, plan.PanelMoving}, {plan.PanelMoving, plan.PanelFixed}, {plan.PanelMoving, plan.PanelMoving}}
				r.opens(plan.BreakSlider, side, at, width, 0, panels[n.IntN(3)]...)
			}
		}
		for range n.IntN(5) {
			width := 12 + n.IntN(40)
			side, at, ok := r.place(n, width)
			if !ok {
				continue
			}
			switch n.IntN(5) {
			case 0:
				r.fixture(plan.FixtureCabinet, side, at, width, 0, 84)
			case 1:
				r.fixture(plan.FixtureCounter, side, at, width, 0, 36)
			case 2:
				r.fixture(plan.FixtureRefrigerator, side, at, width, 0, 70)
			case 3:
				r.fixture(plan.FixtureBed, side, at, width, 0, 24)
			case 4:
				r.fixture(plan.FixtureUpper, side, at, width, 54, 84)
			}
		}
		for range n.IntN(6) {
			if side, at, ok := r.place(n, 1); ok {
				r.plug("duplex", side, at, []float64{16, 16, 42, 60, 66, 66.0625, 80}[n.IntN(7)])
			}
		}
		want := r.missed(func(place float64) bool {
			return !r.at(place, func(x thing) bool {
				switch x.kind {
				case "door", "fireplace", "panel moving", "fixed cabinet":
					return true
				case "passage":
					return x.low == 0
				case "counter":
					return r.Edition == "2014"
				case "refrigerator":
					return r.Edition == "2023"
				}
				return false
			})
		}, func(p [2]float64) bool {
			return p[1] <= 66 && !r.at(p[0], func(x thing) bool {
				switch x.kind {
				case "fixed cabinet", "counter", "upper cabinet":
					return float64(x.low) <= p[1] && p[1] <= float64(x.high)
				case "window", "passage", "slider":
					return float64(x.low) < p[1] && p[1] < 80
				}
				return false
			})
		}, 72, 24)
		found := r.Found(&spacing.WallReach)
		spoke += min(len(found), 1)
		r.holds(t, fmt.Sprint("seed ", seed), want, r.told(found))
	}
	if spoke < 100 {
		t.Errorf("%d rooms lack a receptacle, the rooms are too tame", spoke)
	}
}

// 210.52(C)(1) and (3), the wall line of counters read point by point: sinks, ranges,
// refrigerators, tall cabinets and doors part it, windows do not; a dishwasher at a counter
// is one. No point is more than 24 in along it from a receptacle in the wall above it, from
// its top up to 20 in, in no cabinet and in no glass.
func TestCountersPointByPoint(t *testing.T) {
	spoke := 0
	for seed := range uint64(200) {
		n := rand.New(rand.NewPCG(seed, 4))
		r := aWalled(t, plan.UseKitchen, n)
		for range 1 + n.IntN(4) {
			width := 8 + n.IntN(100)
			if side, at, ok := r.place(n, width); ok {
				r.fixture(plan.FixtureCounter, side, at, width, 0, 36)
			}
		}
		for range n.IntN(5) {
			width := 18 + 2*n.IntN(10)
			side, at, ok := r.place(n, width)
			if !ok {
				continue
			}
			switch n.IntN(6) {
			case 0:
				r.fixture(plan.FixtureRange, side, at, width, 0, 36)
			case 1:
				r.fixture(plan.FixtureRefrigerator, side, at, width, 0, 70)
			case 2:
				r.fixture(plan.FixtureUpper, side, at, width, 54, 84)
			case 3:
				r.fixture(plan.FixtureCabinet, side, at, width, 0, 84)
			case 4:
				r.opens(plan.BreakDoor, side, at, width, 0)
			case 5:
				r.opens(plan.BreakWindow, side, at, width, 40)
			}
		}
		for range n.IntN(6) {
			if side, at, ok := r.place(n, 1); ok {
				r.plug("counter", side, at, []float64{35.9375, 36, 39, 42, 48, 56, 56.0625}[n.IntN(7)])
			}
		}
		isCounter := func(place float64) bool {
			return r.at(place, func(x thing) bool { return x.kind == "counter" })
		}
		want := r.missed(func(place float64) bool {
			return isCounter(place) && !r.at(place, func(x thing) bool {
				switch x.kind {
				case "range", "refrigerator", "fixed cabinet", "door":
					return true
				}
				return false
			})
		}, func(p [2]float64) bool {
			return 36 <= p[1] && p[1] <= 56 && isCounter(p[0]) && !r.at(p[0], func(x thing) bool {
				switch x.kind {
				case "fixed cabinet", "upper cabinet":
					return float64(x.low) <= p[1] && p[1] <= float64(x.high)
				case "counter":
					return p[1] == 36 // level with the top, it is in the cabinet's line
				case "window":
					return 40 < p[1] && p[1] < 80
				}
				return false
			})
		}, 24, 12)
		found := r.Found(&spacing.CounterReach)
		spoke += min(len(found), 1)
		r.holds(t, fmt.Sprint("seed ", seed), want, r.told(found))
	}
	if spoke < 100 {
		t.Errorf("%d kitchens lack a receptacle, the kitchens are too tame", spoke)
	}
}
