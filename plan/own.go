package plan

import (
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// OwnKind says what a thing of the user's own is.
type OwnKind string

// The kinds.
const (
	OwnBox    OwnKind = "box"
	OwnRing   OwnKind = "ring"
	OwnDevice OwnKind = "device"
)

// VolumeFrom says who told a volume.
type VolumeFrom string

// The sources of a volume. One from memory is marked wherever it decides.
const (
	NoVolume     VolumeFrom = ""         // it has no mark, and gives none
	VolumeMarked VolumeFrom = "stamped"  // read off the thing
	VolumeListed VolumeFrom = "listed"   // of the maker's sheet
	VolumeMemory VolumeFrom = "recalled" // from memory
)

// Own is a box, a ring or a device that no catalogue has: what the user says of it. Sizes
// are outside ones, 0 where they are not known. From version 1.1 on.
type Own struct {
	ID   ID      `json:"id"`
	Kind OwnKind `json:"kind"`
	Name string  `json:"name"`
	// Shape, Material, Mounting and Listed are those of a box, one of OwnShapes and so on; a
	// ring has the shape of the boxes it goes on.
	Shape    string `json:"shape,omitempty"`
	Material string `json:"material,omitempty"`
	Mounting string `json:"mounting,omitempty"`
	Listed   string `json:"listed,omitempty"`
	Gangs    int    `json:"gangs,omitempty"` // it presents; 0 for round ones
	// Width and Height are those of a box, or of the collar of a ring.
	Width  unit.Length `json:"width,omitempty"`
	Height unit.Length `json:"height,omitempty"`
	// Depth is that of a box; how far a ring stands out from its box; how far a device reaches
	// behind its yoke.
	Depth  unit.Length `json:"depth,omitempty"`
	Volume unit.Volume `json:"volume,omitempty"`
	From   VolumeFrom  `json:"from,omitempty"` // of the volume
	Clamps bool        `json:"clamps,omitempty"`
	// GripLeast and GripMost are the finish that an old-work box grips, both included.
	GripLeast unit.Length `json:"gripLeast,omitempty"`
	GripMost  unit.Length `json:"gripMost,omitempty"`
	// Like is the device of the catalogue that a device does the work of.
	Like  string `json:"like,omitempty"`
	Extra Extra  `json:"-"`
}

// Key returns its ID.
func (x *Own) Key() ID { return x.ID }

// What the shape, material, mounting and listing of one's own may be: the words of the
// catalogue.
var (
	OwnShapes    = []string{"device", "square-4", "square-4-11/16", "octagon", "round"}
	OwnMaterials = []string{"plastic", "steel", "cast"}
	OwnMountings = []string{"nail-on", "bracket", "screw", "bar-hanger", "joist", "old-work", "surface", "masonry", "floor"}
	OwnListings  = []string{"", "fan", "floor", "wet"}
)

// OldWork is the mounting of a box that grips the board.
const OldWork = "old-work"

// maxOwn bounds a size of one's own: 2 ft. No box comes near it.
const maxOwn = 2 * unit.Foot

// Owned are the things of the user's own that a noun names, as the plan has them. The plan
// puts them there and keeps them so; no file has them.
type Owned []*Own

// Get returns the thing of an ID, or nil.
func (all Owned) Get(id string) *Own {
	for _, x := range all {
		if string(x.ID) == id {
			return x
		}
	}
	return nil
}

// IsOwn reports whether a name in an assembly is the ID of a thing of the user's own.
func IsOwn(name string) bool { return ID(name).isOf(KindOwn) }

func checkOwn(x *Own) error {
	if err := checkText(x); err != nil {
		return err
	}
	if err := wellFormed(x.ID, KindOwn); err != nil {
		return err
	}
	if err := needsText(x.Name, "name", theOwn); err != nil {
		return err
	}
	for _, size := range []struct {
		key string
		is  unit.Length
	}{{"width", x.Width}, {"height", x.Height}, {"depth", x.Depth}, {"gripLeast", x.GripLeast}, {"gripMost", x.GripMost}} {
		if size.is < 0 || size.is > maxOwn {
			return Refuse(nil, "own-size", "a size of “{0}” is {1}; 0 to {2} is taken", x.Name, words.Height(size.is), words.Height(maxOwn)).At("/" + size.key)
		}
	}
	if x.Gangs < 0 || x.Gangs > MaxGangs {
		return Refuse(nil, "own-gangs", "“{0}” takes {1} gangs; 0 to {2} are known", x.Name, x.Gangs, MaxGangs).At("/gangs")
	}
	switch x.Kind {
	case OwnBox:
		return firstOf(x.checkVolume(), x.checkBox())
	case OwnRing:
		return firstOf(x.checkVolume(), x.checkRing())
	case OwnDevice:
		return x.checkDevice()
	}
	return Refuse(nil, "own-kind", "“{0}” is neither a box, a ring nor a device", string(x.Kind)).At("/kind")
}

// checkVolume holds that a volume has its source, and a source its volume.
func (x *Own) checkVolume() error {
	switch {
	case x.Volume < 0 || x.Volume > maxVolume:
		return Refuse(nil, "own-volume", "the volume of “{0}” is out of bounds", x.Name).At("/volume")
	case !slices.Contains([]VolumeFrom{NoVolume, VolumeMarked, VolumeListed, VolumeMemory}, x.From):
		return Refuse(nil, "own-from", "the volume of “{0}” is from an unknown source “{1}”", x.Name, string(x.From)).At("/from")
	case (x.Volume > 0) != (x.From != NoVolume):
		return Refuse(nil, "own-unsaid", "say of “{0}” both its volume and who tells it, or neither", x.Name).At("/from")
	}
	return nil
}

func (x *Own) checkBox() error {
	for _, of := range []struct {
		key, said string
		known     []string
	}{{"shape", x.Shape, OwnShapes}, {"material", x.Material, OwnMaterials}, {"mounting", x.Mounting, OwnMountings}, {"listed", x.Listed, OwnListings}} {
		if !slices.Contains(of.known, of.said) {
			return Refuse(nil, "own-word", "“{0}” of “{1}” is nothing that is known", of.said, x.Name).At("/" + of.key)
		}
	}
	if (x.GripMost > 0) != (x.Mounting == OldWork) || x.GripLeast > x.GripMost {
		return Refuse(nil, "own-grip", "“{0}” needs the finish it grips, from and to, if it is an old-work box, and only then", x.Name).At("/gripMost")
	}
	return nil
}

func (x *Own) checkRing() error {
	if !slices.Contains(OwnShapes, x.Shape) || x.Shape == "device" {
		return Refuse(nil, "own-fits", "“{0}” needs the shape of the boxes it goes on: no device box takes a ring", x.Name).At("/shape")
	}
	if x.Width == 0 || x.Height == 0 {
		return Refuse(nil, "own-collar", "“{0}” needs the width and height of its collar", x.Name).At("/width")
	}
	return nil
}

func (x *Own) checkDevice() error {
	if x.Depth == 0 {
		return Refuse(nil, "own-behind", "“{0}” needs how far it reaches behind its yoke", x.Name).At("/depth")
	}
	return needsText(x.Like, "like", theOwn)
}

func (x *Own) text() words.Text { return words.New("called.own", "“{0}”", x.Name) }

// UsedAt lists the openings that name it, in the order of IDs.
func (x *Own) UsedAt(p Plan) []ID { return p.named(x.ID) }

// withOwn returns the plan with a thing of the user's own, new or changed, and what names
// it built of it as it is now.
func (p Plan) withOwn(x *Own) (Plan, error) {
	if err := checkOwn(x); err != nil {
		return Plan{}, err
	}
	p.Owns = p.Owns.With(x)
	return p.Owning(), nil
}

// nameOwn tells of the things of the user's own that an opening names.
func (o *Opening) nameOwn(r references) {
	name := func(text string) (ID, bool) {
		id := ID(text)
		if !IsOwn(text) {
			return id, false
		}
		r.may(&id)
		return id, string(id) != text
	}
	if id, isOther := name(o.Assembly.Box); isOther {
		o.Assembly.Box = string(id)
	}
	for i := len(o.Assembly.Parts) - 1; i >= 0; i-- {
		id, isOther := name(o.Assembly.Parts[i].Part)
		if !isOther {
			continue
		}
		o.Assembly.Parts = slices.Clone(o.Assembly.Parts)
		if o.Assembly.Parts[i].Part = string(id); id == "" {
			o.Assembly.Parts = slices.Delete(o.Assembly.Parts, i, i+1)
		}
	}
	for i := range o.Devices {
		if id, isOther := name(string(o.Devices[i].Own)); isOther {
			o.Devices = slices.Clone(o.Devices)
			o.Devices[i].Own = id
		}
	}
}

// Owning returns the plan in which every opening has at hand the things of the user's own
// that it names, as they are in the plan. One that has them so already stays.
func (p Plan) Owning() Plan {
	for _, l := range p.Levels {
		openings := l.Openings
		for o := range openings.All() {
			now := *o
			if p.own(&now); !Same(o, &now) {
				openings = openings.With(&now)
			}
		}
		if openings != l.Openings {
			p = p.on(l, func(l *Level) { l.Openings = openings })
		}
	}
	return p
}

// own gives an opening the things of the user's own that it names.
func (p Plan) own(o *Opening) {
	o.Assembly = p.Own(o.Assembly)
	for i, d := range o.Devices {
		if owned, _ := p.Owns.Get(d.Own); owned != d.Owned {
			o.Devices = slices.Clone(o.Devices)
			o.Devices[i].Owned = owned
		}
	}
}

// Own returns an assembly with the things of the user's own that it names at hand, as it
// has them once it is in the plan.
func (p Plan) Own(a Assembly) Assembly {
	var owned Owned
	take := func(name string) {
		if x, ok := p.Owns.Get(ID(name)); ok && owned.Get(name) == nil {
			owned = append(owned, x)
		}
	}
	take(a.Box)
	for _, part := range a.Parts {
		take(part.Part)
	}
	a.Owned = owned
	return a
}
