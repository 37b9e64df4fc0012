package plan

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Pair is two openings bound about a center line: of a mirror, a basin, a bed or other
// fixture at a face, or of the face itself. While both are on one face they stand as far
// from the line at either hand and as high: where one of them or what they are about is
// moved, the others come along.
type Pair struct {
	ID    ID     `json:"id"`
	One   ID     `json:"one"`
	Other ID     `json:"other"`
	About ID     `json:"about"` // a fixture or a side
	Note  string `json:"note,omitempty"`
	Extra Extra  `json:"-"`
}

// Key returns the pair's ID.
func (p *Pair) Key() ID { return p.ID }

// Partner returns the other of the two, or nothing where the opening is not in the pair.
func (p *Pair) Partner(of ID) ID {
	switch of {
	case p.One:
		return p.Other
	case p.Other:
		return p.One
	}
	return ""
}

// PairOf returns the pair that an opening is in, or nil.
func (p Plan) PairOf(opening ID) *Pair {
	for x := range p.Pairs.All() {
		if x.Partner(opening) != "" {
			return x
		}
	}
	return nil
}

// CenterLine is an upright line on a face: its side, and twice its place along it, for the
// middle of what is an odd number of nanometres wide lies between two.
type CenterLine struct {
	Side  ID
	Twice unit.Length
}

// Opposite returns the place at the other hand, as far from the line.
func (c CenterLine) Opposite(along unit.Length) unit.Length { return c.Twice - along }

// CenterLineOf returns the center line of a side or of a fixture that is at a face, by
// itself or on what stands there. It reports false of anything else.
func (p Plan) CenterLineOf(id ID) (CenterLine, bool) {
	if ref, _ := p.Side(id); ref != nil {
		return CenterLine{id, ref.Line().Length()}, true
	}
	f, _ := p.Fixture(id)
	if f == nil {
		return CenterLine{}, false
	}
	twice := f.Width // of its middle, from the left end of what is looked at
	for range MaxStack {
		switch f.At.Part {
		case PartFace:
			return CenterLine{f.At.Host, 2*f.At.Along + twice}, true
		case PartTop: // its place there is its middle
			twice += 2*f.At.Along - f.Width
		default:
			return CenterLine{}, false
		}
		if f, _ = p.Fixture(f.At.Host); f == nil {
			return CenterLine{}, false
		}
	}
	return CenterLine{}, false
}

func (p Plan) checkPair(x *Pair) error {
	if err := checkText(x); err != nil {
		return err
	}
	if err := wellFormed(x.ID, KindPair); err != nil {
		return err
	}
	if err := distinct([]ID{x.One, x.Other}, p.isOpening, thePair); err != nil {
		return err
	}
	if k := x.About.Kind(); k != KindFixture && k != KindSide || !p.Has(x.About) {
		return Refuse(ErrGone, "pair-about", "{0} is about a wall, a cabinet or a piece of furniture that is not in the plan", thePair).At("/about")
	}
	for other := range p.Pairs.All() {
		if other.ID != x.ID && (other.Partner(x.One) != "" || other.Partner(x.Other) != "") {
			return Refuse(ErrTaken, "pair-taken", "an opening is in one pair only")
		}
	}
	return nil
}

// withPairsKept returns a plan in which the pairs of a noun that was put in stand as they
// are bound; was is the plan before.
func (p Plan) withPairsKept(was Plan, t Thing) (Plan, error) {
	if p.Pairs.Len() == 0 {
		return p, nil
	}
	switch t := t.(type) {
	case *Opening:
		return p.withPartner(was, t.ID)
	case *Fixture:
		return p.withPairsMoved(was)
	}
	return p, nil
}

// withPartner brings the partner of an opening that was moved to its place.
func (p Plan) withPartner(was Plan, id ID) (Plan, error) {
	x := p.PairOf(id)
	if x == nil {
		return p, nil
	}
	before, _ := was.Opening(id)
	now, _ := p.Opening(id)
	partner, _ := p.Opening(x.Partner(id))
	line, ok := p.CenterLineOf(x.About)
	if before == nil || partner == nil || partner.Status.IsOld() || !ok || before.At == now.At && before.Height == now.Height ||
		!isOnLine(now, line) || !isOnLine(partner, line) {
		return p, nil
	}
	o := *partner
	if before.At != now.At {
		o.At.Along = line.Opposite(now.At.Along)
	}
	if before.Height != now.Height {
		o.Height = now.Height
	}
	if o.At == partner.At && o.Height == partner.Height {
		return p, nil
	}
	return p.withOpening(&o)
}

func isOnLine(o *Opening, line CenterLine) bool { return o.At.Host == line.Side }

// withPairsMoved brings pairs along whose center line has moved.
func (p Plan) withPairsMoved(was Plan) (Plan, error) {
	for x := range p.Pairs.All() {
		before, ok := was.CenterLineOf(x.About)
		now, still := p.CenterLineOf(x.About)
		one, _ := p.Opening(x.One)
		other, _ := p.Opening(x.Other)
		if !ok || !still || before == now || one == nil || other == nil || one.Status.IsOld() || other.Status.IsOld() || !isOnLine(one, before) || !isOnLine(other, before) {
			continue
		}
		first, second := *one, *other
		first.At.Host, first.At.Along = now.Side, one.At.Along+(now.Twice-before.Twice)/2
		second.At.Host, second.At.Along = now.Side, other.At.Along+now.Twice-before.Twice-(now.Twice-before.Twice)/2
		for _, o := range []*Opening{&first, &second} {
			next, err := p.withOpening(o)
			if err != nil {
				return Plan{}, err
			}
			p = next
		}
	}
	return p, nil
}

var thePair = words.New("the.pair", "the pair")
