package desk

import "time"

// pace keeps the right column from slowing a drag down: while one is under way the
// column is brought up to the document for a small share of the time only.
type pace struct {
	desk  *Desk
	eases bool          // a drag is under way
	ended time.Time     // of the last time
	took  time.Duration // that it took
	waits bool          // it will be done in a while
	now   func() time.Time
}

// restShare is how many times as long as a refresh takes comes between two.
const restShare = 4

func newPace(d *Desk) *pace { return &pace{desk: d, now: time.Now} }

// refresh brings the column up to the document, now or in a while.
func (p *pace) refresh() {
	if rest := restShare*p.took - p.now().Sub(p.ended); p.eases && rest > 0 {
		p.later(rest)
		return
	}
	began := p.now()
	p.desk.column.refresh()
	p.ended = p.now()
	p.took = p.ended.Sub(began)
}

// later refreshes after a while, once however often it is asked.
func (p *pace) later(rest time.Duration) {
	if p.waits {
		return
	}
	p.waits = true
	time.AfterFunc(rest, func() {
		p.desk.house.post(func() {
			p.waits = false
			if !p.desk.session.IsClosed() {
				p.refresh()
			}
		})
	})
}
