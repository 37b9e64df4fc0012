package desk

import (
	"studbay/plan/words"
)

// speaker is the voice of a window, which changes with the language and the units.
type speaker struct{ words.Voice }

func (s *speaker) say(id, english string, args ...any) string {
	return s.Say(words.New(id, english, args...))
}
