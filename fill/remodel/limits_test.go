package remodel_test

import (
	"testing"

	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestLimitsOfOldWalls(t *testing.T) {
	// The plate of a box at 16 in is 4.49 in high (114.046 mm): from 349.377 to 463.423 mm.
	const bottom, top, practice = unit.Length(349_377_000), unit.Length(463_423_000), "common practice: two things cannot be in one place"
	trim := func(from, to, down, up unit.Length) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 120)
			from, to := from+down*over, to+up*over
			r.Sides[0].Trim = []plan.Trim{{Name: "trim", Bottom: from, Height: to - from}}
			put(r, "A", "duplex", 40)
		}
	}
	ruletest.Edges(t, &remodel.TrimClash, []ruletest.Edge{
		ruletest.Limit("a baseboard below the plate", trim(0, bottom, 0, 1), 0, 0, 1, practice),
		ruletest.Limit("a rail above it", trim(top, top+unit.Foot, -1, 0), 0, 0, 1, practice),
		ruletest.Limit("a panel that it lies on, to its top", trim(0, top, 0, -1), 0, 0, 1, "common practice: it lies on it whole"),
		ruletest.Limit("a panel that it lies on, from its bottom", trim(bottom, top+unit.Foot, 1, 0), 0, 0, 1, "common practice: it lies on it whole"),
	})
	// An old-work box of one gang is 2-5/16 wide and wants 1/4 in to studs 1-1/2 thick: from 40 in
	// its middle is 1/4 + 1-5/32 + 3/4 = 2-5/32 off theirs.
	winged := func(sign unit.Length) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := closed(h)
			near := ruletest.In(40) + sign*(69*unit.Inch/32-over)
			r.Sides[0].Places = []plan.StudPlace{{At: near, State: plan.StudMeasured}}
			put(r, "A", "duplex", 40, coded("OW1"))
			put(r, "B", "duplex", 40, ruletest.Up(60), coded("OW1"), ruletest.Existing)
			put(r, "C", "duplex", 40, ruletest.Up(76), coded("PN1"))
		}
	}
	ruletest.Edges(t, &remodel.WingRoom, []ruletest.Edge{
		ruletest.Limit("a stud at its right", winged(1), 0, 0, 1, "common practice; 1/4 in of fit.csv, from memory"),
		ruletest.Limit("a stud at its left", winged(-1), 0, 0, 1, "common practice; 1/4 in of fit.csv, from memory"),
	})
	// A box 2-5/16 by 3-3/4 in at 40 in and 16 up: from 38-27/32 to 41-5/32 and 14-1/8 to 17-7/8.
	blocked := func(change func(p *plan.Probe, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := closed(h)
			p := plan.Probe{From: ruletest.In(30), To: ruletest.In(50), Bottom: ruletest.In(10), Top: ruletest.In(30)}
			change(&p, over)
			r.Sides[0].Probes = []plan.Probe{p}
			put(r, "A", "duplex", 40, coded("PN1"))
		}
	}
	const half = 37 * unit.Inch / 32
	ruletest.Edges(t, &remodel.BlockedBay, []ruletest.Edge{
		ruletest.Limit("blocked left of it", blocked(func(p *plan.Probe, over unit.Length) { p.To = ruletest.In(40) - half + over }), 0, 0, 1, practice),
		ruletest.Limit("blocked right of it", blocked(func(p *plan.Probe, over unit.Length) { p.From = ruletest.In(40) + half - over }), 0, 0, 1, practice),
		ruletest.Limit("blocked below it", blocked(func(p *plan.Probe, over unit.Length) { p.Top = ruletest.In(14.125) + over }), 0, 0, 1, practice),
		ruletest.Limit("blocked above it", blocked(func(p *plan.Probe, over unit.Length) { p.Bottom = ruletest.In(17.875) - over }), 0, 0, 1, practice),
	})
}

// TestHeightsOffATrim: up and down, the nearer first, to whole sixteenths; not into the floor,
// past the ceiling, onto another trim or another box.
func TestHeightsOffATrim(t *testing.T) {
	rail := plan.Trim{Name: "rail", Bottom: ruletest.In(17), Height: ruletest.In(3)}
	const up, down = `Raise A by 6-1/4"`, `Lower A by 1-1/4"`
	for _, tt := range []struct {
		name string
		make func(r *ruletest.Room)
		want []string
	}{
		{"a rail alone", func(*ruletest.Room) {}, []string{down, up}}, // 18.245 − 17, 20 − 13.755
		{"a baseboard under it", func(r *ruletest.Room) {
			r.Sides[0].Trim = append(r.Sides[0].Trim, plan.Trim{Name: "base", Height: ruletest.In(12.5625)})
		}, []string{up}}, // lowered, its plate begins at 12.505
		{"a baseboard that it clears", func(r *ruletest.Room) {
			r.Sides[0].Trim = append(r.Sides[0].Trim, plan.Trim{Name: "base", Height: ruletest.In(12.5)})
		}, []string{down, up}},
		{"a picture rail over it", func(r *ruletest.Room) {
			r.Sides[0].Trim = append(r.Sides[0].Trim, plan.Trim{Name: "upper", Bottom: ruletest.In(24.4375), Height: ruletest.In(2)})
		}, []string{down}}, // raised, its plate ends at 24.495
		{"one that it clears", func(r *ruletest.Room) {
			r.Sides[0].Trim = append(r.Sides[0].Trim, plan.Trim{Name: "upper", Bottom: ruletest.In(24.5), Height: ruletest.In(2)})
		}, []string{down, up}},
		{"a ceiling just over it", func(r *ruletest.Room) { r.Room.Ceiling = ruletest.In(24.4375) }, []string{down}},
		{"one that it clears by a hair", func(r *ruletest.Room) { r.Room.Ceiling = ruletest.In(24.5) }, []string{down, up}},
		{"a box over it", func(r *ruletest.Room) { put(r, "B", "duplex", 41, ruletest.Up(26)) }, []string{down}},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Sides[0].Trim = []plan.Trim{rail}
		put(r, "A", "duplex", 40)
		tt.make(r)
		var got []string
		for _, f := range h.Found(&remodel.TrimClash) {
			for _, remedy := range f.Remedies {
				if f.Message.String()[0] == 'A' {
					got = append(got, remedy.Label.String())
				}
			}
		}
		if len(got) != len(tt.want) || len(got) > 0 && got[0] != tt.want[0] || len(got) > 1 && got[1] != tt.want[1] {
			t.Errorf("%s: offered %q, want %q", tt.name, got, tt.want)
		}
	}
	// Near the floor: its plate ends at 6.245 and begins at 1.755; 1-3/4 lower it is at the floor.
	for trim, want := range map[float64]int{4.5: 2, 4.4375: 1} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Sides[0].Trim = []plan.Trim{{Name: "rail", Bottom: ruletest.In(trim), Height: ruletest.In(1)}}
		put(r, "A", "duplex", 40, ruletest.Up(4))
		if found := h.Found(&remodel.TrimClash); len(found) != 1 || len(found[0].Remedies) != want {
			t.Errorf("a rail at %v: %+v, want %d ways", trim, found, want)
		}
	}
}
