package part

import (
	"errors"
	"slices"
	"strings"

	"studbay/fill/rows"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AddKind is what is put on a box.
type AddKind string

// The kinds.
const (
	Ring        AddKind = "ring"
	Extension   AddKind = "extension"
	RaisedCover AddKind = "raised-cover" // domed ones too
	Plate       AddKind = "plate"        // plates, blanks and canopies: the finish, no volume
)

// Add is what is put on a box: a ring, an extension or a cover. An unmarked ring gives
// no volume; the mark the user reads off it counts.
//
// The collar of a ring to devices is as large as the front of a steel device box of its
// gangs, whose devices it takes: 3 × 2 in by Table 314.16(A), each further gang 1-13/16 in
// as standard plates step. That of a ring to round is from memory.
type Add struct {
	ID        string
	Name      string
	Kind      AddKind
	Fits      []Shape
	Gangs     int         // it presents; 0 for round and blank ones
	Raise     unit.Length // from the box's front edge to its own
	Collar    Outline     // of a ring: what comes through the finish; zero for all else
	Volume    unit.Volume // 0 unless it is of a listed size
	Basis     Basis
	UsualMark unit.Volume // a hint for the field of the mark, never counted; 0: not known
	Part
}

// Text returns the name, to be translated by the ID; one of the user's own as it is written.
func (a *Add) Text() words.Text { return named("part.", a.ID, a.Name) }

// ComesAlong reports whether it is no part to buy: it comes with the luminaire.
func (a *Add) ComesAlong() bool { return a.Kind == Plate && a.Price.Cents == 0 }

// FitsOn reports whether it goes on a box of the shape.
func (a *Add) FitsOn(s Shape) bool { return slices.Contains(a.Fits, s) }

var addColumns = []string{"id", "name", "kind", "fits", "gangs", "raise_in", "collar_in", "volume_in3", "basis", "usual_mark_in3",
	"price_cents", "confidence", "source"}

func readAdd(r rows.Row) (*Add, error) {
	c := cells{row: r}
	a := &Add{
		ID:        c.id("id"),
		Name:      c.text("name"),
		Kind:      oneOf(&c, "kind", Ring, Extension, RaisedCover, Plate),
		Gangs:     c.count("gangs"),
		Raise:     c.length("raise_in", unit.Inch),
		Collar:    c.outline("collar_in"),
		Volume:    c.volume("volume_in3"),
		Basis:     oneOf(&c, "basis", ByTable, ByMark, NoBasis),
		UsualMark: c.volume("usual_mark_in3"),
		Part:      c.part(),
	}
	for shape := range strings.SplitSeq(c.text("fits"), "|") {
		a.Fits = append(a.Fits, Shape(shape))
	}
	if (a.Kind == Ring) == a.Collar.IsZero() {
		c.fail("collar_in", errors.New("a ring and nothing else has a collar"))
	}
	c.agree("volume_in3", a.Volume, a.Basis)
	return a, c.err
}
