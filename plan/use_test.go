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
