// Package box does box-fill arithmetic, NEC 314.16: what a box holds, what its contents
// need, and the working line by line. It knows no plan.
//
// Not known here are listed clamp assemblies that incorporate a cable termination, for
// which 314.16(B)(2) of 2014 to 2020 has a rule of its own, and the depth of a box.
//
// All volumes are exact and nothing is rounded. A box that is exactly full fits. The
// result is a planning aid: it says what was counted and found, never that an
// installation meets a code.
package box

import (
	"slices"

	"studbay/plan/unit"
)

// Word is what an item of a box's contents is. The words are those of the fill verb.
type Word string

// The words.
const (
	Cable          Word = "cable"           // insulated conductors that end or are spliced here, and one grounding conductor
	Conductor      Word = "conductor"       // one that ends or is spliced here
	Through        Word = "through"         // one that passes unbroken
	Loop           Word = "loop"            // an unbroken loop of at least twice the free length
	Ground         Word = "ground"          // an equipment grounding conductor that enters
	IsolatedGround Word = "isolated-ground" // one of the isolated set
	FixtureWire    Word = "fixture-wire"    // a luminaire's own supply wire
	Canopy         Word = "canopy"          // the luminaire has a domed canopy
	Device         Word = "device"          // one yoke or strap
	Clamps         Word = "clamps"          // internal clamps, however many
	Fitting        Word = "fitting"         // a luminaire stud or a hickey
	TerminalBlock  Word = "terminal-block"  // one terminal block assembly
	BeginsSpace    Word = "space"           // what follows is in the next space of a parted box
)

// The types of fitting.
const (
	Stud   = "stud"
	Hickey = "hickey"
)

// Item is one line of a box's contents. Which fields count depends on What: a cable has
// a Size, Wires and Times; a device a Size, Gangs and Times; a fitting a Type; a space a
// Volume; clamps and canopy nothing; all others a Size and Times.
type Item struct {
	What  Word
	Size  unit.AWG // of a device: the largest conductor connected to its yoke
	Wires int      // insulated conductors of one cable
	Gangs int      // a device needs by itself; 0 is 1
	Type  string   // of a fitting: Stud or Hickey
	Times int      // 0 is once
	None  bool     // said not to be there: it counts nothing, and nothing is assumed in its place
	// Volume is what a space of a parted box has; 0: its part is not said.
	Volume unit.Volume
}

// Contents is what is in a box. Wire connectors, locknuts, and wires that never leave the
// box take no volume and have no word. Where barriers part the box, an item that begins a
// space stands before what is in it; the first space may go without.
type Contents []Item

func (i Item) times() int64 { return int64(max(i.Times, 1)) }

func (i Item) gangs() int64 { return int64(max(i.Gangs, 1)) }

// sized reports whether the item has a conductor size.
func (i Item) sized() bool {
	return i.What != Canopy && i.What != Clamps && i.What != Fitting && i.What != BeginsSpace
}

// Present returns the items without those said not to be there.
func (c Contents) Present() Contents {
	if !slices.ContainsFunc(c, isNone) {
		return c
	}
	return slices.DeleteFunc(slices.Clone(c), isNone)
}

func isNone(i Item) bool { return i.None }

// Tells reports whether the contents say of a word that it is there, or that it is not.
func (c Contents) Tells(w Word) bool {
	return slices.ContainsFunc(c, func(i Item) bool { return i.What == w })
}

// has reports whether any item is of the word.
func (c Contents) has(w Word) bool {
	return c.Present().Tells(w)
}

// largest returns the largest conductor of the items that want is true for.
func (c Contents) largest(want func(Item) bool) (size unit.AWG, found bool) {
	for _, i := range c {
		if want(i) && (!found || i.Size.Larger(size)) {
			size, found = i.Size, true
		}
	}
	return size, found
}

// Yokes counts the yokes or straps.
func (c Contents) Yokes() int {
	n := 0
	for _, i := range c.Present() {
		n += int(timesOf(Device)(i))
	}
	return n
}
