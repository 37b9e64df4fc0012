package unit

import "strings"

// FormatApart writes l for reading beside another length that it is compared with: as
// Format does, but with more decimals where the two would look the same and are not.
func (s System) FormatApart(l, other Length) string { return s.apart(l, other, s.Format) }

// ShortApart is FormatApart of what is written as Short does.
func (s System) ShortApart(l, other Length) string { return s.apart(l, other, s.Short) }

func (s System) apart(l, other Length, format func(Length) string) string {
	bare := func(l Length) string { return strings.TrimPrefix(format(l), "≈ ") }
	if l == other || bare(l) != bare(other) {
		return format(l)
	}
	for _, fine := range []struct {
		step   Length
		places int
	}{{Inch / 1000, 3}, {Inch / 100_000, 5}} {
		near := l.Rounded(fine.step)
		if s == Metric || near == other.Rounded(fine.step) {
			continue
		}
		text := withMinus(appendDecimal(nil, int64(near/fine.step), fine.places)) + `"`
		if near != l {
			return "≈ " + text
		}
		return text
	}
	return withMinus(l.AppendExact(nil)) + " mm" // every nanometre
}
