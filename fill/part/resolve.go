package part

import (
	"sync"

	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/words"
)

// Resolved is an opening's assembly resolved against the catalogue: the recipe with the
// marks the user read off the things, and the barriers.
type Resolved struct {
	*Assembly
	// Code is the listed assembly's, or empty for one put together by hand.
	Code     string
	Barriers []box.Barrier
}

// UnresolvedError says why an assembly is not understood.
type UnresolvedError struct{ Why words.Text }

func (e *UnresolvedError) Error() string { return e.Why.String() }

func unresolved(why words.Text) error { return &UnresolvedError{why} }

// Resolve resolves an assembly. It reports false where none is chosen, and false with an
// *UnresolvedError where it names a box or part that the catalogue has not, or one that
// does not fit.
func Resolve(a plan.Assembly) (b Resolved, ok bool, err error) {
	all := All()
	switch {
	case a.Box != "":
		b.Assembly, err = all.hand.of(a, func() (*Assembly, error) { return byHand(all, a) })
	case a.Code != "":
		b.Code = a.Code
		if b.Assembly = all.Assembly(a.Code); b.Assembly == nil {
			err = unresolved(words.New("built.no-code", "box type \"{0}\" is not in the catalog", a.Code))
		}
	default:
		return Resolved{}, false, nil
	}
	if err != nil {
		return Resolved{}, false, err
	}
	for _, text := range a.Barriers {
		barrier, err := box.ParseBarrier(text)
		if err != nil {
			return Resolved{}, false, unresolved(words.New("built.no-barrier", "\"{0}\" is not a barrier: it is metal or nonmetallic", text))
		}
		b.Barriers = append(b.Barriers, barrier)
	}
	return b, true, nil
}

// byHands keeps the recipes put together by hand of a listed box and cover alone: thousands
// of openings have the same, and each is asked for by one rule after another.
type byHands struct {
	sync.RWMutex
	made map[hand]*Assembly
}

// hand is what such a recipe is put together from, each a name of the catalogue.
type hand struct{ code, box, cover string }

// of returns the recipe of an assembly, made once where it is of a listed box and cover.
// Callers must not write to it.
func (h *byHands) of(a plan.Assembly, put func() (*Assembly, error)) (*Assembly, error) {
	if a.Marked != nil || len(a.Parts)+len(a.Owned) > 0 || a.Code != "" && All().Assembly(a.Code) == nil {
		return put()
	}
	key := hand{a.Code, a.Box, a.Cover}
	h.RLock()
	made := h.made[key]
	h.RUnlock()
	if made != nil {
		return made, nil
	}
	made, err := put()
	if err == nil {
		h.Lock()
		defer h.Unlock()
		if h.made == nil {
			h.made = map[hand]*Assembly{}
		}
		h.made[key] = made
	}
	return made, err
}

// byHand puts a recipe together from the parts that an assembly names. What does not go
// on the box is refused: its volume would be counted for a box it cannot be part of.
func byHand(all *Catalogue, a plan.Assembly) (*Assembly, error) {
	found := boxNamed(a)
	if found == nil {
		return nil, unresolved(words.New("built.no-box", "box \"{0}\" is not in the catalog", a.Box))
	}
	recipe := &Assembly{Code: a.Code, Name: found.Name, Box: found}
	if a.Marked != nil {
		marked := *found
		marked.Volume, marked.Basis, marked.FromMemory = *a.Marked, ByMark, false
		recipe.Box = &marked
	}
	for _, p := range a.Parts {
		add := AddNamed(a, p.Part)
		if add == nil {
			return nil, unresolved(words.New("built.no-part", "part \"{0}\" is not in the catalog", p.Part))
		}
		if !add.FitsOn(found.Shape) {
			return nil, unresolved(words.New("built.no-fit", "{0} does not go on {1}", add.Text(), found.Text()))
		}
		added := Added{Add: add}
		if x := a.Owned.Get(p.Part); p.Marked != nil {
			added.Marked = *p.Marked
		} else if x != nil {
			added.FromMemory = x.From == plan.VolumeMemory
		}
		recipe.Adds = append(recipe.Adds, added)
	}
	if a.Cover != "" {
		if recipe.Cover = all.Add(a.Cover); recipe.Cover == nil {
			return nil, unresolved(words.New("built.no-cover", "cover \"{0}\" is not in the catalog", a.Cover))
		}
	}
	return recipe, nil
}

// IsParted reports whether barriers part the box into spaces.
func (b Resolved) IsParted() bool { return len(b.Barriers) > 0 }

// Space returns the assembly as box fill reads it.
func (b Resolved) Space() box.Space {
	s := b.Assembly.Space()
	s.Barriers = b.Barriers
	return s
}
