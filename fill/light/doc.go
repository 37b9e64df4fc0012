// Package light holds the rules on lights and switches: where they are asked for, where
// they may not be, and from where they are put on.
package light

import (
	"studbay/fill/part"
	"studbay/plan"
)

// isLight reports whether an opening is a light that will be there.
func isLight(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && o.IsInUse() && (k.Family == part.Light || k.ID == kindFanLight)
}

// isSwitch reports whether an opening is a switch that will be there.
func isSwitch(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && o.IsInUse() && k.Family == part.Switch
}

// The kinds that the rules tell apart.
const (
	kindFanLight = "fan-light"
	kindPendant  = "pendant"
	kindRecessed = "recessed"
	kindSensor   = "sensor"
)
