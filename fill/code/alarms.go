package code

import "studbay/plan/unit"

// Alarms holds the figures of IRC R314 and R315.
type Alarms struct {
	SmokeBath    unit.Length // from the door of a bathroom with a tub or shower, or farther
	SmokeCooking unit.Length // from a cooking appliance, or farther, of a photoelectric one: the least
	SmokeOutside unit.Length // from the door of a bedroom to one outside of it, as one walks

	// From a cooking appliance, or farther, of an ionization alarm, and of one with a
	// silencing switch.
	SmokeIons, SmokeIonsQuiet unit.Length
}

var alarms = []binding{
	ofCite("smoke-alarm"),
	ofLength("smoke-bath", func(f *Figures) *unit.Length { return &f.Alarms.SmokeBath }),
	ofLength("smoke-cooking", func(f *Figures) *unit.Length { return &f.Alarms.SmokeCooking }),
	ofLength("smoke-outside", func(f *Figures) *unit.Length { return &f.Alarms.SmokeOutside }),
	ofLength("smoke-cooking-ions", func(f *Figures) *unit.Length { return &f.Alarms.SmokeIons }),
	ofLength("smoke-cooking-silence", func(f *Figures) *unit.Length { return &f.Alarms.SmokeIonsQuiet }),
	ofCite("smoke-joined"),
	ofCite("carbon-alarm"),
}
