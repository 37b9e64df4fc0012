package frame

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Standard plates (archtoolbox.com, electrical faceplate types and dimensions): 4.49 in high,
// and so wide for one gang to four; each more gang adds the step. A canopy of 5 in is common
// practice.
var plateWidths = []unit.Length{11 * unit.Inch / 4, 9 * unit.Inch / 2, 51 * unit.Inch / 8, 131 * unit.Inch / 16}

const (
	plateHeight = 449 * unit.Inch / 100
	canopyRound = 5 * unit.Inch
)

// StandardPlates returns the height of standard plates, their widths for one gang to four, and
// how wide a canopy is taken to be.
func StandardPlates() []any {
	sizes := []any{words.Height(plateHeight)}
	for _, wide := range plateWidths {
		sizes = append(sizes, words.Height(wide))
	}
	return append(sizes, words.Height(canopyRound))
}

// PlateOf returns what covers an opening in its wall: a standard plate of its gangs, the
// canopy of a light, else its front.
func PlateOf(o *plan.Opening) part.Outline {
	k := part.All().Kind(o.Kind)
	switch {
	case o.Gangs > len(plateWidths):
		last := len(plateWidths)
		return part.Outline{Width: plateWidths[last-1] + unit.Length(o.Gangs-last)*gangStep, Height: plateHeight}
	case o.Gangs > 0:
		return part.Outline{Width: plateWidths[o.Gangs-1], Height: plateHeight}
	case !IsHoused(o) && k != nil && (k.Family == part.Light || k.Family == part.Fan || k.Family == part.Alarm):
		return part.Outline{Width: canopyRound, Height: canopyRound, IsRound: true}
	}
	return FrontOf(o)
}

// Plate returns the part of the face that the plate or canopy of a box covers.
func (p Placed) Plate() Rect {
	plate, middle := PlateOf(p.Opening), (p.Bottom+p.Top)/2
	left, bottom := p.Centre()-plate.Width/2, middle-plate.Height/2
	return Rect{left, left + plate.Width, bottom, bottom + plate.Height}
}
