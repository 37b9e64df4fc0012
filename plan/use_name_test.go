package plan

import "testing"

func TestUseOf(t *testing.T) {
	for name, want := range map[string]Use{ // what people mean by such a name: common practice
		"Bath": UseBath, "Master bedroom": UseBedroom, "Kitchen 2": UseKitchen, "Stair hall": UseHall,
		"Covered porch": UseOutdoors, "Cocina": UseKitchen, "Baño": UseBath, "Bunk room": UseBedroom,
		"Sitting room": UseLiving, "Garden room": UseSunroom, "Garden": UseOutdoors, "Bedroom closet": UseCloset,
		"Guest closet": UseCloset, "Guest": UseBedroom, "Guest room": UseBedroom, "Attic": UseAttic, "Storage": UseStorage,
		"Vestibule": UseFoyer, "Landing": UseHall, "WIC": UseCloset, "W.I.C.": UseCloset, "Walk-in closet": UseCloset,
		"W.C.": UseBath, "Finished basement": UseRecreation, "Unfinished basement": UseBasement, "Basement bath": UseBath,
		"Basement stairs": UseStairs, "Closet under stairs": UseCloset, "Den off kitchen": UseDen, "Hall bath": UseBath,
		"Bath, hall": UseBath, "Bedroom (over garage)": UseBedroom, "Kids' room": UseBedroom, "Bedrooms": UseBedroom,
		"Mud room": UseMudroom, "Family room": UseFamily, "Great room": UseLiving, "Garden shed": UseStorage,
		"Breakfast nook": UseBreakfast, "Laundry room": UseLaundry, "Kitchen porch": UseOutdoors, "Dining room": UseDining,
		"Storage room": UseStorage, "Guest bath": UseBath, "Powder room": UseBath, "Entry hall": UseHall,
		"Clóset del dormitorio": UseCloset, "Baño de visitas": UseBath, "Cuarto de baño": UseBath, "Sala de estar": UseLiving,
		"Dormitorio de huéspedes": UseBedroom, "Cuarto de lavado": UseLaundry, "Jardín": UseOutdoors, "Ático": UseAttic,
		"Vestíbulo": UseFoyer, "Bodega": UseStorage, "Sótano terminado": UseRecreation, "Sótano sin terminar": UseBasement,
		"Cuarto de juegos": UseRecreation, "Pasillo del dormitorio": UseHall, "Descanso de la escalera": UseHall,
		"": UseLiving, "Room 3": UseLiving, "Cuarto 3": UseLiving,
		// Nobody can tell: no check is to be switched on or off by such a name.
		"Golden room": UseUnknown, "Basement": UseUnknown, "Cellar": UseUnknown, "Sótano": UseUnknown, "Room over garage": UseUnknown,
		"Workshop": UseUnknown, "Zebra": UseUnknown, "Halle": UseUnknown,
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
