package answers

import (
	"strings"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// takePlace takes from the note of a change the word that says where to. A word that says it
// of no place stays part of the note.
func (g *Given) takePlace() {
	word, rest, _ := strings.Cut(g.Note, " ")
	place, isOne := strings.CutPrefix(word, "@")
	f := strings.Split(place, ",")
	if !isOne || g.Kind != plan.WishChange || len(f) != 3 || g.About.Check(plan.KindOpening) != nil {
		return
	}
	first, err := unit.Parse(f[1], unit.Millimetre)
	second, errSecond := unit.Parse(f[2], unit.Millimetre)
	if err != nil || errSecond != nil {
		return
	}
	switch host := plan.ID(f[0]); {
	case host.Check(plan.KindSide) == nil:
		at := plan.OnFace(host, first)
		g.To, g.Height = &at, second
	case host.Check(plan.KindRoom) == nil:
		at := plan.OnCeiling(host, geom.Point{X: first, Y: second})
		g.To = &at
	default:
		return
	}
	g.Note = strings.TrimSpace(rest)
}

// placeText writes where to, as takePlace reads it, with a blank behind it; nothing where that
// was not said.
func (g Given) placeText() string {
	if g.To == nil {
		return ""
	}
	first, second := g.To.Along, g.Height
	if g.To.Part == plan.PartCeiling {
		first, second = g.To.At.X, g.To.At.Y
	}
	return "@" + string(g.To.Host) + "," + first.Exact() + "," + second.Exact() + " "
}

// isIn reports whether where to is a place of the plan that the opening could have: on a face,
// within its length and height, for what is on a face, and at a ceiling for what is there.
func (g Given) isIn(p plan.Plan) bool {
	o, _ := p.Opening(g.About)
	if g.To == nil || o == nil || g.To.Part != o.At.Part {
		return false
	}
	if g.To.Part == plan.PartCeiling {
		room, _ := p.Room(g.To.Host)
		return room != nil && room.Outline().Contains(g.To.At)
	}
	side, _ := p.Side(g.To.Host)
	isWithin := func(l, most unit.Length) bool { return l >= 0 && l <= most }
	return side != nil && isWithin(g.To.Along, p.FaceLength(*g.To)) && isWithin(g.Height, side.Room.Ceiling)
}
