package work

import (
	"crypto/rand"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Changed says what of a document is another than before.
type Changed uint

// What may change.
const (
	PlanChanged Changed = 1 << iota
	FindingsChanged
	SelectionChanged
	LevelChanged
	FileChanged // path, saved or not
)

// stepLimit is how many steps can be undone: more than a day's work.
const stepLimit = 2000

// Document is one plan being worked on, with its history, its findings and the file it
// stands in. It knows no widget; its owner's one goroutine uses it.
type Document struct {
	history  *edit.History
	index    *index.Index
	level    plan.ID
	selected []plan.ID
	result   fill.Result
	found    []rule.Finding // all of result
	checked  plan.Plan      // the plan that result is of
	checkErr error
	name     string // of an unsaved document in the recovery
	path     string
	stamp    file.Stamp
	// recovered says that the plan holds what its file has not, though no step was made.
	recovered bool

	check  *checking
	notify func(Changed)
}

// NewDocument begins with a plan. Post brings a function to the owner's goroutine;
// notify is told of every change.
func NewDocument(p plan.Plan, post func(func()), notify func(Changed)) *Document {
	d := &Document{
		history: edit.NewHistory(p, stepLimit), index: index.New(p),
		name: rand.Text(), notify: notify,
	}
	if len(p.Levels) > 0 {
		d.level = p.Levels[0].ID
	}
	d.check = startChecking(post, d.takeFindings)
	d.check.ask(d.index)
	return d
}

// close ends the work beside the window.
func (d *Document) close() { d.check.stop() }

// Plan returns the plan as it stands, a drag under way included.
func (d *Document) Plan() plan.Plan { return d.index.Plan() }

// Index returns the index of Plan.
func (d *Document) Index() *index.Index { return d.index }

// Result returns the findings shown, which may be of a plan a moment ago.
func (d *Document) Result() fill.Result { return d.result }

// Findings lists all of Result, the worst first. Nobody writes to the list.
func (d *Document) Findings() []rule.Finding { return d.found }

// CheckError says why there are no findings, or nil.
func (d *Document) CheckError() error { return d.checkErr }

// Level returns the storey shown.
func (d *Document) Level() plan.ID { return d.level }

// SetLevel shows another storey; nothing is chosen any more.
func (d *Document) SetLevel(id plan.ID) {
	if id == d.level || d.Plan().Level(id) == nil {
		return
	}
	d.level, d.selected = id, nil
	d.notify(LevelChanged | SelectionChanged)
}

// Selection returns what is chosen. Callers must not write to it.
func (d *Document) Selection() []plan.ID { return d.selected }

// Select chooses nouns of the plan; IDs that are not in it are left out.
func (d *Document) Select(ids ...plan.ID) {
	ids = slices.DeleteFunc(slices.Clone(ids), func(id plan.ID) bool { return !d.Has(id) })
	if slices.Equal(ids, d.selected) {
		return
	}
	d.selected = ids
	d.notify(SelectionChanged)
}

// Has reports whether an ID names something that can be chosen.
func (d *Document) Has(id plan.ID) bool { return d.index.Has(id) }

// Do makes an edit the next step.
func (d *Document) Do(e edit.Edit) error {
	if err := d.history.Do(e); err != nil {
		return err
	}
	d.update()
	return nil
}

// Throughout makes an edit that is no step: it holds whatever is undone or redone.
func (d *Document) Throughout(e edit.Edit) error {
	if err := d.history.Throughout(e); err != nil {
		return err
	}
	d.update()
	return nil
}

// Begin starts a gesture: one undo will take all of it back.
func (d *Document) Begin(name words.Text) { d.history.Begin(name) }

// End ends the gesture.
func (d *Document) End() {
	d.history.End()
	d.update()
}

// Undo takes the last step back.
func (d *Document) Undo() {
	if d.history.Undo() {
		d.update()
	}
}

// Redo makes the step again that was taken back last.
func (d *Document) Redo() {
	if d.history.Redo() {
		d.update()
	}
}

// History gives the names of steps, and whether there are any.
func (d *Document) History() *edit.History { return d.history }

// update brings index, selection and findings up to the plan of the history.
func (d *Document) update() {
	p := d.history.Plan()
	d.index = d.index.Updated(p)
	changed := PlanChanged | FileChanged
	if p.Level(d.level) == nil {
		d.level = ""
		if len(p.Levels) > 0 {
			d.level = p.Levels[0].ID
		}
		changed |= LevelChanged
	}
	if kept := slices.DeleteFunc(slices.Clone(d.selected), func(id plan.ID) bool { return !d.Has(id) }); len(kept) != len(d.selected) {
		d.selected = kept
		changed |= SelectionChanged
	}
	d.check.ask(d.index)
	d.notify(changed)
}

// takeFindings shows the findings of a plan, unless a later one is already asked for.
func (d *Document) takeFindings(done checkResult) {
	d.result, d.found, d.checkErr = done.result, done.result.All(), done.err
	d.checked = done.of.Plan()
	d.notify(FindingsChanged)
}

// IsDirty reports whether the plan holds what its file has not.
func (d *Document) IsDirty() bool { return d.recovered || d.history.IsDirty() }

// SavedAt returns when the plan's file was written, as far as is known.
func (d *Document) SavedAt() time.Time { return d.stamp.ModTime }

// IsChecked reports whether Result is of the plan as it is.
func (d *Document) IsChecked() bool {
	return d.result.Figures != nil && plan.Equal(d.checked, d.Plan())
}

// Path returns the plan's file, or nothing where it was never saved.
func (d *Document) Path() string { return d.path }

// Title returns the plan's title, else the name of its file.
func (d *Document) Title() string {
	if h := d.Plan().Header; h != nil && strings.TrimSpace(h.Title) != "" {
		return h.Title
	}
	return strings.TrimSuffix(filepath.Base(d.path), filepath.Ext(d.path))
}

// System returns the units the plan is shown in.
func (d *Document) System() unit.System { return d.Plan().Header.System() }

// unsaved returns the document for the recovery.
func (d *Document) unsaved(now time.Time) file.Unsaved {
	return file.Unsaved{Doc: d.name, Path: d.path, Stamp: d.stamp, Time: now, Plan: d.Plan()}
}

// savedAs says that a plan of this document stands in a file now.
func (d *Document) savedAs(path string, stamp file.Stamp, p plan.Plan) {
	d.path, d.stamp, d.recovered = path, stamp, false
	d.history.MarkSaved(p)
	d.notify(FileChanged)
}

// standsApart says that the plan holds what its file, now as stamped, has not.
func (d *Document) standsApart(stamp file.Stamp) {
	d.stamp, d.recovered = stamp, true
	d.notify(FileChanged)
}

// opened says that the document was just read from a file.
func (d *Document) opened(path string, stamp file.Stamp) {
	d.path, d.stamp = path, stamp
	d.notify(FileChanged)
}
