package desk

import (
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/tool"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// onScreen returns where the board shows a point of the plan, in the window.
func (b *bench) onScreen(p geom.Point) fyne.Position {
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(b.view.board).Add(b.view.board.Place(p))
}

func TestADrawerLeavesThePlanWhereItIs(t *testing.T) {
	b := newBench(t)
	b.room(8*unit.Foot, 10*unit.Foot)
	b.view.Fit()
	before := b.onScreen(geom.Point{})
	for _, id := range []string{"opening", "select", "fixture", "room", "opening", "select"} {
		b.hand.takeByID(id)
		if got := b.onScreen(geom.Point{}); got != before {
			t.Errorf("with the tool %s the plan stands at %v, before at %v", id, got, before)
		}
	}
	if !b.view.fitted {
		t.Error("the drawer has ended that the whole level is shown")
	}
}

// TestADrawerHidesNothingOfALevelShownWhole: what it would lie over is shown whole again.
func TestADrawerHidesNothingOfALevelShownWhole(t *testing.T) {
	b := newBench(t)
	b.room(40*unit.Foot, 10*unit.Foot)
	b.view.Fit()
	b.hand.takeByID("opening")
	edge := fyne.CurrentApp().Driver().AbsolutePositionForObject(b.view.board).X
	if at := b.onScreen(geom.Point{}); at.X < edge {
		t.Errorf("the left corner stands at %v, behind the drawer that ends at %v", at.X, edge)
	}
}

// TestALevelMadeSmallerForADrawerIsFittedAgain: what made way for a drawer comes back when
// the drawer goes.
func TestALevelMadeSmallerForADrawerIsFittedAgain(t *testing.T) {
	b := newBench(t)
	b.room(40*unit.Foot, 10*unit.Foot)
	b.view.Fit()
	left, right := b.onScreen(geom.Point{}), b.onScreen(geom.Point{X: 40 * unit.Foot})
	b.hand.takeByID("opening")
	if b.onScreen(geom.Point{}) == left {
		t.Fatal("the drawer has not moved the level")
	}
	b.hand.takeByID("select")
	if l, r := b.onScreen(geom.Point{}), b.onScreen(geom.Point{X: 40 * unit.Foot}); l != left || r != right {
		t.Errorf("without the drawer the level reaches from %v to %v, before from %v to %v", l, r, left, right)
	}
}

func TestNothingOfAToolStaysWhereThePointerIsNot(t *testing.T) {
	b := newBench(t)
	room := b.room(12*unit.Foot, 10*unit.Foot)
	at := geom.Point{X: unit.Foot}
	b.tools.Preview(tool.Preview{
		Ghost: &tool.Ghost{Kind: "duplex", At: plan.Anchor{Host: room}, Foot: at}, SnapAt: &at,
		Snap: words.New("plain", "{0}", "middle"), Dims: []tool.Dim{{To: at, Text: "1'"}}, Area: geom.Polygon{{}, at},
	})
	(&boardEvents{hand: b.hand, keys: b.keys, view: b.view, status: b.status}).PointerAt(at, false)
	if p := b.hand.preview; p.Ghost != nil || p.SnapAt != nil || !p.Snap.IsZero() || len(p.Dims) != 0 {
		t.Errorf("left behind: %+v", p)
	}
	if len(b.hand.preview.Area) != 2 {
		t.Error("what is being traced has gone with it")
	}
	if b.statusTexts()[2].Words() != "" {
		t.Errorf("the status line still says %q", b.statusTexts()[2].Words())
	}
}

// TestWhereARoomWouldBeginGoesWithThePointer: one corner alone is a mark at the pointer.
func TestWhereARoomWouldBeginGoesWithThePointer(t *testing.T) {
	b := newBench(t)
	b.tools.Preview(tool.Preview{Area: geom.Polygon{{X: unit.Foot}}})
	(&boardEvents{hand: b.hand, keys: b.keys, view: b.view, status: b.status}).PointerAt(geom.Point{X: unit.Foot}, false)
	if left := b.hand.preview.Area; len(left) != 0 {
		t.Errorf("left behind: %v", left)
	}
}

func TestAFindingInViewMovesNothing(t *testing.T) {
	b := newBench(t)
	room := b.room(12*unit.Foot, 10*unit.Foot)
	b.view.Fit()
	before := b.onScreen(geom.Point{})
	var round *rule.Finding
	for i, f := range b.doc().Findings() {
		if sidesOf(f) > 1 {
			round = &b.doc().Findings()[i]
			break
		}
	}
	if round == nil {
		t.Fatal("an empty room has no finding over several faces")
	}
	b.findings.Go(*round)
	if got := b.onScreen(geom.Point{}); got != before {
		t.Errorf("the plan moved from %v to %v", before, got)
	}
	if chosen := b.doc().Selection(); len(chosen) != 1 || chosen[0] != room {
		t.Errorf("chosen: %v, want the room %s", chosen, room)
	}
}
