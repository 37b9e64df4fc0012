package part

import (
	"errors"
	"fmt"
	"strings"

	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
)

// BreakKind is a kind of break: the sizes a new one begins with and what rules and
// drawings need to know of it. The zero value is a kind that is not in the table.
type BreakKind struct {
	ID         plan.BreakKind // as a plan has it, and its English name
	Width      unit.Length
	Head       unit.Length // above the finished floor
	Sill       unit.Length // above the finished floor; 0 where it begins there
	Casing     unit.Length
	Panels     []plan.Panel // from its left end
	SizeSource string
	FloorLine  FloorLine
	IsHung     bool        // it has a leaf on hinges: a hand and a swing
	Out        unit.Length // how far it reaches into the room; common practice
	CasingGap  unit.Length // from its clear edge to the inner edge of the trim
	RoughSide  unit.Length // how much wider its rough opening is, at each side
	RoughTop   unit.Length // how much higher; under a sill as much lower as RoughSide
	Body       string      // how it is drawn, from above and as seen from the room
}

// HasSill reports whether the kind begins above the floor.
func (k BreakKind) HasSill() bool { return k.Sill > 0 }

var breakColumns = []string{"id", "width_in", "head_in", "sill_in", "casing_in", "panels", "size_source", "floor_line", "hung", "out_in", "body", "rough_side_in", "rough_top_in", "rough_source", "casing_gap_in", "casing_gap_source"}

func readBreak(r rows.Row) (*BreakKind, error) {
	cell := cells{row: r}
	k := &BreakKind{
		ID:         plan.BreakKind(cell.text("id")),
		Width:      cell.length("width_in", unit.Inch),
		Head:       cell.length("head_in", unit.Inch),
		Sill:       cell.length("sill_in", unit.Inch),
		Casing:     cell.length("casing_in", unit.Inch),
		SizeSource: cell.text("size_source"),
		FloorLine:  oneOf(&cell, "floor_line", OpenLine, PassageLine, GlassLine, PanelsLine),
		IsHung:     cell.yes("hung"),
		Out:        cell.length("out_in", unit.Inch),
		Body:       cell.text("body"),
		CasingGap:  cell.length("casing_gap_in", unit.Inch),
		RoughSide:  cell.length("rough_side_in", unit.Inch),
		RoughTop:   cell.length("rough_top_in", unit.Inch),
	}
	for panel := range strings.FieldsSeq(r.Cell("panels")) {
		k.Panels = append(k.Panels, plan.Panel(panel))
		if p := plan.Panel(panel); p != plan.PanelFixed && p != plan.PanelMoving {
			cell.fail("panels", fmt.Errorf("%q is no panel", panel))
		}
	}
	if k.Width == 0 || k.Head <= k.Sill {
		cell.fail("", errors.New("a width is wanted, and a head above the sill"))
	}
	if (len(k.Panels) > 0) != (k.FloorLine == PanelsLine) {
		cell.fail("panels", errors.New("panels are wanted where the floor line goes by them and nowhere else"))
	}
	return k, cell.err
}

// Break returns what is known of a kind of break; of one not in the table, only its ID.
func (c *Catalogue) Break(id plan.BreakKind) BreakKind {
	if k := c.breaks[string(id)]; k != nil {
		return *k
	}
	return BreakKind{ID: id}
}

// BreakIDs lists the kinds of break in the order a user sees.
func (c *Catalogue) BreakIDs() (all []plan.BreakKind) {
	for _, k := range c.Breaks {
		all = append(all, k.ID)
	}
	return all
}

// NewBreak returns a break as its kind starts out in a plan of the units, hinged at its
// left end and open into the room where it is hung. It has no ID and no place yet.
func (k BreakKind) NewBreak(units unit.System) plan.Break {
	b := plan.Break{
		Kind: k.ID, Width: units.Usual(k.Width), Head: units.Usual(k.Head), Sill: units.Usual(k.Sill),
		Casing: units.Usual(k.Casing), Panels: k.Panels,
	}
	if k.IsHung {
		b.Hand, b.Swing = plan.HandLeft, plan.SwingIn
	}
	return b
}
