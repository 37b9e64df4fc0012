package light

import (
	"studbay/fill/house"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// stance is where one stands at a crossing and feels for a switch, in one of its rooms: at
// the jamb of a door, or anywhere along a step.
type stance struct {
	line geom.Segment
	side *plan.Side // the face that the jamb is in, or nil
	// What the open leaf hides of the face; nothing where the two are equal.
	hides geom.Interval
}

// through returns the crossing through a way of a level.
func through(l *lit, d house.Door) *Crossing {
	c := &Crossing{From: d.From, Into: d.To, Break: d.Break, Side: d.Side.Side(), Level: l.level.ID, Line: d.Line, At: d.Line.Middle()}
	back, isBack := l.Back(d)
	if isBack {
		c.At = back.Line.Middle()
	}
	c.isAt = func(r *plan.Room) []stance {
		switch {
		case r == d.From:
			return stances(d)
		case isBack && r == d.To:
			return stances(back)
		}
		return nil
	}
	return c
}

// stances are those at a door, in the room that it is seen from: at the latch, or at both
// jambs where nobody says which that is or there is none.
func stances(d house.Door) (all []stance) {
	if d.Break == nil {
		return []stance{{line: d.Line, side: d.Side.Side()}}
	}
	for _, at := range latches(d.Cut) {
		p := d.Side.Line().At(at)
		all = append(all, stance{line: geom.Segment{A: p, B: p}, side: d.Side.Side(), hides: leaf(d.Cut)})
	}
	return all
}

// latches returns where along a face the latch of a door is; both ends of it where nobody
// says, and where it has none.
func latches(c index.Cut) []unit.Length {
	_, hand := c.Break.Swing, c.Break.Hand
	if !c.IsOwn {
		_, hand = seenFromBehind(c.Break.Swing, hand)
	}
	switch {
	case c.Break.Kind == plan.BreakDoor && hand == plan.HandLeft:
		return []unit.Length{c.To}
	case c.Break.Kind == plan.BreakDoor && hand == plan.HandRight:
		return []unit.Length{c.From}
	}
	return []unit.Length{c.From, c.To}
}

// overStairs returns the crossings up a flight and down it. A switch at either end is at
// hand: one puts on the light ahead before the first step.
func overStairs(s house.Stairs, lower *plan.Level) (up, down *Crossing) {
	isAt := func(r *plan.Room) []stance {
		switch r {
		case s.From:
			return []stance{{line: s.Foot}}
		case s.To:
			return []stance{{line: s.Head}}
		}
		return nil
	}
	up = &Crossing{From: s.From, Into: s.To, Stairs: s.Fixture, Level: s.Upper.ID, Line: s.Foot, At: s.Head.Middle(), isAt: isAt}
	down = &Crossing{From: s.To, Into: s.From, Stairs: s.Fixture, Level: lower.ID, Line: s.Head, At: s.Foot.Middle(), isAt: isAt}
	return up, down
}

// judge tells how one comes into the room ahead.
func (w *walker) judge(c *Crossing) {
	standsIn := standsIn(c.Into.Use)
	any, said := false, false
	c.Away = -1
	for _, o := range w.lights[c.Into.ID] {
		if !mayLight(o, standsIn) {
			continue
		}
		any = true
		for _, control := range w.controls[o.ID] {
			for _, id := range control.Switches {
				if s, _ := w.ix.Plan().Opening(id); s != nil && isSwitch(s) {
					said = true
					w.consider(c, s)
				}
			}
		}
	}
	switch {
	case c.Break == nil && c.Stairs == nil && c.Before != nil && c.Before.State != CrossingUnlit && c.Before.State != CrossingUnsaid:
		c.State = CrossingOpen
	case !any:
		c.State = CrossingUnlit
	case !said:
		c.State = CrossingUnsaid
	}
	if c.IsDark() {
		c.Dark = w.dark(c)
	}
}

// consider takes a switch for the nearest where it serves the crossing better than what was
// found.
func (w *walker) consider(c *Crossing, s *plan.Opening) {
	away, state := w.serves(c, s)
	isBetter := c.Switch == nil || state < c.State || state == c.State && away >= 0 && (c.Away < 0 || away < c.Away)
	if isBetter {
		c.Switch, c.State, c.Away = s, state, away
	}
}

// serves tells how far a switch is from the nearest place where one stands at a crossing,
// round the corners of the room, and how one comes in by it.
func (w *walker) serves(c *Crossing, s *plan.Opening) (away unit.Length, state CrossingState) {
	away, state = -1, CrossingDark
	place, _ := w.ix.Place(s.At)
	if s.Kind == kindSensor && place.Room == c.Into {
		return 0, CrossingLit
	}
	for _, at := range c.isAt(place.Room) {
		far, ok := place.Room.Outline().WaysFrom(place.Foot).ToLine(at.line)
		if !ok || away >= 0 && far >= away {
			continue
		}
		away, state = far, CrossingDark
		if far <= w.reach+rule.Grain {
			state = CrossingLit
			if place.Side == at.side && at.hides.From < s.At.Along && s.At.Along < at.hides.To {
				state = CrossingHidden
			}
		}
	}
	return away, state
}

// dark returns how far one walks in a room until a switch of it is in reach; all the way to
// its middle where its switch is in another room.
func (w *walker) dark(c *Crossing) unit.Length {
	ways := c.Into.Outline().WaysFrom(c.At)
	far, _ := ways.To(c.Into.Outline().LabelPoint())
	if place, _ := w.ix.Place(c.Switch.At); place.Room == c.Into {
		if to, ok := ways.To(place.Foot); ok {
			far = to - w.reach
		}
	}
	return max(far, 0)
}
