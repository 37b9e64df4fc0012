package fill

import (
	"sync/atomic"
	"testing"
)

func TestEachIsDoneOnce(t *testing.T) {
	for _, n := range []int{0, 1, batch - 1, batch, batch + 1, 1000} {
		times := make([]atomic.Int64, n)
		onAllCores(n, batch, func(i int) { times[i].Add(1) })
		for i := range times {
			if got := times[i].Load(); got != 1 {
				t.Errorf("of %d things the one at %d is done %d times", n, i, got)
			}
		}
	}
}
