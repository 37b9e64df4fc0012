package price

import (
	"encoding/csv"
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets"
	"studbay/fill/part"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// TestHardwareIsAsListed reads the table of parts a second time, cell by cell.
func TestHardwareIsAsListed(t *testing.T) {
	data, err := fs.ReadFile(assets.Tables, "catalogue/parts.csv")
	if err != nil {
		t.Fatal(err)
	}
	table, err := csv.NewReader(strings.NewReader(string(data))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, cells := range table[1:] { // id, name, group, unit, pack, price_cents, source
		got, ok := Find(cells[0])
		if want := (Part{cells[0], words.New("part."+cells[0], cells[1]), Group(cells[2]), cells[3]}); !ok || got.ID != want.ID || got.Name.String() != want.Name.String() || got.Name.ID != want.Name.ID || got.Group != want.Group || got.Unit != want.Unit {
			t.Errorf("%+v, %v, want %+v", got, ok, want)
		}
		var pack, cents int
		if _, err := fmt.Sscan(cells[4]+" "+cells[5], &pack, &cents); err != nil {
			t.Fatal(err)
		}
		if p, ok := Trial().Of(cells[0]); !ok || p != (Price{unit.Money{Cents: int64(cents), Currency: "USD"}, Of(pack)}) {
			t.Errorf("%s costs %+v, %v, want %d cents for %d", cells[0], p, ok, cents, pack)
		}
	}
}

func TestHardwareThatIsRefused(t *testing.T) {
	const header = "id,name,group,unit,pack,price_cents,source\n"
	for _, tt := range []struct{ text, want string }{
		{"id,name\n", "catalogue/parts.csv:1: the header is not"},
		{header + "nut,Nut,small,each,ten,5,\n", "catalogue/parts.csv:2: pack: "},
		{header + "nut,Nut,small,each,0,5,\n", "catalogue/parts.csv:2: pack: 0 is not above zero"},
		{header + "nut,Nut,small,each,10,cheap,\n", "catalogue/parts.csv:2: price_cents: "},
		{header + "nut,Nut,nuts,each,10,5,\n", `catalogue/parts.csv:2: group: no group "nuts"`},
	} {
		all, err := readHardware(fstest.MapFS{"catalogue/parts.csv": {Data: []byte(tt.text)}})
		if err == nil || !strings.HasPrefix(err.Error(), tt.want) || all != nil {
			t.Errorf("%q: %v, %v, want %s", tt.text, all, err, tt.want)
		}
	}
	all, err := readHardware(fstest.MapFS{"catalogue/parts.csv": {Data: []byte(header + "nut,Nut,small,each,1,0,\n")}})
	if err != nil || len(all) != 1 || all[0].price.Per != One {
		t.Errorf("a pack of one: %+v, %v", all, err)
	}
}

// TestEachThingOfTheCatalogueIsAPart: boxes, what is put on them, and devices; what comes
// with a luminaire is not bought.
func TestEachThingOfTheCatalogueIsAPart(t *testing.T) {
	want := map[string]Group{}
	prices := map[string]int64{}
	for _, b := range part.All().Boxes {
		want[b.ID], prices[b.ID] = Boxes, b.Price.Cents
	}
	for _, a := range part.All().Adds {
		switch {
		case a.Kind != part.Plate:
			want[a.ID] = Rings
		case a.Price.Cents > 0:
			want[a.ID] = Devices
		}
		prices[a.ID] = a.Price.Cents
	}
	for _, name := range part.All().Devices() {
		want[name], prices[name] = Devices, part.All().Device(name).Price.Cents
	}
	seen := map[string]bool{}
	for _, p := range All() {
		if seen[p.ID] {
			t.Errorf("%s is listed twice", p.ID)
		}
		seen[p.ID] = true
		if g, ok := want[p.ID]; ok && (p.Group != g || p.Unit != "each") {
			t.Errorf("%s is %+v, want group %s", p.ID, p, g)
		}
	}
	for id := range want {
		if !seen[id] {
			t.Errorf("%s is not listed", id)
		}
		p, ok := Trial().Of(id)
		if ok != (prices[id] > 0) || ok && p != (Price{unit.Money{Cents: prices[id], Currency: "USD"}, One}) {
			t.Errorf("%s costs %+v, %v, want %d cents", id, p, ok, prices[id])
		}
	}
	if _, ok := Find("canopy"); ok {
		t.Error("the canopy of a luminaire is bought")
	}
}

func TestShelvesInWords(t *testing.T) {
	want := []string{"Boxes", "Rings", "Fittings and bonding", "Blocks and screws", "Cable", "Small parts", "Devices and plates"}
	for i, g := range Groups {
		if got := g.Text().String(); got != want[i] {
			t.Errorf("%s is called %q, want %q", g, got, want[i])
		}
	}
}

func TestCablesAndWhatIsNamedByARecipe(t *testing.T) {
	for _, tt := range []struct {
		size   unit.AWG
		wires  int
		ground bool
		id     string
		name   string
	}{
		{14, 2, true, "cable-14-2", "14/2"},
		{14, 2, false, "cable-14-2-bare", "Cable 14/2 without ground"},
		{8, 5, true, "cable-8-5", "Cable 8/5 with ground"},
	} {
		got := OfCable(tt.size, tt.wires, tt.ground)
		if got.ID != tt.id || !strings.Contains(got.Name.String(), tt.name) || got.Group != Cable || got.Unit != "ft" {
			t.Errorf("%d/%d, ground %v: %+v, want %s", tt.size, tt.wires, tt.ground, got, tt.id)
		}
	}
	if Must("staple").ID != "staple" {
		t.Error("a part of the table is not found")
	}
	defer func() {
		if recover() != "price: no part nail" {
			t.Error("a part that is in no table was taken")
		}
	}()
	Must("nail")
}
