package board

import (
	"image"
	"sync"

	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// drawnCursor is a pointer of our own. The toolkit compares cursors, so there is one
// of each.
type drawnCursor struct {
	draw func() []scene.Item
	once sync.Once
	im   image.Image
}

var _ desktop.Cursor = (*drawnCursor)(nil)

// cursorSide is the width of a drawn cursor in pixels; its middle points.
const cursorSide = 24

// Image implements desktop.Cursor.
func (c *drawnCursor) Image() (image.Image, int, int) {
	c.once.Do(func() {
		im := image.NewRGBA(image.Rect(0, 0, cursorSide, cursorSide))
		raster.Items(im, 1, scene.Point{X: cursorSide / 2, Y: cursorSide / 2}, c.draw()...)
		c.im = im
	})
	return c.im, cursorSide / 2, cursorSide / 2
}

var (
	moveCursor = &drawnCursor{draw: moveArrows}
	noCursor   = &drawnCursor{draw: barredRing}
)

// twice draws lines wide in white and then thin in black, to be seen on any ground.
func twice(paths ...scene.Path) (items []scene.Item) {
	for _, pen := range []scene.Pen{
		{Width: 4, Color: scene.Color{R: 0xff, G: 0xff, B: 0xff, A: 0xff}, Cap: scene.RoundCap},
		{Width: 1.6, Color: scene.Color{A: 0xff}, Cap: scene.RoundCap},
	} {
		for _, p := range paths {
			items = append(items, scene.Stroke{Path: p, Pen: pen})
		}
	}
	return items
}

func moveArrows() []scene.Item {
	var p scene.Path
	for _, angle := range []float64{0, 90, 180, 270} {
		out := scene.Direction(angle)
		side := out.Turned()
		tip := out.Mul(9)
		p.MoveTo(scene.Point{}).LineTo(tip)
		p.MoveTo(tip.Sub(out.Mul(3)).Add(side.Mul(3))).LineTo(tip).LineTo(tip.Sub(out.Mul(3)).Sub(side.Mul(3)))
	}
	return twice(p)
}

func barredRing() []scene.Item {
	return twice(scene.Circle(scene.Point{}, 8), scene.LinePath(scene.Point{X: -5.6, Y: -5.6}, scene.Point{X: 5.6, Y: 5.6}))
}

// cursors are what a tool asks for.
var cursors = map[tool.Cursor]desktop.Cursor{
	tool.CursorArrow: desktop.DefaultCursor,
	tool.CursorCross: desktop.CrosshairCursor,
	tool.CursorHand:  desktop.PointerCursor,
	tool.CursorMove:  moveCursor,
	tool.CursorNo:    noCursor,

	tool.CursorAcross: desktop.HResizeCursor,
	tool.CursorUpDown: desktop.VResizeCursor,
}
