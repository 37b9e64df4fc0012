package paint

import (
	"runtime/debug"
	"runtime/metrics"
)

// How much an export may take. Half of what is usual before the collector runs costs a
// large set a tenth of its time and saves a third of its memory; the bound on the whole
// keeps the short-lived pages of the end, as they are packed, from piling up. Twice what
// is in use is for plans so large that the bound would be in the way.
const (
	sparePercent = 50
	mostMemory   = 90 << 20
	mostTimes    = 2
)

// Sparingly makes the program collect what it needs no more sooner than it is wont to, for
// a large export, until what is returned is called.
func Sparingly() (usual func()) {
	inUse := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(inUse)
	live := int64(0)
	if inUse[0].Value.Kind() == metrics.KindUint64 {
		live = int64(inUse[0].Value.Uint64())
	}
	limit := debug.SetMemoryLimit(max(mostMemory, mostTimes*live))
	percent := debug.SetGCPercent(sparePercent)
	return func() {
		debug.SetGCPercent(percent)
		debug.SetMemoryLimit(limit)
	}
}
