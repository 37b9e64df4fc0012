package work

import (
	"crypto/rand"
	"time"

	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/unit"
)

// Session is one user's work on one document after another, as in one window.
type Session struct {
	shop   *Shop
	user   User
	notify func(Changed)
	doc    *Document
	claim  *file.Claim // of the document's file, or nil
	saving *save       // under way, or nil
	// afterSave is what waits for that to end, and afterDrag what waits for a drag to, or
	// nil.
	afterSave []func()
	afterDrag func()
	looked    time.Time // when the file on disk was looked at last
	closed    bool
}

// NewSession begins with an empty plan in some units. Notify is told of every change of
// the document shown.
func NewSession(shop *Shop, user User, units unit.System, notify func(Changed)) *Session {
	s := &Session{shop: shop, user: user, notify: notify}
	s.doc = NewDocument(s.emptyPlan(units), shop.Post, s.changed)
	shop.sessions = append(shop.sessions, s)
	return s
}

// changed keeps what was changed and passes on that it was.
func (s *Session) changed(what Changed) {
	if s.closed {
		return
	}
	if what&PlanChanged != 0 {
		s.keep()
	}
	s.notify(what)
}

// Doc returns the document shown.
func (s *Session) Doc() *Document { return s.doc }

// IsClosed reports whether the session has ended.
func (s *Session) IsClosed() bool { return s.closed }

// emptyPlan is what a new document begins with.
func (s *Session) emptyPlan(units unit.System) plan.Plan {
	p := plan.New(s.untitled(), NewID(plan.KindLevel))
	p.Levels[0].Name = s.say("level.ground", "Ground floor")
	header := *p.Header
	header.Units = UnitsName(units)
	p.Header = &header
	return p
}

func (s *Session) untitled() string { return s.say("plan.untitled", "Untitled plan") }

// UnitsName returns the word of a plan for its units.
func UnitsName(s unit.System) string {
	if s == unit.Metric {
		return plan.UnitsMetric
	}
	return plan.UnitsImperial
}

// NewID makes a fresh ID; the system's random does not fail.
func NewID(kind byte) plan.ID {
	id, err := plan.NewID(kind, rand.Reader)
	if err != nil {
		panic(err)
	}
	return id
}

// EndDrag ends a gesture of the document, and does what waited for that.
func (s *Session) EndDrag() {
	s.doc.End()
	if do := s.afterDrag; do != nil {
		s.afterDrag = nil
		do()
	}
}

// Guarded goes on with do once nothing can be lost by it: at once where all is saved,
// else after the user has saved or let go.
func (s *Session) Guarded(do func()) {
	s.user.EndTyping()
	if s.waits(func() { s.Guarded(do) }) {
		return
	}
	if !s.doc.IsDirty() {
		s.forget()
		do()
		return
	}
	s.user.Ask(Question{
		Title: s.say("guard.title", "Save “{0}” first?", s.doc.Title()),
		Body:  s.say("guard.body", "It has changes that its file has not. What is not saved is lost."),
		Answers: []Answer{
			{s.say("answer.cancel", "Cancel"), nil},
			{s.say("answer.drop", "Do not save"), func() { s.forget(); do() }},
			{s.say("answer.save", "Save"), func() { s.saveThen(do) }},
		},
	})
}

// New begins an empty plan, in the units of the one before.
func (s *Session) New() {
	s.Guarded(func() { s.begin(s.emptyPlan(s.doc.System())) })
}

// Begin begins with a plan that stands in no file, such as a demo. Make is called once
// nothing can be lost.
func (s *Session) Begin(make func() (plan.Plan, error)) {
	s.Guarded(func() {
		p, err := make()
		if err != nil {
			s.tell(s.say("demo.failed", "The demo could not be built"), err, "")
			return
		}
		s.begin(p)
	})
}

func (s *Session) begin(p plan.Plan) {
	s.release()
	s.Replace(p, "", file.Stamp{})
}

// Replace shows another document. What was not saved of the one before is given up.
func (s *Session) Replace(p plan.Plan, path string, stamp file.Stamp) {
	s.user.Leaving()
	s.doc.close()
	s.doc = NewDocument(p, s.shop.Post, s.changed)
	s.doc.opened(path, stamp)
	s.user.Showing()
}

// Close ends the session once nothing can be lost by it, and then calls done. Where a
// question waits, that is to be answered first.
func (s *Session) Close(done func()) {
	if s.user.IsAsked() {
		return
	}
	s.Guarded(func() {
		s.closed = true
		s.doc.close()
		s.release()
		s.shop.gone(s)
		done()
	})
}

// keep offers the plan to the recovery, so that a kill loses little.
func (s *Session) keep() {
	if s.shop.autosave != nil && s.doc.IsDirty() {
		s.shop.autosave.Offer(s.doc.unsaved(time.Now()))
	}
}

// forget drops the document from the recovery.
func (s *Session) forget() {
	if s.shop.autosave != nil {
		s.shop.autosave.Forget(s.doc.name)
	}
}
