package inside

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestEveryLineOfTheWorkingHasItsPhrase(t *testing.T) {
	contents, err := box.ParseContents("cable 12/2 x5; conductor 14; through 12; loop 12; ground 12; isolated-ground 12; fixture-wire 18 x2; canopy; device 12; device 10:2; clamps; fitting stud; fitting hickey; terminal-block 12")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range code.Whole() {
		figures, err := code.Edition(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []box.Contents{contents, {{What: box.Clamps}}} {
			lines, _, err := box.Need(figures, c)
			if err != nil {
				t.Fatal(err)
			}
			for _, l := range lines {
				short := words.Voice{}.Say(phraseOf(l).short(l))
				if short == l.What.String() || len(short) > 28 {
					t.Errorf("%s: %q (%s) has no short form: %q", name, l.What, l.What.ID, short)
				}
			}
		}
	}
}

func TestVolumesAlignAtTheirPoint(t *testing.T) {
	for _, tt := range []struct {
		volume   unit.Volume
		decimals int
		want     string
	}{
		{13*unit.CubicInch + unit.CubicInch/2, 2, "13.50"},
		{unit.CubicInch * 9 / 16, 2, "0.5625"},
		{18 * unit.CubicInch, 1, "18.0"},
		{18 * unit.CubicInch, 0, "18"},
		{-9 * unit.CubicInch / 4, 2, "−2.25"},
	} {
		if got := withDecimals(tt.volume, tt.decimals); got != tt.want {
			t.Errorf("withDecimals(%v, %d) = %q, want %q", tt.volume, tt.decimals, got, tt.want)
		}
	}
}
