package plan

import "studbay/plan/words"

// Add adds a noun of any kind. The noun is the plan's from then on: nobody writes to it.
type Add struct {
	Thing Thing
	Level ID // where the noun does not stand on something: a room
}

// Name returns "Add cable" or what else the noun is.
func (e Add) Name() words.Text {
	if k := kindFor(e.Thing); k != nil {
		return k.addTitle(e.Thing)
	}
	return words.New("edit.add", "Add")
}

// Apply fails with ErrTaken where the ID or tag is in use, with ErrGone where the level or
// something the noun names is not in the plan, with ErrNoRoom where it does not fit where
// it should stand, and where it is not sound.
func (e Add) Apply(p Plan) (Plan, error) {
	k := kindFor(e.Thing)
	if k == nil {
		return Plan{}, noNoun()
	}
	l := p.Level(e.Level)
	if e.Level != "" && l == nil {
		return Plan{}, gone(theLevel)
	}
	if err := p.fresh(e.Thing.Key(), k.letter()); err != nil {
		return Plan{}, err
	}
	return k.putIn(p, l, e.Thing)
}

// Change sets all of the noun of any kind that has the ID. The noun is the plan's from
// then on: nobody writes to it.
type Change struct{ Thing Thing }

// Name returns "Change cable" or what else the noun is.
func (e Change) Name() words.Text {
	if k := kindFor(e.Thing); k != nil {
		return k.changeTitle(e.Thing)
	}
	return words.New("edit.change", "Change")
}

// Apply fails with ErrGone where the noun is not in the plan, else as Add does.
func (e Change) Apply(p Plan) (Plan, error) {
	k := kindFor(e.Thing)
	if k == nil {
		return Plan{}, noNoun()
	}
	was, l := p.Find(e.Thing.Key())
	if was == nil || kindFor(was) != k {
		return Plan{}, gone(k.theText())
	}
	return k.putIn(p, l, e.Thing)
}

// noNoun refuses what stands in no set.
func noNoun() error {
	return refuse(nil, "no-noun", "levels and sides are added and changed in ways of their own")
}

// kindFor returns the row of a noun by its type, or nil.
func kindFor(t Thing) kind {
	for _, k := range kinds() {
		if k.isOf(t) {
			return k
		}
	}
	return nil
}

func (r *row[N, P]) isOf(t Thing) bool {
	_, ok := t.(P)
	return ok
}

// putIn returns the plan with a noun in it, where it is sound and fits.
func (r *row[N, P]) putIn(p Plan, l *Level, t Thing) (Plan, error) {
	noun := t.(P)
	if r.put != nil {
		return r.put(p, l, noun)
	}
	if r.level != nil && l == nil {
		return Plan{}, gone(theLevel)
	}
	if err := r.check(noun, around{levelSides{level: l}, p, p.Has}); err != nil {
		return Plan{}, err
	}
	if r.wide != nil {
		set := r.wide(&p)
		*set = set.With(noun)
		return p, nil
	}
	return p.on(l, func(l *Level) {
		set := r.level(l)
		*set = set.With(noun)
	}), nil
}
