package symbol

import "studbay/render/scene"

// Mark is a sign that stands for a severity, told by its shape before its colour.
type Mark uint8

// The marks, gravest first.
const (
	Stop     Mark = iota // a triangle with an exclamation mark
	Warn                 // a lozenge
	Note                 // a ring
	Question             // a ring with a question mark: an open decision
)

// picture is lines and areas in a box from -1 to 1.
type picture struct {
	fill   scene.Path
	cut    scene.Path // lines in paper over the fill
	dot    scene.Path // an area in paper, or in ink where nothing is filled
	stroke scene.Path // lines in ink
}

var marks = [...]picture{
	Stop: {
		fill: shape("M -.14 -.82 C -.08 -.94 .08 -.94 .14 -.82 L .96 .66 C 1.02 .78 .94 .9 .82 .9 L -.82 .9 C -.94 .9 -1.02 .78 -.96 .66 Z"),
		cut:  shape("M 0 -.3 L 0 .28"),
		dot:  shape("O 0 .58 .13"),
	},
	Warn: {fill: shape("M 0 -1 L .82 0 L 0 1 L -.82 0 Z")},
	Note: {stroke: shape("O 0 0 .82")},
	Question: {
		stroke: shape("O 0 0 .85 M -.28 -.2 A 0 -.2 .28 180 225 C .1 .06 0 .08 0 .26"),
		dot:    shape("O 0 .48 .13"),
	},
}

// DrawMark draws a mark that fits in a square of a side about a middle.
func DrawMark(m Mark, middle scene.Point, side float64, ink, paper scene.Color) []scene.Item {
	return marks[m].draw(scene.Scaling(side/2, middle), .2*side/2, ink, paper)
}

func (p picture) draw(t scene.Transform, line float64, ink, paper scene.Color) (items []scene.Item) {
	dot := ink
	if !p.fill.IsEmpty() {
		items, dot = append(items, scene.Fill{Path: p.fill.Placed(t), Color: ink}), paper
	}
	pen := scene.Pen{Width: line, Cap: scene.RoundCap, Color: ink}
	if !p.stroke.IsEmpty() {
		items = append(items, scene.Stroke{Path: p.stroke.Placed(t), Pen: pen})
	}
	pen.Color = paper
	if !p.cut.IsEmpty() {
		items = append(items, scene.Stroke{Path: p.cut.Placed(t), Pen: pen})
	}
	if !p.dot.IsEmpty() {
		items = append(items, scene.Fill{Path: p.dot.Placed(t), Color: dot})
	}
	return items
}

// Icon is the picture of a tool.
type Icon uint8

// The icons, in the order of the rail.
const (
	IconSelect Icon = iota
	IconRoom
	IconBreak
	IconFixture
	IconOpening
	IconCable
	IconMeasure
)

// icons are drawn with a pen a fourteenth of the box wide.
var icons = [...]picture{
	// A pointer made of two strokes and a tail.
	IconSelect: {stroke: shape("M -.55 -.8 L -.55 .5 L -.2 .2 L .35 .12 Z M -.08 .26 L .2 .82")},
	// A room with a bay: clearly a plan, not a page.
	IconRoom: {stroke: shape("M -.8 -.7 L .8 -.7 L .8 .7 L .1 .7 L .1 .15 L -.8 .15 Z")},
	// Two ends of wall, a leaf and the way it swings.
	IconBreak: {stroke: shape("M -.9 .6 L -.5 .6 M .5 .6 L .9 .6 M -.5 .6 L -.5 -.4 M -.5 -.4 A -.5 .6 1 270 22 M -.02 -.277 A -.5 .6 1 305 20 M .345 .066 A -.5 .6 1 338 22")},
	// A basin let into a counter, its tap behind.
	IconFixture: {stroke: shape("R -.9 -.62 .9 .62 .16 M -.58 -.08 L .58 -.08 C .58 .2 .4 .34 .2 .34 L -.2 .34 C -.4 .34 -.58 .2 -.58 -.08 Z M 0 -.62 L 0 -.3")},
	// Our own receptacle: foot, stem, body.
	IconOpening: {stroke: shape("M -.5 -.85 L .5 -.85 M 0 -.85 L 0 -.3"), dot: shape("M -.5 -.25 L .5 -.25 L .5 .75 L -.5 .75 Z")},
	// Two ends and the slack between.
	IconCable: {stroke: shape("M -.64 -.45 C -.3 .9 .1 -.9 .56 .42"), dot: shape("O -.7 -.6 .19 O .64 .58 .19")},
	// A length between two witness lines.
	IconMeasure: {stroke: shape("M -.85 -.5 L -.85 .6 M .85 -.5 L .85 .6 M -.85 .05 L .85 .05 M -.6 -.2 L -.85 .05 L -.6 .3 M .6 -.2 L .85 .05 L .6 .3")},
}

// Icons returns every icon, in the order of the rail.
func Icons() (all []Icon) {
	for i := range icons {
		all = append(all, Icon(i))
	}
	return all
}

// DrawIcon draws an icon that fits in a square of a side about a middle.
func DrawIcon(i Icon, middle scene.Point, side float64, ink scene.Color) []scene.Item {
	return icons[i].draw(scene.Scaling(side/2, middle), side/14, ink, ink)
}
