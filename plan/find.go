package plan

// has reports whether an ID names something of the plan.
func (p Plan) has(id ID) bool {
	switch id.Kind() {
	case KindLevel:
		return p.Level(id) != nil
	case KindRoom:
		r, _ := p.Room(id)
		return r != nil
	case KindSide:
		ref, _ := p.side(id)
		return ref != nil
	case KindBreak:
		b, _ := p.Break(id)
		return b != nil
	case KindFixture:
		f, _ := p.Fixture(id)
		return f != nil
	case KindOpening:
		o, _ := p.Opening(id)
		return o != nil
	}
	return p.hasPlanWide(id)
}

func (p Plan) hasPlanWide(id ID) (ok bool) {
	switch id.Kind() {
	case KindCable:
		_, ok = p.Cables.Get(id)
	case KindCircuit:
		_, ok = p.Circuits.Get(id)
	case KindControl:
		_, ok = p.Controls.Get(id)
	case KindDecision:
		_, ok = p.Decisions.Get(id)
	case KindWaiver:
		_, ok = p.Waivers.Get(id)
	case KindAmendment:
		_, ok = p.Amendments.Get(id)
	}
	return ok
}

// is reports whether an ID is of the kind and names something of the plan.
func (p Plan) is(id ID, kind byte) bool { return id.Kind() == kind && p.has(id) }

// side returns the side with the ID and its level, or nils.
func (p Plan) side(id ID) (*SideRef, *Level) {
	for _, l := range p.Levels {
		if ref := (site{level: l}).side(id); ref != nil {
			return ref, l
		}
	}
	return nil, nil
}

// levelOf returns the level that holds the host of an anchor, or nil.
func (p Plan) levelOf(a Anchor) *Level {
	var l *Level
	switch a.Part {
	case PartFace:
		_, l = p.side(a.Host)
	case PartCeiling, PartFloor:
		_, l = p.Room(a.Host)
	default:
		_, l = p.Fixture(a.Host)
	}
	return l
}

// on returns the plan with one level changed.
func (p Plan) on(level *Level, change func(*Level)) Plan {
	l := *level
	change(&l)
	return p.WithLevel(&l)
}

// fresh reports why an ID cannot be given to a new noun of the kind.
func (p Plan) fresh(id ID, kind byte) error {
	if err := wellFormed(id, kind); err != nil {
		return err
	}
	if p.has(id) {
		return taken(id)
	}
	return nil
}

func wellFormed(id ID, kind byte) error {
	if err := id.Check(kind); err != nil {
		return refuse(nil, "id", "“{0}” is no ID: it must be {1} and eight characters", string(id), string(rune(kind))).at("/id")
	}
	return nil
}
