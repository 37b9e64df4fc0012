package walk

import (
	"bytes"
	"image"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/plan"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// BenchmarkFrame turns the view into the room with the most openings and paints it, as large
// as a window of 1440×900 is: all of a frame that is ours.
func BenchmarkFrame(b *testing.B) {
	app := test.NewTempApp(b)
	app.Settings().SetTheme(&look.Theme{Scale: 1})
	ix := cottage(b).Index()
	var room *plan.Room
	for _, l := range ix.Plan().Levels {
		for r := range l.Rooms.All() {
			if room == nil || inRoom(ix.Plan(), r) > inRoom(ix.Plan(), room) {
				room = r
			}
		}
	}
	e := newEye(func(plan.ID) {})
	e.Resize(fyne.NewSize(1440, 900))
	e.show(ix, room.ID, "", nil)
	b.ResetTimer()
	for b.Loop() {
		e.camera = e.camera.Turned(3)
		e.paint(1440, 900)
	}
}

// inRoom counts the openings on the sides of a room.
func inRoom(p plan.Plan, r *plan.Room) (n int) {
	for _, o := range p.Openings() {
		if o.At.Host == r.ID || r.SideAt(o.At.Host) >= 0 {
			n++
		}
	}
	return n
}

// TestBandsMakeOnePicture: painted in bands the view is, pixel for pixel, what it is painted
// whole.
func TestBandsMakeOnePicture(t *testing.T) {
	app := test.NewTempApp(t)
	app.Settings().SetTheme(&look.Theme{Scale: 1})
	host := cottage(t)
	e := newEye(func(plan.ID) {})
	e.Resize(fyne.NewSize(640, 401))
	e.show(host.Index(), NewTour(host, "").Room().ID, "", nil)
	got := e.paint(640, 401).(*image.RGBA)
	whole := image.NewRGBA(image.Rect(0, 0, 640, 401))
	raster.Items(whole, 1, scene.Point{}, e.items()...)
	if !bytes.Equal(got.Pix, whole.Pix) {
		t.Error("the bands differ from the whole")
	}
}
