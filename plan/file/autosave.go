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
	dropped map[string]bool    // documents to be forgotten before what waits is kept
	timer   *time.Timer        // nil where nothing waits
	writing sync.Mutex         // held while journals are written or dropped
}

// NewAutosave keeps plans so long after they are offered. Failed is called from another
// goroutine with each error of keeping one.
func NewAutosave(r *Recovery, after time.Duration, failed func(error)) *Autosave {
	return &Autosave{recovery: r, after: after, failed: failed, waiting: map[string]Unsaved{}, dropped: map[string]bool{}}
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

// Forget drops the document beside the window, and returns at once. What is offered of it
// later is kept.
func (a *Autosave) Forget(doc string) {
	a.mu.Lock()
	defer a.mu.Unlock()
	delete(a.waiting, doc)
	a.dropped[doc] = true
	go a.Flush()
}

// Flush forgets and keeps what waits, now.
func (a *Autosave) Flush() {
	a.writing.Lock()
	defer a.writing.Unlock()
	waiting, dropped := a.take()
	for doc := range dropped {
		if err := a.recovery.Drop(doc); err != nil {
			a.failed(err)
		}
	}
	for _, u := range waiting {
		if err := a.recovery.Keep(u); err != nil {
			a.failed(err)
		}
	}
}

func (a *Autosave) take() (waiting map[string]Unsaved, dropped map[string]bool) {
	a.mu.Lock()
	defer a.mu.Unlock()
	waiting, dropped = a.waiting, a.dropped
	a.waiting, a.dropped, a.timer = map[string]Unsaved{}, map[string]bool{}, nil
	return waiting, dropped
}
