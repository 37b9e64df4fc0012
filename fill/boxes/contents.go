package boxes

import (
	"slices"
	"sync"

	"studbay/fill/box"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ContentsOf returns what is in an opening's box and who told it.
//
// A new box holds the cables drawn to it, else those stated, else those its kind assumes,
// and all else that is stated. One that is there already holds what was stated of it and
// the cables drawn to it besides; until somebody states them its contents are not known,
// nor are they where the user says so, whatever is drawn. What the kind must hold, its
// yokes and the wires and canopy of a luminaire, is counted unless the user says that it
// is not there, and so are the clamps that the box comes with. Callers must not write to
// what they get.
func ContentsOf(v index.OpeningView) (box.Contents, Source) {
	return wiringOf(v).contents(hasClamps(v.Opening))
}

// ToState returns what a user may put other items in place of: what is in the box less
// the cables drawn to it.
func ToState(v index.OpeningView) box.Contents {
	w, clamps := wiringOf(v), hasClamps(v.Opening)
	if b, ok, _ := part.Resolve(v.Opening.Assembly); ok && b.IsParted() {
		return w.partedRest(v, b, clamps)
	}
	if !w.source.IsKnown() {
		return nil
	}
	return w.rest(clamps)
}

// LeastOf returns what is surely in a box of which not all is known: the cables drawn to
// it, what was seen in it, and what it must hold with them. It is nothing where there is
// neither a cable nor anything seen.
func LeastOf(v index.OpeningView) box.Contents {
	w := wiringOf(v)
	if len(v.Cables) == 0 && len(w.stated) == 0 {
		return nil
	}
	w.stated = smallest(w.stated)
	return w.all(hasClamps(v.Opening))
}

// leastWire is the smallest conductor of a branch circuit of a house, 210.19 (from memory);
// leastWires is the fewest that a cable has.
const (
	leastWire  unit.AWG = 14
	leastWires int      = 2
)

// smallest puts in place of what was seen only in part the least that it may be: two
// conductors of 14 AWG without a ground for a cable of which neither was seen.
func smallest(seen box.Contents) (out box.Contents) {
	for _, i := range seen {
		switch {
		case i.None || i.Size != 0:
		case i.What == box.Cable:
			i = box.Item{What: box.Conductor, Size: leastWire, Times: max(i.Wires, leastWires) * max(i.Times, 1)}
		case i.What == box.Conductor, i.What == box.Through, i.What == box.Loop, i.What == box.Ground:
			i.Size = leastWire
		}
		out = append(out, i)
	}
	return out
}

func hasClamps(o *plan.Opening) bool {
	b, ok, _ := part.Resolve(o.Assembly)
	return ok && b.Box.Clamps
}

// contents is ContentsOf for a box that comes with internal clamps or does not.
func (w wiring) contents(clamps bool) (box.Contents, Source) {
	if !w.source.IsKnown() {
		return nil, w.source
	}
	return w.all(clamps), w.source
}

// wiring is what is known of a box, apart by who told it.
type wiring struct {
	usual  usual
	source Source
	cables box.Contents // drawn
	stated box.Contents // by the user, and not replaced by what is drawn
	wires  box.Contents // assumed by the kind
	yokes  box.Contents // that it must hold, of no size where none is said; none where stated
	own    box.Contents // of its luminaire, but what is stated
}

func wiringOf(v index.OpeningView) wiring {
	o := v.Opening
	u, isKind := usualOf()[o.Kind]
	w := wiring{usual: u, cables: cableItems(o, v.Cables)}
	stated, isStated := statedBy(o)
	isDrawn := len(v.Cables) > 0
	if o.HasOldBox() && (stated.Tells(box.Cable) || stated.Tells(box.Conductor)) {
		// what is in the wall already is among what was found in the box
		w.cables = cableItems(o, slices.DeleteFunc(slices.Clone(v.Cables), func(c *plan.Cable) bool { return c.Existing }))
		isDrawn = len(w.cables) > 0
	}
	w.stated = slices.DeleteFunc(stated, func(i box.Item) bool { return Replaced(v, i) })
	w.own = u.luminaire(w.stated)
	if !w.stated.Tells(box.Device) {
		w.yokes = yokesOf(o)
	}
	switch {
	case o.Contents == nil && isKind && u.isNothing() && (o.HasOldBox() || !isDrawn):
		w.source = NotCounted
	case o.Contents != nil && o.Contents.Source == plan.ContentsInPart:
		w.source = InPart
	case o.Contents != nil && !isStated, !isStated && o.HasOldBox(), !isStated && !isDrawn && !isKind:
		w.source = NotKnown
	case isDrawn && len(w.stated) > 0:
		w.source = DrawnAndStated
	case isDrawn:
		w.source = Drawn
	case isStated:
		w.source = Stated
	default:
		w.source, w.wires = Assumed, u.wires
	}
	return w
}

// rest returns all that is in the box but the cables drawn to it.
func (w wiring) rest(clamps bool) box.Contents { return w.all(clamps)[len(w.cables):] }

// all returns what is in the box, the cables drawn to it first.
func (w wiring) all(clamps bool) box.Contents {
	many := len(w.cables) + len(w.stated) + len(w.wires)
	all := append(make(box.Contents, 0, many+len(w.yokes)+len(w.own)+1), w.cables...)
	all = append(all, w.stated...)
	reach := addReaching(make([]unit.AWG, 0, many), w.cables)
	drawn := reach[:len(reach):len(reach)]
	reach = addReaching(addReaching(reach, w.stated), w.wires)
	if len(drawn) > 0 {
		sizeYokes(all[len(w.cables):], reach, oneOf(drawn), w.usual.wire)
	}
	all = append(all, w.wires...)
	if len(w.yokes) > 0 {
		mayHold := oneOf(addReaching(nil, w.stated))
		switch {
		case len(drawn) > 0:
			mayHold = oneOf(drawn)
		case len(w.wires) > 0:
			mayHold = func(unit.AWG) bool { return true }
		}
		all = append(all, w.yokes...)
		sizeYokes(all[len(all)-len(w.yokes):], reach, mayHold, w.usual.wire)
	}
	all = append(all, w.own...)
	if clamps && !all.Tells(box.Clamps) {
		all = append(all, box.Item{What: box.Clamps})
	}
	return all
}

// oneOf reports whether a size is one of some.
func oneOf(sizes []unit.AWG) func(unit.AWG) bool {
	return func(size unit.AWG) bool { return slices.Contains(sizes, size) }
}

// usual is what a kind of opening assumes: the wires that bring the current, and what
// comes with the luminaire.
type usual struct {
	wires box.Contents
	own   box.Contents
	wire  unit.AWG // of its yoke, where nothing else tells
	yokes int
	// devices are those on its yokes.
	devices []plan.Device
}

func (u usual) isNothing() bool { return len(u.wires)+len(u.own)+u.yokes == 0 }

// luminaire returns what comes with it and is not told of by what is stated. A canopy
// takes volume off the wires: whoever states these without one has said that there is none.
func (u usual) luminaire(stated box.Contents) (items box.Contents) {
	for _, i := range u.own {
		if !stated.Tells(i.What) && (i.What != box.Canopy || !stated.Tells(box.FixtureWire)) {
			items = append(items, i)
		}
	}
	return items
}

// usualOf parts the wiring of each kind of the catalogue, once.
var usualOf = sync.OnceValue(func() map[string]usual {
	all := map[string]usual{}
	for _, k := range part.All().Kinds {
		u := usual{wire: usualWire, yokes: k.Yokes, devices: slices.Repeat([]plan.Device{usualDevice(k)}, max(k.Yokes, 0))}
		for _, i := range k.Wiring {
			switch i.What {
			case box.Device:
				u.wire = i.Size
			case box.FixtureWire, box.Canopy, box.Fitting, box.TerminalBlock:
				u.own = append(u.own, i)
			default:
				u.wires = append(u.wires, i)
			}
		}
		all[k.ID] = u
	}
	return all
})
