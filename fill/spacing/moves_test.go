package spacing_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// left sums what receptacles at places, in sixteenths, leave of a wall, and finds its gaps.
func left(places []int, length int) (sum int, gaps [][2]int) {
	const reach = 72 * 16
	served := 0
	for _, p := range slices.Sorted(slices.Values(append(slices.Clone(places), length+2*reach))) {
		if from := min(p-reach, length); from > served {
			gaps = append(gaps, [2]int{served, from})
			sum += from - served
		}
		served = max(served, p+reach)
	}
	return sum, gaps
}

// A receptacle beside a gap of a wall is offered to be moved by just the length of the gap, 2 ft
// at most, where that closes it and opens nothing else, and where its box has room: half a plate
// of 2-3/4 in from the ends, and a plate from others. Nothing else is offered to be moved.
func TestAllMovesThatCloseAGapAreOffered(t *testing.T) {
	const far = 72 * 16
	offered, refused := 0, 0
	for seed := range uint64(300) {
		n := rand.New(rand.NewPCG(seed, 13))
		length := 16*60 + n.IntN(16*400)
		var places []int
		for at := n.IntN(far + 200); at < length && len(places) < 4; at += 16*100 + n.IntN(16*70) {
			places = append(places, at)
		}
		if n.IntN(3) == 0 && len(places) > 0 && places[0]+50 < length {
			places = append(places, places[0]+44+n.IntN(6)) // one close by
		}
		r := filltest.OneWall(t, float64(length)/16)
		for i, at := range places {
			o := r.Receptacle(0, float64(at)/16)
			o.Tag = fmt.Sprint(i)
		}
		before, gaps := left(places, length)
		var want []string
		for _, g := range gaps {
			for i, at := range places {
				by := g[1] - g[0]
				switch at {
				case g[0] - far:
				case g[1] + far:
					by = -by
				default:
					continue
				}
				to := slices.Clone(places)
				to[i] = at + by
				after, _ := left(to, length)
				isFree := to[i] >= 22 && to[i] <= length-22
				for k, other := range places {
					isFree = isFree && (k == i || max(other-to[i], to[i]-other) >= 44)
				}
				if max(by, -by) <= 24*16 && after == before-max(by, -by) && isFree {
					want = append(want, fmt.Sprintf("%d to %d", i, to[i]))
				} else {
					refused++
				}
			}
		}
		var got []string
		for _, f := range reach(r) {
			for _, remedy := range f.Remedies {
				if e, ok := remedy.Edit.(edit.MoveOpening); ok {
					o, _ := r.Plan().Opening(e.ID)
					got = append(got, fmt.Sprintf("%s to %d", o.Tag, e.To.Along*16/unit.Inch))
				}
			}
		}
		offered += len(want)
		slices.Sort(want)
		slices.Sort(got)
		if !slices.Equal(got, want) {
			t.Fatalf("seed %d: a wall of %d with receptacles at %v: offered %q, want %q", seed, length, places, got, want)
		}
	}
	if offered < 50 || refused < 50 {
		t.Errorf("%d offered, %d not", offered, refused)
	}
}
