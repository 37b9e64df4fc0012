package code

import (
	"errors"
	"io/fs"
	"strings"

	"studbay/fill/rows"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// printed is a limit as its section prints it, in both systems of units.
type printed struct {
	imperial string // such as "5-1/2 ft"
	metric   unit.Length
	metrics  string // the metric one as it is printed, such as "2.0 m"
	// isGreaterLighter tells a limit of which the greater figure asks less: a reach is, a
	// clearance is not.
	isGreaterLighter bool
}

// loadPrinted reads how the sections print their limits.
func loadPrinted(from fs.FS, all []*Figures) error {
	table, err := rows.Read(from, "code/printed.csv", "figure", "imperial", "metric", "lighter", "source")
	if err != nil {
		return err
	}
	pairs := make(map[string]printed, len(table))
	for _, row := range table {
		bound, _ := bindingOf(row.Cell("figure"))
		if bound.length == nil {
			return row.Wrong("figure", errors.New("no figure that is a length"))
		}
		imperial, err := unit.Parse(row.Cell("imperial"), unit.Inch)
		if err != nil {
			return row.Wrong("imperial", err)
		}
		metric, err := unit.Parse(row.Cell("metric"), unit.Millimetre)
		if err != nil {
			return row.Wrong("metric", err)
		}
		for _, f := range all {
			if *bound.length(f) != imperial {
				return row.Wrong("imperial", errors.New("edition "+f.Edition+" has another figure"))
			}
		}
		lighter := row.Cell("lighter")
		if lighter != "greater" && lighter != "smaller" {
			return row.Wrong("lighter", errors.New("it is greater or smaller"))
		}
		pairs[row.Cell("figure")] = printed{row.Cell("imperial"), metric, row.Cell("metric"), lighter == "greater"}
	}
	for _, f := range all {
		f.printed = pairs
	}
	return nil
}

// InUnits returns the figures for a plan of the units. A metric plan may rest on either
// figure of a pair (90.9(D)), and so has the one that asks less. An imperial plan has the imperial figures alone, and a figure that
// is amended is as it was amended.
func (f *Figures) InUnits(s unit.System) *Figures {
	if f.Units == s {
		return f
	}
	out := *f
	out.Units = s
	for name, pair := range f.printed {
		bound, _ := bindingOf(name)
		if field := bound.length(&out); s == unit.Metric && f.cites[name].Reason == "" {
			if pair.isGreaterLighter {
				*field = max(*field, pair.metric)
			} else {
				*field = min(*field, pair.metric)
			}
		}
	}
	return &out
}

// Limit returns a limit that is a length as its section prints it: for a metric plan both
// figures of the pair. One that is amended is written as any length.
func (f *Figures) Limit(figure string) words.Text {
	bound, _ := bindingOf(figure)
	pair, paired := f.printed[figure]
	if !paired || f.cites[figure].Reason != "" {
		return words.New("plain", "{0}", *bound.length(f))
	}
	imperial := words.New("limit.in", "{0} in", strings.TrimSuffix(pair.imperial, " in"))
	if feet, ok := strings.CutSuffix(pair.imperial, " ft"); ok {
		imperial = words.New("limit.ft", "{0} ft", feet)
	}
	if f.Units == unit.Metric {
		return words.New("limit.both", "{0} ({1})", words.Printed(pair.metrics), imperial)
	}
	return imperial
}
