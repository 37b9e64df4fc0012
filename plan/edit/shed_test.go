package edit_test

import (
	"errors"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

const (
	in = unit.Inch
	ft = unit.Foot
)

func at(x, y unit.Length) geom.Point { return geom.Point{X: x, Y: y} }

// The IDs of shed.
const (
	ground, shedRoom                         = "vgrnd2222", "rshed2222"
	north, east, south, west                 = "snrth2222", "seast2222", "ssuth2222", "swest2222"
	door, window                             = "bdr222222", "bwndw2222"
	bench, sink, panel                       = "fbench222", "fsink2222", "fpane2222"
	n1, n2, lamp, front                      = "onrth2222", "onrth3333", "onamp2222", "ofrnt2222"
	circuit, feed, run, control, question, w = "kbench222", "cfeed2222", "crun22222", "tight2222", "dheight22", "wreach222"
)

// shed is one room of 12 × 10 ft with its left upper corner at the origin. On the north
// side: opening S1 3 ft and S2 9 ft from the left end; on the south side: a door from
// 1 ft to 4 ft; on the east side a window from 3 ft to 6 ft; on the west side a bench
// from 2 ft to 8 ft with a sink on top and opening S4 in its front; a lamp S3 in the
// middle of the ceiling; a panel on the south side.
func shed(t *testing.T) plan.Plan {
	t.Helper()
	r := plan.NewRoom(shedRoom, "Shed", plan.UseUtility, geom.Polygon{at(0, 0), at(12*ft, 0), at(12*ft, 10*ft), at(0, 10*ft)}, []plan.ID{north, east, south, west})
	r.Ceiling = 8 * ft
	opening := func(id plan.ID, a plan.Anchor) edit.AddOpening {
		return edit.AddOpening{Opening: plan.Opening{ID: id, Kind: "duplex", At: a, Height: plan.CentreAt(18 * in), Gangs: 1, Status: plan.StatusNew}}
	}
	return after(t, plan.New("Shed", ground),
		edit.AddRoom{Level: ground, Room: r},
		edit.AddBreak{Break: plan.Break{ID: door, Kind: plan.BreakDoor, At: plan.OnFace(south, ft), Width: 3 * ft, Head: 80 * in}},
		edit.AddBreak{Break: plan.Break{ID: window, Kind: plan.BreakWindow, At: plan.OnFace(east, 3*ft), Width: 3 * ft, Head: 80 * in, Sill: 3 * ft}},
		edit.AddFixture{Fixture: plan.Fixture{ID: bench, Kind: plan.FixtureCounter, At: plan.OnFace(west, 2*ft), Width: 6 * ft, Depth: 2 * ft, Height: 3 * ft}},
		edit.AddFixture{Fixture: plan.Fixture{ID: sink, Kind: plan.FixtureSink, At: plan.Anchor{Host: bench, Part: plan.PartTop, Along: 3 * ft, Out: ft}, Width: 20 * in, Depth: 16 * in}},
		edit.AddFixture{Fixture: plan.Fixture{ID: panel, Kind: plan.FixturePanel, At: plan.OnFace(south, 6*ft), Width: 15 * in, Depth: 4 * in, Height: 30 * in, Bottom: 4 * ft}},
		opening(n1, plan.OnFace(north, 3*ft)),
		opening(n2, plan.OnFace(north, 9*ft)),
		opening(lamp, plan.OnCeiling(shedRoom, at(6*ft, 5*ft))),
		opening(front, plan.Anchor{Host: bench, Part: plan.PartFront, Along: ft}),
		edit.Add{Thing: &plan.Circuit{ID: circuit, Number: "3", Panel: panel, Amps: 20, Volts: 120, Poles: 1}},
		edit.Add{Thing: &plan.Cable{ID: feed, From: panel, To: n1, Size: 12, Wires: 2, Ground: true, Circuit: circuit}},
		edit.Add{Thing: &plan.Cable{ID: run, From: n1, To: n2, Size: 12, Wires: 2, Ground: true, Circuit: circuit}},
		edit.Add{Thing: &plan.Control{ID: control, Switches: []plan.ID{n2}, Loads: []plan.ID{lamp}}},
		edit.Add{Thing: &plan.Decision{ID: question, Question: "How high?", About: []plan.ID{n2, north}}},
		edit.Add{Thing: &plan.Waiver{ID: w, Rule: "wall-reach", About: north, Reason: "A stove stands there."}},
	)
}

// after applies edits one after another; each must be possible and leave a sound plan.
func after(t *testing.T, p plan.Plan, edits ...edit.Edit) plan.Plan {
	t.Helper()
	for _, e := range edits {
		next, err := e.Apply(p)
		if err == nil {
			err = plan.Check(next)
		}
		if err != nil {
			t.Fatalf("%#v: %v", e, err)
		}
		p = next
	}
	return p
}

// refused applies an edit that must fail with the cause, where one is given, and name
// the things.
func refused(t *testing.T, p plan.Plan, e edit.Edit, cause error, things ...plan.ID) {
	t.Helper()
	_, err := e.Apply(p)
	var r *plan.Refusal
	if !errors.As(err, &r) || cause != nil && !errors.Is(err, cause) {
		t.Errorf("%#v: got %v, want one that is: %v", e, err, cause)
		return
	}
	if len(things) > 0 && !sameIDs(r.Things, things) {
		t.Errorf("%#v: refused for %v, want %v", e, r.Things, things)
	}
}

func sameIDs(a, b []plan.ID) bool {
	a, b = slices.Clone(a), slices.Clone(b)
	slices.Sort(a)
	slices.Sort(b)
	return slices.Equal(a, b)
}

func opening(t *testing.T, p plan.Plan, id plan.ID) plan.Opening {
	t.Helper()
	o, _ := p.Opening(id)
	if o == nil {
		t.Fatalf("opening %s is not in the plan", id)
	}
	return *o
}

func room(t *testing.T, p plan.Plan) *plan.Room {
	t.Helper()
	r, _ := p.Room(shedRoom)
	if r == nil {
		t.Fatal("the room is not in the plan")
	}
	return r
}

// corners returns the outline in inches: x, y, x, y ...
func corners(r *plan.Room) (out []int) {
	for _, c := range r.Outline() {
		out = append(out, int(c.X/in), int(c.Y/in))
	}
	return out
}
