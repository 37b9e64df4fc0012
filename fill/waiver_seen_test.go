package fill_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
)

// shown counts the findings of a rule that are not set aside.
func shown(result fill.Result, rule string) (n int) {
	for f := range result.Each() {
		if f.Rule == rule && f.Waived == nil && !f.IsOpen {
			n++
		}
	}
	return n
}

// aside sets a finding aside as it is.
func aside(f rule.Finding) []plan.Waiver {
	return []plan.Waiver{{Rule: f.Rule, About: f.About, Reason: "a bench stands there", Seen: f.Seen()}}
}

// 210.52(A)(1): of 300 in with receptacles at 72 and at 200 in, 272 to 300 are left.
func oneGap(t *testing.T) (*filltest.Room, []plan.Waiver) {
	r := filltest.OneWall(t, 300)
	r.Receptacle(0, 72)
	r.Receptacle(0, 200)
	found := r.Found(spacing.WallReach.ID)
	if len(found) != 1 {
		t.Fatal(filltest.Said(found))
	}
	return r, aside(found[0])
}

func TestAWaiverIsOfWhatWasSeen(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*filltest.Room)
		want   int
	}{
		{"the same", func(*filltest.Room) {}, 0},
		{"less: another receptacle serves a part", func(r *filltest.Room) { r.Receptacle(0, 210) }, 0},
		{"more: the receptacle before it goes", func(r *filltest.Room) {
			gone := r.OpeningAt(0, 200)
			r.Level.Openings = r.Level.Openings.Without(gone.ID)
		}, 1},
		{"a second one on the same wall", func(r *filltest.Room) {
			gone := r.OpeningAt(0, 72)
			r.Level.Openings = r.Level.Openings.Without(gone.ID)
		}, 1},
		{"longer: the wall is", func(r *filltest.Room) {
			r.Room.Sides[1].Start.X = in(310)
			r.Room.Sides[2].Start.X = in(310)
		}, 1},
	} {
		r, waivers := oneGap(t)
		tt.change(r)
		if got := shown(r.Checked(nil, waivers), spacing.WallReach.ID); got != tt.want {
			t.Errorf("%s: %d are shown, want %d", tt.name, got, tt.want)
		}
	}
}

// A waiver of a 1.0 file has no more than its rule and what it is about, and holds as ever.
func TestAnOldWaiverHoldsForAll(t *testing.T) {
	r, waivers := oneGap(t)
	waivers[0].Seen = nil
	r.Level.Openings = r.Level.Openings.Without(r.OpeningAt(0, 72).ID)
	if got := shown(r.Checked(nil, waivers), spacing.WallReach.ID); got != 0 {
		t.Errorf("%d are shown", got)
	}
}

// Three cables 12/2, a yoke of 12 AWG and one allowance of grounds: 20.25 in³ of 18 by NEC
// 2023 314.16(B); four cables are 24.75.
func TestAWaiverOfABoxHoldsForNoMore(t *testing.T) {
	stated := func(cables int) *plan.Contents {
		return &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
			{What: "cable", Size: 12, Wires: 2, Times: cables}, {What: "device", Size: 12},
		}}
	}
	r := filltest.OneWall(t, 100)
	o := r.Receptacle(0, 50)
	o.Assembly = plan.Assembly{Code: "PN1"}
	with := func(cables int) *filltest.Room {
		o.Contents = stated(cables)
		filltest.Put(&r.Level.Openings, o)
		return r
	}
	found := with(3).Found(boxes.Fill.ID)
	if len(found) != 1 {
		t.Fatal(filltest.Said(found))
	}
	waivers := aside(found[0])
	for cables, want := range map[int]int{2: 0, 3: 0, 4: 1} {
		if got := shown(with(cables).Checked(nil, waivers), boxes.Fill.ID); got != want {
			t.Errorf("%d cables: %d are shown, want %d", cables, got, want)
		}
	}
}
