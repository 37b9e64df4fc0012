package spacing_test

import (
	"fmt"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// rowAt is a kitchen wall of 100 in before 2023 with a range on it and counters beside it:
// pairs of place and width.
func rowAt(t *testing.T, along float64, counters ...[2]float64) *filltest.Room {
	r := filltest.OneWall(t, 100)
	r.Edition, r.Room.Use = "2020", plan.UseKitchen
	r.Fixture(plan.FixtureRange, 0, along, 30)
	for _, c := range counters {
		r.Fixture(plan.FixtureCounter, 0, c[0], c[1])
	}
	return r
}

// TestWhereWallSpacesEnd holds what ends a wall space and what goes on. The places are
// arithmetic on NEC 210.52(A)(1) and (2).
func TestWhereWallSpacesEnd(t *testing.T) {
	const between = "210.52(A)(2)(1): unbroken along the floor line; an open side has none"
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *filltest.Room
		want   []string
		source string
	}{
		{"one on the wall before an open side does not serve the wall after it", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 60)
			r.Room.Sides[0].Kind, r.Room.Sides[2].Kind = plan.SideOpen, plan.SideOpen
			r.Receptacle(3, 60) // at the end of the last side, where the first, open one begins
			return r
		}, []string{`1:0"-60"`}, between},
		{"nor one after it the wall before", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 60)
			r.Room.Sides[0].Kind, r.Room.Sides[2].Kind = plan.SideOpen, plan.SideOpen
			r.Receptacle(1, 0)
			return r
		}, []string{`3:0"-60"`}, between},
		{"the first side begins with a door: the last wall ends there", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 60)
			r.Door(0, 0, 30)
			r.Room.Sides[2].Kind = plan.SideOpen
			r.Receptacle(3, 60)
			return r
		}, []string{`0:30"-60" 1:0"-60"`}, "210.52(A)(2)(1): a doorway ends it"},
		{"a cabinet stands first, beyond an outside corner: the last wall ends there", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{100, 60}, [2]float64{160, 60}, [2]float64{160, 160}, [2]float64{0, 160}, [2]float64{0, 0}, [2]float64{100, 0})
			for _, s := range r.Room.Sides[1:5] {
				s.Kind = plan.SideOpen
			}
			r.Fixture(plan.FixtureCabinet, 0, 0, 30)
			r.Receptacle(5, 60)
			return r
		}, []string{`0:30"-60"`}, "210.52(A)(2)(1): a fixed cabinet ends it"},
		{"on a closed ring what is not served may go on over the first corner", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 72)
			r.Receptacle(2, 36)
			return r
		}, []string{`3:36"-72" 0:0"-72" 1:0"-36"`}, "ring of 24 ft: 6 ft each way of one, so half is left; arithmetic"},
		{"a slider whose panels are not said is all opening", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 23, 54)
			return r
		}, nil, "210.52(A)(2)(2) counts fixed panels, and none is known; 23 in is left at either end"},
		{"a passage above a low wall leaves the wall space", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakPassage, 23, 54).Sill = in(12)
			return r
		}, []string{`0:0"-23" 0:23"-77" 0:77"-100"`}, "210.52(A)(2)(1): the floor line runs on below it"},
		{"a cabinet on the floor with an end an inch from the wall ends it", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Standing(plan.FixtureCabinet, 23, 1, 54, 24)
			return r
		}, nil, "210.52(A)(2)(1); a filler strip is an inch at most (common practice)"},
		{"one farther off does not", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Standing(plan.FixtureCabinet, 23, 1.125, 54, 24)
			return r
		}, []string{`0:0"-100"`}, "210.52(A)(2)(1); a filler strip is an inch at most (common practice)"},
		{"nor does a cabinet that hangs", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Fixture(plan.FixtureCabinet, 0, 23, 54).Bottom = in(10)
			return r
		}, []string{`0:0"-100"`}, "210.52(A)(2)(1): the floor line runs on below it"},
		{"a table before the wall does not", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Fixture(plan.FixtureDesk, 0, 23, 54)
			return r
		}, []string{`0:0"-100"`}, "210.52(A)(2)(1): furniture is no fixed cabinet"},
		{"a range at the left end of a row is in the row", func(t *testing.T) *filltest.Room {
			return rowAt(t, 35, [2]float64{65, 35})
		}, []string{`0:0"-35"`}, "210.52(C): the wall behind it is the counter rule's; the end of a row is in it (common practice)"},
		{"so is one at the right end", func(t *testing.T) *filltest.Room {
			return rowAt(t, 35, [2]float64{0, 35})
		}, []string{`0:65"-100"`}, "210.52(C), as above"},
		{"one with wall between it and the counters is not", func(t *testing.T) *filltest.Room {
			return rowAt(t, 40, [2]float64{0, 16}, [2]float64{95, 5})
		}, []string{`0:16"-95"`}, "NEC 2020 210.52(A)(2)(1): only what is fixed ends a wall space"},
		{"one at the very start of a wall", func(t *testing.T) *filltest.Room { return rowAt(t, 0) },
			[]string{`0:0"-100"`}, "NEC 2020 210.52(A)(2)(1), as above"},
		{"one at its very end", func(t *testing.T) *filltest.Room { return rowAt(t, 70) },
			[]string{`0:0"-100"`}, "NEC 2020 210.52(A)(2)(1), as above"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := missed(tt.make(t)); fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("not served: %q, want %q (%s)", got, tt.want, tt.source)
			}
		})
	}
}

// TestAmendedDividersAndPanels: where a town lets neither railings nor fixed glass count,
// they end a wall space as 210.52(A)(2) would otherwise not have it.
func TestAmendedDividersAndPanels(t *testing.T) {
	for _, tt := range []struct {
		name, figure string
		make         func(*testing.T) *filltest.Room
	}{
		{"a railing", "room-divider-counts", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideRailing
			return r
		}},
		{"a wall of glass", "fixed-panel-counts", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideGlass
			return r
		}},
		{"a fixed panel", "fixed-panel-counts", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 0, 100, plan.PanelFixed)
			return r
		}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := missed(tt.make(t)); len(got) != 1 {
				t.Errorf("as the code has it: not served %q, want all of it", got)
			}
			if got := amended(tt.make(t), map[string]string{tt.figure: "no"}); len(got) != 0 {
				t.Errorf("amended: %v, want nothing found", got)
			}
		})
	}
}

// TestWhereARemedyStands holds the places of offered receptacles: clear of the ends of a
// leg of wall by 6 in and of a bed by 2 in, in the floor 9 in off where the wall takes
// no box. The distances are common practice.
func TestWhereARemedyStands(t *testing.T) {
	glass := func(sill float64) func(*testing.T) *filltest.Room {
		return func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			b := r.Break(r.Room.Sides[0].ID, plan.BreakWindow, 0, 100)
			b.Sill = in(sill)
			return r
		}
	}
	of := func(kind plan.SideKind) func(*testing.T) *filltest.Room {
		return func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = kind
			return r
		}
	}
	for _, tt := range []struct {
		name    string
		make    func(*testing.T) *filltest.Room
		along   float64 // on the wall
		isFloor bool
		source  string
	}{
		{"the last 4 in of a wall", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 76)
			r.Receptacle(0, 0)
			return r
		}, 70, false, "6 in from the corner at 76 in, as near as may be to the middle of 72 to 76"},
		{"the first 4 in", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 76)
			r.Receptacle(0, 76)
			return r
		}, 6, false, "6 in from the corner at 0"},
		{"a wall of glass", of(plan.SideGlass), 50, true, "no box in glass"},
		{"a railing", of(plan.SideRailing), 50, true, "no box in a railing"},
		{"a window to the floor", glass(0), 50, true, "no box in glass"},
		{"a window too low for a box below it", glass(19.875), 50, true, "a box to 18 in and a sill of 2 in want 20 in"},
		{"a window with room below", glass(20), 50, false, "a box to 18 in and a sill of 2 in want 20 in"},
		{"a passage with too low a wall below", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakPassage, 0, 100).Sill = in(19.875)
			return r
		}, 50, true, "a box to 18 in and a sill of 2 in want 20 in"},
		{"a passage with room below", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakPassage, 0, 100).Sill = in(20)
			return r
		}, 50, false, "a box to 18 in and a sill of 2 in want 20 in"},
		{"a fixed panel", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 0, 100, plan.PanelFixed)
			return r
		}, 50, true, "no box in glass"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := tt.make(t)
			had := map[plan.ID]bool{}
			for o := range r.Level.Openings.All() {
				had[o.ID] = true
			}
			p, err := reach(r)[0].Remedies[0].Edit.Apply(r.Plan())
			if err != nil {
				t.Fatal(err)
			}
			for _, o := range p.Openings() {
				if had[o.ID] {
					continue
				}
				if isFloor := o.At.Part == plan.PartFloor; isFloor != tt.isFloor {
					t.Fatalf("in the floor: %v, want %v (%s)", isFloor, tt.isFloor, tt.source)
				}
				if tt.isFloor {
					if want := (geom.Point{X: in(tt.along), Y: in(9)}); o.At.At != want {
						t.Errorf("at %v, want %v (%s)", o.At.At, want, tt.source)
					}
				} else if o.At.Along != in(tt.along) {
					t.Errorf("%s along, want %v in (%s)", o.At.Along.Inches(8), tt.along, tt.source)
				}
			}
		})
	}
}

// TestARemedyIsClearOfABed: a plug beside a bed has 2 in (common practice), with the
// whole inch next below taken.
func TestARemedyIsClearOfABed(t *testing.T) {
	r := filltest.OneWall(t, 100)
	r.Fixture(plan.FixtureBed, 0, 40, 56) // the middle of the wall is behind it
	o := added(r, reach(r)[0].Remedies[0])
	most := in(40) - 2*unit.Inch - frame.FrontOf(o).Width/2
	if o.At.Along > most || o.At.Along <= most-unit.Inch {
		t.Errorf("%s along, want at most %s and less than an inch short of it", o.At.Along.Inches(8), most.Inches(16))
	}
}

// TestLabelsSayWhereARemedyStands: a box in the floor is more work, so the offer says so.
func TestLabelsSayWhereARemedyStands(t *testing.T) {
	for _, tt := range []struct {
		name string
		make func(*testing.T) *filltest.Room
		want string
	}{
		{"one in the wall", func(t *testing.T) *filltest.Room { return filltest.OneWall(t, 100) }, "Add a receptacle there"},
		{"two in the wall", func(t *testing.T) *filltest.Room { return filltest.OneWall(t, 200) }, "Add 2 receptacles there"},
		{"one in the floor", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideGlass
			return r
		}, "Add a floor receptacle there"},
		{"two in the floor", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 200)
			r.Room.Sides[0].Kind = plan.SideGlass
			return r
		}, "Add 2 receptacles, 2 in the floor"},
	} {
		if got := reach(tt.make(t))[0].Remedies[0].Label.String(); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}
