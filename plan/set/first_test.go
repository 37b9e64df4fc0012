package set

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// What is looked for is found where a search of the standard library finds it, however the
// marks are spread.
func TestFirstFromIsWhereASearchFindsIt(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	spread := []func() uint64{
		rng.Uint64,
		func() uint64 { return rng.Uint64N(10) },
		func() uint64 { return 1<<63 + rng.Uint64N(4) },
		func() uint64 { return uint64(1) << rng.Uint64N(64) },
		func() uint64 { return []uint64{0, 1, 1<<64 - 1}[rng.IntN(3)] },
	}
	for range 2000 {
		next := spread[rng.IntN(len(spread))]
		marks := make([]uint64, 1+rng.IntN(chunkMax))
		for i := range marks {
			marks[i] = next()
		}
		slices.Sort(marks)
		for _, mark := range append(slices.Clone(marks), next(), next(), 0, 1<<64-1) {
			got := firstFrom(marks, marks[0], marks[len(marks)-1], mark)
			if want, _ := slices.BinarySearch(marks, mark); got != want {
				t.Fatalf("%d is at %d of %v, want %d", mark, got, marks, want)
			}
		}
	}
}
