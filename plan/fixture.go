package plan

import "studbay/plan/unit"

// FixtureKind says what stands in a room. What is known of each stands in a table that
// the plan does not read; an unknown kind is kept.
type FixtureKind string

// The kinds that the program itself speaks of.
const (
	FixtureCounter      FixtureKind = "counter"
	FixtureUpper        FixtureKind = "upper cabinet"
	FixtureCabinet      FixtureKind = "fixed cabinet" // without a countertop
	FixtureIsland       FixtureKind = "island"
	FixturePeninsula    FixtureKind = "peninsula"
	FixtureSink         FixtureKind = "sink"
	FixtureRange        FixtureKind = "range"
	FixtureRefrigerator FixtureKind = "refrigerator"
	FixtureDishwasher   FixtureKind = "dishwasher"
	FixtureBasin        FixtureKind = "basin"
	FixtureToilet       FixtureKind = "toilet"
	FixtureTub          FixtureKind = "tub"
	FixtureShower       FixtureKind = "shower"
	FixtureWasher       FixtureKind = "washer"
	FixtureDryer        FixtureKind = "dryer"
	FixtureWaterHeater  FixtureKind = "water heater"
	FixturePanel        FixtureKind = "panel"
	FixtureMirror       FixtureKind = "mirror"
	FixtureBed          FixtureKind = "bed"
	FixtureDesk         FixtureKind = "desk"
	FixtureRod          FixtureKind = "closet rod"
	FixtureStairs       FixtureKind = "stairs"
)

// Fixture is what spacing rules measure from. On a face its anchor's Along is its
// left end as seen in the room and its back touches the face; on a floor or a top
// the anchor is its centre.
type Fixture struct {
	ID     ID          `json:"id"`
	Kind   FixtureKind `json:"kind"`
	Name   string      `json:"name,omitempty"`
	At     Anchor      `json:"at"`
	Bottom unit.Length `json:"bottom,omitempty"` // above the finished floor
	Width  unit.Length `json:"width"`
	Depth  unit.Length `json:"depth"`
	Height unit.Length `json:"height"` // from its bottom to its top
	// Splash is how high the splash on it stands above its top; from version 1.1 on.
	Splash unit.Length `json:"splash,omitempty"`
	// Turn is how many quarter turns clockwise, as seen on the sheet, a fixture on a
	// floor has made; at 0 its front looks down the sheet.
	Turn int `json:"turn,omitempty"`
	// Provision tells an island or a peninsula that is prepared for a receptacle; from
	// version 1.1 on, as are fuel and risers.
	Provision bool   `json:"provision,omitempty"`
	Fuel      string `json:"fuel,omitempty"`   // what an appliance burns; empty: nothing
	Risers    int    `json:"risers,omitempty"` // of stairs; 0: nobody said
	// Landings are those of stairs that a door or a passage opens on, 0: nobody said, and Bar says
	// whether a sink is one where drinks or food are prepared; from version 1.1 on.
	Landings int    `json:"landings,omitempty"`
	Bar      Answer `json:"bar,omitempty"`
	Leads    ID     `json:"leads,omitempty"` // of stairs: the other level that they join; from version 1.1 on
	From     ID     `json:"from,omitempty"`  // another thing on its face that its distance is told from; from version 1.1 on
	Note     string `json:"note,omitempty"`
	Extra    Extra  `json:"-"`
}

// Key returns the fixture's ID.
func (f *Fixture) Key() ID { return f.ID }

// Top returns the height of its top above the finished floor.
func (f *Fixture) Top() unit.Length { return f.Bottom + f.Height }

// withFixture returns the plan with the fixture where its anchor says, and with all
// that is on it on the same level.
func (p Plan) withFixture(f *Fixture) (Plan, error) {
	if f.At.Host == f.ID && f.ID != "" {
		return Plan{}, Refuse(ErrNoRoom, "on-itself", "{0} cannot stand on itself", f.text()).At("/at/host")
	}
	l, err := p.home(f.At, f.text())
	if err != nil {
		return Plan{}, err
	}
	if err := firstOf(checkFrom(f.From, p.Has, f.text()), p.checkLeads(f, l)); err != nil {
		return Plan{}, err
	}
	var on hanging
	if was, from := p.Fixture(f.ID); from != nil {
		if was.Kind == FixturePanel && f.Kind != FixturePanel {
			if held := p.named(f.ID); len(held) > 0 {
				return Plan{}, p.inUse([]ID{f.ID}, held)
			}
		}
		if on = hangingOn(from, map[ID]bool{f.ID: true}); from != l {
			p = p.on(from, func(l *Level) { on.leave(l); l.Fixtures = l.Fixtures.Without(f.ID) })
		}
	}
	p = p.on(l, func(l *Level) { l.Fixtures = l.Fixtures.With(f); on.join(l) })
	now := p.Level(l.ID)
	if err := (levelSides{level: now}).checkFixture(f); err != nil {
		return Plan{}, err
	}
	if err := on.check(p, now); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// checkLeads reports stairs that lead to no other level than their own, and what leads to
// one and is no stairs.
func (p Plan) checkLeads(f *Fixture, own *Level) error {
	switch {
	case f.Leads == "":
		return nil
	case f.Kind != FixtureStairs:
		return Refuse(nil, "leads-no-stairs", "{0} leads to no level: stairs do", f.text()).At("/leads")
	case p.Level(f.Leads) == nil:
		return Refuse(ErrGone, "leads-gone", "{0} leads to a level that is not in the plan", f.text()).At("/leads")
	case own != nil && own.ID == f.Leads:
		return Refuse(nil, "leads-own", "{0} leads to the level that it is on", f.text()).At("/leads")
	}
	return nil
}

// MaxRisers and MaxLandings bound those of stairs between two levels.
const (
	MaxRisers   = 100
	MaxLandings = 10
)

// checkFixture reports why a fixture cannot stand where it says.
func (s levelSides) checkFixture(f *Fixture) error {
	if err := checkText(f); err != nil {
		return err
	}
	if err := wellFormed(f.ID, KindFixture); err != nil {
		return err
	}
	if f.Kind == "" {
		return Refuse(nil, "fixture-kind", "a cabinet or furniture needs a kind").At("/kind")
	}
	if f.Width <= 0 {
		return Refuse(nil, "width", "{0} needs a width", f.text()).At("/width")
	}
	if f.Risers < 0 || f.Risers > MaxRisers {
		return Refuse(nil, "risers", "{0} has {1} risers; stairs have 1 to {2}", f.text(), f.Risers, MaxRisers).At("/risers")
	}
	if f.Landings < 0 || f.Landings > MaxLandings {
		return Refuse(nil, "landings", "{0} has {1} landings; stairs have 0 to {2}", f.text(), f.Landings, MaxLandings).At("/landings")
	}
	if !f.Bar.isKnown() {
		return Refuse(nil, "bar", "drinks or food are prepared at {0}, “yes” or “no”, not “{1}”", f.text(), string(f.Bar)).At("/bar")
	}
	if f.Turn < 0 || f.Turn > 3 {
		return Refuse(nil, "turn", "{0} is turned by 0 to 3 quarters, not {1}", f.text(), f.Turn).At("/turn")
	}
	if err := notNegative(f.text(), f.Bottom, f.Width, f.Depth, f.Height, f.Splash); err != nil {
		return err
	}
	width := f.Width
	switch f.At.Part {
	case PartFace:
	case PartCeiling, PartFloor, PartTop:
		width = 0
	default:
		return Refuse(ErrNoRoom, "fixture-part", "{0} stands at a side, a floor, a ceiling or on top of a cabinet or furniture", f.text()).At("/at/part")
	}
	return In("/at", s.check(stand{f.At, width, f.text()}))
}

// The faces of a fixture are seen by one who stands before each, so that a place along
// one counts from its left end. Within a fixture a place is told from its back left corner
// as seen from its front: along its width, and out from its back.

// FaceLength returns how long a face of the fixture is along the floor, and of its top how
// wide that is; 0 for what it has not.
func (f *Fixture) FaceLength(part Part) unit.Length {
	switch part {
	case PartFront, PartBack, PartTop:
		return f.Width
	case PartLeft, PartRight:
		return f.Depth
	}
	return 0
}

// Within returns where in the fixture an anchor on its top or on one of its faces is.
func (f *Fixture) Within(a Anchor) (along, out unit.Length) {
	switch a.Part {
	case PartTop:
		return a.Along, a.Out
	case PartFront:
		return a.Along, f.Depth
	case PartBack:
		return f.Width - a.Along, 0
	case PartLeft:
		return 0, a.Along
	}
	return f.Width, f.Depth - a.Along
}

// Facing returns where along one of its four faces a place within the fixture is, and how
// far it is behind that face.
func (f *Fixture) Facing(part Part, along, out unit.Length) (at, behind unit.Length) {
	switch part {
	case PartFront:
		return along, f.Depth - out
	case PartBack:
		return f.Width - along, out
	case PartLeft:
		return out, along
	}
	return f.Depth - out, f.Width - along
}

// Holds reports whether openings are set into a face of the fixture: what stands at a wall
// or on another thing has no back to set one into.
func (f *Fixture) Holds(face Part) bool { return face != PartBack || f.At.Part == PartFloor }
