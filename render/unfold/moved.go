package unfold

import (
	"math"

	"studbay/fill/remodel"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// moves draws an arrow from the old box of each opening that was moved to the new one, where
// both are on faces that are drawn, with how far it was moved.
func (u *unfolding) moves(faces []Face) {
	boxes := map[plan.ID]scene.Rect{}
	for _, f := range faces {
		for _, o := range u.Index.OpeningsOn(f.Side.ID) {
			if !u.m.Hides(o.ID) {
				boxes[o.ID] = u.boxOf(f, o)
			}
		}
	}
	for _, f := range faces {
		for _, o := range u.Index.OpeningsOn(f.Side.ID) {
			_, by, ok := remodel.MovedFrom(u.Index, o)
			from, isThere := boxes[o.Was]
			to, isHere := boxes[o.ID]
			if !ok || !isThere || !isHere || !u.m.Shows(from) && !u.m.Shows(to) {
				continue
			}
			u.arrow(o, from, to, words.New("level.moved", "moved {0}", by))
		}
	}
}

// arrow runs from the edge of one box to that of the other, its words under or over the
// boxes where there is room for them, else on its middle
// where it is long enough.
func (u *unfolding) arrow(o *plan.Opening, from, to scene.Rect, told words.Text) {
	a, b := from.Middle(), to.Middle()
	gap := 0.4 * u.m.Text
	if b.X > a.X {
		a.X, b.X = from.Max.X+gap, to.Min.X-gap
	} else {
		a.X, b.X = from.Min.X-gap, to.Max.X+gap
	}
	if (b.X > a.X) != (to.Middle().X > from.Middle().X) {
		return // the boxes touch or are one over the other: the words are in the schedule
	}
	items := draft.Arrow(a, b, 0.8*u.m.Text, u.InkPen(1))
	middle := a.Add(b.Sub(a).Mul(0.5))
	said := scene.Run{Text: u.m.Voice.Say(told), Size: u.m.Text, Color: u.Theme.Ink, Align: scene.Center}
	onLine := middle.Y - 0.5*u.m.Text
	for _, y := range []float64{max(from.Max.Y, to.Max.Y) + 1.2*u.m.Text, min(from.Min.Y, to.Min.Y) - 0.5*u.m.Text, onLine} {
		said.At = scene.Point{X: middle.X, Y: y}
		isBetween := y == onLine && said.Width() < math.Abs(b.X-a.X) // it hides no box, a door at most
		if isBetween || u.Obstacles.IsFree(said.Bounds()) {
			items = append(items, backing(said, u.Theme.Surface), said)
			u.Obstacles.Text(said.Bounds(), o.ID)
			break
		}
	}
	u.Put(o.ID, render.LayerControls, items...)
	u.Obstacles.Line(a, b, o.ID)
}
