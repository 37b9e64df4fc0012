package tell

import (
	"strings"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/words"
)

// plainNames says what kinds of opening are called by those who do not wire them; each
// with how it goes on in a sentence. A kind without one is called as the catalogue does.
var plainNames = map[string][2]words.Text{
	"duplex":           {words.New("tell.duplex", "Double outlet"), words.New("tell.duplex.low", "the double outlet")},
	"quad":             {words.New("tell.quad", "Two double outlets"), words.New("tell.quad.low", "the two double outlets")},
	"gfci":             {words.New("tell.gfci", "Double outlet with a shock guard"), words.New("tell.gfci.low", "the outlet with a shock guard")},
	"counter":          {words.New("tell.counter", "Counter outlet"), words.New("tell.counter.low", "the counter outlet")},
	"island":           {words.New("tell.island", "Island outlet"), words.New("tell.island.low", "the island outlet")},
	"basin":            {words.New("tell.basin", "Outlet at the basin"), words.New("tell.basin.low", "the outlet at the basin")},
	"outdoor":          {words.New("tell.outdoor", "Outdoor outlet"), words.New("tell.outdoor.low", "the outdoor outlet")},
	"half-switched":    {words.New("tell.half", "Double outlet, half of it switched"), words.New("tell.half.low", "the switched outlet")},
	"switched":         {words.New("tell.switched", "Switched outlet"), words.New("tell.switched.low", "the switched outlet")},
	"floor":            {words.New("tell.floor", "Floor outlet"), words.New("tell.floor.low", "the floor outlet")},
	"refrigerator":     {words.New("tell.refrigerator", "Outlet for the refrigerator"), words.New("tell.refrigerator.low", "the outlet for the refrigerator")},
	"dishwasher":       {words.New("tell.dishwasher", "Outlet for the dishwasher"), words.New("tell.dishwasher.low", "the outlet for the dishwasher")},
	"microwave":        {words.New("tell.microwave", "Outlet for the microwave or hood"), words.New("tell.microwave.low", "the outlet for the microwave or hood")},
	"washer":           {words.New("tell.washer", "Outlet for the washer"), words.New("tell.washer.low", "the outlet for the washer")},
	"range":            {words.New("tell.range", "Outlet for the range"), words.New("tell.range.low", "the outlet for the range")},
	"dryer":            {words.New("tell.dryer", "Outlet for the dryer"), words.New("tell.dryer.low", "the outlet for the dryer")},
	"garage":           {words.New("tell.garage", "Garage outlet"), words.New("tell.garage.low", "the garage outlet")},
	"tv-power":         {words.New("tell.tv", "Outlet for the TV"), words.New("tell.tv.low", "the outlet for the TV")},
	"switch":           {words.New("tell.switch", "Light switch"), words.New("tell.switch.low", "the switch")},
	"three-way":        {words.New("tell.switch", "Light switch"), words.New("tell.switch.low", "the switch")},
	"four-way":         {words.New("tell.switch", "Light switch"), words.New("tell.switch.low", "the switch")},
	"dimmer":           {words.New("tell.dimmer", "Dimmer"), words.New("tell.dimmer.low", "the dimmer")},
	"switch-2":         {words.New("tell.switch-2", "Two switches"), words.New("tell.switch-2.low", "the two switches")},
	"switch-3":         {words.New("tell.switch-3", "Three switches"), words.New("tell.switch-3.low", "the three switches")},
	"switch-4":         {words.New("tell.switch-4", "Four switches"), words.New("tell.switch-4.low", "the four switches")},
	"ceiling-light":    {words.New("tell.ceiling-light", "Ceiling light"), words.New("tell.ceiling-light.low", "the ceiling light")},
	"pendant":          {words.New("tell.pendant", "Hanging light"), words.New("tell.pendant.low", "the hanging light")},
	"recessed":         {words.New("tell.recessed", "Recessed light"), words.New("tell.recessed.low", "the recessed light")},
	"wall-light":       {words.New("tell.wall-light", "Wall light"), words.New("tell.wall-light.low", "the wall light")},
	"reading-light":    {words.New("tell.reading-light", "Reading light"), words.New("tell.reading-light.low", "the reading light")},
	"vanity-light":     {words.New("tell.vanity-light", "Light at the mirror"), words.New("tell.vanity-light.low", "the light at the mirror")},
	"porch-light":      {words.New("tell.porch-light", "Porch light"), words.New("tell.porch-light.low", "the porch light")},
	"under-cabinet":    {words.New("tell.under-cabinet", "Wire for lights under the cabinets"), words.New("tell.under-cabinet.low", "the lights under the cabinets")},
	"fan-light":        {words.New("tell.fan-light", "Ceiling fan with a light"), words.New("tell.fan-light.low", "the fan with its light")},
	"exhaust-fan":      {words.New("tell.exhaust-fan", "Exhaust fan"), words.New("tell.exhaust-fan.low", "the exhaust fan")},
	"smoke":            {words.New("tell.smoke", "Smoke alarm"), words.New("tell.smoke.low", "the smoke alarm")},
	"smoke-co":         {words.New("tell.smoke-co", "Smoke and carbon-monoxide alarm"), words.New("tell.smoke-co.low", "the smoke and carbon-monoxide alarm")},
	"data":             {words.New("tell.data", "Network jack"), words.New("tell.data.low", "the network jack")},
	"coax":             {words.New("tell.coax", "TV jack"), words.New("tell.coax.low", "the TV jack")},
	"junction":         {words.New("tell.junction", "Covered box"), words.New("tell.junction.low", "the covered box")},
	"junction-ceiling": {words.New("tell.junction", "Covered box"), words.New("tell.junction.low", "the covered box")},
	"equipment":        {words.New("tell.equipment", "Connection for an appliance"), words.New("tell.equipment.low", "the connection for an appliance")},
}

// What is what an opening is called at the beginning of a sentence.
func What(o *plan.Opening) words.Text {
	if names, ok := plainNames[o.Kind]; ok {
		return names[0]
	}
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Text()
	}
	return words.New("plain", "{0}", strings.ToValidUTF8(o.Kind, ""))
}

// lower is what it is called within one.
func lower(o *plan.Opening) words.Text {
	if names, ok := plainNames[o.Kind]; ok {
		return names[1]
	}
	return What(o)
}
