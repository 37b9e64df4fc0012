package unfold

import (
	"cmp"

	"studbay/fill/frame"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// probed draws the places of a face behind which somebody has looked: crossed where something
// is in the way, in dashes where it was found clear. On a board what was found is told over it
// under the ceiling, where that has room; on paper that is where boxes are told of.
func (u *unfolding) probed(f Face) (items []scene.Item) {
	top := u.m.ToStrip(f.Left, u.strip.Ceiling).Y + u.plates()
	for i := range f.Side.Probes {
		p := &f.Side.Probes[i]
		r := frame.RectOfProbe(p)
		box := u.box(f, max(r.Left, 0), min(r.Right, f.Length), max(r.Bottom, 0), min(r.Top, u.strip.Ceiling))
		if box.IsEmpty() {
			continue
		}
		what := words.New("face.clear", "clear")
		whole := u.MutedPen()
		if u.isAlone { // read at the wall, on a copy of a copy
			whole = u.InkPen(2)
		}
		pen := u.dashedPen(whole, 2, 2)
		if !p.Clear {
			pen = whole
			items = append(items,
				scene.Stroke{Path: scene.LinePath(box.Min, box.Max), Pen: pen},
				scene.Stroke{Path: scene.LinePath(scene.Point{X: box.Min.X, Y: box.Max.Y}, scene.Point{X: box.Max.X, Y: box.Min.Y}), Pen: pen})
			what = words.New("face.blocked", "{0}, behind", cmp.Or(p.What, u.m.Voice.Say(words.New("probe.blocked", "blocked"))))
		}
		items = append(items, scene.Stroke{Path: box.Path(), Pen: pen})
		said := scene.Run{At: scene.Point{X: box.Middle().X, Y: top + 1.4*u.m.Text}, Text: u.m.Voice.Say(what), Size: u.m.Text, Color: u.Theme.Muted, Align: scene.Center}
		if b := said.Bounds(); u.m.Kind == render.Board && u.Obstacles.IsFree(b) {
			items = append(items, said)
			u.Obstacles.Text(b, "")
		}
	}
	return items
}
