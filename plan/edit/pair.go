package edit

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// PairUp binds an opening in a pair about the center line of its face or of what stands
// there. Its partner is the nearest opening of its kind at the other hand, which comes to
// the place as far from the line and as high; where there is none within Near of that
// place, one like it is added there. A partner that is named comes there from anywhere.
type PairUp struct {
	Pair    plan.ID // of the new pair
	Opening plan.ID
	About   plan.ID // a fixture or a side
	With    plan.ID // the partner; none: the nearest of its kind
	New     plan.ID // of the partner, where one is added
	Near    unit.Length
}

// Name returns "Bind a pair".
func (PairUp) Name() words.Text { return Add{Thing: &plan.Pair{}}.Name() }

// Apply fails with ErrGone where one of the things is not in the plan, with ErrNoRoom where
// the opening is not on the face of the line, stands on it, or has no room at the other
// hand, and with ErrTaken where it is in a pair already.
func (e PairUp) Apply(p plan.Plan) (plan.Plan, error) {
	o, _ := p.Opening(e.Opening)
	if o == nil {
		return plan.Plan{}, plan.Gone(plan.KindOpening)
	}
	line, ok := p.CenterLineOf(e.About)
	if !ok || o.At.Part != plan.PartFace || o.At.Host != line.Side || line.Opposite(o.At.Along) == o.At.Along {
		return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "pair-line", "a pair stands at either hand of a center line on one wall")
	}
	to := o.At
	to.Along = line.Opposite(o.At.Along)
	partner, err := e.partner(p, o, to)
	if err != nil {
		return plan.Plan{}, err
	}
	if p, err = p.With(nil, partner); err != nil {
		return plan.Plan{}, err
	}
	return Add{Thing: &plan.Pair{ID: e.Pair, One: o.ID, Other: partner.ID, About: e.About}}.Apply(p)
}

// partner returns the opening that stands at the other hand, there.
func (e PairUp) partner(p plan.Plan, o *plan.Opening, to plan.Anchor) (*plan.Opening, error) {
	var best *plan.Opening
	if e.With != "" {
		if best, _ = p.Opening(e.With); best == nil {
			return nil, plan.Gone(plan.KindOpening)
		}
		now := *best
		now.At, now.Height = to, o.Height
		return &now, nil
	}
	for _, other := range p.Openings() {
		if other.ID == o.ID || other.At.Host != to.Host || other.At.Part != to.Part || other.Kind != o.Kind || other.Status.IsOld() || p.PairOf(other.ID) != nil {
			continue
		}
		off := (other.At.Along - to.Along).Abs()
		isThere := (other.At.Along < o.At.Along) == (to.Along < o.At.Along)
		if isThere && off <= e.Near && (best == nil || off < (best.At.Along-to.Along).Abs()) {
			best = other
		}
	}
	if best == nil {
		if err := p.CheckNew(e.New, plan.KindOpening); err != nil {
			return nil, err
		}
		like, _ := plan.LikeOf(o, e.New, func(id plan.ID) plan.ID { return id }).(*plan.Opening)
		like.At, like.From = to, ""
		return like, nil
	}
	now := *best
	now.At, now.Height = to, o.Height
	return &now, nil
}

// PairBetween returns the edit that binds two openings of one face about the center line
// between them that is nearest to their middle: of what stands there, or of the face. The
// first stays where it is. It reports false where they are not two of one face with such a
// line between, or one of them is in a pair.
func PairBetween(p plan.Plan, one, other, pair plan.ID) (PairUp, bool) {
	a, level := p.Opening(one)
	b, _ := p.Opening(other)
	if a == nil || b == nil || one == other || a.At.Part != plan.PartFace || b.At.Part != plan.PartFace || a.At.Host != b.At.Host || p.PairOf(one) != nil || p.PairOf(other) != nil {
		return PairUp{}, false
	}
	twice := a.At.Along + b.At.Along // of their middle
	low, high := 2*min(a.At.Along, b.At.Along), 2*max(a.At.Along, b.At.Along)
	up, off, found := PairUp{Pair: pair, Opening: one, With: other}, unit.Length(0), false
	try := func(id plan.ID) {
		line, ok := p.CenterLineOf(id)
		if !ok || line.Side != a.At.Host || line.Twice <= low || line.Twice >= high {
			return
		}
		if away := (line.Twice - twice).Abs(); !found || away < off {
			up.About, off, found = id, away, true
		}
	}
	for f := range level.Fixtures.All() {
		try(f.ID)
	}
	try(a.At.Host)
	return up, found
}
