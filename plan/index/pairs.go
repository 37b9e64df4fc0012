package index

import (
	"slices"

	"studbay/plan"
)

// paired is the pair that one opening is in.
type paired struct {
	opening plan.ID
	pair    *plan.Pair
}

func (p *paired) Key() plan.ID { return p.opening }

// PairOf returns the pair that an opening is in, or nil.
func (ix *Index) PairOf(opening plan.ID) *plan.Pair {
	if p, ok := ix.pairs.Get(opening); ok {
		return p.pair
	}
	return nil
}

// PairView is a pair with the line that it is bound about.
type PairView struct {
	Pair  *plan.Pair
	Line  plan.CenterLine  // the zero value where what it is about is at no face
	About plan.FixtureKind // of what it is about; empty: the face itself
}

// pairsOf lists the pairs of some openings, each once.
func (ix *Index) pairsOf(openings []*plan.Opening) (pairs []PairView) {
	if ix.pairs.Len() == 0 {
		return nil
	}
	for _, o := range openings {
		p := ix.PairOf(o.ID)
		if p == nil || slices.ContainsFunc(pairs, func(v PairView) bool { return v.Pair == p }) {
			continue
		}
		v := PairView{Pair: p}
		v.Line, _ = ix.plan.CenterLineOf(p.About)
		if f, _ := ix.plan.Fixture(p.About); f != nil {
			v.About = f.Kind
		}
		pairs = append(pairs, v)
	}
	return pairs
}

func (u *updating) withoutPair(p *plan.Pair) {
	u.pairs = u.pairs.Without(p.One).Without(p.Other)
}

func (u *updating) withPair(_ plan.ID, p *plan.Pair) {
	u.pairs = u.pairs.With(&paired{p.One, p}).With(&paired{p.Other, p})
}

// pair marks its openings and the rooms that they are in.
func (t touching) pair(p *plan.Pair) {
	t.end(p.One)
	t.end(p.Other)
}

// pairsAbout marks the rooms of the pairs that are about a thing, which may stand on
// another that was moved.
func (t touching) pairsAbout(id plan.ID) {
	for _, ix := range []*Index{t.old, t.now} {
		for p := range ix.plan.Pairs.All() {
			if p.About == id {
				t.pair(p)
			}
		}
	}
}
