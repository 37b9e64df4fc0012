package board

import "time"

// hoverEvery is how far apart the moves of a pointer with nothing in hand are told: each
// has the window painted, which costs a computer without a graphics card more than
// anything of ours, and marks on the tapes need no more than 20 a second.
const hoverEvery = 50 * time.Millisecond

// limiter lets things happen no more often than a length of time apart. Of those that come
// sooner the last happens when the time is over. The zero value has all happen at once.
type limiter struct {
	apart time.Duration
	now   func() time.Time
	// after runs a function on the window's goroutine once a time is over.
	after func(time.Duration, func())

	last    time.Time // when one happened
	waiting func()
	due     bool // after was asked for and has not come
}

// do has something happen now, or as soon as it may.
func (p *limiter) do(f func()) {
	if p.apart == 0 {
		f()
		return
	}
	wait := p.apart - p.now().Sub(p.last)
	if wait <= 0 {
		p.drop()
		p.last = p.now()
		f()
		return
	}
	p.waiting = f
	if p.due {
		return
	}
	p.due = true
	p.after(wait, func() {
		p.due = false
		p.flush()
	})
}

// flush has what waits happen now: before a press, which rests on it.
func (p *limiter) flush() {
	if f := p.waiting; f != nil {
		p.waiting, p.last = nil, p.now()
		f()
	}
}

// drop forgets what waits.
func (p *limiter) drop() { p.waiting = nil }

// afterOn returns what runs a function by way of later once a time is over.
func afterOn(later func(func())) func(time.Duration, func()) {
	return func(d time.Duration, f func()) { time.AfterFunc(d, func() { later(f) }) }
}
