package arrange

import (
	"cmp"
	"slices"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Spread sets things on one face, or in one ceiling or on one floor, so that the clear
// spaces between them are alike: the first and the last stay where they are. ToEnds takes
// the ends of the face for them, which have the same space beside them.
type Spread struct {
	Things []plan.ID
	ToEnds bool
}

// Name returns "Spread evenly".
func (Spread) Name() words.Text { return words.New("edit.spread", "Spread evenly") }

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where they are not on one face or there is not space enough between the ends. A space
// that does not divide evenly is rounded to the nanometre at each thing.
func (e Spread) Apply(p plan.Plan) (plan.Plan, error) {
	all, err := together(p, e.Things)
	if err != nil {
		return plan.Plan{}, err
	}
	if len(all) == 0 || len(all) < 3 && !e.ToEnds {
		return plan.Plan{}, plan.Refuse(nil, "spread-few", "choose three or more on one face to spread them between the first and the last")
	}
	if first := *plan.AnchorOf(all[0]); isFlat(first) {
		if e.ToEnds {
			return plan.Plan{}, notOneFace()
		}
		return spreadFlat(p, all)
	}
	slices.SortStableFunc(all, func(a, b plan.Thing) int { return cmp.Compare(plan.AnchorOf(a).Along, plan.AnchorOf(b).Along) })
	var taken unit.Length
	for _, t := range all {
		taken += plan.WidthOf(t)
	}
	from, to, gaps := unit.Length(0), p.FaceLength(*plan.AnchorOf(all[0])), len(all)+1
	if !e.ToEnds {
		last := all[len(all)-1]
		from, to, gaps = plan.AnchorOf(all[0]).Along, plan.AnchorOf(last).Along+plan.WidthOf(last), len(all)-1
	}
	free := to - from - taken
	if free < 0 {
		return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "spread-full", "there is not space enough between the ends")
	}
	var edits []edit.Edit
	var before unit.Length // taken by those to the left
	for i, t := range all {
		nth := i
		if e.ToEnds {
			nth++
		}
		at := *plan.AnchorOf(t)
		at.Along = from + before + free*unit.Length(nth)/unit.Length(gaps)
		before += plan.WidthOf(t)
		edits = append(edits, placing{t.Key(), at, 0})
	}
	return inTurn(p, edits)
}

// together returns things that stand on the same part of one host.
func together(p plan.Plan, ids []plan.ID) (all []plan.Thing, err error) {
	for _, id := range plan.Distinct(ids) {
		t, _ := p.Find(id)
		if t == nil {
			return nil, plan.Gone(id.Kind())
		}
		at := plan.AnchorOf(t)
		if at == nil {
			return nil, notOneFace()
		}
		if len(all) > 0 {
			if first := plan.AnchorOf(all[0]); first.Host != at.Host || first.Part != at.Part {
				return nil, notOneFace()
			}
		}
		all = append(all, t)
	}
	return all, nil
}

func notOneFace() error {
	return plan.Refuse(plan.ErrNoRoom, "one-face", "choose things that are all on one face, or in one ceiling or floor")
}

// spreadFlat spreads things between the two of them that are farthest apart.
func spreadFlat(p plan.Plan, all []plan.Thing) (plan.Plan, error) {
	slices.SortStableFunc(all, func(a, b plan.Thing) int {
		return cmp.Or(cmp.Compare(plan.AnchorOf(a).At.X, plan.AnchorOf(b).At.X), cmp.Compare(plan.AnchorOf(a).At.Y, plan.AnchorOf(b).At.Y))
	})
	if box := boxOfAnchors(all); box.Height() > box.Width() {
		slices.SortStableFunc(all, func(a, b plan.Thing) int { return cmp.Compare(plan.AnchorOf(a).At.Y, plan.AnchorOf(b).At.Y) })
	}
	first, last := plan.AnchorOf(all[0]).At, plan.AnchorOf(all[len(all)-1]).At
	way, gaps := last.Sub(first), unit.Length(len(all)-1)
	var edits []edit.Edit
	for i, t := range all {
		at, n := *plan.AnchorOf(t), unit.Length(i)
		at.At = first.Add(geom.Point{X: way.X * n / gaps, Y: way.Y * n / gaps})
		edits = append(edits, placing{t.Key(), at, 0})
	}
	return inTurn(p, edits)
}

func boxOfAnchors(all []plan.Thing) geom.Box {
	var points []geom.Point
	for _, t := range all {
		points = append(points, plan.AnchorOf(t).At)
	}
	return geom.BoxOf(points...)
}

// SameDistance sets things as far from the end of their face as another is from that of
// its own: its left end, or its right.
type SameDistance struct {
	As      plan.ID
	Things  []plan.ID
	IsRight bool
}

// Name returns "Set at the same distance".
func (SameDistance) Name() words.Text {
	return words.New("edit.same-distance", "Set at the same distance")
}

// Apply fails with ErrGone where one of the things is not in the plan, and with ErrNoRoom
// where one is on no face or does not fit there.
func (e SameDistance) Apply(p plan.Plan) (plan.Plan, error) {
	as, _ := p.Find(e.As)
	if as == nil {
		return plan.Plan{}, plan.Gone(e.As.Kind())
	}
	like := plan.AnchorOf(as)
	if like == nil || isFlat(*like) {
		return plan.Plan{}, notOnFace(p.Text(e.As))
	}
	away := like.Along
	if e.IsRight {
		away = plan.FromRight(p.FaceLength(*like), like.Along, plan.WidthOf(as))
	}
	var edits []edit.Edit
	for _, id := range e.Things {
		t, _ := p.Find(id)
		if t == nil {
			return plan.Plan{}, plan.Gone(id.Kind())
		}
		at := plan.AnchorOf(t)
		if at == nil || isFlat(*at) {
			return plan.Plan{}, notOnFace(p.Text(id))
		}
		to := *at
		if to.Along = away; e.IsRight {
			to.Along = plan.FromRight(p.FaceLength(to), away, plan.WidthOf(t))
		}
		edits = append(edits, placing{t.Key(), to, 0})
	}
	return inTurn(p, edits)
}

func notOnFace(what words.Text) error {
	return plan.Refuse(plan.ErrNoRoom, "not-on-face", "{0} is on no face", what)
}
