package file

import (
	"sync"
	"time"
)

// Autosave keeps unsaved plans in a Recovery beside the window: soon after an edit, and
// only the latest of a document where edits come faster than the disk.
type Autosave struct {
	recovery *Recovery
	after    time.Duration
	failed   func(error)

	mu      sync.Mutex
	waiting map[string]Unsaved // by document
	timer   *time.Timer        // nil where nothing waits
	writing sync.Mutex         // held while journals are written or dropped
}

// NewAutosave keeps plans so long after they are offered. Failed is called from another
// goroutine with each error of keeping one.
func NewAutosave(r *Recovery, after time.Duration, failed func(error)) *Autosave {
	return &Autosave{recovery: r, after: after, failed: failed, waiting: map[string]Unsaved{}}
}

// Offer takes the plan as the document's latest, and returns at once.
func (a *Autosave) Offer(u Unsaved) {
	a.mu.Lock()
	defer a.mu.Unlock()
	a.waiting[u.Doc] = u
	if a.timer == nil {
		a.timer = time.AfterFunc(a.after, a.Flush)
	}
}

// Flush keeps what waits, now.
func (a *Autosave) Flush() {
	a.writing.Lock()
	defer a.writing.Unlock()
	for _, u := range a.take() {
		if err := a.recovery.Keep(u); err != nil {
			a.failed(err)
		}
	}
}

func (a *Autosave) take() map[string]Unsaved {
	a.mu.Lock()
	defer a.mu.Unlock()
	taken := a.waiting
	a.waiting, a.timer = map[string]Unsaved{}, nil
	return taken
}

// Drop forgets the document, also what waits or is being written.
func (a *Autosave) Drop(doc string) error {
	a.mu.Lock()
	delete(a.waiting, doc)
	a.mu.Unlock()
	a.writing.Lock()
	defer a.writing.Unlock()
	return a.recovery.Drop(doc)
}
