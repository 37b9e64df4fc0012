// Package part holds the catalogue: boxes, what is put on them, the assemblies made of
// both, and the kinds of opening that use them; and beside these the kinds of fixture and
// of break.
//
// The rows stand in assets/catalogue/*.csv, assets/kinds.csv, assets/synonyms.csv,
// assets/fixtures.csv and assets/breaks.csv. A listed size has the
// volume of Table 314.16(A); a generic box has a usual mark, and the mark on the box in
// hand goes before it. Prices are rough defaults of common practice (plastic boxes were
// seen from 0.35 to over 10 dollars, extenders from 1 to 3), for the user to override.
package part

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"studbay/assets"
	"studbay/fill/rows"
	"studbay/plan/unit"
)

// Catalogue is everything that can be chosen, each list in the order menus show. It is
// never written after it was read.
type Catalogue struct {
	Boxes      []*Box
	Adds       []*Add
	Assemblies []*Assembly
	Kinds      []*Kind
	Fixtures   []*FixtureKind
	Breaks     []*BreakKind

	boxes      map[string]*Box
	adds       map[string]*Add
	assemblies map[string]*Assembly
	kinds      map[string]*Kind
	fixtures   map[string]*FixtureKind
	breaks     map[string]*BreakKind
	devices    map[string]*Device
	serves     map[served]bool
	hand       byHands
}

// All returns the catalogue that travels in the program. Its tables are ours and
// tested, so a fault in them is a broken build.
var All = sync.OnceValue(func() *Catalogue {
	c, err := Read(assets.Tables)
	if err != nil {
		panic(err)
	}
	return c
})

// Read reads a catalogue. An error names file, line and column.
func Read(from fs.FS) (*Catalogue, error) {
	c := &Catalogue{}
	var err error
	if c.Boxes, c.boxes, err = readAll(from, "catalogue/boxes.csv", boxColumns, readBox, func(b *Box) string { return b.ID }); err != nil {
		return nil, err
	}
	if err = c.readFits(from); err != nil {
		return nil, err
	}
	if err = c.readDevices(from); err != nil {
		return nil, err
	}
	if c.Adds, c.adds, err = readAll(from, "catalogue/adds.csv", addColumns, readAdd, func(a *Add) string { return a.ID }); err != nil {
		return nil, err
	}
	if c.Assemblies, c.assemblies, err = readAll(from, "catalogue/assemblies.csv", assemblyColumns, c.readAssembly, func(a *Assembly) string { return a.Code }); err != nil {
		return nil, err
	}
	if c.Kinds, c.kinds, err = readAll(from, "kinds.csv", kindColumns, c.readKind, func(k *Kind) string { return k.ID }); err != nil {
		return nil, err
	}
	if c.Fixtures, c.fixtures, err = readAll(from, "fixtures.csv", fixtureColumns, readFixture, func(k *FixtureKind) string { return string(k.ID) }); err != nil {
		return nil, err
	}
	if c.Breaks, c.breaks, err = readAll(from, "breaks.csv", breakColumns, readBreak, func(k *BreakKind) string { return string(k.ID) }); err != nil {
		return nil, err
	}
	if err := c.readServes(from); err != nil {
		return nil, err
	}
	if err := c.readSynonyms(from); err != nil {
		return nil, err
	}
	return c, nil
}

// readAll reads a table: its rows in order, and by their IDs.
func readAll[T any](from fs.FS, file string, columns []string, read func(rows.Row) (*T, error), id func(*T) string) ([]*T, map[string]*T, error) {
	table, err := rows.Read(from, file, columns...)
	if err != nil {
		return nil, nil, err
	}
	seen, byID := map[string]int{}, map[string]*T{}
	var all []*T
	for _, row := range table {
		one, err := read(row)
		if err != nil {
			return nil, nil, err
		}
		if line, twice := seen[id(one)]; twice {
			return nil, nil, row.Wrong(columns[0], fmt.Errorf("%s stands on line %d already", id(one), line))
		}
		seen[id(one)], byID[id(one)] = row.Line, one
		all = append(all, one)
	}
	return all, byID, nil
}

// Box returns the box of an ID, or nil.
func (c *Catalogue) Box(id string) *Box { return c.boxes[id] }

// Add returns the ring, extension or cover of an ID, or nil.
func (c *Catalogue) Add(id string) *Add { return c.adds[id] }

// Assembly returns the assembly of a code, or nil.
func (c *Catalogue) Assembly(code string) *Assembly { return c.assemblies[code] }

// Kind returns the kind of opening of an ID, or nil.
func (c *Catalogue) Kind(id string) *Kind { return c.kinds[id] }

// Roomier lists the assemblies that could stand in for one and have at least the volume
// needed: as many gangs, the same front, as far out, and listing, and no old-work box in
// place of a built-in one. Those of the same material come
// first, then the smaller.
func (c *Catalogue) Roomier(than *Assembly, need unit.Volume) []*Assembly {
	return c.inPlaceOf(than, need, func(a *Assembly) bool {
		return (a.Box.Mounting == OldWork) == (than.Box.Mounting == OldWork) && a.raise() == than.raise()
	})
}

// OldWork lists as Roomier does the assemblies that go into a finished wall in place of
// one.
func (c *Catalogue) OldWork(than *Assembly, need unit.Volume) []*Assembly {
	return c.inPlaceOf(than, need, func(a *Assembly) bool { return a.Box.Mounting == OldWork })
}

// Adjustable lists as Roomier does the assemblies of a box without a ring that is set to the
// finish once that is on, in place of one.
func (c *Catalogue) Adjustable(than *Assembly, need unit.Volume) []*Assembly {
	return c.inPlaceOf(than, need, func(a *Assembly) bool { return a.Box.Fit.Adjusts })
}

// Metal lists as Roomier does the assemblies of metal in place of one, whatever their rings.
func (c *Catalogue) Metal(than *Assembly, need unit.Volume) []*Assembly {
	return c.inPlaceOf(than, need, func(a *Assembly) bool {
		return a.Box.Material != Plastic && (a.Box.Mounting == OldWork) == (than.Box.Mounting == OldWork)
	})
}

func (c *Catalogue) inPlaceOf(than *Assembly, need unit.Volume, is func(*Assembly) bool) []*Assembly {
	var found []*Assembly
	for _, a := range c.Assemblies {
		if a != than && a.Volume() >= need && a.standsInFor(than) && is(a) {
			found = append(found, a)
		}
	}
	slices.SortStableFunc(found, func(a, b *Assembly) int {
		if same := a.Box.Material == than.Box.Material; same != (b.Box.Material == than.Box.Material) {
			if same {
				return -1
			}
			return 1
		}
		return int(a.Volume() - b.Volume())
	})
	return found
}

// standsInFor reports whether a does the work of b: as many gangs, the same listing and
// kind of cover where b has one.
func (a *Assembly) standsInFor(b *Assembly) bool {
	return a.Gangs() == b.Gangs() && a.Box.Listed == b.Box.Listed && (b.Cover == nil || a.FrontKind() == b.FrontKind())
}

// raise returns how far the last ring stands out. A box without one is set as far out
// as the usual board is thick.
func (a *Assembly) raise() unit.Length {
	for i := len(a.Adds) - 1; i >= 0; i-- {
		if a.Adds[i].Kind == Ring {
			return a.Adds[i].Raise
		}
	}
	return UsualBoard
}

// IsBlank reports whether the front leaves no way to a device.
func (a *Assembly) IsBlank() bool { return a.FrontKind() == "blank" }

// UsualBoard is the gypsum board of a wall that does not tell its own: 1/2 in (common
// practice).
const UsualBoard = unit.Inch / 2

// FrontKind names the kind of front: plate, canopy, blank, wet or floor; empty: none.
func (a *Assembly) FrontKind() string {
	if a.Cover == nil {
		return ""
	}
	kind, _, _ := strings.Cut(a.Cover.ID, "-")
	return kind
}
