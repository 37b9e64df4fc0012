package desk

import (
	"errors"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/plan"
	"studbay/plan/file"
)

const extension = ".studbay"

// guarded goes on with do once nothing can be lost by it: at once where all is saved,
// else after the user has saved or let go.
func (d *Desk) guarded(do func()) {
	d.commitField()
	if d.waits(func() { d.guarded(do) }) {
		return
	}
	if !d.doc.IsDirty() {
		d.forget()
		do()
		return
	}
	d.ask(question{
		title: d.say("guard.title", "Save “{0}” first?", d.doc.Title()),
		body:  d.say("guard.body", "It has changes that its file has not. What is not saved is lost."),
		answers: []answer{
			{d.say("answer.stay", "Go back"), nil},
			{d.say("answer.drop", "Do not save"), func() { d.forget(); do() }},
			{d.say("answer.save", "Save"), func() { d.saveThen(do) }},
		},
	})
}

// commitField takes what is being typed in a field as done with, as moving the focus
// away would.
func (d *Desk) commitField() { d.window.Canvas().Unfocus() }

// New begins an empty plan.
func (d *Desk) New() {
	d.guarded(func() {
		d.release()
		d.replace(d.emptyPlan(), "", file.Stamp{})
	})
}

// OpenGuarded opens a plan's file in this window.
func (d *Desk) OpenGuarded(path string) { d.guarded(func() { d.load(path) }) }

// load reads a file beside the window and shows it.
func (d *Desk) load(path string) {
	d.status.hint.SetWords(d.say("open.reading", "Reading {0} …", filepath.Base(path)))
	was, before := d.doc, d.doc.Plan()
	go func() {
		p, stamp, err := file.Load(path)
		d.house.post(func() {
			if d.saving == nil && d.doc == was && plan.Equal(d.doc.Plan(), before) {
				d.loaded(path, p, stamp, err)
				return
			}
			d.guarded(func() { d.loaded(path, p, stamp, err) }) // it was changed while the file was read
		})
	}()
}

func (d *Desk) loaded(path string, p plan.Plan, stamp file.Stamp, err error) {
	d.showHint()
	if err != nil {
		d.trouble(d.say("open.failed", "The plan could not be opened"), err)
		return
	}
	d.claimed(path, func() {
		d.prefs.addRecent(path)
		d.prefs.setFolder(path)
		d.replace(p, path, stamp)
	})
}

// dropped opens the first plan's file dropped on the window.
func (d *Desk) dropped(files []fyne.URI) {
	if d.window.Canvas().Overlays().Top() != nil {
		return
	}
	for _, f := range files {
		if strings.EqualFold(filepath.Ext(f.Path()), extension) {
			d.OpenGuarded(f.Path())
			return
		}
	}
	d.tell(d.say("drop.other", "That is not a plan's file"),
		d.say("drop.other.body", "Drop a file that ends in .studbay here, or open one from the File menu."))
}

// chooseOpen asks for a file to open.
func (d *Desk) chooseOpen() {
	d.guarded(func() {
		d.choose(choosing{
			title: d.say("chooser.open", "Open a plan"), yes: d.say("answer.open", "Open"),
			extensions: []string{extension}, open: true,
		}, d.load)
	})
}

// Save saves the plan to its file, or asks for one.
func (d *Desk) Save() { d.saveThen(nil) }

func (d *Desk) saveThen(then func()) {
	d.commitField()
	if d.waits(func() { d.saveThen(then) }) {
		return
	}
	if d.doc.Path() == "" {
		d.chooseSave(then)
		return
	}
	d.saveTo(d.doc.Path(), d.doc.stamp, then)
}

// chooseSave asks for the file to save to.
func (d *Desk) chooseSave(then func()) {
	d.commitField()
	if d.waits(func() { d.chooseSave(then) }) {
		return
	}
	d.choose(choosing{
		title: d.say("chooser.save", "Save the plan as"), yes: d.say("answer.save", "Save"),
		name: fileName(d.doc.Title()) + extension, extensions: []string{extension},
	}, func(path string) { d.saveAs(path, then) })
}

// saveAs saves to a file that the user has chosen, whatever it holds.
func (d *Desk) saveAs(path string, then func()) {
	stamp, err := file.StampOf(path)
	if err != nil {
		d.saveFailed(path, err, then)
		return
	}
	d.saveTo(path, stamp, then)
}

// save is one saving of a plan, which goes on beside the window: a slow disk or a folder
// on the network may take its time.
type save struct {
	doc    *Document
	path   string
	naming plan.Edit // the title it takes from its file, or nil
	before plan.Plan // without it
	plan   plan.Plan
	then   func() // once nothing more can be lost, or nil
}

// waits reports whether a plan is being saved; what is asked for then comes after it.
func (d *Desk) waits(do func()) bool {
	if d.saving == nil {
		return false
	}
	d.afterSave = append(d.afterSave, do)
	return true
}

// nameAfter returns the edit that gives a plan without a title of its own that of the
// file it is first saved to, and the plan after it.
func (d *Desk) nameAfter(path string) (plan.Edit, plan.Plan) {
	p := d.doc.Plan()
	if d.doc.Path() != "" || p.Header == nil || p.Header.Title != d.say("plan.untitled", "Untitled plan") {
		return nil, p
	}
	named := *p.Header
	named.Title = strings.TrimSuffix(filepath.Base(path), extension)
	e := plan.ChangeHeader{Header: named}
	after, err := e.Apply(p)
	if err != nil {
		return nil, p // the old title serves where this one is refused
	}
	return e, after
}

// saveTo writes the plan where the file is still what the stamp says.
func (d *Desk) saveTo(path string, expect file.Stamp, then func()) {
	if d.waits(func() { d.saveTo(path, expect, then) }) {
		return
	}
	s := &save{doc: d.doc, path: path, before: d.doc.Plan(), then: then}
	s.naming, s.plan = d.nameAfter(path)
	d.saving = s
	d.status.hint.SetWords(d.say("save.writing", "Saving {0} …", filepath.Base(path)))
	go func() {
		stamp, err := file.Save(path, s.plan, expect)
		d.house.post(func() { d.saved(s, stamp, err) })
	}()
}

// saved takes in what came of a saving, and goes on with what waited for it.
func (d *Desk) saved(s *save, stamp file.Stamp, err error) {
	after := d.afterSave
	d.saving, d.afterSave = nil, nil
	if d.closed || d.doc != s.doc {
		return
	}
	d.showHint()
	isWritten := err == nil || errors.Is(err, file.ErrUnsynced)
	if isWritten {
		d.took(s, stamp)
	}
	switch {
	case !isWritten:
		d.saveFailed(s.path, err, s.then)
	case err != nil:
		d.trouble(d.say("save.unsynced", "Saved, but the disk has not confirmed it"), err)
	case s.then != nil:
		d.guarded(s.then) // what was changed meanwhile is asked for once more
	}
	d.goOn(after)
}

// goOn does what waited for a saving, one after the other, as long as it can: what a
// question stands before is given up, as a click behind that question would be.
func (d *Desk) goOn(after []func()) {
	for i, do := range after {
		if d.closed || d.open != nil {
			return
		}
		if d.saving != nil {
			d.afterSave = append(d.afterSave, after[i:]...)
			return
		}
		do()
	}
}

// took says that the document stands in a file, though it may have been changed since.
func (d *Desk) took(s *save, stamp file.Stamp) {
	if s.path != d.doc.Path() {
		d.release()
		d.claim, _ = file.ClaimFile(d.house.claims, s.path)
	}
	d.takeName(s)
	d.doc.savedAs(s.path, stamp, s.plan)
	if d.doc.IsDirty() {
		d.keep()
	} else {
		d.forget()
	}
	d.prefs.addRecent(s.path)
}

// takeName gives the document the title it took from its file, unless its header was
// changed since. While something is dragged that waits for the end of the drag.
func (d *Desk) takeName(s *save) {
	if s.naming == nil || d.doc != s.doc || d.doc.Plan().Header != s.before.Header {
		return
	}
	if d.doc.History().InGesture() {
		d.afterDrag = func() { d.takeName(s) }
		return
	}
	isSame := plan.Equal(d.doc.Plan(), s.before)
	if d.Do(s.naming) == nil && isSame {
		s.plan = d.doc.Plan()
	}
}

// saveFailed says why, and offers what can be done.
func (d *Desk) saveFailed(path string, err error, then func()) {
	elsewhere := answer{d.say("answer.elsewhere", "Save elsewhere …"), func() { d.chooseSave(then) }}
	if errors.Is(err, file.ErrChanged) || errors.Is(err, file.ErrExists) {
		d.ask(question{
			title: d.say("save.changed", "The file was changed by someone else"),
			body:  d.say("save.changed.body", "{0} holds something else than when it was opened. Saving over it loses that.", path),
			answers: []answer{
				{d.say("answer.stay", "Go back"), nil},
				{d.say("answer.over", "Save over it"), func() { d.saveAs(path, then) }},
				elsewhere,
			},
		})
		return
	}
	d.ask(question{
		title: d.say("save.failed", "The plan could not be saved"),
		body:  d.errorText(err) + "\n" + d.say("save.failed.body", "Nothing is lost: the plan is still open here."),
		answers: []answer{
			{d.say("answer.stay", "Go back"), nil},
			elsewhere,
		},
	})
}

// Close closes the window once nothing can be lost by it.
func (d *Desk) Close() {
	if d.open != nil { // a question is in sight: it is to be answered first
		return
	}
	d.guarded(d.shut)
}

func (d *Desk) shut() {
	d.cancelExport()
	d.closed = true
	d.prefs.setWindow(d.window.Canvas().Size())
	d.doc.close()
	d.release()
	d.house.gone(d)
	d.window.Close()
}

// fileName makes a title fit for the name of a file.
func fileName(title string) string {
	name := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || r < ' ' {
			return '-'
		}
		return r
	}, strings.TrimSpace(title))
	if name == "" {
		return "plan"
	}
	return name
}

func withExtension(path, extension string) string {
	if filepath.Ext(path) == "" {
		return path + extension
	}
	return path
}
