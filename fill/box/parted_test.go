package box

import (
	"errors"
	"testing"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// What a barrier takes is by 314.16(A) of NEC 2020 and 2023: 1/2 in³ where it is metal, 1 in³
// where it is not; what each space holds is added up by itself, 314.16(B). That the spaces
// of a box with one a gang are equal is common practice.
func TestEachSpaceHasItsOwnVolumeAndContents(t *testing.T) {
	type side struct {
		volume, need string
		fits         bool
	}
	for _, tt := range []struct {
		name, contents string
		volumes        []string
		barriers       []Barrier
		gangs          int
		want           []side
		source         string
	}{
		{"nothing parts it", "cable 14/2 x3; device 14", []string{"18"}, nil, 1,
			[]side{{"18", "18", true}}, "nine of 2.00, diychatroom.com 102858"},
		{"a gang each, one too full", "space; cable 14/2 x3; device 14; space; cable 14/2; device 14",
			[]string{"34"}, []Barrier{Nonmetallic}, 2,
			[]side{{"16.5", "18", false}, {"16.5", "10", true}}, "(34 - 1) / 2; nine and five of 2.00"},
		{"together they would fit", "space 10; cable 14/2; device 14 ; clamps; space 23; cable 14/2; device 14",
			[]string{"34"}, []Barrier{Nonmetallic}, 2,
			[]side{{"10", "12", false}, {"23", "10", true}}, "six and five of 2.00"},
		{"exactly full on one side", "space 10; cable 14/2; device 14; space 23.5; cable 12/2 x2",
			[]string{"34"}, []Barrier{Metal}, 3,
			[]side{{"10", "10", true}, {"23.5", "11.25", true}}, "34 - 0.5; five of 2.00; 4 + 1 of 2.25"},
		{"the rest is the other side's", "space 16; device 14; cable 14/2; space; cable 14/2",
			[]string{"30", "6"}, []Barrier{Metal}, 3,
			[]side{{"16", "10", true}, {"19.5", "6", true}}, "36 - 0.5 - 16"},
		{"the first space goes without the word", "cable 14/2; space 10; cable 14/2",
			[]string{"21"}, []Barrier{Nonmetallic}, 0,
			[]side{{"10", "6", true}, {"10", "6", true}}, "21 - 1 - 10"},
		{"nothing that is counted on the low-voltage side", "space; cable 14/2; device 14; space",
			[]string{"34"}, []Barrier{Nonmetallic}, 2,
			[]side{{"16.5", "10", true}, {"16.5", "0", true}}, "five of 2.00"},
		{"clamps are sized by what is on their side", "space; cable 12/2; clamps; space; cable 14/2; clamps",
			[]string{"34"}, []Barrier{Metal}, 2,
			[]side{{"16.75", "9", true}, {"16.75", "8", true}}, "four of 2.25, four of 2.00, 314.16(B)(2)"},
		{"two barriers", "space; device 14; space; device 14; space; device 12",
			[]string{"54"}, []Barrier{Metal, Nonmetallic}, 3,
			[]side{{"17.5", "4", true}, {"17.5", "4", true}, {"17.5", "4.5", true}}, "(54 - 1.5) / 3"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			fig, s := figures(t, "2023"), space(t, tt.volumes...)
			s.Barriers = tt.barriers
			parted, err := Parted(fig, s, tt.gangs, contents(t, tt.contents))
			if err != nil || len(parted) != len(tt.want) {
				t.Fatalf("%d spaces, %v; want %d", len(parted), err, len(tt.want))
			}
			for i, p := range parted {
				r, err := Fill(fig, p.Space, p.Contents)
				if got := (side{r.Volume.String(), r.Required.String(), r.Fits}); err != nil || got != tt.want[i] {
					t.Errorf("space %d: %v, %v; want %v (%s)", i+1, got, err, tt.want[i], tt.source)
				}
			}
		})
	}
}

// Without being told which side a thing is on there is no sum: 314.16(B) wants each space
// by itself.
func TestAPartedBoxIsNotWorkedOutUntilItIsTold(t *testing.T) {
	for _, tt := range []struct {
		name, contents string
		barriers       []Barrier
		gangs          int
		want           string
	}{
		{"nothing told", "", []Barrier{Metal}, 2, "box.parted.untold"},
		{"all in one", "cable 14/2 x3; device 14", []Barrier{Metal}, 2, "box.parted.untold"},
		{"one of three", "cable 14/2; space; device 14", []Barrier{Metal, Metal}, 3, "box.parted.untold"},
		{"no barrier", "cable 14/2; space; device 14", nil, 2, "box.parted.none"},
		{"a part without a barrier", "space 16; cable 14/2; device 14", nil, 2, "box.parted.none"},
		{"no space a gang and no volumes", "cable 14/2; space; device 14", []Barrier{Metal}, 3, "box.parted.unshared"},
		{"two without a volume", "space 9; cable 14/2; space; device 14; space", []Barrier{Metal, Metal}, 3, "box.parted.unshared"},
		{"more than there is", "space 17; cable 14/2; space 16.5001; device 14", []Barrier{Metal}, 2, "box.parted.over"},
		{"nothing left", "space 33.5; cable 14/2; space; device 14", []Barrier{Metal}, 2, "box.parted.over"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := space(t, "34")
			s.Barriers = tt.barriers
			_, err := Parted(figures(t, "2023"), s, tt.gangs, contents(t, tt.contents))
			var fault *words.Error
			if !errors.As(err, &fault) || fault.Text.ID != tt.want {
				t.Errorf("%v, want %s", err, tt.want)
			}
		})
	}
	s := space(t, "34")
	s.Barriers = []Barrier{Metal}
	if _, err := Fill(figures(t, "2023"), s, contents(t, "device 14")); !errors.Is(err, ErrParted) {
		t.Errorf("one sum of a parted box: %v", err)
	}
	if _, err := Fill(figures(t, "2023"), space(t, "34"), contents(t, "space 9; device 14")); !errors.Is(err, ErrParted) {
		t.Errorf("one sum of two spaces: %v", err)
	}
}

// What said parts of a volume come to is never more than the box has, and of equal parts
// none is rounded up.
func TestPartsAreNeverMoreThanTheWhole(t *testing.T) {
	fig := figures(t, "2023")
	for volume := unit.Volume(120_001); volume < 120_010; volume++ {
		s := Space{Parts: []Part{{Volume: volume}}, Barriers: []Barrier{Metal, Metal}}
		parted, err := Parted(fig, s, 3, contents(t, "space; space; space"))
		if err != nil {
			t.Fatal(err)
		}
		var sum unit.Volume
		for _, p := range parted {
			r, err := Fill(fig, p.Space, p.Contents)
			if err != nil {
				t.Fatal(err)
			}
			sum += r.Volume
		}
		if left := volume - 2*fig.Fill.BarrierMetal; sum > left || sum < left-2 {
			t.Errorf("the parts of %s are %s", left, sum)
		}
	}
}
