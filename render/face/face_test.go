package face_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/face"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"studbay/render/unfold"
)

// medium is paper at half an inch to the foot with the usual size of figures.
func medium() unfold.Medium {
	m := unfold.Medium{Medium: render.SheetMedium(unit.Inch/2, unit.Foot, render.Print, words.Voice{})}
	m.Text = 7.25 * scene.PointSize
	return m
}

// TestEveryBoxIsTold: on no wall of the demos is there a box without a word beside it, and
// none takes more room than it says.
func TestEveryBoxIsTold(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		walls := 0
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				for _, f := range face.Of(ix, r.ID, unit.Inch/4) {
					walls++
					m := medium()
					items, untold := f.Draw(m)
					if len(untold) > 0 {
						t.Errorf("%s, %s: nothing is said beside %v", name, r.Name, untold)
					}
					want, got := f.Bounds(m), scene.Bounds(items...)
					if want.Expanded(0.01).Union(got) != want.Expanded(0.01) {
						t.Errorf("%s, %s: it takes %v, more than %v", name, r.Name, got, want)
					}
				}
			}
		}
		if walls == 0 {
			t.Errorf("%s: no wall with a box", name)
		}
	}
}

// TestStudsAreCountedFromTheLeft: stud 1 is the first of full height, and what stands only
// over or under an opening has no number.
func TestStudsAreCountedFromTheLeft(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				for _, f := range face.Of(ix, r.ID, 0) {
					last := 0
					for i := range f.Wall.All {
						s := &f.Wall.All[i]
						n, ok := frame.NumberOf(f.Wall.Studs(), s)
						if isWhole := s.Top == 0 && s.Bottom <= 0; ok != isWhole {
							t.Fatalf("%s, %s: an upright from %v to %v is numbered: %v", name, r.Name, s.Bottom, s.Top, ok)
						}
						if ok {
							if n != last+1 {
								t.Fatalf("%s, %s: stud %d follows %d", name, r.Name, n, last)
							}
							last = n
						}
					}
				}
			}
		}
	}
}
