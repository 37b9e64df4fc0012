package index

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// basementWords are those of English and Spanish by which the name of a level or a room
// tells that it is below the ground (common practice in naming).
var basementWords = []string{"basement", "cellar", "sotano"}

// TellsBasement reports whether a name tells of a basement.
func TellsBasement(name string) bool {
	return slices.ContainsFunc(words.Plain(name), func(w string) bool { return slices.Contains(basementWords, w) })
}

// IsInBasement reports whether a room is in a basement, finished or not: by its use, or by
// what it or its level is called.
func IsInBasement(l *plan.Level, r *plan.Room) bool {
	return r.Use == plan.UseBasement || TellsBasement(r.Name) || l != nil && TellsBasement(l.Name)
}

// levels marks the rooms of the levels whose names no longer say the same of a basement.
func (t touching) levels(changed []plan.Differing[*plan.Level]) {
	for _, l := range changed {
		if l.Old == nil || l.New == nil || TellsBasement(l.Old.Name) == TellsBasement(l.New.Name) {
			continue
		}
		for r := range l.New.Rooms.All() {
			t.rooms[r.ID] = true
		}
	}
}
