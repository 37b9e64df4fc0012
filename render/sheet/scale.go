package sheet

import (
	"errors"
	"fmt"
	"strings"

	"studbay/plan/unit"
)

// Scale is how long on paper a length of building is. The zero value is none: the
// largest standard scale that fits.
type Scale struct {
	Paper, Building unit.Length
	System          unit.System
}

// imperial is paper in eighths of an inch, or sixteenths, for a foot.
func imperial(sixteenths int64) Scale {
	return Scale{unit.FeetInches(0, 0, sixteenths), unit.Foot, unit.Imperial}
}

func metric(times int64) Scale {
	return Scale{unit.Millimetre, unit.Length(times) * unit.Millimetre, unit.Metric}
}

// Scales lists the standard scales, each family from the largest: those of an
// architect's rule, and of ISO 5455:1979 with the 1:25, 1:75 and 1:125 of a builder's
// triangular rule (common practice).
var Scales = []Scale{
	imperial(16), imperial(12), imperial(8), imperial(6), imperial(4), imperial(3), imperial(2), imperial(1),
	metric(20), metric(25), metric(50), metric(75), metric(100), metric(125), metric(200), metric(500),
}

// scalesOf lists the scales of a system from the largest.
func scalesOf(s unit.System) (found []Scale) {
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
func (s Scale) Words() string {
	if s.System == unit.Metric {
		return s.String()
	}
	return strings.TrimSuffix(s.Paper.Inches(16), `"`) + " in = 1 ft"
}

// is reports whether two scales draw a length equally long.
func (s Scale) is(t Scale) bool {
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
			if s.is(given) {
				return s, nil
			}
		}
		err = errors.New("not a standard scale")
	}
	names := []string{"fit"}
	for _, s := range Scales {
		names = append(names, s.String())
	}
	return Scale{}, fmt.Errorf("scale %q: %w; there are %s", text, err, strings.Join(names, ", "))
}

func readScale(text string) (s Scale, err error) {
	paper, building, found := strings.Cut(text, "=")
	bare := unit.Inch
	if !found {
		paper, building, found = strings.Cut(text, ":")
		bare = unit.Millimetre
	}
	if !found {
		return s, errors.New("want paper=building or 1:times")
	}
	if s.Paper, err = unit.Parse(strings.TrimSpace(paper), bare); err != nil {
		return s, err
	}
	if s.Building, err = unit.Parse(strings.TrimSpace(building), bare); err != nil {
		return s, err
	}
	if s.Paper <= 0 || s.Building <= 0 {
		return s, errors.New("want lengths above zero")
	}
	return s, nil
}
