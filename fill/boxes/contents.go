package boxes

import (
	"slices"
	"sync"

	"studbay/fill/box"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Source says who told what is in a box, best first.
type Source string

// The sources.
const (
	Drawn    Source = "drawn"     // cables of the plan end in it
	Stated   Source = "stated"    // by the user
	Assumed  Source = "assumed"   // by the kind of opening
	NotKnown Source = "not known" // the user says so, or nothing tells
)

// Text returns the source as people read it.
func (s Source) Text() words.Text {
	switch s {
	case Drawn:
		return words.New("source.drawn", "drawn")
	case Stated:
		return words.New("source.stated", "stated")
	case Assumed:
		return words.New("source.assumed", "assumed")
	}
	return words.New("source.not-known", "not known")
}

// ContentsOf returns what is in an opening's box and who told it. Cables that are
// drawn go before what the user stated, and that before what the kind assumes; the
// devices and what is not cable come from the opening or its kind, and internal clamps
// from the box. Callers must not write to what they get.
func ContentsOf(v index.OpeningView) (box.Contents, Source) {
	b, ok, err := part.Resolve(v.Opening.Assembly)
	return contentsIn(v, ok && err == nil && b.Box.Clamps)
}

// contentsIn is ContentsOf for a box that comes with internal clamps or does not.
func contentsIn(v index.OpeningView, clamps bool) (items box.Contents, source Source) {
	o := v.Opening
	usual := usualOf()[o.Kind]
	switch {
	case len(v.Cables) > 0:
		items, source = cableItems(o, v.Cables), Drawn
		items = append(items, deviceItems(o, usual.devices)...)
	case o.Contents != nil && o.Contents.Source == plan.ContentsStated:
		items, source = statedItems(o.Contents.Items), Stated
	case o.Contents != nil || len(usual.wires)+len(usual.devices) == 0:
		return nil, NotKnown
	default:
		items, source = slices.Clone(usual.wires), Assumed
		items = append(items, deviceItems(o, usual.devices)...)
	}
	isClamps := func(i box.Item) bool { return i.What == box.Clamps }
	if clamps && !slices.ContainsFunc(items, isClamps) {
		items = append(items, box.Item{What: box.Clamps})
	}
	return items, source
}

// usual is what a kind of opening assumes: what brings the current, and what belongs to
// the device or luminaire.
type usual struct{ wires, devices box.Contents }

// usualOf parts the wiring of each kind of the catalogue, once.
var usualOf = sync.OnceValue(func() map[string]usual {
	all := map[string]usual{}
	for _, k := range part.All().Kinds {
		var u usual
		for _, i := range k.Wiring {
			if isOnDevice(i) {
				u.devices = append(u.devices, i)
			} else {
				u.wires = append(u.wires, i)
			}
		}
		all[k.ID] = u
	}
	return all
})

// cableItems returns the cables that end in an opening; one that begins and ends there
// is counted at both ends.
func cableItems(o *plan.Opening, cables []*plan.Cable) (items box.Contents) {
	for _, c := range cables {
		ends := 1
		if c.From == o.ID && c.To == o.ID {
			ends = 2
		}
		if c.Ground && (c.GroundSize == 0 || c.GroundSize == c.Size) {
			items = append(items, box.Item{What: box.Cable, Size: c.Size, Wires: c.Wires, Times: ends})
			continue
		}
		if c.Wires > 0 {
			items = append(items, box.Item{What: box.Conductor, Size: c.Size, Times: c.Wires * ends})
		}
		if c.Ground {
			items = append(items, box.Item{What: box.Ground, Size: c.GroundSize, Times: ends})
		}
	}
	return items
}

// isOnDevice reports whether an item belongs to the device or luminaire, not to what
// brings the current.
func isOnDevice(i box.Item) bool {
	switch i.What {
	case box.Device, box.FixtureWire, box.Canopy, box.Fitting, box.TerminalBlock:
		return true
	}
	return false
}

// deviceItems returns what is mounted: as the opening says, else as its kind does.
func deviceItems(o *plan.Opening, usual box.Contents) (items box.Contents) {
	if len(o.Devices) == 0 {
		return usual
	}
	for _, i := range usual {
		if i.What != box.Device {
			items = append(items, i)
		}
	}
	for _, d := range o.Devices {
		items = append(items, box.Item{What: box.Device, Size: d.Size, Gangs: d.Gangs})
	}
	return items
}

// statedItems turns the plan's words into those of box fill: they are the same.
func statedItems(items []plan.Item) (out box.Contents) {
	for _, i := range items {
		out = append(out, box.Item{
			What: box.Word(i.What), Size: i.Size, Wires: i.Wires, Gangs: i.Gangs, Type: i.Type, Times: i.Times,
		})
	}
	return out
}

// StatedContents turns the words of box fill into those a plan keeps.
func StatedContents(items box.Contents) *plan.Contents {
	out := &plan.Contents{Source: plan.ContentsStated}
	for _, i := range items {
		out.Items = append(out.Items, plan.Item{
			What: plan.ItemKind(i.What), Size: i.Size, Wires: i.Wires, Gangs: i.Gangs, Type: i.Type, Times: i.Times,
		})
	}
	return out
}
