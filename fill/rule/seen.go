package rule

import (
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
)

// Seen is what a finding shows, for a waiver of it to keep.
func (f Finding) Seen() *plan.Seen {
	s := &plan.Seen{What: f.Message.ID, Severity: f.Severity.String()}
	over := max(f.Measured.Value-f.Limit.Value, f.Limit.Value-f.Measured.Value)
	switch f.Measured.Unit {
	case OfLength:
		s.Over = unit.Length(over)
	case OfVolume:
		s.Excess = unit.Volume(over)
	case OfCount, OfArea:
		s.Count = int(over)
	case OfWeight: // in hundredths of a pound
		s.Count = int(over / int64(unit.Pound/100))
	}
	for _, part := range f.Stretches {
		s.Stretches = append(s.Stretches, plan.SeenStretch{Host: part.Host, Part: part.Part, From: part.From, To: part.To})
	}
	return s
}

// IsWithin reports whether a finding is what was seen, or less: the same of its rule, no
// heavier, not farther from its limit, and nowhere but where it was.
func (f Finding) IsWithin(seen *plan.Seen) bool {
	now := f.Seen()
	heavier := seen.Severity != now.Severity && seen.Severity != Stop.String() && now.Severity != Note.String()
	switch {
	case seen.What != now.What || heavier:
		return false
	case seen.Over != 0 && now.Over > seen.Over+Grain,
		seen.Excess != 0 && now.Excess > seen.Excess,
		seen.Count != 0 && now.Count > seen.Count:
		return false
	}
	return !slices.ContainsFunc(now.Stretches, func(part plan.SeenStretch) bool {
		return !slices.ContainsFunc(seen.Stretches, func(was plan.SeenStretch) bool {
			return part.Host == was.Host && part.Part == was.Part && was.From-Grain <= part.From && part.To <= was.To+Grain
		})
	})
}
