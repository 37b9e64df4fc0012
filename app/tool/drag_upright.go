package tool

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// dragUpright moves a break or fixture in the unfolded room: along its face as in plan,
// and up or down what does not stand on the floor.
type dragUpright struct {
	along drag
	was   upright
	from  unit.Length // the height at which it was taken
}

func (d *dragUpright) name() words.Text { return d.along.name() }

func (d *dragUpright) back() edit.Edit { return d.was.changed(d.was) }

func (d *dragUpright) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	p = through(t, p, d.was.id)
	change, preview := d.along.to(t, p, typed)
	if change == nil || d.was.standsAlone {
		return change, preview
	}
	now := d.was
	switch e := change.(type) {
	case edit.MoveBreak:
		now.at = e.To
	case edit.MoveFixture:
		now.at = e.To
	}
	tall := now.top - now.foot
	foot, name := d.height(t, p, now.at.Host, typed)
	now.foot = between(foot, 0, ceilingOf(t.Index(), now.at.Host)-tall)
	now.top = now.foot + tall
	preview.Snap = both(preview.Snap, name)
	return d.was.changed(now), preview
}

// height returns where the foot comes to: as typed, level with something, or on the grid.
func (d *dragUpright) height(t Window, p Pointer, side plan.ID, typed *typing) (unit.Length, words.Text) {
	if l, ok := typed.size(t.System(), 'h'); ok {
		return l, words.Text{}
	}
	foot, tall := d.was.foot+p.Height-d.from, d.was.top-d.was.foot
	if p.Shift {
		return foot, words.Text{}
	}
	var stops []stop
	for _, s := range levels(t.Index(), side, d.was.id) {
		stops = append(stops, s, stop{s.at - tall, s.name, s.rank}) // by its foot or by its top
	}
	return restFrom(append(stops, stop{at: d.was.foot}), foot, d.was.foot, p.Reach, t.System().Placing())
}

// edge is one of the edges of an upright thing.
type edge int

// The edges. A thing on the floor has no bottom edge to be taken.
const (
	noEdge edge = iota
	leftEdge
	rightEdge
	topEdge
	bottomEdge
)

// chosenEdge returns the edge of the one chosen break or fixture that is pointed at in the
// unfolded room. What is as narrow as the reach of the pointer is moved, not stretched.
func chosenEdge(t Window, p Pointer) (upright, edge) {
	chosen := t.Selection()
	if !p.OnUnfold || p.Symbol != "" || len(chosen) != 1 {
		return upright{}, noEdge
	}
	p = through(t, p, chosen[0])
	u, ok := uprightOf(t.Plan(), chosen[0])
	s, onFace := faceOf(t.Index(), p.Side, p.At)
	if !ok || !onFace || u.at.Host != p.Side {
		return upright{}, noEdge
	}
	near := p.Reach / 2
	left, right := u.at.Along, u.at.Along+u.width
	isBeside := s.along > left-near && s.along < right+near && p.Height > u.foot-near && p.Height < u.top+near
	if !isBeside || u.width < 4*near || u.top-u.foot < 4*near {
		return upright{}, noEdge
	}
	switch {
	case (s.along - left).Abs() <= near:
		return u, leftEdge
	case (s.along - right).Abs() <= near:
		return u, rightEdge
	case (p.Height - u.top).Abs() <= near:
		return u, topEdge
	case (p.Height-u.foot).Abs() <= near && !u.standsAlone:
		return u, bottomEdge
	}
	return upright{}, noEdge
}

func (e edge) cursor() Cursor {
	if e == leftEdge || e == rightEdge {
		return CursorAcross
	}
	return CursorUpDown
}

// dragEdge makes a break or fixture wider, higher or lower by one of its edges.
type dragEdge struct {
	was  upright
	edge edge
}

func (d *dragEdge) name() words.Text { return d.was.changed(d.was).Name() }

func (d *dragEdge) back() edit.Edit { return d.was.changed(d.was) }

func (d *dragEdge) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	now, preview := d.was, Preview{}
	p = through(t, p, d.was.id)
	side, ok := faceOf(t.Index(), d.was.at.Host, p.At)
	if !ok || p.Side != d.was.at.Host {
		return nil, preview
	}
	step := t.System().Placing()
	switch d.edge {
	case leftEdge, rightEdge:
		now, preview.Snap = d.wider(t, side, p, typed)
		preview.Dims = besides(t, side, now.at.Along, now.at.Along+now.width)
	case topEdge, bottomEdge:
		high, is := typed.place(t.System())
		if !is && p.Shift {
			high = p.Height
		} else if !is {
			high, preview.Snap = rest(levels(t.Index(), side.id(), d.was.id), p.Height, p.Reach, step)
		}
		if d.edge == topEdge {
			now.top = between(high, now.foot+leastSize, ceilingOf(t.Index(), side.id()))
		} else {
			now.foot = between(high, 0, now.top-leastSize)
		}
	}
	return d.was.changed(now), preview
}

// leastSize is the least width or height that an edge is dragged to.
const leastSize = 2 * unit.Inch

// wider moves the left or right edge; what is typed is the width.
func (d *dragEdge) wider(t Window, side onSide, p Pointer, typed *typing) (now upright, name words.Text) {
	now = d.was
	left, right := d.was.at.Along, d.was.at.Along+d.was.width
	at := side.along
	if l, ok := typed.place(t.System()); ok {
		if at = left + l; d.edge == leftEdge {
			at = right - l
		}
	} else if !p.Shift {
		at, name = rest(besideOthers(t.Index(), side, d.was.id), at, p.Reach, t.System().Placing())
	}
	if d.edge == leftEdge {
		left = between(at, 0, right-leastSize)
	} else {
		right = between(at, left+leastSize, side.length())
	}
	now.at.Along, now.width = left, right-left
	return now, name
}

// besideOthers lists the ends of what else stands on a side.
func besideOthers(ix *index.Index, side onSide, but plan.ID) (stops []stop) {
	for _, c := range ix.Cuts(side.id()) {
		if c.Break.ID != but {
			name := words.New("snap.edge", "edge of the {0}", c.Break.Kind.Text())
			stops = append(stops, stop{c.From, name, rankBreak}, stop{c.To, name, rankBreak})
		}
	}
	for _, f := range ix.FixturesOn(side.id()) {
		if f.ID != but {
			name := words.New("snap.edge", "edge of the {0}", f.Kind.Text())
			stops = append(stops, stop{f.At.Along, name, rankBreak}, stop{f.At.Along + f.Width, name, rankBreak})
		}
	}
	return stops
}
