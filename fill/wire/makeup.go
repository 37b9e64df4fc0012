package wire

import (
	"cmp"
	"slices"

	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
)

// MakeUp is how the conductors of a box are joined: what comes in, what sits there, and what
// is spliced with what. It follows from the cables drawn and from what works what, and judges
// nothing. Receptacles are on tails (common practice) but where their circuit goes through them.
type MakeUp struct {
	Opening *plan.Opening
	Cables  []MadeCable
	Devices []MadeDevice
	Nets    []Net // grounds, neutrals, hots, switched conductors, travelers
}

// MadeCable is a cable at a box with what its conductors do there, the ground first and the
// neutral after it.
type MadeCable struct {
	Cable      *plan.Cable
	Other      *plan.Opening // at its other end; nil: the panel
	IsFeed     bool          // it brings the current
	Conductors []Conductor
}

// MadeDevice is a device with the conductors on its terminals.
type MadeDevice struct {
	Kind      string        // by the name of its device; empty: a luminaire or what else hangs on the box
	Gang      int           // from 1 on, as the switch map counts; 0: the only one
	Control   *plan.Control // that a switch works
	Terminals []Conductor
}

// Net is conductors that are joined, by what they do.
type Net struct {
	Conductor Conductor
	Cables    []Place // which conductors of which cables
	Terminals []Place // which terminals of which devices
	IsBonded  bool    // the box itself is joined too
}

// Place is a conductor by the number of its cable or device and its own there.
type Place struct{ Of, At int }

// IsSplice reports whether a wire connector joins them: one conductor goes to one terminal
// without.
func (n Net) IsSplice() bool { return len(n.Cables) > 1 || len(n.Terminals) > 1 || n.IsBonded }

// IsCapped reports whether a conductor ends in the box and goes to nothing there.
func (n Net) IsCapped() bool { return len(n.Cables) == 1 && len(n.Terminals) == 0 && !n.IsBonded }

// MakeUpOf works out how a box is made up. It reports false where no cable is drawn to it, or
// a cable carries what this cannot tell: more conductors than are told, or current that comes
// by a way that a control does not explain.
func MakeUpOf(ix *index.Index, opening plan.ID) (m MakeUp, ok bool) {
	v, ok := ix.OpeningView(opening)
	if !ok || len(v.Cables) == 0 {
		return m, false
	}
	m.Opening = v.Opening
	flows := map[plan.ID]*flow{}
	for _, c := range v.Cables {
		f := flows[c.Circuit]
		if f == nil {
			f = flowOf(ix, c.Circuit)
			flows[c.Circuit] = f
		}
		carried, known := f.carried[c.ID]
		conductors, told := conductorsOf(c, carried)
		if !known || !told {
			return m, false
		}
		other := c.From
		if other == opening {
			other = c.To
		}
		made := MadeCable{Cable: c, IsFeed: carried.to == opening, Conductors: conductors}
		made.Other, _ = ix.Plan().Opening(other)
		m.Cables = append(m.Cables, made)
	}
	slices.SortStableFunc(m.Cables, func(a, b MadeCable) int { // what feeds first, then as they go on
		return cmp.Or(cmp.Compare(rankOf(a), rankOf(b)), plan.CompareTags(tagOf(a.Other), tagOf(b.Other)), cmp.Compare(a.Cable.ID, b.Cable.ID))
	})
	if GoesThrough(ix, v) {
		m.part()
	}
	if m.Devices, ok = devicesIn(ix, m); !ok {
		return m, false
	}
	m.join()
	return m, true
}

// part keeps the hot and the neutral of each cable from those of the others: each goes to a
// terminal of its own.
func (m *MakeUp) part() {
	for _, c := range m.Cables {
		for i, w := range c.Conductors {
			if w.Role == Hot || w.Role == Neutral {
				c.Conductors[i].cable = c.Cable.ID
			}
		}
	}
}

func rankOf(c MadeCable) int {
	if c.IsFeed {
		return 0
	}
	return 1
}

func tagOf(o *plan.Opening) string {
	if o == nil {
		return ""
	}
	return o.Tag
}

// join puts together what does the same.
func (m *MakeUp) join() {
	at := map[netKey]int{}
	net := func(k netKey, c Conductor) *Net {
		i, seen := at[k]
		if !seen {
			i = len(m.Nets)
			at[k] = i
			m.Nets = append(m.Nets, Net{Conductor: c})
		}
		return &m.Nets[i]
	}
	for i, c := range m.Cables {
		for j, w := range c.Conductors {
			n := net(w.key(c.Cable.Circuit), w)
			n.Cables = append(n.Cables, Place{i, j})
		}
	}
	circuit := m.Cables[0].Cable.Circuit
	for i, d := range m.Devices {
		for j, w := range d.Terminals {
			n := net(w.key(circuit), w)
			n.Terminals = append(n.Terminals, Place{i, j})
		}
	}
	if b, ok, _ := part.Resolve(m.Opening.Assembly); ok && b.Box.Material != part.Plastic {
		for i := range m.Nets {
			if m.Nets[i].Conductor.Role == Ground {
				m.Nets[i].IsBonded = true
			}
		}
	}
	slices.SortStableFunc(m.Nets, func(a, b Net) int {
		return cmp.Compare(slices.Index(Roles, a.Conductor.Role), slices.Index(Roles, b.Conductor.Role))
	})
}

// devicesIn lists what is in a box with what goes to its terminals.
func devicesIn(ix *index.Index, m MakeUp) (all []MadeDevice, ok bool) {
	o := m.Opening
	if isSwitchBox(o) {
		gangs := inGangs(o, InOrder(ix, o, worksOf(ix)[o.ID]))
		for n, g := range gangs {
			d := MadeDevice{Kind: g.Beside, Control: g.Control, Terminals: []Conductor{{Role: Ground}}}
			if len(gangs) > 1 {
				d.Gang = n + 1
			}
			switch {
			case g.Beside != "":
				d.Terminals = m.fed()
			case g.Control != nil:
				if d.Kind, d.Terminals, ok = m.switched(g.Control); !ok {
					return nil, false
				}
			default:
				d.Kind = switchKind
			}
			all = append(all, d)
		}
		return all, true
	}
	devices := boxes.DevicesOf(o)
	if len(devices) == 0 {
		return []MadeDevice{{Terminals: m.loaded(ix, o, "")}}, true
	}
	for i, d := range devices {
		made := MadeDevice{Kind: d.Kind, Terminals: m.loaded(ix, o, d.Switched)}
		if len(devices) > 1 {
			made.Gang = i + 1
		}
		all = append(all, made)
	}
	return all, true
}

const switchKind = "one-pole switch"

// switched is a switch by the travelers that reach it: none, two or four.
func (m MakeUp) switched(c *plan.Control) (kind string, terminals []Conductor, ok bool) {
	terminals = []Conductor{{Role: Ground}}
	ends, isFed := Conductor{Role: Hot}, false
	for _, cable := range m.Cables {
		for _, w := range cable.Conductors {
			switch {
			case w.Control != c:
			case w.Role == Traveler:
				terminals = append(terminals, w.plain())
				isFed = isFed || cable.IsFeed
			case w.Role == Switched:
				ends = w.plain()
			}
		}
	}
	switch travelers := len(terminals) - 1; travelers {
	case 0:
		return switchKind, append(terminals, m.hot(), Conductor{Role: Switched, Control: c}), ends.Role == Switched
	case 2:
		if ends.Role == Hot {
			ends = m.hot()
		}
		// Where travelers go on from, current comes to; where they end, what is switched goes on.
		return part.ThreeWay, append(terminals, ends), isFed == (ends.Role == Switched)
	case 4:
		return part.FourWay, terminals, true
	}
	return "", nil, false
}

// hot is the conductor that is always on there: the first of several.
func (m MakeUp) hot() Conductor {
	for _, cable := range m.Cables {
		for _, w := range cable.Conductors {
			if w.Role == Hot {
				return w.plain()
			}
		}
	}
	return Conductor{Role: Hot}
}

// fed is a device that takes current all the time.
func (m MakeUp) fed() []Conductor {
	terminals := []Conductor{{Role: Ground}}
	has := map[netKey]bool{}
	for _, role := range []Role{Neutral, Hot} {
		for _, cable := range m.Cables {
			for _, w := range cable.Conductors {
				if k := w.key(""); w.Role == role && !has[k] {
					has[k] = true
					terminals = append(terminals, w.plain())
				}
			}
		}
	}
	return terminals
}

// loaded is what a control may work: its switched conductors in place of the hot one, but for
// a half that is always on.
func (m MakeUp) loaded(ix *index.Index, o *plan.Opening, switching plan.Switching) []Conductor {
	var switched []Conductor
	for _, c := range ix.ControlsOf(o.ID) {
		switched = append(switched, Conductor{Role: Switched, Control: c})
	}
	all := m.fed()
	if len(switched) == 0 {
		return all
	}
	if switching != plan.HalfSwitched {
		all = slices.DeleteFunc(all, func(w Conductor) bool { return w.Role == Hot })
	}
	return append(all, switched...)
}
