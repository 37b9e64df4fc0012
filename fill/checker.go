package fill

import (
	"slices"
	"sync/atomic"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/heap"
	"studbay/plan/index"
)

// Checker keeps the findings of a plan current. It judges again only what an edit may have
// touched, and of that only what shows another thing than it did. One goroutine uses it at
// a time.
type Checker struct {
	index  *index.Index
	fig    *code.Figures
	seen   map[plan.ID]seen // none of what no edit touched: the index before tells that
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
	c.index, c.fig, c.from = ix, fig, from
	if isCold {
		c.rules = newRulesOn(fig)
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
	defer heap.Freely()()
	rows := judgedFirst(c.index)
	found := make([][]*scoped, len(rows))
	var ran atomic.Int64
	onAllCores(len(rows), batch, func(i int) {
		scopes := rows[i].scopes(c.index)
		for _, s := range scopes {
			if of := c.findings(s, c.rules.of(s.id)); len(of.findings) > 0 {
				found[i] = append(found[i], of)
			}
		}
		ran.Add(int64(len(scopes)))
	})
	c.seen, c.result = map[plan.ID]seen{}, Result{}
	c.ran += int(ran.Load())
	c.result.scopes, _ = plan.NewSet(slices.Concat(found...)...) // IDs of a plan are unique
}

// row is a room with its sides, and the openings in it; those of a level that are in none are
// a row without a room.
type row struct {
	level, room plan.ID
	openings    []*plan.Opening
}

// scopes returns what is judged of a row.
func (r row) scopes(ix *index.Index) []scope {
	all := scopesAt(ix, r.room)
	all = slices.Grow(all, len(r.openings))
	for _, o := range r.openings {
		all = append(all, openingScope(ix.ViewOf(o, r.level)))
	}
	return all
}

// judgedFirst lists the rooms with the openings in them: what is looked up for one is then at
// hand for the next. Then come those in no room.
func judgedFirst(ix *index.Index) (rows []row) {
	for _, l := range ix.Plan().Levels {
		listed := 0
		for r := range l.Rooms.All() {
			one := row{level: l.ID, room: r.ID, openings: inRow(ix, nil, r.ID)}
			for _, s := range r.Sides {
				one.openings = inRow(ix, one.openings, s.ID)
			}
			rows = append(rows, one)
			listed += len(one.openings)
		}
		if listed < l.Openings.Len() {
			rows = append(rows, row{level: l.ID, openings: inNone(l, rows)})
		}
	}
	return rows
}

// inNone returns the openings of a level that no row lists.
func inNone(l *plan.Level, rows []row) (none []*plan.Opening) {
	isListed := map[*plan.Opening]bool{}
	for _, r := range rows {
		for _, o := range r.openings {
			isListed[o] = true
		}
	}
	for o := range l.Openings.All() {
		if !isListed[o] {
			none = append(none, o)
		}
	}
	return none
}

// inRow adds the openings that hang on a host, also by way of fixtures.
func inRow(ix *index.Index, row []*plan.Opening, host plan.ID) []*plan.Opening {
	row = append(row, ix.OpeningsOn(host)...)
	for _, f := range ix.FixturesOn(host) {
		row = inRow(ix, row, f.ID)
	}
	return row
}

// touched judges again what an edit may have changed since another index.
func (c *Checker) touched(was *index.Index) {
	rooms, openings := index.Touched(was, c.index)
	touched := slices.Concat(rooms, openings, c.waiverScopes(was))
	for _, id := range touched {
		c.forgetGone(was, id)
	}
	for _, id := range touched {
		scopes := scopesAt(c.index, id)
		c.remember(was, id, scopes)
		for _, s := range scopes {
			c.judge(s, c.waived.from)
		}
	}
}

// remember fills in what the scopes of a room or opening showed in an index before, where no
// edit had touched them yet.
func (c *Checker) remember(was *index.Index, id plan.ID, scopes []scope) {
	if !slices.ContainsFunc(scopes, func(s scope) bool { _, ok := c.seen[s.id]; return !ok }) {
		return
	}
	for _, s := range scopesAt(was, id) {
		if _, ok := c.seen[s.id]; !ok {
			c.seen[s.id] = seen{s.parts(), was.Plan().Waivers}
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
	type viewed struct {
		level *plan.Level
		rule  *rule.Rule
		scope scope
		now   seen
		of    *scoped // nil: it shows what it showed
	}
	var all []viewed
	for _, l := range append(slices.Clone(c.index.Plan().Levels), nil) {
		for _, r := range wideRules(l) {
			all = append(all, viewed{level: l, rule: r})
		}
	}
	onAllCores(len(all), 1, func(i int) {
		j := &all[i]
		j.scope = wideScope(c.index, j.level, j.rule)
		j.now.parts = j.scope.parts()
		for _, w := range c.waived.ofRule[j.rule.ID] {
			j.now.parts = append(j.now.parts, w)
		}
		if !c.hasSeen(j.scope.id, j.now) {
			j.of = c.findings(j.scope, judged([]*rule.Rule{j.rule}, c.fig))
		}
	})
	for _, j := range all {
		if j.of != nil {
			c.keep(j.now, j.of)
		}
	}
}

// judge runs the rules of a scope unless it shows what it showed, under the waivers that
// it did.
func (c *Checker) judge(s scope, waivers plan.Set[*plan.Waiver]) {
	if now := (seen{s.parts(), waivers}); !c.hasSeen(s.id, now) {
		c.keep(now, c.findings(s, c.rules.of(s.id)))
	}
}

func (c *Checker) hasSeen(id plan.ID, now seen) bool {
	before, ok := c.seen[id]
	return ok && before.waivers == now.waivers && slices.Equal(before.parts, now.parts)
}

func (c *Checker) keep(now seen, found *scoped) {
	c.ran++
	c.seen[found.id] = now
	if len(found.findings) > 0 {
		c.result.scopes = c.result.scopes.With(found)
	} else {
		c.result.scopes = c.result.scopes.Without(found.id)
	}
}

func (c *Checker) forget(id plan.ID) {
	delete(c.seen, id)
	c.result.scopes = c.result.scopes.Without(id)
}

// findings runs rules and marks what is waived.
func (c *Checker) findings(s scope, rules []*rule.Rule) *scoped {
	of := &scoped{id: s.id}
	for _, r := range rules {
		found := s.judge(r, c.fig)
		of.findings = slices.Grow(of.findings, len(found))
		for _, f := range found {
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
