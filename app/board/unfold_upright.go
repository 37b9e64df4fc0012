package board

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// standing is a break or fixture as the unfolded room shows it.
type standing struct {
	at         plan.Anchor
	width      unit.Length
	foot, head unit.Length
}

// chosenStanding returns the one break or fixture that is chosen, if it stands on a face.
func (u *Unfold) chosenStanding() (s standing, ok bool) {
	if len(u.pic.Selected) != 1 || u.pic.Index == nil {
		return s, false
	}
	p := u.pic.Index.Plan()
	if b, _ := p.Break(u.pic.Selected[0]); b != nil {
		return standing{u.seenAt(b), b.Width, b.Sill, b.Head}, true
	}
	if f, _ := p.Fixture(u.pic.Selected[0]); f != nil && f.At.Part == plan.PartFace {
		return standing{f.At, f.Width, f.Bottom, f.Top()}, true
	}
	return s, false
}

// seenAt returns where a break stands on a face that is shown: its own, else the one it
// cuts from behind.
func (u *Unfold) seenAt(b *plan.Break) plan.Anchor {
	if _, isOwn := u.strip.Face(b.At.Host); isOwn {
		return b.At
	}
	for _, f := range u.strip.Faces {
		for _, c := range u.pic.Index.Cuts(f.Side.ID) {
			if c.Break.ID == b.ID {
				return plan.OnFace(f.Side.ID, c.Start)
			}
		}
	}
	return b.At
}

// uprightInHand frames the break or fixture that is chosen and measures it: to both corners,
// its width, and how high its foot and its head are.
func (u *Unfold) uprightInHand(s *scribe) {
	it, ok := u.chosenStanding()
	if !ok {
		return
	}
	f, ok := u.strip.Face(it.at.Host)
	if !ok {
		return
	}
	left, right := it.at.Along, it.at.Along+it.width
	a, b := u.medium.ToStrip(f.Left+left, it.head), u.medium.ToStrip(f.Left+right, it.foot)
	d := s.density
	s.add(shape{kind: boxShape, a: a, b: b, width: 2 * d, color: s.pic.Theme.Accent})
	wide := u.measure(s, f, left, right)
	u.toCorner(s, f, left, false, &wide)
	u.toCorner(s, f, right, true, &wide)
	middle, up := (a.X+b.X)/2, func(l unit.Length) string { return s.pic.Voice.System.Format(l) }
	s.note(up(it.head), scene.Point{X: middle, Y: a.Y + 11*d}, s.pic.Theme.Ink, true)
	if it.foot > 0 && b.Y-a.Y > 40*d { // else the two would run into each other
		s.note(up(it.foot), scene.Point{X: middle, Y: b.Y - 11*d}, s.pic.Theme.Ink, true)
	}
}
