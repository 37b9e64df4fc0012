package plan

import (
	"fmt"

	"studbay/plan/words"
)

// Flag is what a file says by true or false, or does not say by leaving it out.
type Flag int

// The flags. The zero one is not said.
const (
	FlagUnsaid Flag = iota
	FlagNo
	FlagYes
)

// Text returns the flag in words.
func (f Flag) Text() words.Text {
	switch f {
	case FlagYes:
		return words.New("yes", "Yes")
	case FlagNo:
		return words.New("no", "No")
	}
	return words.New("unsaid", "not said")
}

// MarshalJSON writes true or false; one that is not said has no JSON and is left out.
func (f Flag) MarshalJSON() ([]byte, error) {
	switch f {
	case FlagYes:
		return []byte("true"), nil
	case FlagNo:
		return []byte("false"), nil
	}
	return nil, fmt.Errorf("plan: a flag of %d is neither true nor false", int(f))
}

// UnmarshalJSON reads true or false. It fails for all else.
func (f *Flag) UnmarshalJSON(data []byte) error {
	switch string(data) {
	case "true":
		*f = FlagYes
	case "false":
		*f = FlagNo
	default:
		return fmt.Errorf("plan: %q is neither true nor false", Clipped(string(data), 24))
	}
	return nil
}

// Answer is what somebody said to a question of yes or no. The empty one is not said.
type Answer string

// Sensing is by what a smoke alarm tells that there is smoke. The empty one is not said.
type Sensing string

// The ways of sensing. One that can be hushed is an ionization alarm with a silencing switch.
const (
	SensesUnsaid    Sensing = ""
	SensesLight     Sensing = "photoelectric"
	SensesIons      Sensing = "ionization"
	SensesIonsQuiet Sensing = "ionization, silencing"
)

// Sensings lists them in the order a user sees.
var Sensings = []Sensing{SensesUnsaid, SensesLight, SensesIons, SensesIonsQuiet}

// Text returns the way of sensing, as people say it.
func (s Sensing) Text() words.Text {
	switch s {
	case SensesLight:
		return words.New("sensing.light", "photoelectric")
	case SensesIons:
		return words.New("sensing.ions", "ionization")
	case SensesIonsQuiet:
		return words.New("sensing.ions-quiet", "ionization, with a silencing switch")
	}
	return words.New("unsaid", "not said")
}

// The answers.
const (
	Unsaid    Answer = ""
	AnswerYes Answer = "yes"
	AnswerNo  Answer = "no"
)

// isKnown reports whether it is one of the answers.
func (a Answer) isKnown() bool { return a == Unsaid || a == AnswerYes || a == AnswerNo }

// Appliance is a machine that an outlet is there for. The empty one is not said, and an unknown
// one is kept.
type Appliance string

// The machines that the program itself speaks of. Those that are drawn too are called as the
// fixture is.
const (
	ApplianceUnsaid       Appliance = ""
	ApplianceRefrigerator           = Appliance(FixtureRefrigerator)
	ApplianceFreezer      Appliance = "freezer"
	ApplianceRange                  = Appliance(FixtureRange)
	ApplianceHood         Appliance = "range hood"
	ApplianceMicrowave    Appliance = "microwave oven"
	ApplianceDishwasher             = Appliance(FixtureDishwasher)
	ApplianceDisposer     Appliance = "disposer"
	ApplianceWasher                 = Appliance(FixtureWasher)
	ApplianceDryer                  = Appliance(FixtureDryer)
	ApplianceWaterHeater            = Appliance(FixtureWaterHeater)
	ApplianceFurnace      Appliance = "furnace"
	ApplianceSumpPump     Appliance = "sump pump"
)

// Appliances lists them in the order a user sees.
var Appliances = []Appliance{
	ApplianceUnsaid, ApplianceRefrigerator, ApplianceFreezer, ApplianceRange, ApplianceHood, ApplianceMicrowave,
	ApplianceDishwasher, ApplianceDisposer, ApplianceWasher, ApplianceDryer, ApplianceWaterHeater, ApplianceFurnace, ApplianceSumpPump,
}

// Text returns the machine in words; an unknown one as it is written.
func (a Appliance) Text() words.Text {
	if a == ApplianceUnsaid {
		return words.New("unsaid", "not said")
	}
	return kindText("appliance", string(a))
}

// Dampness is how wet a place indoors gets. The empty one is not said: it is taken to be dry.
type Dampness string

// The dampnesses: what is damp gets moist, what is wet is hosed down or rained on.
const (
	DampUnsaid Dampness = ""
	DampDry    Dampness = "dry"
	DampDamp   Dampness = "damp"
	DampWet    Dampness = "wet"
)

// Dampnesses lists them in the order a user sees.
var Dampnesses = []Dampness{DampUnsaid, DampDry, DampDamp, DampWet}

// Text returns the dampness in words.
func (d Dampness) Text() words.Text {
	if d == DampUnsaid {
		return words.New("unsaid", "not said")
	}
	return kindText("dampness", string(d))
}
