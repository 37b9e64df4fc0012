package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Garage looks for vehicle bays without a receptacle.
var Garage = rule.Rule{
	ID:     "garage-receptacle",
	Title:  words.New("rule.garage-receptacle.title", "Receptacles in a garage"),
	Figure: "garage-receptacle",
	Doc:    words.New("rule.garage-receptacle.doc", `A garage that is attached, and one that is not but has power, has a receptacle for each vehicle bay, not higher than 5-1/2 ft; those for a single machine do not count. From 2017 on each bay has its own where the doors for vehicles tell the bays: all doors in one wall, each of as many bays as the others, parted halfway from the middle of one bay to that of the next (our reading). It is attached where a side of it stands back to back with a room of the house, and has power where that is said, else where anything but low voltage is drawn in it. It has one bay unless more are said. Not checked: in which bay one stands where the doors do not tell; accessory buildings that are no garage.`),
	Leaves: rule.OnlyIn(plan.UseGarage),
	Room:   checkGarage,
}

func checkGarage(v index.RoomView, fig *code.Figures) []rule.Finding {
	if v.Room.Use != plan.UseGarage || !isAttached(&v) && !hasPower(&v) {
		return nil
	}
	want := max(v.Room.Bays, 1)
	all := atMost(forAll(outlets(&v)), fig.Outlets.GarageHeight)
	have, missed := len(all), anywhere
	if b, ok := baysOf(&v, want); ok && fig.Outlets.EachBay {
		have, missed = b.served(all), b.unserved(all)
	}
	if have >= want {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Stop, Measured: rule.CountOf(have), Limit: rule.CountOf(want),
		Message: words.New("rule.garage-receptacle.missed", "{0} has a receptacle for {1} of its {2} vehicle bays", v.Room.Name, have, want),
		Why:     words.New("rule.garage-receptacle.why", "Each bay needs one, not higher than {0}; those for a single machine do not count.", fig.Limit("garage-max-height")),
	}
	if want == 1 {
		f.Message = words.New("rule.garage-receptacle.none", "{0} has no receptacle that counts", v.Room.Name)
	}
	if want-have == 1 {
		f.Remedies = addNear(&v, "garage", fig, words.New("rule.garage-receptacle.remedy", "Add a garage receptacle"), missed)
	}
	return []rule.Finding{f}
}

func anywhere(place) (unit.Length, bool) { return 0, true }

// isAttached reports whether a side stands back to back with a room of the house.
func isAttached(v *index.RoomView) bool {
	for _, s := range v.Sides {
		for _, b := range s.Behind {
			if b.Room != v.Room && b.Room.Use != plan.UseOutdoors && b.Room.Use != plan.UseGarage {
				return true
			}
		}
	}
	return false
}

// hasPower reports whether a garage has power: as is said, else where anything but low voltage is
// drawn in it.
func hasPower(v *index.RoomView) bool {
	if v.Room.Power != plan.Unsaid {
		return v.Room.Power == plan.AnswerYes
	}
	for _, p := range v.Parts() {
		o, ok := p.(*plan.Opening)
		if !ok || o == nil || !o.IsInUse() {
			continue
		}
		if k := part.All().Kind(o.Kind); k != nil && k.Family != part.LowVoltage {
			return true
		}
	}
	return false
}
