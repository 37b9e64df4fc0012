package support_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
)

// 314.27(C): a fan hangs from a box listed for one. Joists run beside the upper wall, 16 in
// apart, the first 16 in from it: one is at 48 in, so that a box 4 in wide from 46 to 50 on
// reaches it. FN2 is screwed to a joist, FN3 comes on a brace.
func TestFanSupport(t *testing.T) {
	const unlisted = "stop: A1: its box is not listed to carry a fan"
	for _, tt := range []struct {
		name   string
		kind   string
		code   string
		y      float64
		joists bool
		want   []string
	}{
		{"listed, at a joist", "fan-light", "FN2", 48, true, nil},
		{"listed, 2 in off", "fan-light", "FN2", 50, true, nil},
		{"listed, 1/16 more", "fan-light", "FN2", 50.0625, true, []string{`stop: A1: no joist is above its box, the nearest 2-1/16" away`}},
		{"listed, joists not known", "fan-light", "FN2", 56, false, []string{"note: A1: it is not known whether a joist is above its box"}},
		{"on a brace", "fan-light", "FN3", 56, false, nil},
		{"plastic for a light", "fan-light", "RD1", 48, true, []string{unlisted}},
		{"steel octagon", "fan-light", "RD3", 48, true, []string{unlisted}},
		{"old work", "fan-light", "OW4", 48, true, []string{unlisted}},
		{"a light needs none", "ceiling-light", "RD1", 48, true, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		if tt.joists {
			ref, _ := h.Plan.Side(room.Sides[0])
			r := *ref.Room
			r.Joists = plan.Joists{Along: room.Sides[0], Spacing: in(16), First: in(16)}
			h.Do(edit.ChangeRoom{Room: r})
		}
		h.Box(room.Sides[0], tt.kind, tt.code, 40, 16, func(o *plan.Opening) {
			o.At, o.Height, o.Gangs = plan.OnCeiling(room.ID, geom.Point{X: in(72), Y: in(tt.y)}), plan.Height{}, 0
		})
		if got := h.Said("fan-support"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("fan-support")
	}
}

// No remedy of another rule puts a fan in a box that is not listed for one.
func TestNoRemedyHangsAFanFromAnUnlistedBox(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	o := h.Box(room.Sides[0], "fan-light", "OW4", 40, 16, func(o *plan.Opening) {
		o.At, o.Height, o.Gangs = plan.OnCeiling(room.ID, geom.Point{X: in(72), Y: in(48)}), plan.Height{}, 0
		o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 3, Times: 2}}}
	})
	found := h.Found("box-fill")
	if len(found) != 1 {
		t.Fatal(found) // 2 × 3 × 2.25 and the grounds are over 14.0
	}
	for _, id := range []string{"box-fill", "fan-support"} {
		for _, f := range h.Found(id) {
			for _, r := range f.Remedies {
				next, err := r.Edit.Apply(h.Plan)
				if err != nil {
					t.Fatal(err)
				}
				after := &walltest.House{T: t, Plan: next, IDs: h.IDs}
				for _, g := range after.Found("fan-support") {
					if g.Message.ID == "rule.fan-support.unlisted" && g.Opening == o.ID {
						t.Errorf("%s offers %s", id, r.Label)
					}
				}
			}
		}
	}
}

// 314.27(C) asks for a box that is listed and marked: of one that is there already only the mark
// that was read tells, and one that grips the board is never made for it.
func TestFansOnOldBoxes(t *testing.T) {
	const (
		unlisted = "stop: A1: its box is not listed to carry a fan"
		unread   = "note: A1: read whether the old box is marked for a fan"
	)
	for _, tt := range []struct {
		name   string
		status plan.Status
		a      plan.Assembly
		want   []string
	}{
		{"nobody read it", plan.StatusExisting, plan.Assembly{}, []string{unread}},
		{"marked", plan.StatusExisting, plan.Assembly{ForFan: plan.AnswerYes}, nil},
		{"not marked", plan.StatusExisting, plan.Assembly{ForFan: plan.AnswerNo}, []string{unlisted}},
		{"kept for it, unread", plan.StatusNew, plan.Assembly{Kept: true}, []string{unread}},
		{"kept for it, marked", plan.StatusNew, plan.Assembly{Kept: true, ForFan: plan.AnswerYes}, nil},
		{"a new one, none chosen", plan.StatusNew, plan.Assembly{}, nil},
		{"looks like one", plan.StatusExisting, plan.Assembly{Code: "FN2"}, []string{unread}},
		{"looks like one and is not marked", plan.StatusExisting, plan.Assembly{Code: "FN2", ForFan: plan.AnswerNo}, []string{unlisted}},
		{"looks like one and is", plan.StatusExisting, plan.Assembly{Code: "FN2", ForFan: plan.AnswerYes}, nil},
		{"an octagon, unread", plan.StatusExisting, plan.Assembly{Code: "RD3"}, []string{unlisted}},
		{"an octagon that is marked", plan.StatusExisting, plan.Assembly{Code: "RD3", ForFan: plan.AnswerYes}, nil},
		{"old work, whatever is said", plan.StatusExisting, plan.Assembly{Code: "OW4", ForFan: plan.AnswerYes}, []string{unlisted}},
		{"a new octagon, whatever is said", plan.StatusNew, plan.Assembly{Code: "RD3", ForFan: plan.AnswerYes}, []string{unlisted}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "fan-light", "", 40, 16, func(o *plan.Opening) {
			o.At, o.Height, o.Gangs = plan.OnCeiling(room.ID, geom.Point{X: in(72), Y: in(48)}), plan.Height{}, 0
			o.Status, o.Assembly = tt.status, tt.a
		})
		if got := h.Said("fan-support"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}
