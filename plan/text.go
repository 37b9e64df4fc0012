package plan

import "unicode"

// IsUnseen reports whether a character shows nothing or turns the order of its
// neighbors: a control character (Unicode category Cc) or one of the explicit
// directional formatting characters (Unicode Standard Annex 9, tables 1 to 3).
func IsUnseen(r rune) bool {
	return unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)
}
