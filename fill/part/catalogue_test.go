package part

import (
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets"
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
)

// testdata/table-314.16a.csv holds Table 314.16(A) of NEC 2023, counts and volumes, with
// the box of ours each row stands for. The count is the volume over the allowance,
// rounded down.
func TestConductorCountsOfTheTable(t *testing.T) {
	sizes := []unit.AWG{18, 16, 14, 12, 10, 8, 6}
	columns := []string{"box", "shape", "size", "volume_in3", "n18", "n16", "n14", "n12", "n10", "n8", "n6", "note"}
	table := readTable(t, columns)
	if len(table) != 24 {
		t.Fatalf("%d rows, the table has 24", len(table))
	}
	for _, row := range table {
		b := All().Box(row.Cell("box"))
		if b == nil {
			t.Errorf("line %d: no box %s", row.Line, row.Cell("box"))
			continue
		}
		if b.Volume.String() != strings.TrimSuffix(row.Cell("volume_in3"), ".0") || b.Basis != ByTable {
			t.Errorf("%s: %s in³, the table says %s", b.ID, b.Volume, row.Cell("volume_in3"))
		}
		for i, size := range sizes {
			want, err := rows.Get(row, columns[4+i], strconv.Atoi)
			if err != nil {
				t.Fatal(err)
			}
			if got := most(t, b, size); got != want {
				t.Errorf("%s holds %d of %s AWG, the table says %d", b.ID, got, size, want)
			}
		}
	}
}

// One copy of the table prints 5 conductors of 8 AWG for the 4 × 1-1/4 round box, where
// 12.5 / 3.00 gives 4, as the 2023 copy prints. Known as a misprint, and not followed.
func TestMisprintOfTheTable(t *testing.T) {
	if got := most(t, All().Box("oct4-1.25"), 8); got != 4 {
		t.Errorf("4 × 1-1/4 round holds %d of 8 AWG, want 4", got)
	}
}

func readTable(t *testing.T, columns []string) []rows.Row {
	t.Helper()
	table, err := rows.Read(os.DirFS("testdata"), "table-314.16a.csv", columns...)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

// most returns how many conductors fit by the box-fill working, none left over.
func most(t *testing.T, b *Box, size unit.AWG) int {
	t.Helper()
	for n := 1; ; n++ {
		r, err := box.Fill(code.Latest(), b.Space(), box.Contents{{What: box.Conductor, Size: size, Times: n}})
		if err != nil {
			t.Fatal(err)
		}
		if !r.Fits {
			return n - 1
		}
	}
}

func TestAssemblyVolumes(t *testing.T) {
	for _, tt := range []struct{ code, want, source string }{
		{"PN1", "18", "marked"},
		{"SQ1", "21", "314.16(A): an unmarked ring adds nothing"},
		{"SQ2", "24.5", "21.0 and a ring marked 3.5"},
		{"SQ3", "30.3", "Table 314.16(A)"},
		{"SQ4", "33.8", "30.3 and a ring marked 3.5"},
		{"SQ8", "42", "21.0 and an extension of the same listed size, life-improver.com"},
		{"FN1", "15.8", "slidetodoc.com, Ceiling fan support"},
		{"FN2", "22.3", "slidetodoc.com, Ceiling fan support"},
		{"LV1", "0", "an open back has no volume"},
	} {
		a := All().Assembly(tt.code)
		if a == nil {
			t.Errorf("no assembly %s", tt.code)
			continue
		}
		r, err := box.Fill(code.Latest(), a.Space(), nil)
		if tt.want != "0" && (err != nil || r.Volume != a.Volume()) {
			t.Errorf("%s: its space gives %s, %v", tt.code, r.Volume, err)
		}
		if a.Volume().String() != tt.want {
			t.Errorf("%s: %s in³, want %s (%s)", tt.code, a.Volume(), tt.want, tt.source)
		}
	}
}

// A kind's own assembly holds what is assumed to be in it, in every edition.
func TestKindsFitTheirAssembly(t *testing.T) {
	for _, name := range code.Whole() {
		fig, err := code.Edition(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, k := range All().Kinds {
			if len(k.Wiring) == 0 {
				continue
			}
			if k.Assembly == nil {
				t.Errorf("%s: wiring without an assembly", k.ID)
				continue
			}
			r, err := box.Fill(fig, k.Assembly.Space(), k.Wiring)
			if err != nil || !r.Fits {
				t.Errorf("%s %s: %s in³ in %s of %s, %v", name, k.ID, r.Required, r.Volume, k.Assembly.Code, err)
			}
		}
	}
}

func TestKinds(t *testing.T) {
	families := map[Family]int{}
	for _, k := range All().Kinds {
		families[k.Family]++
		if k.Spacing && (k.Family != Receptacle || k.Switched == WhollySwitched) {
			t.Errorf("%s counts for 210.52(A)", k.ID)
		}
	}
	for _, f := range []Family{Receptacle, Switch, LowVoltage, Light, Fan, Alarm, Junction} {
		if families[f] == 0 {
			t.Errorf("no kind of family %s", f)
		}
	}
	for _, id := range []string{"duplex", "quad", "gfci", "outdoor", "range", "dryer", "floor", "half-switched", "switched",
		"refrigerator", "dishwasher", "microwave", "switch", "three-way", "four-way", "dimmer", "switch-2", "switch-3",
		"fan-control", "timer", "ceiling-light", "wall-light", "vanity-light", "recessed", "under-cabinet", "pendant",
		"porch-light", "fan-light", "exhaust-fan", "smoke", "smoke-co", "data", "coax", "thermostat", "doorbell",
		"junction", "panel-feed"} {
		if All().Kind(id) == nil {
			t.Errorf("no kind %s", id)
		}
	}
}

// Heights above come from pages that give an edge; the centre is half a 3-3/4 in box,
// or thereabouts, from it.
func TestSomeUsualHeights(t *testing.T) {
	for id, want := range map[string]unit.Length{
		"duplex": 16 * unit.Inch, "counter": 42 * unit.Inch, "switch": 46 * unit.Inch, "wall-light": 63 * unit.Inch,
		"ceiling-light": 0, "floor": 0,
	} {
		if got := All().Kind(id).Height; got != want {
			t.Errorf("%s: height %s, want %s", id, got, want)
		}
	}
}

// A height in round millimetres is the one in inches, said as metric trades say it.
func TestRoundHeightsAreTheSameHeights(t *testing.T) {
	for _, k := range All().Kinds {
		round := k.UsualHeight(unit.Metric)
		if away := (round - k.UsualHeight(unit.Imperial)).Abs(); away > 40*unit.Millimetre || !round.IsMultiple(unit.Centimetre) {
			t.Errorf("%s: %s for %s", k.ID, unit.Metric.Short(round), unit.Metric.Short(k.Height))
		}
	}
}

func TestRoomier(t *testing.T) {
	c := All()
	codes := func(all []*Assembly) string {
		var names []string
		for _, a := range all {
			names = append(names, a.Code)
		}
		return strings.Join(names, " ")
	}
	for _, tt := range []struct{ than, need, want string }{
		{"PN1", "20.25", "PN3 SQ1 SQ2 SQ3 SQ4 SQ8"},
		{"SQ1", "24", "SQ2 SQ3 SQ4 SQ8"},
		{"SQ11", "1", ""},
		{"FN1", "20", "FN2 FN3"},
		{"OW1", "18", "OW2"},
		{"PN8", "61", "PN9"},
		{"PN9", "70", ""},
	} {
		if got := codes(c.Roomier(c.Assembly(tt.than), volume(t, tt.need))); got != tt.want {
			t.Errorf("Roomier(%s, %s) = %s, want %s", tt.than, tt.need, got, tt.want)
		}
	}
}

func TestUnknownIDsAreNil(t *testing.T) {
	c := All()
	if c.Box("x") != nil || c.Add("x") != nil || c.Assembly("x") != nil || c.Kind("x") != nil {
		t.Error("something was found for x")
	}
}

// Each case spoils one of our own tables; the error names file, line and column.
func TestSpoiledTablesNameTheirPlace(t *testing.T) {
	for _, tt := range []struct{ name, file, old, new, want string }{
		{"an ID twice", "catalogue/boxes.csv", "pn1-20,", "pn1-18,", "catalogue/boxes.csv:3: id: pn1-18 stands on line 2 already"},
		{"an ID in capitals", "catalogue/boxes.csv", "pn1-18,", "PN1-18,", "catalogue/boxes.csv:2: id: "},
		{"a shape", "catalogue/boxes.csv", ",device,plastic", ",devize,plastic", "catalogue/boxes.csv:2: shape: "},
		{"a length", "catalogue/boxes.csv", ",2 5/16,", ",abc,", "catalogue/boxes.csv:2: width_in: "},
		{"a volume without a basis", "catalogue/boxes.csv", ",18.0,marked", ",18.0,none", "catalogue/boxes.csv:2: volume_in3: "},
		{"an unknown box", "catalogue/assemblies.csv", ",pn1-18,", ",pn1-19,", `catalogue/assemblies.csv:2: box: no box "pn1-19"`},
		{"a plate of another width", "catalogue/assemblies.csv", ",pn1-18,,plate-1g", ",pn1-18,,plate-2g", "catalogue/assemblies.csv:2: cover: plate-2g covers 2 gangs"},
		{"a ring that does not fit", "catalogue/assemblies.csv", ",pn1-18,,", ",pn1-18,ring4-1g-0.5,", "catalogue/assemblies.csv:2: adds: ring4-1g-0.5 does not fit a device box"},
		{"an unknown assembly", "kinds.csv", ",PN2,", ",PN99,", `kinds.csv:2: assembly: no assembly "PN99"`},
		{"wiring", "kinds.csv", "cable 12/2 x2", "cable 12", "kinds.csv:2: wiring: cable: "},
		{"a cut-out of no shape", "kinds.csv", "6 3/8 round", "6 3/8", "cutout_in: it is neither"},
		{"a cut-out of no size", "kinds.csv", "9 1/4 x 9 1/2", "9 1/4 x 0", "cutout_in: 0 is not above zero"},
		{"a cut-out beside a box", "kinds.csv", ",RD1,cable 14/2 x2; fixture-wire 18 x2; canopy,luminaire,0,none,no,,", ",RD1,cable 14/2 x2; fixture-wire 18 x2; canopy,luminaire,0,none,no,4 round,common practice", "only where the kind has no box"},
		{"yokes", "kinds.csv", "duplex receptacle,1", "duplex receptacle,2", "kinds.csv:2: duplex: 2 yokes, but 1 in the wiring"},
		{"a floor line", "fixtures.csv", "wall,counter", "wall,bench", "fixtures.csv:2: floor_line: "},
		{"a fixture of no depth", "fixtures.csv", "72,25,36", "72,,36", "fixtures.csv:2: a width, a depth and a height are wanted"},
		{"a head below the sill", "breaks.csv", "36,80,32", "36,30,32", "breaks.csv:5: a width is wanted, and a head above the sill"},
		{"a panel", "breaks.csv", "fixed moving", "fixed sliding", `breaks.csv:3: panels: "sliding" is no panel`},
		{"a slider without panels", "breaks.csv", "fixed moving", "", "breaks.csv:3: panels: panels are wanted"},
		{"a fit of no box", "catalogue/fit.csv", "pn1-18,1,", "pn1-19,1,", `catalogue/fit.csv:2: box: no box "pn1-19"`},
		{"a clamp on a box that is nailed", "catalogue/fit.csv", "pn1-18,1,,,,", "pn1-18,1,,1/4,1,", "catalogue/fit.csv:2: clamp_max_in: a range is wanted for an old-work box"},
		{"a box that adjusts by nobody knows how much", "catalogue/fit.csv", "adj1-20,1 1/2,", "adj1-20,,", "catalogue/fit.csv:11: adjusts: how far it may stand out is wanted"},
		{"a listing without a source", "catalogue/fit.csv", "pn1-18,1,,,,,,,", "pn1-18,1,,,,,,2 h,", "catalogue/fit.csv:2: listing: a listing is wanted with its source"},
		{"a word for no kind", "synonyms.csv", "duplex,en,outlet\n", "duplexes,en,outlet\n", `synonyms.csv:2: kind: no kind "duplexes"`},
		{"a word of no language", "synonyms.csv", "duplex,en,outlet\n", "duplex,fr,prise\n", `synonyms.csv:2: language: "fr"`},
		{"no word at all", "synonyms.csv", "duplex,en,outlet\n", "duplex,en,--\n", `synonyms.csv:2: word: "--"`},
		{"a height in the floor", "kinds.csv", "floor,Floor receptacle,receptacle,FL,,,", "floor,Floor receptacle,receptacle,FL,9,229,", "a height is wanted in a wall and nowhere else"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			tables := fstest.MapFS{}
			for _, file := range []string{"catalogue/boxes.csv", "catalogue/fit.csv", "catalogue/devices.csv", "catalogue/serves.csv", "catalogue/adds.csv", "catalogue/assemblies.csv", "kinds.csv", "fixtures.csv", "breaks.csv", "synonyms.csv"} {
				data, err := assets.Tables.ReadFile(file)
				if err != nil {
					t.Fatal(err)
				}
				if file == tt.file {
					if !strings.Contains(string(data), tt.old) {
						t.Fatalf("%s has no %q to spoil", file, tt.old)
					}
					data = []byte(strings.Replace(string(data), tt.old, tt.new, 1))
				}
				tables[file] = &fstest.MapFile{Data: data}
			}
			if _, err := Read(tables); err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("Read = %v, want %q in it", err, tt.want)
			}
		})
	}
}

func volume(t *testing.T, text string) unit.Volume {
	t.Helper()
	v, err := unit.ParseVolume(text)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// A plan with a kind of break that it does not know is refused, so the table has just
// those that it knows.
func TestBreaksAreThoseAPlanKnows(t *testing.T) {
	if listed := All().BreakIDs(); !slices.Equal(listed, plan.BreakKinds) {
		t.Errorf("the table has %q, a plan knows %q", listed, plan.BreakKinds)
	}
}

// A wall takes mostly plain receptacles, a ceiling lights: common practice.
func TestTheUsualKindSitsWhereItIsUsual(t *testing.T) {
	for in, want := range map[Host]Family{Wall: Receptacle, Ceiling: Light, Floor: Receptacle} {
		if k := All().UsualKind(in); k == nil || k.Host != in || k.Family != want {
			t.Errorf("in a %s it is %+v, want one of the family %s", in, k, want)
		}
	}
}

// In place of what hangs from a ceiling a fan is found before the control of one on a wall.
func TestKindsOfAHostComeFirst(t *testing.T) {
	for in, want := range map[plan.Part]Host{plan.PartCeiling: Ceiling, plan.PartFloor: Floor, plan.PartFace: Wall, plan.PartTop: Wall} {
		all := All().KindsFirstIn(HostOf(in))
		if len(all) != len(All().Kinds) {
			t.Fatalf("%s: %d kinds of %d", in, len(all), len(All().Kinds))
		}
		others := slices.IndexFunc(all, func(k *Kind) bool { return k.Host != want })
		if others <= 0 || slices.ContainsFunc(all[others:], func(k *Kind) bool { return k.Host == want }) {
			t.Errorf("%s: the first other than in a %s is number %d", in, want, others)
		}
	}
}
