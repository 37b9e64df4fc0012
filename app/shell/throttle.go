package shell

import "time"

// Throttle keeps what is slow to refresh from slowing a drag down: while one is under way
// it is brought up to date for a small share of the time only.
type Throttle struct {
	refresh func()
	post    func(func())
	eases   bool          // a drag is under way
	ended   time.Time     // of the last time
	took    time.Duration // that it took
	waits   bool          // it will be done in a while
	now     func() time.Time
}

// restShare is how many times as long as a refresh takes comes between two.
const restShare = 4

// NewThrottle makes one. Post brings a function to the window's goroutine.
func NewThrottle(post func(func()), refresh func()) *Throttle {
	return &Throttle{refresh: refresh, post: post, now: time.Now}
}

// Ease says whether a drag is under way.
func (p *Throttle) Ease(on bool) { p.eases = on }

// Refresh brings it up to date, now or in a while.
func (p *Throttle) Refresh() {
	if rest := restShare*p.took - p.now().Sub(p.ended); p.eases && rest > 0 {
		p.later(rest)
		return
	}
	began := p.now()
	p.refresh()
	p.ended = p.now()
	p.took = p.ended.Sub(began)
}

// later refreshes after a while, once however often it is asked.
func (p *Throttle) later(rest time.Duration) {
	if p.waits {
		return
	}
	p.waits = true
	time.AfterFunc(rest, func() {
		p.post(func() {
			p.waits = false
			p.Refresh()
		})
	})
}
