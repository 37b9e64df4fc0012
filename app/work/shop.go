package work

import (
	"path/filepath"
	"slices"
	"time"

	"studbay/plan/file"
)

// Shop is what the documents of one run of the program share: the safety copies of what
// is not saved, and the folder that tells other runs which files are open.
type Shop struct {
	// Post brings a function to the goroutine that uses the documents, from any other.
	Post func(func())

	sessions []*Session
	claims   string         // the folder of what is open
	recovery *file.Recovery // nil where its folder cannot be used
	autosave *file.Autosave
	left     []file.Unsaved // of killed runs, not yet offered
	trouble  []error        // of the recovery, not yet told
}

// autosaveAfter is how long after an edit the plan is kept.
const autosaveAfter = 2 * time.Second

// NewShop begins in a folder of the program's own. Failed is told where a safety copy
// could not be kept. Without such copies all else works: the first user to be asked is
// told why there are none.
func NewShop(home string, post func(func()), failed func(error)) *Shop {
	s := &Shop{Post: post, claims: filepath.Join(home, "open")}
	recovery, err := file.OpenRecovery(filepath.Join(home, "recovery"))
	if err != nil {
		s.trouble = append(s.trouble, err)
		return s
	}
	s.recovery = recovery
	s.autosave = file.NewAutosave(recovery, autosaveAfter, func(err error) { post(func() { failed(err) }) })
	s.left, s.trouble = recovery.List()
	return s
}

// gone is told that a session has ended.
func (s *Shop) gone(of *Session) {
	s.sessions = slices.DeleteFunc(s.sessions, func(other *Session) bool { return other == of })
}

// drop gives up what a killed run had not saved.
func (s *Shop) drop(doc string) {
	if s.recovery != nil {
		_ = s.recovery.Drop(doc)
	}
}

// Close writes what is still to be written. Documents that are open and not saved stay
// in the recovery. It may be called twice.
func (s *Shop) Close() {
	if s.recovery == nil {
		return
	}
	for _, open := range s.sessions {
		open.keep()
	}
	s.autosave.Flush()
	s.recovery.Close()
	s.recovery, s.autosave = nil, nil
}
