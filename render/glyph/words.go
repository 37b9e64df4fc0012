package glyph

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// units are the words that stay on the line of the number before them.
var units = map[string]bool{
	"A": true, "V": true, "W": true, "AWG": true, "%": true, "°": true,
	"in": true, "ft": true, "mm": true, "cm": true, "m": true,
	"in²": true, "ft²": true, "m²": true, "in³": true, "pulg³": true, "pies²": true, "cm³": true,
}

// Words divides text where a line of it may end: at white space, but not between a
// number and its unit, nor behind a ≈.
func Words(text string) []string {
	all := strings.Fields(text)
	kept := all[:0]
	for _, word := range all {
		if n := len(kept); n > 0 && (kept[n-1] == "≈" || isNumber(kept[n-1]) && units[strings.TrimRight(word, ".,;:)?!")]) {
			kept[n-1] += " " + word
			continue
		}
		kept = append(kept, word)
	}
	return kept
}

func isNumber(word string) bool {
	last, _ := utf8.DecodeLastRuneInString(word)
	return unicode.IsNumber(last) && strings.IndexFunc(word, unicode.IsNumber) >= 0
}
