package part

import (
	"fmt"
	"slices"

	"studbay/fill/box"
	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Family is the trade a kind of opening belongs to; a symbol's body goes by it.
type Family string

// The families.
const (
	Receptacle Family = "receptacle"
	Switch     Family = "switch"
	LowVoltage Family = "lowvoltage"
	Light      Family = "light"
	Fan        Family = "fan"
	Alarm      Family = "alarm"
	Junction   Family = "junction"
)

// Host is what a kind usually sits in.
type Host string

// The hosts. An opening on the side of a fixture counts as one on a wall.
const (
	Wall    Host = "wall"
	Ceiling Host = "ceiling"
	Floor   Host = "floor"
)

// Switching says how much of a receptacle a wall switch controls.
type Switching string

// The switchings.
const (
	NotSwitched    Switching = "none"
	HalfSwitched   Switching = "half"
	WhollySwitched Switching = "whole"
)

// Kind is a kind of opening: what a new one starts with. All of it is the user's to
// change; heights are usual, never asked for by the code.
type Kind struct {
	ID           string
	Name         string // English source
	Family       Family
	Letters      string      // trade letters beside the symbol; may be empty
	Height       unit.Length // to the centre, above finished floor; 0 in ceiling and floor
	RoundHeight  unit.Length // the same in round millimetres, for metric plans; common practice
	HeightSource string
	Host         Host
	Gangs        int          // 0 for round boxes
	Assembly     *Assembly    // nil: it has a box of its own or needs none
	Wiring       box.Contents // assumed until it is drawn or stated; empty: not known
	Device       string       // what is on each yoke, or on the box
	Yokes        int
	Switched     Switching
	Spacing      bool // a receptacle that can count for 210.52(A)

	Volts int // of a receptacle; 0 for all others
	Amps  int // of a receptacle, the most its kind takes

	spoken  [][]string // what people call it, in plain words
	sayings []string   // the same as the table has it
	// Cutout is the hole in the finish for a kind that comes with its own housing, which
	// stands in for a box; the zero value for all others.
	Cutout       Outline
	CutoutSource string
}

// usualKinds are the kinds that most are of, by what they sit in.
var usualKinds = map[Host]string{Wall: "duplex", Ceiling: "ceiling-light", Floor: "floor"}

// UsualKind returns the kind that most of what sits in a host is of.
func (c *Catalogue) UsualKind(in Host) *Kind { return c.Kind(usualKinds[in]) }

// HostOf returns what an opening in a part sits in.
func HostOf(in plan.Part) Host {
	switch in {
	case plan.PartCeiling:
		return Ceiling
	case plan.PartFloor:
		return Floor
	}
	return Wall
}

// KindsFirstIn lists all kinds, those that usually sit in a host first.
func (c *Catalogue) KindsFirstIn(host Host) []*Kind {
	all := slices.Clone(c.Kinds)
	slices.SortStableFunc(all, func(a, b *Kind) int {
		switch {
		case a.Host == b.Host || a.Host != host && b.Host != host:
			return 0
		case a.Host == host:
			return -1
		}
		return 1
	})
	return all
}

// Feed is the kind of an opening that feeds equipment without a receptacle.
const Feed = "equipment"

// ReadingLight is the kind of a light to read by, which may have a switch of its own.
const ReadingLight = "reading-light"

// Text returns the name, to be translated by the ID.
func (k *Kind) Text() words.Text { return words.New("kind."+k.ID, k.Name) }

// UsualHeight returns the usual height above the finished floor as people who think in
// a system of units set it; 0 where it is not in a wall.
func (k *Kind) UsualHeight(s unit.System) unit.Length {
	if s == unit.Metric {
		return k.RoundHeight
	}
	return k.Height
}

var kindColumns = []string{"id", "name", "family", "letters", "height_in", "height_mm", "height_source", "host", "gangs", "assembly",
	"wiring", "device", "yokes", "switched", "spacing", "cutout_in", "cutout_source", "volts", "amps"}

func (c *Catalogue) readKind(r rows.Row) (*Kind, error) {
	cell := cells{row: r}
	k := &Kind{
		ID:           cell.id("id"),
		Name:         cell.text("name"),
		Family:       oneOf(&cell, "family", Receptacle, Switch, LowVoltage, Light, Fan, Alarm, Junction),
		Letters:      r.Cell("letters"),
		Height:       cell.length("height_in", unit.Inch),
		RoundHeight:  cell.length("height_mm", unit.Millimetre),
		HeightSource: cell.text("height_source"),
		Host:         oneOf(&cell, "host", Wall, Ceiling, Floor),
		Gangs:        cell.count("gangs"),
		Device:       r.Cell("device"),
		Yokes:        cell.count("yokes"),
		Switched:     oneOf(&cell, "switched", NotSwitched, HalfSwitched, WhollySwitched),
		Spacing:      cell.yes("spacing"),
		Volts:        cell.count("volts"),
		Amps:         cell.count("amps"),
		Cutout:       cell.outline("cutout_in"),
		CutoutSource: r.Cell("cutout_source"),
	}
	var err error
	k.Wiring, err = box.ParseContents(r.Cell("wiring"))
	cell.fail("wiring", err)
	if code := r.Cell("assembly"); code != "" {
		k.Assembly = c.Assembly(code)
		if k.Assembly == nil {
			cell.fail("assembly", fmt.Errorf("no assembly %q", code))
		}
	}
	cell.fail("", k.check())
	return k, cell.err
}

// check holds that the columns agree with each other.
func (k *Kind) check() error {
	if isWall := k.Host == Wall; isWall != (k.Height > 0) || isWall != (k.RoundHeight > 0) {
		return fmt.Errorf("%s: a height is wanted in a wall and nowhere else", k.ID)
	}
	if yokes := k.Wiring.Yokes(); len(k.Wiring) > 0 && yokes != k.Yokes {
		return fmt.Errorf("%s: %d yokes, but %d in the wiring", k.ID, k.Yokes, yokes)
	}
	if !k.Cutout.IsZero() && (k.Assembly != nil || k.CutoutSource == "") {
		return fmt.Errorf("%s: a cut-out is wanted with its source, and only where the kind has no box", k.ID)
	}
	if k.Assembly != nil && k.Assembly.Gangs() != k.Gangs && k.Gangs > 0 {
		return fmt.Errorf("%s: %d gangs, but %s has %d", k.ID, k.Gangs, k.Assembly.Code, k.Assembly.Gangs())
	}
	if (k.Family == Receptacle) != (k.Volts > 0 && k.Amps > 0) {
		return fmt.Errorf("%s: volts and amperes are wanted of a receptacle and nothing else", k.ID)
	}
	return nil
}

// IsGeneral reports whether the kind is a receptacle such as 210.52 asks for: 125 V and
// 15 or 20 A.
func (k *Kind) IsGeneral() bool {
	return k != nil && k.Family == Receptacle && k.Volts <= 125 && k.Amps <= 20
}
