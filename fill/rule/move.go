package rule

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// MostMoved is how far a box is moved at most where there is another remedy: it was put
// where it is for a reason (common practice).
const MostMoved = 2 * unit.Foot

// MovesAlong offers to move a box along its face to the nearest of some places, and to the
// nearest at its other hand where that is within MostMoved. The places are of its centre, the nearest first.
func MovesAlong(b frame.Placed, places []unit.Length) (offers []Remedy) {
	var left, right bool
	for _, to := range places {
		by := to - b.Centre()
		taken, label := &right, words.New("rule.move.right", "Move {0} to the right by {1}", b.Opening.Tag, words.Height(by))
		if by < 0 {
			taken, label = &left, words.New("rule.move.left", "Move {0} to the left by {1}", b.Opening.Tag, words.Height(-by))
		}
		if isFar := by.Abs() > MostMoved && len(offers) > 0; !*taken && !isFar {
			*taken = true
			offers = append(offers, Remedy{Label: label, Edit: edit.MoveOpening{ID: b.Opening.ID, To: plan.OnFace(b.Opening.At.Host, to)}})
		}
	}
	return offers
}

// TellsOf reports whether a clash of two openings is told of the first: of the new one, of
// two alike that whose tag comes first.
func TellsOf(of, with *plan.Opening) bool {
	if is, was := of.HasOldBox(), with.HasOldBox(); is != was {
		return was
	}
	return of.Tag < with.Tag
}
