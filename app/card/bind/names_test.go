package bind

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Rooms of one name on two levels are told apart by the level; others go by their name alone.
func TestRoomsOfOneNameAreToldApartByTheLevel(t *testing.T) {
	p := plan.New("House", "vaaaaaaaa")
	room := func(id, name string, sides ...plan.ID) plan.Room {
		r := plan.NewRoom(plan.ID(id), name, plan.UseBedroom, geom.Polygon{{}, {X: 3 * unit.Metre}, {X: 3 * unit.Metre, Y: 3 * unit.Metre}, {Y: 3 * unit.Metre}}, sides)
		r.Ceiling = 8 * unit.Foot
		return r
	}
	study := room("rcaaaaaaa", "Study", "siaaaaaaa", "sjaaaaaaa", "skaaaaaaa", "smaaaaaaa")
	for _, e := range []edit.Edit{
		edit.AddLevel{ID: "vbaaaaaaa", Title: "Upper", Elevation: 9 * unit.Foot},
		edit.AddRoom{Level: "vaaaaaaaa", Room: room("raaaaaaaa", "Bedroom", "saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa")},
		edit.AddRoom{Level: "vbaaaaaaa", Room: room("rbaaaaaaa", "Bedroom", "seaaaaaaa", "sfaaaaaaa", "sgaaaaaaa", "shaaaaaaa")},
		edit.AddLevel{ID: "vcaaaaaaa", Title: "Attic", Elevation: 18 * unit.Foot},
		edit.AddRoom{Level: "vcaaaaaaa", Room: study},
	} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	c := &Context{Index: index.New(p)}
	for id, want := range map[plan.ID]string{"rbaaaaaaa": "Bedroom, Upper", "rcaaaaaaa": "Study"} {
		r, _ := p.Room(id)
		if got := c.RoomApart(r); got != want {
			t.Errorf("it is called %q, want %q", got, want)
		}
	}
}
