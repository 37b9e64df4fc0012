package demo_test

import (
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/index"
)

// The embedded demos are what the builders make: run make demo after a change.
func TestEmbeddedDemosAreCurrent(t *testing.T) {
	for _, d := range demo.All {
		t.Run(d.Name, func(t *testing.T) {
			p, err := d.Build()
			if err != nil {
				t.Fatal(err)
			}
			want, err := file.Encode(p)
			if err != nil {
				t.Fatal(err)
			}
			got, err := os.ReadFile(filepath.Join("..", "..", "assets", "demo", d.Name+".studbay"))
			if err != nil {
				t.Fatal(err)
			}
			if string(got) != string(want) {
				t.Errorf("assets/demo/%s.studbay differs from what the builder makes", d.Name)
			}
			read, err := file.Decode(d.Name, got)
			if err != nil || !plan.Equal(read, p) {
				t.Errorf("it reads back as another plan, %v", err)
			}
		})
	}
}

// Every rule about where openings are has something to say of the third demo.
func TestEveryRuleSpeaksOfTheHillsideHouse(t *testing.T) {
	p, err := demo.Hillside()
	if err != nil {
		t.Fatal(err)
	}
	result, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	silent := map[string]bool{}
	for _, id := range []string{
		"counter-reach", "basin-reach", "outdoor-receptacle", "laundry-receptacle", "garage-receptacle", "basement-receptacle",
		"hall-receptacle", "foyer-receptacle", "appliance-circuits", "lit-room", "lit-passage", "lit-route", "switch-place",
		"switch-height", "switch-neutral", "closet-light", "wet-zone", "ground-fault", "arc-fault", "circuit-load", "smoke-alarm",
		"carbon-alarm", "old-outlet", "panel-place",
	} {
		silent[id] = true
	}
	for f := range result.Each() {
		delete(silent, f.Rule)
	}
	if len(silent) > 0 {
		t.Errorf("nothing is said by %v", silent)
	}
}

var update = flag.Bool("update", false, "write what is found in the demos anew")

// TestDemoFindingsReadAsKept holds each demo's findings, with why and what they rest on, to
// the text that a person has read against the sections: with -update it is written anew, to
// be read again.
func TestDemoFindingsReadAsKept(t *testing.T) {
	for _, d := range demo.All {
		p, err := d.Build()
		if err != nil {
			t.Fatal(err)
		}
		result, err := fill.Check(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		path := filepath.Join("testdata", d.Name+".txt")
		got := findingsText(index.New(p), result)
		if *update {
			if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(path)
		if err != nil || got != string(want) {
			t.Errorf("%s differs from what is found, %v: read the difference, then run this test with -update\n%s", path, err, got)
		}
	}
}

// findingsText writes findings as a person reads them, the worst first.
func findingsText(ix *index.Index, result fill.Result) string {
	var b strings.Builder
	for _, f := range result.All() {
		weight := f.Severity.String()
		if f.IsOpen {
			weight = "open"
		}
		if f.Waived != nil {
			weight = "set aside"
		}
		fmt.Fprintf(&b, "%s %s: %s\n", weight, f.Rule, f.Message)
		if !f.Why.IsZero() {
			fmt.Fprintf(&b, "\t%s\n", f.Why)
		}
		if f.Section != "" {
			fmt.Fprintf(&b, "\t[%s]\n", f.Section)
		}
		for _, r := range f.Remedies {
			fmt.Fprintf(&b, "\t> %s\n", result.Told(ix, r))
		}
	}
	return b.String()
}

// Each demo shows just the findings that its doc comment tells of.
func TestDemoFindings(t *testing.T) {
	for _, tt := range []struct {
		name     string
		openings int
		want     map[string]int
	}{
		{"cottage", 72, map[string]int{
			"stop rule.box-fill.over":          1,
			"stop rule.wall-reach.missed":      1,
			"stop rule.counter-reach.missed":   1,
			"note rule.open-decision.open":     2,
			"note rule.ring-set-back.open-box": 3, // tile behind the vanity that is not chosen yet
			"note rule.needs-support.far":      2,
			"stop rule.stud-in-way.in":         1,
			"note rule.fan-support.joists":     2,
			"note rule.height-outlier.off":     2,
		}},
		{"hillside", 85, map[string]int{
			"note rule.box-fill.not-known":            1,  // the old box
			"note rule.needs-support.block":           1,  // over the counter
			"note rule.needs-support.none":            1,  // the fewest that serve the living room leave no choice
			"note rule.switch-by-door.far":            1,  // on the far wall of a bedroom
			"stop rule.appliance-circuits.few":        1,  // one circuit for all counters
			"stop rule.arc-fault.none":                15, // three bedrooms of five receptacles
			"stop rule.basement-receptacle.missed":    1,
			"stop rule.basin-reach.missed":            1,
			"stop rule.carbon-alarm.outside":          3, // three bedrooms
			"stop rule.closet-light.pendant":          1,
			"stop rule.counter-reach.missed":          1,
			"stop rule.foyer-receptacle.missed":       5, // each wall of the entry
			"stop rule.foyer-receptacle.missed.round": 1, // 21-1/2 in and 30 in at a corner
			"stop rule.garage-receptacle.missed":      1,
			"stop rule.ground-fault.none":             9, // one in the garage, eight in the finished part of the basement
			"stop rule.hall-receptacle.missed":        1,
			"stop rule.laundry-receptacle.missed":     1,
			"stop rule.lit-passage.door":              1,
			"stop rule.lit-room.none":                 1,
			"stop rule.outdoor-receptacle.missed":     1,
			"stop rule.panel-place.crowded":           1,
			"stop rule.smoke-alarm.bedroom":           1,
			"stop rule.switch-height.high":            1,
			"stop rule.switch-neutral.none":           1,
			"stop rule.wet-zone.near":                 1,
			"warn rule.circuit-load.many":             2, // bedrooms; lights and alarms
			"warn rule.old-outlet.none":               1,
			"warn rule.switch-place.behind":           1,
			"warn walk.dark":                          2, // two bedrooms
		}},
		{"farmhouse", 15, map[string]int{
			"stop rule.smoke-alarm.level":    1,
			"stop rule.smoke-alarm.bedroom":  1,
			"stop rule.smoke-alarm.outside":  1,
			"stop rule.blocked-bay.blocked":  1, // the fire block
			"warn rule.cable-end.gone.one":   1, // that of the old light
			"note rule.box-fill.not-known":   5, // nobody has opened or read any
			"note rule.arc-fault.breaker":    1,
			"note rule.fan-support.joists":   1,
			"note rule.fished-cable.unsaid":  1, // the cable to the opened strip
			"note rule.old-box.unsaid":       1, // that of the switch
			"note rule.find-stud.unknown":    1, // past the last reading
			"note rule.old-ground.unknown":   6, // each new receptacle
			"note rule.blocked-bay.unprobed": 4, // all in closed walls but two
		}},
		{"rowhouse", 58, map[string]int{
			"stop rule.back-to-back.deep":         1,
			"stop rule.box-fill.over":             1,
			"stop rule.wall-reach.missed, waived": 1,
			"note rule.box-fill.not-known":        8,
			"note rule.ring-set-back.open":        5, // tile that is not chosen yet
			"note rule.smoke-alarm.undrawn":       1, // the landing upstairs
			"note rule.open-decision.open":        2,
			"warn walk.dark":                      3, // from the stair hall, past which the old switches are
		}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p, err := demo.Find(tt.name).Build()
			if err != nil {
				t.Fatal(err)
			}
			result, err := fill.Check(index.New(p))
			if err != nil {
				t.Fatal(err)
			}
			got := map[string]int{}
			for f := range result.Each() {
				key := f.Severity.String() + " " + f.Message.ID
				if f.Waived != nil {
					key += ", waived"
				}
				got[key]++
			}
			if !maps.Equal(got, tt.want) {
				t.Errorf("findings %v, want %v", got, tt.want)
			}
			n := 0
			for range p.Openings() {
				n++
			}
			if n != tt.openings {
				t.Errorf("%d openings, want %d", n, tt.openings)
			}
		})
	}
}
