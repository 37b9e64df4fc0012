package fewest_test

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/fewest"
	"studbay/plan/unit"
)

// No choice of fewer places serves a part of a line or a ring, and none of as many is
// worth more: held against all choices there are, of ten thousand lines and rings.
func TestNoChoiceIsBetter(t *testing.T) {
	for seed := range uint64(10_000) {
		r := rand.New(rand.NewPCG(seed, 7))
		l := aLine(r)
		want := all{len: len(l.Places), serves: l.serves, worth: l.worth}.best()
		got, ok := fewest.Line(l).Pick()
		if !same(got, ok, want) {
			t.Fatalf("seed %d: %+v picks %v %v, want as good as %v", seed, l, got, ok, want)
		}
		ring := aRing(r)
		want = all{len: len(ring.Places), serves: ring.serves, worth: ring.worth}.best()
		got, ok = fewest.Ring(ring).Pick()
		if !same(got, ok, want) {
			t.Fatalf("seed %d: %+v picks %v %v, want as good as %v", seed, ring, got, ok, want)
		}
	}
}

func same(got fewest.Choice, ok bool, want *fewest.Choice) bool {
	if want == nil || !ok {
		return want == nil && !ok
	}
	return len(got.Chosen) == len(want.Chosen) && got.Worth == want.Worth
}

// all tries every choice.
type all struct {
	len    int
	serves func(chosen []int) bool
	worth  func(chosen []int) fewest.Worth
}

func (a all) best() (best *fewest.Choice) {
	for bits := range 1 << a.len {
		var chosen []int
		for i := range a.len {
			if bits&(1<<i) != 0 {
				chosen = append(chosen, i)
			}
		}
		if !a.serves(chosen) {
			continue
		}
		c := fewest.Choice{Chosen: chosen, Worth: a.worth(chosen)}
		if best == nil || len(chosen) < len(best.Chosen) || len(chosen) == len(best.Chosen) && c.Worth.Compare(best.Worth) < 0 {
			best = &c
		}
	}
	return best
}

type line fewest.Line

func aLine(r *rand.Rand) line {
	l := line{From: unit.Length(r.IntN(4)), Reach: unit.Length(1 + r.IntN(4)), Beside: beside}
	l.To = l.From + unit.Length(r.IntN(14))
	l.Places = somePlaces(r, int(l.To)+6)
	if r.IntN(2) == 0 {
		before := l.From - l.Reach
		l.Before = &before
	}
	if r.IntN(2) == 0 {
		after := l.To + l.Reach
		l.After = &after
	}
	return l
}

func somePlaces(r *rand.Rand, below int) (places []fewest.Place) {
	for at := 0; at < below && len(places) < 8; at++ {
		if r.IntN(3) > 0 {
			places = append(places, fewest.Place{At: unit.Length(at), Worth: fewest.Worth{int64(r.IntN(2)), int64(r.IntN(3))}})
		}
	}
	return places
}

// beside tells neighbors by how unevenly they stand about 7.
func beside(left, right unit.Length) fewest.Worth {
	return fewest.Worth{0, 0, int64((left + right - 14).Abs()), int64((right - left) * (right - left))}
}

// serves looks at every half of a step: places, ends and reach are whole ones.
func (l line) serves(chosen []int) bool {
	if l.From >= l.To {
		return true
	}
	for twice := 2 * l.From; twice <= 2*l.To; twice++ {
		served := false
		for _, i := range chosen {
			served = served || (2*l.Places[i].At-twice).Abs() <= 2*l.Reach
		}
		if !served {
			return false
		}
	}
	return true
}

func (l line) worth(chosen []int) (w fewest.Worth) {
	var at []unit.Length
	if l.Before != nil {
		at = append(at, *l.Before)
	}
	for _, i := range chosen {
		w = plus(w, l.Places[i].Worth)
		at = append(at, l.Places[i].At)
	}
	if l.After != nil {
		at = append(at, *l.After)
	}
	if len(chosen) == 0 {
		return fewest.Worth{}
	}
	for i := 1; i < len(at); i++ {
		w = plus(w, l.Beside(at[i-1], at[i]))
	}
	return w
}

func plus(a, b fewest.Worth) fewest.Worth {
	for i := range a {
		a[i] += b[i]
	}
	return a
}

type ring fewest.Ring

func aRing(r *rand.Rand) ring {
	g := ring{Length: unit.Length(2 + r.IntN(16)), Reach: unit.Length(1 + r.IntN(4))}
	g.Places = somePlaces(r, int(g.Length))
	return g
}

func (g ring) serves(chosen []int) bool {
	for twice := range 2 * g.Length {
		served := false
		for _, i := range chosen {
			off := (2*g.Places[i].At - twice).Abs()
			served = served || min(off, 2*g.Length-off) <= 2*g.Reach
		}
		if !served {
			return false
		}
	}
	return true
}

func (g ring) worth(chosen []int) (w fewest.Worth) {
	for _, i := range chosen {
		w = plus(w, g.Places[i].Worth)
	}
	return w
}
