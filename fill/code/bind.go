package code

import (
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
}

// bindings lists every figure but the allowances, which have one name a size. An
// edition without one of them does not load.
var bindings = []binding{
	{"box-volume", "cite", cited},
	{"barrier-metal", "in3", volume(func(f *Figures) *unit.Volume { return &f.Fill.BarrierMetal })},
	{"barrier-nonmetallic", "in3", volume(func(f *Figures) *unit.Volume { return &f.Fill.BarrierNonmetal })},
	{"conductor", "cite", cited},
	{"loop-allowances", "count", count(func(f *Figures) *int64 { return &f.Fill.LoopAllowances })},
	{"canopy-wires", "count", count(func(f *Figures) *int64 { return &f.Fill.CanopyWires })},
	{"canopy-wire-under", "awg", size(func(f *Figures) *unit.AWG { return &f.Fill.CanopyWireUnder })},
	{"clamps", "cite", cited},
	{"fitting", "cite", cited},
	{"device-allowances", "count", count(func(f *Figures) *int64 { return &f.Fill.DeviceAllowances })},
	{"grounds-together", "count", count(func(f *Figures) *int64 { return &f.Fill.GroundsTogether })},
	{"ground-further", "percent", count(func(f *Figures) *int64 { return &f.Fill.GroundFurther })},
	{"isolated-grounds-apart", "rule", rule(func(f *Figures) *bool { return &f.Fill.IsolatedGroundsApart })},
	{"terminal-block", "count", count(func(f *Figures) *int64 { return &f.Fill.TerminalBlock })},

	{"wall-reach", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.WallReach })},
	{"wall-space-min", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.WallSpaceMin })},
	{"floor-receptacle-reach", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.FloorReach })},
	{"receptacle-max-height", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.ReceptacleMaxHeight })},
	{"fixed-cabinet-breaks", "rule", rule(func(f *Figures) *bool { return &f.Spacing.FixedCabinetBreaks })},
	{"stationary-appliance-breaks", "rule", rule(func(f *Figures) *bool { return &f.Spacing.StationaryApplianceBreaks })},
	{"fixed-panel-counts", "rule", rule(func(f *Figures) *bool { return &f.Spacing.FixedPanelCounts })},
	{"room-divider-counts", "rule", rule(func(f *Figures) *bool { return &f.Spacing.RoomDividerCounts })},
	{"counter-width-min", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.CounterWidthMin })},
	{"counter-reach", "in", length(func(f *Figures) *unit.Length { return &f.Spacing.CounterReach })},
}

// bindingOf finds the binding of a figure; an allowance-N is made on the spot.
func bindingOf(name string) (binding, bool) {
	for _, b := range bindings {
		if b.name == name {
			return b, true
		}
	}
	if size, ok := allowanceSize(name); ok {
		return binding{name, "in3", allowance(size)}, true
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
