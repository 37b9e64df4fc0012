package light

import (
	"studbay/fill/house"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
)

// lit is what the rules on lights read of a level: its rooms and the ways between them,
// its lights and switches, and what controls what.
type lit struct {
	*house.Level
	ix    *index.Index
	level *plan.Level
	parts []any
	// lights and switches are by the room they are in; controls by what they name.
	lights, switches map[plan.ID][]*plan.Opening
	controls         map[plan.ID][]*plan.Control
}

// seeLit gathers only what tells whether anything differs; the rest is made by prepare.
func seeLit(ix *index.Index, level *plan.Level) *lit {
	v := &lit{ix: ix, level: level, parts: []any{level.Rooms, level.Breaks, level.Fixtures, ix.Plan().Controls}}
	for _, k := range part.All().Kinds {
		if isLit(k) {
			v.parts = append(v.parts, ix.OfKind(k.ID))
		}
	}
	return v
}

// isLit reports whether the rules on lights look at a kind.
func isLit(k *part.Kind) bool {
	return k.Family == part.Light || k.Family == part.Switch || k.ID == kindFanLight || k.Switched != part.NotSwitched
}

// Parts returns the rooms, breaks and fixtures of the level, the controls of the plan and
// all its lights and switches.
func (v *lit) Parts() []any { return v.parts }

func (v *lit) prepare() {
	v.Level = house.Of(v.ix, v.level)
	v.gather()
}

// gather sorts the lights, switches and controls of the plan.
func (v *lit) gather() {
	v.lights, v.switches = map[plan.ID][]*plan.Opening{}, map[plan.ID][]*plan.Opening{}
	v.controls = make(map[plan.ID][]*plan.Control, 2*v.ix.Plan().Controls.Len())
	for c := range v.ix.Plan().Controls.All() {
		for _, list := range [][]plan.ID{c.Switches, c.Loads} {
			for _, id := range list {
				v.controls[id] = append(v.controls[id], c)
			}
		}
	}
	for _, k := range part.All().Kinds {
		if !isLit(k) {
			continue
		}
		for o := range v.ix.OfKind(k.ID).All() {
			place, _ := v.ix.Place(o.At)
			switch {
			case place.Room == nil || !o.IsInUse():
			case k.Family == part.Switch:
				v.switches[place.Room.ID] = append(v.switches[place.Room.ID], o)
			default:
				v.lights[place.Room.ID] = append(v.lights[place.Room.ID], o)
			}
		}
	}
}

// mayLight reports whether an opening is a lighting outlet of its room: a light, or where
// that may stand in, a receptacle that a switch controls. A light with a switch of its own is
// not on a wall switch.
func mayLight(o *plan.Opening, receptacles bool) bool {
	return isLight(o) && o.OwnSwitch != plan.AnswerYes || !isLight(o) && receptacles
}

// state says what is known of the light of a room.
type state int

const (
	noLight  state = iota
	noSwitch       // there is a light, and no switch in the room or next to it
	notSaid        // there are both, and nobody says that one is for the other
	isLitUp
)

// stateOf returns what is known of the light of a room.
func (v *lit) stateOf(r *plan.Room, receptacles bool) state {
	s := noLight
	for _, o := range v.lights[r.ID] {
		if !mayLight(o, receptacles) {
			continue
		}
		s = max(s, noSwitch)
		for _, c := range v.controls[o.ID] {
			if v.hasSwitch(c) {
				return isLitUp
			}
		}
	}
	if s == noSwitch && v.isSwitchNear(r) {
		return notSaid
	}
	return s
}

// hasSwitch reports whether a control names a switch that will be there.
func (v *lit) hasSwitch(c *plan.Control) bool { return v.countSwitches(c) > 0 }

func (v *lit) countSwitches(c *plan.Control) (n int) {
	for _, id := range c.Switches {
		if o, _ := v.ix.Plan().Opening(id); o != nil && isSwitch(o) {
			n++
		}
	}
	return n
}

// isSwitchNear reports whether a switch stands in a room or in one that a way leads to.
func (v *lit) isSwitchNear(r *plan.Room) bool {
	if len(v.switches[r.ID]) > 0 {
		return true
	}
	for _, d := range v.From(r) {
		if d.To != nil && len(v.switches[d.To.ID]) > 0 {
			return true
		}
	}
	return false
}
