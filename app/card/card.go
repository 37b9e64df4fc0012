// Package card holds what stands in the right column: one card a file for what is chosen
// (an opening, a room, a door, a counter), as data: a page that says how such a thing is
// read and changed, and its rows.
//
// A card shows what it is given and turns what is typed into edits. It judges no rule,
// does no arithmetic of the code and touches no file. A field that was not edited
// never writes back.
package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/plan"
)

// A Card is one thing's card. Show brings it up to a later plan and reports false
// where it can no longer show what it was made for, so that another must be made.
type Card interface {
	Object() fyne.CanvasObject
	Show(bind.Context) bool
}

// pages has one row a kind of thing that has a card, by the letter of its ID.
var pages = map[byte]func(bind.Context, ...plan.ID) Card{
	plan.KindOpening: openingPage.card,
	plan.KindRoom:    roomPage.card,
	plan.KindSide:    sidePage.card,
	plan.KindBreak:   breakPage.card,
	plan.KindFixture: fixturePage.card,
	plan.KindCable:   cablePage.card,
	plan.KindControl: controlPage.card,
	plan.KindCircuit: circuitPage.card,
	plan.KindPair:    pairPage.card,

	plan.KindLevel:     levelPage.card,
	plan.KindDecision:  decisionPage.card,
	plan.KindWaiver:    waiverPage.card,
	plan.KindWish:      wishPage.card,
	plan.KindAmendment: amendmentPage.card,
	plan.KindOwn:       ownPage.card,
}

// For returns the card of what is chosen: of the one thing, of several together, or of the
// plan where nothing is. Among several of more than one kind it is of the openings.
func For(c bind.Context, chosen []plan.ID) Card {
	if len(chosen) > 0 {
		if of, ok := pages[kindOf(chosen)]; ok {
			if card := of(c, chosen...); card != nil {
				return card
			}
		}
		if len(chosen) > 1 {
			return mixedPage.card(c, chosen...)
		}
	}
	return planPage.card(c, "")
}

// kindOf returns the kind that the card of several things is of; 0 where there is none.
func kindOf(chosen []plan.ID) byte {
	kind := chosen[0].Kind()
	for _, id := range chosen {
		switch {
		case id.Kind() == plan.KindOpening:
			return plan.KindOpening
		case id.Kind() != kind:
			kind = 0
		}
	}
	return kind
}
