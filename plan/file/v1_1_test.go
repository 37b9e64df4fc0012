package file

import (
	"bytes"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// seenSample is the sample with a waiver that knows what it was of.
func seenSample() plan.Plan {
	p := sample()
	for w := range p.Waivers.All() {
		seen := *w
		seen.Seen = &plan.Seen{
			What: "rule.wall-reach.missed", Severity: "stop", Over: 30 * unit.Inch,
			Stretches: []plan.SeenStretch{{Host: w.About, Part: plan.PartFace, From: unit.Foot, To: 4 * unit.Foot}},
		}
		p.Waivers = p.Waivers.With(&seen)
		break
	}
	return p
}

func TestKeptFileOf1_1(t *testing.T) {
	data := oldFile(t, "v1.1.studbay")
	p := decoded(t, data)
	if !same(t, p, seenSample()) {
		t.Errorf("reads\n%s", encode(t, p))
	}
	if got := encode(t, p); !bytes.Equal(got, data) {
		t.Errorf("saves\n%s", got)
	}
	for _, extra := range p.Extra {
		t.Errorf("%s is not ours", extra.Pointer)
	}
}

// A plan without anything new is for older programs too.
func TestAPlanIsWrittenInTheOldestVersionThatHoldsIt(t *testing.T) {
	if got := versionFor(sample()); got != "1.0" {
		t.Errorf("the sample is written as %s", got)
	}
	if got := versionFor(seenSample()); got != "1.1" {
		t.Errorf("with what was seen it is written as %s", got)
	}
}

// From what a distance is told is kept, in the version that has it.
func TestFromWhatADistanceIsToldIsKept(t *testing.T) {
	p := sample()
	level := *p.Levels[0]
	var last plan.ID
	for o := range level.Openings.All() {
		if last != "" {
			told := *o
			told.From = last
			level.Openings = level.Openings.With(&told)
			break
		}
		last = o.ID
	}
	p = p.WithLevel(&level)
	if got := versionFor(p); got != "1.1" {
		t.Errorf("it is written as %s", got)
	}
	if back := decoded(t, encode(t, p)); !same(t, back, p) {
		t.Errorf("it is read back as\n%s", encode(t, back))
	}
}

// What is in each space of a parted box is kept, in the version that has it.
func TestSpacesOfAPartedBoxNeedVersion1_1(t *testing.T) {
	p := sample()
	level := *p.Levels[0]
	for o := range level.Openings.All() {
		told := *o
		told.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
			{What: plan.ItemSpace, Volume: 16 * unit.CubicInch}, {What: plan.ItemDevice, Size: 14}, {What: plan.ItemSpace},
		}}
		level.Openings = level.Openings.With(&told)
		break
	}
	cables := sample()
	for c := range cables.Cables.All() {
		enters := *c
		enters.ToSpace = 2
		cables.Cables = cables.Cables.With(&enters)
		break
	}
	plated := sample()
	for c := range plated.Cables.All() {
		covered := *c
		covered.Plated = true
		plated.Cables = plated.Cables.With(&covered)
		break
	}
	heavy, marked, forFan, inside, kept := sample(), sample(), sample(), sample(), sample()
	for i, p := range []*plan.Plan{&heavy, &marked, &forFan, &inside, &kept} {
		level := *p.Levels[0]
		for o := range level.Openings.All() {
			told := *o
			switch i {
			case 0:
				told.Weight = 35 * unit.Pound
			case 1:
				told.Assembly.Carries = 50 * unit.Pound
			case 2:
				told.Assembly.ForFan = plan.AnswerNo
			case 3:
				told.Assembly.Inside.Depth = unit.Inch
			default:
				told.Assembly.Kept = true
			}
			level.Openings = level.Openings.With(&told)
			break
		}
		*p = p.WithLevel(&level)
	}
	for name, p := range map[string]plan.Plan{"stated": p.WithLevel(&level), "drawn": cables, "plated": plated, "heavy": heavy, "marked": marked, "for a fan": forFan, "measured inside": inside, "kept": kept} {
		if got := versionFor(p); got != "1.1" {
			t.Errorf("%s: written as %s", name, got)
		}
		if back := decoded(t, encode(t, p)); !same(t, back, p) {
			t.Errorf("%s: comes back as\n%s", name, encode(t, back))
		}
	}
}

// What a wall is built of, each field by itself, needs the newer version.
func TestFramingNeedsVersion1_1(t *testing.T) {
	some := unit.Inch
	for name, change := range map[string]func(r *plan.Room, s *plan.Side, b *plan.Break){
		"studs": func(_ *plan.Room, s *plan.Side, _ *plan.Break) {
			s.Places = []plan.StudPlace{{At: some, State: plan.StudMeasured}}
		},
		"right end":  func(_ *plan.Room, s *plan.Side, _ *plan.Break) { s.Studs.FromRight = true },
		"thickness":  func(_ *plan.Room, s *plan.Side, _ *plan.Break) { s.Studs.Thick = some },
		"rating":     func(_ *plan.Room, s *plan.Side, _ *plan.Break) { s.Rating.Assembly = "one hour" },
		"separation": func(_ *plan.Room, s *plan.Side, _ *plan.Break) { s.Separation = true },
		"undecided": func(_ *plan.Room, s *plan.Side, _ *plan.Break) {
			s.Finish = []plan.Layer{{Name: "tile", Undecided: true}}
		},
		"keys": func(_ *plan.Room, s *plan.Side, _ *plan.Break) {
			s.Finish = []plan.Layer{{Name: "plaster", Keys: some}}
		},
		"joists": func(r *plan.Room, _ *plan.Side, _ *plan.Break) { r.Joists.Spacing = some },
		"taped joists": func(r *plan.Room, _ *plan.Side, _ *plan.Break) {
			r.Joists.Places = []plan.StudPlace{{At: some, State: plan.StudMeasured}}
		},
		"casing":     func(_ *plan.Room, _ *plan.Side, b *plan.Break) { b.CasingMeasured = true },
		"taped room": func(r *plan.Room, _ *plan.Side, _ *plan.Break) { r.Taped.First = some },
		"zone spaced": func(_ *plan.Room, s *plan.Side, _ *plan.Break) {
			s.Zones = []plan.Zone{{To: some, Condition: plan.ConditionOpened, Spacing: some}}
		},
		"rough": func(_ *plan.Room, _ *plan.Side, b *plan.Break) { b.Rough.Side = &some },
	} {
		p := sample()
		l := p.Levels[0]
		var room plan.Room
		for r := range l.Rooms.All() {
			room = *r
			break
		}
		room.Sides = slices.Clone(room.Sides)
		side := *room.Sides[0]
		room.Sides[0] = &side
		var door plan.Break
		for b := range l.Breaks.All() {
			door = *b
			break
		}
		change(&room, &side, &door)
		level := *l
		level.Rooms, level.Breaks = l.Rooms.With(&room), l.Breaks.With(&door)
		p = p.WithLevel(&level)
		if got := versionFor(p); got != "1.1" {
			t.Errorf("%s: written as %s", name, got)
		}
		if back := decoded(t, encode(t, p)); !same(t, back, p) {
			t.Errorf("%s: comes back otherwise", name)
		}
	}
}

// What the code book asks of a house is kept, each in the version that has it.
func TestWhatIsSaidOfAHouseIsKept(t *testing.T) {
	for name, say := range map[string]func(*plan.Level){
		"bays and facing": func(l *plan.Level) {
			for r := range l.Rooms.All() {
				said := *r
				said.Bays, said.Faces = 2, plan.FacesBack
				l.Rooms = l.Rooms.With(&said)
			}
		},
		"a door for vehicles above grade": func(l *plan.Level) {
			for b := range l.Breaks.All() {
				said := *b
				said.Vehicle, said.Grade = true, plan.AboveGrade
				l.Breaks = l.Breaks.With(&said)
			}
		},
		"provision, fuel and risers": func(l *plan.Level) {
			for f := range l.Fixtures.All() {
				said := *f
				said.Provision, said.Fuel, said.Risers = true, "gas", 14
				l.Fixtures = l.Fixtures.With(&said)
			}
		},
		"a grip": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.Grip = unit.Inch / 2
				l.Openings = l.Openings.With(&said)
			}
		},
		"how an alarm senses": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.Senses = plan.SensesIonsQuiet
				l.Openings = l.Openings.With(&said)
			}
		},
		"an alarm that sounds alone": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.Joined = plan.AnswerNo
				l.Openings = l.Openings.With(&said)
			}
		},
		"what a fireplace burns": func(l *plan.Level) {
			for b := range l.Breaks.All() {
				said := *b
				said.Fuel = "gas"
				l.Breaks = l.Breaks.With(&said)
			}
		},
		"the machine an outlet is for": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.For = plan.ApplianceFreezer
				l.Openings = l.Openings.With(&said)
			}
		},
		"what a machine draws": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.Draws = 9800
				l.Openings = l.Openings.With(&said)
			}
		},
		"power in a garage": func(l *plan.Level) {
			for r := range l.Rooms.All() {
				said := *r
				said.Power = plan.AnswerNo
				l.Rooms = l.Rooms.With(&said)
			}
		},
		"an unfinished room": func(l *plan.Level) {
			for r := range l.Rooms.All() {
				said := *r
				said.Finished = plan.AnswerNo
				l.Rooms = l.Rooms.With(&said)
			}
		},
		"a damp room": func(l *plan.Level) {
			for r := range l.Rooms.All() {
				said := *r
				said.Damp = plan.DampDry
				l.Rooms = l.Rooms.With(&said)
			}
		},
		"landings": func(l *plan.Level) {
			for f := range l.Fixtures.All() {
				said := *f
				said.Landings = 1
				l.Fixtures = l.Fixtures.With(&said)
			}
		},
		"a sink of a bar": func(l *plan.Level) {
			for f := range l.Fixtures.All() {
				said := *f
				said.Bar = plan.AnswerNo
				l.Fixtures = l.Fixtures.With(&said)
			}
		},
		"an old box without a ground": func(l *plan.Level) {
			for o := range l.Openings.All() {
				said := *o
				said.Grounded = plan.AnswerNo
				l.Openings = l.Openings.With(&said)
			}
		},
	} {
		p := sample()
		level := *p.Levels[0]
		say(&level)
		p = p.WithLevel(&level)
		if got := versionFor(p); got != "1.1" {
			t.Errorf("%s: written as %s", name, got)
		}
		if got := decoded(t, encode(t, p)); !plan.Equal(got, p) {
			t.Errorf("%s: reads back as another plan", name)
		}
	}
}

func TestTheLevelThatStairsLeadToIsKept(t *testing.T) {
	p := sample()
	p = p.WithLevel(&plan.Level{ID: "vuppr2222", Name: "Loft", Elevation: unit.FeetInches(9, 0, 0)})
	level := *p.Levels[0]
	level.Fixtures = level.Fixtures.With(&plan.Fixture{ID: "fstrs2222", Kind: plan.FixtureStairs, At: plan.OnFloor("rshed2222", geom.Point{X: unit.FeetInches(6, 0, 0), Y: unit.FeetInches(4, 0, 0)}),
		Width: unit.FeetInches(3, 0, 0), Depth: unit.FeetInches(6, 0, 0), Height: unit.FeetInches(8, 0, 0), Leads: "vuppr2222"})
	p = p.WithLevel(&level)
	if got := versionFor(p); got != "1.1" {
		t.Errorf("written as %s", got)
	}
	if got := decoded(t, encode(t, p)); !plan.Equal(got, p) {
		t.Error("reads back as another plan")
	}
}
