package card

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// cablePage shows a cable: what it is and where it runs.
var cablePage = page[plan.Cable]{
	head: func(s subject[plan.Cable], x plan.Cable) (string, string) {
		return s.say("cable.title", "Cable {0}/{1}", x.Size, x.Wires), s.say("cable.second", "{0} to {1}", s.endName(x.From), s.endName(x.To))
	},
	rows: []rowOf[plan.Cable]{
		fieldRow(words.New("cable.size", "Wire size, AWG"), func(x *plan.Cable) *unit.AWG { return &x.Size }, wireSizes),
		fieldRow(words.New("cable.wires", "Insulated conductors"), func(x *plan.Cable) *int { return &x.Wires }, counts),
		choiceRow(words.New("cable.ground", "Ground"), func(x *plan.Cable) *bool { return &x.Ground }, yesNo),
		fieldRow(words.New("cable.length", "Length, measured"), func(x *plan.Cable) *unit.Length { return &x.Length }, measured),
	},
}

// measured are lengths of which none is an empty line.
func measured(c *Context) spelling[unit.Length] { return orNothing(lengths(c)) }

// endName names what a cable ends at.
func (c *Context) endName(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return o.Tag
	}
	if x, _ := p.Fixture(id); x != nil {
		return c.Voice.Say(x.Kind.Text())
	}
	return "?"
}
