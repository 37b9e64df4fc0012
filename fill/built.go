package fill

import (
	"studbay/fill/box"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Built is an opening's assembly resolved against the catalogue: the recipe with the
// marks the user read off the things, and the barriers.
type Built struct {
	*part.Assembly
	// Code is the listed assembly's, or empty for one put together by hand.
	Code     string
	Barriers []box.Barrier
}

// UnresolvedError says why an assembly is not understood.
type UnresolvedError struct{ Why words.Text }

func (e *UnresolvedError) Error() string { return e.Why.String() }

func unresolved(why words.Text) error { return &UnresolvedError{why} }

// BuiltOf resolves an assembly. It reports false where none is chosen, and fails with
// an *UnresolvedError where it names a box or part that the catalogue has not, or one
// that does not fit.
func BuiltOf(a plan.Assembly) (b Built, ok bool, err error) {
	all := part.All()
	switch {
	case a.Box != "":
		b.Assembly, err = byHand(all, a)
	case a.Code != "":
		b.Code = a.Code
		if b.Assembly = all.Assembly(a.Code); b.Assembly == nil {
			err = unresolved(words.New("built.no-code", "assembly \"{0}\" is not in the catalogue", a.Code))
		}
	default:
		return Built{}, false, nil
	}
	if err != nil {
		return Built{}, false, err
	}
	for _, text := range a.Barriers {
		barrier, err := box.ParseBarrier(text)
		if err != nil {
			return Built{}, false, unresolved(words.New("built.no-barrier", "\"{0}\" is no barrier: it is metal or nonmetallic", text))
		}
		b.Barriers = append(b.Barriers, barrier)
	}
	return b, true, nil
}

// byHand puts a recipe together from the parts that an assembly names. What does not go
// on the box is refused: its volume would be counted for a box it cannot be part of.
func byHand(all *part.Catalogue, a plan.Assembly) (*part.Assembly, error) {
	found := all.Box(a.Box)
	if found == nil {
		return nil, unresolved(words.New("built.no-box", "box \"{0}\" is not in the catalogue", a.Box))
	}
	recipe := &part.Assembly{Code: a.Code, Name: found.Name, Box: found}
	if a.Marked != nil {
		marked := *found
		marked.Volume, marked.Basis = *a.Marked, part.ByMark
		recipe.Box = &marked
	}
	for _, p := range a.Parts {
		add := all.Add(p.Part)
		if add == nil {
			return nil, unresolved(words.New("built.no-part", "part \"{0}\" is not in the catalogue", p.Part))
		}
		if !add.FitsOn(found.Shape) {
			return nil, unresolved(words.New("built.no-fit", "{0} does not go on {1}", add.Text(), found.Text()))
		}
		added := part.Added{Add: add}
		if p.Marked != nil {
			added.Marked = *p.Marked
		}
		recipe.Adds = append(recipe.Adds, added)
	}
	if a.Cover != "" {
		if recipe.Cover = all.Add(a.Cover); recipe.Cover == nil {
			return nil, unresolved(words.New("built.no-cover", "cover \"{0}\" is not in the catalogue", a.Cover))
		}
	}
	return recipe, nil
}

// Space returns the assembly as box fill reads it.
func (b Built) Space() box.Space {
	s := b.Assembly.Space()
	s.Barriers = b.Barriers
	return s
}

// BoxSize returns the outer width and height of an opening's box as one looks at it,
// those of a usual nail-on box where it is not known (common practice).
func BoxSize(o *plan.Opening) (width, height unit.Length) {
	if b := boxOf(o.Assembly); b != nil && b.Width != 0 {
		return b.Width, b.Height
	}
	gangs := unit.Length(max(o.Gangs, 1))
	return oneGangWidth + (gangs-1)*gangStep, nailOnHeight
}

// boxOf returns the box of an assembly, or nil.
func boxOf(a plan.Assembly) *part.Box {
	if a.Box != "" {
		return part.All().Box(a.Box)
	}
	if listed := part.All().Assembly(a.Code); listed != nil {
		return listed.Box
	}
	return nil
}

// The outside of a usual nail-on box and the step from one device to the next
// (common practice; the step is that of standard plates).
const (
	oneGangWidth = 2*unit.Inch + 5*unit.Inch/16
	nailOnHeight = 3*unit.Inch + 3*unit.Inch/4
	gangStep     = unit.Inch + 13*unit.Inch/16
)

// CentreHeight returns the height of an opening's centre above the finished floor of
// its room.
func CentreHeight(o *plan.Opening, room *plan.Room) unit.Length {
	_, height := BoxSize(o)
	var floor unit.Length
	if room != nil {
		floor = room.FloorThickness()
	}
	return o.Height.Centre(height, floor)
}
