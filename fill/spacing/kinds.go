package spacing

import "studbay/fill/part"

// The kinds that remedies add.
const (
	kindWallReceptacle  = "duplex"
	kindFloorReceptacle = "floor"
)

// kindCounts reports whether a kind is a receptacle that can count for wall spacing.
// An unknown kind cannot.
func kindCounts(id string) bool {
	k := part.All().Kind(id)
	return k != nil && k.Spacing
}

func kindWhollySwitched(id string) bool {
	k := part.All().Kind(id)
	return k != nil && k.Switched == part.WhollySwitched
}
