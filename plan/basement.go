package plan

import (
	"slices"

	"studbay/plan/words"
)

// basementWords are those of English and Spanish by which the name of a level or a room
// tells that it is below the ground (common practice in naming).
var basementWords = []string{"basement", "cellar", "sotano"}

// TellsBasement reports whether a name tells of a basement.
func TellsBasement(name string) bool {
	return slices.ContainsFunc(words.Plain(name), func(w string) bool { return slices.Contains(basementWords, w) })
}
