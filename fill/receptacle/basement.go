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
	Doc:    words.New("rule.basement-receptacle.doc", `Each unfinished basement, and each unfinished part where finished rooms lie between, has a receptacle besides those for a single machine. Each room of that use is a part of its own, unless it is said to be finished, and so is each room of a basement that is said to be unfinished, whatever its use; that it is in a basement is told by its name or its level's. Finished parts are rooms of their use and checked as such.`),
	Leaves: leavesBasement,
	Room:   checkBasement,
}

// leavesBasement looks at what may be an unfinished part of a basement.
func leavesBasement(r *plan.Room, fig *code.Figures) words.Text {
	if r.IsUnfinished() {
		return words.Text{}
	}
	return rule.OnlyIn(plan.UseBasement)(r, fig)
}

func checkBasement(v index.RoomView, fig *code.Figures) []rule.Finding {
	if !v.InBasement || !v.Room.IsUnfinished() || len(atMost(forAll(outlets(&v)), fig.Spacing.ReceptacleMaxHeight)) > 0 {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Measured: rule.CountOf(0), Limit: rule.CountOf(1),
		Message:  words.New("rule.basement-receptacle.missed", "{0} has no receptacle that counts", v.Room.Name),
		Why:      words.New("rule.basement-receptacle.why", "Each unfinished part of a basement needs one besides those for a single machine."),
		Remedies: addNear(&v, "gfci", fig, words.New("rule.basement-receptacle.remedy", "Add a receptacle"), anywhere),
	}}
}
