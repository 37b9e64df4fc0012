package arrange

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// MoveDoor puts a break elsewhere and slides openings along their faces as far as it goes,
// as the switches of a door go with it.
type MoveDoor struct {
	ID   plan.ID
	To   plan.Anchor
	With []plan.ID
}

// Name returns "Move door with its switches".
func (MoveDoor) Name() words.Text {
	return words.New("edit.door.move", "Move door with its switches")
}

// Apply fails with ErrGone where one of them is not in the plan, and with ErrNoRoom where
// one does not fit where it would come to. On another face than its own the break goes
// alone.
func (e MoveDoor) Apply(p plan.Plan) (plan.Plan, error) {
	was, _ := p.Break(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindBreak)
	}
	edits := []edit.Edit{edit.MoveBreak{ID: e.ID, To: e.To}}
	if ref, _ := p.Side(e.To.Host); ref != nil && was.At.Host == e.To.Host {
		line := ref.Line()
		edits = append(edits, Move{Things: e.With, By: line.At(e.To.Along).Sub(line.At(was.At.Along))})
	}
	return edit.Steps{Edits: edits}.Apply(p)
}
