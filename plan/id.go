package plan

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"studbay/plan/set"
)

// ID names one noun of a plan: a kind letter and eight base-32 characters, such as
// "r7k2m9q4a". IDs are random so that the files of two people merge. The empty ID
// names nothing.
type ID string

// The kind letters of IDs.
const (
	KindLevel     = 'v'
	KindRoom      = 'r'
	KindSide      = 's'
	KindBreak     = 'b'
	KindFixture   = 'f'
	KindOpening   = 'o'
	KindCable     = 'c'
	KindCircuit   = 'k'
	KindControl   = 't'
	KindDecision  = 'd'
	KindWaiver    = 'w'
	KindAmendment = 'a'
	KindPair      = 'p'
	KindWish      = 'q'
	KindTick      = 'x'
	KindOwn       = 'y'
)

// idLetters leaves out l, o, 0 and 1, which are mistaken for one another on paper.
const idLetters = "abcdefghijkmnpqrstuvwxyz23456789"

const idLength = 9

// NewID makes an ID of a kind from eight bytes of random. It fails where random does.
func NewID(kind byte, random io.Reader) (ID, error) {
	var raw [idLength - 1]byte
	if _, err := io.ReadFull(random, raw[:]); err != nil {
		return "", fmt.Errorf("make an id: %w", err)
	}
	out := [idLength]byte{kind}
	for i, b := range raw {
		out[i+1] = idLetters[int(b)%len(idLetters)]
	}
	return ID(out[:]), nil
}

// Kind returns the kind letter, or 0 for the empty ID.
func (id ID) Kind() byte {
	if id == "" {
		return 0
	}
	return id[0]
}

// Check reports why id is not a well-formed ID of the kind.
func (id ID) Check(kind byte) error {
	if !id.begins(kind) {
		return fmt.Errorf("id %q is not %q and eight characters", string(id), string(kind))
	}
	if i := id.wrongAt(); i < idLength {
		return fmt.Errorf("id %q: character %q is none of %s", string(id), id[i], idLetters)
	}
	return nil
}

// isOf reports whether Check would find nothing wrong.
func (id ID) isOf(kind byte) bool { return id.begins(kind) && id.wrongAt() == idLength }

// begins reports whether an ID is as long as one is and of the kind.
func (id ID) begins(kind byte) bool { return len(id) == idLength && id[0] == kind }

// wrongAt returns where the first character stands that no ID of the length has.
func (id ID) wrongAt() int {
	for i := 1; i < idLength; i++ {
		if strings.IndexByte(idLetters, id[i]) < 0 {
			return i
		}
	}
	return idLength
}

// Noun is what a Set holds: a pointer never written after it is in a plan.
type Noun interface {
	comparable
	Key() ID
}

// Set is an immutable set of nouns in the order of their IDs.
type Set[T Noun] = set.Set[ID, T]

// Differing is one noun before and after: Old is nil where it was added, New where it was
// removed.
type Differing[T Noun] = set.Differing[ID, T]

// ErrTwice is returned where two nouns of a set share an ID.
var ErrTwice = set.ErrTwice

// NewSet returns a set of the nouns in any order. It fails with ErrTwice where two share an
// ID, and where one is nil.
func NewSet[T Noun](nouns ...T) (Set[T], error) { return set.New[ID](nouns...) }

// Distinct lists each ID once, where it stands first.
func Distinct(ids []ID) (all []ID) {
	for _, id := range ids {
		if !slices.Contains(all, id) {
			all = append(all, id)
		}
	}
	return all
}
