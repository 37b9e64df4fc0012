package plan

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Joists is the framing of a ceiling. The zero value is not known.
type Joists struct {
	Along   ID          `json:"along,omitempty"`   // the side they run beside
	Spacing unit.Length `json:"spacing,omitempty"` // on centre
	First   unit.Length `json:"first,omitempty"`   // centre of the first from that side; 0: one spacing, assumed
	Depth   unit.Length `json:"depth,omitempty"`
	// Places are the joists one by one by their centres, the nearest to that side first, where
	// they were taped or said; none leaves them to the spacing. From version 1.1 on.
	Places []StudPlace `json:"places,omitempty"`
}

// IsZero reports whether nothing is told of the joists.
func (j Joists) IsZero() bool {
	return j.Along == "" && j.Spacing == 0 && j.First == 0 && j.Depth == 0 && len(j.Places) == 0
}

// check reports what is wrong with the joists of a room, which a sentence calls so.
func (j Joists) check(room words.Text) error {
	if err := checkPlaces(room, j.Places); err != nil {
		return In("/places", err)
	}
	return notNegative(room, j.Spacing, j.First, j.Depth)
}
