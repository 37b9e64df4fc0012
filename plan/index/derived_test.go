package index_test

import (
	"sync"
	"sync/atomic"
	"testing"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/plantest"
)

// What is derived is worked out once for one index and one key, and anew for the index of
// the next plan.
func TestDerivedIsWorkedOutOnce(t *testing.T) {
	ix := index.New(plantest.Bedroom())
	var times atomic.Int32
	var all sync.WaitGroup
	for range 20 {
		all.Go(func() {
			if got := index.Derived(ix, "rooms", func() int { times.Add(1); return 7 }); got != 7 {
				t.Errorf("it is %d", got)
			}
		})
	}
	all.Wait()
	index.Derived(ix, "others", func() int { times.Add(1); return 0 })
	index.Derived(ix.Updated(plan.Plan{}), "rooms", func() int { times.Add(1); return 0 })
	if n := times.Load(); n != 3 {
		t.Errorf("it is worked out %d times, want once each of three", n)
	}
}
