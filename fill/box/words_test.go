package box

import (
	"reflect"
	"strings"
	"testing"
)

func TestParseItem(t *testing.T) {
	for _, tt := range []struct {
		word Word
		text string
		want Item
	}{
		{Cable, "12/2", Item{What: Cable, Size: 12, Wires: 2, Times: 1}},
		{Cable, "14/3x2", Item{What: Cable, Size: 14, Wires: 3, Times: 2}},
		{Cable, " 14/3 × 2 ", Item{What: Cable, Size: 14, Wires: 3, Times: 2}},
		{Cable, "1/0/3", Item{What: Cable, Size: -1, Wires: 3, Times: 1}},
		{Conductor, "12X10", Item{What: Conductor, Size: 12, Times: 10}},
		{Device, "10:2", Item{What: Device, Size: 10, Gangs: 2, Times: 1}},
		{Device, "10:2x3", Item{What: Device, Size: 10, Gangs: 2, Times: 3}},
		{Fitting, "stud", Item{What: Fitting, Type: Stud}},
		{Canopy, "", Item{What: Canopy}},
		{BeginsSpace, "", Item{What: BeginsSpace}},
		{BeginsSpace, " 16.5 in³", Item{What: BeginsSpace, Volume: 165_000}},
	} {
		got, err := ParseItem(tt.word, tt.text)
		if err != nil || got != tt.want {
			t.Errorf("ParseItem(%s, %q) = %+v, %v; want %+v", tt.word, tt.text, got, err, tt.want)
		}
	}
}

func TestParseItemRefuses(t *testing.T) {
	for _, tt := range []struct {
		word       Word
		text, want string
	}{
		{Cable, "12", "want a cable such as 12/2"},
		{Cable, "12/0", `“0” is not a number from 1 to 100`},
		{Cable, "12/2x", `“” is not a number from 1 to 1000`},
		{Cable, "12/2x0", "from 1 to 1000"},
		{Cable, "12/2x-1", "from 1 to 1000"},
		{Cable, "12/2x1001", "from 1 to 1000"},
		{Cable, "", "insulated conductors is missing"},
		{Cable, "4/0", "from 1 to 100"},
		{Conductor, "13", "no wire size from 18 to 4/0"},
		{Conductor, "abc", "want a size such as 12"},
		{Conductor, "12xx2", "want a size such as 12"},
		{Device, "12:", "from 1 to 12"},
		{Device, "12:13", "from 1 to 12"},
		{Fitting, "hook", "want stud or hickey"},
		{Clamps, "2", "want nothing after it"},
		{BeginsSpace, "0", "want the volume of that space"},
		{BeginsSpace, "left", "want the volume of that space"},
		{"wire", "12", `“wire” is no word`},
	} {
		_, err := ParseItem(tt.word, tt.text)
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("ParseItem(%s, %q) = %v, want %q in the error", tt.word, tt.text, err, tt.want)
		}
	}
}

func TestParseContents(t *testing.T) {
	got, err := ParseContents("cable 12/2 x2; device 12;; clamps ;")
	want := Contents{{What: Cable, Size: 12, Wires: 2, Times: 2}, {What: Device, Size: 12, Times: 1}, {What: Clamps}}
	if err != nil || !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v, %v; want %+v", got, err, want)
	}
	if _, err := ParseContents("cable 12/2; wire 3"); err == nil || !strings.HasPrefix(err.Error(), "wire: ") {
		t.Errorf("error %v, want it to name the word", err)
	}
}

func FuzzParseContents(f *testing.F) {
	for _, e := range examples {
		f.Add(e.contents)
	}
	f.Add("cable 1/0/3 ×2; device 10:2x3; fitting stud")
	f.Fuzz(func(t *testing.T, text string) {
		c, err := ParseContents(text)
		if err != nil {
			return
		}
		back, err := ParseContents(c.String())
		if err != nil || back.String() != c.String() {
			t.Errorf("%q reads back as %q, %v", c, back, err)
		}
	})
}
