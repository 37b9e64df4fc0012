package fill_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestARemedyTellsNothingWhereItMakesNone: a receptacle serves 6 ft of wall either way
// (NEC 2023 210.52(A)(1)), so that one set 2 in from the corner serves a wall of 74 in.
func TestARemedyTellsNothingWhereItMakesNone(t *testing.T) {
	for _, tt := range []struct {
		name   string
		length float64 // of the wall
		want   string
	}{
		{"the reach goes past its end", 72, "Set it 2\" from the left corner"},
		{"the reach ends at its very end", 74, "Set it 2\" from the left corner"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, tt.length)
			o := r.Receptacle(0, 0)
			p := r.Plan()
			ix := index.New(p)
			result, err := fill.Check(ix)
			if err != nil {
				t.Fatal(err)
			}
			for f := range result.Each() {
				if f.Opening == o.ID && len(f.Remedies) > 0 {
					if got := result.Told(ix, f.Remedies[0]).String(); got != tt.want {
						t.Errorf("%q, want %q", got, tt.want)
					}
					return
				}
			}
			t.Error("no remedy for a box that runs past the corner")
		})
	}
}

// TestARemedyTellsOfWallItLeaves: a receptacle over the corner of two walls serves 6 ft of
// each (NEC 2023 210.52(A)(1)); set 2 in along one of them it serves 2 in less of the other.
func TestARemedyTellsOfWallItLeaves(t *testing.T) {
	r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{60, 0}, [2]float64{60, 72}, [2]float64{0, 72})
	r.Room.Sides[1].Kind, r.Room.Sides[2].Kind = plan.SideOpen, plan.SideOpen
	o := r.Receptacle(0, 0) // in the corner that the wall of 72 in ends at
	ix := index.New(r.Plan())
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	for f := range result.Each() {
		if f.Opening != o.ID || len(f.Remedies) == 0 {
			continue
		}
		made, err := result.Makes(ix, f.Remedies[0])
		if err != nil || len(made) != 1 || made[0].Rule != "wall-reach" {
			t.Fatalf("it makes %v, %v; want one stretch of wall unserved", made, err)
		}
		want := `Set it 2" from the left corner; but then: 2" of wall in Bedroom is not served by a receptacle`
		if got := result.Told(ix, f.Remedies[0]).String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
		return
	}
	t.Error("no remedy for a box that runs past the corner")
}

// TestACrowdedFaceTellsNotWhatElseARemedyMakes: with 200 boxes on a face it would take each
// of them to be compared with all others for each remedy.
func TestACrowdedFaceTellsNotWhatElseARemedyMakes(t *testing.T) {
	for n, want := range map[int]string{199: "Set it 2\" from the left corner", 200: "Set it 2\" from the left corner; what else it changes was not worked out: 200 boxes and more are on one face"} {
		r := filltest.OneWall(t, 72)
		first := r.Receptacle(0, 0)
		for range n - 1 {
			r.Receptacle(0, 40)
		}
		ix := index.New(r.Plan())
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for f := range result.Each() {
			if f.Opening == first.ID && f.Rule == "box-place" && len(f.Remedies) > 0 && !found {
				found = true
				if got := result.Told(ix, f.Remedies[0]).String(); got != want {
					t.Errorf("%d boxes: %q, want %q", n, got, want)
				}
			}
		}
		if !found {
			t.Errorf("%d boxes: no remedy for one that runs past the corner", n)
		}
	}
}
