package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// History is a document as it was edited: plans in a row, with a name for each step.
// It keeps plans, not the way back, so undo and redo give the very same plans. It is
// for one goroutine; the plans it gives out may be read by any.
type History struct {
	steps []step // the first has no name: it is where the history begins
	at    int
	limit int
	saved plan.Plan
	drag  *gesture
}

type step struct {
	plan plan.Plan
	name words.Text
}

// gesture is a drag under way: one step that each Do makes anew from the same plan.
type gesture struct {
	label words.Text
	now   *step // nil: nothing done yet
}

// NewHistory begins with a plan as it was opened. Limit is how many steps can be
// undone at most; the oldest are forgotten. 0 is no limit.
func NewHistory(p plan.Plan, limit int) *History {
	return &History{steps: []step{{plan: p}}, limit: max(limit, 0), saved: p}
}

// Plan returns the plan as it stands, a gesture under way included.
func (h *History) Plan() plan.Plan {
	if h.drag != nil && h.drag.now != nil {
		return h.drag.now.plan
	}
	return h.steps[h.at].plan
}

// Do makes e the next step and forgets what had been undone. Between Begin and End it
// replaces the step before it. An edit that changes nothing leaves no step. On error
// all stays as it is.
func (h *History) Do(e Edit) error {
	base := h.steps[h.at].plan
	next, err := e.Apply(base)
	if err != nil {
		return err
	}
	if h.drag != nil {
		h.drag.do(base, next, e.Name())
		return nil
	}
	if !plan.Equal(base, next) {
		h.push(step{next, e.Name()})
	}
	return nil
}

// Throughout makes an edit of every plan that the history keeps: it is no step, and holds
// whatever is taken back or made again. It ends a gesture under way. On error all stays as
// it is.
func (h *History) Throughout(e Edit) error {
	h.End()
	steps := slices.Clone(h.steps)
	for i := range steps {
		next, err := e.Apply(steps[i].plan)
		if err != nil {
			return err
		}
		steps[i].plan = next
	}
	h.steps = steps
	return nil
}

func (g *gesture) do(base, next plan.Plan, name words.Text) {
	if g.now = nil; plan.Equal(base, next) {
		return
	}
	if !g.label.IsZero() {
		name = g.label
	}
	g.now = &step{next, name}
}

func (h *History) push(s step) {
	clear(h.steps[h.at+1:]) // so that the plans forgotten can be freed
	h.steps = append(h.steps[:h.at+1], s)
	h.at++
	if over := h.at - h.limit; h.limit > 0 && over > 0 {
		h.steps = slices.Delete(h.steps, 0, over)
		h.steps[0].name = words.Text{}
		h.at -= over
	}
}

// Begin starts a gesture: until End each Do starts from the plan as it is now and
// replaces the one before, so that one undo takes back the whole drag. Without a label
// the step is named by its edit. It ends a gesture under way.
func (h *History) Begin(label words.Text) {
	h.End()
	h.drag = &gesture{label: label}
}

// End ends a gesture. One that ends where it began leaves no step, and what had been
// undone before it can still be redone.
func (h *History) End() {
	if h.drag == nil {
		return
	}
	now := h.drag.now
	if h.drag = nil; now != nil {
		h.push(*now)
	}
}

// Cancel ends a gesture and leaves the plan as it was when it began.
func (h *History) Cancel() { h.drag = nil }

// InGesture reports whether a gesture is under way.
func (h *History) InGesture() bool { return h.drag != nil }

// CanUndo reports whether there is a step to take back.
func (h *History) CanUndo() bool { return h.at > 0 || h.drag != nil && h.drag.now != nil }

// CanRedo reports whether there is a step to make again.
func (h *History) CanRedo() bool { return h.drag == nil && h.at+1 < len(h.steps) }

// Undo takes the last step back and reports whether there was one. In a gesture it
// cancels the gesture instead.
func (h *History) Undo() bool {
	if h.drag != nil {
		did := h.drag.now != nil
		h.Cancel()
		return did
	}
	if h.at == 0 {
		return false
	}
	h.at--
	return true
}

// Redo makes the step again that was taken back last and reports whether there was one.
func (h *History) Redo() bool {
	if !h.CanRedo() {
		return false
	}
	h.at++
	return true
}

// Done names the steps that can be taken back, the last first.
func (h *History) Done() (names []words.Text) {
	for i := h.at; i > 0; i-- {
		names = append(names, h.steps[i].name)
	}
	return names
}

// UndoName names the step that Undo takes back; the zero Text where there is none.
func (h *History) UndoName() words.Text {
	if h.drag != nil && h.drag.now != nil {
		return h.drag.now.name
	}
	return h.steps[h.at].name
}

// RedoName names the step that Redo makes again; the zero Text where there is none.
func (h *History) RedoName() words.Text {
	if !h.CanRedo() {
		return words.Text{}
	}
	return h.steps[h.at+1].name
}

// MarkSaved says that a plan of this history stands in the file. The plan is given
// because saving runs beside the window, which may have moved on.
func (h *History) MarkSaved(p plan.Plan) { h.saved = p }

// IsDirty reports whether the plan differs from the one last saved or opened.
func (h *History) IsDirty() bool { return !plan.Equal(h.saved, h.Plan()) }
