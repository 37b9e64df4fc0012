package code

import "studbay/plan/unit"

// Lighting holds the figures of 210.70, 404, 410 and 406.9(C).
type Lighting struct {
	SwitchReach        unit.Length // from a door to the switch that a hand looks for, common practice
	SwitchHeight       unit.Length // highest grip of a switch above the floor, 404.8(A)
	LitLaundry         bool        // laundry areas need a light as rooms do
	StairsRisers       int64       // stairs of so many risers have a switch at each end
	StorageDepth       unit.Length // of the space below the rod, from the walls, 410.2
	StorageTop         unit.Length // it ends here or at the rod, whichever is higher
	ShelfDepth         unit.Length // of the space above, at least
	ClosetSurface      unit.Length // from a surface light to the storage space, 410.16(C)
	ClosetRecessed     unit.Length // from a recessed one
	WetZoneOut         unit.Length // of the zone about a tub or shower, 410.10(D)
	WetZoneUp          unit.Length // of it above the rim
	WetZoneReceptacles bool        // receptacles stay out of the zone, not of the tub alone, 406.9(C)
}

var lighting = []binding{
	ofLength("switch-reach", func(f *Figures) *unit.Length { return &f.Lighting.SwitchReach }),
	ofLength("switch-max-height", func(f *Figures) *unit.Length { return &f.Lighting.SwitchHeight }),
	ofCite("switch-neutral"),
	ofCite("lit-room"),
	ofRule("lit-laundry", func(f *Figures) *bool { return &f.Lighting.LitLaundry }),
	ofCite("lit-passage"),
	ofCite("lit-store"),
	ofCount("stairs-risers", func(f *Figures) *int64 { return &f.Lighting.StairsRisers }),
	ofLength("closet-storage-depth", func(f *Figures) *unit.Length { return &f.Lighting.StorageDepth }),
	ofLength("closet-storage-top", func(f *Figures) *unit.Length { return &f.Lighting.StorageTop }),
	ofLength("closet-shelf-depth", func(f *Figures) *unit.Length { return &f.Lighting.ShelfDepth }),
	ofLength("closet-surface", func(f *Figures) *unit.Length { return &f.Lighting.ClosetSurface }),
	ofLength("closet-recessed", func(f *Figures) *unit.Length { return &f.Lighting.ClosetRecessed }),
	ofCite("closet-banned"),
	ofLength("wet-zone-out", func(f *Figures) *unit.Length { return &f.Lighting.WetZoneOut }),
	ofLength("wet-zone-up", func(f *Figures) *unit.Length { return &f.Lighting.WetZoneUp }),
	ofCite("wet-zone-receptacle"),
	ofRule("wet-zone-receptacle-zone", func(f *Figures) *bool { return &f.Lighting.WetZoneReceptacles }),
}
