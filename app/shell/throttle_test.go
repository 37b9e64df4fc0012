package shell

import (
	"testing"
	"time"
)

func TestWhatIsSlowRestsWhileDragging(t *testing.T) {
	clock, shown := time.Unix(0, 0), 0
	posted := make(chan func(), 1)
	p := NewThrottle(func(f func()) { posted <- f }, func() { shown++; clock = clock.Add(10 * time.Millisecond) })
	p.now = func() time.Time { return clock }
	p.Refresh()
	p.Ease(true)
	clock = clock.Add(15 * time.Millisecond)
	p.Refresh()
	p.Refresh()
	if shown != 1 {
		t.Error("it is made again at once while dragging")
	}
	clock = clock.Add(30 * time.Millisecond)
	(<-posted)()
	if shown != 2 {
		t.Errorf("made %d times, want once more after a rest", shown)
	}
	clock = clock.Add(time.Millisecond)
	p.Ease(false)
	if p.Refresh(); shown != 3 {
		t.Error("it does not show the end of the drag")
	}
}
