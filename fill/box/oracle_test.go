package box

import (
	"fmt"
	"testing"

	"studbay/fill/code"
	"studbay/plan/unit"

	"pgregory.net/rapid"
)

// allowances are those of Table 314.16(B)(1), in 1/400 in³.
var allowances = map[unit.AWG]int64{18: 600, 16: 700, 14: 800, 12: 900, 10: 1000, 8: 1200, 6: 2000}

// TestNeedIsThatOfPlainArithmetic works the need out a second time, wire by wire, from the
// sentences of 314.16(B): each conductor at its own size, all clamps and each type of
// fitting once at the largest conductor in the box, two for each gang of a device, the
// grounding conductors as the edition has them and, from 2023, the terminal blocks. What a
// canopy frees is the exception to (B)(1); the editions before 2020 are by ecmag.com, Box
// Fill Calculations, Part VIII, and their isolated set is from memory.
func TestNeedIsThatOfPlainArithmetic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		edition := rapid.SampledFrom(code.Whole()).Draw(t, "edition")
		fig, err := code.Edition(edition)
		if err != nil {
			t.Fatal(err)
		}
		c := Contents(rapid.SliceOfN(items(BeginsSpace), 0, 9).Draw(t, "contents"))
		for i := range c {
			c[i].None = rapid.IntRange(0, 9).Draw(t, "none") == 0
		}
		want := plainNeed(edition, c)
		got, ok := Sum(fig, c)
		if !ok || int64(got)*400 != want*int64(unit.CubicInch) {
			t.Fatalf("%s: %s needs %s, want %d/400 in³", edition, c, got, want)
		}
	})
}

// plainNeed returns what the contents need in 1/400 in³.
func plainNeed(edition string, c Contents) (need int64) {
	var largest, small int64
	kinds := map[string]bool{}
	var grounds, isolated []int64
	canopy := false
	for _, i := range c {
		if i.None {
			continue
		}
		one := allowances[i.Size]
		switch i.What {
		case Canopy, Clamps, Fitting:
			one = 0
		}
		largest = max(largest, one)
		for range max(1, i.Times) {
			switch i.What {
			case Cable:
				need += one * int64(i.Wires)
				grounds = append(grounds, one)
			case Conductor, Through:
				need += one
			case Loop:
				need += one + one
			case Ground:
				grounds = append(grounds, one)
			case IsolatedGround:
				isolated = append(isolated, one)
			case FixtureWire:
				need += one
				if i.Size == 16 || i.Size == 18 {
					small++
				}
			case Canopy:
				canopy = true
			case Clamps:
				kinds["clamps"] = true
			case Fitting:
				kinds[i.Type] = true
			case Device:
				for range max(1, i.Gangs) {
					need += one + one
				}
			case TerminalBlock:
				if edition >= "2023" {
					need += one
				}
			}
		}
	}
	if canopy && small <= 4 {
		for _, i := range c {
			if i.What == FixtureWire && !i.None && (i.Size == 16 || i.Size == 18) {
				need -= allowances[i.Size] * int64(max(1, i.Times))
			}
		}
	}
	need += largest * int64(len(kinds))
	if edition >= "2020" {
		return need + plainGrounds(append(grounds, isolated...), 1)
	}
	return need + plainGrounds(grounds, 0) + plainGrounds(isolated, 0)
}

// plainGrounds returns one allowance at the largest, and so many quarters for each ground
// beyond the fourth.
func plainGrounds(grounds []int64, quarters int64) int64 {
	var largest, beyond int64
	for at, one := range grounds {
		largest = max(largest, one)
		if at >= 4 {
			beyond++
		}
	}
	return largest + largest*beyond*quarters/4
}

// TestLinesThatAddNothingAreShown: what is in the box and takes no allowance stands in the
// working all the same, so that a reader sees that it was looked at.
func TestLinesThatAddNothingAreShown(t *testing.T) {
	for _, tt := range []struct{ edition, contents, want, source string }{
		{"2023", "fixture-wire 18; fixture-wire 16 x3; fixture-wire 14 x2; canopy",
			"314.16(B)(1) 14 AWG fixture wires: 2 × 2 = 4; 314.16(B)(1) 16 AWG fixture wires from the canopy, no allowance: 3 × 0 = 0; 314.16(B)(1) 18 AWG fixture wires from the canopy, no allowance: 1 × 0 = 0",
			"314.16(B)(1) exception: up to four smaller than 14 AWG"},
		{"2023", "fixture-wire 18; conductor 18 x5; canopy",
			"314.16(B)(1) 18 AWG conductors that end or are spliced here: 5 × 1.5 = 7.5; 314.16(B)(1) 18 AWG fixture wires from the canopy, no allowance: 1 × 0 = 0",
			"the same: only the luminaire's wires are counted against the four"},
		{"2023", "clamps", "314.16(B)(2) all internal clamps: no conductor here to size it by: 1 × 0 = 0", "314.16(B)(2): at the largest conductor, and there is none"},
		{"2023", "fitting hickey", "314.16(B)(3) hickey: no conductor here to size it by: 1 × 0 = 0", "314.16(B)(3), likewise"},
		{"2020", "terminal-block 12 x2", "314.16(B) terminal blocks wired with 12 AWG, no allowance in this edition: 2 × 0 = 0", "314.16(B)(6) is new in 2023"},
	} {
		lines, _, err := Need(figures(t, tt.edition), contents(t, tt.contents))
		got := ""
		for i, l := range lines {
			if i > 0 {
				got += "; "
			}
			got += fmt.Sprintf("%s %s: %s", l.Section, l.What, appendWorking(nil, l))
		}
		if err != nil || got != tt.want {
			t.Errorf("%s, %s: %v\n got %s\nwant %s (%s)", tt.edition, tt.contents, err, got, tt.want, tt.source)
		}
	}
}
