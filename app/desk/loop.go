package desk

import (
	"sync"

	"fyne.io/fyne/v2"
)

// loop brings functions to the goroutine of the windows while there are windows. The
// toolkit closes its queue once the last has gone, and one who sends to it then panics.
type loop struct {
	mu    sync.RWMutex
	ended bool
}

// post brings a function to the windows' goroutine, or drops it once they are gone.
func (l *loop) post(f func()) {
	l.mu.RLock()
	defer l.mu.RUnlock()
	if !l.ended {
		fyne.Do(f)
	}
}

// end is called on the windows' goroutine as the last of them goes; when it returns,
// nothing more is on its way.
func (l *loop) end() {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.ended = true
}
