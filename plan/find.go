package plan

import "studbay/plan/words"

// Find returns the thing with the ID, a level or a side included, and the level it is on;
// nil for either where there is none.
func (p Plan) Find(id ID) (Thing, *Level) {
	switch id.Kind() {
	case KindLevel:
		if l := p.Level(id); l != nil {
			return l, l
		}
		return nil, nil
	case KindSide:
		if ref, l := p.side(id); ref != nil {
			return ref.Side(), l
		}
		return nil, nil
	}
	k := kindOf(id)
	if k == nil {
		return nil, nil
	}
	for _, h := range p.holders() {
		if t, ok := k.get(h, id); ok {
			return t, h.level
		}
	}
	return nil, nil
}

// Has reports whether an ID names something of the plan.
func (p Plan) Has(id ID) bool {
	t, _ := p.Find(id)
	return t != nil
}

// Has reports whether an ID names something of the index's plan, a side found by the index.
func (ix *Index) Has(id ID) bool {
	if id.Kind() == KindSide {
		_, ok := ix.Side(id)
		return ok
	}
	return ix.plan.Has(id)
}

// Text returns how a sentence calls a thing: "opening K3", "the cable". It is how it is
// called as such where it is not in the plan.
func (p Plan) Text(id ID) words.Text {
	t, _ := p.Find(id)
	switch t := t.(type) {
	case *Level:
		return t.text()
	case nil, *Side:
		return theText(id)
	}
	return kindOf(id).textOf(t)
}

// theText returns how a sentence calls a thing of a kind where no one is meant.
func theText(id ID) words.Text {
	switch id.Kind() {
	case KindLevel:
		return theLevel
	case KindSide:
		return theSide
	}
	if k := kindOf(id); k != nil {
		return k.theText()
	}
	return theThing
}

// side returns the side with the ID and its level, or nils.
func (p Plan) side(id ID) (*SideRef, *Level) {
	for _, l := range p.Levels {
		if ref := (levelSides{level: l}).side(id); ref != nil {
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
	if p.Has(id) {
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
