package words

import (
	"strings"
	"unicode"
)

// Plain parts what somebody wrote into its words, for looking things up: in small letters
// without the accents of Spanish. A number is a word of its own: "3-way", "3way" and
// "3 Way" have the same words.
func Plain(text string) (all []string) {
	var word []rune
	end := func() {
		if len(word) > 0 {
			all, word = append(all, string(word)), nil
		}
	}
	for _, r := range Folded(text) {
		switch {
		case !unicode.IsLetter(r) && !unicode.IsDigit(r):
			end()
			continue
		case len(word) > 0 && unicode.IsDigit(r) != unicode.IsDigit(word[0]):
			end()
		}
		word = append(word, r)
	}
	end()
	return all
}

// Folded returns a text in small letters without the accents of Spanish, for looking parts
// of it up.
func Folded(text string) string { return accents.Replace(strings.ToLower(text)) }

var accents = strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u", "ñ", "n")
