package plan

import "testing"

func TestUseOf(t *testing.T) {
	for name, want := range map[string]Use{
		"Bath": UseBath, "Master bedroom": UseBedroom, "Kitchen 2": UseKitchen, "Stair hall": UseHall,
		"Covered porch": UseOutdoors, "Cocina": UseKitchen, "Baño": UseBath, "Bunk room": UseBedroom,
		"Sitting room": UseLiving, "Golden room": UseLiving, "": UseLiving,
	} {
		if got, _ := UseOf(name); got != want {
			t.Errorf("%q tells of %s, want %s", name, got, want)
		}
	}
}

func TestUseAndPrefixFollowTheName(t *testing.T) {
	p, left, _ := twoRooms(t)
	rename := func(p Plan, title string) *Room {
		t.Helper()
		q, err := RenameRoom{left.ID, title}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		r, _ := q.Room(left.ID)
		return r
	}
	start := *left
	start.Name, start.Use, start.Prefix = "Room 1", UseLiving, "R"
	p, err := ChangeRoom{start}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if r := rename(p, "Kitchen"); r.Use != UseKitchen || r.Prefix != "K" {
		t.Errorf("renamed to Kitchen: use %s, prefix %s", r.Use, r.Prefix)
	}
	chosen := start
	chosen.Use, chosen.Prefix = UseDen, "Q"
	q, err := ChangeRoom{chosen}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if r := rename(q, "Kitchen"); r.Use != UseDen || r.Prefix != "Q" {
		t.Errorf("what was chosen by hand became use %s, prefix %s", r.Use, r.Prefix)
	}
	worn, err := AddOpening{Opening{ID: "o22222222", Kind: "duplex", At: OnFace(left.Sides[0].ID, inches(20)), Height: CentreAt(inches(16)), Gangs: 1, Status: StatusNew}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if r := rename(worn, "Kitchen"); r.Prefix != "R" {
		t.Errorf("a prefix that R1 wears became %s", r.Prefix)
	}
}
