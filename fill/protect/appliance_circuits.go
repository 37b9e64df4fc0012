package protect

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
)

// ApplianceCircuits looks at the circuits that kitchens, baths, laundries and garages have
// to themselves.
var ApplianceCircuits = rule.Rule{
	ID:     "appliance-circuits",
	Title:  words.New("rule.appliance-circuits.title", "Circuits of kitchens, baths, laundries and garages"),
	Figure: "circuit-counts",
	Doc:    words.New("rule.appliance-circuits.doc", `The receptacles of a kitchen's counters are on at least two circuits of 20 A, and these, with those of its walls, of pantries, breakfast and dining rooms, serve nothing else: no light, no room of another use, nothing that is built in. The receptacles of a bath, of a laundry and, from 2017 on, of a garage are on a circuit of 20 A that serves such rooms alone, but that one bath may have a circuit for all in it. Receptacles that name no circuit are left out: where that leaves too little to judge, nothing is said. What is there already is not checked. Not checked: a receptacle for a clock or the ignition of a gas range, a second kitchen.`),
	Leaves: rule.OnlyIn(applianceUses...),
	Room:   checkApplianceCircuits,
}

var (
	smallApplianceUses = []plan.Use{plan.UseKitchen, plan.UsePantry, plan.UseBreakfast, plan.UseDining}
	applianceUses      = append(slices.Clone(smallApplianceUses), plan.UseBath, plan.UseLaundry, plan.UseGarage)
)

func checkApplianceCircuits(v index.RoomView, fig *code.Figures) []rule.Finding {
	switch {
	case slices.Contains(smallApplianceUses, v.Room.Use):
		return append(tooFew(&v, fig), judge(&v, smallApplianceUses, false, fig)...)
	case v.Room.Use == plan.UseBath:
		return judge(&v, []plan.Use{plan.UseBath}, true, fig)
	case v.Room.Use == plan.UseLaundry:
		return judge(&v, []plan.Use{plan.UseLaundry}, false, fig)
	case v.Room.Use == plan.UseGarage && fig.Protection.GarageCircuit:
		return judge(&v, []plan.Use{plan.UseGarage, plan.UseOutdoors}, false, fig)
	}
	return nil
}

// tooFew tells of a kitchen whose counters are on fewer circuits than asked for.
func tooFew(v *index.RoomView, fig *code.Figures) []rule.Finding {
	if v.Room.Use != plan.UseKitchen {
		return nil
	}
	circuits := map[plan.ID]bool{}
	v.EachOpening(func(o *plan.Opening, at geom.Point) {
		if o.IsInUse() && isForPeople(o) && servesCounter(v, o, at) {
			circuits[o.Circuit] = true
		}
	})
	want := int(fig.Protection.SmallAppliance)
	if isUnsaid := circuits[""]; isUnsaid || len(circuits) == 0 || len(circuits) >= want {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Measured: rule.CountOf(len(circuits)), Limit: rule.CountOf(want),
		Section: fig.Title + " " + fig.Section("small-appliance-circuits"),
		Message: words.New("rule.appliance-circuits.few", "The counters of {0} are on one circuit", v.Room.Name),
		Why:     words.New("rule.appliance-circuits.few.why", "At least {0} circuits of {1} A serve the counters of a kitchen.", want, int(fig.Protection.ApplianceAmps)),
	}}
}

// isForPeople reports whether an opening is a receptacle to plug things into, not one for
// a single machine.
func isForPeople(o *plan.Opening) bool {
	return part.Supplies(o) == plan.ApplianceUnsaid && part.All().Kind(o.Kind).IsGeneral()
}

// judge looks at each circuit that serves new receptacles of a room: its rating, and what
// else is on it.
func judge(v *index.RoomView, uses []plan.Use, oneRoom bool, fig *code.Figures) (found []rule.Finding) {
	for i := range v.Circuits {
		c := &v.Circuits[i]
		if !servesPeople(v, c) {
			continue
		}
		if c.Circuit.Amps != 0 && c.Circuit.Amps < int(fig.Protection.ApplianceAmps) {
			f := ofCircuit(c, fig, uses)
			f.Measured, f.Limit = rule.CountOf(c.Circuit.Amps), rule.CountOf(int(fig.Protection.ApplianceAmps))
			f.Message = words.New("rule.appliance-circuits.small", "Circuit {0} serves receptacles of {1} and has {2} A", c.Circuit.Number, v.Room.Name, c.Circuit.Amps)
			f.Why = words.New("rule.appliance-circuits.small.why", "These circuits have {0} A.", int(fig.Protection.ApplianceAmps))
			found = append(found, f)
		}
		if others := strangers(v, c, uses, oneRoom); len(others) > 0 {
			f := ofCircuit(c, fig, uses)
			f.Message = words.New("rule.appliance-circuits.shared", "Circuit {0} serves receptacles of {1}, and {2}", c.Circuit.Number, v.Room.Name, someOf(others))
			f.Why = words.New("rule.appliance-circuits.shared.why", "Such a circuit serves nothing else.")
			found = append(found, f)
		}
	}
	return found
}

func ofCircuit(c *index.CircuitView, fig *code.Figures, uses []plan.Use) rule.Finding {
	f := rule.Finding{Severity: rule.Stop, About: c.Circuit.ID}
	if slices.Contains(uses, plan.UseKitchen) {
		f.Section = fig.Title + " " + fig.Section("small-appliance-circuits")
	}
	return f
}

// servesPeople reports whether a circuit serves a new receptacle in the room that is there
// to plug things into, or that of a washer in a laundry.
func servesPeople(v *index.RoomView, c *index.CircuitView) bool {
	return slices.ContainsFunc(c.Openings, func(o index.CircuitOpening) bool {
		isOfLaundry := part.Supplies(o.Opening) == plan.ApplianceWasher && v.Room.Use == plan.UseLaundry // what 210.11(C)(2) is there for
		return o.Room == v.Room && o.Opening.Status == plan.StatusNew && (isForPeople(o.Opening) || isOfLaundry)
	})
}

// isNoOutlet reports whether a kind uses no current by itself: of a switch its light is the
// outlet.
func isNoOutlet(k *part.Kind) bool {
	return k.Family == part.Junction || k.Family == part.LowVoltage || k.Family == part.Switch
}

// isBuiltIn are the machines that are built in: none belongs on a circuit for small appliances.
var isBuiltIn = map[plan.Appliance]bool{
	plan.ApplianceDishwasher: true, plan.ApplianceMicrowave: true, plan.ApplianceHood: true, plan.ApplianceDisposer: true,
	plan.ApplianceWaterHeater: true, plan.ApplianceFurnace: true, plan.ApplianceSumpPump: true,
}

// strangers returns the tags of what is on a circuit and does not belong there.
func strangers(v *index.RoomView, c *index.CircuitView, uses []plan.Use, oneRoom bool) (tags []string) {
	isOneRoom := !slices.ContainsFunc(c.Openings, func(o index.CircuitOpening) bool {
		return o.Opening.IsInUse() && o.Room != v.Room
	})
	if oneRoom && isOneRoom {
		return nil
	}
	for _, o := range c.Openings {
		k := part.All().Kind(o.Opening.Kind)
		if !o.Opening.IsInUse() || o.Room == nil || k == nil || isNoOutlet(k) {
			continue
		}
		belongs := k.Family == part.Receptacle && slices.Contains(uses, o.Room.Use) && !isBuiltIn[part.Supplies(o.Opening)]
		if !belongs {
			tags = append(tags, o.Opening.Tag)
		}
	}
	slices.SortFunc(tags, func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	return tags
}

// mostTags bounds how many tags a message lists.
const mostTags = 4

// someOf lists tags, the first few of many.
func someOf(tags []string) words.Text {
	if n := len(tags) - mostTags; n > 0 {
		return words.New("rule.appliance-circuits.more", "{0} and {1} more", strings.Join(tags[:mostTags], ", "), n)
	}
	return words.New("plain", "{0}", strings.Join(tags, ", "))
}
