package part

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"studbay/fill/rows"
	"studbay/plan/words"
)

// Likeness says how well what somebody looks for fits what a kind is called in everyday
// words. Less is better.
type Likeness int

// The likenesses.
const (
	SameName  Likeness = iota // it is what the kind is called
	NameBegun                 // a name of the kind begins with it
	WordsIn                   // a name of the kind has all its words, or their beginnings
	Unlike
)

var synonymColumns = []string{"kind", "language", "word"}

// readSynonyms gives the kinds what people call them: common practice of homes and of the
// trade, in English and in the Spanish of the Americas.
func (c *Catalogue) readSynonyms(from fs.FS) error {
	const file = "synonyms.csv"
	table, err := rows.Read(from, file, synonymColumns...)
	if err != nil {
		return err
	}
	for _, row := range table {
		k := c.kinds[row.Cell("kind")]
		if k == nil {
			return row.Wrong("kind", fmt.Errorf("no kind %q", row.Cell("kind")))
		}
		if language := row.Cell("language"); language != "en" && language != "es" {
			return row.Wrong("language", fmt.Errorf("%q: want en or es", language))
		}
		name := words.Plain(row.Cell("word"))
		if len(name) == 0 {
			return row.Wrong("word", fmt.Errorf("%q holds no word", row.Cell("word")))
		}
		k.spoken, k.sayings = append(k.spoken, name), append(k.sayings, row.Cell("word"))
	}
	return nil
}

// Sayings lists what people call the kind beside its name, in all languages.
func (k *Kind) Sayings() []string { return slices.Clone(k.sayings) }

// Called tells how well a text fits what people call the kind, whatever language they
// speak: a window in one language is used by people of the other too. Accents, capitals,
// hyphens and the s of a plural make no difference. Its name in the catalogue is not
// looked at; an empty text fits nothing.
func (k *Kind) Called(text string) Likeness {
	found := Unlike
	wanted := words.Plain(text)
	if len(wanted) == 0 {
		return found
	}
	for _, name := range k.spoken {
		found = min(found, likeness(name, wanted))
	}
	return found
}

// likeness compares the words of a name with those looked for.
func likeness(name, wanted []string) Likeness {
	if len(wanted) <= len(name) && allBegin(name[:len(wanted)], wanted) {
		if len(wanted) == len(name) && sameWord(name[len(name)-1], wanted[len(wanted)-1]) {
			return SameName
		}
		return NameBegun
	}
	for _, word := range wanted {
		if !anyBegins(name, word) {
			return Unlike
		}
	}
	return WordsIn
}

// allBegin reports whether each word is the one wanted at its place, or begins with it.
func allBegin(name, wanted []string) bool {
	for i, word := range name {
		if !begins(word, wanted[i]) {
			return false
		}
	}
	return true
}

func anyBegins(name []string, wanted string) bool {
	for _, word := range name {
		if begins(word, wanted) {
			return true
		}
	}
	return false
}

// begins reports whether a word begins with the one wanted, or is its singular.
func begins(word, wanted string) bool {
	return strings.HasPrefix(word, wanted) || sameWord(word, wanted)
}

// sameWord reports whether the word wanted is a word or its plural, as both languages
// make it of most words.
func sameWord(word, wanted string) bool {
	return word == wanted || word+"s" == wanted || word+"es" == wanted
}
