package inside

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/wire"
	"studbay/render"
	"studbay/render/makeup"
	"studbay/render/scene"
)

// makeUpText is the height of the text of a make-up on a card.
const makeUpText = 9.0

// MakeUp is how the conductors of the box are joined, behind a fold: of a box that cables are
// drawn to.
func MakeUp(s opening) bind.Row {
	body, isOpen := look.Column(look.Grid), false
	var fold *bind.Fold
	update := func() {
		v, ok := s.Index.OpeningView(s.ID())
		look.ShowIf(fold, ok && len(v.Cables) > 0)
		if body.Objects = nil; !isOpen || !ok || len(v.Cables) == 0 {
			body.Refresh()
			return
		}
		m, told := wire.MakeUpOf(s.Index, s.ID())
		if !told {
			body.Add(look.NewParagraph(s.Say("makeup.cannot", "It cannot be told: a cable carries what the controls do not explain."), look.Quiet, s.Width))
			return
		}
		size := float64(look.Scaled(makeUpText))
		onCard := func(p *look.Palette) *render.Theme { // gaps are of the card's own ground
			t := *p
			t.Paper = p.Surface
			return &t
		}
		_, tall := makeup.Draw(m, scene.Point{}, makeup.Look{Voice: s.Voice, Theme: onCard(look.Current()), Text: size, Width: float64(s.Width) - 2})
		body.Add(look.NewPicture(s.Width, float32(tall)+2, func(w, _ float64, p *look.Palette) []scene.Item {
			items, _ := makeup.Draw(m, scene.Point{X: 1, Y: 1}, makeup.Look{Voice: s.Voice, Theme: onCard(p), Text: size, Width: w - 2})
			return items
		}))
		for _, n := range m.Nets {
			if n.IsSplice() {
				body.Add(look.NewParagraph(s.Say("makeup.spoken", "{0}: {1}", look.Capital(s.Voice.Say(n.Conductor.Text())), makeup.Says(n)), look.Second, s.Width))
			}
		}
		body.Add(look.NewParagraph(s.Say("makeup.note", "A dot is a splice, a gap a crossing. By the cables drawn; receptacles on tails (common practice) unless their circuit goes through them."), look.Second, s.Width))
		body.Refresh()
	}
	fold = bind.NewFold(s.Context, s.Say("makeup.fold", "What is spliced with what"), body)
	fold.Changed = func(open bool) {
		isOpen = open
		update()
	}
	return bind.Row{Object: fold, Update: update}
}
