package part

import (
	"cmp"

	"studbay/plan"
	"studbay/plan/words"
)

// named is a name of the catalogue, to be translated by the ID, or of the user's own, which
// stands as it is written.
func named(family, id, name string) words.Text {
	if plan.IsOwn(id) {
		return words.New("plain", "{0}", name)
	}
	return words.New(family+id, name)
}

// stated is what a thing of the user's own says of itself: its figures are the user's, and
// what it costs stands in the price book alone.
var stated = Part{Confidence: "stated by the user"}

// OwnBox returns a box of the user's own as the catalogue would have it.
func OwnBox(x *plan.Own) *Box {
	return &Box{
		ID: string(x.ID), Name: x.Name, Shape: Shape(x.Shape), Material: Material(x.Material), Mounting: Mounting(x.Mounting),
		Gangs: x.Gangs, Width: x.Width, Height: x.Height, Depth: x.Depth, Volume: x.Volume, Basis: basisOf(x),
		FromMemory: x.From == plan.VolumeMemory, Clamps: x.Clamps, Listed: x.Listed,
		Fit: Fit{ClampMin: x.GripLeast, ClampMax: x.GripMost}, Part: stated,
	}
}

// OwnRing returns a ring of the user's own as the catalogue would have it. The collar of one
// that takes no device is round.
func OwnRing(x *plan.Own) *Add {
	return &Add{
		ID: string(x.ID), Name: x.Name, Kind: Ring, Fits: []Shape{Shape(x.Shape)}, Gangs: x.Gangs, Raise: x.Depth,
		Collar: Outline{x.Width, x.Height, x.Gangs == 0}, Volume: x.Volume, Basis: basisOf(x), Part: stated,
	}
}

func basisOf(x *plan.Own) Basis {
	if x.From == plan.NoVolume {
		return NoBasis
	}
	return ByMark
}

// boxNamed returns the box that an assembly names, or nil.
func boxNamed(a plan.Assembly) *Box {
	if x := a.Owned.Get(a.Box); x != nil && x.Kind == plan.OwnBox {
		return OwnBox(x)
	}
	return All().Box(a.Box)
}

// AddNamed returns the ring, extension or cover of a name on an assembly, or nil.
func AddNamed(a plan.Assembly, name string) *Add {
	if x := a.Owned.Get(name); x != nil && x.Kind == plan.OwnRing {
		return OwnRing(x)
	}
	return All().Add(name)
}

// BoxesIn returns the boxes that can be chosen in a plan: those of the catalogue, then the
// user's own.
func BoxesIn(p plan.Plan) (all []*Box) {
	all = append(all, All().Boxes...)
	for x := range p.Owns.All() {
		if x.Kind == plan.OwnBox {
			all = append(all, OwnBox(x))
		}
	}
	return all
}

// AddsIn returns what is put on boxes in a plan, as BoxesIn does.
func AddsIn(p plan.Plan) (all []*Add) {
	all = append(all, All().Adds...)
	for x := range p.Owns.All() {
		if x.Kind == plan.OwnRing {
			all = append(all, OwnRing(x))
		}
	}
	return all
}

// OwnDevices returns the devices of the user's own in a plan.
func OwnDevices(p plan.Plan) (all []*plan.Own) {
	for x := range p.Owns.All() {
		if x.Kind == plan.OwnDevice {
			all = append(all, x)
		}
	}
	return all
}

// DeviceOf returns what is known of what is on a yoke: of one of the user's own how far it
// reaches back is the user's word, the rest that of the device it is like.
func DeviceOf(d plan.Device) Device {
	known := All().Device(d.Kind)
	if x := d.Owned; x != nil {
		known.Behind = cmp.Or(x.Depth, known.Behind)
	}
	return known
}

// DeviceName returns what is on a yoke in words: one of the user's own by its name.
func DeviceName(d plan.Device) words.Text {
	if x := d.Owned; x != nil {
		return words.New("plain", "{0}", x.Name)
	}
	return DeviceText(d.Kind)
}
