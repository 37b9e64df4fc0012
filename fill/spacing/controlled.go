package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Controlled tells of receptacles that a switch is drawn to without a word on how much of
// them it controls.
var Controlled = rule.Rule{
	ID:     "switched-receptacle",
	Title:  words.New("rule.switched-receptacle.title", "Receptacles that a switch controls"),
	Figure: "switched-receptacle",
	Doc:    words.New("rule.switched-receptacle.doc", `A receptacle that a wall switch controls as a whole lights the room and is not among those that the spacing along walls asks for. Where a plain receptacle is drawn as the load of a switch and nothing is entered of its halves, it is taken as controlled as a whole, is not counted for the wall, and is told here. Not checked: receptacles whose kind or yokes say how much of them is switched, and which lights the room has.`),
	Leaves: rule.OnlyIn(wallUses...),
	Room:   checkControlled,
}

func checkControlled(v index.RoomView, _ *code.Figures) (found []rule.Finding) {
	if !slices.Contains(wallUses, v.Room.Use) {
		return nil
	}
	for _, s := range v.Sides {
		found = append(found, controlled(v, s.Openings)...)
	}
	return append(found, controlled(v, v.Floor)...)
}

func controlled(v index.RoomView, openings []*plan.Opening) (found []rule.Finding) {
	for _, o := range openings {
		if !o.IsInUse() || !kindCounts(o.Kind, v.Room.Use) || isWhollySwitched(o) || !isWhollyControlled(o, v) {
			continue
		}
		found = append(found, rule.Finding{
			Severity: rule.Note, IsOpen: true, Opening: o.ID, About: o.ID,
			Message: words.New("rule.switched-receptacle.whole", "{0} is drawn as the load of a switch and does not count for the wall", o.Tag),
			Why:     words.New("rule.switched-receptacle.why", "Nothing is entered of its halves, so it is taken as switched as a whole: then it lights the room and serves no wall. Where one half is always on, enter that on its yoke."),
			Remedies: []rule.Remedy{{
				Label: words.New("rule.switched-receptacle.half", "Switch one half of {0} only", o.Tag),
				Edit:  edit.ChangeOpening{Opening: halfSwitched(*o)},
			}},
		})
	}
	return found
}

// halfSwitched returns a receptacle of whose yoke one half is always on.
func halfSwitched(o plan.Opening) plan.Opening {
	devices := make([]plan.Device, max(len(o.Devices), 1))
	copy(devices, o.Devices)
	if len(o.Devices) == 0 {
		devices[0].Kind = usualDevice(o.Kind)
	}
	for i := range devices {
		devices[i].Switched = plan.HalfSwitched
	}
	o.Devices = devices
	return o
}
