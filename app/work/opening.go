package work

import (
	"errors"
	"path/filepath"

	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/words"
)

// Open opens a plan's file.
func (s *Session) Open(path string) { s.Guarded(func() { s.load(path) }) }

// ChooseOpen asks for a file to open.
func (s *Session) ChooseOpen() {
	s.Guarded(func() {
		s.user.ChooseFile(FileChoice{Title: s.say("chooser.open", "Open a plan"), Yes: s.say("answer.open", "Open"), Open: true}, s.load)
	})
}

// load reads a file beside the window and shows it.
func (s *Session) load(path string) {
	s.user.Tell(words.New("open.reading", "Reading {0} …", filepath.Base(path)))
	was, before := s.doc, s.doc.Plan()
	go func() {
		p, stamp, err := file.Load(path)
		s.shop.Post(func() {
			if s.saving == nil && s.doc == was && plan.Equal(s.doc.Plan(), before) {
				s.loaded(path, p, stamp, err)
				return
			}
			s.Guarded(func() { s.loaded(path, p, stamp, err) }) // it was changed while the file was read
		})
	}()
}

func (s *Session) loaded(path string, p plan.Plan, stamp file.Stamp, err error) {
	s.user.Tell(words.Text{})
	if err != nil {
		s.tell(s.say("open.failed", "The plan could not be opened"), err, "")
		return
	}
	s.claimed(path, func() {
		s.user.Opened(path)
		s.Replace(p, path, stamp)
	})
}

// claimed claims a file for this session and goes on; where another has it open, it asks
// first.
func (s *Session) claimed(path string, do func()) {
	if s.claim != nil && s.doc.Path() == path {
		do()
		return
	}
	claim, err := file.ClaimFile(s.shop.claims, path)
	if !errors.Is(err, file.ErrClaimed) { // a claim only tells: without one all goes on
		s.release()
		s.claim = claim
		do()
		return
	}
	s.user.Ask(Question{
		Title: s.say("claim.title", "Open it a second time?"), Fault: err,
		Answers: []Answer{
			{s.say("answer.cancel", "Cancel"), nil},
			{s.say("answer.second", "Open it anyway"), func() { s.release(); do() }},
		},
	})
}

// release gives the file claimed free.
func (s *Session) release() {
	if s.claim != nil {
		s.claim.Release()
		s.claim = nil
	}
}
