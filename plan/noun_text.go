package plan

import (
	"strings"

	"studbay/plan/words"
)

// Text returns the kind in words; an unknown one as it is written.
func (k BreakKind) Text() words.Text { return kindText("break", string(k)) }

// Text returns the kind in words; an unknown one as it is written.
func (k FixtureKind) Text() words.Text { return kindText("fixture", string(k)) }

// Text returns the use in words; an unknown one as it is written.
func (u Use) Text() words.Text { return kindText("use", string(u)) }

// Text returns the kind in words.
func (k SideKind) Text() words.Text { return kindText("side", string(k)) }

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
	theBreak     = words.New("the.break", "the door, window or passage")
	theFixture   = words.New("the.fixture", "the fixture")
	theCircuit   = words.New("the.circuit", "the circuit")
	theCable     = words.New("the.cable", "the cable")
	theControl   = words.New("the.control", "the control")
	theDecision  = words.New("the.decision", "the decision")
	theWaiver    = words.New("the.waiver", "the waiver")
	theAmendment = words.New("the.amendment", "the amendment")
	theThing     = words.New("the.thing", "the thing")
)
