package tool

import (
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/symbol"
)

// Entry is one tool as the rail shows it.
type Entry struct {
	Title words.Text
	Icon  symbol.Icon
	Key   string // that takes it in hand
	// PlacesOpenings says that it makes openings of the kind in hand.
	PlacesOpenings bool
	New            func() Tool
}

// Tools lists the tools in the order of the rail. The first is what Esc comes back to.
var Tools = []Entry{
	{words.New("tool.select", "Select"), symbol.IconSelect, "V", false, func() Tool { return &choose{} }},
	{words.New("tool.room", "Room"), symbol.IconRoom, "R", false, func() Tool { return &room{} }},
	{words.New("tool.break", "Doors & windows"), symbol.IconBreak, "B", false, func() Tool { return &brk{kind: plan.BreakDoor} }},
	{words.New("tool.fixture", "Cabinets & furniture"), symbol.IconFixture, "F", false, func() Tool { return &fixture{kind: plan.FixtureCounter} }},
	{words.New("tool.opening", "Opening"), symbol.IconOpening, "O", true, func() Tool { return &opening{} }},
	{words.New("tool.wiring", "Wiring"), symbol.IconCable, "C", false, func() Tool { return &cable{} }},
	{words.New("tool.measure", "Measure"), symbol.IconMeasure, "M", false, func() Tool { return &measure{} }},
}
