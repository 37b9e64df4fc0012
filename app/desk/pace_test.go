package desk

import (
	"testing"
	"time"

	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestTheColumnRestsWhileDragging(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	clock := time.Unix(0, 0)
	b.pace.now = func() time.Time { return clock }
	b.pace.refresh()
	b.table.Begin(words.New("plain", "{0}", "Drag"))
	b.pace.took = 10 * time.Millisecond
	last := b.pace.ended
	clock = clock.Add(15 * time.Millisecond)
	if b.pace.refresh(); b.pace.ended != last || !b.pace.waits {
		t.Error("the column is made again at once while dragging")
	}
	clock = clock.Add(30 * time.Millisecond)
	b.until("the column to follow", func() bool { return !b.pace.waits })
	if b.pace.ended == last {
		t.Error("the column does not follow after a rest")
	}
	last, b.pace.took = b.pace.ended, time.Hour
	clock = clock.Add(time.Millisecond)
	if b.table.End(); b.pace.ended == last {
		t.Error("the column does not show the end of the drag")
	}
}
