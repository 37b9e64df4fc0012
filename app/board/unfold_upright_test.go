package board

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/plan"
)

// TestAChosenWindowIsMeasuredInTheUnfoldedRoom: how wide it is, how far from both corners,
// and how high its sill and its head are.
func TestAChosenWindowIsMeasuredInTheUnfoldedRoom(t *testing.T) {
	test.NewTempApp(t)
	u := NewUnfold(&listener{})
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(1600, 360))
	pic := houseOf(t, 60)
	var window *plan.Break
	for b := range pic.Index.Plan().Levels[0].Breaks.All() {
		if ref, ok := pic.Index.Side(b.At.Host); ok && b.Kind == plan.BreakWindow && b.At.Along > 0 && b.At.Along+b.Width < ref.Line().Length() {
			window = b
		}
	}
	if window == nil {
		t.Fatal("the house has no window")
	}
	ref, _ := pic.Index.Side(window.At.Host)
	said := func() (all []string) {
		u.SetPicture(UnfoldPicture{Picture: pic, Room: ref.Room.ID})
		for _, s := range u.liveShapes(1) {
			if s.kind == textShape {
				all = append(all, s.text)
			}
		}
		return all
	}
	if got := said(); len(got) != 0 {
		t.Errorf("with nothing chosen it says %q", got)
	}
	pic.Selected = []plan.ID{window.ID}
	got, long := said(), ref.Line().Length()
	for _, want := range []string{
		pic.Voice.System.Format(window.At.Along), pic.Voice.System.Format(long - window.At.Along - window.Width),
		pic.Voice.System.Format(window.Width), pic.Voice.System.Format(window.Sill), pic.Voice.System.Format(window.Head),
	} {
		if !slices.Contains(got, want) {
			t.Errorf("it says %q, and not %q", got, want)
		}
	}
}
