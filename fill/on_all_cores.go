package fill

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// batch is how many rooms with their openings a core takes at a time: enough that handing
// them out costs nothing, few enough that no core waits long for another.
const batch = 8

// onAllCores does something with each of n things, several at once, a core taking so many at
// a time, and returns when all is done.
func onAllCores(n, batch int, do func(i int)) {
	var next atomic.Int64
	var done sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), (n+batch-1)/batch) {
		done.Go(func() {
			for {
				from := int(next.Add(int64(batch))) - batch
				if from >= n {
					return
				}
				for i := from; i < min(from+batch, n); i++ {
					do(i)
				}
			}
		})
	}
	done.Wait()
}
