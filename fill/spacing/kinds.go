package spacing

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
)

// The kinds that remedies add.
const (
	kindWallReceptacle  = "duplex"
	kindFloorReceptacle = "floor"
	kindAboveCounter    = "counter"
	kindIsland          = "island"
)

// kindCounts reports whether a kind is a receptacle that can count for wall spacing in a
// room. An unknown kind cannot; one above a counter does where the counter rule is not.
func kindCounts(id string, use plan.Use) bool {
	k := part.All().Kind(id)
	return k != nil && (k.Spacing || id == kindAboveCounter && !slices.Contains(counterUses, use))
}

// usualDevice is what is on the yoke of a kind of the catalogue.
func usualDevice(id string) string {
	if k := part.All().Kind(id); k != nil {
		return k.Device
	}
	return ""
}

func kindWhollySwitched(id string) bool {
	k := part.All().Kind(id)
	return k != nil && k.Switched == part.WhollySwitched
}
