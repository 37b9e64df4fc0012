package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// RenameRoom gives a room another name. Its use follows as long as it is what the old
// name told, and so does the prefix of its tags as long as no tag begins with it.
type RenameRoom struct {
	ID    plan.ID
	Title string
}

// Name returns "Rename room".
func (RenameRoom) Name() words.Text { return words.New("edit.room.rename", "Rename room") }

// Apply fails with ErrGone where the room is not in the plan.
func (e RenameRoom) Apply(p plan.Plan) (plan.Plan, error) {
	was, l := p.Room(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindRoom)
	}
	r := *was
	r.Name = e.Title
	if told, _ := plan.UseOf(was.Name); told == was.Use {
		if use, tells := plan.UseOf(e.Title); tells {
			r.Use = use
		}
	}
	empty := *l
	empty.Rooms = l.Rooms.Without(e.ID)
	others := p.WithLevel(&empty)
	if was.Prefix == plan.SuggestPrefix(others, was.Name) && p.NextTag(was.Prefix) == was.Prefix+"1" {
		r.Prefix = plan.SuggestPrefix(others, e.Title)
	}
	return ChangeRoom{r}.Apply(p)
}
