// Package heap says how much memory the program takes before it collects what it needs no
// more. The collector has one setting for the whole program, so one place holds it: what
// ends gives back what was usual, whatever else has begun meanwhile.
package heap

import (
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"sync"
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

// freePercent is what a judgement of a whole plan may take of memory, as much again four
// times over: it takes some three times what the plan does, and is over soon. With what is
// usual the collector runs through a plan of 50,000 openings again and again meanwhile, and
// without any bound the machine has to be asked for memory that was there already.
const freePercent = 400

// off is the setting of a collector that does not run.
const off = -1

var usual struct {
	sync.Mutex
	percent, limit           int64
	never, sparing, generous int
}

// Never keeps the collector from running until what is returned is called: nothing of what is
// made meanwhile is garbage yet. It goes before the others.
func Never() (end func()) { return during(&usual.never) }

// Sparingly makes the program collect what it needs no more sooner than it is wont to, for
// a large export, until what is returned is called. It goes before Freely.
func Sparingly() (end func()) { return during(&usual.sparing) }

// Freely makes the program collect later than it is wont to, for work that makes much at
// once and is over soon, until what is returned is called and the collector has run then:
// called back any sooner it would have to run at once, and whoever comes next would wait.
func Freely() (end func()) {
	settled := during(&usual.generous)
	return func() {
		until := &cycle{settled}
		runtime.AddCleanup(until, func(settled func()) { settled() }, settled)
	}
}

// cycle is what nobody holds, and is gone when the collector has run.
type cycle struct{ settled func() }

// during counts a kind of work until what is returned is called.
func during(of *int) (end func()) {
	usual.Lock()
	defer usual.Unlock()
	if usual.never+usual.sparing+usual.generous == 0 {
		usual.percent, usual.limit = read("/gc/gogc:percent"), debug.SetMemoryLimit(-1)
	}
	*of++
	settle()
	return func() {
		usual.Lock()
		defer usual.Unlock()
		*of--
		settle()
	}
}

// settle gives the collector what the work under way asks for.
func settle() {
	percent, limit := usual.percent, usual.limit
	switch {
	case usual.never > 0:
		percent = off
	case usual.sparing > 0:
		percent, limit = sparePercent, max(mostMemory, mostTimes*live())
	case usual.generous > 0:
		percent = freePercent
	}
	if limit != debug.SetMemoryLimit(-1) {
		debug.SetMemoryLimit(limit)
	}
	if percent != read("/gc/gogc:percent") {
		debug.SetGCPercent(int(percent))
	}
}

// live returns how many bytes were in use when the collector ran last.
func live() int64 { return read("/gc/heap/live:bytes") }

// read returns a figure of the runtime; none is 0.
func read(name string) int64 {
	sample := []metrics.Sample{{Name: name}}
	metrics.Read(sample)
	if sample[0].Value.Kind() != metrics.KindUint64 {
		return 0
	}
	return int64(sample[0].Value.Uint64())
}
