package fill

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

// Checker keeps the findings of a plan current. It remembers what each scope showed
// when it was judged, and judges again only what an edit may have touched. One
// goroutine uses it at a time.
type Checker struct {
	index  *index.Index
	fig    *code.Figures
	seen   map[plan.ID]seen
	waived waived
	result Result
	ran    int
	from   amendedFrom
	rules  rulesOn
}

// seen is what a scope showed when it was judged last. A rule on a level or the plan has
// its waivers among the parts.
type seen struct {
	parts   []any
	waivers plan.Set[*plan.Waiver]
}

// Check judges a plan from nothing. It fails where its edition or amendments cannot
// be read; the result then says so.
func Check(ix *index.Index) (Result, error) { return new(Checker).Update(ix) }

// Update brings the findings up to a plan and returns them. It fails where the plan's
// edition or amendments cannot be read: the result then has no finding and says why.
func (c *Checker) Update(ix *index.Index) (Result, error) {
	c.ran = 0
	fig, from, err := c.figures(ix.Plan())
	if err != nil {
		return Result{refused: err}, err
	}
	was, isCold := c.index, c.index == nil || fig != c.fig
	c.waived = c.waived.of(ix.Plan().Waivers)
	c.index, c.fig, c.from, c.rules = ix, fig, from, newRulesOn()
	if isCold {
		c.all()
	} else {
		c.touched(was)
	}
	c.wide(was)
	c.result.Figures = fig
	return c.result, nil
}

// Ran returns how many scopes the last Update judged.
func (c *Checker) Ran() int { return c.ran }

// all judges every opening, side and room of the plan, on all cores.
func (c *Checker) all() {
	ids := judgedFirst(c.index.Plan())
	shown, found := make([][]scope, len(ids)), make([][]*scoped, len(ids))
	onAllCores(len(ids), batch, func(i int) {
		shown[i] = scopesAt(c.index, ids[i])
		for _, s := range shown[i] {
			if of := c.findings(s, c.rules.of(s.id)); len(of.findings) > 0 {
				found[i] = append(found[i], of)
			}
		}
	})
	c.seen, c.result = make(map[plan.ID]seen, len(ids)), Result{}
	for _, scopes := range shown {
		for _, s := range scopes {
			c.seen[s.id] = seen{s.parts, c.waived.from}
		}
	}
	c.ran += len(c.seen)
	c.result.scopes, _ = plan.NewSet(slices.Concat(found...)...) // IDs of a plan are unique
}

// judgedFirst lists what scopesAt is asked for: the rooms and openings of a plan.
func judgedFirst(p plan.Plan) (ids []plan.ID) {
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

// touched judges again what an edit may have changed since another index.
func (c *Checker) touched(was *index.Index) {
	rooms, openings := index.Touched(was, c.index)
	touched := slices.Concat(rooms, openings, c.waiverScopes(was))
	for _, id := range touched {
		c.forgetGone(was, id)
	}
	for _, id := range touched {
		for _, s := range scopesAt(c.index, id) {
			c.judge(s, c.waived.from)
		}
	}
}

// forgetGone forgets an opening, or a room and its sides, where they are no longer in the
// plan. A side may have gone to another room, which is touched as well.
func (c *Checker) forgetGone(was *index.Index, id plan.ID) {
	if id.Kind() == plan.KindOpening {
		if o, _ := c.index.Plan().Opening(id); o == nil {
			c.forget(id)
		}
		return
	}
	room := was.RoomOf(id)
	if room == nil || room == c.index.RoomOf(id) {
		return
	}
	for _, s := range room.Sides {
		if _, ok := c.index.Side(s.ID); !ok {
			c.forget(s.ID)
		}
	}
	if c.index.RoomOf(id) == nil {
		c.forget(id)
	}
}

// wide judges each rule on the levels and on the plan as a whole where what it reads
// differs: several at once, since each reads much.
func (c *Checker) wide(was *index.Index) {
	if was != nil {
		for _, l := range was.Plan().Levels {
			if c.index.Plan().Level(l.ID) == nil {
				for _, r := range wideRules(l) {
					c.forget(wideID(l, r))
				}
			}
		}
	}
	type judged struct {
		level *plan.Level
		rule  *rule.Rule
		scope scope
		of    *scoped // nil: it shows what it showed
	}
	var all []judged
	for _, l := range append(slices.Clone(c.index.Plan().Levels), nil) {
		for _, r := range wideRules(l) {
			all = append(all, judged{level: l, rule: r})
		}
	}
	onAllCores(len(all), 1, func(i int) {
		j := &all[i]
		j.scope = wideScope(c.index, j.level, j.rule)
		for _, w := range c.waived.ofRule[j.rule.ID] {
			j.scope.parts = append(j.scope.parts, w)
		}
		if !c.hasSeen(j.scope, plan.Set[*plan.Waiver]{}) {
			j.of = c.findings(j.scope, []*rule.Rule{j.rule})
		}
	})
	for _, j := range all {
		if j.of != nil {
			c.keep(j.scope, plan.Set[*plan.Waiver]{}, j.of)
		}
	}
}

// judge runs the rules of a scope unless it shows what it showed, under the waivers that
// it did.
func (c *Checker) judge(s scope, waivers plan.Set[*plan.Waiver]) {
	if !c.hasSeen(s, waivers) {
		c.keep(s, waivers, c.findings(s, c.rules.of(s.id)))
	}
}

func (c *Checker) hasSeen(s scope, waivers plan.Set[*plan.Waiver]) bool {
	before, ok := c.seen[s.id]
	return ok && before.waivers == waivers && slices.Equal(before.parts, s.parts)
}

func (c *Checker) keep(s scope, waivers plan.Set[*plan.Waiver], found *scoped) {
	c.ran++
	c.seen[s.id] = seen{s.parts, waivers}
	if len(found.findings) > 0 {
		c.result.scopes = c.result.scopes.With(found)
	} else {
		c.result.scopes = c.result.scopes.Without(s.id)
	}
}

func (c *Checker) forget(id plan.ID) {
	delete(c.seen, id)
	c.result.scopes = c.result.scopes.Without(id)
}

// findings runs those of some rules that are not switched off and marks what is waived.
func (c *Checker) findings(s scope, rules []*rule.Rule) *scoped {
	of := &scoped{id: s.id}
	for _, r := range rules {
		if _, off := c.fig.Off(r.ID); off {
			continue
		}
		for _, f := range s.judge(r, c.fig) {
			of.findings = append(of.findings, c.told(r, f))
		}
	}
	return of
}

// told completes a finding by what its rule says, and marks it where it is waived.
func (c *Checker) told(r *rule.Rule, f rule.Finding) rule.Finding {
	f.Rule = r.ID
	if f.Section == "" && !f.ByPractice {
		f.Section = r.Section(c.fig)
	}
	f.Waived = c.waived.waiverOf(f)
	return f
}
