package plan

// AnySet is a *Set whose noun is not known where it is used: by what reads and writes
// plans by reflection.
type AnySet interface {
	// NewRows returns the address of an empty slice of the set's nouns.
	NewRows() any
	// Fill makes the set hold the nouns of such a slice. It changes nothing and returns
	// the place of the second where two share an ID, else −1.
	Fill(rows any) (twice int)
	// Each gives the nouns in the order of their IDs.
	Each(do func(Thing))
}

// NewRows returns a *[]T.
func (s *Set[T]) NewRows() any { return new([]T) }

// Fill takes a *[]T, none of them nil.
func (s *Set[T]) Fill(rows any) (twice int) {
	nouns := *rows.(*[]T)
	if filled, err := NewSet(nouns...); err == nil {
		*s = filled
		return -1
	}
	seen := make(map[ID]bool, len(nouns))
	for i, n := range nouns {
		if seen[n.Key()] {
			return i
		}
		seen[n.Key()] = true
	}
	panic("plan: a set refuses nouns of distinct IDs")
}

// Each gives each noun as a Thing.
func (s *Set[T]) Each(do func(Thing)) {
	for noun := range s.All() {
		do(any(noun).(Thing))
	}
}
