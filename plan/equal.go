package plan

import "reflect"

// Equal reports whether two plans say the same: the same header, levels in the same
// order and nouns of the same IDs with the same fields, what is kept of newer files
// included. Lists and maps with nothing in them equal absent ones. What both share is
// not visited.
func Equal(a, b Plan) bool {
	return sameNoun(a.Header, b.Header) && sameLevels(a.Levels, b.Levels) && sameNoun(a.Extra, b.Extra) &&
		sameSet(a.Circuits, b.Circuits) && sameSet(a.Cables, b.Cables) &&
		sameSet(a.Controls, b.Controls) && sameSet(a.Decisions, b.Decisions) &&
		sameSet(a.Waivers, b.Waivers) && sameSet(a.Amendments, b.Amendments)
}

func sameLevels(a, b []*Level) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !sameLevel(a[i], b[i]) {
			return false
		}
	}
	return true
}

func sameLevel(a, b *Level) bool {
	if a == b {
		return true
	}
	return a.ID == b.ID && a.Name == b.Name && a.Elevation == b.Elevation &&
		same(reflect.ValueOf(a.Extra), reflect.ValueOf(b.Extra)) &&
		sameSet(a.Rooms, b.Rooms) && sameSet(a.Breaks, b.Breaks) &&
		sameSet(a.Fixtures, b.Fixtures) && sameSet(a.Openings, b.Openings)
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
