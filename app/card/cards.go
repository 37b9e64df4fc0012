package card

import "studbay/plan"

// kinds has one row a kind of thing that has a card, by the letter of its ID.
var kinds = map[byte]func(Context, plan.ID) Card{
	plan.KindOpening: openingPage.card,
	plan.KindRoom:    roomPage.card,
	plan.KindSide:    sidePage.card,
	plan.KindBreak:   breakPage.card,
	plan.KindFixture: fixturePage.card,
	plan.KindCable:   cablePage.card,
	plan.KindControl: controlPage.card,
	plan.KindCircuit: circuitPage.card,

	plan.KindLevel:     levelPage.card,
	plan.KindDecision:  decisionPage.card,
	plan.KindWaiver:    waiverPage.card,
	plan.KindAmendment: amendmentPage.card,
}

// For returns the card of what is chosen: of the one thing, of several together, or
// of the plan where nothing is.
func For(c Context, chosen []plan.ID) Card {
	switch len(chosen) {
	case 0:
		return planPage.card(c, "")
	case 1:
		if make, ok := kinds[chosen[0].Kind()]; ok {
			if card := make(c, chosen[0]); card != nil {
				return card
			}
		}
		return planPage.card(c, "")
	}
	return severalPage(chosen).card(c, "")
}
