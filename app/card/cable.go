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
		spaceRow(func(x plan.Cable) plan.ID { return x.From }, func(x *plan.Cable) *int { return &x.FromSpace }),
		spaceRow(func(x plan.Cable) plan.ID { return x.To }, func(x *plan.Cable) *int { return &x.ToSpace }),
		fieldRow(words.New("cable.length", "Length, measured"), func(x *plan.Cable) *unit.Length { return &x.Length }, measured),
	},
}

// spaceRow is the choice of the space that a cable enters at an end whose box barriers part.
func spaceRow(end func(plan.Cable) plan.ID, at func(*plan.Cable) *int) rowOf[plan.Cable] {
	return func(s subject[plan.Cable]) row {
		o, _ := s.Index.Plan().Opening(end(s.now()))
		if o == nil || len(o.Assembly.Barriers) == 0 {
			return row{}
		}
		return choiceOf(s.Context, s.say("cable.space", "In {0} it enters", o.Tag), bound(s, at), func(*Context) []option[int] {
			options := []option[int]{{value: 0, text: words.New("cable.space.untold", "not told")}}
			for n := range len(o.Assembly.Barriers) + 1 {
				options = append(options, option[int]{value: n + 1, text: words.New("cable.space.of", "space {0} of {1}", n+1, len(o.Assembly.Barriers)+1)})
			}
			return options
		})
	}
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
