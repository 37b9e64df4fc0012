// Package naming tells what a room is for from its name, as far as a name tells it. It is a
// guess, to be shown as one beside the name and changed there.
//
// The words stand in assets/room-names.csv: common practice in naming rooms, in English and
// in the Spanish of the Americas.
package naming

import (
	"slices"
	"strings"
	"unicode"

	"studbay/plan"
	"studbay/plan/words"
)

// UseOf returns the use that a room's name tells of, plan.UseUnknown where it tells none:
// by whole words, English or Spanish, the noun deciding, which comes last in English and
// first in Spanish. "Room 3" tells nothing. Capitals and accents make no difference.
func UseOf(name string) plan.Use {
	t := all()
	of := t.nameWords(name)
	if t.isSpanish(of) {
		slices.Reverse(of)
	}
	for i := len(of) - 1; i >= 0; i-- {
		switch word := of[i]; {
		case t.has(anyRoom, word):
			if use, tells := t.beside(of[:i]); tells {
				return use
			}
		case t.has(ifFinished, word):
			return t.finish(of)
		default:
			if use, tells := t.find(noun, word); tells {
				return use
			}
		}
	}
	return plan.UseUnknown
}

// isSpanish reports whether words are those of a Spanish name, whose noun comes first.
func (t *table) isSpanish(of []string) bool {
	return slices.ContainsFunc(of, func(word string) bool { return t.has(small, word) || t.spanish[word] })
}

// beside returns what the words before a noun that could be any room tell.
func (t *table) beside(before []string) (plan.Use, bool) {
	for _, word := range slices.Backward(before) {
		if use, tells := t.find(prefix, word); tells {
			return use, true
		}
	}
	return "", false
}

// finish returns the use of what hangs on whether it is finished: nobody can tell where the
// name does not say so.
func (t *table) finish(of []string) plan.Use {
	for _, at := range []place{unfinished, finished} {
		for _, word := range of {
			if use, tells := t.find(at, word); tells {
				return use
			}
		}
	}
	return plan.UseUnknown
}

// oneWord joins what is written in parts and is one word of a name.
var oneWord = strings.NewReplacer(".", "", "walk-in", "walk")

// nameWords parts a name into its words. What follows a comma or stands in brackets, and
// what follows a word such as "under", tells which room it is, not what it is.
func (t *table) nameWords(name string) (of []string) {
	name = oneWord.Replace(strings.ToLower(name))
	if at := strings.IndexAny(name, ",([;:"); at > 0 {
		name = name[:at]
	}
	for _, word := range words.Plain(name) {
		switch {
		case len(of) > 0 && t.has(where, word):
			return of
		case !unicode.IsDigit(rune(word[0])):
			of = append(of, word)
		}
	}
	return of
}
