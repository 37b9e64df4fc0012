package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/cut"
	"studbay/render/scene"
	"studbay/render/table"
)

// How much of the wall a cut on a card shows to either hand of the box, and how high it is.
const (
	cutReach  = 10 * unit.Inch
	cutHeight = 96
)

// inWall is whether the box fits the wall, the cut through the wall at it, and behind a fold
// what that rests on. It is nothing of what is built into no wall.
func inWall(s opening) bind.Row {
	body, isOpen := look.Column(look.Grid), false
	return bind.Row{Object: body, Update: func() {
		body.Objects = nil
		defer body.Refresh()
		c, ok := cutAt(s)
		if !ok {
			return
		}
		picture := look.NewPicture(s.Width/look.Scaled(1), cutHeight, func(w, h float64, p *look.Palette) []scene.Item {
			return drawn(c, s.Voice, w, h, p)
		})
		fold := bind.NewFold(s.Context, s.Say("in-wall.working", "What it rests on"), workings(s, c))
		fold.SetOpen(isOpen)
		fold.Changed = func(open bool) { isOpen = open }
		body.Objects = []fyne.CanvasObject{
			look.HairLine(), look.NewText(s.Say("in-wall.title", "In the wall"), look.Title),
			look.NewParagraph(fits(s, c), look.Strong, s.Width), picture, fold,
		}
	}}
}

// cutAt returns the cut through the wall at the opening.
func cutAt(s opening) (cut.Cut, bool) {
	now := s.Now()
	ref, ok := s.Index.Side(now.At.Host)
	if !ok || s.Result.Figures == nil {
		return cut.Cut{}, false
	}
	view, ok := s.Index.RoomView(ref.Room.ID)
	if !ok {
		return cut.Cut{}, false
	}
	return cut.Of(&view.Sides[ref.At], view.Room, &now, s.Result.Figures.Build.SetBack)
}

// drawn is the cut as large as it goes.
func drawn(c cut.Cut, voice words.Voice, w, h float64, p *look.Palette) []scene.Item {
	m := render.BoardMedium(w/(2*cutReach).Millimetres(), 1, *p, voice)
	if tall := c.Tall(m); tall > h-4 {
		m.Scale *= (h - 4) / tall
	}
	m.Pixel = 0.5
	return cut.Draw(c, m, cut.Frame{Middle: w / 2, Top: (h - c.Tall(m)) / 2, Width: min(w-2, 2*m.Length(cutReach))})
}

// fits answers whether the box fits, in a word and a length.
func fits(s opening, c cut.Cut) string {
	fit, ok := c.Fit()
	left, known := fit.Remaining()
	switch {
	case !ok:
		return s.Say("in-wall.fit.no-depth", "Will it fit? Not known: nobody tells how deep the box is.")
	case !known:
		return s.Say("in-wall.fit.no-framing", "Will it fit? Not known: nobody tells how deep the studs are.")
	case left < 0:
		return s.Say("in-wall.fit.no", "Will it fit? No, {0} too deep", words.Height(-left))
	}
	return s.Say("in-wall.fit.yes", "Will it fit? Yes, {0} remaining", words.Height(left))
}

// workings are what the answer rests on, a line each.
func workings(s opening, c cut.Cut) fyne.CanvasObject {
	lines := look.Column(look.Grid / 2)
	say := func(text string) { lines.Add(look.NewParagraph(text, look.Second, s.Width)) }
	fit, _ := c.Fit()
	switch keys := c.Wall.KeysAt(c.Opening.At.Along); {
	case fit.Framing > 0 && keys > 0:
		say(s.Say("in-wall.keyed", "Studs {0} deep, {1} of it clear of plaster keys; the box takes {2} of that.", words.Height(fit.Framing+keys), words.Height(fit.Framing), words.Height(fit.Own)))
	case fit.Framing > 0:
		say(s.Say("in-wall.framing", "Studs {0} deep; the box takes {1} of that.", words.Height(fit.Framing), words.Height(fit.Own)))
	}
	if fit.Other != nil {
		say(s.Say("in-wall.other", "{0}, from the other face, takes {1}.", fit.Other.Opening.Tag, words.Height(fit.Other.InFraming())))
	}
	if c.Body.HasRing {
		say(s.Say("in-wall.ring", "The layers are {0} thick and the ring is raised {1}.", words.Height(c.Proud), words.Height(c.Body.Raise)))
	} else {
		say(s.Say("in-wall.proud", "Set {0} proud of the studs, as the layers are thick.", words.Height(c.Proud)))
	}
	if held := table.HeldBeside(c.Hold, c.Box); !held.IsZero() {
		say(s.Say("in-wall.held", "Held: {0}. The studs are {1}.", held, table.StudState(c.Hold.State)))
	}
	if b := c.Hold.Block; b != nil {
		say(s.Say("in-wall.block", "The block between the studs is cut {0} long and set {1} back; it takes {2}.", words.Height(b.Length), words.Height(b.SetBack), words.Height(b.Deep())))
	}
	if far := c.Hold.FarSide; far > 0 {
		say(s.Say("in-wall.far", "The far side of the box is held by a block {0} long, from the box to the other stud.", words.Height(far)))
	}
	switch box := frame.BoxOf(c.Opening.Assembly); {
	case c.IsClosed():
		say(s.Say("in-wall.fished", "Cables are fished, held by the box’s clamp (NEC 334.30(B)(1))."))
	case box != nil:
		say(s.Say("in-wall.staple", "Nonmetallic cable is fastened within {0} of this box (NEC 334.30, 314.17).", words.Height(frame.StapleWithin(box))))
	}
	if c.Hold.HasBay && c.Hold.Bay.Left != nil && c.Hold.Bay.Right != nil {
		say(s.Say("in-wall.bay", "It stands between studs at {0} and {1} from the left end.", words.Height(c.Hold.Bay.From), words.Height(c.Hold.Bay.To)))
	}
	return lines
}
