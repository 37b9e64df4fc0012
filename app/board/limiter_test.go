package board

import (
	"testing"
	"time"

	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
	"studbay/plan/geom"
)

// clockwork is a clock moved by hand, with what is to happen later.
type clockwork struct {
	at    time.Time
	later []alarm
}

type alarm struct {
	at time.Time
	do func()
}

func (c *clockwork) now() time.Time { return c.at }

func (c *clockwork) after(d time.Duration, f func()) {
	c.later = append(c.later, alarm{c.at.Add(d), f})
}

// pass lets time pass.
func (c *clockwork) pass(d time.Duration) {
	c.at = c.at.Add(d)
	due := c.later
	c.later = nil
	for _, a := range due {
		if a.at.After(c.at) {
			c.later = append(c.later, a)
			continue
		}
		a.do()
	}
}

// hovering is a stage whose board is told of time by hand.
func hovering(t *testing.T) (*stage, *clockwork) {
	s := newStage(t, 40)
	c := &clockwork{at: time.Unix(100, 0)}
	s.board.mouse.limiter = limiter{apart: hoverEvery, now: c.now, after: c.after}
	return s, c
}

// TestHoverIsToldTwentyTimesASecond: 60 moves a second for one second with nothing in hand
// are told at most 20 times, and a first one at once; the goal set for a hover.
func TestHoverIsToldTwentyTimesASecond(t *testing.T) {
	s, c := hovering(t)
	s.board.MouseMoved(mouseAt(100, 100, 0))
	if got := s.told.count(Move); got != 1 {
		t.Fatalf("the first move was told %d times, want once", got)
	}
	s.told.forget()
	for i := range 60 {
		c.pass(time.Second / 60)
		s.board.MouseMoved(mouseAt(float32(100+i), 200, 0))
	}
	c.pass(hoverEvery)
	if got := s.told.count(Move); got < 10 || got > 21 {
		t.Errorf("60 moves were told %d times, want about 20", got)
	}
	want := s.board.view.Plan(159, 200)
	if got := s.told.last().At; got != want {
		t.Errorf("the last that was told is at %v, want that of the last move, %v", got, want)
	}
}

// TestAPressIsPrecededByTheMoveThatWaits: a tool acts on a press where it last saw the
// pointer.
func TestAPressIsPrecededByTheMoveThatWaits(t *testing.T) {
	s, _ := hovering(t)
	s.board.MouseMoved(mouseAt(100, 100, 0))
	s.board.MouseMoved(mouseAt(300, 200, 0))
	s.told.forget()
	s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonPrimary))
	if len(s.told.kinds) != 2 || s.told.kinds[0] != Move || s.told.kinds[1] != Down {
		t.Errorf("told %v, want the move and then the press", s.told.kinds)
	}
}

// TestNothingIsToldOnceThePointerHasLeft: what waited would put it back on the board.
func TestNothingIsToldOnceThePointerHasLeft(t *testing.T) {
	s, c := hovering(t)
	s.board.MouseMoved(mouseAt(100, 100, 0))
	s.board.MouseMoved(mouseAt(300, 200, 0))
	s.board.MouseOut()
	s.told.forget()
	c.pass(time.Second)
	if len(s.told.kinds) != 0 || s.told.inside {
		t.Errorf("told %v and inside %v after the pointer left", s.told.kinds, s.told.inside)
	}
}

// TestWhatIsInHandFollowsEveryMove: neither a drag nor what a tool shows at the pointer
// waits.
func TestWhatIsInHandFollowsEveryMove(t *testing.T) {
	moves := func(s *stage) int {
		s.told.forget()
		for i := range 5 {
			s.board.MouseMoved(mouseAt(float32(100+i), 100, 0))
		}
		return s.told.count(Move)
	}
	s, _ := hovering(t)
	pic := s.board.pic
	pic.Preview = tool.Preview{SnapAt: &geom.Point{}}
	s.board.SetPicture(pic)
	if got := moves(s); got != 5 {
		t.Errorf("5 moves with something shown at the pointer were told %d times", got)
	}
	s, _ = hovering(t)
	s.board.MouseDown(mouseAt(100, 100, desktop.MouseButtonPrimary))
	if got := moves(s); got != 5 {
		t.Errorf("5 moves with the button held were told %d times", got)
	}
}

// TestTheSameColoursAreNotSetAgain: what has the board's colours refreshed has the
// whole window painted.
func TestTheSameColoursAreNotSetAgain(t *testing.T) {
	s := newStage(t, 40)
	s.board.parts.back.FillColor = nil
	s.board.SetPicture(s.board.pic)
	if s.board.parts.back.FillColor != nil {
		t.Error("the same theme was set again")
	}
	s.board.setFocused(true)
	if s.board.parts.back.FillColor == nil {
		t.Error("the focus was not shown")
	}
}
