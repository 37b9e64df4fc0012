package plan

import (
	"reflect"
	"slices"
)

// Equal reports whether two plans say the same: the same header, levels in the same
// order and nouns of the same IDs with the same fields, what is kept of newer files
// included. Lists and maps with nothing in them equal absent ones. What both share is
// not visited.
func Equal(a, b Plan) bool {
	return sameNoun(a.Header, b.Header) && sameLevels(a.Levels, b.Levels) && sameNoun(a.Extra, b.Extra) &&
		sameSets(holder{&a, nil}, holder{&b, nil})
}

func sameLevels(a, b []*Level) bool { return slices.EqualFunc(a, b, sameLevel) }

func sameLevel(a, b *Level) bool {
	if a == b {
		return true
	}
	return sameNoun(a.bare(), b.bare()) && sameSets(holder{nil, a}, holder{nil, b})
}

// sameSets reports whether all sets that two holders have say the same.
func sameSets(a, b holder) bool {
	return !slices.ContainsFunc(kinds(), func(k kind) bool { return !k.equal(a, b) })
}

func (r *row[N, P]) equal(a, b holder) bool {
	if set := r.in(a); set != nil {
		return sameSet(*set, *r.in(b))
	}
	return true
}

func sameSet[T Noun](a, b Set[T]) bool {
	if a.Len() != b.Len() {
		return false
	}
	var none T
	for _, c := range a.Diff(b) {
		if c.Old == none || c.New == none || !sameNoun(c.Old, c.New) {
			return false
		}
	}
	return true
}

func sameNoun[T any](a, b T) bool { return same(reflect.ValueOf(a), reflect.ValueOf(b)) }

// same is reflect.DeepEqual, but that empty slices and maps equal nil ones.
func same(a, b reflect.Value) bool {
	switch a.Kind() {
	case reflect.Pointer:
		if a.IsNil() || b.IsNil() || a.Pointer() == b.Pointer() {
			return a.Pointer() == b.Pointer()
		}
		return same(a.Elem(), b.Elem())
	case reflect.Struct:
		for i := range a.NumField() {
			if !same(a.Field(i), b.Field(i)) {
				return false
			}
		}
		return true
	case reflect.Slice:
		for i := range min(a.Len(), b.Len()) {
			if !same(a.Index(i), b.Index(i)) {
				return false
			}
		}
		return a.Len() == b.Len()
	case reflect.Map:
		for _, key := range a.MapKeys() {
			if other := b.MapIndex(key); !other.IsValid() || !same(a.MapIndex(key), other) {
				return false
			}
		}
		return a.Len() == b.Len()
	}
	return a.Equal(b)
}

// Tally counts nouns that one plan has and another has not, and those that both have but
// say otherwise.
type Tally struct{ Added, Altered, Gone int }

// IsZero reports whether nothing differs.
func (t Tally) IsZero() bool { return t == Tally{} }

// Difference is how many nouns of two plans differ. A difference of header or levels
// alone is not in it: Equal tells of that.
type Difference struct{ Rooms, Openings, Others Tally }

// Compare counts what is other in a plan than in an older one, by what nouns say: two
// plans read from two files share none.
func Compare(old, now Plan) (d Difference) {
	c := Diff(old, now)
	for _, k := range kinds() {
		k.compare(c, &d)
	}
	return d
}

func (r *row[N, P]) compare(c Changes, d *Difference) {
	t := &d.Others
	if r.counted != nil {
		t = r.counted(d)
	}
	for _, x := range Changed[P](c) {
		count(t, x.Differing)
	}
}

func count[T Noun](t *Tally, c Differing[T]) {
	var none T
	switch {
	case c.Old == none:
		t.Added++
	case c.New == none:
		t.Gone++
	case !sameNoun(c.Old, c.New):
		t.Altered++
	}
}

// Same reports whether two nouns say the same, whether or not they are one value; what is
// kept of newer files counts. Nil is the same as nil alone.
func Same[N any](a, b *N) bool { return sameNoun(a, b) }
