package heap

import (
	"math"
	"runtime"
	"runtime/debug"
	"testing"
	"time"
)

// The collector is set by what is under way, the sparing before the generous, and as it was
// when the last has ended, in whatever order they end.
func TestWhatIsUsualComesBack(t *testing.T) {
	debug.SetGCPercent(100)
	debug.SetMemoryLimit(math.MaxInt64)
	never := Never()
	wants(t, off, false)
	begun := Freely()
	wants(t, off, false)
	never()
	wants(t, freePercent, false)
	sparing := Sparingly()
	wants(t, sparePercent, true)
	again := Freely()
	wants(t, sparePercent, true)
	begun()
	wants(t, sparePercent, true)
	sparing()
	wants(t, freePercent, false)
	again()
	wants(t, freePercent, false)
	for range 100 { // what the collector gives back is told a moment later
		runtime.GC()
		if read("/gc/gogc:percent") == 100 {
			break
		}
		time.Sleep(10 * time.Millisecond)
	}
	wants(t, 100, false)
}

func wants(t *testing.T, percent int64, bounded bool) {
	t.Helper()
	if got := read("/gc/gogc:percent"); got != percent {
		t.Errorf("the collector runs at %d %%, want %d", got, percent)
	}
	if got := debug.SetMemoryLimit(-1); got < math.MaxInt64 != bounded {
		t.Errorf("memory is bounded to %d, want a bound: %v", got, bounded)
	}
}
