package takeoff

import (
	"testing"

	"studbay/fill/part"
	"studbay/plan"
)

// TestHolesInTheFinish: of a box its outline, of a ring its collar, round ones apart; a kind with
// a housing of its own brings the hole, and what is not in a wall, ceiling or floor wants none.
func TestHolesInTheFinish(t *testing.T) {
	for _, tt := range []struct {
		name, kind string
		at         plan.Part
		assembly   plan.Assembly
		want       Cut
	}{
		{"a box", "duplex", plan.PartFace, plan.Assembly{Code: "PN1"}, CutBox},
		{"a ring", "duplex", plan.PartFace, plan.Assembly{Code: "SQ1"}, CutRing},
		{"a ring to round", "ceiling-light", plan.PartCeiling, plan.Assembly{Code: "SQ10"}, CutRound},
		{"a round box", "ceiling-light", plan.PartCeiling, plan.Assembly{Code: "RD1"}, CutRound},
		{"in a floor", "floor", plan.PartFloor, plan.Assembly{Code: "PN1"}, CutBox},
		{"a housing", "recessed", plan.PartCeiling, plan.Assembly{}, CutHousing},
		{"nothing set in", "duplex", plan.PartFace, plan.Assembly{}, NoCut},
		{"no such kind", "no such", plan.PartFace, plan.Assembly{}, NoCut},
		{"in a cabinet", "duplex", plan.PartFront, plan.Assembly{Code: "PN1"}, NoCut},
		{"in a top", "duplex", plan.PartTop, plan.Assembly{Code: "PN1"}, NoCut},
	} {
		if got := cutOf(&plan.Opening{Kind: tt.kind, At: plan.Anchor{Part: tt.at}, Assembly: tt.assembly}); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
	for cut, want := range map[Cut]string{CutBox: "box outline", CutRing: "raised ring", CutRound: "round", CutHousing: "housing"} {
		if got := cut.Text().String(); got != want {
			t.Errorf("%s is called %q", cut, got)
		}
	}
	if !NoCut.Text().IsZero() {
		t.Error("no hole has a name")
	}
}

// TestBlanks: of the catalogue's blanks the one that goes on the box and covers its gangs; one
// without gangs covers all.
func TestBlanks(t *testing.T) {
	for _, tt := range []struct {
		box   string
		gangs int
		want  string
	}{{"pn1-18", 1, "blank-1g"}, {"pn1-18", 2, "blank-2g"}, {"sq4-1.5", 1, "blank-4"}, {"oct4-1.5", 0, "blank-rd"}, {"pn1-18", 7, ""}} {
		got := ""
		if add := blankFor(part.All().Box(tt.box), tt.gangs); add != nil {
			got = add.ID
		}
		if got != tt.want {
			t.Errorf("%s of %d gangs: %q, want %q", tt.box, tt.gangs, got, tt.want)
		}
	}
}
