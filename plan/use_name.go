package plan

import (
	"slices"
	"strings"
)

// UseOf returns the use that a room's name tells of, and whether it tells one: by whole
// words, English or Spanish, the noun deciding, which comes last in English and first in
// Spanish. It is a guess, to be shown as one and changed. A name that is only a room with
// a number, as the program gives, is taken for a living room until it has another; any
// other that tells nothing is UseUnknown.
func UseOf(name string) (use Use, tells bool) {
	words := nameWords(name)
	if isSpanish(words) {
		slices.Reverse(words)
	}
	for i := len(words) - 1; i >= 0; i-- {
		switch word := words[i]; {
		case anyRoom[word]:
			if use, tells := besideRoom(words, i); tells {
				return use, true
			}
		case basements[word]:
			return basementUse(words)
		default:
			if use, tells := nouns.find(word); tells {
				return use, true
			}
		}
	}
	if all := letters(strings.ToLower(name)); len(all) == 0 || len(all) == 1 && anyRoom[all[0]] {
		return UseLiving, false
	}
	return UseUnknown, false
}

// isSpanish reports whether words are those of a Spanish name.
func isSpanish(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return spanish[w] })
}

// besideRoom returns what the words before a noun that could be any room tell.
func besideRoom(words []string, at int) (Use, bool) {
	for i := at - 1; i >= 0; i-- {
		if use, tells := befores.find(words[i]); tells {
			return use, true
		}
	}
	return "", false
}

// basementUse is that of a basement: nobody can tell whether it is finished where its
// name does not say so.
func basementUse(words []string) (Use, bool) {
	says := func(all ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(all, w) })
	}
	switch {
	case says("unfinished", "crudo", "not", "sin"):
		return UseBasement, true
	case says("finished", "terminado", "acabado"):
		return UseRecreation, true
	}
	return UseUnknown, false
}
