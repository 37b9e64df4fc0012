package card

import "studbay/plan"

// kinds has one row a kind of thing that has a card, by the letter of its ID.
var kinds = map[byte]func(Context, plan.ID) Card{
	plan.KindOpening: newOpeningCard,
	plan.KindRoom:    newRoomCard,
	plan.KindSide:    newSideCard,
	plan.KindBreak:   newBreakCard,
	plan.KindFixture: newFixtureCard,
	plan.KindCable:   newCableCard,
	plan.KindControl: newControlCard,
	plan.KindCircuit: newCircuitCard,

	plan.KindLevel:     newLevelCard,
	plan.KindDecision:  newDecisionCard,
	plan.KindWaiver:    newWaiverCard,
	plan.KindAmendment: newAmendmentCard,
}

// For returns the card of what is chosen: of the one thing, of several together, or
// of the plan where nothing is.
func For(c Context, chosen []plan.ID) Card {
	switch len(chosen) {
	case 0:
		return newPlanCard(c)
	case 1:
		if make, ok := kinds[chosen[0].Kind()]; ok {
			if card := make(c, chosen[0]); card != nil {
				return card
			}
		}
		return newPlanCard(c)
	}
	return newSeveralCard(c, chosen)
}
