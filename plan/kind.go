package plan

import (
	"iter"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// kind is a row whose type of noun is not known. Its methods stand with what they are
// for.
type kind interface {
	letter() byte
	// setIn returns the address of the kind's set, or nil where the holder has none.
	setIn(holder) any
	get(holder, ID) (Thing, bool)
	things(holder) iter.Seq[Thing]
	partsOf(Thing) []ID
	isOf(Thing) bool
	size(holder) int
	empty(holder)

	addTitle(Thing) words.Text
	changeTitle(Thing) words.Text
	removeTitle() words.Text
	theText() words.Text
	textOf(Thing) words.Text
	tagOf(Thing) string
	hasTag() bool
	holds() bool
	stays() bool

	equal(a, b holder) bool
	diff([]pair) changesOfKind
	changed(Changes) iter.Seq2[Thing, Thing]
	compare(Changes, *Difference)

	gather(c *checker, h holder, path string) error
	checkAll(c *checker, h holder, path string, a around) error

	hang(*Plan, doomed) bool
	follow(*Plan, doomed) bool
	forget(h holder, d doomed, tags *[]string) bool
	rename(h holder, from, to ID) bool
	naming(*Plan, ID) []ID
	stands() bool
	anchorOf(Thing) *Anchor
	widthOf(Thing) unit.Length
	fromOf(Thing) *ID
	copied(Thing) Thing
	like(Thing, ID, references) Thing
	take(*Level, Thing)
	join(*Level, Thing)
	rehang(*Level, Thing, func(Anchor, unit.Length) Anchor)
	checkHanging([]Thing, around) error

	putIn(Plan, *Level, Thing) (Plan, error)
}

// holder is what holds sets: a plan, or one of its levels.
type holder struct {
	plan  *Plan
	level *Level // nil: the plan itself
}

// holders returns the levels of a plan and the plan itself, which names things on them.
func (p *Plan) holders() []holder {
	all := make([]holder, 0, len(p.Levels)+1)
	for _, l := range p.Levels {
		all = append(all, holder{p, l})
	}
	return append(all, holder{p, nil})
}

// kindOf returns the row of a kind letter, or nil for what stands in no set: levels, sides
// and what is no letter of ours.
func kindOf(letter byte) kind {
	for _, k := range kinds() {
		if k.letter() == letter {
			return k
		}
	}
	return nil
}

func (r *row[N, P]) letter() byte { return r.kind }

// in returns the address of the kind's set, or nil where the holder has none.
func (r *row[N, P]) in(h holder) *Set[P] {
	switch {
	case h.level != nil && r.level != nil:
		return r.level(h.level)
	case h.level == nil && r.wide != nil:
		return r.wide(h.plan)
	}
	return nil
}

func (r *row[N, P]) setIn(h holder) any {
	if set := r.in(h); set != nil {
		return set
	}
	return nil
}

func (r *row[N, P]) get(h holder, id ID) (Thing, bool) {
	set := r.in(h)
	if set == nil {
		return nil, false
	}
	return set.Get(id)
}

func (r *row[N, P]) things(h holder) iter.Seq[Thing] {
	return func(yield func(Thing) bool) {
		set := r.in(h)
		if set == nil {
			return
		}
		for noun := range set.All() {
			if !yield(Thing(noun)) {
				return
			}
		}
	}
}

func (r *row[N, P]) size(h holder) int {
	if set := r.in(h); set != nil {
		return set.Len()
	}
	return 0
}

// empty takes all of the kind out of a holder.
func (r *row[N, P]) empty(h holder) {
	if set := r.in(h); set != nil {
		*set = Set[P]{}
	}
}

func (r *row[N, P]) partsOf(t Thing) (ids []ID) {
	if r.parts != nil {
		r.parts(t.(P), func(_ string, id ID) { ids = append(ids, id) })
	}
	return ids
}

func (r *row[N, P]) addTitle(t Thing) words.Text    { return r.add(t.(P)) }
func (r *row[N, P]) changeTitle(t Thing) words.Text { return r.change(t.(P)) }
func (r *row[N, P]) removeTitle() words.Text        { return r.remove }
func (r *row[N, P]) theText() words.Text            { return r.the }
func (r *row[N, P]) holds() bool                    { return r.isHeld }
func (r *row[N, P]) stays() bool                    { return r.staysInUse }

func (r *row[N, P]) textOf(t Thing) words.Text {
	if r.text == nil {
		return r.the
	}
	return r.text(t.(P))
}

func (r *row[N, P]) hasTag() bool { return r.tag != nil }

func (r *row[N, P]) tagOf(t Thing) string {
	if r.tag == nil {
		return ""
	}
	return *r.tag(t.(P))
}

// noNoun refuses what stands in no set.
func noNoun() error {
	return Refuse(nil, "no-noun", "levels and sides are added and changed in ways of their own")
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

// Kinds returns the letters of the kinds of thing that a user can choose: of the nouns in
// the order of their table, then of sides and levels, which stand in no set.
func Kinds() (letters []byte) {
	for _, k := range kinds() {
		letters = append(letters, k.letter())
	}
	return append(letters, KindSide, KindLevel)
}

// KindOf returns the kind letter of a noun. It fails for what stands in no set.
func KindOf(t Thing) (byte, error) {
	if k := kindFor(t); k != nil {
		return k.letter(), nil
	}
	return 0, noNoun()
}

// With returns the plan with a noun in it, in place of the one with its ID: on the level
// given where it stands on nothing, else where its anchor says. It fails where the noun is
// not sound, names what is not in the plan, or does not fit where it should stand. The
// noun is the plan's from then on: nobody writes to it. Where it is in a pair, or a pair is
// about it, the pair is kept.
func (p Plan) With(l *Level, t Thing) (Plan, error) {
	k := kindFor(t)
	if k == nil {
		return Plan{}, noNoun()
	}
	next, err := k.putIn(p, l, t)
	if err != nil {
		return Plan{}, err
	}
	return next.withPairsKept(p, t)
}

// AddName names the edit that adds a noun: "Add cable".
func AddName(t Thing) words.Text {
	if k := kindFor(t); k != nil {
		return k.addTitle(t)
	}
	return words.New("edit.add", "Add")
}

// ChangeName names an edit that changes a noun: "Change cable".
func ChangeName(t Thing) words.Text {
	if k := kindFor(t); k != nil {
		return k.changeTitle(t)
	}
	return words.New("edit.change", "Change")
}

// RemoveName names the edit that takes a noun of a kind out: "Remove cable".
func RemoveName(kind byte) words.Text {
	if k := kindOf(kind); k != nil {
		return k.removeTitle()
	}
	return words.New("edit.remove", "Delete")
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
		return Plan{}, Gone(KindLevel)
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
