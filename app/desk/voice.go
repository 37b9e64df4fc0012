package desk

import (
	"fyne.io/fyne/v2/lang"

	"studbay/assets/messages"
	"studbay/plan/words"
)

// languages lists the catalogues by their tag, and how each names itself.
var languages = []struct{ tag, name string }{{"en", "English"}, {"es", "Español"}}

// speaker is the voice of a window, which changes with the language and the units.
type speaker struct{ words.Voice }

func (s *speaker) say(id, english string, args ...any) string {
	return s.Say(words.New(id, english, args...))
}

// languageTag returns the language in force.
func (p prefs) languageTag() string {
	if chosen := p.language(); chosen != "" {
		return chosen
	}
	return string(lang.SystemLocale().LanguageString()[:2])
}

// catalogueOf returns a language's catalogue, or nil for English. The catalogues are
// ours and tested, so a fault in one is a broken build.
func catalogueOf(tag string) words.Catalogue {
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
