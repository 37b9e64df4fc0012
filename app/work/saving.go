package work

import (
	"errors"
	"path/filepath"
	"strings"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/words"
)

// Save saves the plan to its file, or asks for one.
func (s *Session) Save() { s.saveThen(nil) }

// SaveAs asks for a file and saves to it.
func (s *Session) SaveAs() { s.chooseSave(nil) }

func (s *Session) saveThen(then func()) {
	s.user.EndTyping()
	if s.waits(func() { s.saveThen(then) }) {
		return
	}
	if s.doc.Path() == "" {
		s.chooseSave(then)
		return
	}
	s.saveTo(s.doc.Path(), s.doc.stamp, then)
}

// chooseSave asks for the file to save to.
func (s *Session) chooseSave(then func()) {
	s.user.EndTyping()
	if s.waits(func() { s.chooseSave(then) }) {
		return
	}
	s.user.ChooseFile(FileChoice{
		Title: s.say("chooser.save", "Save the plan as"), Yes: s.say("answer.save", "Save"),
		Name: FileName(s.doc.Title()) + Extension,
	}, func(path string) { s.saveOver(path, then) })
}

// saveOver saves to a file that the user has chosen, whatever it holds.
func (s *Session) saveOver(path string, then func()) {
	stamp, err := file.StampOf(path)
	if err != nil {
		s.saveFailed(path, err, then)
		return
	}
	s.saveTo(path, stamp, then)
}

// save is one saving of a plan, which goes on beside the window: a slow disk or a folder
// on the network may take its time.
type save struct {
	doc    *Document
	path   string
	naming edit.Edit // the title it takes from its file, or nil
	before plan.Plan // without it
	plan   plan.Plan
	then   func() // once nothing more can be lost, or nil
}

// waits reports whether a plan is being saved; what is asked for then comes after it.
func (s *Session) waits(do func()) bool {
	if s.saving == nil {
		return false
	}
	s.afterSave = append(s.afterSave, do)
	return true
}

// nameAfter returns the edit that gives a plan without a title of its own that of the
// file it is first saved to, and the plan after it.
func (s *Session) nameAfter(path string) (edit.Edit, plan.Plan) {
	p := s.doc.Plan()
	if s.doc.Path() != "" || p.Header == nil || p.Header.Title != s.untitled() {
		return nil, p
	}
	named := *p.Header
	named.Title = strings.TrimSuffix(filepath.Base(path), Extension)
	e := edit.ChangeHeader{Header: named}
	after, err := e.Apply(p)
	if err != nil {
		return nil, p // the old title serves where this one is refused
	}
	return e, after
}

// saveTo writes the plan where the file is still what the stamp says.
func (s *Session) saveTo(path string, expect file.Stamp, then func()) {
	if s.waits(func() { s.saveTo(path, expect, then) }) {
		return
	}
	job := &save{doc: s.doc, path: path, before: s.doc.Plan(), then: then}
	job.naming, job.plan = s.nameAfter(path)
	s.saving = job
	s.user.Tell(words.New("save.writing", "Saving {0} …", filepath.Base(path)))
	go func() {
		stamp, err := file.Save(path, job.plan, expect)
		s.shop.Post(func() { s.saved(job, stamp, err) })
	}()
}

// saved takes in what came of a saving, and goes on with what waited for it.
func (s *Session) saved(job *save, stamp file.Stamp, err error) {
	after := s.afterSave
	s.saving, s.afterSave = nil, nil
	if s.closed || s.doc != job.doc {
		return
	}
	s.user.Tell(words.Text{})
	isWritten := err == nil || errors.Is(err, file.ErrUnsynced)
	if isWritten {
		s.took(job, stamp)
	}
	switch {
	case !isWritten:
		s.saveFailed(job.path, err, job.then)
	case err != nil:
		s.tell(s.say("save.unsynced", "Saved, but the disk has not confirmed it"), err, "")
	case job.then != nil:
		s.Guarded(job.then) // what was changed meanwhile is asked for once more
	}
	s.goOn(after)
}

// goOn does what waited for a saving, one after the other, as long as it can: what a
// question stands before is given up, as a click behind that question would be.
func (s *Session) goOn(after []func()) {
	for i, do := range after {
		if s.closed || s.user.IsAsked() {
			return
		}
		if s.saving != nil {
			s.afterSave = append(s.afterSave, after[i:]...)
			return
		}
		do()
	}
}

// took says that the document stands in a file, though it may have been changed since.
func (s *Session) took(job *save, stamp file.Stamp) {
	if job.path != s.doc.Path() {
		s.release()
		s.claim, _ = file.ClaimFile(s.shop.claims, job.path)
	}
	s.takeName(job)
	s.doc.savedAs(job.path, stamp, job.plan)
	if s.doc.IsDirty() {
		s.keep()
	} else {
		s.forget()
	}
	s.user.Saved(job.path)
}

// takeName gives the document the title it took from its file, unless its header was
// changed since. While something is dragged that waits for the end of the drag.
func (s *Session) takeName(job *save) {
	if job.naming == nil || s.doc != job.doc || s.doc.Plan().Header != job.before.Header {
		return
	}
	if s.doc.History().InGesture() {
		s.afterDrag = func() { s.takeName(job) }
		return
	}
	isSame := plan.Equal(s.doc.Plan(), job.before)
	if s.doc.Do(job.naming) == nil && isSame {
		job.plan = s.doc.Plan()
	}
}

// saveFailed says why, and offers what can be done.
func (s *Session) saveFailed(path string, err error, then func()) {
	stay := Answer{s.say("answer.cancel", "Cancel"), nil}
	elsewhere := Answer{s.say("answer.elsewhere", "Save elsewhere …"), func() { s.chooseSave(then) }}
	if errors.Is(err, file.ErrChanged) || errors.Is(err, file.ErrExists) {
		s.user.Ask(Question{
			Title:   s.say("save.changed", "The file was changed by someone else"),
			Body:    s.say("save.changed.body", "{0} holds something else than when it was opened. Saving over it loses that.", path),
			Answers: []Answer{stay, {s.say("answer.over", "Save over it"), func() { s.saveOver(path, then) }}, elsewhere},
		})
		return
	}
	s.user.Ask(Question{
		Title: s.say("save.failed", "The plan could not be saved"), Fault: err,
		Body:    s.say("save.failed.body", "Nothing is lost: the plan is still open here."),
		Answers: []Answer{stay, elsewhere},
	})
}
