package unit

import (
	"slices"
	"strconv"
	"strings"
)

// AWG is an American wire gauge size: 18, 16, 14 ... 1, and -1, -2, -3, -4 for
// 1/0 to 4/0. A smaller number is a thicker conductor. The zero value is no size.
type AWG int

// sizes are the building wire of NEC 2023 chapter 9 table 8, thinnest first.
var sizes = []AWG{18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, -1, -2, -3, -4}

// Larger reports whether a is a thicker conductor than b.
func (a AWG) Larger(b AWG) bool { return a < b }

// IsValid reports whether a is a size of building wire, 18 to 4/0: NEC 2023 chapter 9
// table 8.
func (a AWG) IsValid() bool { return slices.Contains(sizes, a) }

// String writes the size as it is spoken of: 12, 1, 1/0 or 4/0.
func (a AWG) String() string {
	if a >= 0 {
		return strconv.Itoa(int(a))
	}
	return strconv.Itoa(-int(a)) + "/0"
}

// ParseAWG reads a size: 12, #12, 12 AWG, 1/0 or 4/0. It fails with a *SyntaxError for
// anything that is not a size IsValid accepts.
func ParseAWG(text string) (AWG, error) {
	word := strings.TrimSpace(text)
	start := strings.Index(text, word)
	if strings.HasPrefix(word, "#") {
		word, start = word[1:], start+1
	}
	word = strings.TrimSpace(strings.TrimSuffix(strings.ToUpper(word), "AWG"))
	for _, size := range sizes {
		if size.String() == word {
			return size, nil
		}
	}
	return 0, &SyntaxError{Text: text, At: start, Want: "a wire size from 18 to 4/0, such as 14, 12 or 1/0"}
}

// MarshalJSON writes a number, or a string such as "1/0" for the sizes over 1. No size
// is 0.
func (a AWG) MarshalJSON() ([]byte, error) {
	if a >= 0 {
		return []byte(a.String()), nil
	}
	return []byte(`"` + a.String() + `"`), nil
}

// UnmarshalJSON reads what MarshalJSON writes. It fails with a *SyntaxError for any
// other size or form.
func (a *AWG) UnmarshalJSON(data []byte) error {
	if string(data) == "0" {
		*a = 0
		return nil
	}
	for _, size := range sizes {
		if form, _ := size.MarshalJSON(); string(form) == string(data) {
			*a = size
			return nil
		}
	}
	return &SyntaxError{Text: string(data), Want: `a wire size such as 14, 12 or "1/0"`}
}
