package index

import "studbay/plan"

// isInBasement reports whether a room is in a basement, finished or not: by its use, or by
// what it or its level is called.
func isInBasement(l *plan.Level, r *plan.Room) bool {
	return r.Use == plan.UseBasement || plan.TellsBasement(r.Name) || l != nil && plan.TellsBasement(l.Name)
}

// levels marks the rooms of the levels whose names no longer say the same of a basement.
func (t touching) levels(changed []plan.Differing[*plan.Level]) {
	for _, l := range changed {
		if l.Old == nil || l.New == nil || plan.TellsBasement(l.Old.Name) == plan.TellsBasement(l.New.Name) {
			continue
		}
		for r := range l.New.Rooms.All() {
			t.rooms[r.ID] = true
		}
	}
}
