package choose

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestWhatIsLeftInAllBoxes: of openings that stay and whose fill is known, the tightest space of
// each; the first of two as tight is named; the mean is rounded half away from zero.
func TestWhatIsLeftInAllBoxes(t *testing.T) {
	type one struct {
		tag    string
		status plan.Status
		spare  []unit.Volume
	}
	for _, tt := range []struct {
		name              string
		of                []one
		openings, counted int
		least             unit.Volume
		at                string
		mean              unit.Volume
	}{
		{"none", nil, 0, 0, 0, "", 0},
		{"not known", []one{{"A", plan.StatusNew, nil}}, 1, 0, 0, "", 0},
		{"one", []one{{"A", plan.StatusNew, []unit.Volume{5}}}, 1, 1, 5, "A", 5},
		{"above zero alone", []one{{"A", plan.StatusNew, []unit.Volume{5}}, {"B", plan.StatusNew, []unit.Volume{3}}}, 2, 2, 3, "B", 4},
		{"the tighter first", []one{{"A", plan.StatusNew, []unit.Volume{3}}, {"B", plan.StatusNew, []unit.Volume{5}}}, 2, 2, 3, "A", 4},
		{"as tight", []one{{"A", plan.StatusNew, []unit.Volume{3}}, {"B", plan.StatusNew, []unit.Volume{3}}}, 2, 2, 3, "A", 3},
		{"over full", []one{{"A", plan.StatusNew, []unit.Volume{4}}, {"B", plan.StatusExisting, []unit.Volume{7, -5}}}, 2, 2, -5, "B", -1},
		{"half", []one{{"A", plan.StatusNew, []unit.Volume{4}}, {"B", plan.StatusNew, []unit.Volume{5}}}, 2, 2, 4, "A", 5},
		{"one that goes", []one{{"A", plan.StatusRemove, []unit.Volume{-9}}, {"B", plan.StatusNew, []unit.Volume{6}}}, 1, 1, 6, "B", 6},
		{"some not known", []one{{"A", plan.StatusNew, nil}, {"B", plan.StatusNew, []unit.Volume{6}}, {"C", plan.StatusNew, []unit.Volume{8}}}, 3, 2, 6, "B", 7},
	} {
		c := Column{Takeoff: &takeoff.Takeoff{}}
		for _, o := range tt.of {
			at := takeoff.Opening{View: index.OpeningView{Opening: &plan.Opening{Tag: o.tag, Status: o.status}}}
			for _, s := range o.spare {
				at.Fill.Spaces = append(at.Fill.Spaces, box.Result{Spare: s})
			}
			c.Takeoff.Openings = append(c.Takeoff.Openings, at)
		}
		c.spare()
		if c.Openings != tt.openings || c.Counted != tt.counted || c.Least != tt.least || c.LeastAt != tt.at || c.Mean != tt.mean {
			t.Errorf("%s: %d of %d, %d at %q, %d in the mean; want %+v", tt.name, c.Counted, c.Openings, c.Least, c.LeastAt, c.Mean, tt)
		}
	}
	var w boxes.Work
	if _, n := w.Tightest(); n != 0 {
		t.Errorf("nothing worked out has %d spaces", n)
	}
}

// TestWhichCoverGoesOn: of the kind that is wanted, for the shape of the box and the gangs that
// its front has: its own where that fits, else the first of the list.
func TestWhichCoverGoesOn(t *testing.T) {
	for _, tt := range []struct {
		box, wanted string // the assembly whose front is wanted
		gangs       int
		want        string
	}{
		{"pn1-18", "PN1", 1, "plate-1g"}, {"pn2-32", "PN1", 2, "plate-2g"}, {"sq4-1.5", "PN4", 1, "plate-1g"}, {"sq4-1.5", "PN6", 3, "plate-3g"},
		{"sq411-2.125", "SQ7", 2, "plate-range"}, {"sq411-2.125", "SQ7", 1, "plate-1g"}, {"pn1-18", "SQ9", 1, "blank-1g"}, {"oct4-1.5", "SQ9", 0, "blank-rd"}, {"sq4-1.5", "SQ9", 0, "blank-4"},
		{"oct4-1.5", "RD1", 0, "canopy"}, {"sq4-1.5", "RD1", 0, "canopy"}, {"pn1-18", "RD1", 1, ""}, {"pn1-18", "OW6", 1, "canopy"}, {"sq4-1.5", "WP1", 1, ""}, {"pn1-18", "WP1", 1, "wet-1g"}, {"pn1-18", "WP1", 2, ""}, {"pn1-18", "FL1", 1, "floor-1g"},
		{"pn1-18", "PN1", 5, ""}, {"oct4-1.5", "PN1", 1, ""}, {"sq4-1.5", "SQ9", 2, "blank-4"}, {"pn2-32", "SQ9", 2, "blank-2g"},
	} {
		got := ""
		if cover := coverFor(part.All().Box(tt.box), part.All().Assembly(tt.wanted), tt.gangs); cover != nil {
			got = cover.ID
		}
		if got != tt.want {
			t.Errorf("on %s of %d gangs, as %s has: %q, want %q", tt.box, tt.gangs, tt.wanted, got, tt.want)
		}
	}
	if cover := coverFor(part.All().Box("pn1-18"), &part.Assembly{Box: part.All().Box("pn1-18")}, 1); cover != nil {
		t.Errorf("where none is wanted it is %s", cover.ID)
	}
	for _, b := range part.All().Boxes {
		if got, want := takesRings(b), b.Shape == "square-4" || b.Shape == "square-4-11/16"; got != want {
			t.Errorf("devices go on %s by a ring alone: %v", b.ID, got)
		}
	}
}
