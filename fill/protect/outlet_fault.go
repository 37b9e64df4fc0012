package protect

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// outlet is an opening that wants protection for what it supplies, wherever it is.
type outlet struct {
	figure string
	why    words.Text
	isOpen bool // something that the plan cannot tell may let it off
}

// outletFault looks at what 210.8(D) and (F) ask for.
func outletFault(v *index.RoomView, o *plan.Opening, at geom.Point, fig *code.Figures) (f rule.Finding, missed bool) {
	of, wants := applianceOutlet(v, o, at, fig)
	if !wants {
		of, wants = outdoorOutlet(v, o, fig)
	}
	if !wants {
		return f, false
	}
	could, known := protection(v, o)
	if known == isProtected {
		return f, false
	}
	f = unprotected(o, of.why, rule.Stop)
	f.Section = fig.Title + " " + fig.Section(of.figure)
	if known == perhaps {
		f.Message = words.New("rule.ground-fault.perhaps", "{0} may be protected by {1}: no drawn cable says which comes first", o.Tag, could.Tag)
	} else if known != none || of.isOpen {
		f.Message = words.New("rule.ground-fault.outlet", "{0} wants GFCI protection, and nobody says what gives it", o.Tag)
	}
	if known != none || of.isOpen {
		f.Severity, f.IsOpen = rule.Note, true
	}
	f.Remedies = remedies(v, o)
	return f, true
}

// applianceOutlet is what supplies an appliance of the edition's list.
func applianceOutlet(v *index.RoomView, o *plan.Opening, at geom.Point, fig *code.Figures) (of outlet, wants bool) {
	of = outlet{figure: "ground-fault-appliance", isOpen: fig.Protection.OwnServes}
	kind := suppliedBy(v, o, at)
	isListed := kind == plan.ApplianceDishwasher || kind == plan.ApplianceSumpPump && fig.Protection.Pumps
	switch {
	case isListed && of.isOpen:
		of.why = words.New("rule.ground-fault.own", "It is asked for of what supplies a {0}, unless the {0}, its cord or its plug has it: look at its papers.", kind.Text())
	case isListed, isCooking[kind] && fig.Protection.Cooking:
		of.why = words.New("rule.ground-fault.appliance", "It is asked for of what supplies a {0}, whatever the appliance has itself.", kind.Text())
	default:
		return of, false
	}
	return of, true
}

// isCooking are the machines that 210.8(D) names from 2023 on; of those that burn fuel it asks
// nothing.
var isCooking = map[plan.Appliance]bool{
	plan.ApplianceRange: true, plan.ApplianceDryer: true, plan.ApplianceMicrowave: true,
}

// suppliedBy returns the machine that an opening supplies: the one that is said, unless one of
// that kind in the room burns fuel; else the dishwasher, electric range or dryer by its kind, or
// of the feed of what stands before it. The receptacle of dishwashers and disposers is of a
// dishwasher where one stands in the room.
func suppliedBy(v *index.RoomView, o *plan.Opening, at geom.Point) (kind plan.Appliance) {
	switch {
	case o.For != plan.ApplianceUnsaid:
		kind = o.For
		v.EachFixture(func(f index.FixtureView) {
			if f.Fixture.Fuel != "" && plan.Appliance(f.Fixture.Kind) == o.For {
				kind = plan.ApplianceUnsaid
			}
		})
	case o.Kind == "dishwasher":
		v.EachFixture(func(f index.FixtureView) {
			if f.Fixture.Kind == plan.FixtureDishwasher {
				kind = plan.ApplianceDishwasher
			}
		})
	case o.Kind == "range", o.Kind == "dryer":
		return part.Supplies(o)
	case o.Kind == part.Feed:
		v.EachFixture(func(f index.FixtureView) {
			isListed := f.Fixture.Kind == plan.FixtureDishwasher || f.Fixture.Kind == plan.FixtureRange || f.Fixture.Kind == plan.FixtureDryer
			if isListed && f.Fixture.Fuel == "" && f.Footprint.Distance(at) <= unit.Inch {
				kind = plan.Appliance(f.Fixture.Kind)
			}
		})
	}
	return kind
}

// outdoorOutlet is an outlet outdoors that is neither receptacle nor light.
func outdoorOutlet(v *index.RoomView, o *plan.Opening, fig *code.Figures) (of outlet, wants bool) {
	k := part.All().Kind(o.Kind)
	if !fig.Protection.OutdoorOutlets || v.Room.Use != plan.UseOutdoors || o.Kind != part.Feed && k.Family != part.Fan {
		return of, false
	}
	if c := circuitOf(v, o); c != nil && int64(c.Circuit.Amps) > fig.Protection.OutdoorAmps {
		return of, false
	}
	of = outlet{figure: "ground-fault-outdoor", isOpen: true}
	of.why = words.New("rule.ground-fault.outdoor", "It is asked for of outlets outdoors on circuits of up to {0} A. Listed heating and cooling equipment is let off until September 1, 2026, in places from 2020 on.", fig.Protection.OutdoorAmps)
	if k.Family == part.Fan {
		of.why = words.New("rule.ground-fault.outdoor-fan", "It is asked for of outlets outdoors but for lights; whether a fan with a light is one is argued.")
	}
	return of, true
}
