package open_test

import (
	"fmt"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"testing"
)

func TestOpenDecisions(t *testing.T) {
	r := filltest.OneWall(t, 60)
	r.Room.Use = plan.UseHall
	plug, door, tub := r.Receptacle(0, 40), r.Door(0, 0, 30), r.Fixture(plan.FixtureTub, 2, 0, 60)
	place := func(f rule.Finding) string { return fmt.Sprintf("%s|%s|%s", f.Level, f.Room, f.Opening) }
	level := "v22222222"
	for _, tt := range []struct {
		name  string
		about []plan.ID
		why   string
		place string
	}{
		{"nothing", nil, "", "||"},
		{"a room", []plan.ID{r.Room.ID}, "One thing in the plan depends on it.", level + "|" + string(r.Room.ID) + "|"},
		{"a side", []plan.ID{r.Room.Sides[1].ID}, "One thing in the plan depends on it.", level + "|" + string(r.Room.ID) + "|"},
		{"a door", []plan.ID{door.ID}, "One thing in the plan depends on it.", level + "||"},
		{"a tub", []plan.ID{tub.ID}, "One thing in the plan depends on it.", level + "||"},
		{"an opening", []plan.ID{plug.ID}, "One thing in the plan depends on it.", level + "||" + string(plug.ID)},
		{"two things", []plan.ID{r.Room.ID, plug.ID}, "2 things in the plan depend on it.", level + "|" + string(r.Room.ID) + "|" + string(plug.ID)},
		{"what is gone", []plan.ID{"ozzzzzzzz"}, "One thing in the plan depends on it.", "||"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			found := r.Checked([]plan.Decision{{Question: "How high?", About: tt.about}}, nil).Of("plan")
			if len(found) != 1 {
				t.Fatalf("%+v", found)
			}
			f := found[0]
			if f.Severity != rule.Note || !f.IsOpen || f.Message.String() != "How high?" || f.Why.String() != tt.why || place(f) != tt.place {
				t.Errorf("%s, %q, %q at %s, want %q at %s", f.Severity, f.Message, f.Why, place(f), tt.why, tt.place)
			}
		})
	}
	if found := r.Checked(nil, nil).Of("plan"); found != nil {
		t.Errorf("no decision, yet %+v", found)
	}
}
