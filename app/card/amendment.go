package card

import (
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/words"
)

// Figure is a figure of an edition that local rules may change.
type Figure struct {
	Name string // in assets/code
	Text words.Text
}

// Figures lists them in the order they are offered. Values are written as the tables
// of the editions hold them: inches, cubic inches, a count, or yes and no.
var Figures = []Figure{
	{"wall-reach", words.New("figure.wall-reach", "reach along a wall")},
	{"wall-space-min", words.New("figure.wall-space-min", "least wall space")},
	{"floor-receptacle-reach", words.New("figure.floor-receptacle-reach", "floor receptacle, farthest from its wall")},
	{"receptacle-max-height", words.New("figure.receptacle-max-height", "highest receptacle that counts")},
	{"fixed-cabinet-breaks", words.New("figure.fixed-cabinet-breaks", "a fixed cabinet ends a wall space")},
	{"stationary-appliance-breaks", words.New("figure.stationary-appliance-breaks", "a stationary appliance ends a wall space")},
	{"fixed-panel-counts", words.New("figure.fixed-panel-counts", "the fixed panel of a sliding door is wall space")},
	{"room-divider-counts", words.New("figure.room-divider-counts", "a railing or divider is wall space")},
	{"counter-width-min", words.New("figure.counter-width-min", "least counter")},
	{"counter-reach", words.New("figure.counter-reach", "reach along a counter")},
	{"device-allowances", words.New("figure.device-allowances", "allowances of a yoke")},
	{"grounds-together", words.New("figure.grounds-together", "grounds counted together")},
	{"ground-further", words.New("figure.ground-further", "each further ground, percent")},
	{"isolated-grounds-apart", words.New("figure.isolated-grounds-apart", "isolated grounds are counted apart")},
	{"loop-allowances", words.New("figure.loop-allowances", "allowances of a loop")},
	{"canopy-wires", words.New("figure.canopy-wires", "fixture wires under a canopy that are free")},
	{"terminal-block", words.New("figure.terminal-block", "allowances of a terminal block")},
	{"barrier-metal", words.New("figure.barrier-metal", "metal barrier, volume")},
	{"barrier-nonmetallic", words.New("figure.barrier-nonmetallic", "nonmetallic barrier, volume")},
}

// AmendmentName says what an amendment is of.
func AmendmentName(a plan.Amendment) words.Text {
	for _, f := range Figures {
		if f.Name == a.Figure {
			return f.Text
		}
	}
	for _, r := range fill.Rules {
		if r.ID == a.Rule {
			return r.Title
		}
	}
	return words.New("plain", "{0}", a.Figure+a.Rule)
}

// CheckAmendment reports why an edition cannot take an amendment.
func CheckAmendment(edition string, a plan.Amendment) error {
	figures, err := code.Edition(edition)
	if err != nil {
		return err
	}
	_, err = figures.WithAmendments([]code.Amendment{{Figure: a.Figure, Value: a.Value, Rule: a.Rule, Reason: a.Reason}})
	return err
}

// amendmentPage shows a local amendment: what it changes, to what, and why.
var amendmentPage = page[plan.Amendment]{
	head: func(s subject[plan.Amendment], x plan.Amendment) (string, string) {
		second := s.say("amendment.figure", "Another figure than the edition's, printed with its reason.")
		if x.Rule != "" {
			second = s.say("amendment.rule", "This rule is turned off, which is printed with its reason.")
		}
		return look.Capital(s.Voice.Say(AmendmentName(x))), second
	},
	rows: []rowOf[plan.Amendment]{
		when(func(x plan.Amendment) bool { return x.Figure != "" },
			amendedRow(words.New("amendment.value", "Value"), func(x *plan.Amendment) *string { return &x.Value })),
		amendedRow(words.New("waiver.reason", "Reason"), func(x *plan.Amendment) *string { return &x.Reason }),
	},
	below: []rowOf[plan.Amendment]{buttonRow[plan.Amendment](words.New("amendment.back", "Remove it"), "delete")},
}

// amendedRow is a field of a part of an amendment that the plan's edition must take.
func amendedRow(label words.Text, at func(*plan.Amendment) *string) rowOf[plan.Amendment] {
	return func(s subject[plan.Amendment]) row {
		taken := texts(s.Context).checked(func(text string) error {
			x := s.now()
			*at(&x) = text
			return s.fault(CheckAmendment(s.Index.Plan().Header.Edition, x))
		})
		f := field(s.Context, s.Voice.Say(label), bound(s, at), taken)
		return row{f, f.Update}
	}
}
