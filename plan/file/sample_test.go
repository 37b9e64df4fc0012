package file

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// sample is a small boat shed with one of every noun.
func sample() plan.Plan {
	p := plan.New("Boat shed", "vshed2222")
	p.Header.Author, p.Header.Date, p.Header.Revision = "A. Draughtsman", "2026-02-14", "B"
	p.Header.NextTag = map[string]int{"S": 4, "LOFT": 2}
	l := *p.Levels[0]
	l.Rooms = one(sampleRoom())
	l.Breaks = one(&plan.Break{ID: "bdr222222", Kind: plan.BreakDoor, At: plan.OnFace("snrth2222", unit.FeetInches(2, 0, 0)),
		Width: unit.FeetInches(3, 0, 0), Head: unit.FeetInches(6, 8, 0), Hand: plan.HandLeft, Swing: plan.SwingIn, Casing: 5 * unit.Inch / 2})
	l.Fixtures = one(&plan.Fixture{ID: "fpane2222", Kind: plan.FixturePanel, At: plan.OnFace("seast2222", unit.FeetInches(1, 0, 0)),
		Bottom: unit.FeetInches(4, 0, 0), Width: unit.FeetInches(1, 2, 8), Depth: 4 * unit.Inch, Height: unit.FeetInches(2, 0, 0)})
	l.Openings = one(sampleReceptacle()).With(sampleSwitch())
	p = p.WithLevel(&l)
	p.Circuits = one(&plan.Circuit{ID: "kbench222", Number: "3", Name: "Bench", Panel: "fpane2222", Amps: 20, Volts: 120, Poles: 1, GFCI: plan.FlagYes})
	p.Cables = one(&plan.Cable{ID: "chme22222", From: "fpane2222", To: "obench222", Size: 12, Wires: 2, Ground: true, Circuit: "kbench222"})
	p.Controls = one(&plan.Control{ID: "tight2222", Letter: "a", Switches: []plan.ID{"oswitch22"}, Loads: []plan.ID{"obench222"}})
	p.Decisions = one(&plan.Decision{ID: "dheight22", Question: "Is the bench 34 or 36 in high?", About: []plan.ID{"obench222"}})
	p.Waivers = one(&plan.Waiver{ID: "wreach222", Rule: "wall-reach", About: "obench222", Reason: "A bench stands there for good."})
	p.Amendments = one(&plan.Amendment{ID: "aheight22", Rule: "switch-height", Reason: "The town leaves it to the owner."})
	return p
}

func sampleRoom() *plan.Room {
	wall := plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2}
	board := []plan.Layer{{Name: "gypsum board", Thickness: unit.Inch / 2}, {Name: "tongue and groove", Thickness: 3 * unit.Inch / 4, Combustible: true}}
	side := func(id plan.ID, x, y int64) *plan.Side {
		return &plan.Side{ID: id, Start: geom.Point{X: unit.FeetInches(x, 0, 0), Y: unit.FeetInches(y, 0, 0)}, Kind: plan.SideWall, Finish: board, Studs: wall}
	}
	return &plan.Room{ID: "rshed2222", Name: "Shed", Use: plan.UseUtility, Prefix: "S", Ceiling: unit.FeetInches(8, 0, 0),
		Floor: []plan.Layer{{Name: "plywood", Thickness: 3 * unit.Inch / 4, Combustible: true}},
		Sides: []*plan.Side{side("snrth2222", 0, 0), side("seast2222", 12, 0), side("ssuth2222", 12, 9), side("swest2222", 0, 9)}}
}

func sampleReceptacle() *plan.Opening {
	marked := 18 * unit.CubicInch
	return &plan.Opening{ID: "obench222", Tag: "S2", Kind: "receptacle", At: plan.OnFace("ssuth2222", unit.FeetInches(4, 3, 5)),
		Height: plan.Height{Value: unit.FeetInches(3, 6, 0), To: plan.BoxBottom, From: plan.Subfloor}, Gangs: 1,
		Devices:  []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: plan.HalfSwitched}},
		Contents: &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}, {What: plan.ItemClamps}}},
		Assembly: plan.Assembly{Box: "plastic-1g", Marked: &marked, Parts: []plan.AssemblyPart{{Part: "extender"}}, Cover: "duplex"},
		Status:   plan.StatusNew, Circuit: "kbench222", Note: "Beside the bench; keep ½ in clear \"for the vise\"."}
}

func sampleSwitch() *plan.Opening {
	return &plan.Opening{ID: "oswitch22", Tag: "S3", Kind: "switch", At: plan.OnFace("snrth2222", unit.FeetInches(5, 6, 0)),
		Height: plan.CentreAt(unit.FeetInches(4, 0, 0)), Gangs: 1, Assembly: plan.Assembly{Code: "PN1"}, Status: plan.StatusNew}
}

func one[T plan.Noun](noun T) plan.Set[T] { return plan.Set[T]{}.With(noun) }
