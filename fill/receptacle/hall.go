package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Hall looks for long halls without a receptacle.
var Hall = rule.Rule{
	ID:     "hall-receptacle",
	Title:  words.New("rule.hall-receptacle.title", "Receptacle in a hall of 10 ft or more"),
	Figure: "hall-length",
	Doc:    words.New("rule.hall-receptacle.doc", `A hall whose center line is 10 ft long or longer has at least one receptacle, whatever its length, not higher than 5-1/2 ft. The length is that of the longest way along the center lines of its arms, round its bends and over its crossings, from wall to wall; what goes off by less than half its own width is a nook and no arm (our reading). Of a hall with walls aslant it is that of one of even width with the same area and perimeter. A doorway ends a hall as it ends the room. Not checked: halls that go on past an open side.`),
	Leaves: rule.OnlyIn(plan.UseHall),
	Room:   checkHall,
}

func checkHall(v index.RoomView, fig *code.Figures) []rule.Finding {
	length := centreLine(v.Room)
	if v.Room.Use != plan.UseHall || length+rule.Grain < fig.Outlets.HallLength || len(atMost(outlets(&v), fig.Spacing.ReceptacleMaxHeight)) > 0 {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Measured: rule.LengthOf(length), Limit: rule.LengthOf(fig.Outlets.HallLength),
		Message:  words.New("rule.hall-receptacle.missed", "{0} is {1} long and has no receptacle", v.Room.Name, words.Beside{Length: length, Other: fig.Outlets.HallLength}),
		Why:      words.New("rule.hall-receptacle.why", "A hall of {0} or more along its center line needs one.", fig.Limit("hall-length")),
		Remedies: addNear(&v, "duplex", fig, words.New("rule.hall-receptacle.remedy", "Add a receptacle"), anywhere),
	}}
}
