package fill

import (
	"fmt"
	"slices"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/unit"
)

// Checker keeps the findings of a plan current. It remembers what each scope showed
// when it was judged, and judges again only what an edit may have touched. One
// goroutine uses it at a time.
type Checker struct {
	index  *plan.Index
	fig    *code.Figures
	seen   map[plan.ID]seen
	waived waived
	result Result
	ran    int
	from   amendedFrom
}

// seen is what a scope showed when it was judged last.
type seen struct {
	parts   []any
	waivers plan.Set[*plan.Waiver]
}

// amendedFrom is what figures were made from.
type amendedFrom struct {
	edition    string
	units      unit.System
	amendments plan.Set[*plan.Amendment]
}

// planScope is the scope of rules on the plan as a whole.
const planScope plan.ID = "plan"

// Result is the findings of one plan, by scope. It is immutable.
type Result struct {
	Figures *code.Figures
	scopes  plan.Set[*scoped]
}

// scoped is the findings of one opening, room or plan.
type scoped struct {
	id       plan.ID
	findings []Finding
}

// Key returns the ID of the scope.
func (s *scoped) Key() plan.ID { return s.id }

// FiguresOf returns the figures a plan is checked against: its edition with its local
// amendments on top, in its units. The error says which part of the plan is at fault.
func FiguresOf(p plan.Plan) (*code.Figures, error) {
	edition := code.Latest().Edition
	if p.Header != nil && p.Header.Edition != "" {
		edition = p.Header.Edition
	}
	fig, err := code.Edition(edition)
	if err != nil {
		return nil, err
	}
	var changes []code.Amendment
	for a := range p.Amendments.All() {
		changes = append(changes, code.Amendment{Figure: a.Figure, Value: a.Value, Rule: a.Rule, Reason: a.Reason})
	}
	amended, err := fig.WithAmendments(changes)
	if err != nil {
		return nil, fmt.Errorf("the plan's local amendments: %w", err)
	}
	return amended.InUnits(p.Header.System()), nil
}

// Check judges a plan from nothing. It fails where its edition or amendments cannot
// be read.
func Check(ix *plan.Index) (Result, error) { return new(Checker).Update(ix) }

// Update brings the findings up to a plan and returns them. It fails, and keeps what
// it had, where the plan's edition or amendments cannot be read.
func (c *Checker) Update(ix *plan.Index) (Result, error) {
	c.ran = 0
	fig, from, err := c.figures(ix.Plan())
	if err != nil {
		return c.result, err
	}
	was := c.index
	isCold := was == nil || fig != c.fig
	c.waived = c.waived.of(ix.Plan().Waivers)
	if isCold {
		c.all(ix, fig)
	} else {
		c.touched(ix)
	}
	c.index, c.fig, c.from = ix, fig, from
	if isCold || planWideMayDiffer(was.Plan(), ix.Plan()) {
		c.planWide(ix.Plan())
	}
	c.result.Figures = fig
	return c.result, nil
}

// Ran returns how many scopes the last Update judged.
func (c *Checker) Ran() int { return c.ran }

// figures returns the plan's figures, the same pointer as long as what they are made
// from is the same.
func (c *Checker) figures(p plan.Plan) (*code.Figures, amendedFrom, error) {
	from := amendedFrom{amendments: p.Amendments}
	if p.Header != nil {
		from.edition, from.units = p.Header.Edition, p.Header.System()
	}
	if c.fig != nil && from == c.from {
		return c.fig, from, nil
	}
	fig, err := FiguresOf(p)
	return fig, from, err
}

// all judges every scope of a plan, on all cores.
func (c *Checker) all(ix *plan.Index, fig *code.Figures) {
	c.index, c.fig = ix, fig
	ids := scopesOf(ix.Plan())
	shown, found := make([]seen, len(ids)), make([]*scoped, len(ids))
	eachOnAllCores(len(ids), func(i int) {
		if parts, run := c.view(ix, ids[i]); run != nil {
			shown[i], found[i] = seen{parts, ix.Plan().Waivers}, c.scoped(ids[i], run)
		}
	})
	c.seen, c.result = make(map[plan.ID]seen, len(ids)), Result{}
	scopes := make([]*scoped, 0, len(ids))
	for i, s := range found {
		if s != nil {
			c.seen[ids[i]] = shown[i]
			scopes = append(scopes, s)
		}
	}
	c.ran += len(scopes)
	c.result.scopes, _ = plan.NewSet(scopes...) // IDs of a plan are unique
}

// scopesOf lists the scopes of a plan: its rooms and its openings.
func scopesOf(p plan.Plan) (ids []plan.ID) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			ids = append(ids, r.ID)
		}
		for o := range l.Openings.All() {
			ids = append(ids, o.ID)
		}
	}
	return ids
}

func (c *Checker) touched(ix *plan.Index) {
	rooms, openings := plan.Touched(c.index, ix)
	for _, id := range slices.Concat(rooms, openings, c.waiverScopes(ix)) {
		if s := c.judge(ix, id); s != nil {
			c.result.scopes = c.result.scopes.With(s)
		} else if _, still := c.seen[id]; !still {
			c.result.scopes = c.result.scopes.Without(id)
		}
	}
}

// waiverScopes returns the scopes whose waivers differ.
func (c *Checker) waiverScopes(ix *plan.Index) (ids []plan.ID) {
	for _, w := range c.index.Plan().Waivers.Diff(ix.Plan().Waivers) {
		for _, noun := range []*plan.Waiver{w.Old, w.New} {
			if noun == nil {
				continue
			}
			ids = append(ids, noun.About)
			if ref, ok := ix.Side(noun.About); ok {
				ids = append(ids, ref.Room.ID)
			}
		}
	}
	return ids
}

// judge runs the rules of one scope. It returns nil where the scope shows what it
// showed, or is gone.
func (c *Checker) judge(ix *plan.Index, id plan.ID) *scoped {
	parts, run := c.view(ix, id)
	if run == nil {
		delete(c.seen, id)
		return nil
	}
	waivers := ix.Plan().Waivers
	before, ok := c.seen[id]
	if ok && before.waivers == waivers && slices.Equal(before.parts, parts) {
		return nil
	}
	c.seen[id] = seen{parts, waivers}
	c.ran++
	return c.scoped(id, run)
}

func (c *Checker) scoped(id plan.ID, run func(*Rule) []Finding) *scoped {
	return &scoped{id, judged(run, c.waived, c.fig)}
}

// view returns what a scope shows and what runs a rule on it, or nil where the scope is
// gone. The level is shown too: a noun may stand on another in a later plan.
func (c *Checker) view(ix *plan.Index, id plan.ID) (parts []any, run func(*Rule) []Finding) {
	switch id.Kind() {
	case plan.KindRoom:
		if v, ok := ix.RoomView(id); ok {
			return append(v.Parts(), v.Level), func(r *Rule) []Finding { return onRoom(r, v, c.fig) }
		}
	case plan.KindOpening:
		if v, ok := ix.OpeningView(id); ok {
			return append(v.Parts(), v.Level), func(r *Rule) []Finding { return onOpening(r, v, c.fig) }
		}
	}
	return nil, nil
}

func onRoom(r *Rule, v plan.RoomView, fig *code.Figures) []Finding {
	if r.Room == nil {
		return nil
	}
	found := r.Room(v, fig)
	for i := range found {
		found[i].Level = v.Level
	}
	return found
}

func onOpening(r *Rule, v plan.OpeningView, fig *code.Figures) []Finding {
	if r.Opening == nil {
		return nil
	}
	found := r.Opening(v, fig)
	for i := range found {
		f := &found[i]
		f.Level, f.Opening, f.About = v.Level, v.Opening.ID, v.Opening.ID
		if v.Room != nil {
			f.Room = v.Room.ID
		}
	}
	return found
}

// judged runs every rule that is not switched off and marks what is waived.
func judged(run func(*Rule) []Finding, w waived, fig *code.Figures) (all []Finding) {
	for _, r := range Rules {
		if _, off := fig.Off(r.ID); off {
			continue
		}
		for _, f := range run(r) {
			f.Rule = r.ID
			if f.Section == "" {
				f.Section = r.Section(fig)
			}
			f.Waived = w.by[waiverKey{f.Rule, f.About}]
			all = append(all, f)
		}
	}
	return all
}

// planWide runs the rules on the plan as a whole.
func (c *Checker) planWide(p plan.Plan) {
	run := func(r *Rule) []Finding {
		if r.Plan == nil {
			return nil
		}
		return r.Plan(p, c.fig)
	}
	c.result.scopes = c.result.scopes.With(&scoped{planScope, judged(run, c.waived, c.fig)})
}

// planWideMayDiffer reports whether rules on the plan as a whole may find other things:
// they read the decisions, and where the things are that these are about. An edit that
// moves something about its own level differs in neither.
func planWideMayDiffer(old, now plan.Plan) bool {
	if old.Decisions != now.Decisions || old.Waivers != now.Waivers {
		return true
	}
	if now.Decisions.Len() == 0 {
		return false
	}
	c := plan.Diff(old, now)
	return c.Order || len(c.Levels) > 0 || len(plan.Changed[*plan.Room](c)) > 0 ||
		anyCameOrWent(plan.Changed[*plan.Opening](c)) || anyCameOrWent(plan.Changed[*plan.Break](c)) || anyCameOrWent(plan.Changed[*plan.Fixture](c))
}

func anyCameOrWent[T plan.Noun](changes []plan.OnLevel[T]) bool {
	var none T
	return slices.ContainsFunc(changes, func(c plan.OnLevel[T]) bool { return c.Old == none || c.New == none })
}
