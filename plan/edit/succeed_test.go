package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// oldRoom is a room with an existing switch and light, a cable between them and a control.
func oldRoom(t *testing.T) (p plan.Plan, light, sw *plan.Opening, ids *plantest.IDs) {
	t.Helper()
	ids = plantest.NewIDs(3)
	p = plan.New("Old", ids.New(plan.KindLevel))
	r := plan.NewRoom(ids.New(plan.KindRoom), "Bedroom", plan.UseBedroom, geom.Polygon{{}, {X: 120 * unit.Inch}, {X: 120 * unit.Inch, Y: 120 * unit.Inch}, {Y: 120 * unit.Inch}}, ids.Row(plan.KindSide, 4))
	r.Prefix, r.Ceiling = "B", 96*unit.Inch
	sw = &plan.Opening{ID: ids.New(plan.KindOpening), Kind: "switch", At: plan.OnFace(r.Sides[0].ID, 20*unit.Inch), Height: plan.CentreAt(48 * unit.Inch), Gangs: 1, Status: plan.StatusExisting}
	light = &plan.Opening{ID: ids.New(plan.KindOpening), Kind: "ceiling-light", At: plan.OnCeiling(r.ID, r.Outline().Box().Center()), Status: plan.StatusExisting}
	for _, e := range []edit.Edit{
		edit.AddRoom{Level: p.Levels[0].ID, Room: r}, edit.AddOpening{Opening: *sw}, edit.AddOpening{Opening: *light},
		edit.Add{Thing: &plan.Cable{ID: ids.New(plan.KindCable), From: sw.ID, To: light.ID, Size: 14, Wires: 2}},
		edit.Add{Thing: &plan.Control{ID: ids.New(plan.KindControl), Switches: []plan.ID{sw.ID}, Loads: []plan.ID{light.ID}}},
	} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	return p, light, sw, ids
}

// A switch moves to the other side of a door: one tag, still the switch of its light; its
// cable follows once it is said to be pulled on.
func TestSucceedMoves(t *testing.T) {
	p, light, sw, ids := oldRoom(t)
	by := *sw
	by.ID, by.At.Along = ids.New(plan.KindOpening), 70*unit.Inch
	p, err := (edit.Succeed{Old: sw.ID, By: by, Status: plan.StatusMoved}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	old, _ := p.Opening(sw.ID)
	now, _ := p.Opening(by.ID)
	if old.Tag != "B1-old" || now.Tag != "B1" || now.Was != sw.ID || old.Status != plan.StatusMoved || !old.IsGone() {
		t.Errorf("old %s (%s), now %s was %s", old.Tag, old.Status, now.Tag, now.Was)
	}
	if got := p.Successor(sw.ID); got != now {
		t.Errorf("its successor is %v", got)
	}
	for c := range p.Controls.All() {
		if len(c.Switches) != 1 || c.Switches[0] != by.ID || c.Loads[0] != light.ID {
			t.Errorf("controlled by %v: the new switch is to switch the light", c.Switches)
		}
	}
	if n := endsAt(p, by.ID); n != 0 {
		t.Errorf("%d cables end at the new switch before anything is said of the old box", n)
	}
	stays, err := (edit.SetFate{ID: sw.ID, Fate: plan.FateStays}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if old, _ := stays.Opening(sw.ID); old.IsGone() || old.IsInUse() || endsAt(stays, sw.ID) != 1 {
		t.Error("a box under a blank cover is there, serves nobody and keeps its cables")
	}
	pulled, err := (edit.SetFate{ID: sw.ID, Fate: plan.FateEmptied}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if endsAt(pulled, sw.ID) != 0 || endsAt(pulled, by.ID) != 1 {
		t.Error("cables pulled on end at the new box")
	}
	if _, err := (edit.SetFate{ID: sw.ID, Fate: plan.FateReused}).Apply(p); err == nil {
		t.Error("a box that was left behind cannot hold the new switch")
	}
}

// Nothing but what exists can be moved or replaced, and what is replaced names no successor
// once that is removed.
func TestSucceedWantsAnExistingOne(t *testing.T) {
	p, light, _, ids := oldRoom(t)
	by := *light
	by.ID, by.Kind = ids.New(plan.KindOpening), "fan"
	q, err := (edit.Succeed{Old: light.ID, By: by, Status: plan.StatusReplaced}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	again := by
	again.ID = ids.New(plan.KindOpening)
	if _, err := (edit.Succeed{Old: light.ID, By: again, Status: plan.StatusReplaced}).Apply(q); err == nil {
		t.Error("replaced twice")
	}
	if q, err = (edit.Remove{Things: []plan.ID{light.ID}}).Apply(q); err != nil {
		t.Fatal(err)
	}
	if now, _ := q.Opening(by.ID); now == nil || now.Was != "" {
		t.Errorf("after the old one is deleted: %v", now)
	}
}

func endsAt(p plan.Plan, id plan.ID) (n int) {
	for c := range p.Cables.All() {
		if c.From == id || c.To == id {
			n++
		}
	}
	return n
}

// A box that is kept for what replaces its thing is the new one's, with what is known of it; as
// long as nobody says what is in it that is not known.
func TestAKeptBoxIsTheNewOnes(t *testing.T) {
	p, light, _, ids := oldRoom(t)
	light, _ = p.Opening(light.ID)
	told := *light
	told.Assembly = plan.Assembly{Carries: 50 * unit.Pound, ForFan: plan.AnswerYes}
	told.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: []plan.Item{{What: plan.ItemCable, Times: 2}}}
	p, err := (edit.ChangeOpening{Opening: told}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	by := *light
	by.ID, by.Kind, by.Assembly = ids.New(plan.KindOpening), "fan", plan.Assembly{Code: "FN2"}
	if p, err = (edit.Succeed{Old: light.ID, By: by, Status: plan.StatusReplaced}).Apply(p); err != nil {
		t.Fatal(err)
	}
	out, err := (edit.SetFate{ID: light.ID, Fate: plan.FateOut}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if now, _ := out.Opening(by.ID); now.Assembly.Code != "FN2" || now.Assembly.Kept {
		t.Errorf("with the old box out the new one has %+v", now.Assembly)
	}
	kept, err := (edit.SetFate{ID: light.ID, Fate: plan.FateReused}).Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	now, _ := kept.Opening(by.ID)
	if a := now.Assembly; !a.Kept || a.Code != "" || a.Carries != 50*unit.Pound || a.ForFan != plan.AnswerYes || now.Contents == nil || now.Contents.Source != plan.ContentsInPart {
		t.Errorf("on the old box: %+v, %+v", a, now.Contents)
	}
	back, err := (edit.SetFate{ID: light.ID, Fate: plan.FateUnsaid}).Apply(kept)
	if err != nil {
		t.Fatal(err)
	}
	if now, _ := back.Opening(by.ID); now.Assembly.Kept || now.Assembly.Carries != 0 || now.Contents != nil {
		t.Errorf("not kept after all: %+v, %+v", now.Assembly, now.Contents)
	}
}
