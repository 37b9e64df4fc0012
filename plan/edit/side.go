package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ChangeSide sets all of a side but where it starts, which stays as in the plan.
type ChangeSide struct{ Side plan.Side }

// Name returns "Change side".
func (ChangeSide) Name() words.Text { return words.New("edit.side.change", "Change side") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// an opening would lose its wall.
func (e ChangeSide) Apply(p plan.Plan) (plan.Plan, error) {
	ref, _ := p.Side(e.Side.ID)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	s := e.Side
	s.Start = ref.Side().Start
	if err := s.Check(p.Text(ref.Room.ID)); err != nil {
		return plan.Plan{}, err
	}
	r := *ref.Room
	r.Sides = slices.Clone(r.Sides)
	r.Sides[ref.At] = &s
	return p.Rehung(&r, func(a plan.Anchor, _ unit.Length) plan.Anchor { return a })
}

// MoveCorner moves the corner at the left end of a side. What stands on the two sides
// that meet there keeps its distance from their other ends.
type MoveCorner struct {
	Side  plan.ID
	To    geom.Point
	Clamp bool // slide what would fall off an end back onto its side
}

// Name returns "Move corner".
func (MoveCorner) Name() words.Text { return words.New("edit.corner.move", "Move corner") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// the outline would cross itself or something would no longer fit.
func (e MoveCorner) Apply(p plan.Plan) (plan.Plan, error) {
	ref, l := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	if ref.Side().Start == e.To {
		return p, nil
	}
	r := reshape(ref.Room)
	r.clamp = e.Clamp
	r.start(ref.At, e.To)
	return r.apply(p, l)
}

// MoveSide moves a side square to itself, outward where By is above zero. The sides at
// its ends keep their directions and grow or shrink. Where such a neighbour runs on in
// the same line, a new side joins the two: Joints names the new sides at the left end
// and at the right end; they are of the kind, finish and studs of the side.
type MoveSide struct {
	Side   plan.ID
	By     unit.Length
	Joints [2]plan.ID
	Clamp  bool // slide what would fall off an end back onto its side
}

// Name returns "Move side".
func (MoveSide) Name() words.Text { return words.New("edit.side.move", "Move side") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// the outline would cross itself, something would no longer fit, or a neighbour runs
// in line and its joint has no ID.
func (e MoveSide) Apply(p plan.Plan) (plan.Plan, error) {
	ref, l := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	if err := plan.CheckReach(plan.TheText(plan.KindSide), e.By); err != nil {
		return plan.Plan{}, err
	}
	if e.By == 0 {
		return p, nil
	}
	for i, joint := range e.Joints {
		if joint == "" {
			continue
		}
		if err := p.CheckNew(joint, plan.KindSide); err != nil {
			return plan.Plan{}, err
		}
		if i == 1 && joint == e.Joints[0] {
			return plan.Plan{}, plan.Taken(joint)
		}
	}
	r := reshape(ref.Room)
	r.clamp = e.Clamp
	frame := geom.FrameOf(ref.Line())
	if err := r.slide(ref.At, frame.Point(0, -e.By), frame.Point(ref.Line().Length(), -e.By), e.Joints); err != nil {
		return plan.Plan{}, err
	}
	return r.apply(p, l)
}

// slide moves side i onto the line of its direction through the point a, which its left
// end comes to where it meets no neighbour's line; b is the same of its right end.
func (r *reshaped) slide(i int, a, b geom.Point, joints [2]plan.ID) error {
	n := len(r.was.Sides)
	line, prev, next := r.was.Segment(i), r.was.Segment((i+n-1)%n), r.was.Segment((i+1)%n)
	left, atLeft := meet(a, line.Vector(), line.A, prev.Vector())
	right, atRight := meet(a, line.Vector(), line.B, next.Vector())
	if !atLeft {
		left = a
	}
	if !atRight {
		right = b
	}
	if !atLeft && joints[0] == "" || !atRight && joints[1] == "" {
		return plan.Refuse(plan.ErrNoRoom, "in-line", "the side runs on in line with its neighbor; a new side is needed between them")
	}
	side := r.was.Sides[i]
	r.start(i, left)
	if atRight {
		r.start(i+1, right)
	} else {
		r.sides = slices.Insert(r.sides, i+1, joint(side, joints[1], right))
	}
	if !atLeft {
		r.sides = slices.Insert(r.sides, i, joint(side, joints[0], line.A))
	}
	return nil
}

// joint returns a new side like another.
func joint(like *plan.Side, id plan.ID, start geom.Point) *plan.Side {
	s := *like
	s.ID, s.Start, s.Extra = id, start, nil
	s.Studs.First, s.Places = 0, nil
	return &s
}

// SetSideLength makes a side so long by moving the neighbour at its right end, or at
// its left end where FromRight says that the right end stays. The neighbour keeps its
// direction.
type SetSideLength struct {
	Side      plan.ID
	Length    unit.Length
	FromRight bool
	Clamp     bool // slide what would fall off an end back onto its side
}

// Name returns "Set length of side".
func (SetSideLength) Name() words.Text { return words.New("edit.side.length", "Set length of side") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// the outline would cross itself, something would no longer fit, or the neighbour runs
// in line.
func (e SetSideLength) Apply(p plan.Plan) (plan.Plan, error) {
	ref, l := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	if e.Length <= 0 || e.Length > plan.Reach {
		return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "side-length", "a side needs a length above zero")
	}
	line, n := ref.Line(), len(ref.Room.Sides)
	if line.Length() == e.Length {
		return p, nil
	}
	r := reshape(ref.Room)
	r.clamp = e.Clamp
	i, to := (ref.At+1)%n, line.At(e.Length)
	if e.FromRight {
		i, to = (ref.At+n-1)%n, line.Reversed().At(e.Length)
	}
	if err := r.slide(i, to, to, [2]plan.ID{}); err != nil {
		return plan.Plan{}, err
	}
	return r.apply(p, l)
}

// SplitSide puts a corner into a side, At from its left end. The longer part keeps the
// ID, the other gets NewID; what stands on either part goes with it.
type SplitSide struct {
	Side  plan.ID
	At    unit.Length
	NewID plan.ID
}

// Name returns "Split side".
func (SplitSide) Name() words.Text { return words.New("edit.side.split", "Split side") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// At is not within the side or something stands across it.
func (e SplitSide) Apply(p plan.Plan) (plan.Plan, error) {
	ref, l := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	if err := p.CheckNew(e.NewID, plan.KindSide); err != nil {
		return plan.Plan{}, err
	}
	length := ref.Line().Length()
	if e.At <= 0 || e.At >= length {
		return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "split-at", "the side is {0} long; it cannot be split at {1}", length, e.At)
	}
	if err := e.across(l); err != nil {
		return plan.Plan{}, err
	}
	left, right := *ref.Side(), *ref.Side()
	right.Start = ref.Line().At(e.At)
	keepWithin(&left, 0, e.At)
	keepWithin(&right, e.At, length)
	// The part that keeps the ID is carried as any side is that is made shorter.
	newPart := &right
	if e.At*2 < length {
		newPart = &left
		left.Studs = studsCarried(left.Studs, 0, e.At-length)
	} else {
		right.Studs = studsCarried(right.Studs, -e.At, 0)
		moveAlong(&right, -e.At)
	}
	newPart.ID, newPart.Extra = e.NewID, nil
	r := reshape(ref.Room)
	r.sides = slices.Replace(r.sides, ref.At, ref.At+1, &left, &right)
	r.rehost = func(side plan.ID, along, width unit.Length) (plan.ID, unit.Length) {
		switch {
		case side != e.Side:
			return side, along
		case along+width/2 < e.At:
			return left.ID, along
		}
		return right.ID, along - e.At
	}
	return r.apply(p, l)
}

// across reports what stands on both parts.
func (e SplitSide) across(l *plan.Level) error {
	for t := range l.AnchoredTo(e.Side) {
		if at := plan.AnchorOf(t).Along; at < e.At-plan.Slack && at+plan.WidthOf(t) > e.At+plan.Slack {
			r := plan.Refuse(plan.ErrNoRoom, "across", "{0} stands across the place of the split", plan.TextOf(t))
			r.Things = []plan.ID{t.Key()}
			return r
		}
	}
	return nil
}

// RemoveCorner takes out the corner at the left end of a side, which becomes one with
// the side before it. The longer of the two gives its ID, kind, finish and studs; what
// stands on either stands on the new side, square to where it was.
type RemoveCorner struct {
	Side  plan.ID
	Clamp bool // slide what would fall off an end back onto its side
}

// Name returns "Remove corner".
func (RemoveCorner) Name() words.Text { return words.New("edit.corner.remove", "Delete corner") }

// Apply fails with ErrGone where the side is not in the plan, and with ErrNoRoom where
// fewer than three sides would be left or something would no longer fit.
func (e RemoveCorner) Apply(p plan.Plan) (plan.Plan, error) {
	ref, l := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	n := len(ref.Room.Sides)
	before := (ref.At + n - 1) % n
	first, second := ref.Room.Segment(before), ref.Line()
	a, b := ref.Room.Sides[before], ref.Side()
	merged := *a
	if second.Length() > first.Length() {
		merged = *b
		merged.Start = a.Start
	}
	r := reshape(ref.Room)
	r.clamp = e.Clamp
	r.sides[before] = &merged
	r.sides = slices.Delete(r.sides, ref.At, ref.At+1)
	line := geom.Segment{A: first.A, B: second.B}
	r.rehost = func(side plan.ID, along, _ unit.Length) (plan.ID, unit.Length) {
		switch side {
		case a.ID:
			along, _ = line.Project(first.At(along))
		case b.ID:
			along, _ = line.Project(second.At(along))
		default:
			return side, along
		}
		return merged.ID, along
	}
	// What names the part whose ID goes (decisions, waivers, distances told from it) names
	// the whole, before it is checked with the rest.
	lost := a.ID
	if lost == merged.ID {
		lost = b.ID
	}
	return r.apply(p.Renamed(lost, merged.ID), l)
}
