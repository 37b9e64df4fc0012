package box

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/fill/code"
	"studbay/plan/unit"
)

func TestNeedByRule(t *testing.T) {
	for _, tt := range []struct {
		name     string
		edition  string
		contents string
		want     string
		source   string
	}{
		{"nothing", "2023", "", "0", "empty sum"},
		{"a conductor at its own size", "2023", "conductor 18; conductor 16; conductor 14; conductor 12; conductor 10; conductor 8; conductor 6", "18", "Table 314.16(B)(1), each row once"},
		{"a through conductor once", "2023", "through 12", "2.25", "314.16(B)(1)"},
		{"a loop twice", "2023", "loop 12", "4.5", "314.16(B)(1); ecmweb.com code Q&A 85"},
		{"clamps sized by a ground", "2023", "conductor 14; ground 10; clamps", "7", "314.16(B)(2): largest conductor in the box, 2 + 2.5 + 2.5"},
		{"clamps sized by a conductor they do not hold", "2023", "cable 14/2; through 8; clamps", "12", "314.16(B)(2): 4 + 2 + 3 + 3"},
		{"clamps count once", "2023", "clamps; clamps; conductor 12", "4.5", "314.16(B)(2)"},
		{"clamps with no conductor", "2023", "clamps", "0", "314.16(B)(2): nothing to size them by"},
		{"two studs are one type", "2023", "fitting stud; fitting stud; conductor 12", "4.5", "314.16(B)(3)"},
		{"stud and hickey are two types", "2023", "fitting stud; fitting hickey; conductor 12", "6.75", "314.16(B)(3)"},
		{"a yoke at its own conductor", "2023", "conductor 10; device 14", "6.5", "314.16(B)(4): 2.5 + 2 × 2"},
		{"a wide device for each gang", "2023", "device 6:2", "20", "314.16(B)(4): 2 × 2 × 5"},
		{"range receptacle with a 10 AWG ground", "2023", "conductor 6 x3; ground 10; device 6:2", "37.5", "314.16(B)(5): the ground at 2.5, not 5"},
		{"four grounds count once", "2023", "ground 14 x4", "2", "314.16(B)(5)"},
		{"a fifth ground adds a quarter", "2023", "ground 14 x5", "2.5", "314.16(B)(5)"},
		{"quarters are not rounded", "2023", "ground 16 x5", "2.1875", "314.16(B)(5): 1.75 × 1.25"},
		{"a fifth ground before 2020", "2017", "ground 14 x5", "2", "ecmag.com, Box Fill Calculations, Part VIII"},
		{"an isolated set before 2020", "2017", "ground 12 x3; isolated-ground 10 x2", "4.75", "from memory: 2.25 + 2.5"},
		{"an isolated set alone before 2020", "2017", "isolated-ground 12 x2", "2.25", "from memory"},
		{"isolated grounds join from 2020", "2020", "ground 12 x3; isolated-ground 10 x2", "3.125", "NEC 2020 314.16(B)(5): five at 10 AWG, 2.5 × 1.25"},
		{"a terminal block before 2023", "2020", "terminal-block 12", "0", "NEC 2023 (B)(6) is new"},
		{"a terminal block from 2023", "2023", "terminal-block 12 x2", "4.5", "NEC 2023 314.16(B)(6)"},
		{"canopy frees four small wires", "2023", "fixture-wire 18 x2; fixture-wire 16 x2; canopy", "0", "314.16(B)(1) exception"},
		{"canopy does not free 14 AWG", "2023", "fixture-wire 14 x2; fixture-wire 18 x2; canopy", "4", "314.16(B)(1) exception: smaller than 14"},
		{"five small wires are all counted", "2023", "fixture-wire 18 x5; canopy", "7.5", "safe reading of 314.16(B)(1) exception"},
		{"without a canopy all are counted", "2023", "fixture-wire 18 x2", "3", "Stallcup, octagon box example"},
		{"a canopy does not free the cable's ground", "2023", "cable 14/2; canopy", "6", "314.16(B)(1) exception: only what comes from the canopy; electrical-contractor.net pan box thread"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := need(t, figures(t, tt.edition), contents(t, tt.contents)); got != volume(t, tt.want) {
				t.Errorf("%s: %s needs %s, want %s (%s)", tt.edition, tt.contents, got, tt.want, tt.source)
			}
		})
	}
}

// A wrong answer in print: a question bank says a canopy frees two wires (smartsolve.ai,
// "or fewer luminaire wires smaller than 14 AWG"). It is four.
func TestCanopyTrap(t *testing.T) {
	if got := need(t, figures(t, "2023"), contents(t, "fixture-wire 18 x4; canopy")); got != 0 {
		t.Errorf("four wires from a canopy need %s", got)
	}
}

func TestAdds(t *testing.T) {
	for _, tt := range []struct {
		name    string
		volumes []string
		want    string
		source  string
	}{
		{"a ring marked 3.5", []string{"21", "3.5"}, "24.5", "314.16(A): volumes add up"},
		{"an extension of a listed size", []string{"21", "21"}, "42", "314.16(A), life-improver.com"},
		{"an unmarked ring", []string{"21", "0"}, "21", "314.16(A)"},
		{"a given volume in cm³ is rounded down", []string{"295cm3"}, "18.0020", "295 / 16.387064 = 18.00200..."},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := space(t, tt.volumes...)
			r, err := Fill(figures(t, "2023"), s, nil)
			if err != nil || r.Volume != volume(t, tt.want) {
				t.Errorf("volume %s, %v; want %s (%s)", r.Volume, err, tt.want, tt.source)
			}
		})
	}
}

func TestEqualityFitsAndATenThousandthOverDoesNot(t *testing.T) {
	fig, c := figures(t, "2023"), contents(t, "cable 14/2 x3; device 14")
	for volume, fits := range map[string]bool{"18": true, "17.9999": false, "18.0001": true} {
		r, err := Fill(fig, space(t, volume), c)
		if err != nil || r.Fits != fits {
			t.Errorf("18 in³ in %s: fits %v, %v", volume, r.Fits, err)
		}
	}
}

func TestWhatCannotBeCounted(t *testing.T) {
	fig := figures(t, "2023")
	for _, word := range []Word{Conductor, Through, Loop, Ground, IsolatedGround, FixtureWire, Device, TerminalBlock} {
		for _, size := range []unit.AWG{4, 3, 1, -1, -4} {
			_, err := Fill(fig, space(t, "18"), Contents{{What: word, Size: size}})
			var bad *SizeError
			if !errors.As(err, &bad) || !strings.Contains(err.Error(), "314.28") {
				t.Errorf("%s %s: %v, want a SizeError that names 314.28", word, size, err)
			}
		}
	}
	if _, err := Fill(fig, space(t, "18"), Contents{{What: Cable, Size: 4, Wires: 3}}); err == nil {
		t.Error("a cable of 4 AWG was counted")
	}
	for name, s := range map[string]Space{
		"no part":              {},
		"an unmarked box":      space(t, "0"),
		"a ring does not help": space(t, "0", "3.5"),
	} {
		if _, err := Fill(fig, s, nil); !errors.Is(err, ErrNoVolume) {
			t.Errorf("%s: %v, want ErrNoVolume", name, err)
		}
	}
	huge := space(t, "18", "18")
	huge.Parts[1].Volume = 1 << 62
	if _, err := Fill(fig, huge, nil); err == nil {
		t.Error("a volume of 2^62 was taken")
	}
	for name, item := range map[string]Item{
		"unknown word":   {What: "wire"},
		"no insulated":   {What: Cable, Size: 12},
		"below zero":     {What: Ground, Size: 12, Times: -1},
		"unknown type":   {What: Fitting, Type: "hook"},
		"too many gangs": {What: Device, Size: 12, Gangs: 21},
	} {
		if _, err := Fill(fig, space(t, "18"), Contents{item}); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestNotes(t *testing.T) {
	for _, tt := range []struct {
		name, edition, contents string
		space                   func(*Space)
		want                    []string
	}{
		{"plain", "2023", "cable 12/2; device 12", nil, nil},
		{"canopy", "2023", "fixture-wire 18 x2; canopy", nil, []string{"fill.note.canopy"}},
		{"canopy with nothing to free", "2023", "cable 12/2; canopy", nil, nil},
		{"canopy with five", "2023", "fixture-wire 18 x5; canopy", nil, []string{"fill.note.canopy-over"}},
		{"terminal block before its rule", "2017", "terminal-block 12", nil, []string{"fill.note.terminal-block"}},
		{"terminal block with its rule", "2023", "terminal-block 12", nil, nil},
		{"a barrier between gangs", "2023", "", func(s *Space) { s.Barriers, s.Share.Of = []Barrier{Metal}, 2 }, []string{"fill.note.equal"}},
		{"a barrier elsewhere", "2023", "", func(s *Space) { s.Barriers, s.Share = []Barrier{Metal}, Share{2, 90_000} }, nil},
		{"conduit body", "2023", "", func(s *Space) { s.ConduitBody = true }, []string{"fill.note.conduit-body"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := space(t, "18")
			if tt.space != nil {
				tt.space(&s)
			}
			r, err := Fill(figures(t, tt.edition), s, contents(t, tt.contents))
			if err != nil {
				t.Fatal(err)
			}
			var got []string
			for _, n := range r.Notes {
				got = append(got, n.ID)
			}
			if !slices.Equal(got, tt.want) {
				t.Errorf("notes %v, want %v", got, tt.want)
			}
		})
	}
}

// A line names the section as the edition numbers it, and counts as a person would.
func TestLines(t *testing.T) {
	r, err := Fill(figures(t, "2023"), space(t, "20.3"), contents(t,
		"device 12; cable 12/2 x4; cable 14/2; loop 14; clamps; terminal-block 14"))
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"314.16(B)(1) 12 AWG conductors that end or are spliced here: 8 × 2.25 = 18",
		"314.16(B)(1) 14 AWG conductors that end or are spliced here: 2 × 2 = 4",
		"314.16(B)(1) 14 AWG unbroken loops, 2 allowances each: 2 × 2 = 4",
		"314.16(B)(2) all internal clamps, at the largest conductor here, 12 AWG: 1 × 2.25 = 2.25",
		"314.16(B)(4) yokes wired with 12 AWG, 2 allowances each: 2 × 2.25 = 4.5",
		"314.16(B)(5) grounding conductors: the first 4 as one, at the largest, 12 AWG: 1 × 2.25 = 2.25",
		"314.16(B)(5) grounding conductors: 1 more, each 25 % of that: 1 × 0.5625 = 0.5625",
		"314.16(B)(6) terminal blocks wired with 14 AWG: 1 × 2 = 2",
	}
	var got []string
	for _, l := range r.Lines {
		got = append(got, l.Section+" "+l.What.String()+": "+string(appendWorking(nil, l)))
	}
	if !slices.Equal(got, want) {
		t.Errorf("lines\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	if r.Required != 375625 || r.Spare != 203000-375625 || r.Fits {
		t.Errorf("required %s, spare %s, fits %v", r.Required, r.Spare, r.Fits)
	}
}

func appendWorking(b []byte, l Line) []byte {
	b = append(b, unit.Volume(l.Count*10000).String()...)
	return append(append(append(append(b, " × "...), l.Allowance.String()...), " = "...), l.Volume.String()...)
}

// TestLinesOfGrounds: up to four are one allowance, so nothing is said of a share before
// there is a fifth, nor in editions that have no such share.
func TestLinesOfGrounds(t *testing.T) {
	for _, tt := range []struct {
		edition, contents, want, source string
	}{
		{"2023", "conductor 14", "", "no grounding conductor is in it"},
		{"2023", "ground 14 x3", "grounding conductors: 3 as one, at the largest, 14 AWG", "NEC 2023 314.16(B)(5)"},
		{"2023", "ground 14 x4", "grounding conductors: 4 as one, at the largest, 14 AWG", "NEC 2023 314.16(B)(5): up to four"},
		{"2020", "ground 14 x5", "grounding conductors: the first 4 as one, at the largest, 14 AWG; grounding conductors: 1 more, each 25 % of that", "NEC 2020 314.16(B)(5)"},
		{"2017", "ground 14 x5", "grounding conductors: 5 as one, at the largest, 14 AWG", "ecmag.com, Box Fill Calculations, Part VIII: one allowance for all before 2020"},
		{"2017", "isolated-ground 12 x2", "isolated grounding conductors: 2 as one, at the largest, 12 AWG", "from memory: an isolated set counts apart before 2020"},
	} {
		r, err := Fill(figures(t, tt.edition), space(t, "20.3"), contents(t, tt.contents))
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, l := range r.Lines {
			if strings.Contains(l.What.String(), "grounding") {
				got = append(got, l.What.String())
			}
		}
		if strings.Join(got, "; ") != tt.want {
			t.Errorf("%s, %s: lines %q, want %q (%s)", tt.edition, tt.contents, got, tt.want, tt.source)
		}
	}
}

func TestLocalAmendmentChangesTheSum(t *testing.T) {
	fig, err := figures(t, "2023").WithAmendments([]code.Amendment{{Figure: "device-allowances", Value: "3", Reason: "town rule"}})
	if err != nil {
		t.Fatal(err)
	}
	if got := need(t, fig, contents(t, "device 12")); got != 67500 {
		t.Errorf("a yoke of three allowances needs %s", got)
	}
}
