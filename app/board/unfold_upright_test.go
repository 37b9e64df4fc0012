package board

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/scene"
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

// Wherever a window stands on its face, what is written below the floor of it never runs into
// one another, in a pane so narrow that the texts are wider than what they measure.
func TestDimensionsOfAWindowNeverOverlap(t *testing.T) {
	test.NewTempApp(t)
	u := NewUnfold(&listener{})
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(760, 214))
	pic := houseOf(t, 60)
	tried, most := 0, 0
	for b := range pic.Index.Plan().Levels[0].Breaks.All() {
		ref, ok := pic.Index.Side(b.At.Host)
		if !ok {
			continue
		}
		long := ref.Line().Length()
		for _, along := range []unit.Length{4 * unit.Inch, 20 * unit.Inch, (long - b.Width) / 2, long - b.Width - 20*unit.Inch} {
			now, err := edit.MoveBreak{ID: b.ID, To: plan.OnFace(b.At.Host, along)}.Apply(pic.Index.Plan())
			if err != nil {
				continue
			}
			tried++
			p := pic
			p.Index, p.Selected = index.New(now), []plan.ID{b.ID}
			u.SetPicture(UnfoldPicture{Picture: p, Room: ref.Room.ID, Side: b.At.Host})
			var below []scene.Rect
			for _, s := range u.liveShapes(1) {
				if s.kind != textShape || s.a.Y < u.medium.ToStrip(0, -u.strip.Floor).Y {
					continue
				}
				wide := scene.Run{Text: s.text, Size: u.medium.Text}.Width()
				now := scene.Rect{Min: s.a, Max: s.a.Add(scene.Point{X: wide, Y: u.medium.Text})}
				for _, other := range below {
					if now.Overlaps(other) {
						t.Errorf("%s at %v: %q lies over another distance", b.ID, along, s.text)
					}
				}
				below = append(below, now)
			}
			most = max(most, len(below))
		}
	}
	if tried < 8 || most < 3 {
		t.Fatalf("%d places tried, at most %d distances written", tried, most)
	}
}
