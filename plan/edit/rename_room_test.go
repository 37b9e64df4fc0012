package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

func TestUseAndPrefixFollowTheName(t *testing.T) {
	corners := geom.Polygon{{}, {X: 10 * ft}, {X: 10 * ft, Y: 12 * ft}, {Y: 12 * ft}}
	start := plan.NewRoom("raaaaaaaa", "Room 1", plan.UseLiving, corners, []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	start.Ceiling, start.Prefix = 8*ft, "R"
	p := after(t, plan.New("Test", ground), edit.AddRoom{Level: ground, Room: start})
	rename := func(p plan.Plan, title string, use plan.Use) *plan.Room {
		t.Helper()
		r, _ := after(t, p, edit.RenameRoom{ID: start.ID, Title: title, Use: use}).Room(start.ID)
		return r
	}
	if r := rename(p, "Kitchen", plan.UseKitchen); r.Use != plan.UseKitchen || r.Prefix != "K" {
		t.Errorf("renamed to Kitchen: use %s, prefix %s", r.Use, r.Prefix)
	}
	chosen := start
	chosen.Use, chosen.Prefix = plan.UseDen, "Q"
	if r := rename(after(t, p, edit.ChangeRoom{Room: chosen}), "Kitchen", ""); r.Use != plan.UseDen || r.Prefix != "Q" {
		t.Errorf("what was chosen by hand became use %s, prefix %s", r.Use, r.Prefix)
	}
	worn := plan.Opening{ID: "o22222222", Kind: "duplex", At: plan.OnFace("saaaaaaaa", 20*unit.Inch), Height: plan.CentreAt(16 * unit.Inch), Gangs: 1, Status: plan.StatusNew}
	if r := rename(after(t, p, edit.AddOpening{Opening: worn}), "Kitchen", ""); r.Prefix != "R" {
		t.Errorf("a prefix that R1 wears became %s", r.Prefix)
	}
}
