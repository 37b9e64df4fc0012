package file

import (
	"crypto/rand"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"github.com/gofrs/flock"

	"studbay/plan/disk"
)

// Recovery keeps the latest unsaved plan of each document of one run of the program, and
// finds what runs that were killed have left.
//
// Each run has a folder of its own with a lock that goes with the process, so the plans of
// another run at work are never offered; nor are those that another run was offered first.
// Its methods may be called from many goroutines.
type Recovery struct {
	mu   sync.Mutex
	root string
	own  *run
	left []*run // of killed runs, locked by this one
	disk disk.System
}

// run is the folder of one run, locked.
type run struct {
	path string
	lock *flock.Flock
}

const (
	runPrefix  = "run-"
	lockSuffix = ".lock" // the lock stands beside the folder, so that the folder can be emptied
	asideName  = "damaged"
)

// OpenRecovery begins a run. Folder is the program's own and made where it is missing.
func OpenRecovery(folder string) (*Recovery, error) {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return nil, saved(folder, err)
	}
	path := filepath.Join(folder, runPrefix+rand.Text())
	lock, err := tryLock(path + lockSuffix)
	if err != nil {
		return nil, saved(path, err)
	}
	if err := os.Mkdir(path, 0o700); err != nil {
		unlock(lock)
		return nil, saved(path, err)
	}
	return &Recovery{root: folder, own: &run{path, lock}, disk: disk.Real{}}, nil
}

// Keep writes the plan to the document's journal, whole and durable, in place of the one
// before. Call it some time after an edit, beside the window.
func (r *Recovery) Keep(u Unsaved) error {
	data, err := u.encode()
	if err != nil {
		return err
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	path := filepath.Join(r.own.path, journalName(u.Doc))
	err = disk.Put(r.disk, path, 0o600, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return saved(path, err)
	}
	return nil
}

// Drop forgets the document: after it was saved, or closed without. It also forgets one
// that was listed, once it was recovered and saved, or declined.
func (r *Recovery) Drop(doc string) error {
	r.mu.Lock()
	defer r.mu.Unlock()
	var failed error
	for _, run := range append([]*run{r.own}, r.left...) {
		path := filepath.Join(run.path, journalName(doc))
		if err := r.disk.Remove(path); err != nil && !errors.Is(err, os.ErrNotExist) {
			failed = saved(path, err)
		}
	}
	return failed
}

// List returns what killed runs had not saved, the latest of each document. A journal that
// cannot be read is set aside in the folder "damaged" and reported in problems; it takes
// nothing else with it. What is listed stays until it is dropped, through further kills
// too.
func (r *Recovery) List() (found []Unsaved, problems []error) {
	r.mu.Lock()
	defer r.mu.Unlock()
	problems = r.adopt()
	latest := map[string]int{}
	for _, run := range r.left {
		unsaved, bad := r.read(run)
		problems = append(problems, bad...)
		for _, u := range unsaved {
			at, twice := latest[u.Doc]
			switch {
			case !twice:
				latest[u.Doc] = len(found)
				found = append(found, u)
			case u.Time.After(found[at].Time):
				found[at] = u
			}
		}
	}
	return found, problems
}

// adopt locks the folders of runs that are no more.
func (r *Recovery) adopt() (problems []error) {
	entries, err := os.ReadDir(r.root)
	if err != nil {
		return []error{loading(r.root, err)}
	}
	for _, e := range entries {
		if !e.IsDir() || !strings.HasPrefix(e.Name(), runPrefix) {
			continue
		}
		path := filepath.Join(r.root, e.Name())
		lock, err := tryLock(path + lockSuffix)
		switch {
		case err == nil:
			r.left = append(r.left, &run{path, lock})
		case !errors.Is(err, errLocked): // the lock of a run at work, or ours
			problems = append(problems, loading(path, err))
		}
	}
	return problems
}

// read reads the journals of a run and sets the damaged ones aside.
func (r *Recovery) read(run *run) (found []Unsaved, problems []error) {
	names, err := filepath.Glob(filepath.Join(run.path, "*"+journalSuffix))
	if err != nil {
		return nil, []error{loading(run.path, err)}
	}
	for _, name := range names {
		data, _, err := readAll(name)
		if err != nil {
			problems = append(problems, loading(name, err))
			continue
		}
		u, err := decodeJournal(name, data)
		if err != nil {
			problems = append(problems, r.setAside(name, err))
			continue
		}
		found = append(found, u)
	}
	return found, problems
}

// setAside moves a damaged journal where it is offered no more but can be looked at.
func (r *Recovery) setAside(name string, cause error) error {
	aside := filepath.Join(r.root, asideName)
	to := filepath.Join(aside, rand.Text()+"-"+filepath.Base(name))
	if err := errors.Join(os.MkdirAll(aside, 0o700), r.disk.Rename(name, to)); err != nil {
		return loading(name, err)
	}
	return &Error{File: to, Err: fault(cause, "file.journal",
		"the recovered copy of a plan is damaged ({0}); it is set aside here and not opened", cause.Error())}
}

// Close ends the run. What was kept and not dropped is listed by the next run.
func (r *Recovery) Close() {
	r.mu.Lock()
	defer r.mu.Unlock()
	for _, run := range append(r.left, r.own) {
		run.end()
	}
	r.left = nil
}

// end removes what is empty and gives the folder free.
func (r *run) end() {
	leftovers, _ := filepath.Glob(filepath.Join(r.path, ".*"))
	for _, l := range leftovers {
		_ = os.Remove(l) // of a save that was killed
	}
	if os.Remove(r.path) == nil {
		unlock(r.lock)
		return
	}
	_ = r.lock.Close()
}
