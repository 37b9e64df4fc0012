package desk

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/windowtest"
)

// TestPanelsAreSizedByKeys moves each divider by the arrows and puts it back by Home.
func TestPanelsAreSizedByKeys(t *testing.T) {
	b := newBench(t)
	b.run("demo")
	b.hand.takeByID("opening")
	for _, tt := range []struct {
		name         string
		which        int // of the dividers
		bigger       fyne.KeyName
		size         func(shell.Sizes) float32
		otherKeyGoes fyne.KeyName // to the window
	}{
		{"drawer", 1, fyne.KeyRight, func(s shell.Sizes) float32 { return s.Drawer }, fyne.KeyUp},
		{"card", 2, fyne.KeyLeft, func(s shell.Sizes) float32 { return s.Card }, fyne.KeyDown},
		{"unfolded room", 0, fyne.KeyUp, func(s shell.Sizes) float32 { return s.Unfold }, fyne.KeyLeft},
	} {
		d := b.dividers()[tt.which]
		c := b.window.Canvas()
		c.Focus(d)
		if c.Focused() != d {
			t.Fatalf("%s: the divider takes no focus", tt.name)
		}
		d.TypedKey(&fyne.KeyEvent{Name: tt.bigger})
		once := tt.size(b.prefs.Sizes())
		d.TypedKey(&fyne.KeyEvent{Name: tt.bigger})
		if twice := tt.size(b.prefs.Sizes()); once <= 0 || twice <= once {
			t.Errorf("%s: two arrows make it %v and %v", tt.name, once, twice)
		}
		d.TypedKey(&fyne.KeyEvent{Name: tt.otherKeyGoes})
		d.TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome})
		if got := tt.size(b.prefs.Sizes()); got != 0 {
			t.Errorf("%s: Home leaves it %v, want the usual size", tt.name, got)
		}
	}
}

// TestFocusScrollsItsThingIntoSight goes through all that can be pressed or typed in on the
// card of an opening with everything unfolded.
func TestFocusScrollsItsThingIntoSight(t *testing.T) {
	b := newBench(t)
	b.window.Resize(fyne.NewSize(1366, 768))
	b.run("demo")
	b.checked()
	b.doc().Select(b.found("box-fill").Opening)
	b.unfoldCards()
	var stops []fyne.Focusable
	walk(b.column.Object, func(o fyne.CanvasObject) {
		switch w := o.(type) {
		case *look.Press:
			stops = append(stops, w)
		case *look.Entry:
			stops = append(stops, w)
		}
	})
	if len(stops) < 20 {
		t.Fatalf("only %d things to reach", len(stops))
	}
	driver, scroll := fyne.CurrentApp().Driver(), windowtest.All[*container.Scroll](b.column.Object)[0]
	for _, f := range stops {
		o := f.(fyne.CanvasObject)
		b.window.Canvas().Focus(f)
		top := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(scroll).Y
		if top < 0 || top+min(o.Size().Height, look.HitTarget) > scroll.Size().Height {
			t.Errorf("with the focus on %q it stands at %v of %v", textOf(o), top, scroll.Size().Height)
		}
	}
}
