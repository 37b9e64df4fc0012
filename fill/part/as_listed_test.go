package part

import (
	"encoding/csv"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"studbay/assets"
	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/unit"
)

// rowsOf reads a table a second time: each row as its cells by column.
func rowsOf(t *testing.T, file string) (all []map[string]string) {
	t.Helper()
	f, err := assets.Tables.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	table, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, cells := range table[1:] {
		row := map[string]string{}
		for i, column := range table[0] {
			row[column] = cells[i]
		}
		all = append(all, row)
	}
	return all
}

// inches reads a cell; an empty one is no length.
func inches(t *testing.T, cell string) unit.Length {
	t.Helper()
	if cell == "" {
		return 0
	}
	l, err := unit.Parse(cell, unit.Inch)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func millimetres(t *testing.T, cell string) unit.Length {
	t.Helper()
	if cell == "" {
		return 0
	}
	l, err := unit.Parse(cell, unit.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func cubic(t *testing.T, cell string) unit.Volume {
	t.Helper()
	if cell == "" {
		return 0
	}
	return volume(t, cell)
}

func number(t *testing.T, cell string) (n int) {
	t.Helper()
	if _, err := fmt.Sscan(cell, &n); err != nil {
		t.Fatal(err)
	}
	return n
}

func sizeOf(t *testing.T, cell string) Outline {
	t.Helper()
	if cell == "" {
		return Outline{}
	}
	if round, ok := strings.CutSuffix(cell, " round"); ok {
		return Outline{inches(t, round), inches(t, round), true}
	}
	sizes := strings.Split(cell, " x ")
	return Outline{inches(t, sizes[0]), inches(t, sizes[1]), false}
}

func partOf(t *testing.T, row map[string]string) Part {
	t.Helper()
	return Part{Price: unit.Money{Cents: int64(number(t, row["price_cents"])), Currency: "USD"}, Confidence: row["confidence"], Source: row["source"]}
}

// same compares what was read of a row with what its cells say.
func same(t *testing.T, got, want any) {
	t.Helper()
	if !reflect.DeepEqual(got, want) {
		t.Errorf("read as\n%+v, the cells say\n%+v", got, want)
	}
}

// TestBoxesAreAsListed and those below it read each table a second time, cell by cell. What
// a column means stands beside the field that it goes into; a box's fit is in a table of its
// own, and a mark is from memory where the row's confidence says so.
func TestBoxesAreAsListed(t *testing.T) {
	fits := map[string]Fit{}
	for _, row := range rowsOf(t, "catalogue/fit.csv") {
		fits[row["box"]] = Fit{inches(t, row["proud_max_in"]), row["adjusts"] == "yes", inches(t, row["clamp_min_in"]), inches(t, row["clamp_max_in"]), inches(t, row["wings_in"]), row["grips_cable"] == "yes", row["listing"]}
	}
	for i, row := range rowsOf(t, "catalogue/boxes.csv") {
		want := Box{
			ID: row["id"], Name: row["name"], Shape: Shape(row["shape"]), Material: Material(row["material"]),
			Mounting: Mounting(row["mounting"]), Gangs: number(t, row["gangs"]),
			Width: inches(t, row["width_in"]), Height: inches(t, row["height_in"]), Depth: inches(t, row["depth_in"]),
			Volume: cubic(t, row["volume_in3"]), Basis: Basis(row["basis"]), Clamps: row["clamps"] == "yes", Listed: row["listed_for"],
			FromMemory: row["basis"] == "marked" && strings.Contains(row["confidence"], "from memory"),
			Fit:        fits[row["id"]], Part: partOf(t, row),
		}
		same(t, *All().Boxes[i], want)
		same(t, All().Box(row["id"]), All().Boxes[i])
		isRound := row["shape"] == "octagon" || row["shape"] == "round"
		outline := Outline{want.Width, want.Height, isRound}
		if want.Width == 0 || want.Height == 0 {
			outline = Outline{} // it depends on the maker
		}
		same(t, All().Boxes[i].Outline(), outline)
		same(t, All().Boxes[i].Space().ConduitBody, row["shape"] == "conduit-body")
		same(t, All().Boxes[i].CarriesFan(), row["listed_for"] == "fan" && row["mounting"] != "old-work")
	}
}

func TestAddsAreAsListed(t *testing.T) {
	for i, row := range rowsOf(t, "catalogue/adds.csv") {
		want := Add{
			ID: row["id"], Name: row["name"], Kind: AddKind(row["kind"]), Gangs: number(t, row["gangs"]),
			Raise: inches(t, row["raise_in"]), Collar: sizeOf(t, row["collar_in"]), Volume: cubic(t, row["volume_in3"]),
			Basis: Basis(row["basis"]), UsualMark: cubic(t, row["usual_mark_in3"]), Part: partOf(t, row),
		}
		for _, shape := range strings.Split(row["fits"], "|") {
			want.Fits = append(want.Fits, Shape(shape))
		}
		same(t, *All().Adds[i], want)
		same(t, All().Add(row["id"]), All().Adds[i])
		same(t, All().Adds[i].ComesAlong(), row["kind"] == "plate" && row["price_cents"] == "0")
	}
}

func TestAssembliesAreAsListed(t *testing.T) {
	for i, row := range rowsOf(t, "catalogue/assemblies.csv") {
		want := Assembly{Code: row["code"], Name: row["name"], Box: All().Box(row["box"]), Cover: All().Add(row["cover"])}
		volume, price, depth, gangs := want.Box.Volume, want.Box.Price.Cents, want.Box.Depth, want.Box.Gangs
		fromMemory := want.Box.FromMemory
		for _, one := range strings.FieldsFunc(row["adds"], func(r rune) bool { return r == ';' }) {
			id, mark, isMarked := strings.Cut(one, "=")
			add := Added{Add: All().Add(id), Marked: cubic(t, mark), FromMemory: isMarked}
			want.Adds = append(want.Adds, add)
			if isMarked {
				volume, fromMemory = volume+add.Marked, true
			} else {
				volume += add.Volume
			}
			price, depth = price+add.Price.Cents, depth+add.Raise
			if add.Kind == Ring || add.Kind == RaisedCover {
				gangs = add.Gangs
			}
		}
		if want.Cover != nil {
			price += want.Cover.Price.Cents
		}
		if want.Box.Depth == 0 {
			depth = 0 // not known
		}
		got := All().Assemblies[i]
		same(t, *got, want)
		same(t, All().Assembly(row["code"]), got)
		same(t, []any{got.Volume(), got.Price().Cents, got.Depth(), got.Gangs(), got.IsFromMemory(), len(got.Space().Parts)},
			[]any{volume, price, depth, gangs, fromMemory, 1 + len(want.Adds)})
	}
}

func TestKindsAreAsListed(t *testing.T) {
	for i, row := range rowsOf(t, "kinds.csv") {
		wiring, err := box.ParseContents(row["wiring"])
		if err != nil {
			t.Fatal(err)
		}
		got := *All().Kinds[i]
		same(t, All().Kind(row["id"]), All().Kinds[i])
		got.spoken, got.sayings = nil, nil // synonym_test.go reads those
		same(t, got, Kind{
			ID: row["id"], Name: row["name"], Family: Family(row["family"]), Letters: row["letters"],
			Height: inches(t, row["height_in"]), RoundHeight: millimetres(t, row["height_mm"]), HeightSource: row["height_source"],
			Host: Host(row["host"]), Gangs: number(t, row["gangs"]), Assembly: All().Assembly(row["assembly"]), Wiring: wiring,
			Device: row["device"], Yokes: number(t, row["yokes"]), Switched: Switching(row["switched"]), Spacing: row["spacing"] == "yes",
			Volts: number(t, row["volts"]), Amps: number(t, row["amps"]),
			Cutout: sizeOf(t, row["cutout_in"]), CutoutSource: row["cutout_source"],
		})
	}
}

func TestFixturesAndBreaksAreAsListed(t *testing.T) {
	for i, row := range rowsOf(t, "fixtures.csv") {
		want := FixtureKind{
			ID: plan.FixtureKind(row["id"]), Letter: row["letter"],
			Width: inches(t, row["width_in"]), Depth: inches(t, row["depth_in"]), Height: inches(t, row["height_in"]), Bottom: inches(t, row["bottom_in"]),
			SizeSource: row["size_source"], Stands: Host(row["stands"]), FloorLine: FloorLine(row["floor_line"]),
			Hides: row["hides"] == "yes", Encloses: row["encloses"] == "yes", Carries: row["carries"] == "yes",
			Covers: Covering(row["covers"]), Body: row["body"], Front: row["front"],
		}
		same(t, *All().Fixtures[i], want)
		same(t, All().Fixture(want.ID), want)
		same(t, All().FixtureIDs()[i], want.ID)
		same(t, want.NewFixture(unit.Imperial), plan.Fixture{Kind: want.ID, Width: want.Width, Depth: want.Depth, Height: want.Height, Bottom: want.Bottom})
	}
	for i, row := range rowsOf(t, "breaks.csv") {
		want := BreakKind{
			ID: plan.BreakKind(row["id"]), Width: inches(t, row["width_in"]), Head: inches(t, row["head_in"]), Sill: inches(t, row["sill_in"]),
			Casing: inches(t, row["casing_in"]), SizeSource: row["size_source"], FloorLine: FloorLine(row["floor_line"]), IsHung: row["hung"] == "yes",
			Out: inches(t, row["out_in"]), CasingGap: inches(t, row["casing_gap_in"]),
			RoughSide: inches(t, row["rough_side_in"]), RoughTop: inches(t, row["rough_top_in"]), Body: row["body"],
		}
		for panel := range strings.FieldsSeq(row["panels"]) {
			want.Panels = append(want.Panels, plan.Panel(panel))
		}
		same(t, *All().Breaks[i], want)
		same(t, All().Break(want.ID), want)
		made := plan.Break{Kind: want.ID, Width: want.Width, Head: want.Head, Sill: want.Sill, Casing: want.Casing, Panels: want.Panels}
		if row["hung"] == "yes" {
			made.Hand, made.Swing = plan.HandLeft, plan.SwingIn
		}
		same(t, want.NewBreak(unit.Imperial), made)
		same(t, want.HasSill(), row["sill_in"] != "")
	}
	same(t, All().Fixture("no such"), FixtureKind{ID: "no such"})
	same(t, All().Break("no such"), BreakKind{ID: "no such"})
}

func TestDevicesAndWhatServesAreAsListed(t *testing.T) {
	for _, row := range rowsOf(t, "catalogue/devices.csv") {
		want := Device{ID: row["device"], Behind: inches(t, row["behind_in"]), Operable: inches(t, row["operable_in"]), IsFan: row["fan"] == "yes"}
		if row["price_cents"] != "" {
			want.Price = unit.Money{Cents: int64(number(t, row["price_cents"])), Currency: "USD"}
		}
		same(t, All().Device(row["device"]), want)
	}
	same(t, All().Device("no such"), Device{ID: "no such"})
	listed := map[string]bool{}
	for _, row := range rowsOf(t, "catalogue/serves.csv") {
		listed[row["kind"]+" "+row["fixture"]] = true
	}
	for _, k := range All().Kinds {
		for _, f := range All().Fixtures {
			same(t, All().Serves(k.ID, f.ID), listed[k.ID+" "+string(f.ID)])
		}
	}
}
