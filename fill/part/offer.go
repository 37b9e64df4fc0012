package part

import (
	"cmp"
	"slices"

	"studbay/plan"
)

// AssembliesOf returns the listed assemblies of so many gangs, and the one of a code
// whatever its gangs.
func (c *Catalogue) AssembliesOf(gangs int, code string) (all []*Assembly) {
	for _, a := range c.Assemblies {
		if a.Gangs() == gangs || a.Code == code {
			all = append(all, a)
		}
	}
	return all
}

// AddsOn returns what of a plan goes on the box of an assembly but plates; nothing where the
// box is not known.
func AddsOn(p plan.Plan, a plan.Assembly) (all []*Add) {
	at, _ := Known(a)
	for _, add := range AddsIn(p) {
		if at != nil && add.Kind != Plate && add.FitsOn(at.Shape) {
			all = append(all, add)
		}
	}
	return all
}

// Plates returns what covers a box in the finish.
func (c *Catalogue) Plates() (all []*Add) {
	for _, add := range c.Adds {
		if add.Kind == Plate {
			all = append(all, add)
		}
	}
	return all
}

// Devices returns what the kinds of opening have on their yokes, by name, and those that
// are there too, known or not.
func (c *Catalogue) Devices(also ...string) (names []string) {
	for _, k := range c.Kinds {
		if k.Device != "" && !slices.Contains(names, k.Device) {
			names = append(names, k.Device)
		}
	}
	slices.Sort(names)
	for _, name := range also {
		if name != "" && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// IsSwitch reports whether a device is what a kind of switch has on its yokes.
func (c *Catalogue) IsSwitch(device string) bool {
	return slices.ContainsFunc(c.Kinds, func(k *Kind) bool { return k.Family == Switch && k.Device == device })
}

// SwitchesOrLoads returns the openings of a plan that are switches, or those that a switch
// may serve, by their tags.
func SwitchesOrLoads(p plan.Plan, switches bool) (all []*plan.Opening) {
	for _, o := range p.Openings() {
		if k := All().Kind(o.Kind); k != nil && (k.Family == Switch) == switches {
			all = append(all, o)
		}
	}
	slices.SortFunc(all, func(a, b *plan.Opening) int {
		return cmp.Or(cmp.Compare(len(a.Tag), len(b.Tag)), cmp.Compare(a.Tag, b.Tag))
	})
	return all
}
