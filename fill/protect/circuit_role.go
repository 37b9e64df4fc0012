package protect

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// CircuitRole holds circuits to what the user says that they are there for.
var CircuitRole = rule.Rule{
	ID:     "circuit-role",
	Title:  words.New("rule.circuit-role.title", "Circuits serve what they are said to be for"),
	Figure: "circuit-counts",
	Doc:    words.New("rule.circuit-role.doc", `Where it is said what a circuit is there for: one for small appliances, laundry or baths, and from 2017 on for a garage, has 20 A and serves at least one receptacle of such a room; one for one machine serves one receptacle or feed and nothing else. Not checked: circuits of which nobody says it, circuits for lights and receptacles in general, and what a circuit of a kitchen, bath, laundry or garage serves besides, which another rule tells.`),
	Room:   checkCircuitRole,
}

// roomsOf returns the uses of rooms that a circuit of a role serves, none where it may serve any.
func roomsOf(role plan.CircuitRole, fig *code.Figures) []plan.Use {
	switch role {
	case plan.RoleAppliance:
		return smallApplianceUses
	case plan.RoleLaundry:
		return []plan.Use{plan.UseLaundry}
	case plan.RoleBath:
		return []plan.Use{plan.UseBath}
	case plan.RoleGarage:
		if fig.Protection.GarageCircuit {
			return []plan.Use{plan.UseGarage}
		}
	}
	return nil
}

// checkCircuitRole judges each circuit once: in the room of its first opening.
func checkCircuitRole(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	for i := range v.Circuits {
		c := &v.Circuits[i]
		if c.Openings[0].Room != v.Room {
			continue
		}
		if c.Circuit.Role == plan.RoleMachine {
			found = append(found, moreMachines(c, fig)...)
		}
		if uses := roomsOf(c.Circuit.Role, fig); uses != nil {
			found = append(found, outOfRole(c, uses, fig)...)
		}
	}
	return found
}

// moreMachines tells of a circuit for one machine that serves more than one thing.
func moreMachines(c *index.CircuitView, fig *code.Figures) []rule.Finding {
	n := 0
	for _, o := range c.Openings {
		if k := part.All().Kind(o.Opening.Kind); k != nil && o.Opening.IsInUse() && (o.Opening.Kind == part.Feed || !isNoOutlet(k)) {
			n++
		}
	}
	if n < 2 {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, About: c.Circuit.ID, Measured: rule.CountOf(n), Limit: rule.CountOf(1), Section: fig.Title + " 100",
		Message: words.New("rule.circuit-role.machines", "Circuit {0} is said to be for one machine and serves {1} openings", c.Circuit.Number, n),
		Why:     words.New("rule.circuit-role.machines.why", "An individual circuit serves one machine and nothing else."),
	}}
}

// outOfRole tells of a circuit for rooms of some uses that is too small, or serves none of them.
func outOfRole(c *index.CircuitView, uses []plan.Use, fig *code.Figures) (found []rule.Finding) {
	role := c.Circuit.Role.Text()
	serves := slices.ContainsFunc(c.Openings, func(o index.CircuitOpening) bool {
		k := part.All().Kind(o.Opening.Kind)
		isLaundry := c.Circuit.Role == plan.RoleLaundry && part.Supplies(o.Opening) == plan.ApplianceWasher
		return k != nil && k.Family == part.Receptacle && o.Opening.IsInUse() && o.Room != nil && (slices.Contains(uses, o.Room.Use) || isLaundry)
	})
	if !serves {
		found = append(found, rule.Finding{
			Severity: rule.Stop, About: c.Circuit.ID,
			Message: words.New("rule.circuit-role.none", "Circuit {0} is said to be for {1} and serves no receptacle there", c.Circuit.Number, role),
			Why:     words.New("rule.circuit-role.none.why", "Say what it is for on its card, or put the receptacles on it that it is for."),
		})
	}
	// Where it serves new receptacles of such a room, appliance-circuits tells its size.
	least := int(fig.Protection.ApplianceAmps)
	if c.Circuit.Amps != 0 && c.Circuit.Amps < least && !serves {
		found = append(found, rule.Finding{
			Severity: rule.Stop, About: c.Circuit.ID, Measured: rule.CountOf(c.Circuit.Amps), Limit: rule.CountOf(least),
			Message: words.New("rule.circuit-role.small", "Circuit {0} is said to be for {1} and has {2} A", c.Circuit.Number, role, c.Circuit.Amps),
			Why:     words.New("rule.appliance-circuits.small.why", "These circuits have {0} A.", least),
		})
	}
	return found
}
