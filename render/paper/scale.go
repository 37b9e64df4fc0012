package paper

import (
	"fmt"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Scale is how long on paper a length of building is. The zero value is none: the
// largest standard scale that fits.
type Scale struct {
	Paper, Building unit.Length
	System          unit.System
}

// Imperial returns the scale of so many sixteenths of an inch of paper for a foot.
func Imperial(sixteenths int64) Scale {
	return Scale{unit.FeetInches(0, 0, sixteenths), unit.Foot, unit.Imperial}
}

// Metric returns the scale that draws a length so many times smaller.
func Metric(times int64) Scale {
	return Scale{unit.Millimetre, unit.Length(times) * unit.Millimetre, unit.Metric}
}

// Scales lists the standard scales, each family from the largest: those of an
// architect's rule, and of ISO 5455:1979 with the 1:25, 1:75 and 1:125 of a builder's
// triangular rule (common practice).
var Scales = []Scale{
	Imperial(16), Imperial(12), Imperial(8), Imperial(6), Imperial(4), Imperial(3), Imperial(2), Imperial(1),
	Metric(20), Metric(25), Metric(50), Metric(75), Metric(100), Metric(125), Metric(200), Metric(500),
}

// ScalesOf lists the scales of a system from the largest.
func ScalesOf(s unit.System) (found []Scale) {
	for _, c := range Scales {
		if c.System == s {
			found = append(found, c)
		}
	}
	return found
}

// IsFit reports whether the scale is to be found.
func (s Scale) IsFit() bool { return s.Building == 0 }

// String is the scale as a user types it: 1/4in=1ft or 1:50.
func (s Scale) String() string {
	switch {
	case s.IsFit():
		return "fit"
	case s.System == unit.Metric:
		return fmt.Sprintf("1:%d", s.Building/s.Paper)
	}
	return strings.TrimSuffix(s.Paper.Inches(16), `"`) + "in=1ft"
}

// Words is the scale as a sheet says it: 1/4 in = 1 ft or 1:50.
func (s Scale) Words(v words.Voice) string {
	if s.System == unit.Metric {
		return s.String()
	}
	return PerFoot(v, strings.TrimSuffix(s.Paper.Inches(16), `"`))
}

// PerFoot says a scale by the inches of paper that show a foot of the building.
func PerFoot(v words.Voice, inches string) string {
	return v.Say(words.New("scale.feet", "{0} in = 1 ft", inches))
}

// Is reports whether two scales draw a length equally long.
func (s Scale) Is(t Scale) bool {
	return s.Paper.Times(t.Building).Cmp(t.Paper.Times(s.Building)) == 0
}

// ParseScale reads fit, 1:50, 1/4in=1ft or what comes to one of them, such as 1:48.
// The error lists the standard scales.
func ParseScale(text string) (Scale, error) {
	if strings.EqualFold(strings.TrimSpace(text), "fit") {
		return Scale{}, nil
	}
	given, err := readScale(text)
	if err == nil {
		for _, s := range Scales {
			if s.Is(given) {
				return s, nil
			}
		}
		err = words.Fault("scale.not-standard", "not a standard scale")
	}
	names := []string{"fit"}
	for _, s := range Scales {
		names = append(names, s.String())
	}
	return Scale{}, words.Fault("scale.unread", "scale \"{0}\": {1}; there are {2}", text, err, strings.Join(names, ", "))
}

func readScale(text string) (s Scale, err error) {
	paper, building, found := strings.Cut(text, "=")
	bare := unit.Inch
	if !found {
		paper, building, found = strings.Cut(text, ":")
		bare = unit.Millimetre
	}
	if !found {
		return s, words.Fault("scale.want", "want paper=building or 1:times")
	}
	if s.Paper, err = unit.Parse(strings.TrimSpace(paper), bare); err != nil {
		return s, err
	}
	if s.Building, err = unit.Parse(strings.TrimSpace(building), bare); err != nil {
		return s, err
	}
	if s.Paper <= 0 || s.Building <= 0 {
		return s, words.Fault("scale.zero", "want lengths above zero")
	}
	return s, nil
}

// Times is how long a millimetre of building is on paper, for drawing only.
func (s Scale) Times() float64 { return s.Paper.Millimetres() / s.Building.Millimetres() }
