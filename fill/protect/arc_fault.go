package protect

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
)

// ArcFault looks for outlets and devices that want arc-fault protection and have none.
var ArcFault = rule.Rule{
	ID:     "arc-fault",
	Title:  words.New("rule.arc-fault.title", "Arc-fault protection"),
	Figure: "arc-fault",
	Doc:    words.New("rule.arc-fault.doc", `Outlets and devices of circuits of 120 V and up to 20 A in kitchens, family, dining, living, recreation and sun rooms, parlors, libraries, dens, bedrooms, closets, halls, laundries and similar rooms are protected against arc faults at the breaker. That breakfast rooms, pantries, offices and foyers are similar is common reading. Openings that name no circuit are told once a room, and so are those of a circuit of which nobody says whether its breaker protects it. What is there already is not checked, nor what is low voltage. Not checked: arc-fault receptacles as the first outlet, wiring in metal raceway, and switches elsewhere of lights in these rooms.`),
	Leaves: rule.OnlyIn(arcUses...),
	Room:   checkArcFault,
}

// arcUses are the rooms of 210.12 (2020 and 2023 text), and those commonly read as similar.
var arcUses = []plan.Use{
	plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor, plan.UseLibrary, plan.UseDen, plan.UseBedroom,
	plan.UseSunroom, plan.UseRecreation, plan.UseCloset, plan.UseHall, plan.UseLaundry,
	plan.UseBreakfast, plan.UsePantry, plan.UseOffice, plan.UseFoyer,
}

// mostAmps is the rating up to which circuits of 120 V are looked at, 210.12.
const mostAmps = 20

func checkArcFault(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if !slices.Contains(arcUses, v.Room.Use) {
		return nil
	}
	unsaid, asked := 0, silent{}
	v.EachOpening(func(o *plan.Opening, _ geom.Point) {
		k := part.All().Kind(o.Kind)
		if o.Status != plan.StatusNew || k == nil || k.Family == part.LowVoltage || k.Family == part.Junction || k.Amps > mostAmps {
			return
		}
		c := circuitOf(&v, o)
		switch {
		case c == nil:
			unsaid++
		case c.Circuit.AFCI == plan.FlagYes || c.Circuit.Volts > 125 || c.Circuit.Amps > mostAmps:
		case c.Circuit.AFCI == plan.FlagUnsaid:
			asked.add(c.Circuit, o)
		default:
			found = append(found, rule.Finding{
				Severity: rule.Stop, Opening: o.ID, About: o.ID,
				Message:  words.New("rule.arc-fault.none", "{0} has no arc-fault protection", o.Tag),
				Why:      words.New("rule.arc-fault.why", "It is asked for in this room: {0}. Circuit {1} has none at its breaker.", v.Room.Use.Text(), c.Circuit.Number),
				Remedies: []rule.Remedy{arcFaultBreaker(*c.Circuit)},
			})
		}
	})
	found = append(found, asked.notes(func(c plan.Circuit, on []*plan.Opening) rule.Finding {
		f := rule.Finding{
			Message:  words.New("rule.arc-fault.breaker", "In {0}, {1} openings on circuit {2} want arc-fault protection: nobody says whether its breaker gives it", v.Room.Name, len(on), c.Number),
			Why:      words.New("rule.arc-fault.breaker.why", "It is asked for in this room: {0}. Say on the circuit's card what its breaker is.", v.Room.Use.Text()),
			Remedies: []rule.Remedy{arcFaultBreaker(c)},
		}
		if len(on) == 1 {
			f.Message = words.New("rule.arc-fault.breaker.one", "{0} on circuit {1} wants arc-fault protection: nobody says whether its breaker gives it", on[0].Tag, c.Number)
		}
		return f
	})...)
	if unsaid > 0 {
		found = append(found, rule.Finding{
			Severity: rule.Note, IsOpen: true, Measured: rule.CountOf(unsaid),
			Message: words.New("rule.arc-fault.unsaid", "In {0} {1} openings that want arc-fault protection name no circuit", v.Room.Name, unsaid),
			Why:     words.New("rule.arc-fault.unsaid.why", "Say what circuit they are on."),
		})
	}
	return found
}

// arcFaultBreaker protects a circuit at its breaker.
func arcFaultBreaker(c plan.Circuit) rule.Remedy {
	c.AFCI = plan.FlagYes
	return rule.Remedy{Label: words.New("rule.arc-fault.remedy", "Protect circuit {0} at its breaker", c.Number), Edit: edit.ChangeCircuit{Circuit: c}}
}
