package plan

import (
	"iter"

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

	addTitle(Thing) words.Text
	changeTitle(Thing) words.Text
	removeTitle() words.Text
	theText() words.Text
	textOf(Thing) words.Text
	tagOf(Thing) string
	holds() bool

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

// kindOf returns the row of an ID, or nil for what stands in no set: levels, sides and
// what is no ID.
func kindOf(id ID) kind {
	for _, k := range kinds() {
		if k.letter() == id.Kind() {
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

func (r *row[N, P]) textOf(t Thing) words.Text {
	if r.text == nil {
		return r.the
	}
	return r.text(t.(P))
}

func (r *row[N, P]) tagOf(t Thing) string {
	if r.tag == nil {
		return ""
	}
	return r.tag(t.(P))
}
