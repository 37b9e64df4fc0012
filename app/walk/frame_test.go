package walk

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/plan"
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
