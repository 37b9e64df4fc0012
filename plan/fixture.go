package plan

import "studbay/plan/unit"

// FixtureKind says what stands in a room. An unknown kind is kept.
type FixtureKind string

// The kinds this version knows.
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

// FixtureKinds lists the kinds in the order a user sees.
var FixtureKinds = []FixtureKind{
	FixtureCounter, FixtureUpper, FixtureCabinet, FixtureIsland, FixturePeninsula,
	FixtureSink, FixtureRange, FixtureRefrigerator, FixtureDishwasher, FixtureBasin,
	FixtureToilet, FixtureTub, FixtureShower, FixtureWasher, FixtureDryer,
	FixtureWaterHeater, FixturePanel, FixtureMirror, FixtureBed, FixtureDesk,
	FixtureRod, FixtureStairs,
}

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
