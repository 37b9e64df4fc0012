package box

import (
	"errors"
	"strings"
	"testing"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// TestHowManyAnItemMayState takes each number at its bound and refuses it one beyond. The
// bounds are ours: a slip of the keyboard, such as 12/22, is not counted.
func TestHowManyAnItemMayState(t *testing.T) {
	for _, tt := range []struct {
		item Item
		want bool
	}{
		{Item{What: Ground, Size: 12, Times: 1000}, true},
		{Item{What: Ground, Size: 12, Times: 1001}, false},
		{Item{What: Ground, Size: 12, Times: 0}, true},
		{Item{What: Ground, Size: 12, Times: -1}, false},
		{Item{What: Device, Size: 12, Gangs: 12}, true},
		{Item{What: Device, Size: 12, Gangs: 13}, false},
		{Item{What: Device, Size: 12, Gangs: -1}, false},
		{Item{What: Cable, Size: 12, Wires: 100}, true},
		{Item{What: Cable, Size: 12, Wires: 101}, false},
		{Item{What: Cable, Size: 12, Wires: 1}, true},
		{Item{What: Cable, Size: 12, Wires: 0}, false},
		{Item{What: "wire"}, false},
		{Item{What: "wire", None: true}, true},
	} {
		_, _, err := Need(figures(t, "2023"), Contents{tt.item})
		if (err == nil) != tt.want {
			t.Errorf("%+v: %v, want taken: %v", tt.item, err, tt.want)
		}
	}
	_, _, err := Need(figures(t, "2023"), Contents{{What: "wire"}})
	if err == nil || !strings.Contains(err.Error(), `“wire” is no word`) {
		t.Errorf("an unknown word: %v, want it named", err)
	}
	for text, ok := range map[string]bool{"ground 12x1000": true, "ground 12x1001": false, "device 12:12": true, "device 12:13": false, "cable 12/100": true, "cable 12/101": false} {
		if _, err := ParseContents(text); (err == nil) != ok {
			t.Errorf("%s: %v, want read: %v", text, err, ok)
		}
	}
}

// TestHowMuchAVolumeMayBe: a million cubic inches is far beyond any box, and the last that
// is taken.
func TestHowMuchAVolumeMayBe(t *testing.T) {
	for text, ok := range map[string]bool{"1000000": true, "1000000.0001": false} {
		if _, err := Fill(figures(t, "2023"), space(t, text), nil); (err == nil) != ok {
			t.Errorf("a box of %s in³: %v", text, err)
		}
		if _, err := ParseContents("space " + text); (err == nil) != ok {
			t.Errorf("a space of %s in³: %v", text, err)
		}
	}
	below := space(t, "18", "0")
	below.Parts[1].Volume = -1
	if _, err := Fill(figures(t, "2023"), below, nil); err == nil || errors.Is(err, ErrNoVolume) {
		t.Errorf("a ring below zero: %v", err)
	}
	if _, err := Parted(figures(t, "2023"), Space{Barriers: []Barrier{Metal}}, 2, contents(t, "space; space")); !errors.Is(err, ErrNoVolume) {
		t.Errorf("an unmarked box that is parted: %v, want ErrNoVolume", err)
	}
}

// TestTextIsReadFromBothEnds: what stands before the sign that parts a text may be empty,
// and is then named as what is wrong; a thing said not to be there reads back as that.
func TestTextIsReadFromBothEnds(t *testing.T) {
	for text, want := range map[string]string{
		"conductor x2":  "“” is no wire size",
		"cable /2":      "“” is no wire size",
		"no wire":       "“wire” is no word",
		"no space":      "“space” is no word",
		"no":            "“” is no word",
		"ground 12xtwo": "“two” is not a number from 1 to 1000",
		"space x":       "not a volume",
	} {
		if _, err := ParseContents(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q in it", text, err, want)
		}
	}
	for _, text := range []string{"no canopy; no cable; no fitting", "clamps; no device", "space 16; cable 14/3 x2; space; device 10:2 x3", "fitting hickey; ground 1/0"} {
		if got := contents(t, text).String(); got != text {
			t.Errorf("%q reads back as %q", text, got)
		}
	}
}

// TestOnlyWhatIsTooLargeIsSentToAnotherSection: 314.28 is of 4 AWG and larger.
func TestOnlyWhatIsTooLargeIsSentToAnotherSection(t *testing.T) {
	for size, want := range map[unit.AWG]bool{20: false, 13: false, 6: false, 4: true, 2: true} {
		err := &SizeError{Item{What: Conductor, Size: size}}
		if got := strings.Contains(err.Error(), "314.28"); got != want {
			t.Errorf("%s: names 314.28: %v, want %v", err, got, want)
		}
	}
}

// TestSpacesGoInAndOut: what Spaces parts InSpaces puts together again; a first space that
// went without its word gets it, for then the others cannot be told apart from it.
func TestSpacesGoInAndOut(t *testing.T) {
	for text, want := range map[string]string{
		"":                                  "",
		"cable 14/2; device 14":             "cable 14/2; device 14",
		"space; cable 14/2":                 "cable 14/2",
		"space 16; cable 14/2":              "space 16; cable 14/2",
		"space 0.0001; device 14":           "space 0.0001; device 14",
		"cable 14/2; space; device 14":      "space; cable 14/2; space; device 14",
		"space 9; clamps; space; device 14": "space 9; clamps; space; device 14",
	} {
		if got := InSpaces(contents(t, text).Spaces()).String(); got != want {
			t.Errorf("%q comes back as %q, want %q", text, got, want)
		}
	}
	_, err := Parted(figures(t, "2023"), space(t, "18"), 1, contents(t, "space 0.0001; device 14"))
	var fault *words.Error
	if !errors.As(err, &fault) || fault.Text.ID != "box.parted.none" {
		t.Errorf("the smallest part of a box that nothing parts: %v", err)
	}
	for _, s := range []Share{{}, {Of: 1}, {Of: 2, Volume: 1}} {
		if s.IsEqual() {
			t.Errorf("%+v is taken for an equal part", s)
		}
	}
	if s := (Share{Of: 2}); !s.IsEqual() {
		t.Errorf("%+v is not taken for an equal part", s)
	}
}
