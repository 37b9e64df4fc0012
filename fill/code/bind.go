package code

import (
	"slices"
	"strconv"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// binding ties the name of a figure to its field. The set function reads the value
// as the unit column says and stores it.
type binding struct {
	name string
	unit string
	set  func(*Figures, string) error
	// length is the field of a figure that is a length, else nil.
	length func(*Figures) *unit.Length
}

// bindings lists every figure but the allowances, which have one name a size. An
// edition without one of them does not load.
var bindings = slices.Concat(fillAndSpacing, outlets, lighting, protection, alarms)

// fillAndSpacing are the figures of box fill and of walls.
var fillAndSpacing = []binding{
	{name: "box-volume", unit: "cite", set: cited},
	{name: "barrier-metal", unit: "in3", set: volume(func(f *Figures) *unit.Volume { return &f.Fill.BarrierMetal })},
	{name: "barrier-nonmetallic", unit: "in3", set: volume(func(f *Figures) *unit.Volume { return &f.Fill.BarrierNonmetal })},
	{name: "conductor", unit: "cite", set: cited},
	{name: "loop-allowances", unit: "count", set: count(func(f *Figures) *int64 { return &f.Fill.LoopAllowances })},
	{name: "canopy-wires", unit: "count", set: count(func(f *Figures) *int64 { return &f.Fill.CanopyWires })},
	{name: "canopy-wire-under", unit: "awg", set: size(func(f *Figures) *unit.AWG { return &f.Fill.CanopyWireUnder })},
	{name: "clamps", unit: "cite", set: cited},
	{name: "fitting", unit: "cite", set: cited},
	{name: "device-allowances", unit: "count", set: count(func(f *Figures) *int64 { return &f.Fill.DeviceAllowances })},
	{name: "grounds-together", unit: "count", set: count(func(f *Figures) *int64 { return &f.Fill.GroundsTogether })},
	{name: "ground-further", unit: "percent", set: count(func(f *Figures) *int64 { return &f.Fill.GroundFurther })},
	{name: "isolated-grounds-apart", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Fill.IsolatedGroundsApart })},
	{name: "terminal-block", unit: "count", set: count(func(f *Figures) *int64 { return &f.Fill.TerminalBlock })},

	ofLength("wall-reach", func(f *Figures) *unit.Length { return &f.Spacing.WallReach }),
	ofLength("wall-space-min", func(f *Figures) *unit.Length { return &f.Spacing.WallSpaceMin }),
	ofLength("floor-receptacle-reach", func(f *Figures) *unit.Length { return &f.Spacing.FloorReach }),
	ofLength("receptacle-max-height", func(f *Figures) *unit.Length { return &f.Spacing.ReceptacleMaxHeight }),
	{name: "switched-receptacle", unit: "cite", set: cited},
	{name: "fixed-cabinet-breaks", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Spacing.FixedCabinetBreaks })},
	{name: "worked-cabinet-breaks", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Spacing.WorkedCabinetBreaks })},
	{name: "stationary-appliance-breaks", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Spacing.StationaryApplianceBreaks })},
	{name: "fixed-panel-counts", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Spacing.FixedPanelCounts })},
	{name: "room-divider-counts", unit: "rule", set: rule(func(f *Figures) *bool { return &f.Spacing.RoomDividerCounts })},
	ofLength("counter-width-min", func(f *Figures) *unit.Length { return &f.Spacing.CounterWidthMin }),
	ofLength("counter-reach", func(f *Figures) *unit.Length { return &f.Spacing.CounterReach }),

	{name: "bonding", unit: "cite", set: cited},
	{name: "fan-box", unit: "cite", set: cited},
	{name: "grounding-extended", unit: "cite", set: cited},
	{name: "cable-fished", unit: "cite", set: cited},
	{name: "luminaire-supply", unit: "cite", set: cited},
	{name: "accessible", unit: "cite", set: cited},
	ofLength("box-set-back", func(f *Figures) *unit.Length { return &f.Build.SetBack }),
	ofLength("box-depth-bare", func(f *Figures) *unit.Length { return &f.Build.DepthBare }),
	ofLength("box-depth-14", func(f *Figures) *unit.Length { return &f.Build.DepthFine }),
	ofLength("box-depth-12", func(f *Figures) *unit.Length { return &f.Build.DepthUsual }),
	ofLength("box-depth-8", func(f *Figures) *unit.Length { return &f.Build.DepthThick }),
	ofLength("device-behind-12", func(f *Figures) *unit.Length { return &f.Build.BehindUsual }),
	ofLength("device-behind", func(f *Figures) *unit.Length { return &f.Build.BehindAny }),
	ofLength("device-spare", func(f *Figures) *unit.Length { return &f.Build.DepthSpare }),
	ofWeight("box-carries", func(f *Figures) *unit.Weight { return &f.Build.BoxCarries }),
	ofWeight("any-box-carries", func(f *Figures) *unit.Weight { return &f.Build.AnyBoxCarries }),
	ofWeight("fan-carries", func(f *Figures) *unit.Weight { return &f.Build.FanCarries }),
	ofWeight("fan-most", func(f *Figures) *unit.Weight { return &f.Build.FanMost }),
	ofLength("hole-edge", func(f *Figures) *unit.Length { return &f.Build.HoleEdge }),
	ofLength("cable-hole", func(f *Figures) *unit.Length { return &f.Build.CableHole }),
	ofLength("door-leaf-near", func(f *Figures) *unit.Length { return &f.Build.LeafNear }),
	ofLength("height-step", func(f *Figures) *unit.Length { return &f.Build.HeightStep }),
	{name: "smart-spare", unit: "in3", set: volume(func(f *Figures) *unit.Volume { return &f.Build.SmartSpare })},
	ofLength("smart-depth", func(f *Figures) *unit.Length { return &f.Build.SmartDepth }),
}

// bindingOf finds the binding of a figure; an allowance-N is made on the spot.
func bindingOf(name string) (binding, bool) {
	for _, b := range bindings {
		if b.name == name {
			return b, true
		}
	}
	if size, ok := allowanceSize(name); ok {
		return binding{name: name, unit: "in3", set: allowance(size)}, true
	}
	return binding{}, false
}

var errOnlyCite = words.Fault("amend.cite", "this figure names a section and has no value")

func cited(_ *Figures, text string) error {
	if text != "" {
		return errOnlyCite
	}
	return nil
}

func volume(field func(*Figures) *unit.Volume) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		v, err := unit.ParseVolume(text)
		if err != nil || v < 0 {
			return &words.Error{Text: words.NoVolume(text)}
		}
		*field(f) = v
		return nil
	}
}

func ofWeight(name string, field func(*Figures) *unit.Weight) binding {
	return binding{name: name, unit: "lb", set: func(f *Figures, text string) error {
		w, err := unit.ParseWeight(text, unit.Pound)
		if err != nil || w == 0 {
			return &words.Error{Text: words.NoWeight(text)}
		}
		*field(f) = w
		return nil
	}}
}

func ofLength(name string, field func(*Figures) *unit.Length) binding {
	return binding{name: name, unit: "in", set: length(field), length: field}
}

func length(field func(*Figures) *unit.Length) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		l, err := unit.Parse(text, unit.Inch)
		if err != nil {
			return &words.Error{Text: words.NoLength(text, unit.Imperial)}
		}
		if l <= 0 {
			return words.Fault("amend.no-room", "“{0}” is not a length above zero", text)
		}
		*field(f) = l
		return nil
	}
}

// ofCite is a figure that names a section and has no value.
func ofCite(name string) binding { return binding{name: name, unit: "cite", set: cited} }

func ofCount(name string, field func(*Figures) *int64) binding {
	return binding{name: name, unit: "count", set: count(field)}
}

func ofRule(name string, field func(*Figures) *bool) binding {
	return binding{name: name, unit: "rule", set: rule(field)}
}

// ofArea is a figure in square feet.
func ofArea(name string, field func(*Figures) *unit.Area) binding {
	set := func(f *Figures, text string) error {
		n, err := strconv.ParseUint(text, 10, 16)
		if err != nil || n == 0 {
			return words.Fault("amend.no-area", "“{0}” is not a whole number of square feet from 1 to 65535", text)
		}
		*field(f) = unit.Foot.Times(unit.Foot).Mul(int64(n))
		return nil
	}
	return binding{name: name, unit: "ft2", set: set}
}

func count(field func(*Figures) *int64) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		n, err := strconv.ParseUint(text, 10, 16)
		if err != nil {
			return words.Fault("amend.no-count", "“{0}” is not a whole number from 0 to 65535", text)
		}
		*field(f) = int64(n)
		return nil
	}
}

func size(field func(*Figures) *unit.AWG) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		s, err := unit.ParseAWG(text)
		if err != nil {
			return &words.Error{Text: words.NoWireSize(text)}
		}
		*field(f) = s
		return nil
	}
}

func rule(field func(*Figures) *bool) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		switch text {
		case "yes":
			*field(f) = true
		case "no":
			*field(f) = false
		default:
			return words.Fault("amend.no-yes", "“{0}” is neither yes nor no", text)
		}
		return nil
	}
}
