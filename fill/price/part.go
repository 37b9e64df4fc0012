package price

import (
	"fmt"
	"io/fs"
	"slices"
	"strconv"
	"sync"

	"studbay/assets"
	"studbay/fill/part"
	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Group is the shelf a part is bought from.
type Group string

// The groups, in the order of a shopping list.
const (
	Boxes    Group = "boxes"
	Rings    Group = "rings" // extensions and raised covers too
	Fittings Group = "fittings"
	Wood     Group = "wood"
	Cable    Group = "cable"
	Small    Group = "small"
	Devices  Group = "devices" // plates too
)

// Groups lists them all.
var Groups = []Group{Boxes, Rings, Fittings, Wood, Cable, Small, Devices}

// WithBox lists the groups of what differs with the box that is taken: devices, plates and
// cable are the same whatever the box.
var WithBox = []Group{Boxes, Rings, Fittings, Wood, Small}

// Text returns the group in words.
func (g Group) Text() words.Text {
	switch g {
	case Boxes:
		return words.New("group.boxes", "Boxes")
	case Rings:
		return words.New("group.rings", "Rings")
	case Fittings:
		return words.New("group.fittings", "Fittings and bonding")
	case Wood:
		return words.New("group.wood", "Blocks and screws")
	case Cable:
		return words.New("group.cable", "Cable")
	case Small:
		return words.New("group.small", "Small parts")
	}
	return words.New("group.devices", "Devices and plates")
}

// Part is one thing that is bought.
type Part struct {
	ID    string // as the price book has it
	Name  words.Text
	Group Group
	Unit  string // each, in or ft
}

// UnitText returns a unit of a part in words.
func UnitText(unit string) words.Text {
	switch unit {
	case "in":
		return words.New("part.unit.in", "in")
	case "ft":
		return words.New("part.unit.ft", "ft")
	}
	return words.New("part.unit.each", "each")
}

// hardware is a row of the table of parts, with our price.
type hardware struct {
	Part
	price Price
}

var hardwareColumns = []string{"id", "name", "group", "unit", "pack", "price_cents", "source"}

func readHardware(from fs.FS) (all []hardware, err error) {
	table, err := rows.Read(from, "catalogue/parts.csv", hardwareColumns...)
	if err != nil {
		return nil, err
	}
	for _, r := range table {
		pack, err := rows.Get(r, "pack", strconv.Atoi)
		if err != nil {
			return nil, err
		}
		cents, err := rows.Get(r, "price_cents", strconv.Atoi)
		if err != nil {
			return nil, err
		}
		h := hardware{
			Part:  Part{r.Cell("id"), words.New("part."+r.Cell("id"), r.Cell("name")), Group(r.Cell("group")), r.Cell("unit")},
			price: Price{unit.Money{Cents: int64(cents), Currency: currency}, Of(pack)},
		}
		if !slices.Contains(Groups, h.Group) {
			return nil, r.Wrong("group", fmt.Errorf("no group %q", h.Group))
		}
		if pack <= 0 {
			return nil, r.Wrong("pack", fmt.Errorf("%d is not above zero", pack))
		}
		all = append(all, h)
	}
	return all, nil
}

// parts is every part that has a name here, by ID, and their order.
var parts = sync.OnceValue(func() (all struct {
	list []hardware
	by   map[string]hardware
}) {
	add := func(h hardware) { all.list = append(all.list, h) }
	single := func(m unit.Money) Price {
		if m.Cents == 0 {
			return Price{}
		}
		return Price{m, One}
	}
	c := part.All()
	for _, b := range c.Boxes {
		add(hardware{Part{b.ID, b.Text(), Boxes, "each"}, single(b.Price)})
	}
	for _, a := range c.Adds {
		group := Rings
		if a.Kind == part.Plate {
			group = Devices
		}
		if !a.ComesAlong() {
			add(hardware{Part{a.ID, a.Text(), group, "each"}, single(a.Price)})
		}
	}
	own, err := readHardware(assets.Tables)
	if err != nil {
		panic(err) // our own table, and tested
	}
	all.list = append(all.list, own...)
	for _, name := range c.Devices() {
		add(hardware{OfDevice(name), single(c.Device(name).Price)})
	}
	all.by = make(map[string]hardware, len(all.list))
	for _, h := range all.list {
		all.by[h.ID] = h
	}
	return all
})

// All lists every part there is a name for, in the order of a price book.
func All() (list []Part) {
	for _, h := range parts().list {
		list = append(list, h.Part)
	}
	return list
}

// Find returns the part of an ID. It reports false for one that is not known.
func Find(id string) (Part, bool) {
	h, ok := parts().by[id]
	return h.Part, ok
}

// Must returns a part of the table, which a recipe names.
func Must(id string) Part {
	p, ok := Find(id)
	if !ok {
		panic("price: no part " + id)
	}
	return p
}

// OfBox returns a box as a part: also one of the user's own, which no list has.
func OfBox(b *part.Box) Part { return Part{b.ID, b.Text(), Boxes, "each"} }

// OfAdd returns what is put on a box as a part, as OfBox does.
func OfAdd(a *part.Add) Part {
	if p, ok := Find(a.ID); ok {
		return p
	}
	return Part{a.ID, a.Text(), Rings, "each"}
}

// Mounted returns what is on a yoke as a part: one of the user's own is bought by its name.
func Mounted(d plan.Device) Part {
	if d.Own == "" {
		return OfDevice(d.Kind)
	}
	return Part{string(d.Own), part.DeviceName(d), Devices, "each"}
}

// OfDevice returns what a plan calls a device as a part.
func OfDevice(kind string) Part {
	return Part{kind, part.DeviceText(kind), Devices, "each"}
}

// OfCable returns cable of a size and a number of insulated conductors, by the foot. One
// that is not in the table has a name all the same.
func OfCable(size unit.AWG, wires int, ground bool) Part {
	id := fmt.Sprintf("cable-%s-%d", size, wires)
	if p, ok := Find(id); ok && ground {
		return p
	}
	if !ground {
		return Part{id + "-bare", words.New("part.cable.no-ground", "Cable {0}/{1} without ground", size, wires), Cable, "ft"}
	}
	return Part{id, words.New("part.cable", "Cable {0}/{1} with ground", size, wires), Cable, "ft"}
}
