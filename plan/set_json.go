package plan

import (
	"slices"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// MarshalJSONTo writes the nouns as an array in the order of their IDs.
func (s Set[T]) MarshalJSONTo(to *jsontext.Encoder) error {
	return json.MarshalEncode(to, slices.AppendSeq(make([]T, 0, s.n), s.All()))
}

// UnmarshalJSONFrom reads an array of nouns. It fails with ErrTwice where two share an ID.
func (s *Set[T]) UnmarshalJSONFrom(from *jsontext.Decoder) error {
	var nouns []T
	if err := json.UnmarshalDecode(from, &nouns); err != nil {
		return err
	}
	set, err := NewSet(nouns...)
	*s = set
	return err
}
