package unit

import "testing"

// TestFractionCharacters reads each fraction character of Unicode by what its name says, of
// a unit of 2520 nm, which all of their denominators divide.
func TestFractionCharacters(t *testing.T) {
	const whole = 2520 * Nanometre
	for _, tt := range []struct {
		text     string
		num, den Length
		source   string // the character's name in the Unicode code charts
	}{
		{"½", 1, 2, "U+00BD vulgar fraction one half"},
		{"¼", 1, 4, "U+00BC vulgar fraction one quarter"},
		{"¾", 3, 4, "U+00BE vulgar fraction three quarters"},
		{"⅐", 1, 7, "U+2150 vulgar fraction one seventh"},
		{"⅑", 1, 9, "U+2151 vulgar fraction one ninth"},
		{"⅒", 1, 10, "U+2152 vulgar fraction one tenth"},
		{"⅓", 1, 3, "U+2153 vulgar fraction one third"},
		{"⅔", 2, 3, "U+2154 vulgar fraction two thirds"},
		{"⅕", 1, 5, "U+2155 vulgar fraction one fifth"},
		{"⅖", 2, 5, "U+2156 vulgar fraction two fifths"},
		{"⅗", 3, 5, "U+2157 vulgar fraction three fifths"},
		{"⅘", 4, 5, "U+2158 vulgar fraction four fifths"},
		{"⅙", 1, 6, "U+2159 vulgar fraction one sixth"},
		{"⅚", 5, 6, "U+215A vulgar fraction five sixths"},
		{"⅛", 1, 8, "U+215B vulgar fraction one eighth"},
		{"⅜", 3, 8, "U+215C vulgar fraction three eighths"},
		{"⅝", 5, 8, "U+215D vulgar fraction five eighths"},
		{"⅞", 7, 8, "U+215E vulgar fraction seven eighths"},
	} {
		for prefix, add := range map[string]Length{"": 0, "3": 3 * whole, "3 ": 3 * whole} {
			want := add + whole*tt.num/tt.den
			if got, err := Parse(prefix+tt.text, whole); got != want || err != nil {
				t.Errorf("Parse(%q) of 2520 nm = %d, %v; want %d (%s)", prefix+tt.text, int64(got), err, int64(want), tt.source)
			}
		}
	}
}
