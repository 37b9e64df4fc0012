package fill

import (
	"slices"

	"studbay/fill/boxes"
	"studbay/fill/code"
	"studbay/fill/depth"
	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/support"
	"studbay/plan"
	"studbay/plan/index"
)

// boxRules are those that judge what is built in at an opening: its volume, its depth in
// this wall and behind its devices, its front, what it hangs and its listing. Where it
// stands is for others.
var boxRules = []*rule.Rule{
	&boxes.Fill, &boxes.YokesFit, &boxes.DeviceDepth, &boxes.Bonding,
	&depth.RingSetBack, &depth.BoxDepth, &depth.BackToBack, &depth.OldWorkRange,
	&support.FanSupport, &protect.RatedWall,
}

// IsOfBox reports whether a rule judges what is built in at an opening.
func IsOfBox(id string) bool {
	return slices.ContainsFunc(boxRules, func(r *rule.Rule) bool { return r.ID == id })
}

// Trials judges openings of one plan with other boxes than they have, by the rules that
// judge boxes and no others. It keeps the views of rooms; one goroutine uses it at a time.
type Trials struct {
	ix    *index.Index
	c     Checker
	rooms map[plan.ID]index.RoomView
}

// NewTrials returns trials in a plan by figures.
func NewTrials(ix *index.Index, fig *code.Figures) *Trials {
	return &Trials{ix: ix, c: Checker{index: ix, fig: fig}, rooms: map[plan.ID]index.RoomView{}}
}

// Of returns what the rules on boxes say of an opening that is the plan's own but for its
// assembly, all else being as it is. Waivers are not looked at: they are of what was found
// before.
func (t *Trials) Of(o *plan.Opening) (found []rule.Finding) {
	v, ok := t.ix.OpeningView(o.ID)
	if !ok {
		return nil
	}
	v.Opening = o
	found = t.judged(openingScope(v))
	if v.Side == nil || v.Room == nil {
		return found
	}
	view, ok := t.roomView(v.Room.ID)
	if !ok {
		return found
	}
	for i := range view.Sides {
		if view.Sides[i].Side != v.Side {
			continue
		}
		found = append(found, t.ofSide(view, i, o)...)
		for _, b := range view.Sides[i].Behind {
			found = append(found, t.fromBehind(b, o)...)
		}
	}
	return found
}

// ofSide judges one side of a room in which an opening is another.
func (t *Trials) ofSide(view index.RoomView, at int, o *plan.Opening) (found []rule.Finding) {
	side := view.Sides[at]
	side.Openings = with(side.Openings, o)
	view.Sides = []index.SideView{side}
	for _, f := range t.judged(sideScope(&rule.SidesOf(view)[0])) {
		if f.Opening == o.ID {
			found = append(found, f)
		}
	}
	return found
}

// fromBehind returns what is told of the boxes of the other face because of an opening:
// of two back to back one alone is told of.
func (t *Trials) fromBehind(b index.Backing, o *plan.Opening) (found []rule.Finding) {
	view, ok := t.roomView(b.Room.ID)
	if !ok {
		return nil
	}
	for _, side := range view.Sides {
		if side.Side != b.Side {
			continue
		}
		side.OpeningsBehind = slices.Clone(side.OpeningsBehind)
		for i := range side.OpeningsBehind {
			side.OpeningsBehind[i] = with(side.OpeningsBehind[i], o)
		}
		view.Sides = []index.SideView{side}
		for _, f := range t.judged(sideScope(&rule.SidesOf(view)[0])) {
			if slices.Contains(f.Message.Args, any(o.Tag)) {
				found = append(found, f)
			}
		}
		break
	}
	return found
}

// with returns openings with one in place of that of its ID.
func with(openings []*plan.Opening, o *plan.Opening) []*plan.Opening {
	i := slices.IndexFunc(openings, func(was *plan.Opening) bool { return was.ID == o.ID })
	if i < 0 {
		return openings
	}
	changed := slices.Clone(openings)
	changed[i] = o
	return changed
}

func (t *Trials) judged(s scope) (found []rule.Finding) {
	isOpening := s.id.Kind() == plan.KindOpening
	for _, r := range boxRules {
		if !skipped(t.c.fig, r).IsZero() || isOpening != (r.Opening != nil) {
			continue
		}
		for _, f := range s.judge(r, t.c.fig) {
			found = append(found, t.c.told(r, f))
		}
	}
	return found
}

func (t *Trials) roomView(id plan.ID) (index.RoomView, bool) {
	if v, ok := t.rooms[id]; ok {
		return v, true
	}
	v, ok := t.ix.RoomView(id)
	if ok {
		t.rooms[id] = v
	}
	return v, ok
}
