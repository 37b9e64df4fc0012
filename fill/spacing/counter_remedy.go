package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
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
	ids := newIDs(v, r, g.from)
	for i := range n {
		part := gap{from: g.from + (g.to-g.from)*i/n, to: g.from + (g.to-g.from)*(i+1)/n}
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
		for _, free := range p.clearOf(&try, v.Room, frame.ClearOfAll) {
			gain := func(at unit.Length) unit.Length { return min(at+shift+reach, g.to) - max(at+shift-reach, g.from) }
			at := min(max(wish-shift, free.From), free.To)
			if round := at.Rounded(fig.Units.Grid()); round >= free.From && round <= free.To && (at+shift-wish).Abs() < 2*fig.Units.Grid() && gain(round) >= gain(at) {
				at = round
			}
			away := (at + shift - wish).Abs()
			if serves := gain(at); serves > served || serves == served && serves > 0 && away < off {
				best, served, off = plan.OnFace(p.side.Side.ID, at), serves, away
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

// clearOf returns where along the leg the centre of a box may be.
func (p leg) clearOf(o *plan.Opening, room *plan.Room, of frame.Clearance) (free []geom.Interval) {
	if !p.canMount {
		return nil
	}
	half := (frame.FrontOf(o).Width + 1) / 2
	for _, i := range frame.Free(p.side, room, o, of, p.taken(o)...) {
		if i.From, i.To = max(i.From, p.from+half), min(i.To, p.to-half); i.From <= i.To {
			free = append(free, i)
		}
	}
	return free
}
