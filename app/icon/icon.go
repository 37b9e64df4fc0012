// Package icon draws the pictures by which a desktop shows the program and its plans:
// a stud bay as the builder sees it, with a box in it that stands off the stud on a
// foot and a stem, as our symbols stand off their wall.
//
// The pictures are made by "go run ./app/icon/gen" and kept in assets/icon.
package icon

import (
	"math"

	"studbay/render"
	"studbay/render/scene"
)

// Sizes are the sides in pixels that pictures are kept in, smallest first. They are
// those that desktops ask for.
var Sizes = []int{16, 22, 24, 32, 48, 64, 128, 256, 512}

// Side is the side of every drawing in its own units. It is also the size of which
// the drawing that scales freely is a copy.
const Side = 64

// The colours are those of the light window, so that the icon looks the same on a
// light desktop and a dark one.
var (
	paper  = render.Light.Paper
	edge   = render.Dark.Wall
	wall   = render.Light.Wall
	accent = render.Light.Accent
	copper = render.Light.Contents.Conductor
)

// Picture is a drawing that knows for which size it is.
type Picture struct {
	Name  string // of its files
	items func(grid) []scene.Item
}

// Pictures are all there are: that of the program and that of a plan's file.
var Pictures = []Picture{
	{"app", app},
	{"plan", plan},
}

// Items draws the picture for a size in pixels, in units of which Side make the whole.
// Its upright and level edges fall on whole pixels of that size, as blurred ones would
// be half of a small icon.
func (p Picture) Items(size int) []scene.Item { return p.items(grid{size}) }

// app is a piece of wall in a square frame.
func app(g grid) []scene.Item {
	line := g.length(2)
	frame := scene.Rect{Max: scene.Point{X: Side, Y: Side}}
	inset := g.units(line)
	return append(
		[]scene.Item{
			scene.Fill{Path: frame.RoundedPath(12), Color: edge},
			scene.Fill{Path: frame.Expanded(-inset).RoundedPath(12 - inset), Color: paper},
		},
		bay{grid: g, left: g.place(8), top: line, bottom: g.size - line, middle: 32, step: 4}.items()...,
	)
}

// plan is a sheet with one corner turned over and the piece of wall on it.
func plan(g grid) []scene.Item {
	line, left, turn := g.length(2), g.place(8), g.length(16)
	sheet := g.rect(left, 0, g.size-left, g.size)
	within := g.rect(left+line, line, g.size-left-line, g.size-line)
	bend := scene.Point{X: g.units(g.size - left - turn), Y: g.units(turn)}
	// What is left of the corner keeps the width of the line along the slope as well.
	corner := g.units(turn) - g.units(line)*(2-math.Sqrt2)
	return append(
		[]scene.Item{
			scene.Fill{Path: cut(sheet, g.units(turn)), Color: edge},
			scene.Fill{Path: cut(within, corner), Color: paper},
			scene.Fill{Path: scene.Polygon(scene.Point{X: bend.X}, scene.Point{X: sheet.Max.X, Y: bend.Y}, bend), Color: edge},
		},
		bay{grid: g, left: g.place(16), top: g.place(20), bottom: g.size - line, middle: 42, step: 32.0 / 12}.items()...,
	)
}

// cut returns a rectangle whose upper right corner is cut off.
func cut(r scene.Rect, by float64) scene.Path {
	return scene.Polygon(r.Min,
		scene.Point{X: r.Max.X - by, Y: r.Min.Y}, scene.Point{X: r.Max.X, Y: r.Min.Y + by},
		r.Max, scene.Point{X: r.Min.X, Y: r.Max.Y})
}
