// Package plantest makes plans and edits for tests: Random and Edit draw them from a
// property test, House builds one of any size that is the same each time.
//
// All plans it makes pass plan.Check. They are for tests alone: rooms stand in a grid,
// and no one would live there.
package plantest

import (
	"math/rand/v2"

	"studbay/plan"
)

// IDs gives out IDs in a row that is the same each time for the same number.
type IDs struct{ random *rand.ChaCha8 }

// NewIDs begins a row of IDs.
func NewIDs(number uint64) *IDs {
	var key [32]byte
	for i := range 8 {
		key[i] = byte(number >> (8 * i))
	}
	return &IDs{rand.NewChaCha8(key)}
}

// New returns the next ID, of a kind.
func (ids *IDs) New(kind byte) plan.ID {
	id, err := plan.NewID(kind, ids.random)
	if err != nil {
		panic(err) // ChaCha8 never fails
	}
	return id
}

// Row returns the next n IDs of a kind.
func (ids *IDs) Row(kind byte, n int) []plan.ID {
	row := make([]plan.ID, n)
	for i := range row {
		row[i] = ids.New(kind)
	}
	return row
}

func set[T plan.Noun](nouns []T) plan.Set[T] {
	s, err := plan.NewSet(nouns...)
	if err != nil {
		panic(err) // two IDs in a row of some thousands are never the same
	}
	return s
}
