// Package language knows the languages that the program speaks, and which of them an
// environment asks for. It needs no window.
package language

import (
	"slices"
	"strings"

	"studbay/assets/messages"
	"studbay/plan/words"
)

// Language is one that texts are there in.
type Language struct {
	Tag  string // as in BCP 47, such as es
	Name string // as it names itself
}

// All lists the languages; the first is that of the source.
var All = []Language{{"en", "English"}, {"es", "Español"}}

// Source is the tag of the language that the source is written in.
var Source = All[0].Tag

// Tags lists what a user types.
func Tags() (tags []string) {
	for _, l := range All {
		tags = append(tags, l.Tag)
	}
	return tags
}

// Known returns the tag of a language by a name such as es, es-MX or es_PE.UTF-8. The
// error lists those there are.
func Known(name string) (tag string, err error) {
	first, _, _ := strings.Cut(strings.ToLower(strings.ReplaceAll(name, "_", "-")), ".")
	first, _, _ = strings.Cut(first, "-")
	if slices.Contains(Tags(), first) {
		return first, nil
	}
	return "", words.Fault("language.none", "no language \"{0}\"; there are {1}", name, strings.Join(Tags(), ", "))
}

// OfEnvironment returns the language that the locale asks for by the first of LC_ALL,
// LC_MESSAGES and LANG that says anything (POSIX.1-2017, XBD 8.2): that of the source
// where it is one there is no catalogue for.
func OfEnvironment(env func(string) string) (tag string) {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if locale := env(name); locale != "" {
			if tag, err := Known(locale); err == nil {
				return tag
			}
			return Source
		}
	}
	return Source
}

// Other returns the language to write beside one on a sheet in two.
func Other(tag string) string {
	for _, l := range All {
		if l.Tag != tag {
			return l.Tag
		}
	}
	return Source
}

// Of returns the language of a catalogue that Catalogue gave, and the other to write
// beside it.
func Of(c words.Catalogue) (own, other Language) {
	if c == nil {
		return All[0], All[1]
	}
	return All[1], All[0]
}

// Catalogue returns a language's texts, nil for that of the source. The catalogues are
// ours and tested, so a fault in one is a broken build.
func Catalogue(tag string) words.Catalogue {
	data, err := messages.Files.ReadFile(tag + ".json")
	if err != nil {
		return nil
	}
	c, err := words.Load(data)
	if err != nil {
		panic(err)
	}
	return c
}
