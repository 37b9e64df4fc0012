package plan

import (
	"fmt"
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Circuit is one breaker with what hangs on it: openings and cables name it.
type Circuit struct {
	ID     ID     `json:"id"`
	Number string `json:"number"` // as on the panel's directory
	Name   string `json:"name,omitempty"`
	Panel  ID     `json:"panel,omitempty"` // fixture of kind panel
	Amps   int    `json:"amps"`
	Volts  int    `json:"volts"`
	Poles  int    `json:"poles"`
	GFCI   Flag   `json:"gfci,omitzero"` // protected at the breaker
	AFCI   Flag   `json:"afci,omitzero"` // protected at the breaker
	// Role is what it is there for, as the user says; from version 1.1 on.
	Role CircuitRole `json:"role,omitempty"`
	// Through says that the current goes on by the terminals of its receptacles, not past them
	// with the receptacles on tails; from version 1.1 on.
	Through bool   `json:"through,omitempty"`
	Note    string `json:"note,omitempty"`
	Extra   Extra  `json:"-"`
}

// CircuitRole is what a circuit is there for.
type CircuitRole string

// The roles. The empty one is not said.
const (
	RoleUnsaid    CircuitRole = ""
	RoleGeneral   CircuitRole = "general"
	RoleLights    CircuitRole = "lights"
	RoleAppliance CircuitRole = "small appliances" // counters and dining, 210.52(B)
	RoleLaundry   CircuitRole = "laundry"
	RoleBath      CircuitRole = "bath"
	RoleGarage    CircuitRole = "garage"
	RoleMachine   CircuitRole = "one machine"
)

// CircuitRoles are all of them.
var CircuitRoles = []CircuitRole{RoleUnsaid, RoleGeneral, RoleLights, RoleAppliance, RoleLaundry, RoleBath, RoleGarage, RoleMachine}

// Text returns the role, as people say it.
func (r CircuitRole) Text() words.Text {
	switch r {
	case RoleGeneral:
		return words.New("circuit.role.general", "receptacles in general")
	case RoleLights:
		return words.New("circuit.role.lights", "lights")
	case RoleAppliance:
		return words.New("circuit.role.appliances", "small appliances of a kitchen")
	case RoleLaundry:
		return words.New("circuit.role.laundry", "laundry")
	case RoleBath:
		return words.New("circuit.role.bath", "baths")
	case RoleGarage:
		return words.New("circuit.role.garage", "garage")
	case RoleMachine:
		return words.New("circuit.role.machine", "one machine alone")
	}
	return words.New("unsaid", "not said")
}

// Key returns the circuit's ID.
func (c *Circuit) Key() ID { return c.ID }

// Cable is a run between two openings, or between the panel and one.
type Cable struct {
	ID         ID          `json:"id"`
	From       ID          `json:"from"` // an opening or a fixture of kind panel
	To         ID          `json:"to"`   // an opening
	Size       unit.AWG    `json:"size"`
	Wires      int         `json:"wires"`                // insulated conductors
	Ground     bool        `json:"ground"`               // one equipment grounding conductor
	GroundSize unit.AWG    `json:"groundSize,omitempty"` // 0: the size of the others
	Circuit    ID          `json:"circuit,omitempty"`
	Length     unit.Length `json:"length,omitempty"`    // measured by the user; 0 is not known
	FromSpace  int         `json:"fromSpace,omitempty"` // which space of a parted box it enters, from 1 on; 0 is not told; from version 1.1 on
	ToSpace    int         `json:"toSpace,omitempty"`
	Existing   bool        `json:"existing,omitempty"` // in the wall already; from version 1.1 on
	// GroundUnseen tells that nobody has looked whether it carries a grounding conductor;
	// none is counted then. From version 1.1 on.
	GroundUnseen bool `json:"groundUnseen,omitempty"`
	// Way is how it gets out of the bays of walls that stay closed, as the user names it; from
	// version 1.1 on.
	Way CableWay `json:"way,omitempty"`
	// Plated tells that steel plates cover its holes where they are near to an edge of a stud;
	// from version 1.1 on.
	Plated bool   `json:"plated,omitempty"`
	Note   string `json:"note,omitempty"`
	Extra  Extra  `json:"-"`
}

// CableWay is where a cable that is fished leaves the bays of walls that stay closed.
type CableWay string

// The ways. The empty one is not named.
const (
	WayUnsaid    CableWay = ""
	WayAttic     CableWay = "attic"  // up each bay, and over the ceiling
	WayCellar    CableWay = "cellar" // down each bay, and under the floor
	WayOpenParts CableWay = "opened" // through a part that is laid open
)

// CableWays are all of them.
var CableWays = []CableWay{WayUnsaid, WayAttic, WayCellar, WayOpenParts}

// Text returns the way, as people say it.
func (w CableWay) Text() words.Text {
	switch w {
	case WayAttic:
		return words.New("cable.way.attic", "up, over the ceiling")
	case WayCellar:
		return words.New("cable.way.cellar", "down, under the floor")
	case WayOpenParts:
		return words.New("cable.way.opened", "through what is opened")
	}
	return words.New("cable.way.unsaid", "not said")
}

// Key returns the cable's ID.
func (c *Cable) Key() ID { return c.ID }

// SpaceAt returns which space of a parted box the cable enters at an end, from 1 on, or 0
// where that is not told.
func (c *Cable) SpaceAt(end ID) int {
	if c.From == end {
		return c.FromSpace
	}
	return c.ToSpace
}

// Grounding says whether the cable carries a grounding conductor.
func (c *Cable) Grounding() Answer {
	switch {
	case c.GroundUnseen:
		return Unsaid
	case c.Ground:
		return AnswerYes
	}
	return AnswerNo
}

// maxSpaces bounds into how many spaces a box is parted; nothing built comes near it.
const maxSpaces = 12

// Control says which switches serve which loads.
type Control struct {
	ID       ID     `json:"id"`
	Letter   string `json:"letter,omitempty"` // printed at both ends
	Switches []ID   `json:"switches"`
	Loads    []ID   `json:"loads"`
	Note     string `json:"note,omitempty"`
	Extra    Extra  `json:"-"`
}

// Key returns the control's ID.
func (c *Control) Key() ID { return c.ID }

func (p Plan) checkCircuit(c *Circuit) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCircuit); err != nil {
		return err
	}
	if c.Panel != "" && !p.isPanel(c.Panel) {
		return Refuse(ErrGone, "panel-gone", "{0} names a panel that is not in the plan", c.text()).At("/panel")
	}
	if !slices.Contains(CircuitRoles, c.Role) {
		return Refuse(nil, "circuit-role", "{0} has an unknown role “{1}”", c.text(), string(c.Role)).At("/role")
	}
	if c.Amps < 0 || c.Amps > 10_000 || c.Volts < 0 || c.Volts > 1000 || c.Poles < 0 || c.Poles > 3 {
		return Refuse(nil, "breaker", "{0} has a breaker out of bounds: to 10 000 A, 1000 V and 3 poles", c.text())
	}
	return nil
}

func (p Plan) isPanel(id ID) bool {
	f, _ := p.Fixture(id)
	return f != nil && f.Kind == FixturePanel
}

func (p Plan) isOpening(id ID) bool {
	o, _ := p.Opening(id)
	return o != nil
}

func (p Plan) checkCable(c *Cable) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCable); err != nil {
		return err
	}
	switch {
	case !p.isOpening(c.From) && !p.isPanel(c.From):
		return Refuse(ErrGone, "cable-from", "a cable starts at an opening or a panel that is not in the plan").At("/from")
	case !p.isOpening(c.To):
		return Refuse(ErrGone, "cable-to", "a cable ends at an opening that is not in the plan").At("/to")
	case c.From == c.To:
		return Refuse(nil, "cable-ends", "a cable starts and ends at one opening").At("/to")
	case c.Size == 0 || !isWire(int(c.Size)) || !isWire(int(c.GroundSize)):
		return Refuse(nil, "cable-size", "a cable needs a wire size").At("/size")
	case min(c.FromSpace, c.ToSpace) < 0 || max(c.FromSpace, c.ToSpace) > maxSpaces:
		return Refuse(nil, "cable-space", "a cable enters space 1 to {0} of a parted box", maxSpaces)
	case !slices.Contains(CableWays, c.Way):
		return Refuse(nil, "cable-way", "a cable goes an unknown way “{0}”", string(c.Way)).At("/way")
	case c.Wires < 1 || c.Wires > MaxWires:
		return Refuse(nil, "cable-wires", "a cable has 1 to {1} insulated conductors, not {0}", c.Wires, MaxWires).At("/wires")
	}
	if err := notNegative(theCable, c.Length); err != nil {
		return In("/length", err)
	}
	return p.checkOnCircuit(c.Circuit, theCable)
}

func (p Plan) checkOnCircuit(id ID, what words.Text) error {
	if _, ok := p.Circuits.Get(id); !ok && id != "" {
		return Refuse(ErrGone, "circuit", "{0} names a circuit that is not in the plan", what).At("/circuit")
	}
	return nil
}

func (p Plan) checkControl(c *Control) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindControl); err != nil {
		return err
	}
	if len(c.Switches)+len(c.Loads) == 0 {
		return Refuse(nil, "control-empty", "a control needs a switch or a load")
	}
	if err := distinct(c.Switches, p.isOpening, theControl); err != nil {
		return In("/switches", err)
	}
	return In("/loads", distinct(c.Loads, p.isOpening, theControl))
}

// distinct reports an ID of the list that names nothing or stands twice.
func distinct(ids []ID, has func(ID) bool, what words.Text) error {
	seen := make(map[ID]bool, len(ids))
	for i, id := range ids {
		if !has(id) {
			return Refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", what, string(id)).At(fmt.Sprintf("/%d", i))
		}
		if seen[id] {
			return Refuse(nil, "names-twice", "{0} names “{1}” twice", what, string(id)).At(fmt.Sprintf("/%d", i))
		}
		seen[id] = true
	}
	return nil
}
