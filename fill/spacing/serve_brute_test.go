package spacing_test

import (
	"math/rand/v2"
	"os"
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
)

// inches is a room's walls, or its counters, as a round of whole inches.
type inches struct {
	line  []bool // there is something to serve
	may   []bool // one may stand at the beginning of the inch
	reach int
	least int   // shorter runs want none
	plugs []int // there already, each at the beginning of an inch
}

// servedFrom lists the cells that one at a place serves whole.
func (l *inches) servedFrom(place int) (all []int) {
	n := len(l.line)
	for _, way := range []int{0, -1} { // to the right, to the left
		for k := 0; k < min(l.reach, n); k++ {
			at := place + k
			if way < 0 {
				at = place - 1 - k
			}
			at = (at%n + n) % n
			if !l.line[at] {
				break
			}
			all = append(all, at)
		}
	}
	return all
}

// wanted marks the cells of runs that are long enough and not served by what is there.
func (l *inches) wanted() (want cells) {
	n := len(l.line)
	for i := range l.line {
		length := 0
		for _, way := range []int{1, -1} {
			for k := 0; k < n && l.line[((i+way*k)%n+n)%n]; k++ {
				length++
			}
		}
		if l.line[i] && length-1 >= l.least {
			want.add(i)
		}
	}
	for _, p := range l.plugs {
		var of cells
		for _, c := range l.servedFrom(p) {
			of.add(c)
		}
		want = want.without(&of)
	}
	return want
}

// cells is a set of the inches round a room, which has no more than 596.
type cells [12]uint64

func (c *cells) add(at int) { c[at/64] |= 1 << (at % 64) }

func (c *cells) has(at int) bool { return c[at/64]>>(at%64)&1 == 1 }

func (c cells) without(other *cells) cells {
	for i := range c {
		c[i] &^= other[i]
	}
	return c
}

// search tries all choices of places: for the first cell that is not served each place that
// serves it, so that none is left out.
type search struct {
	around  int
	serving [][]int // of each cell, the places that serve it
	serves  []cells // of each place
}

func (l *inches) search() *search {
	n := len(l.line)
	s := &search{around: n, serving: make([][]int, n), serves: make([]cells, n)}
	for place := range n {
		if !l.may[place] {
			continue
		}
		var of cells
		for _, c := range l.servedFrom(place) {
			if !of.has(c) {
				s.serving[c] = append(s.serving[c], place)
			}
			of.add(c)
		}
		s.serves[place] = of
	}
	return s
}

// within reports whether so many more serve all that is wanted.
func (s *search) within(want cells, count int) bool {
	first := 0
	for first < s.around && !want.has(first) {
		first++
	}
	switch {
	case first == s.around:
		return true
	case count == 0:
		return false
	}
	for _, place := range s.serving[first] {
		of := s.serves[place]
		if s.within(want.without(&of), count-1) {
			return true
		}
	}
	return false
}

// most is how many of one stretch are tried; those that want more are left out.
const most = 2

// fewest returns the least number that serves all of each stretch, by trying all; false where
// a stretch takes more than are tried, or cannot be served.
func (l *inches) fewest() (sum int, ok bool) {
	all, want := l.search(), l.wanted()
	for _, stretch := range l.stretches() {
		var of cells
		for _, c := range stretch {
			if want.has(c) {
				of.add(c)
			}
		}
		n := 0
		for n <= most && !all.within(of, n) {
			n++
		}
		if n > most {
			return 0, false
		}
		sum += n
	}
	return sum, true
}

// stretches lists the cells of each unbroken part of the line.
func (l *inches) stretches() (all [][]int) {
	n := len(l.line)
	first := 0
	for first < n && l.line[first] {
		first++
	}
	open := false
	for k := range n {
		at := (first + k) % n
		switch {
		case !l.line[at]:
			open = false
		case open:
			all[len(all)-1] = append(all[len(all)-1], at)
		default:
			all, open = append(all, []int{at}), true
		}
	}
	return all
}

// aServed is a room by chance with its walls and counters in whole inches.
type aServed struct {
	*ruletest.Room
	lengths         []int
	walls, counters inches
}

// aRoomToServe makes one of four walls or six, with doors, windows, cabinets, counters, beds,
// appliances and receptacles.
func aRoomToServe(t *testing.T, n *rand.Rand) *aServed {
	h := ruletest.New(t)
	h.Edition = []string{"2014", "2017", "2020", "2023"}[n.IntN(4)]
	use := []plan.Use{plan.UseBedroom, plan.UseLiving, plan.UseKitchen}[n.IntN(3)]
	w, d := 80+n.IntN(90), 70+n.IntN(60)
	r := &aServed{lengths: []int{w, d, w, d}}
	if n.IntN(3) == 0 {
		// No arm is so narrow that a counter in it stands against the wall opposite as well.
		w1, d1 := 30+n.IntN(w-60), 30+n.IntN(d-60)
		r.lengths = []int{w, d1, w - w1, d - d1, w1, d}
		f := func(i int) float64 { return float64(i) }
		r.Room = h.Room(use, 0, 0, f(w), 0, f(w), f(d1), f(w1), f(d1), f(w1), f(d), 0, f(d))
	} else {
		r.Room = h.Square(use, 0, 0, float64(w), float64(d))
	}
	around := 0
	for _, l := range r.lengths {
		around += l
	}
	r.walls = inches{make([]bool, around), make([]bool, around), 72, 24, nil}
	r.counters = inches{make([]bool, around), make([]bool, around), 24, 12, nil}
	start := 0
	for side, length := range r.lengths {
		r.furnish(n, side, start, length)
		start += length
	}
	return r
}

// margin is how far the adversary keeps from corners, and from the ends of things: farther than
// any box of one gang needs.
const margin = 5

// furnish puts things before a wall, none within 30 in of a corner but doors and windows.
func (r *aServed) furnish(n *rand.Rand, side, start, length int) {
	mark := func(of []bool, from, to int, is bool) {
		for i := max(from, 0); i < min(to, length); i++ {
			of[start+i] = is
		}
	}
	mark(r.walls.line, 0, length, true)
	mark(r.walls.may, margin, length-margin, true)
	isKitchen := r.Room.Room.Use == plan.UseKitchen
	for at := n.IntN(40); at < length; at += 6 + n.IntN(60) {
		width := 18 + 2*n.IntN(25)
		if at+width > length {
			return
		}
		clear := func() { mark(r.walls.may, at-margin, at+width+margin, false) }
		isClear := at >= 30 && at+width <= length-30
		switch kind := n.IntN(6); {
		case kind == 0:
			r.Break(plan.BreakDoor, side, float64(at), float64(width))
			mark(r.walls.line, at, at+width, false)
			clear()
		case kind == 1:
			sill := []float64{0, 30}[n.IntN(2)]
			r.Break(plan.BreakWindow, side, float64(at), float64(width), func(b *plan.Break) { b.Sill = ruletest.In(sill) })
			if sill == 0 {
				clear()
			}
		case kind == 2 && isClear:
			r.Fixture(plan.FixtureCabinet, side, float64(at), float64(width))
			mark(r.walls.line, at, at+width, false)
			clear()
		case kind == 3 && isClear && !isKitchen:
			r.Fixture(plan.FixtureBed, side, float64(at), float64(width))
		case kind >= 3 && isClear && isKitchen:
			r.Fixture(plan.FixtureCounter, side, float64(at), float64(width))
			mark(r.counters.line, at, at+width, true)
			mark(r.counters.may, at+margin, at+width-margin+1, true)
			clear()
			mark(r.walls.line, at, at+width, false) // left to the rule on counters: see the doc of wall-reach
			if n.IntN(4) == 0 {
				r.Opening("counter", r.On(side, float64(at+margin)), ruletest.Up(42))
				r.counters.plugs = append(r.counters.plugs, start+at+margin)
			}
		case kind == 4 && !isKitchen:
			r.Opening("duplex", r.On(side, float64(at)), ruletest.Up(16))
			r.walls.plugs = append(r.walls.plugs, start+at)
			mark(r.walls.may, at-margin, at+margin, false)
		}
		at += width
	}
}

// TestServeIsNeverBeaten: of small rooms made by chance, no choice of places a whole inch apart,
// clear of everything by more than a box needs, serves all of a room's walls (210.52(A)(1) and
// (2)) or counters ((C)(1)) by fewer than are proposed; and what is proposed serves it. Ten
// thousand rooms with STUDBAY_LONG set.
func TestServeIsNeverBeaten(t *testing.T) {
	rooms := uint64(250)
	if os.Getenv("STUDBAY_LONG") != "" {
		rooms = 10_000
	}
	added, met := 0, 0
	for seed := range rooms {
		n := rand.New(rand.NewPCG(seed, 21))
		r := aRoomToServe(t, n)
		s, after := serve(t, r.Made(), r.Room.Room.ID)
		if len(s.Left) == 0 {
			if left := unserved(after, r.Room.Room.ID); left > 0 {
				t.Errorf("seed %d: %v are left unserved and not told", seed, left)
			}
		}
		for _, try := range []struct {
			of        string
			isCounter bool
			line      *inches
		}{{"walls", false, &r.walls}, {"counters", true, &r.counters}} {
			count, missed := 0, false
			for _, l := range s.Lines {
				if l.IsCounter == try.isCounter {
					count, missed = count+l.Added, missed || l.Missed
				}
			}
			added += count
			switch fewest, ok := try.line.fewest(); {
			case !ok:
			case missed || fewest < count:
				t.Errorf("seed %d, %s of %s, walls of %v: %d are proposed, a part left: %v; %d serve them", seed, try.of, r.Edition, r.lengths, count, missed, fewest)
			case fewest == count && count > 0:
				met++
			}
		}
	}
	if added < int(rooms) || met < int(rooms)/4 {
		t.Errorf("%d are proposed in %d rooms, and met %d times: the rooms are too tame", added, rooms, met)
	}
}
