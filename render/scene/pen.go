package scene

import "math"

// Cap is how a line ends. The zero value is ButtCap.
type Cap uint8

// The ends of lines.
const (
	ButtCap   Cap = iota // at the last point
	RoundCap             // half a disc beyond it
	SquareCap            // half a width beyond it
)

// Join is how the segments of a line meet. The zero value is RoundJoin. There is no
// pointed corner: not every painter has one, so a sharp shape is filled instead.
type Join uint8

// The corners of lines.
const (
	RoundJoin Join = iota
	BevelJoin
)

// Pen is how a line is drawn.
type Pen struct {
	Width float64 // scene units, over zero
	Color Color
	Dash  []float64 // lengths of line and gap by turns; none means unbroken
	Cap   Cap
	Join  Join
}

// reach returns how far ink may lie from the path.
func (p Pen) reach() float64 {
	if p.Cap == SquareCap {
		return p.Width / 2 * math.Sqrt2
	}
	return p.Width / 2
}
