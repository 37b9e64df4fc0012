package table

import (
	"cmp"
	"slices"
	"strings"

	"studbay/plan"
	"studbay/plan/words"
)

// RoomsInOrder lists the rooms of a level as the schedule does.
func RoomsInOrder(l *plan.Level) []*plan.Room {
	rooms := slices.Collect(l.Rooms.All())
	slices.SortStableFunc(rooms, func(x, y *plan.Room) int {
		return cmp.Or(cmp.Compare(x.Name, y.Name), cmp.Compare(x.ID, y.ID))
	})
	return rooms
}

// Layers names the layers of a face from the studs outward.
func Layers(v words.Voice, s *plan.Side) string {
	var layers []string
	for _, l := range s.Finish {
		layers = append(layers, v.Say(words.New("cut.layer", "{0} {1}", l.Text(), words.Height(l.Thickness))))
	}
	return strings.Join(layers, " + ")
}

// FloorText says how thick what is laid on a room's subfloor is, by which heights above the
// finished floor and above the subfloor differ.
func FloorText(v words.Voice, r *plan.Room) string {
	if floor := r.FloorThickness(); floor > 0 {
		return v.Say(words.New("walls.floor", "finished floor {0} above subfloor", words.Height(floor)))
	}
	return v.Say(words.New("walls.no-floor", "no floor told on the subfloor"))
}
