package code

import "studbay/plan/unit"

// Outlets holds the figures of 210.52(B) to (I), 210.50(C) and 422.16(B)(2).
type Outlets struct {
	CounterBehindStraight unit.Length // a wall this far behind a sink or range, or farther, is counter, (C)(1)
	CounterBehindCorner   unit.Length // the same where it stands in a corner, measured to the corner
	CounterAbove          unit.Length // a receptacle counts this high above the counter, (C)(3)
	CounterBelow          unit.Length // where below is allowed, this far below
	CounterOverhang       unit.Length // and under an overhang of no more than this
	BelowWallCounter      bool        // one below a wall counter counts
	BelowIsland           bool        // one below the top of an island or a peninsula counts
	IslandReceptacles     int64       // least number at an island or a peninsula; 0: provision for one
	IslandByArea          bool        // further ones are asked for by its area
	WallServesPeninsula   bool        // a receptacle in the wall that a peninsula begins at serves it
	IslandLong            unit.Length // one whose long side is shorter needs none
	IslandShort           unit.Length // one whose short side is shorter needs none
	IslandFirst           unit.Area   // the first receptacle serves this area or part of it
	IslandNext            unit.Area   // each further one serves this
	IslandEnd             unit.Length // one of a peninsula stands this near its outer end
	IslandWired           bool        // provision for a receptacle is electrical
	IslandBelowBanned     bool        // none may be below the top of an island or a peninsula
	IslandBelowClear      unit.Length // as far down as this, (C)(4)
	BasinReach            unit.Length // a receptacle this near the outside edge of each basin, (D)
	BasinBelow            unit.Length // not farther below the top of the basin than this
	OutdoorHeight         unit.Length // highest above grade or the floor of a deck, (E)
	ApplianceReach        unit.Length // from where an appliance is meant to stand, 210.50(C)
	GarageHeight          unit.Length // highest above the floor, (G)(1)
	EachBay               bool        // each vehicle bay has its own
	HallLength            unit.Length // a hall this long or longer needs one, (H)
	FoyerArea             unit.Area   // a larger foyer needs one in each wall, (I)
	FoyerWall             unit.Length // that is this wide or wider
	BesideDishwasher      bool        // a dishwasher's receptacle is beside it, not behind, 422.16(B)(2)
}

var outlets = []binding{
	ofLength("counter-behind-straight", func(f *Figures) *unit.Length { return &f.Outlets.CounterBehindStraight }),
	ofLength("counter-behind-corner", func(f *Figures) *unit.Length { return &f.Outlets.CounterBehindCorner }),
	ofLength("counter-above-max", func(f *Figures) *unit.Length { return &f.Outlets.CounterAbove }),
	ofLength("counter-below-max", func(f *Figures) *unit.Length { return &f.Outlets.CounterBelow }),
	ofLength("counter-below-overhang", func(f *Figures) *unit.Length { return &f.Outlets.CounterOverhang }),
	ofRule("counter-below-wall", func(f *Figures) *bool { return &f.Outlets.BelowWallCounter }),
	ofRule("counter-below-island", func(f *Figures) *bool { return &f.Outlets.BelowIsland }),
	ofCount("island-receptacles", func(f *Figures) *int64 { return &f.Outlets.IslandReceptacles }),
	ofRule("island-by-area", func(f *Figures) *bool { return &f.Outlets.IslandByArea }),
	ofRule("peninsula-from-wall", func(f *Figures) *bool { return &f.Outlets.WallServesPeninsula }),
	ofLength("island-long-min", func(f *Figures) *unit.Length { return &f.Outlets.IslandLong }),
	ofLength("island-short-min", func(f *Figures) *unit.Length { return &f.Outlets.IslandShort }),
	ofArea("island-first-area", func(f *Figures) *unit.Area { return &f.Outlets.IslandFirst }),
	ofArea("island-next-area", func(f *Figures) *unit.Area { return &f.Outlets.IslandNext }),
	ofLength("island-end-reach", func(f *Figures) *unit.Length { return &f.Outlets.IslandEnd }),
	ofRule("island-wired", func(f *Figures) *bool { return &f.Outlets.IslandWired }),
	ofRule("island-below-banned", func(f *Figures) *bool { return &f.Outlets.IslandBelowBanned }),
	ofLength("island-below-clear", func(f *Figures) *unit.Length { return &f.Outlets.IslandBelowClear }),
	ofLength("basin-reach", func(f *Figures) *unit.Length { return &f.Outlets.BasinReach }),
	ofLength("basin-below-max", func(f *Figures) *unit.Length { return &f.Outlets.BasinBelow }),
	ofCite("outdoor-receptacle"),
	ofLength("outdoor-max-height", func(f *Figures) *unit.Length { return &f.Outlets.OutdoorHeight }),
	ofCite("laundry-receptacle"),
	ofLength("appliance-reach", func(f *Figures) *unit.Length { return &f.Outlets.ApplianceReach }),
	ofCite("garage-receptacle"),
	ofLength("garage-max-height", func(f *Figures) *unit.Length { return &f.Outlets.GarageHeight }),
	ofRule("garage-each-bay", func(f *Figures) *bool { return &f.Outlets.EachBay }),
	ofCite("basement-receptacle"),
	ofLength("hall-length", func(f *Figures) *unit.Length { return &f.Outlets.HallLength }),
	ofArea("foyer-area", func(f *Figures) *unit.Area { return &f.Outlets.FoyerArea }),
	ofLength("foyer-wall", func(f *Figures) *unit.Length { return &f.Outlets.FoyerWall }),
	ofRule("dishwasher-beside", func(f *Figures) *bool { return &f.Outlets.BesideDishwasher }),
}
