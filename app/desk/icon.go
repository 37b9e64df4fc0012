package desk

import (
	"bytes"
	"image"
	"image/png"
	"sync"

	"fyne.io/fyne/v2"

	"studbay/render"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// iconSide is the side of the program's icon in pixels.
const iconSide = 256

// Icon returns the program's icon: an opening by our grammar, foot, stem and body, on a
// sheet of paper under a wall.
var Icon = sync.OnceValue(func() fyne.Resource {
	img := image.NewRGBA(image.Rect(0, 0, iconSide, iconSide))
	raster.Items(img, iconSide/16.0, scene.Point{}, iconItems()...)
	var data bytes.Buffer
	if err := png.Encode(&data, img); err != nil {
		panic(err) // a buffer takes all
	}
	return fyne.NewStaticResource("studbay.png", data.Bytes())
})

// iconItems draws the icon in a square of 16 units.
func iconItems() []scene.Item {
	t := render.Light
	box := func(x0, y0, x1, y1 float64) scene.Path {
		return scene.Rect{Min: scene.Point{X: x0, Y: y0}, Max: scene.Point{X: x1, Y: y1}}.Path()
	}
	return []scene.Item{
		scene.Fill{Path: box(1, 1, 15, 15), Color: t.Paper},
		scene.Fill{Path: box(1, 1, 15, 4), Color: t.Wall},
		scene.Fill{Path: box(5, 4, 11, 5.1), Color: t.Accent},
		scene.Fill{Path: box(7.4, 4.6, 8.6, 8), Color: t.Accent},
		scene.Fill{Path: box(5, 7.6, 11, 13.2), Color: t.Accent},
	}
}
