package choose

import (
	"math/big"

	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Column is one policy laid beside others: what it takes and what it leaves.
type Column struct {
	Policy   Policy
	Changes  []Change
	Plan     plan.Plan
	Takeoff  *takeoff.Takeoff
	Openings int // that are not removed
	// Least and Mean are of the volume left in the boxes whose fill is known, below zero
	// where one is over full; LeastAt is the tag of the tightest. Counted is how many they
	// are: with none, nothing is known.
	Least   unit.Volume
	LeastAt string
	Mean    unit.Volume // to the nearest ten-thousandth
	Counted int
	// OverFill and Failing are the tags of openings that the rule on fill stops, and of those
	// that another rule on boxes does.
	OverFill, Failing []string
}

// BoxesCost is what the boxes alone cost.
func (c Column) BoxesCost() unit.Money { return c.Takeoff.Cost(price.Boxes) }

// PartsCost is what all parts cost.
func (c Column) PartsCost() unit.Money { return c.Takeoff.Cost() }

// Column works out a policy. It fails where its edit cannot be applied or the plan after it
// not be checked.
func (f *Finder) Column(p Policy) (c Column, err error) {
	c = Column{Policy: p, Changes: f.Changes(p), Plan: f.ix.Plan()}
	for _, e := range editsOf(c.Changes) {
		if c.Plan, err = e.Apply(c.Plan); err != nil {
			return c, err
		}
	}
	c.Takeoff = f.taker.Whole(c.Plan)
	result, err := fill.Check(index.New(c.Plan))
	if err != nil {
		return c, err
	}
	c.spare()
	c.stops(result)
	return c, nil
}

// spare measures what is left in the boxes.
func (c *Column) spare() {
	sum := new(big.Int)
	for _, o := range c.Takeoff.Openings {
		if o.View.Opening.IsGone() {
			continue
		}
		c.Openings++
		tightest, n := o.Fill.Tightest()
		if n == 0 {
			continue
		}
		if c.Counted == 0 || tightest.Spare < c.Least {
			c.Least, c.LeastAt = tightest.Spare, o.View.Opening.Tag
		}
		c.Counted++
		sum.Add(sum, big.NewInt(int64(tightest.Spare)))
	}
	if c.Counted > 0 {
		c.Mean = unit.Volume(rounded(sum, int64(c.Counted)))
	}
}

// rounded divides, half away from zero.
func rounded(sum *big.Int, by int64) int64 {
	twice := new(big.Int).Mul(sum, big.NewInt(2))
	half := big.NewInt(by)
	if sum.Sign() < 0 {
		half.Neg(half)
	}
	return twice.Add(twice, half).Quo(twice, big.NewInt(2*by)).Int64()
}

// stops names the openings that rules on boxes stop, each once.
func (c *Column) stops(result fill.Result) {
	over, failing := map[plan.ID]bool{}, map[plan.ID]bool{}
	for f := range result.Each() {
		if f.Severity != rule.Stop || f.IsOpen || f.Waived != nil || f.Opening == "" || !fill.IsOfBox(f.Rule) {
			continue
		}
		if f.Rule == boxes.Fill.ID {
			over[f.Opening] = true
		} else {
			failing[f.Opening] = true
		}
	}
	for _, o := range c.Takeoff.Openings {
		if id := o.View.Opening.ID; over[id] {
			c.OverFill = append(c.OverFill, o.View.Opening.Tag)
		}
		if id := o.View.Opening.ID; failing[id] {
			c.Failing = append(c.Failing, o.View.Opening.Tag)
		}
	}
}
