package symbol

import "studbay/render/scene"

// Sign is a small picture that stands for a state, told by its shape and never by its colour
// alone.
type Sign uint8

// The signs.
const (
	Ticked Sign = iota // a tick, as a pen makes it
	Calm               // a ring with a tick: nothing was found in what was checked
	Lit                // a ring with a sun
	Dark               // a filled disc with a crescent
	Unsaid             // a plain ring
)

var signs = [...]picture{
	Ticked: {stroke: shape("M -.72 .02 L -.22 .58 L .8 -.78")},
	Calm:   {stroke: shape("O 0 0 .85 M -.4 .02 L -.1 .34 L .44 -.34")},
	Lit: {
		stroke: shape("O 0 0 .9 M 0 -.62 L 0 -.46 M 0 .46 L 0 .62 M -.62 0 L -.46 0 M .46 0 L .62 0 M -.44 -.44 L -.33 -.33 M .33 .33 L .44 .44 M -.44 .44 L -.33 .33 M .33 -.33 L .44 -.44"),
		dot:    shape("O 0 0 .27"),
	},
	Dark:   {fill: shape("O 0 0 .95"), dot: shape("M .18 -.55 C -.5 -.5 -.62 .3 -.1 .5 C .2 .62 .5 .44 .56 .2 C .1 .3 -.2 -.1 .18 -.55 Z")},
	Unsaid: {stroke: shape("O 0 0 .85")},
}

// DrawSign draws a sign that fits in a square of a side about a middle.
func DrawSign(s Sign, middle scene.Point, side float64, ink, paper scene.Color) []scene.Item {
	return signs[s].draw(scene.Scaling(side/2, middle), .16*side/2, ink, paper)
}
