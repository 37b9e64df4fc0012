package look

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

func TestTheWheelWorksOverAField(t *testing.T) {
	test.NewTempApp(t)
	tapped := false
	fields := container.NewVBox(widget.NewButton("Press", func() { tapped = true }))
	for range 20 {
		fields.Add(widget.NewEntry())
	}
	scroll := container.NewVScroll(fields)
	w := test.NewTempWindow(t, Wheeled(scroll))
	w.Resize(fyne.NewSize(200, 200))
	test.Scroll(w.Canvas(), fyne.NewPos(100, 100), 0, -25)
	if scroll.Offset.Y != 50 {
		t.Errorf("the list moved by %g, want two of the toolkit's steps", scroll.Offset.Y)
	}
	button := fields.Objects[0].(*widget.Button)
	scroll.ScrollToTop()
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(button)
	if test.TapCanvas(w.Canvas(), at.AddXY(20, 10)); !tapped {
		t.Error("a click does not reach the button below")
	}
}
