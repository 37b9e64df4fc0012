package naming

import (
	"strings"
	"testing"
	"testing/fstest"

	"studbay/plan"
)

func TestUseOf(t *testing.T) {
	for name, want := range map[string]plan.Use{ // what people mean by such a name: common practice
		"Bath": plan.UseBath, "Master bedroom": plan.UseBedroom, "Kitchen 2": plan.UseKitchen, "Stair hall": plan.UseHall,
		"Covered porch": plan.UseOutdoors, "Cocina": plan.UseKitchen, "Baño": plan.UseBath, "Bunk room": plan.UseBedroom,
		"Sitting room": plan.UseLiving, "Garden room": plan.UseSunroom, "Garden": plan.UseOutdoors, "Bedroom closet": plan.UseCloset,
		"Guest closet": plan.UseCloset, "Guest": plan.UseBedroom, "Guest room": plan.UseBedroom, "Attic": plan.UseAttic, "Storage": plan.UseStorage,
		"Vestibule": plan.UseFoyer, "Landing": plan.UseHall, "WIC": plan.UseCloset, "W.I.C.": plan.UseCloset, "Walk-in closet": plan.UseCloset,
		"W.C.": plan.UseBath, "Finished basement": plan.UseRecreation, "Unfinished basement": plan.UseBasement, "Basement bath": plan.UseBath,
		"Basement stairs": plan.UseStairs, "Closet under stairs": plan.UseCloset, "Under stairs closet": plan.UseCloset, "Den off kitchen": plan.UseDen, "Hall bath": plan.UseBath,
		"Bath, hall": plan.UseBath, "Bedroom (over garage)": plan.UseBedroom, "Kids' room": plan.UseBedroom, "Bedrooms": plan.UseBedroom,
		"Mud room": plan.UseMudroom, "Family room": plan.UseFamily, "Great room": plan.UseLiving, "Garden shed": plan.UseStorage,
		"Breakfast nook": plan.UseBreakfast, "Laundry room": plan.UseLaundry, "Kitchen porch": plan.UseOutdoors, "Dining room": plan.UseDining,
		"Storage room": plan.UseStorage, "Guest bath": plan.UseBath, "Powder room": plan.UseBath, "Entry hall": plan.UseHall,
		"Clóset del dormitorio": plan.UseCloset, "Baño de visitas": plan.UseBath, "Cuarto de baño": plan.UseBath, "Sala de estar": plan.UseLiving,
		"Dormitorio de huéspedes": plan.UseBedroom, "Cuarto de lavado": plan.UseLaundry, "Jardín": plan.UseOutdoors, "Ático": plan.UseAttic,
		"Vestíbulo": plan.UseFoyer, "Bodega": plan.UseStorage, "Sótano terminado": plan.UseRecreation, "Sótano sin terminar": plan.UseBasement,
		"Cuarto de juegos": plan.UseRecreation, "Pasillo del dormitorio": plan.UseHall, "Descanso de la escalera": plan.UseHall,
		"Baño dormitorio": plan.UseBath, "Sala comedor": plan.UseLiving, "CLOSET": plan.UseCloset, "Habitación principal": plan.UseBedroom, "Baño principal": plan.UseBath, "Bano": plan.UseBath,
		"En suite": plan.UseBath, "En-suite bath": plan.UseBath, "Water closet": plan.UseBath, "Finished attic": plan.UseRecreation,
		"Unfinished attic": plan.UseAttic, "Attic, not finished": plan.UseAttic, "Ático terminado": plan.UseRecreation, "Basement (finished)": plan.UseRecreation,
		"Basement, unfinished": plan.UseBasement, "Kitchen/dining": plan.UseKitchen, "Dining / Kitchen": plan.UseKitchen, "Kitchen & living": plan.UseKitchen,
		"Living/dining": plan.UseLiving, "Kitchen and family room": plan.UseKitchen, "Attic bedroom": plan.UseBedroom,
		"Bath/laundry": plan.UseUnknown, "Laundry & mud room": plan.UseUnknown, "Closet/hall": plan.UseUnknown, "Cocina y comedor": plan.UseKitchen, "Baño y lavandería": plan.UseUnknown,
		"Cuarto de servicio": plan.UseUnknown, // a maid's bedroom to some, a laundry to others
		// Nobody can tell: no check is to be switched on or off by such a name.
		"Golden room": plan.UseUnknown, "Basement": plan.UseUnknown, "Cellar": plan.UseUnknown, "Sótano": plan.UseUnknown, "Room over garage": plan.UseUnknown,
		"Workshop": plan.UseUnknown, "Zebra": plan.UseUnknown,
		"": plan.UseUnknown, "3": plan.UseUnknown, "Room": plan.UseUnknown, "Room 3": plan.UseUnknown, "Cuarto 3": plan.UseUnknown, "Habitación": plan.UseUnknown, "Halle": plan.UseUnknown,
	} {
		if got := UseOf(name); got != want {
			t.Errorf("%q tells of %s, want %s", name, got, want)
		}
	}
}

// TestATableOfNamesIsRefused says file, line and column of what is wrong with one.
func TestATableOfNamesIsRefused(t *testing.T) {
	for name, tt := range map[string]struct{ row, want string }{
		"a use nobody knows":        {"grotto,en,noun,cave", "room-names.csv:3: use"},
		"a noun that tells nothing": {",en,noun,cave", "room-names.csv:3: use"},
		"a small word with a use":   {"bath,es,small,de", "room-names.csv:3: use"},
		"no place":                  {"bath,en,after,cave", "room-names.csv:3: place"},
		"a language of others":      {"bath,fr,noun,bain", "room-names.csv:3: language"},
		"two words":                 {"bath,en,noun,bath room", "room-names.csv:3: word"},
		"the same word again":       {"kitchen,en,noun,Bath", "room-names.csv:3: word"},
	} {
		text := "use,language,place,word\nbath,en,noun,bath\n" + tt.row + "\n"
		_, err := read(fstest.MapFS{file: {Data: []byte(text)}})
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v, want %s", name, err, tt.want)
		}
	}
}
