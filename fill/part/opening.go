package part

import (
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// NewOpening returns an opening as its kind starts out in a plan of the units: usual
// height, gangs, assembly. It has no ID and no tag yet. An unknown kind gives a bare one-gang opening.
func NewOpening(units unit.System, kind string, at plan.Anchor) plan.Opening {
	o := plan.Opening{Kind: kind, At: at, Gangs: 1, Status: plan.StatusNew}
	k := All().Kind(kind)
	if k == nil {
		return o
	}
	o.Gangs = k.Gangs
	if at.Part != plan.PartCeiling && at.Part != plan.PartFloor && at.Part != plan.PartTop {
		o.Height = plan.CentreAt(k.UsualHeight(units))
	}
	if k.Assembly != nil {
		o.Assembly = plan.Assembly{Code: k.Assembly.Code}
	}
	return o
}

// ToKind is the edit that makes an opening one of another kind, as that starts out.
func ToKind(o *plan.Opening, kind string) edit.ChangeKind {
	fresh := NewOpening(unit.Imperial, kind, o.At) // the units tell of the height alone, which stays
	return edit.ChangeKind{ID: o.ID, Kind: kind, Gangs: fresh.Gangs, Assembly: fresh.Assembly}
}

// DevicesOn lists what is mounted in or on the box of an opening: as the plan says, else the
// device of its kind.
func DevicesOn(o *plan.Opening) []plan.Device {
	if k := All().Kind(o.Kind); len(o.Devices) == 0 && k != nil && k.Device != "" {
		return []plan.Device{{Kind: k.Device}}
	}
	return o.Devices
}

// DeviceKinds lists the kinds of DevicesOn.
func DeviceKinds(o *plan.Opening) (kinds []string) {
	for _, d := range DevicesOn(o) {
		kinds = append(kinds, d.Kind)
	}
	return kinds
}

// What serves a light together with other switches: a three-way at either end, a four-way
// between. Common practice.
const (
	ThreeWay = "three-way switch"
	FourWay  = "four-way switch"
)

// IsOneOfSeveral reports whether what is in an opening serves a light together with switches
// in others.
func IsOneOfSeveral(o *plan.Opening) bool {
	return slices.ContainsFunc(DeviceKinds(o), func(kind string) bool { return kind == ThreeWay || kind == FourWay })
}

// HangsLight reports whether an opening is a light that hangs from a box, or stands on one.
func HangsLight(o *plan.Opening) bool {
	k := All().Kind(o.Kind)
	return k != nil && k.Family == Light
}

// HangsFan reports whether a ceiling fan hangs from the box of an opening.
func HangsFan(o *plan.Opening) bool {
	return slices.ContainsFunc(DeviceKinds(o), func(kind string) bool { return All().Device(kind).IsFan })
}
