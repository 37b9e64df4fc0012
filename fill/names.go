package fill

import "studbay/fill/rule"

// What the checker returns goes by these names for those who ask for findings and write
// no rules.
type (
	Finding      = rule.Finding
	Remedy       = rule.Remedy
	Stretch      = rule.Stretch
	Severity     = rule.Severity
	Quantity     = rule.Quantity
	QuantityUnit = rule.QuantityUnit
)

// The severities and units of quantities, as package rule defines them.
const (
	Note = rule.Note
	Warn = rule.Warn
	Stop = rule.Stop

	NoQuantity = rule.NoQuantity
	OfLength   = rule.OfLength
	OfVolume   = rule.OfVolume
	OfCount    = rule.OfCount
)
