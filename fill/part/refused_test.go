package part

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets"
)

// ourTables returns the tables that a catalogue is read from.
func ourTables(t *testing.T) fstest.MapFS {
	t.Helper()
	tables := fstest.MapFS{}
	for _, file := range []string{"catalogue/boxes.csv", "catalogue/fit.csv", "catalogue/devices.csv", "catalogue/serves.csv", "catalogue/adds.csv", "catalogue/assemblies.csv", "kinds.csv", "fixtures.csv", "breaks.csv", "synonyms.csv"} {
		data, err := fs.ReadFile(assets.Tables, file)
		if err != nil {
			t.Fatal(err)
		}
		tables[file] = &fstest.MapFile{Data: data}
	}
	return tables
}

// withCell returns the tables with another text in one cell, and the line that it is on: that
// of the first row whose first cell is of a name, or the first of all where none is named.
func withCell(t *testing.T, file, first, column, text string) (fs.FS, int) {
	t.Helper()
	tables := ourTables(t)
	all, err := csv.NewReader(bytes.NewReader(tables[file].Data)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	at := slices.Index(all[0], column)
	row := slices.IndexFunc(all[1:], func(cells []string) bool { return first == "" || cells[0] == first })
	if at < 0 || row < 0 {
		t.Fatalf("%s has no %s of %q to spoil", file, column, first)
	}
	all[row+1][at] = text
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	if err := w.WriteAll(all); err != nil {
		t.Fatal(err)
	}
	tables[file] = &fstest.MapFile{Data: out.Bytes()}
	return tables, row + 2
}

const (
	noWord   = "is none of"
	noCount  = "is not a number of zero or more"
	noLength = "is not above zero"
	noID     = "is not lower-case letters, digits, points and hyphens"
)

// TestACellThatIsRefused spoils one cell of our tables at a time: what a column takes is
// said by the column's own sentence, with the file, the line and the column before it.
func TestACellThatIsRefused(t *testing.T) {
	refuse := func(file, first, column, text, want string) {
		t.Helper()
		tables, line := withCell(t, file, first, column, text)
		_, err := Read(tables)
		place := fmt.Sprintf("%s:%d: %s: ", file, line, column)
		if err == nil || !strings.HasPrefix(err.Error(), place) || !strings.Contains(err.Error(), want) {
			t.Errorf("%s of %q in %s: %q gives %v, want %s...%s", column, first, file, text, err, place, want)
		}
	}
	for _, c := range []struct{ file, columns, text, want string }{
		{"catalogue/boxes.csv", "id", "Pn1", noID},
		{"catalogue/boxes.csv", "name confidence", "", "empty"},
		{"catalogue/boxes.csv", "shape material mounting basis clamps listed_for", "other", noWord},
		{"catalogue/boxes.csv", "gangs price_cents", "-1", noCount},
		{"catalogue/boxes.csv", "gangs price_cents", "1000001", noCount},
		{"catalogue/boxes.csv", "gangs price_cents", "", noCount},
		{"catalogue/boxes.csv", "width_in height_in depth_in", "0", noLength},
		{"catalogue/boxes.csv", "width_in height_in depth_in", "wide", "wide"},
		{"catalogue/boxes.csv", "volume_in3", "", "a volume of 0 in³ on the basis"},
		{"catalogue/boxes.csv", "volume_in3", "much", "much"},
		{"catalogue/adds.csv", "id", "-ring", noID},
		{"catalogue/adds.csv", "name fits confidence", "", "empty"},
		{"catalogue/adds.csv", "kind basis", "other", noWord},
		{"catalogue/adds.csv", "gangs price_cents", "few", noCount},
		{"catalogue/adds.csv", "raise_in", "-1/4", noLength},
		{"catalogue/adds.csv", "collar_in", "", "a ring and nothing else has a collar"},
		{"catalogue/adds.csv", "collar_in", "2 x 3 round", "it is neither"},
		{"catalogue/adds.csv", "collar_in", "2 x 0", noLength},
		{"catalogue/adds.csv", "collar_in", "-2 x 3", noLength},
		{"catalogue/adds.csv", "volume_in3", "3", "a volume of 3 in³ on the basis"},
		{"catalogue/adds.csv", "usual_mark_in3", "much", "much"},
		{"catalogue/assemblies.csv", "code", "PN01", "is not two capitals and a number"},
		{"catalogue/assemblies.csv", "code", "pn1", "is not two capitals and a number"},
		{"catalogue/assemblies.csv", "name", "", "empty"},
		{"catalogue/assemblies.csv", "adds", "ring", `no part "ring"`},
		{"catalogue/assemblies.csv", "cover", "lid", `no part "lid"`},
		{"catalogue/assemblies.csv", "cover", "blank-rd", "blank-rd does not fit a device box"},
		{"catalogue/fit.csv", "box", "pn1", `no box "pn1"`},
		{"catalogue/fit.csv", "proud_max_in", "0", noLength},
		{"catalogue/fit.csv", "confidence", "", "empty"},
		{"catalogue/devices.csv", "device confidence", "", "empty"},
		{"catalogue/devices.csv", "behind_in operable_in", "0", noLength},
		{"catalogue/devices.csv", "fan", "maybe", noWord},
		{"catalogue/devices.csv", "price_cents", "-1", noCount},
		{"catalogue/serves.csv", "kind", "stove", `no kind "stove"`},
		{"catalogue/serves.csv", "fixture", "stove", `no fixture "stove"`},
		{"kinds.csv", "id", "Duplex", noID},
		{"kinds.csv", "name height_source", "", "empty"},
		{"kinds.csv", "family host switched spacing", "other", noWord},
		{"kinds.csv", "height_in height_mm", "0", noLength},
		{"kinds.csv", "gangs yokes volts amps", "-1", noCount},
		{"kinds.csv", "cutout_in", "wide", "it is neither"},
		{"fixtures.csv", "id size_source body front", "", "empty"},
		{"fixtures.csv", "width_in depth_in height_in bottom_in", "0", noLength},
		{"fixtures.csv", "stands floor_line hides encloses carries covers", "other", noWord},
		{"breaks.csv", "id size_source body", "", "empty"},
		{"breaks.csv", "width_in head_in sill_in casing_in out_in rough_side_in rough_top_in casing_gap_in", "0", noLength},
		{"breaks.csv", "floor_line hung", "other", noWord},
		{"breaks.csv", "panels", "fixed", "panels are wanted where the floor line goes by them"},
		{"synonyms.csv", "language", "", "want en or es"},
	} {
		for column := range strings.FieldsSeq(c.columns) {
			refuse(c.file, "", column, c.text, c.want)
		}
	}
	refuse("catalogue/fit.csv", "ow1-14", "clamp_max_in", "3/16", "a range is wanted for an old-work box")
}

// TestARowWhoseCellsDoNotAgree: what a row says in one cell goes with what it says in
// another. The sentence names the row.
func TestARowWhoseCellsDoNotAgree(t *testing.T) {
	for _, c := range []struct{ file, first, column, text, want string }{
		{"kinds.csv", "duplex", "height_in", "", "duplex: a height is wanted in a wall and nowhere else"},
		{"kinds.csv", "duplex", "height_mm", "", "duplex: a height is wanted in a wall and nowhere else"},
		{"kinds.csv", "duplex", "yokes", "0", "duplex: 0 yokes, but 1 in the wiring"},
		{"kinds.csv", "duplex", "gangs", "2", "duplex: 2 gangs, but PN2 has 1"},
		{"kinds.csv", "duplex", "assembly", "PN4", "duplex: 1 gangs, but PN4 has 2"},
		{"kinds.csv", "duplex", "volts", "0", "duplex: volts and amperes are wanted of a receptacle and nothing else"},
		{"kinds.csv", "duplex", "amps", "0", "duplex: volts and amperes are wanted of a receptacle and nothing else"},
		{"kinds.csv", "recessed", "cutout_source", "", "recessed: a cut-out is wanted with its source"},
		{"fixtures.csv", "counter", "width_in", "", "a width, a depth and a height are wanted"},
		{"fixtures.csv", "counter", "height_in", "", "a width, a depth and a height are wanted"},
		{"breaks.csv", "door", "width_in", "", "a width is wanted, and a head above the sill"},
		{"breaks.csv", "door", "head_in", "", "a width is wanted, and a head above the sill"},
		{"breaks.csv", "window", "sill_in", "80", "a width is wanted, and a head above the sill"},
		{"breaks.csv", "door", "panels", "fixed", "panels are wanted where the floor line goes by them"},
	} {
		tables, line := withCell(t, c.file, c.first, c.column, c.text)
		_, err := Read(tables)
		if err == nil || !strings.HasPrefix(err.Error(), fmt.Sprintf("%s:%d: ", c.file, line)) || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s of %s as %q: %v, want %q in it", c.column, c.first, c.text, err, c.want)
		}
	}
}

// TestACellAtItsBoundIsTaken: zero and a million are counts, a thing may be without a price,
// a gang may be none, and cells that may be empty are.
func TestACellAtItsBoundIsTaken(t *testing.T) {
	for _, c := range []struct{ file, first, column, text string }{
		{"catalogue/boxes.csv", "", "price_cents", "0"},
		{"catalogue/boxes.csv", "", "price_cents", "1000000"},
		{"catalogue/boxes.csv", "", "source", ""},
		{"catalogue/boxes.csv", "", "depth_in", ""},
		{"catalogue/devices.csv", "", "price_cents", ""},
		{"kinds.csv", "duplex", "device", ""},
		{"kinds.csv", "duplex", "wiring", ""},
		{"breaks.csv", "door", "sill_in", ""},
		{"breaks.csv", "window", "sill_in", "79 15/16"},
		{"fixtures.csv", "counter", "bottom_in", ""},
	} {
		tables, _ := withCell(t, c.file, c.first, c.column, c.text)
		if _, err := Read(tables); err != nil {
			t.Errorf("%s of %s as %q: %v", c.column, c.first, c.text, err)
		}
	}
}

// TestATableThatIsNotThere: each is wanted, and its absence is told by its name.
func TestATableThatIsNotThere(t *testing.T) {
	for file := range ourTables(t) {
		tables := ourTables(t)
		delete(tables, file)
		if _, err := Read(tables); err == nil || !strings.Contains(err.Error(), file) {
			t.Errorf("without %s: %v", file, err)
		}
	}
}
