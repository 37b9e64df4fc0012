package render

import (
	"fmt"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// SymbolRef says how the items of a piece were drawn, for a cache of sprites: two of
// one Key differ by the place of their foot alone.
type SymbolRef struct {
	Specs []symbol.Spec // openings at one foot, the lowest first
	IDs   []plan.ID     // of these openings
	Place symbol.Place
	Style symbol.Style
}

// Key tells apart all that looks different. It holds all but the foot.
func (r *SymbolRef) Key() string {
	place := r.Place
	place.Foot = scene.Point{}
	return fmt.Sprintf("%v|%v|%v", r.Specs, place, r.Style)
}

// families tells a kind's body.
var families = map[part.Family]symbol.Family{
	part.Receptacle: symbol.Receptacle,
	part.Switch:     symbol.Switch,
	part.LowVoltage: symbol.LowVoltage,
	part.Light:      symbol.Light,
	part.Fan:        symbol.Fan,
	part.Alarm:      symbol.Alarm,
	part.Junction:   symbol.Junction,
}

var statuses = map[plan.Status]symbol.Status{
	plan.StatusExisting: symbol.Existing,
	plan.StatusRemove:   symbol.Remove,
	plan.StatusMoved:    symbol.Remove,
	plan.StatusReplaced: symbol.Remove,
}

// SpecOf returns how an opening looks. A kind not in the catalogue is a crossed body
// with a question mark.
func SpecOf(parts *part.Catalogue, o *plan.Opening) symbol.Spec {
	spec := symbol.Spec{Family: symbol.Junction, Letters: "?", Status: statuses[o.Status]}
	if k := parts.Kind(o.Kind); k != nil {
		spec.Family, spec.Letters, spec.Yokes = families[k.Family], k.Letters, k.Yokes
	}
	if len(o.Devices) > 0 {
		spec.Yokes = len(o.Devices)
	}
	return spec
}
