// Package code holds the code editions: what each asks for as exact figures, the
// section that says so and where the figure was seen, and the local amendments
// laid on top.
//
// The figures stand in assets/code/*.csv, one row a figure. A row holds from its
// edition on, until a later row of the same figure replaces it; in an edition whose text was
// not seen only rows of its own are confirmed. Rules keep only reasoning; every number they
// compare with comes from here.
package code

import "studbay/plan/unit"

// Figures is one edition, with its amendments if any. It is never written after it
// was made, so two equal pointers are the same figures: a cache may key on it.
type Figures struct {
	Edition    string      // as a user types it: "2023"
	Title      string      // as a sheet prints it: "NEC 2023"
	Fill       Fill        // 314.16
	Spacing    Spacing     // 210.52(A)
	Outlets    Outlets     // 210.52(B) to (I)
	Lighting   Lighting    // 210.70, 404, 410.16 and zones about tubs
	Protection Protection  // 210.8, 210.11, 210.12 and working space
	Alarms     Alarms      // smoke and carbon monoxide, by the IRC
	Build      Build       // 300.4, 314.20 to 314.27 and practice in the framing
	Amendments []Amendment // in the order given; not to be written
	Units      unit.System // of the sizes that remedies propose

	carries bool // what an older edition says holds here too, until a row says otherwise
	cites   map[string]Cite
	printed map[string]printed
}

// Fill holds the figures of box fill, 314.16. Section names: see Cite.
type Fill struct {
	Allowances []Allowance // largest conductor last

	BarrierMetal    unit.Volume // an unmarked metal barrier takes this, (A)
	BarrierNonmetal unit.Volume // an unmarked nonmetallic barrier takes this, (A)

	LoopAllowances  int64    // allowances of one unbroken loop of at least twice the free length, (B)(1)
	CanopyWires     int64    // most fixture wires a canopy frees, (B)(1) exception
	CanopyWireUnder unit.AWG // a freed wire is smaller than this size

	DeviceAllowances int64 // allowances a yoke and gang, (B)(4)

	GroundsTogether      int64 // this many grounding conductors share one allowance, (B)(5)
	GroundFurther        int64 // percent of an allowance for each beyond; 0: the one covers all
	IsolatedGroundsApart bool  // isolated grounding conductors take an allowance of their own

	TerminalBlock int64 // allowances of one terminal block assembly, (B)(6); 0 before 2023
}

// Allowance is the free volume within a box for one conductor of a size.
type Allowance struct {
	Size   unit.AWG
	Volume unit.Volume
}

// Allowance returns the volume for one conductor of a size, and whether the table
// has a row for it: it runs from 18 to 6 AWG.
func (f *Fill) Allowance(size unit.AWG) (unit.Volume, bool) {
	for _, a := range f.Allowances {
		if a.Size == size {
			return a.Volume, true
		}
	}
	return 0, false
}

// Spacing holds the figures of receptacle spacing, 210.52.
type Spacing struct {
	WallReach           unit.Length // no point of a wall space farther than this from a receptacle, (A)(1)
	WallSpaceMin        unit.Length // a wall space is this wide or wider, (A)(2)
	FloorReach          unit.Length // a floor receptacle counts this near the wall or nearer, (A)(3)
	ReceptacleMaxHeight unit.Length // one higher above the finished floor does not count

	FixedCabinetBreaks        bool // a fixed cabinet without a counter ends a wall space
	WorkedCabinetBreaks       bool // so does one with a countertop or similar work surface
	StationaryApplianceBreaks bool // a stationary appliance ends a wall space
	FixedPanelCounts          bool // a fixed panel of a slider is wall space
	RoomDividerCounts         bool // a railing or other fixed room divider is wall space

	CounterWidthMin unit.Length // a counter this wide or wider needs a receptacle, (C)(1)
	CounterReach    unit.Length // no point of the wall line farther than this, (C)(1)
}

// Cite is where a figure comes from.
type Cite struct {
	Section string // such as "314.16(B)(5)", as this edition numbers it
	Source  string // where the figure was seen
	Reason  string // why a local amendment changed it; empty if none did

	isCarried bool // of an older edition; that it is this one's was not seen
}

// Cite returns the section and source of a figure by its name in assets/code, such as
// "wall-reach". It panics for a name no row has: names stand in our code only.
func (f *Figures) Cite(figure string) Cite {
	c, ok := f.cites[figure]
	if !ok {
		panic("code: no figure " + figure)
	}
	return c
}

// Section is short for the section of Cite.
func (f *Figures) Section(figure string) string { return f.Cite(figure).Section }

// Off reports whether a local amendment switched a rule off, and its reason.
func (f *Figures) Off(rule string) (reason string, off bool) {
	for _, a := range f.Amendments {
		if a.Rule != "" && a.Rule == rule {
			return a.Reason, true
		}
	}
	return "", false
}
