package wall

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// RoomsApart looks for rooms drawn over each other.
var RoomsApart = rule.Rule{
	ID:    "rooms-apart",
	Title: words.New("rule.rooms-apart.title", "Rooms clear of each other"),
	Doc:   words.New("rule.rooms-apart.doc", `No room of a level covers a part of another (common practice: two things cannot be in one place). Rooms that share an edge or a corner do not; how thick the wall between them is is not checked here.`),
	Level: rule.OnLevel(seeRooms, checkRoomsApart),
}

// overlapSlack is how deep two rooms may run into each other by rounding the corners of
// slanted walls.
const overlapSlack = 1000 * unit.Nanometre

// levelRooms are the rooms of a level.
type levelRooms struct{ all plan.Set[*plan.Room] }

func seeRooms(_ *index.Index, level *plan.Level) levelRooms { return levelRooms{level.Rooms} }

// Parts returns the rooms.
func (v levelRooms) Parts() []any { return []any{v.all} }

// outline is a room with the ground that it covers.
type outline struct {
	room  *plan.Room
	edge  geom.Polygon
	cover geom.Box
}

// checkRoomsApart takes the rooms from left to right, so that each is compared only with
// those that begin before it ends.
func checkRoomsApart(v levelRooms, fig *code.Figures) (found []rule.Finding) {
	var rooms []outline
	for r := range v.all.All() {
		edge := r.Outline()
		rooms = append(rooms, outline{r, edge, edge.Box()})
	}
	slices.SortStableFunc(rooms, func(a, b outline) int { return cmp.Compare(a.cover.Min.X, b.cover.Min.X) })
	met := make(meetings, len(rooms))
	for i, a := range rooms {
		for j := i + 1; j < len(rooms) && rooms[j].cover.Min.X < a.cover.Max.X; j++ {
			if a.edge.Overlaps(rooms[j].edge, overlapSlack) {
				met.add(i, j)
			}
		}
	}
	for i, a := range rooms {
		if met.tells(i) {
			f := overlap(a.room, rooms[met[i].first].room, met[i].count)
			f.Remedies = moveApart(a, rooms, fig.Units.Grid())
			found = append(found, f)
		}
	}
	return found
}

func overlap(room, other *plan.Room, count int) rule.Finding {
	f := rule.Finding{
		Severity: rule.Stop, Room: room.ID, About: room.ID, Measured: rule.CountOf(count),
		Message: words.New("rule.rooms-apart.two", "{0} and {1} overlap", room.Name, other.Name),
		Why:     words.New("rule.rooms-apart.why", "The ground of one covers a part of the other: two things cannot be in one place (common practice)."),
	}
	if count > 1 {
		f.Message = words.New("rule.rooms-apart.many", "{0} overlaps {1} other rooms, {2} among them", room.Name, count, other.Name)
	}
	return f
}
