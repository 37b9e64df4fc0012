package card

import "studbay/app/look"

// The rows that a form has in common with a card.
type (
	Choice = look.Choice
	Option = look.Option
	Entry  = look.Entry
)

// NewChoice makes a choice.
var NewChoice = look.NewChoice

// LabelWidth is that of the names of fields.
const LabelWidth = look.LabelWidth
