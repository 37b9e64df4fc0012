package work

import (
	"time"

	"studbay/plan/file"
)

// watchEvery is how often the files of open plans are looked at.
const watchEvery = 3 * time.Second

// Watch looks at the files of open plans again and again, beside the windows. It ends with
// the program.
func (s *Shop) Watch() {
	for range time.Tick(watchEvery) {
		s.Post(s.LookRound)
	}
}

// LookRound has every open plan's file looked at, and what was changed underneath told.
func (s *Shop) LookRound() {
	for _, open := range s.sessions {
		path, stamp := open.doc.path, open.doc.stamp
		if path == "" {
			continue
		}
		go func() { // a folder on the network may keep one waiting
			if changed, err := file.HasChanged(path, stamp); err == nil && changed {
				s.Post(open.noticeBetween)
			}
		}()
	}
}

// CameBack is told that the user has come back to the program from another.
func (s *Shop) CameBack() {
	for _, open := range s.sessions {
		open.noticeChange()
	}
}

// noticeBetween tells of a file changed underneath, unless the user is in the middle of
// something: then the next look round does.
func (s *Session) noticeBetween() {
	if s.doc.History().InGesture() || s.user.IsTyping() {
		return
	}
	s.noticeChange()
}

// noticeChange looks whether the plan's file was changed underneath, and offers to read
// it again.
func (s *Session) noticeChange() {
	path := s.doc.path
	if s.closed || s.saving != nil || path == "" || s.user.IsCovered() || time.Since(s.looked) < time.Second {
		return
	}
	s.looked = time.Now()
	changed, err := file.HasChanged(path, s.doc.stamp)
	if err != nil || !changed {
		return
	}
	now, err := file.StampOf(path)
	if err != nil {
		return
	}
	if now.IsZero() {
		s.doc.standsApart(now)
		s.tell(s.say("underneath.gone", "The plan's file is gone"), nil,
			s.say("underneath.gone.body", "{0} was moved or deleted. The plan is still open here: save it to keep it.", path))
		return
	}
	body := s.say("underneath.body", "{0} was changed by another program.", path)
	if s.doc.IsDirty() {
		body += " " + s.say("underneath.lose", "Reading it again discards your changes here.")
	}
	s.user.Ask(Question{
		Title: s.say("underneath.title", "Read the plan again?"), Body: body,
		Answers: []Answer{
			{s.say("answer.keep-mine", "Keep what is here"), func() { s.doc.standsApart(now) }},
			{s.say("answer.read", "Read it again"), func() { s.forget(); s.load(path) }},
		},
	})
}
