package unfold

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
)

// plates is how far the plates of a face that stands alone reach down from the ceiling.
func (u *unfolding) plates() float64 {
	if !u.isAlone {
		return 0
	}
	return u.m.Length(2 * frame.StudThick)
}

// opened shades what of a face is laid open, and writes so where there is room.
func (u *unfolding) opened(f Face) (items []scene.Item) {
	part := func(from, to unit.Length) {
		to = min(to, f.Length)
		if from >= to {
			return
		}
		box := u.box(f, from, to, 0, u.strip.Ceiling)
		items = append(items, scene.Fill{Path: box.Path(), Color: u.Theme.Tint}, scene.Stroke{Path: box.Path(), Pen: u.dashedPen(u.MutedPen(), 5, 4)})
		said := scene.Run{
			At:   scene.Point{X: box.Middle().X, Y: box.Min.Y + 1.4*u.m.Text + u.plates()},
			Text: u.m.Voice.Say(words.New("face.opened", "opened")), Size: u.m.Text, Color: u.Theme.Muted, Align: scene.Center,
		}
		if b := said.Bounds(); b.Width() < box.Width() {
			items = append(items, said)
			u.Obstacles.Text(b, f.Side.ID)
		}
	}
	at := unit.Length(0)
	for _, z := range f.Side.Zones {
		if f.Side.Condition == plan.ConditionOpened {
			part(at, z.From)
		}
		if z.Condition == plan.ConditionOpened {
			part(z.From, z.To)
		}
		at = z.To
	}
	if f.Side.Condition == plan.ConditionOpened {
		part(at, f.Length)
	}
	return items
}
