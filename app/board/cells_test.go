package board

import (
	"testing"

	"studbay/plan"
	"studbay/render"
	"studbay/render/scene"
)

// TestEveryPieceIsFoundWhereItLies: a cell leaves out nothing that a look at all pieces
// finds, on any side of a border between cells.
func TestEveryPieceIsFoundWhereItLies(t *testing.T) {
	s := newStage(t, 200)
	pieces := s.board.easel.shown.pieces
	c := cellsOf(pieces)
	const pointed = 9
	hits := 0
	for x := -20.0; x < 1400; x += 13 {
		for y := -20.0; y < 1100; y += 17 {
			at := scene.Point{X: x, Y: y}
			var want []plan.ID
			for _, p := range pieces {
				if canBePointedAt(p) && p.Bounds.Expanded(pointed).Contains(at) {
					want = append(want, p.ID)
				}
			}
			var got []plan.ID
			for _, i := range c.near(pieces, at, pointed) {
				if pieces[i].Bounds.Expanded(pointed).Contains(at) {
					got = append(got, pieces[i].ID)
				}
			}
			if len(got) != len(want) {
				t.Fatalf("at %v: %v, want %v as a look at all pieces finds", at, got, want)
			}
			for i := range want {
				if got[i] != want[i] {
					t.Fatalf("at %v: %v, want %v in the order painted", at, got, want)
				}
			}
			hits += len(want)
		}
	}
	if hits == 0 {
		t.Error("nothing was pointed at")
	}
}

func canBePointedAt(p render.Piece) bool {
	return p.Layer == render.LayerOpenings || p.Layer == render.LayerLabels || p.Layer == render.LayerControls
}
