package plan

import (
	"strings"

	"studbay/plan/words"
)

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
		if ref, l := p.Side(id); ref != nil {
			return ref.Side(), l
		}
		return nil, nil
	}
	k := kindOf(id.Kind())
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

// Len returns how many things are in the plan, sides and levels too.
func (p Plan) Len() int {
	n := len(p.Levels)
	for _, k := range kinds() {
		for _, h := range p.holders() {
			n += k.size(h)
		}
	}
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			n += len(r.Sides)
		}
	}
	return n
}

// Text returns how a sentence calls a thing: "opening K3", "the cable". It is how it is
// called as such where it is not in the plan.
func (p Plan) Text(id ID) words.Text {
	if t, _ := p.Find(id); t != nil {
		return TextOf(t)
	}
	return TheText(id.Kind())
}

// TextOf returns how a sentence calls a thing: "opening K3", "the cable".
func TextOf(t Thing) words.Text {
	if l, ok := t.(*Level); ok {
		return l.text()
	}
	if k := kindFor(t); k != nil {
		return k.textOf(t)
	}
	return TheText(t.Key().Kind())
}

// TheText returns how a sentence calls a thing of a kind where no one is meant: "the cable".
func TheText(kind byte) words.Text {
	switch kind {
	case KindLevel:
		return theLevel
	case KindSide:
		return theSide
	}
	if k := kindOf(kind); k != nil {
		return k.theText()
	}
	return theThing
}

// Side returns the side with the ID and its level, or nils.
func (p Plan) Side(id ID) (*SideRef, *Level) {
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
		_, l = p.Side(a.Host)
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

// CheckNew reports why an ID cannot be given to a new noun of the kind.
func (p Plan) CheckNew(id ID, kind byte) error {
	if err := wellFormed(id, kind); err != nil {
		return err
	}
	if p.Has(id) {
		return Taken(id)
	}
	return nil
}

func wellFormed(id ID, kind byte) error {
	if err := id.Check(kind); err != nil {
		return Refuse(nil, "id", "“{0}” is not an ID: it must be {1} and eight characters", string(id), string(rune(kind))).At("/id")
	}
	return nil
}

// home returns the level a thing comes to stand on.
func (p Plan) home(a Anchor, name words.Text) (*Level, error) {
	if l := p.levelOf(a); l != nil {
		return l, nil
	}
	if a.Host == "" {
		return nil, Refuse(ErrNoRoom, "no-host", "{0} needs a wall, ceiling, floor, cabinet or furniture to stand on", name).At("/at/host")
	}
	return nil, Refuse(ErrGone, "host-gone", "what {0} stands on is not on this level of the plan", name).At("/at/host")
}

// Text returns the kind in words; an unknown one as it is written.
func (k BreakKind) Text() words.Text {
	switch k {
	case BreakSlider:
		return words.New("break.slider", "sliding door")
	case BreakPassage:
		return words.New("break.passage", "cased opening")
	}
	return kindText("break", string(k))
}

// Text returns the kind in words; an unknown one as it is written.
func (k FixtureKind) Text() words.Text { return kindText("fixture", string(k)) }

// Text returns the use in words; an unknown one as it is written.
func (u Use) Text() words.Text { return kindText("use", string(u)) }

// Text returns the kind in words.
func (k SideKind) Text() words.Text { return kindText("side", string(k)) }

// Text returns what a client said in words.
func (k WishKind) Text() words.Text { return kindText("wish", string(k)) }

// Text returns the status in words.
func (s Status) Text() words.Text { return kindText("status", string(s)) }

func kindText(family, kind string) words.Text {
	return words.New(family+"."+strings.ReplaceAll(kind, " ", "-"), kind)
}

func (o *Opening) text() words.Text {
	if o.Tag == "" {
		return theOpening
	}
	return words.New("called.opening", "opening {0}", o.Tag)
}

func (b *Break) text() words.Text { return words.New("called.break", "the {0}", b.Kind.Text()) }

func (f *Fixture) text() words.Text {
	if f.Name != "" {
		return words.New("called.fixture.named", "the {0} “{1}”", f.Kind.Text(), f.Name)
	}
	return words.New("called.fixture", "the {0}", f.Kind.Text())
}

func (r *Room) text() words.Text {
	if r.Name == "" {
		return theRoom
	}
	return words.New("called.room", "the room “{0}”", r.Name)
}

func (l *Level) text() words.Text { return words.New("called.level", "the level “{0}”", l.Name) }

func (c *Circuit) text() words.Text { return words.New("called.circuit", "circuit {0}", c.Number) }

var (
	theOpening   = words.New("the.opening", "the opening")
	theRoom      = words.New("the.room", "the room")
	theSide      = words.New("the.side", "the side")
	theLevel     = words.New("the.level", "the level")
	theBreak     = words.New("the.break", "the door, window or cased opening")
	theFixture   = words.New("the.fixture", "the cabinet or furniture")
	theCircuit   = words.New("the.circuit", "the circuit")
	theCable     = words.New("the.cable", "the cable")
	theControl   = words.New("the.control", "the control")
	theDecision  = words.New("the.decision", "the decision")
	theWaiver    = words.New("the.waiver", "the finding set aside")
	theAmendment = words.New("the.amendment", "the amendment")
	theOwn       = words.New("the.own", "the box, ring or device of your own")
	theWish      = words.New("the.wish", "what a client said")
	theTick      = words.New("the.tick", "the tick")
	theThing     = words.New("the.thing", "the thing")
)
