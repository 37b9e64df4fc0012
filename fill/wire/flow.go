package wire

import (
	"slices"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Role is what a conductor does.
type Role string

// The roles.
const (
	Ground   Role = "ground"
	Neutral  Role = "neutral"
	Hot      Role = "hot"
	Switched Role = "switched"
	Traveler Role = "traveler"
)

// Roles lists them as a drawing does, from the top.
var Roles = []Role{Ground, Neutral, Hot, Switched, Traveler}

// Conductor is one by what it does.
type Conductor struct {
	Role    Role
	Control *plan.Control // of a switched one or a traveler
	Number  int           // of travelers and of several hot ones, from 1 on
	Color   Color         // of its insulation; empty on a terminal
	cable   plan.ID       // of a traveler, and of what goes to a terminal by itself: it is joined to that of no other cable
}

// Color is that of an insulation.
type Color string

// The colors of nonmetallic cable: common practice, but for bare or green grounds (NEC 250.119)
// and white neutrals (200.6). A white one that is none is marked anew (200.7(C)).
const (
	Bare     Color = "bare"
	White    Color = "white"
	Black    Color = "black"
	Red      Color = "red"
	Blue     Color = "blue"
	Remarked Color = "remarked"
)

// Text returns a color in words.
func (c Color) Text() words.Text {
	switch c {
	case Bare:
		return words.New("color.bare", "bare")
	case White:
		return words.New("color.white", "white")
	case Red:
		return words.New("color.red", "red")
	case Blue:
		return words.New("color.blue", "blue")
	case Remarked:
		return words.New("color.remarked", "white, re-marked")
	}
	return words.New("color.black", "black")
}

// Text returns what a conductor does in words.
func (c Conductor) Text() words.Text {
	switch c.Role {
	case Ground:
		return words.New("role.ground", "ground")
	case Neutral:
		return words.New("role.neutral", "neutral")
	case Switched:
		return words.New("role.switched", "switched {0}", c.Control.Letter)
	case Traveler:
		return words.New("role.traveler", "traveler {0}", c.Number)
	}
	if c.Number > 0 {
		return words.New("role.hot-of", "hot {0}", c.Number)
	}
	return words.New("role.hot", "hot")
}

// plain is a conductor as a terminal has it.
func (c Conductor) plain() Conductor {
	c.Color = ""
	return c
}

// netKey tells conductors apart that are not to be joined.
type netKey struct {
	role             Role
	control, circuit plan.ID
	cable            plan.ID
	number           int
}

func (c Conductor) key(circuit plan.ID) netKey {
	k := netKey{role: c.Role, number: c.Number, cable: c.cable}
	if c.Control != nil {
		k.control = c.Control.ID
	}
	if c.Role == Neutral || c.Role == Hot {
		k.circuit = circuit
	}
	return k
}

// carry is what a cable carries beside its ground, from the panel outwards.
type carry struct {
	role    Role          // Hot, Switched or Traveler; isLoop: hot out and switched back
	isLoop  bool          // to a switch from the light that it works
	control *plan.Control // of what is switched
	to      plan.ID       // the end away from the panel
	twoPole bool          // by a breaker of two poles: no neutral where there are two wires
}

// flow is what each cable of a circuit carries.
type flow struct{ carried map[plan.ID]carry }

// flowOf walks a circuit from its panel outwards, or from where its cables begin.
func flowOf(ix *index.Index, circuit plan.ID) *flow {
	f := &flow{carried: map[plan.ID]carry{}}
	p := ix.Plan()
	at := map[plan.ID][]*plan.Cable{}
	isEnd := map[plan.ID]bool{}
	var nodes []plan.ID
	for c := range p.Cables.All() {
		if c.Circuit != circuit {
			continue
		}
		at[c.From], at[c.To] = append(at[c.From], c), append(at[c.To], c)
		isEnd[c.To] = true
		nodes = append(nodes, c.From)
	}
	two := false
	if c, ok := p.Circuits.Get(circuit); ok {
		two = c.Poles > 1
	}
	works := worksOf(ix)
	into := map[plan.ID]carry{}
	var queue []plan.ID
	begin := func(id plan.ID) {
		if _, seen := into[id]; !seen {
			into[id] = carry{role: Hot}
			queue = append(queue, id)
		}
	}
	for _, id := range nodes {
		if id.Kind() == plan.KindFixture {
			begin(id)
		}
	}
	if len(queue) == 0 {
		for _, id := range nodes {
			if !isEnd[id] {
				begin(id)
			}
		}
	}
	for len(queue) > 0 {
		id := queue[0]
		queue = queue[1:]
		for _, c := range at[id] {
			next := c.To
			if next == id {
				next = c.From
			}
			if _, done := f.carried[c.ID]; done {
				continue
			}
			out := onward(works, id, into[id], next, c.Wires)
			out.to, out.twoPole = next, two
			f.carried[c.ID] = out
			if _, seen := into[next]; !seen {
				into[next] = out
				queue = append(queue, next)
			}
		}
	}
	return f
}

// onward returns what a cable carries from one box to the next.
func onward(works map[plan.ID][]*plan.Control, id plan.ID, in carry, next plan.ID, wires int) carry {
	for _, c := range works[id] {
		switch {
		case slices.Contains(c.Switches, next):
			return carry{role: Traveler, control: c}
		case slices.Contains(c.Loads, next):
			return carry{role: Switched, control: c}
		}
	}
	if in.role == Hot {
		for _, c := range works[next] {
			if slices.Contains(c.Loads, id) && len(c.Switches) == 1 {
				return carry{role: Switched, isLoop: true, control: c}
			}
		}
		return carry{role: Hot}
	}
	if in.control != nil && slices.Contains(in.control.Loads, next) {
		return carry{role: Switched, control: in.control}
	}
	if in.role == Switched {
		return carry{role: Switched, control: in.control}
	}
	return carry{}
}

// conductorsOf returns what the conductors of a cable do. It reports false for more, or fewer,
// than are told of.
func conductorsOf(c *plan.Cable, f carry) (all []Conductor, ok bool) {
	if c.Ground {
		all = append(all, Conductor{Role: Ground, Color: Bare})
	}
	var live []Conductor
	neutral := true
	switch {
	case f.role == Traveler:
		live = []Conductor{{Role: Traveler, Control: f.control, Number: 1, cable: c.ID}, {Role: Traveler, Control: f.control, Number: 2, cable: c.ID}}
		neutral = c.Wires > 2
	case f.isLoop:
		live = []Conductor{{Role: Hot}, {Role: Switched, Control: f.control}}
		if neutral = c.Wires > 2; !neutral {
			slices.Reverse(live) // what was white brings the current, and never takes it back: 200.7(C)(1)
		}
	case f.role == Switched && c.Wires > 2:
		live = []Conductor{{Role: Hot}, {Role: Switched, Control: f.control}}
	case f.role == Switched:
		live = []Conductor{{Role: Switched, Control: f.control}}
	case f.role == Hot && c.Wires > 2, f.role == Hot && f.twoPole && c.Wires == 2:
		live = []Conductor{{Role: Hot, Number: 1}, {Role: Hot, Number: 2}}
		neutral = c.Wires > 2
	case f.role == Hot:
		live = []Conductor{{Role: Hot}}
	}
	want := len(live)
	if neutral {
		want++
		all = append(all, Conductor{Role: Neutral, Color: White})
	}
	if want != c.Wires {
		return nil, false
	}
	for i, w := range live {
		w.Color = []Color{Black, Red}[i]
		if i == 1 && !neutral {
			w.Color = Remarked
		}
		all = append(all, w)
	}
	return all, true
}
