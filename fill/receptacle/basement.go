package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Basement looks for unfinished parts of a basement without a receptacle.
var Basement = rule.Rule{
	ID:     "basement-receptacle",
	Title:  words.New("rule.basement-receptacle.title", "Receptacle in each unfinished part of a basement"),
	Figure: "basement-receptacle",
	Doc:    words.New("rule.basement-receptacle.doc", `Each unfinished basement, and each unfinished part where finished rooms lie between, has a receptacle besides those for a single machine. Each room of that use is a part of its own. Finished parts are rooms of their use and checked as such.`),
	Leaves: rule.OnlyIn(plan.UseBasement),
	Room:   checkBasement,
}

func checkBasement(v index.RoomView, fig *code.Figures) []rule.Finding {
	if v.Room.Use != plan.UseBasement || len(atMost(forAll(outlets(&v)), fig.Spacing.ReceptacleMaxHeight)) > 0 {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Measured: rule.CountOf(0), Limit: rule.CountOf(1),
		Message:  words.New("rule.basement-receptacle.missed", "{0} has no receptacle that counts", v.Room.Name),
		Why:      words.New("rule.basement-receptacle.why", "Each unfinished part of a basement needs one besides those for a single machine."),
		Remedies: addNear(&v, "gfci", fig, words.New("rule.basement-receptacle.remedy", "Add a receptacle"), anywhere),
	}}
}
