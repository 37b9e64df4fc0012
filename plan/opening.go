package plan

import "studbay/plan/unit"

// Status says whether a thing is there already.
type Status string

// The statuses.
const (
	StatusNew      Status = "new"
	StatusExisting Status = "existing"
	StatusRemove   Status = "remove"
)

// Opening is one place where a box sits: on a face, in a ceiling or in a floor, or
// on a face of a fixture.
type Opening struct {
	ID       ID        `json:"id"`
	Tag      string    `json:"tag"`  // unique in the plan, stored text
	Kind     string    `json:"kind"` // ID in the table of kinds; unknown ones are kept
	At       Anchor    `json:"at"`
	Height   Height    `json:"height,omitzero"` // of no meaning in a ceiling or a floor
	Gangs    int       `json:"gangs"`
	Devices  []Device  `json:"devices,omitempty"`  // empty: as the kind says
	Contents *Contents `json:"contents,omitempty"` // nil: drawn by cables, else assumed by the kind
	Assembly Assembly  `json:"assembly"`
	Status   Status    `json:"status"`
	Circuit  ID        `json:"circuit,omitempty"`
	Note     string    `json:"note,omitempty"`
	Extra    Extra     `json:"-"`
}

// Key returns the opening's ID.
func (o *Opening) Key() ID { return o.ID }

// Switching says how much of a receptacle a wall switch controls.
type Switching string

// The switchings: a wholly switched receptacle lights the room and serves no spacing
// rule; one with a half always on does.
const (
	NotSwitched    Switching = ""
	HalfSwitched   Switching = "half"
	WhollySwitched Switching = "whole"
)

// Device is what is on one yoke.
type Device struct {
	Kind     string    `json:"kind"`            // such as "duplex receptacle"
	Size     unit.AWG  `json:"size"`            // the largest conductor connected to it
	Gangs    int       `json:"gangs,omitempty"` // it needs by itself; 0 is 1
	Switched Switching `json:"switched,omitempty"`
}

// ContentsSource says who told what is in a box.
type ContentsSource string

// The sources a plan stores. Drawn and assumed contents are derived, never stored.
const (
	ContentsStated   ContentsSource = "stated"
	ContentsNotKnown ContentsSource = "not known"
)

// Contents is what the user says is in a box.
type Contents struct {
	Source ContentsSource `json:"source"`
	Items  []Item         `json:"items,omitempty"`
}

// ItemKind is what an item of a box's contents is.
type ItemKind string

// The kinds of item, in the words of the box-fill calculator.
const (
	ItemCable          ItemKind = "cable"
	ItemConductor      ItemKind = "conductor"
	ItemThrough        ItemKind = "through"
	ItemLoop           ItemKind = "loop"
	ItemGround         ItemKind = "ground"
	ItemIsolatedGround ItemKind = "isolated-ground"
	ItemFixtureWire    ItemKind = "fixture-wire"
	ItemCanopy         ItemKind = "canopy"
	ItemDevice         ItemKind = "device"
	ItemClamps         ItemKind = "clamps"
	ItemFitting        ItemKind = "fitting"
	ItemTerminalBlock  ItemKind = "terminal-block"
)

// Item is one line of a box's contents. Which fields count depends on What: a cable
// has a Size, Wires and Times; a device a Size, Gangs and Times; a fitting a Type.
type Item struct {
	What  ItemKind `json:"what"`
	Size  unit.AWG `json:"size,omitempty"`
	Wires int      `json:"wires,omitempty"` // insulated conductors of a cable
	Gangs int      `json:"gangs,omitempty"` // a device needs by itself; 0 is 1
	Type  string   `json:"type,omitempty"`  // of a fitting: stud or hickey
	Times int      `json:"times,omitempty"` // 0 is once
}

// Assembly is what is built into the wall: a box, what is added to it and a cover.
// Box, parts and barriers are IDs of the catalogue; unknown ones are kept.
type Assembly struct {
	Code     string         `json:"code,omitempty"` // such as PN1, where it is a listed assembly
	Box      string         `json:"box,omitempty"`
	Marked   *unit.Volume   `json:"marked,omitempty"` // stamped on the box, in place of the catalogue's
	Parts    []AssemblyPart `json:"parts,omitempty"`
	Barriers []string       `json:"barriers,omitempty"` // "metal" or "nonmetallic"
	Cover    string         `json:"cover,omitempty"`
}

// AssemblyPart is a ring, extension or raised cover.
type AssemblyPart struct {
	Part   string       `json:"part"`
	Marked *unit.Volume `json:"marked,omitempty"` // stamped on it, in place of the catalogue's
}
