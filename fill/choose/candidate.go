package choose

import (
	"slices"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// candidates lists what could be built in at an opening in place of what there is: every
// listed assembly, and every box with the ring that its wall and its gangs ask for. Which of
// them do the work of the opening is not asked yet.
func candidates(p plan.Plan, o *plan.Opening, side *plan.Side, setBack unit.Length) (all []plan.Assembly) {
	add := func(a plan.Assembly) {
		a.Barriers = o.Assembly.Barriers
		a = p.Own(a)
		if _, ok, _ := part.Resolve(a); !ok {
			return
		}
		if !slices.ContainsFunc(all, func(b plan.Assembly) bool { return isSame(a, b) }) {
			all = append(all, a)
		}
	}
	for _, a := range part.All().Assemblies {
		add(plan.Assembly{Code: a.Code})
	}
	for _, b := range part.BoxesIn(p) {
		for _, a := range builtOn(p, b, o, side, setBack) {
			add(a)
		}
	}
	return all
}

// isSame reports whether two assemblies are built of the same things with the same cover
// and count on the same marks.
func isSame(a, b plan.Assembly) bool {
	x, _, _ := part.Resolve(a)
	y, _, _ := part.Resolve(b)
	if x.Box.ID != y.Box.ID || x.Cover != y.Cover || len(x.Adds) != len(y.Adds) {
		return false
	}
	for i := range x.Adds {
		if x.Adds[i].ID != y.Adds[i].ID || x.Adds[i].Gives() != y.Adds[i].Gives() {
			return false
		}
	}
	return true
}

// builtOn returns what an opening could have of one box: bare where it presents the gangs by
// itself, with the rings that end where they may where it takes one.
func builtOn(p plan.Plan, b *part.Box, o *plan.Opening, side *plan.Side, setBack unit.Length) (all []plan.Assembly) {
	want := reference(o)
	if want == nil {
		return nil
	}
	bare := plan.Assembly{Box: b.ID}
	if cover := coverFor(b, want, want.Gangs()); cover != nil {
		bare.Cover = cover.ID
		if b.Gangs == want.Gangs() && !takesRings(b) || want.IsBlank() {
			all = append(all, bare)
		}
	}
	if !takesRings(b) || want.IsBlank() {
		return all
	}
	for _, ring := range ringsFor(p, b, o, want.Gangs(), side, setBack) {
		made := plan.Assembly{Box: b.ID, Parts: []plan.AssemblyPart{{Part: ring.ID}}}
		if cover := coverFor(b, want, ring.Gangs); cover != nil {
			made.Cover = cover.ID
		}
		all = append(all, made)
	}
	return all
}

// takesRings reports whether devices go on a box by a ring alone.
func takesRings(b *part.Box) bool {
	return b.Shape == part.SquareShape || b.Shape == part.LargeSquare
}

// ringsFor returns the rings of a box that end where a wall's finish has them; where none
// does, or nobody tells the finish, the one of the usual board.
func ringsFor(p plan.Plan, b *part.Box, o *plan.Opening, gangs int, side *plan.Side, setBack unit.Length) (rings []*part.Add) {
	var raises []unit.Length
	if side != nil && len(side.Finish) > 0 {
		tried := *o
		tried.Assembly, tried.Gangs = p.Own(plan.Assembly{Box: b.ID}), gangs
		raises = frame.RingsAmong(part.AddsIn(p), &tried, side, setBack)
	}
	if len(raises) == 0 {
		raises = []unit.Length{part.UsualBoard}
	}
	for _, add := range part.AddsIn(p) {
		if add.Kind == part.Ring && add.Gangs == gangs && add.FitsOn(b.Shape) && slices.Contains(raises, add.Raise) {
			rings = append(rings, add)
		}
	}
	return rings
}

// coverFor returns the cover of the kind that an opening has which goes on a box: its own
// where that fits. A light goes on a device box only where its own is one: NEC 314.27(A)(1)
// Exception.
func coverFor(b *part.Box, want *part.Assembly, gangs int) *part.Add {
	if want.Cover == nil || want.FrontKind() == "canopy" && b.Shape == part.DeviceShape && want.Box.Shape != part.DeviceShape {
		return nil
	}
	if want.Cover.FitsOn(b.Shape) && (want.Cover.Gangs == gangs || want.Cover.Gangs == 0) {
		return want.Cover
	}
	for _, add := range part.All().Plates() {
		if add.FitsOn(b.Shape) && (add.Gangs == gangs || add.Gangs == 0) &&
			(&part.Assembly{Box: b, Cover: add}).FrontKind() == want.FrontKind() {
			return add
		}
	}
	return nil
}

// reference returns the assembly whose work is to be done: the kind's own where it has as
// many gangs as the opening, else what is built in; nil where neither is known.
func reference(o *plan.Opening) *part.Assembly {
	var usual *part.Assembly
	if k := part.All().Kind(o.Kind); k != nil {
		usual = k.Assembly
	}
	b, ok, _ := part.Resolve(o.Assembly)
	switch {
	case usual != nil && (!ok || usual.Gangs() == o.Gangs):
		return usual
	case ok:
		return b.Assembly
	}
	return nil
}
