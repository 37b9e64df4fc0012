package index

import (
	"slices"
	"testing"

	"studbay/plan"
)

// TestAViewShowsAllThatHangsTogether: what stands in a room or at a side, what is on it,
// and on that; openings of each; and of a side the openings of the one behind.
func TestAViewShowsAllThatHangsTogether(t *testing.T) {
	p, left, right := twoRooms(t)
	l := *p.Levels[0]
	fixture := func(name string, at plan.Anchor) *plan.Fixture {
		f := &plan.Fixture{ID: testID(plan.KindFixture, name), Kind: plan.FixtureIsland, At: at, Width: inches(40), Depth: inches(24), Height: inches(36)}
		l.Fixtures = l.Fixtures.With(f)
		return f
	}
	opening := func(name string, at plan.Anchor) *plan.Opening {
		o := &plan.Opening{ID: testID(plan.KindOpening, name), Tag: name, Kind: "duplex", At: at, Status: plan.StatusNew}
		l.Openings = l.Openings.With(o)
		return o
	}
	island := fixture("island", plan.OnFloor(left.ID, at(60, 72)))
	onIsland := fixture("board", plan.Anchor{Host: island.ID, Part: plan.PartTop, Along: inches(20), Out: inches(12)})
	counter := fixture("counter", plan.OnFace(side(left, 'n'), inches(10)))
	inIsland := opening("aa", plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: inches(10)})
	onTop := opening("bb", plan.Anchor{Host: onIsland.ID, Part: plan.PartTop, Along: inches(10), Out: inches(5)})
	inCounter := opening("cc", plan.Anchor{Host: counter.ID, Part: plan.PartFront, Along: inches(10)})
	above := opening("dd", plan.OnCeiling(left.ID, at(60, 60)))
	below := opening("ee", plan.OnFloor(left.ID, at(20, 20)))
	behind := opening("ff", plan.OnFace(side(right, 'w'), inches(60)))
	ix := New(p.WithLevel(&l))
	v, ok := ix.RoomView(left.ID)
	if !ok {
		t.Fatal("no view")
	}
	parts := v.Parts()
	for _, want := range []any{left, island, onIsland, counter, inIsland, onTop, inCounter, above, below, behind} {
		if !slices.Contains(parts, want) {
			t.Errorf("the room does not show %v", want)
		}
	}
	for _, s := range v.Sides {
		shown := s.Parts()
		for _, tt := range []struct {
			part any
			at   plan.ID
		}{{counter, side(left, 'n')}, {inCounter, side(left, 'n')}, {behind, side(left, 'e')}} {
			if got, want := slices.Contains(shown, tt.part), s.Side.ID == tt.at; got != want {
				t.Errorf("side %s shows %v: %v, want %v", s.Side.ID, tt.part, got, want)
			}
		}
		if slices.Contains(shown, any(island)) {
			t.Errorf("side %s shows the island, which stands at none", s.Side.ID)
		}
	}
	if _, ok := ix.RoomView(testID(plan.KindRoom, "gone")); ok {
		t.Error("a room that is gone has a view")
	}
	if _, ok := ix.OpeningView(testID(plan.KindOpening, "gone")); ok {
		t.Error("an opening that is gone has a view")
	}
}
