package sheet

import (
	"slices"
	"strings"

	"studbay/plan/words"
)

// Reader is whom a set is for. It chooses the pages; the zero value is all.
type Reader string

// The readers, as a user types them.
const (
	ForAll       Reader = "all"
	ForCrew      Reader = "crew"
	ForDrywall   Reader = "drywall"
	ForInspector Reader = "inspector"
	ForSupplier  Reader = "supplier"
	ForClient    Reader = "client"
)

// Readers lists them in the order help does.
var Readers = []Reader{ForCrew, ForDrywall, ForInspector, ForSupplier, ForClient, ForAll}

// Text says whom a set is for as a choice does.
func (r Reader) Text() words.Text {
	switch r {
	case ForCrew:
		return words.New("reader.crew", "the crew")
	case ForDrywall:
		return words.New("reader.drywall", "the drywaller")
	case ForInspector:
		return words.New("reader.inspector", "the inspector")
	case ForSupplier:
		return words.New("reader.supplier", "the supplier")
	case ForClient:
		return words.New("reader.client", "the client")
	}
	return words.New("reader.all", "everybody: all sheets")
}

// ReaderNamed returns the reader of a name. The error lists them all.
func ReaderNamed(name string) (Reader, error) {
	if r := Reader(strings.ToLower(name)); slices.Contains(Readers, r) {
		return r, nil
	}
	return "", words.Fault("sheet.no-reader", "nobody of the name \"{0}\"; there are {1}", name, strings.Join(ReaderNames(), ", "))
}

// ReaderNames lists what a user types.
func ReaderNames() (names []string) {
	for _, r := range Readers {
		names = append(names, string(r))
	}
	return names
}

// reads reports whether a kind of page is for a reader; a page for nobody named is for all.
func (r Reader) reads(by []Reader) bool {
	return r == "" || r == ForAll || slices.Contains(by, r)
}
