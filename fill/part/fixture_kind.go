package part

import (
	"errors"

	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// FloorLine says what a fixture or a break makes of the floor line along a wall, which
// the wall spaces of 210.52(A) are measured on.
type FloorLine string

// What a fixture at a wall makes of the floor line.
const (
	NoFloorLine   FloorLine = ""          // nothing: furniture
	CounterLine   FloorLine = "counter"   // a counter, which is no wall space
	CabinetLine   FloorLine = "cabinet"   // a fixed cabinet without a countertop
	ApplianceLine FloorLine = "appliance" // stationary, or counter where it stands in one
)

// What a break makes of the floor line.
const (
	OpenLine    FloorLine = "open"    // no wall space
	PassageLine FloorLine = "passage" // none where it reaches the floor
	GlassLine   FloorLine = "glass"   // wall space, with no room for a box where it is low
	PanelsLine  FloorLine = "panels"  // none where a panel moves, wall space where it is fixed
)

// FixtureKind is a kind of fixture: the sizes a new one begins with and what rules and
// drawings need to know of it. The zero value is a kind that is not in the table.
type FixtureKind struct {
	ID         plan.FixtureKind // as a plan has it, and its English name
	Letter     string           // that tells machines apart which look alike; may be empty
	Width      unit.Length
	Depth      unit.Length
	Height     unit.Length
	Bottom     unit.Length // above the finished floor
	SizeSource string
	Stands     Host // at a wall, or in the middle of a floor
	FloorLine  FloorLine
	Hides      bool     // a receptacle behind it could not be reached; common practice is one beside it
	Encloses   bool     // it is a cabinet: what is set in the wall behind is inside of it
	Carries    bool     // openings are set into its faces
	Covers     Covering // what it makes of the wall behind it; common practice
	Body       string   // how it is drawn from above
	Front      string   // how it is drawn as seen from the room
}

// LetterText returns the letter in words, or none.
func (k FixtureKind) LetterText() (text words.Text, ok bool) {
	if k.Letter == "" {
		return text, false
	}
	return words.New(k.ID.Text().ID+".letter", k.Letter), true
}

var fixtureColumns = []string{"id", "letter", "width_in", "depth_in", "height_in", "bottom_in", "size_source", "stands",
	"floor_line", "hides", "encloses", "carries", "body", "front", "covers"}

func readFixture(r rows.Row) (*FixtureKind, error) {
	cell := cells{row: r}
	k := &FixtureKind{
		ID:         plan.FixtureKind(cell.text("id")),
		Letter:     r.Cell("letter"),
		Width:      cell.length("width_in", unit.Inch),
		Depth:      cell.length("depth_in", unit.Inch),
		Height:     cell.length("height_in", unit.Inch),
		Bottom:     cell.length("bottom_in", unit.Inch),
		SizeSource: cell.text("size_source"),
		Stands:     oneOf(&cell, "stands", Wall, Floor),
		FloorLine:  oneOf(&cell, "floor_line", NoFloorLine, CounterLine, CabinetLine, ApplianceLine),
		Hides:      cell.yes("hides"),
		Encloses:   cell.yes("encloses"),
		Carries:    cell.yes("carries"),
		Covers:     oneOf(&cell, "covers", CoversNothing, CoversFixed, CoversMovable),
		Body:       cell.text("body"),
		Front:      cell.text("front"),
	}
	if k.Width == 0 || k.Depth == 0 || k.Height == 0 {
		cell.fail("", errors.New("a width, a depth and a height are wanted"))
	}
	return k, cell.err
}

// Fixture returns what is known of a kind of fixture; of one not in the table, only its
// ID.
func (c *Catalogue) Fixture(id plan.FixtureKind) FixtureKind {
	if k := c.fixtures[string(id)]; k != nil {
		return *k
	}
	return FixtureKind{ID: id}
}

// FixtureIDs lists the kinds of fixture in the order a user sees.
func (c *Catalogue) FixtureIDs() (all []plan.FixtureKind) {
	for _, k := range c.Fixtures {
		all = append(all, k.ID)
	}
	return all
}

// NewFixture returns a fixture as its kind starts out in a plan of the units. It has no
// ID and no place yet.
func (k FixtureKind) NewFixture(units unit.System) plan.Fixture {
	return plan.Fixture{
		Kind: k.ID, Width: units.Usual(k.Width), Depth: units.Usual(k.Depth), Height: units.Usual(k.Height), Bottom: units.Usual(k.Bottom),
	}
}
