package plan

import (
	"fmt"
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Opening is one place where a box sits: on a face, in a ceiling or in a floor, or
// on a face of a fixture.
type Opening struct {
	ID       ID        `json:"id"`
	Tag      string    `json:"tag"`  // unique in the plan, stored text
	Kind     string    `json:"kind"` // ID in the table of kinds; unknown ones are kept
	At       Anchor    `json:"at"`
	Height   Height    `json:"height,omitzero"` // of no meaning in a ceiling or a floor
	Gangs    int       `json:"gangs"`
	Devices  []Device  `json:"devices,omitempty"`  // empty: as the kind says
	Contents *Contents `json:"contents,omitempty"` // nil: drawn by cables, else assumed by the kind
	Assembly Assembly  `json:"assembly"`
	Status   Status    `json:"status"`
	Fate     Fate      `json:"fate,omitempty"` // of its old box, once it was moved or replaced; from version 1.1 on
	Was      ID        `json:"was,omitempty"`  // the opening that it was moved from or takes the place of; from version 1.1 on
	Circuit  ID        `json:"circuit,omitempty"`
	From     ID        `json:"from,omitempty"`     // another thing on its face that its distance is told from; from version 1.1 on
	Grounded Answer    `json:"grounded,omitempty"` // whether a grounding conductor is in an old box; from version 1.1 on
	// Works are controls in the order of the gangs that work them, the gang nearest the door
	// first. What is not among them comes after, in the usual order; one that is not there counts
	// for nothing. From version 1.1 on.
	Works []ID `json:"works,omitempty"`
	// Weight is that of the light or fan which hangs from its box; 0: not known. From version
	// 1.1 on.
	Weight unit.Weight `json:"weight,omitempty"`
	// OwnSwitch tells whether a light is put on by a switch of its own; from version 1.1 on.
	OwnSwitch Answer `json:"ownSwitch,omitempty"`
	// Grip is how far the center of a switch's grip in its highest position is above the center
	// of its box; 0: it is taken to be there. Senses and Joined are of an alarm: how it senses
	// smoke, and whether one that sounds sounds all. From version 1.1 on.
	Grip   unit.Length `json:"grip,omitempty"`
	Senses Sensing     `json:"senses,omitempty"`
	Joined Answer      `json:"joined,omitempty"`
	// For is the machine that an outlet is there for, and Draws the current that this takes; 0: not
	// known. From version 1.1 on.
	For   Appliance    `json:"for,omitempty"`
	Draws unit.Current `json:"milliamps,omitempty"`
	Note  string       `json:"note,omitempty"`
	Extra Extra        `json:"-"`
}

// Key returns the opening's ID.
func (o *Opening) Key() ID { return o.ID }

// Switching says how much of a receptacle a wall switch controls.
type Switching string

// The switchings: a wholly switched receptacle lights the room and serves no spacing
// rule; one with a half always on does.
const (
	NotSwitched    Switching = ""
	HalfSwitched   Switching = "half"
	WhollySwitched Switching = "whole"
)

// Device is what is on one yoke.
type Device struct {
	Kind     string    `json:"kind"`            // such as "duplex receptacle"
	Size     unit.AWG  `json:"size"`            // the largest conductor connected to it; 0: of those in the box
	Gangs    int       `json:"gangs,omitempty"` // it needs by itself; 0 is 1
	Switched Switching `json:"switched,omitempty"`
	Own      ID        `json:"own,omitempty"` // which of the user's own it is; from version 1.1 on
	Owned    *Own      `json:"-"`             // that one, as Assembly.Owned
}

// ContentsSource says who told what is in a box.
type ContentsSource string

// The sources a plan stores. Drawn and assumed contents are derived, never stored.
const (
	ContentsStated   ContentsSource = "stated"
	ContentsNotKnown ContentsSource = "not known"
	ContentsInPart   ContentsSource = "in part" // what was seen, and more may be there; from version 1.1 on
)

// Contents is what the user says is in a box.
type Contents struct {
	Source ContentsSource `json:"source"`
	Items  []Item         `json:"items,omitempty"`
}

// ItemKind is what an item of a box's contents is.
type ItemKind string

// The kinds of item, in the words of the box-fill calculator.
const (
	ItemCable          ItemKind = "cable"
	ItemConductor      ItemKind = "conductor"
	ItemThrough        ItemKind = "through"
	ItemLoop           ItemKind = "loop"
	ItemGround         ItemKind = "ground"
	ItemIsolatedGround ItemKind = "isolated-ground"
	ItemFixtureWire    ItemKind = "fixture-wire"
	ItemCanopy         ItemKind = "canopy"
	ItemDevice         ItemKind = "device"
	ItemClamps         ItemKind = "clamps"
	ItemFitting        ItemKind = "fitting"
	ItemTerminalBlock  ItemKind = "terminal-block"
	ItemSpace          ItemKind = "space" // begins a space of a parted box; from version 1.1 on
)

// Item is one line of a box's contents. Which fields count depends on What: a cable
// has a Size, Wires and Times; a device a Size, Gangs and Times; a fitting a Type; a space a
// Volume.
type Item struct {
	What  ItemKind `json:"what"`
	Size  unit.AWG `json:"size,omitempty"`
	Wires int      `json:"wires,omitempty"` // insulated conductors of a cable
	Gangs int      `json:"gangs,omitempty"` // a device needs by itself; 0 is 1
	Type  string   `json:"type,omitempty"`  // of a fitting: stud or hickey
	Times int      `json:"times,omitempty"` // 0 is once
	None  bool     `json:"none,omitempty"`  // said not to be there; only What counts then

	Volume unit.Volume `json:"volume,omitempty"` // of a space; 0: its part is not said
}

// withOpening returns the plan with the opening where its anchor says; a new one without
// a tag has the next of its room's prefix.
func (p Plan) withOpening(opening *Opening) (Plan, error) {
	o := *opening
	home, err := p.homeSides(o.At, o.text())
	if err != nil {
		return Plan{}, err
	}
	l := home.level
	was, from := p.Opening(o.ID)
	if was == nil && o.Tag == "" {
		o.Tag = p.TagAt(o.At)
	}
	if was == nil || was.Tag != o.Tag {
		if err := p.freeTag(o.Tag, o.ID); err != nil {
			return Plan{}, err
		}
	}
	if err := home.checkOpening(&o); err != nil {
		return Plan{}, err
	}
	if err := p.checkOnCircuit(o.Circuit, o.text()); err != nil {
		return Plan{}, err
	}
	if err := firstOf(checkFrom(o.From, p.Has, o.text()), p.checkWas(&o)); err != nil {
		return Plan{}, err
	}
	p.own(&o)
	if was != nil && was.Tag != o.Tag {
		p = p.retired(was.Tag)
	}
	if from != nil && from != l {
		p = p.on(from, func(l *Level) { l.Openings = l.Openings.Without(o.ID) })
	}
	return p.on(p.Level(l.ID), func(l *Level) { l.Openings = l.Openings.With(&o) }), nil
}

// MaxGangs is the most gangs of a box, ring or device; nothing built comes near it.
const MaxGangs = 12

// MaxWires is the most insulated conductors of a cable, drawn or stated, and MaxTimes the most of
// one thing that a line of contents may state: more is a slip of the keyboard.
const MaxWires, MaxTimes = 100, 1000

// The bounds of counts within one noun; nothing built comes near them.
const (
	maxPanels = 16
	maxItems  = 256
	maxTag    = 24 // characters
)

// maxWeight, maxGrip and maxDraws bound what hangs from a box, how far a grip is above its middle
// and what a machine takes; nothing built comes near them.
const (
	maxWeight = 1000 * unit.Kilogram
	maxGrip   = unit.Foot
	maxDraws  = 1000 * unit.Ampere
)

// checkOpening reports why an opening cannot be where it says, or what is wrong with
// its own fields.
func (s levelSides) checkOpening(o *Opening) error {
	if err := checkText(o); err != nil {
		return err
	}
	if err := wellFormed(o.ID, KindOpening); err != nil {
		return err
	}
	if err := o.checkFields(); err != nil {
		return err
	}
	if err := s.check(stand{o.At, 0, o.text()}); err != nil {
		return In("/at", err)
	}
	if o.At.Part == PartFace {
		if ref := s.side(o.At.Host); ref.Side().Kind == SideOpen {
			return Refuse(ErrNoRoom, "open-side", "{0} has no wall to sit in: that side of {1} is open", o.text(), ref.Room.text()).At("/at/host")
		}
	}
	return In("/height", s.checkHeight(o))
}

func (o *Opening) checkFields() error {
	switch {
	case !IsTag(o.Tag):
		return Refuse(nil, "tag", "“{0}” is not a tag: up to 24 characters, none of them a space", o.Tag).At("/tag")
	case o.Kind == "":
		return Refuse(nil, "kind", "{0} needs a kind", o.text()).At("/kind")
	case !slices.Contains(FatesOf(o.Status), o.Fate):
		return Refuse(nil, "fate", "{0} is “{1}”, its old box cannot be “{2}”", o.text(), string(o.Status), string(o.Fate)).At("/fate")
	case !slices.Contains(Statuses, o.Status):
		return Refuse(nil, "status", "{0} has an unknown status “{1}”", o.text(), string(o.Status)).At("/status")
	case !o.Grounded.isKnown():
		return Refuse(nil, "grounded", "{0} is grounded, “yes” or “no”, not “{1}”", o.text(), string(o.Grounded)).At("/grounded")
	case o.Weight < 0 || o.Weight > maxWeight:
		return Refuse(nil, "weight", "what hangs from {0} weighs {1}; 0 to {2} is taken", o.text(), o.Weight, maxWeight).At("/weight")
	case o.Grip < 0 || o.Grip > maxGrip:
		return Refuse(nil, "grip", "the grip of {0} is {1} above the middle of its box; 0 to {2} is taken", o.text(), o.Grip, maxGrip).At("/grip")
	case !slices.Contains(Sensings, o.Senses):
		return Refuse(nil, "senses", "{0} senses smoke in an unknown way, “{1}”", o.text(), string(o.Senses)).At("/senses")
	case !o.Joined.isKnown():
		return Refuse(nil, "joined", "{0} sounds with the other alarms, “yes” or “no”, not “{1}”", o.text(), string(o.Joined)).At("/joined")
	case o.Draws < 0 || o.Draws > maxDraws:
		return Refuse(nil, "draws", "the appliance at {0} draws {1} A; 0 to {2} A is taken", o.text(), o.Draws.Text(), maxDraws.Text()).At("/milliamps")
	case o.Gangs < 0 || o.Gangs > MaxGangs:
		return Refuse(nil, "gangs", "{0} has {1} gangs; a box has 0 to {2}", o.text(), o.Gangs, MaxGangs).At("/gangs")
	}
	if err := firstOf(checkDevices(o), checkWorks(o)); err != nil {
		return err
	}
	if err := In("/contents", o.Contents.check(o.text())); err != nil {
		return err
	}
	return In("/assembly", o.Assembly.check(o.text()))
}

// checkWas reports why an opening cannot have been another.
func (p Plan) checkWas(o *Opening) error {
	if o.Was == "" {
		return nil
	}
	if old, _ := p.Opening(o.Was); old == nil || o.Was == o.ID {
		return Refuse(ErrGone, "was", "{0} was moved from, or replaces, an opening that is not in the plan", o.text()).At("/was")
	}
	return nil
}

func checkDevices(o *Opening) error {
	if len(o.Devices) > maxItems {
		return Refuse(nil, "devices-many", "{0} has more than {1} devices", o.text(), maxItems).At("/devices")
	}
	for i, d := range o.Devices {
		switched := d.Switched == NotSwitched || d.Switched == HalfSwitched || d.Switched == WhollySwitched
		if d.Kind == "" || !switched || d.Gangs < 0 || d.Gangs > MaxGangs || !isWire(int(d.Size)) {
			return Refuse(nil, "device", "device {1} of {0} has a field out of bounds", o.text(), i+1).At(fmt.Sprintf("/devices/%d", i))
		}
	}
	return nil
}

// checkWorks holds the order of gangs to controls, each once. Whether they are there is not
// asked: a copy of an opening is put down before the controls that it names.
func checkWorks(o *Opening) error {
	seen := map[ID]bool{}
	for i, id := range o.Works {
		if id.Kind() != KindControl || seen[id] || i >= maxItems {
			return Refuse(nil, "works", "the order of the gangs of {0} has a line that is no control, or stands twice", o.text()).At(fmt.Sprintf("/works/%d", i))
		}
		seen[id] = true
	}
	return nil
}

// isWire reports whether a size is none or one from 4/0 to 40.
func isWire(size int) bool { return size >= -4 && size <= 40 }

var itemKinds = []ItemKind{
	ItemCable, ItemConductor, ItemThrough, ItemLoop, ItemGround, ItemIsolatedGround,
	ItemFixtureWire, ItemCanopy, ItemDevice, ItemClamps, ItemFitting, ItemTerminalBlock, ItemSpace,
}

func (c *Contents) check(name words.Text) error {
	if c == nil {
		return nil
	}
	if c.Source != ContentsStated && c.Source != ContentsNotKnown && c.Source != ContentsInPart {
		return Refuse(nil, "contents", "the contents of {0} are from an unknown source “{1}”", name, string(c.Source)).At("/source")
	}
	if len(c.Items) > maxItems {
		return Refuse(nil, "items", "{0} has more than {1} lines of contents", name, maxItems).At("/items")
	}
	for i, it := range c.Items {
		counts := it.Wires >= 0 && it.Wires <= MaxWires && it.Gangs >= 0 && it.Gangs <= MaxGangs && it.Times >= 0 && it.Times <= MaxTimes && it.Volume >= 0 && it.Volume <= maxVolume
		if !slices.Contains(itemKinds, it.What) || !counts || !isWire(int(it.Size)) {
			return Refuse(nil, "item", "line {1} of the contents of {0} has a field out of bounds", name, i+1).At(fmt.Sprintf("/items/%d", i))
		}
	}
	return nil
}

// checkHeight holds the height between the floor and the ceiling, or between the
// bottom and the top of the fixture. The size of the box is not known here: the line
// of the box that was measured is looked at.
func (s levelSides) checkHeight(o *Opening) error {
	h, flat := o.Height, o.At.Part == PartCeiling || o.At.Part == PartFloor || o.At.Part == PartTop
	if flat && h == (Height{}) {
		return nil
	}
	if h.To != BoxCentre && h.To != BoxBottom && h.To != BoxTop || h.From != FinishedFloor && h.From != Subfloor {
		return Refuse(nil, "height", "{0} needs a height: to which line of the box, from which floor", o.text())
	}
	if err := CheckReach(o.text(), h.Value); err != nil || flat {
		return err
	}
	room := s.room(o.At)
	low, high := unit.Length(0), room.Ceiling
	if f, ok := s.level.Fixtures.Get(o.At.Host); ok {
		low, high = f.Bottom, f.Top()
	}
	if v := h.Centre(0, room.FloorThickness()); v < low || v > high {
		return Refuse(ErrNoRoom, "too-high", "{0} would sit at {1}; there is room from {2} to {3}", o.text(), words.Height(v), words.Height(low), words.Height(high)).At("/value")
	}
	return nil
}
