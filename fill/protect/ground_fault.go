package protect

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// GroundFault looks for receptacles that want ground-fault protection and have none.
var GroundFault = rule.Rule{
	ID:     "ground-fault",
	Title:  words.New("rule.ground-fault.title", "GFCI protection"),
	Figure: "ground-fault",
	Doc:    words.New("rule.ground-fault.doc", `Receptacles in bathrooms, garages, outdoors, laundries and wherever a washer stands, unfinished basements, by their use or as is said, from 2020 on finished ones too, which are told by the name of the room or its level, from 2020 on places that are said to be damp or wet, from 2023 on at counters of a room with a sink of which it is said that drinks or food are prepared there, within 6 ft of a sink, a tub or a shower, and in kitchens those that serve counters, from 2023 on all: each is protected by its own device, by one before it on its circuit, or by its breaker. Up to 2017 those of 125 V and 20 A, from 2020 on all to 250 V. What is before what is told by drawn cables from the panel; where a device of the circuit could protect it and no cables say so, that is a note, and so are receptacles that name no circuit, and those of a circuit of which nobody says whether its breaker protects it. The distance is that of a cord in the plan, round corners and never through a wall of the room, so that it may tell of one that is a little farther but misses none in the room; the bowl is taken to begin at the sink's edge. In 2017 a receptacle within a cabinet is behind its door and left out. What is there already is not checked. By 210.8(D) also what supplies a dishwasher that is drawn, from 2020 on a sump pump that is said (that year from memory), and from 2023 on an electric range, a dryer or a microwave oven that is said: the machine that a receptacle or a feed is said to be for, else that of its kind or of what stands at a feed; in 2020 it is a question, since the appliance or its cord may have it. By 210.8(F) from 2020 on it is asked of each feed and fan outdoors on a circuit of up to 50 A; lights are let off, and listed heating and cooling equipment until September 1, 2026, in 2020 by amendments that were adopted here and there. Not checked: paths through doorways into another room, crawl spaces, damp places of which nobody says it, receptacles of a bar that serve no counter but for what is within 6 ft of its sink, and microwave ovens outside of kitchens of which nobody says that they are none of a hood. The 2026 list was not read.`),
	Leaves: rule.IfKnown,
	Room:   checkGroundFault,
}

func checkGroundFault(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	unsaid, asked := 0, silent{}
	v.EachOpening(func(o *plan.Opening, at geom.Point) {
		k := part.All().Kind(o.Kind)
		if o.Status != plan.StatusNew || k == nil || IsGroundFault(o) {
			return
		}
		why, wants := words.Text{}, false
		if k.Family == part.Receptacle && (k.IsGeneral() || fig.Protection.LargeOnes) {
			why, wants = wantsGroundFault(&v, o, at, fig)
		}
		if !wants {
			if f, missed := outletFault(&v, o, at, fig); missed {
				found = append(found, f)
			}
			return
		}
		switch could, known := protection(&v, o); known {
		case notSaid:
			unsaid++
		case notAsked:
			asked.add(circuitOf(&v, o).Circuit, o)
		case perhaps:
			f := unprotected(o, why, rule.Note)
			f.IsOpen = true
			f.Message = words.New("rule.ground-fault.perhaps", "{0} may be protected by {1}: no drawn cable says which comes first", o.Tag, could.Tag)
			found = append(found, f)
		case none:
			f := unprotected(o, why, rule.Stop)
			f.Remedies = remedies(&v, o)
			found = append(found, f)
		}
	})
	found = append(found, asked.notes(func(c plan.Circuit, on []*plan.Opening) rule.Finding {
		f := rule.Finding{
			Message:  words.New("rule.ground-fault.breaker", "In {0}, {1} receptacles on circuit {2} want GFCI protection: nobody says whether its breaker gives it", v.Room.Name, len(on), c.Number),
			Why:      words.New("rule.ground-fault.breaker.why", "Say on the circuit's card what its breaker is, or use receptacles that protect themselves."),
			Remedies: []rule.Remedy{groundFaultBreaker(c)},
		}
		if len(on) == 1 {
			f.Message = words.New("rule.ground-fault.breaker.one", "{0} on circuit {1} wants GFCI protection: nobody says whether its breaker gives it", on[0].Tag, c.Number)
			f.Remedies = remedies(&v, on[0])
		}
		return f
	})...)
	if unsaid > 0 {
		found = append(found, noCircuit(&v, unsaid))
	}
	return found
}

// noCircuit tells of receptacles that name no circuit, one note a room.
func noCircuit(v *index.RoomView, count int) rule.Finding {
	f := rule.Finding{
		Severity: rule.Note, IsOpen: true, Measured: rule.CountOf(count),
		Message: words.New("rule.ground-fault.unsaid", "{0} receptacles in {1} want GFCI protection and name no circuit", count, v.Room.Name),
		Why:     words.New("rule.ground-fault.unsaid.why", "Say what circuit they are on, or use receptacles that protect themselves."),
	}
	if count == 1 {
		f.Message = words.New("rule.ground-fault.unsaid.one", "A receptacle in {0} wants GFCI protection and names no circuit", v.Room.Name)
	}
	return f
}

func unprotected(o *plan.Opening, why words.Text, s rule.Severity) rule.Finding {
	return rule.Finding{
		Severity: s, Opening: o.ID, About: o.ID, Why: why,
		Message: words.New("rule.ground-fault.none", "{0} has no GFCI protection", o.Tag),
	}
}

// remedies offers a device that protects itself, or the breaker.
func remedies(v *index.RoomView, o *plan.Opening) (all []rule.Remedy) {
	if o.Kind == "duplex" {
		all = append(all, rule.Remedy{Label: words.New("rule.ground-fault.remedy.device", "Use a GFCI receptacle"), Edit: part.ToKind(o, "gfci")})
	}
	if c := circuitOf(v, o); c != nil {
		all = append(all, groundFaultBreaker(*c.Circuit))
	}
	return all
}

// groundFaultBreaker protects a circuit at its breaker.
func groundFaultBreaker(c plan.Circuit) rule.Remedy {
	c.GFCI = plan.FlagYes
	return rule.Remedy{Label: words.New("rule.ground-fault.remedy.breaker", "Protect circuit {0} at its breaker", c.Number), Edit: edit.ChangeCircuit{Circuit: c}}
}

// state says what is known of the protection of an opening.
type state int

const (
	isProtected state = iota
	perhaps           // by a device of the circuit, were it first
	none
	notAsked // nobody says what the breaker of its circuit gives
	notSaid  // it names no circuit
)

// protection returns how an opening without a device of its own is protected, and the
// device that may do it.
func protection(v *index.RoomView, o *plan.Opening) (could *plan.Opening, s state) {
	c := circuitOf(v, o)
	switch {
	case c == nil:
		return nil, notSaid
	case c.Circuit.GFCI == plan.FlagYes:
		return nil, isProtected
	}
	s = none
	if c.Circuit.GFCI == plan.FlagUnsaid {
		s = notAsked
	}
	for _, other := range c.Openings {
		if !other.Opening.IsInUse() || !IsGroundFault(other.Opening) {
			continue
		}
		switch orderOf(c, o.ID, other.Opening.ID) {
		case before:
			return other.Opening, isProtected
		case unknown:
			if s != perhaps {
				could, s = other.Opening, perhaps
			}
		}
	}
	return could, s
}

// wantsGroundFault says why a receptacle is to be protected, and whether it is.
func wantsGroundFault(v *index.RoomView, o *plan.Opening, at geom.Point, fig *code.Figures) (why words.Text, wants bool) {
	switch v.Room.Use {
	case plan.UseBath, plan.UseGarage, plan.UseOutdoors, plan.UseLaundry:
		return words.New("rule.ground-fault.room", "It is asked for in this room: {0}.", v.Room.Use.Text()), true
	}
	if v.InBasement && v.Room.IsUnfinished() {
		return words.New("rule.ground-fault.unfinished", "It is asked for in unfinished parts of a basement."), true
	}
	if isDamp := v.Room.Damp == plan.DampDamp || v.Room.Damp == plan.DampWet; isDamp && fig.Protection.DampPlaces {
		return words.New("rule.ground-fault.damp", "It is asked for in damp and wet places."), true
	}
	if v.InBasement && fig.Protection.AllOfBasement {
		return words.New("rule.ground-fault.basement", "It is asked for in all of a basement, finished or not."), true
	}
	if v.Room.Use == plan.UseKitchen {
		if fig.Protection.AllOfKitchen {
			return words.New("rule.ground-fault.kitchen", "It is asked for of all receptacles in a kitchen."), true
		}
		if servesCounter(v, o, at) {
			return words.New("rule.ground-fault.counter", "It is asked for of receptacles that serve a counter."), true
		}
	}
	if fig.Protection.Bars && hasBar(v) && servesCounter(v, o, at) {
		return words.New("rule.ground-fault.bar", "It is asked for where drinks or food are prepared at a sink."), true
	}
	if hasWasher(v) {
		return words.New("rule.ground-fault.washer", "It is asked for where laundry is done; a washer stands in this room."), true
	}
	return nearWater(v, o, at, fig)
}

// hasWasher reports whether a room is a laundry area, whatever else it is.
func hasWasher(v *index.RoomView) (has bool) {
	v.EachFixture(func(f index.FixtureView) { has = has || f.Fixture.Kind == plan.FixtureWasher })
	return has
}

// hasBar reports whether a sink of a room is said to be one where drinks or food are prepared.
func hasBar(v *index.RoomView) (has bool) {
	v.EachFixture(func(f index.FixtureView) { has = has || f.Fixture.Bar == plan.AnswerYes })
	return has
}

// servesCounter reports whether a receptacle stands above a counter or in one.
func servesCounter(v *index.RoomView, o *plan.Opening, at geom.Point) (serves bool) {
	v.EachFixture(func(f index.FixtureView) {
		worktop := part.All().Fixture(f.Fixture.Kind).FloorLine == part.CounterLine || f.Fixture.Kind == plan.FixtureIsland
		if !worktop || f.Fixture.Bottom > 0 {
			return
		}
		isAbove := f.Footprint.Distance(at) <= unit.Inch && frame.CentreHeight(o, v.Room) >= f.Fixture.Top()
		serves = serves || isAbove || o.At.Host == f.Fixture.ID
	})
	return serves
}

func nearWater(v *index.RoomView, o *plan.Opening, at geom.Point, fig *code.Figures) (why words.Text, near bool) {
	v.EachFixture(func(f index.FixtureView) {
		reach, limit := fig.Protection.SinkReach, "ground-fault-sink"
		switch f.Fixture.Kind {
		case plan.FixtureSink, plan.FixtureBasin:
		case plan.FixtureTub, plan.FixtureShower:
			reach, limit = fig.Protection.TubReach, "ground-fault-tub"
		default:
			return
		}
		isSink := limit == "ground-fault-sink"
		if near || isSink && fig.Protection.DoorsStop && isInCabinet(v, o) {
			return
		}
		if away, ok := cordTo(v, at, f); ok && away <= reach+rule.Grain {
			why, near = words.New("rule.ground-fault.near", "It is {0} by cord from the {1}; within {2} it is asked for.", away, f.Fixture.Kind.Text(), fig.Limit(limit)), true
		}
	})
	return why, near
}

// isInCabinet reports whether a receptacle is in the wall within a base cabinet: behind
// its door.
func isInCabinet(v *index.RoomView, o *plan.Opening) (inside bool) {
	height := frame.CentreHeight(o, v.Room)
	for _, s := range v.Sides {
		for _, f := range s.Fixtures {
			left := f.Fixture.At.Along
			kind := part.All().Fixture(f.Fixture.Kind)
			encloses := kind.Encloses || kind.FloorLine == part.CounterLine
			inside = inside || encloses && o.At.Host == s.Side.ID && left <= o.At.Along && o.At.Along <= left+f.Fixture.Width &&
				f.Fixture.Bottom <= height && height < f.Fixture.Top()
		}
	}
	return inside
}
