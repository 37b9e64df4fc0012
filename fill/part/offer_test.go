package part

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// listedAssembly is a row of assemblies.csv with what its box, parts and cover say of it.
type listedAssembly struct {
	code, mounting, material, listed, front string
	gangs                                   int
	raise                                   unit.Length
	volume                                  unit.Volume
}

func listedAssemblies(t *testing.T) (all []listedAssembly) {
	t.Helper()
	boxes, adds := map[string]map[string]string{}, map[string]map[string]string{}
	for _, row := range rowsOf(t, "catalogue/boxes.csv") {
		boxes[row["id"]] = row
	}
	for _, row := range rowsOf(t, "catalogue/adds.csv") {
		adds[row["id"]] = row
	}
	for _, row := range rowsOf(t, "catalogue/assemblies.csv") {
		of := boxes[row["box"]]
		front, _, _ := strings.Cut(row["cover"], "-")
		a := listedAssembly{row["code"], of["mounting"], of["material"], of["listed_for"], front,
			number(t, of["gangs"]), unit.Inch / 2, cubic(t, of["volume_in3"])}
		for _, one := range strings.FieldsFunc(row["adds"], func(r rune) bool { return r == ';' }) {
			id, mark, _ := strings.Cut(one, "=")
			a.volume += max(cubic(t, mark), cubic(t, adds[id]["volume_in3"]))
			if adds[id]["kind"] == "ring" {
				a.gangs, a.raise = number(t, adds[id]["gangs"]), inches(t, adds[id]["raise_in"])
			}
		}
		all = append(all, a)
	}
	return all
}

// TestWhatStandsInForAnother tries every assembly in place of every other, at its very
// volume and a ten-thousandth of a cubic inch beside it: as many gangs, the same listing and
// front, and what each list asks for besides. The same material comes first, then the
// smaller, then as listed.
func TestWhatStandsInForAnother(t *testing.T) {
	all := listedAssemblies(t)
	lists := map[string]func(a, than listedAssembly) bool{
		"roomier": func(a, than listedAssembly) bool {
			return (a.mounting == "old-work") == (than.mounting == "old-work") && a.raise == than.raise
		},
		"old-work": func(a, _ listedAssembly) bool { return a.mounting == "old-work" },
		"metal": func(a, than listedAssembly) bool {
			return a.material != "plastic" && (a.mounting == "old-work") == (than.mounting == "old-work")
		},
	}
	ours := map[string]func(*Assembly, unit.Volume) []*Assembly{"roomier": All().Roomier, "old-work": All().OldWork, "metal": All().Metal}
	for _, than := range all {
		for _, of := range all {
			for need := of.volume - 1; need <= of.volume+1; need++ {
				for name, is := range lists {
					var want []listedAssembly
					for _, a := range all {
						if a.code != than.code && a.volume >= need && a.gangs == than.gangs && a.listed == than.listed &&
							(than.front == "" || a.front == than.front) && is(a, than) {
							want = append(want, a)
						}
					}
					rank := func(a listedAssembly) int { return len(strings.TrimPrefix(a.material, than.material)) }
					slices.SortStableFunc(want, func(a, b listedAssembly) int {
						return cmp.Or(cmp.Compare(min(rank(a), 1), min(rank(b), 1)), cmp.Compare(a.volume, b.volume))
					})
					var wanted, got []string
					for _, a := range want {
						wanted = append(wanted, a.code)
					}
					for _, a := range ours[name](All().Assembly(than.code), need) {
						got = append(got, a.Code)
					}
					if !slices.Equal(got, wanted) {
						t.Fatalf("%s in place of %s of %s in³: %q, want %q", name, than.code, need, got, wanted)
					}
				}
			}
		}
	}
}

// TestWhatIsOffered: each list is what its table says, row by row.
func TestWhatIsOffered(t *testing.T) {
	c := All()
	for gangs := range 6 {
		for _, code := range []string{"", "PN1", "ZZ9"} {
			var want []string
			for _, a := range listedAssemblies(t) {
				if a.gangs == gangs || a.code == code {
					want = append(want, a.code)
				}
			}
			var got []string
			for _, a := range c.AssembliesOf(gangs, code) {
				got = append(got, a.Code)
			}
			if !slices.Equal(got, want) {
				t.Errorf("of %d gangs and %q: %q, want %q", gangs, code, got, want)
			}
		}
	}
	var plates []string
	for _, row := range rowsOf(t, "catalogue/adds.csv") {
		if row["kind"] == "plate" {
			plates = append(plates, row["id"])
		}
	}
	same(t, idsOf(c.Plates()), plates)
	for _, b := range append(rowsOf(t, "catalogue/boxes.csv"), map[string]string{"id": "tin"}) {
		var want []string
		for _, row := range rowsOf(t, "catalogue/adds.csv") {
			if row["kind"] != "plate" && slices.Contains(strings.Split(row["fits"], "|"), b["shape"]) {
				want = append(want, row["id"])
			}
		}
		same(t, idsOf(AddsOn(plan.Plan{}, plan.Assembly{Box: b["id"]})), want)
	}
	named := map[string]bool{}
	for _, row := range rowsOf(t, "kinds.csv") {
		named[row["device"]] = true
	}
	delete(named, "")
	want := slices.Sorted(maps.Keys(named))
	same(t, c.Devices(), want)
	same(t, c.Devices("", want[0], "zither", "anvil", "zither"), append(want, "zither", "anvil"))
}

func idsOf(adds []*Add) (ids []string) {
	for _, a := range adds {
		ids = append(ids, a.ID)
	}
	return ids
}

// TestSwitchesAndLoadsAreListedByTags: S2 comes before S10.
func TestSwitchesAndLoadsAreListedByTags(t *testing.T) {
	level := &plan.Level{ID: "vshed2222"}
	for i, o := range []plan.Opening{{Kind: "switch", Tag: "S10"}, {Kind: "duplex", Tag: "S3"}, {Kind: "three-way", Tag: "S2"}, {Kind: "no such", Tag: "S1"}, {Kind: "ceiling-light", Tag: "S11"}, {Kind: "switch", Tag: "R2"}} {
		o.ID = plan.ID(fmt.Sprintf("o%08d", i))
		level.Openings = level.Openings.With(&o)
	}
	p := plan.Plan{Levels: []*plan.Level{level}}
	for is, want := range map[bool][]string{true: {"R2", "S2", "S10"}, false: {"S3", "S11"}} {
		var got []string
		for _, o := range SwitchesOrLoads(p, is) {
			got = append(got, o.Tag)
		}
		if !slices.Equal(got, want) {
			t.Errorf("switches %v: %q, want %q", is, got, want)
		}
	}
}

// TestGeneralReceptacles: 210.52 of NEC 2023 asks for 125 V, 15 and 20 A receptacles.
func TestGeneralReceptacles(t *testing.T) {
	for _, tt := range []struct {
		k    *Kind
		want bool
	}{
		{nil, false},
		{&Kind{Family: Receptacle, Volts: 125, Amps: 15}, true},
		{&Kind{Family: Receptacle, Volts: 125, Amps: 20}, true},
		{&Kind{Family: Receptacle, Volts: 120, Amps: 20}, true},
		{&Kind{Family: Receptacle, Volts: 125, Amps: 30}, false},
		{&Kind{Family: Receptacle, Volts: 125, Amps: 21}, false},
		{&Kind{Family: Receptacle, Volts: 250, Amps: 20}, false},
		{&Kind{Family: Receptacle, Volts: 126, Amps: 20}, false},
		{&Kind{Family: Switch, Volts: 125, Amps: 15}, false},
		{&Kind{Family: Light}, false},
	} {
		if got := tt.k.IsGeneral(); got != tt.want {
			t.Errorf("%+v: %v", tt.k, got)
		}
	}
}

// TestANewOpeningIsAsItsKind: a height stands in walls and on faces of fixtures, not in a
// ceiling, a floor or a top; in a plan of millimetres it is a round one.
func TestANewOpeningIsAsItsKind(t *testing.T) {
	p := geom.Point{X: unit.Foot, Y: unit.Foot}
	for _, row := range rowsOf(t, "kinds.csv") {
		for _, at := range []plan.Anchor{plan.OnFace("snaaaaaaa", unit.Foot), plan.OnCeiling("rdenaaaaa", p), plan.OnFloor("rdenaaaaa", p), {Host: "fislaaaaa", Part: plan.PartTop, At: p}} {
			for system, height := range map[unit.System]unit.Length{unit.Imperial: inches(t, row["height_in"]), unit.Metric: millimetres(t, row["height_mm"])} {
				want := plan.Opening{Kind: row["id"], At: at, Gangs: number(t, row["gangs"]), Status: plan.StatusNew, Assembly: plan.Assembly{Code: row["assembly"]}}
				if at.Part == plan.PartFace {
					want.Height = plan.CentreAt(height)
				}
				got := NewOpening(system, row["id"], at)
				same(t, got, want)
				var devices []string
				if row["device"] != "" {
					devices = []string{row["device"]}
				}
				same(t, DeviceKinds(&got), devices)
				got.Devices = []plan.Device{{Kind: "one"}, {Kind: "another"}}
				same(t, DeviceKinds(&got), []string{"one", "another"})
			}
		}
	}
	same(t, NewOpening(unit.Metric, "no such", plan.OnCeiling("rdenaaaaa", p)),
		plan.Opening{Kind: "no such", At: plan.OnCeiling("rdenaaaaa", p), Gangs: 1, Status: plan.StatusNew})
	same(t, len(DeviceKinds(&plan.Opening{Kind: "no such"})), 0)
	same(t, []bool{HangsFan(&plan.Opening{Kind: "fan-light"}), HangsFan(&plan.Opening{Kind: "duplex"}), HangsFan(&plan.Opening{Kind: "ceiling-light"})}, []bool{true, false, false})
}
