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
	// Turn is how many quarter turns clockwise, as seen on the sheet, a fixture on a
	// floor has made; at 0 its front looks down the sheet.
	Turn  int    `json:"turn,omitempty"`
	Note  string `json:"note,omitempty"`
	Extra Extra  `json:"-"`
}

// Key returns the fixture's ID.
func (f *Fixture) Key() ID { return f.ID }

// Top returns the height of its top above the finished floor.
func (f *Fixture) Top() unit.Length { return f.Bottom + f.Height }
