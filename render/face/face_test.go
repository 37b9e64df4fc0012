package face_test

import (
	"testing"

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
// what is drawn is as large wherever it is drawn.
func TestEveryBoxIsTold(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		walls := 0
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				for _, f := range face.Of(ix, r.ID, unit.Inch/4) {
					walls++
					m := medium()
					d := f.Draw(m)
					if len(d.Untold) > 0 {
						t.Errorf("%s, %s: nothing is said beside %v", name, r.Name, d.Untold)
					}
					m.At = scene.Point{X: 40, Y: 70}
					moved := f.Draw(m).Bounds
					if off := moved.Min.Sub(d.Bounds.Min).Sub(m.At); off.X > 1e-6 || off.Y > 1e-6 || moved.Width() > d.Bounds.Width()+1e-6 {
						t.Errorf("%s, %s: drawn elsewhere it is off by %v", name, r.Name, off)
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
						n, ok := f.Stud(s)
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
