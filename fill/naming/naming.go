// Package naming tells what a room is for from its name, as far as a name tells it. It is a
// guess, to be shown as one beside the name and changed there.
//
// The words stand in assets/room-names.csv: common practice in naming rooms, in English and
// in the Spanish of the Americas.
package naming

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"studbay/plan"
	"studbay/plan/words"
)

// UseOf returns the use that a room's name tells of, plan.UseUnknown where it tells none:
// by whole words, English or Spanish, the noun deciding, which comes last in English and
// first in Spanish. "Room 3" tells nothing. Capitals and accents make no difference.
//
// A name that joins two rooms, such as "kitchen/dining", is a kitchen where one of them is
// and the other a room to live in; of two rooms to live in it is the first. Nobody can tell
// of any other two, such as a bath and a laundry.
func UseOf(name string) plan.Use {
	t := all()
	parts := joined.Split(strings.ToLower(name), -1)
	use := t.useOf(parts[0])
	for _, part := range parts[1:] {
		use = both(use, t.useOf(part))
	}
	return use
}

// joined is what stands between two rooms that are one.
var joined = regexp.MustCompile(`\s*[/&+]\s*|\s+(and|y)\s+`)

// lived are the rooms to live in that ask for no more than a kitchen does.
var lived = []plan.Use{plan.UseKitchen, plan.UseDining, plan.UseBreakfast, plan.UseLiving, plan.UseFamily}

// both returns the use of two rooms in one.
func both(one, other plan.Use) plan.Use {
	switch {
	case one == other:
		return one
	case !slices.Contains(lived, one) || !slices.Contains(lived, other):
		return plan.UseUnknown
	case other == plan.UseKitchen:
		return other
	}
	return one
}

// useOf returns the use that the name of one room tells of.
func (t *table) useOf(name string) plan.Use {
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
			return t.finish(name)
		case t.has(orFinished, word) && t.says(finished, name) && !t.says(unfinished, name):
			return t.finish(name)
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
func (t *table) finish(name string) plan.Use {
	for _, at := range []place{unfinished, finished} {
		for _, word := range words.Plain(name) { // what stands in brackets tells it too
			if use, tells := t.find(at, word); tells {
				return use
			}
		}
	}
	return plan.UseUnknown
}

// says reports whether a name has a word of a place.
func (t *table) says(at place, name string) bool {
	return slices.ContainsFunc(words.Plain(name), func(word string) bool { return t.has(at, word) })
}

// oneWord joins what is written in parts and is one word of a name.
var oneWord = strings.NewReplacer(".", "", "walk-in", "walk", "en-suite", "ensuite", "en suite", "ensuite", "water closet", "wc")

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
