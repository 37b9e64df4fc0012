package part

import (
	"strings"

	"studbay/fill/rows"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Shape is what a box looks like from the front. It says which rings and covers fit.
type Shape string

// The shapes.
const (
	DeviceShape      Shape = "device"         // as wide as its devices
	SquareShape      Shape = "square-4"       // 4 in square
	LargeSquare      Shape = "square-4-11/16" // 4-11/16 in square
	OctagonShape     Shape = "octagon"        // 4 in, octagonal or round
	RoundShape       Shape = "round"
	BracketShape     Shape = "bracket" // an open back, for low voltage
	ConduitBodyShape Shape = "conduit-body"
)

// Material is what a box is made of.
type Material string

// The materials.
const (
	Plastic Material = "plastic"
	Steel   Material = "steel"
	Cast    Material = "cast"
)

// Mounting is how a box is held.
type Mounting string

// The mountings.
const (
	NailOn     Mounting = "nail-on"
	Bracket    Mounting = "bracket" // on the face of a stud or joist
	Screw      Mounting = "screw"   // through its side
	BarHanger  Mounting = "bar-hanger"
	Joist      Mounting = "joist" // to the underside of framing
	OldWork    Mounting = "old-work"
	Surface    Mounting = "surface"
	InMasonry  Mounting = "masonry"
	InFloor    Mounting = "floor"
	OnRaceways Mounting = "raceway"
)

// Basis is what a volume rests on, 314.16(A).
type Basis string

// The bases.
const (
	ByTable Basis = "table"  // a listed size of Table 314.16(A), or made from one
	ByMark  Basis = "marked" // the maker's mark, which the user reads off the thing
	NoBasis Basis = "none"   // neither: it gives no volume
)

// Box is a row of the catalogue. Sizes are outside ones; zero where they depend on
// the maker. A plastic box's are common practice.
type Box struct {
	ID       string // what a user types, stable
	Name     string // English source
	Shape    Shape
	Material Material
	Mounting Mounting
	Gangs    int // most it presents, with a ring where it needs one; 0 for round ones
	Width    unit.Length
	Height   unit.Length
	Depth    unit.Length
	Volume   unit.Volume // 0 with NoBasis
	Basis    Basis
	// FromMemory says that the mark is a usual one that nobody has seen: read the stamp.
	FromMemory bool
	Clamps     bool   // it comes with internal clamps, which 314.16(B)(2) counts
	Listed     string // for a use that asks for it: fan, floor or wet; else empty
	Fit        Fit
	Part
}

// Part is what every row of the catalogue says of itself.
type Part struct {
	Price      unit.Money // a rough default to be overridden; zero: not known
	Confidence string     // how well its figures are known
	Source     string
}

// fromMemory stands in the confidence of a row whose volume no source confirms.
const fromMemory = "from memory"

// Text returns the name, to be translated by the ID; one of the user's own as it is written.
func (b *Box) Text() words.Text { return named("box.", b.ID, b.Name) }

var boxColumns = []string{"id", "name", "shape", "material", "mounting", "gangs", "width_in", "height_in", "depth_in",
	"volume_in3", "basis", "clamps", "listed_for", "price_cents", "confidence", "source"}

func readBox(r rows.Row) (b *Box, err error) {
	c := cells{row: r}
	b = &Box{
		ID:       c.id("id"),
		Name:     c.text("name"),
		Shape:    oneOf(&c, "shape", DeviceShape, SquareShape, LargeSquare, OctagonShape, RoundShape, BracketShape, ConduitBodyShape),
		Material: oneOf(&c, "material", Plastic, Steel, Cast),
		Mounting: oneOf(&c, "mounting", NailOn, Bracket, Screw, BarHanger, Joist, OldWork, Surface, InMasonry, InFloor, OnRaceways),
		Gangs:    c.count("gangs"),
		Width:    c.length("width_in", unit.Inch),
		Height:   c.length("height_in", unit.Inch),
		Depth:    c.length("depth_in", unit.Inch),
		Volume:   c.volume("volume_in3"),
		Basis:    oneOf(&c, "basis", ByTable, ByMark, NoBasis),
		Clamps:   c.yes("clamps"),
		Listed:   oneOf(&c, "listed_for", "", "fan", "floor", "wet"),
		Part:     c.part(),
	}
	b.FromMemory = b.Basis == ByMark && strings.Contains(b.Confidence, fromMemory)
	c.agree("volume_in3", b.Volume, b.Basis)
	return b, c.err
}

// CarriesFan reports whether the box is listed for a ceiling fan. One that grips the board
// alone never is (NEC 314.27(C)).
func (b *Box) CarriesFan() bool { return b.Listed == "fan" && b.Mounting != OldWork }
