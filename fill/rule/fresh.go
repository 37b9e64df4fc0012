package rule

import (
	"crypto/sha256"
	"encoding/binary"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/edit"
)

// AddFresh adds an opening. A check sees one scope and cannot know the IDs of the others:
// where the opening's is taken, one that follows from it is given, the same each time. In a
// wall that stays closed it gets an old-work box.
type AddFresh struct{ edit.AddOpening }

// Apply fails as AddOpening does, but not for the ID.
func (e AddFresh) Apply(p plan.Plan) (plan.Plan, error) {
	e.Opening = place.ForWall(p, e.Opening)
	for {
		if taken, _ := p.Opening(e.Opening.ID); taken == nil {
			return e.AddOpening.Apply(p)
		}
		e.Opening.ID = NewIDs([]byte(e.Opening.ID)).Next()
	}
}

// IDs makes IDs of openings that depend on a seed alone, so that a check gives the same
// remedy each time, and another once it was taken.
type IDs struct {
	seed  [sha256.Size]byte
	count uint64
}

// NewIDs returns the IDs of a seed.
func NewIDs(seed []byte) *IDs { return &IDs{seed: sha256.Sum256(seed)} }

// IDsFor returns IDs that follow from what a view shows and from what they are for.
func IDsFor(parts []any, what ...string) *IDs {
	var seed []byte
	for _, w := range what {
		seed = append(seed, w...)
	}
	for _, p := range parts {
		if o, ok := p.(*plan.Opening); ok && o != nil {
			seed = append(seed, o.ID...)
		}
	}
	return NewIDs(seed)
}

// Read gives eight bytes of the source at a time.
func (s *IDs) Read(p []byte) (int, error) {
	s.count++
	block := sha256.Sum256(binary.BigEndian.AppendUint64(s.seed[:], s.count))
	return copy(p, block[:]), nil
}

// Next returns the next ID.
func (s *IDs) Next() plan.ID {
	id, _ := plan.NewID(plan.KindOpening, s) // its reader never fails
	return id
}

// Add is the edit that adds an opening, fresh.
func Add(o plan.Opening) AddFresh { return AddFresh{edit.AddOpening{Opening: o}} }
