package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// counterRemedy offers the fewest receptacles that serve a gap where boxes can be set above
// the counter: clear of studs, windows, cabinets and other boxes. It offers nothing where
// one of them has no such place.
func counterRemedy(v index.RoomView, r run, g gap, fig *code.Figures) []rule.Remedy {
	span := 2 * fig.Spacing.CounterReach
	least := (g.to - g.from + span - 1) / span
	for n := least; n <= min(least+1, mostAdded); n++ {
		if edits := counterWith(v, r, g, fig, n); edits != nil {
			label := words.New("rule.counter-reach.remedy", "Add {0} counter receptacles there", int(n))
			if n == 1 {
				label = words.New("rule.counter-reach.remedy.one", "Add a counter receptacle there")
			}
			return []rule.Remedy{{Label: label, Edit: asOne(label, edits)}}
		}
	}
	return nil
}

// counterWith sets so many receptacles along a gap, one for each part of it, or none where
// one of them does not serve its part.
func counterWith(v index.RoomView, r run, g gap, fig *code.Figures, n unit.Length) (edits []edit.Edit) {
	each := (g.to - g.from) / n
	ids := newIDs(v, r, g.from)
	for i := range n {
		from := g.from + each*i
		part := gap{from: from, to: min(from+each+1, g.to)}
		o := newCounterReceptacle(fig)
		at, served := counterPlace(v, r, part, &o, fig)
		if served < part.to-part.from {
			return nil
		}
		o.At, o.ID = at, ids.Next()
		edits = append(edits, rule.AddFresh{AddOpening: edit.AddOpening{Opening: o}})
	}
	return edits
}

func newCounterReceptacle(fig *code.Figures) plan.Opening {
	return part.NewOpening(fig.Units, kindAboveCounter, plan.Anchor{Part: plan.PartFace})
}

// counterPlace returns the place of the run that serves most of a gap, of those that serve
// as much the one nearest to its middle, and how much it serves.
func counterPlace(v index.RoomView, r run, g gap, o *plan.Opening, fig *code.Figures) (best plan.Anchor, served unit.Length) {
	reach, wish := fig.Spacing.CounterReach, (g.from+g.to)/2
	var off unit.Length
	for _, p := range r.legs {
		height, ok := counterHeight(&v, p, o, fig)
		if !ok {
			continue
		}
		try := *o
		try.Height = height
		shift := p.start - p.from // from the side to the run
		for _, free := range p.freeFor(&try, v.Room) {
			at := min(max(wish-shift, free.from), free.to)
			if round := at.Rounded(fig.Units.Grid()); round >= free.from && round <= free.to && (at+shift-wish).Abs() < 2*fig.Units.Grid() {
				at = round
			}
			gain := min(at+shift+reach, g.to) - max(at+shift-reach, g.from)
			away := (at + shift - wish).Abs()
			if gain > served || gain == served && gain > 0 && away < off {
				best, served, off = plan.OnFace(p.side.Side.ID, at), gain, away
				o.Height = height
			}
		}
	}
	return best, served
}

// counterHeight returns the height of a receptacle over the counter of a leg: as usual,
// or where that would not count, in the middle of where one does.
func counterHeight(v *index.RoomView, p leg, o *plan.Opening, fig *code.Figures) (plan.Height, bool) {
	top, ok := counterTop(v, p.side.Frame.Point((p.from+p.to)/2, 0))
	if !ok {
		return plan.Height{}, false
	}
	usual := part.All().Kind(kindAboveCounter).UsualHeight(fig.Units)
	if half := frame.FrontOf(o).Height / 2; usual-half < top || usual > top+fig.Outlets.CounterAbove {
		usual = top + fig.Outlets.CounterAbove/2
	}
	return plan.CentreAt(usual), usual < v.Room.Ceiling
}

// freeFor returns where along the side of a leg the centre of a box may be: clear of
// studs, of doors and windows with their casing, and of what else is in its way.
func (p leg) freeFor(o *plan.Opening, room *plan.Room) []marking {
	return p.clearOf(o, room, clearance{ofHiding: true, ofStuds: true})
}

// clearance says what a box keeps clear of beside what it cannot meet: what would hide it,
// and studs.
type clearance struct{ ofHiding, ofStuds bool }

// clearOf returns where along the side of a leg the centre of a box may be: clear of doors
// and windows with their casing and of what else is in its way; where asked, of what hides
// it and of studs as well.
func (p leg) clearOf(o *plan.Opening, room *plan.Room, also clearance) (free []marking) {
	mine := frame.RectOf(o, room)
	width := mine.Right - mine.Left
	half := width - width/2
	var taken []marking
	take := func(left, right, bottom, top unit.Length) {
		if bottom < mine.Top && mine.Bottom < top {
			taken = append(taken, marking{from: left - half, to: right + half})
		}
	}
	for _, at := range p.inTheWay(room, also.ofHiding) {
		take(at.Left, at.Right, at.Bottom, at.Top)
	}
	for _, c := range p.side.Cuts {
		take(c.From-c.Break.Casing, c.To+c.Break.Casing, c.Break.Sill-c.Break.Casing, c.Break.Head+c.Break.Casing)
	}
	if also.ofStuds {
		for s := range frame.FaceIn(p.side).Framed().Between(mine.Bottom, mine.Top) {
			taken = append(taken, marking{from: s.Left() - half, to: s.Right() + half})
		}
	}
	free = []marking{{from: p.from + half, to: p.to - half}}
	if !p.canMount || free[0].from > free[0].to {
		return nil
	}
	for _, t := range taken {
		free = without(free, t)
	}
	return free
}

// without returns what of some markings lies outside of another; its ends stay.
func without(list []marking, t marking) (out []marking) {
	for _, s := range list {
		if t.to <= s.from || s.to <= t.from {
			out = append(out, s)
			continue
		}
		if s.from <= t.from {
			out = append(out, marking{from: s.from, to: t.from})
		}
		if t.to <= s.to {
			out = append(out, marking{from: t.to, to: s.to})
		}
	}
	return out
}
