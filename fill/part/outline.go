package part

import (
	"errors"
	"strings"

	"studbay/plan/unit"
)

// Outline is the shape of a thing as one looks at the wall or ceiling it sits in: a
// rectangle, or a circle as wide as it is high. The zero value is none.
type Outline struct {
	Width, Height unit.Length
	IsRound       bool
}

// IsZero reports whether there is no outline.
func (o Outline) IsZero() bool { return o == Outline{} }

// Outline returns the outside of the box as one looks at it, the zero value where that
// depends on the maker.
func (b *Box) Outline() Outline {
	if b.Width <= 0 || b.Height <= 0 {
		return Outline{}
	}
	return Outline{b.Width, b.Height, b.Shape == OctagonShape || b.Shape == RoundShape}
}

// outline reads an outline in inches: "6 3/8 round", or "14 1/2 x 30" for width and
// height. An empty cell is none.
func (c *cells) outline(column string) (o Outline) {
	text := c.row.Cell(column)
	if text == "" {
		return Outline{}
	}
	wide, isRound := strings.CutSuffix(text, " round")
	wide, high, isRectangle := strings.Cut(wide, " x ")
	if isRound == isRectangle {
		c.fail(column, errors.New("it is neither \"6 3/8 round\" nor \"14 1/2 x 30\""))
		return Outline{}
	}
	if isRound {
		high = wide
	}
	size := func(text string) unit.Length {
		l, err := unit.Parse(text, unit.Inch)
		if err == nil && l <= 0 {
			err = errors.New(text + " is not above zero")
		}
		c.fail(column, err)
		return l
	}
	return Outline{size(wide), size(high), isRound}
}
