package edit_test

import (
	"errors"
	"strings"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"testing"
)

// named makes as many IDs as a clip wants, each of the kind of its like.
func named(c arrange.Clip) (as []plan.ID) {
	for i, id := range c.IDs() {
		as = append(as, plan.ID(string(id.Kind())+strings.Repeat("z", 6)+string(rune('2'+i/8))+string(rune('2'+i%6))))
	}
	return as
}

const upper = plan.ID("vuppr2222")

func TestALevelIsCopiedWithAllInIt(t *testing.T) {
	p := shed(t)
	clip := arrange.LevelClip(p, ground)
	p = after(t, p, arrange.CopyLevel{Clip: clip, As: named(clip), ID: upper, Title: "Level 2", Elevation: 9 * ft})
	was, now := p.Level(ground), p.Level(upper)
	if now == nil || now.Elevation != 9*ft || now.Name != "Level 2" {
		t.Fatalf("the level is %+v", now)
	}
	for what, got := range map[string][2]int{
		"rooms": {now.Rooms.Len(), was.Rooms.Len()}, "breaks": {now.Breaks.Len(), was.Breaks.Len()},
		"fixtures": {now.Fixtures.Len(), was.Fixtures.Len()}, "openings": {now.Openings.Len(), was.Openings.Len()},
	} {
		if got[0] != got[1] || got[0] == 0 {
			t.Errorf("%d %s of %d", got[0], what, got[1])
		}
	}
	for o := range now.Openings.All() {
		if other, l := p.Opening(o.ID); l != now || other.Tag == "" {
			t.Errorf("%s has the tag %q on %s", o.ID, other.Tag, l.ID)
		}
	}
	if err := plan.Check(p); err != nil {
		t.Error(err)
	}
}

func TestOutlinesAreCopiedAlone(t *testing.T) {
	p := shed(t)
	clip := arrange.OutlinesClip(p, ground)
	p = after(t, p, arrange.CopyLevel{Clip: clip, As: named(clip), ID: upper, Title: "Level 2", Elevation: 9 * ft})
	now := p.Level(upper)
	if now.Rooms.Len() != 1 || now.Breaks.Len()+now.Fixtures.Len()+now.Openings.Len() != 0 {
		t.Errorf("the copy holds %d rooms, %d breaks, %d fixtures, %d openings", now.Rooms.Len(), now.Breaks.Len(), now.Fixtures.Len(), now.Openings.Len())
	}
	was, _ := p.Room(shedRoom)
	for r := range now.Rooms.All() {
		for i := range r.Sides {
			if r.Sides[i].Start != was.Sides[i].Start {
				t.Errorf("corner %d is at %v, want %v", i, r.Sides[i].Start, was.Sides[i].Start)
			}
		}
	}
}

func stairs(leads plan.ID) plan.Fixture {
	return plan.Fixture{ID: "fstrs2222", Kind: plan.FixtureStairs, At: plan.OnFloor(shedRoom, at(6*ft, 5*ft)), Width: 3 * ft, Depth: 8 * ft, Height: 8 * ft, Leads: leads}
}

func TestStairsJoinTwoLevels(t *testing.T) {
	two := after(t, shed(t), edit.AddLevel{ID: upper, Title: "Level 2", Elevation: 9 * ft})
	p := after(t, two, edit.AddFixture{Fixture: stairs(upper)})
	if err := plan.Check(p); err != nil {
		t.Error(err)
	}
	for name, f := range map[string]plan.Fixture{
		"to their own level":        stairs(ground),
		"to a level that is not":    stairs("vzzzzzzzz"),
		"of something that is none": {ID: "fdesk2222", Kind: plan.FixtureDesk, At: plan.OnFloor(shedRoom, at(6*ft, 5*ft)), Width: ft, Depth: ft, Leads: upper},
	} {
		if _, err := (edit.AddFixture{Fixture: f}).Apply(two); err == nil {
			t.Errorf("%s: not refused", name)
		} else if name == "to a level that is not" && !errors.Is(err, plan.ErrGone) {
			t.Errorf("%s: %v", name, err)
		}
	}
	p = after(t, p, edit.Removing(upper))
	if f, _ := p.Fixture("fstrs2222"); f == nil || f.Leads != "" {
		t.Errorf("with the level gone the stairs are %+v", f)
	}
}
