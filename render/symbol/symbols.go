// Package symbol draws openings by one grammar, so that a new one explains itself.
//
// A foot on the wall line marks the true centre; a short stem leads into the room;
// the body of the family stands at its end, so nothing is drawn inside the wall. A
// tick across the stem stands for each yoke beyond the first; trade letters stand
// inside the body or beside it. A new opening is heavy and filled where its family
// fills, an existing one thin and open, one to be removed thin with a slanting
// stroke. What hangs in a ceiling or sits in a floor has neither foot nor stem.
//
// The package also holds the marks of severity, the tool icons and what orients a
// sheet that are pictures: north and the scale bar. All are paths, never letters of
// a font, but for the trade letters themselves.
package symbol

import "studbay/render/scene"

// Family is the kind of body. The zero value is Receptacle.
type Family uint8

// The families, in the order of the table.
const (
	Receptacle Family = iota
	Switch
	LowVoltage
	Light
	Fan
	Alarm
	Junction
)

// body is one family's shape, in bodies: a side of the receptacle's square is 1. The
// origin is the middle; y runs into the room, so the stem ends at y = -near.
type body struct {
	family Family
	name   string // for the contact sheet and messages to ourselves

	outline scene.Path // inked all over if solid and new, else an outline
	solid   bool
	inside  scene.Path // inked all over if new, else an outline
	cut     scene.Path // lines: paper on a solid body, ink in an open one
	rays    scene.Path // lines outside the outline

	near, far, half float64 // reach toward the wall, into the room and to each side

	room   float64 // em height of a letter inside, in bodies; 0: letters stand beside
	letter float64 // y of its middle
}

// bodies has one row a family. Bodies differ in width so that they weigh the same on
// paper: a triangle of a square's width would look half its size.
var bodies = [...]body{
	{
		family: Receptacle, name: "receptacle", solid: true,
		outline: shape("M -.5 -.5 L .5 -.5 L .5 .5 L -.5 .5 Z"),
		near:    .5, far: .5, half: .5, room: 1.02,
	},
	{
		family: Switch, name: "switch", solid: true,
		outline: shape("M -.68 -.5 L .68 -.5 L 0 .78 Z"),
		near:    .5, far: .78, half: .68, // its letters stand beside it, as the trade writes S, S3, SD
	},
	{
		family: LowVoltage, name: "low voltage", solid: true,
		outline: shape("M 0 -.7 L .7 0 L 0 .7 L -.7 0 Z"),
		near:    .7, far: .7, half: .7, room: .86,
	},
	{
		family: Light, name: "light", solid: true,
		outline: shape("O 0 0 .34"),
		rays: shape("M 0 -.48 L 0 -.7 M .339 -.339 L .495 -.495 M .48 0 L .7 0 M .339 .339 L .495 .495 " +
			"M 0 .48 L 0 .7 M -.339 .339 L -.495 .495 M -.48 0 L -.7 0 M -.339 -.339 L -.495 -.495"),
		near: .7, far: .7, half: .7,
	},
	{
		family: Fan, name: "fan",
		outline: shape("O 0 0 .7"),
		inside: shape("M 0 -.02 C -.3 -.12 -.3 -.42 0 -.54 C .12 -.36 .1 -.16 0 -.02 Z " +
			"M .0173 .01 C .254 -.2 .514 -.05 .468 .27 C .252 .284 .089 .167 .0173 .01 Z " +
			"M -.0173 .01 C .046 .32 -.214 .47 -.468 .27 C -.372 .076 -.189 -.007 -.0173 .01 Z"),
		near: .8, far: .8, half: .8,
	},
	{
		family: Alarm, name: "alarm",
		outline: shape("O 0 0 .7"),
		inside:  shape("O 0 0 .48"),
		near:    .8, far: .8, half: .8, room: .84,
	},
	{
		family: Junction, name: "junction", solid: true,
		outline: shape("M -.5 -.5 L .5 -.5 L .5 .5 L -.5 .5 Z"),
		cut:     shape("M -.36 -.36 L .36 .36 M .36 -.36 L -.36 .36"),
		near:    .5, far: .5, half: .5,
	},
}

// Families returns every family, in the order of the table.
func Families() (all []Family) {
	for _, b := range bodies {
		all = append(all, b.family)
	}
	return all
}

// String returns the family's name in English.
func (f Family) String() string { return bodies[f].name }

// The other measures of the grammar, in bodies. At bodies of 2.2 mm the pens of new
// and existing are the 0.5 mm and 0.18 mm of the house style.
const (
	newPen      = .5 / 2.2
	existingPen = .18 / 2.2
	stemPen     = .35 / 2.2 // of a new opening's foot-to-body line
	rayPen      = .3 / 2.2
	footLong    = .95 // along the wall
	stemLong    = .55 // wall line to body
	tickLong    = .66
	tickPen     = .24 / 2.2
	tickStep    = .32
	rowGap      = .3  // between bodies on one stem
	leanLong    = .5  // of the slanting part of a stem that leans
	strikeReach = .8  // of the slanting stroke, to each side of the middle
	outsideGap  = .22 // body to what is written outside of it
	outsideEm   = 6.5 * scene.PointSize / 2.2
)

// BodySize is a body's size on paper, in millimetres.
const BodySize = 2.2

// LeastPixels is the least size of a body on a screen at which families, statuses and
// letters can be told apart; found by looking at bodies of 8 to 18 pixels on dark
// paper. Below it a board shows dots.
const LeastPixels = 12
