package desk

import (
	"fyne.io/fyne/v2/lang"

	"studbay/plan/words"
)

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
