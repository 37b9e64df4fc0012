package spacing_test

import (
	"fmt"
	"testing"

	"studbay/fill/filltest"
	"studbay/plan"
	"studbay/plan/edit"
)

// moves returns what is offered to be moved for the wall findings of a room: how far along
// its face each receptacle would then stand, in inches.
func moves(r *filltest.Room) (out []string) {
	for _, f := range reach(r) {
		for _, remedy := range f.Remedies {
			if e, ok := remedy.Edit.(edit.MoveOpening); ok {
				out = append(out, fmt.Sprintf("%d to %s", r.Room.SideAt(e.To.Host), e.To.Along.Inches(16)))
			}
		}
	}
	return out
}

// TestNeighborsThatMayBeMoved: a receptacle serves 6 ft of wall either way (NEC 2023
// 210.52(A)(1)). One beside a gap is offered to be moved by the length of the gap, where
// what it served is served all the same and a box has room there. The rest is arithmetic.
func TestNeighborsThatMayBeMoved(t *testing.T) {
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *filltest.Room
		want   []string
		reason string
	}{
		{"the only one of a wall", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 20)
			return r
		}, []string{`0 to 28"`}, "20 + 72 leaves 8 in; from 28 all of 0 to 100 is served"},
		{"the only one, before the wall's left end", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 80)
			return r
		}, []string{`0 to 72"`}, "80 - 72 leaves 8 in"},
		{"one that would leave as much at its other end", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 146)
			r.Receptacle(0, 72)
			return r
		}, nil, "2 in more at the right are 2 in less at the left"},
		{"of two the one that has reach to spare", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 230)
			r.Receptacle(0, 72)
			r.Receptacle(0, 220)
			return r
		}, []string{`0 to 216"`}, "148 apart: the left one would leave 4 in at the left end"},
		{"either of two that have", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 230)
			r.Receptacle(0, 60)
			r.Receptacle(0, 208)
			return r
		}, []string{`0 to 64"`, `0 to 204"`}, "64 and 22 in to the ends"},
		{"round the first corner of a room without a door", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 100)
			r.Receptacle(0, 10)
			r.Receptacle(1, 40)
			r.Receptacle(2, 60)
			return r
		}, []string{`2 to 66"`, `0 to 4"`}, "at 10, 140 and 260 of a ring of 400: 150 from the last to the first"},
		{"one that would stand past the corner", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{74, 0}, [2]float64{74, 120}, [2]float64{0, 120})
			r.Room.Sides[0].Kind, r.Room.Sides[2].Kind, r.Room.Sides[3].Kind = plan.SideGlass, plan.SideOpen, plan.SideOpen
			r.Receptacle(1, 1.5)
			return r
		}, nil, "3-1/2 in to the left of 1-1/2 in there is glass"},
		{"one that would stand in a door", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 200)
			r.Door(0, 100, 36)
			r.Receptacle(0, 24)
			r.Receptacle(0, 150)
			return r
		}, []string{`0 to 28"`}, "24 + 72 leaves 4 in before the door at 100"},
		{"a box of another kind is where it would stand", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 20)
			r.Opening(plan.Opening{Kind: "data", At: plan.OnFace(r.Room.Sides[0].ID, in(29)), Height: plan.CentreAt(in(16)), Gangs: 1, Status: plan.StatusNew})
			return r
		}, nil, "two boxes 1 in apart from center to center are in one place"},
		{"one to be removed is in nobody's way", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 20)
			r.Opening(plan.Opening{Kind: "data", At: plan.OnFace(r.Room.Sides[0].ID, in(29)), Height: plan.CentreAt(in(16)), Gangs: 1, Status: plan.StatusRemove})
			return r
		}, []string{`0 to 28"`}, "it will be gone"},
		{"one that is there already", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 20).Status = plan.StatusExisting
			return r
		}, nil, "it stands in a finished wall"},
		{"2 ft", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 4)
			return r
		}, []string{`0 to 28"`}, "the most that one is moved (common practice)"},
		{"more than 2 ft", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Receptacle(0, 3.875)
			return r
		}, nil, "another receptacle is the better offer (common practice)"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := moves(tt.make(t)); fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("offered to move %q, want %q: %s", got, tt.want, tt.reason)
			}
		})
	}
}

// offered returns where the receptacles of each last remedy of a wall would stand.
func offered(r *filltest.Room) (out []string) {
	for _, f := range reach(r) {
		if len(f.Remedies) == 0 {
			continue
		}
		p, err := f.Remedies[len(f.Remedies)-1].Edit.Apply(r.Plan())
		if err != nil {
			r.T.Fatal(err)
		}
		for _, o := range p.Openings() {
			if _, was := r.Level.Openings.Get(o.ID); was {
				continue
			}
			if o.At.Part == plan.PartFloor {
				out = append(out, fmt.Sprintf("floor %s,%s", o.At.At.X.Inches(16), o.At.At.Y.Inches(16)))
			} else {
				out = append(out, fmt.Sprintf("%d at %s", r.Room.SideAt(o.At.Host), o.At.Along.Inches(16)))
			}
		}
	}
	return out
}

// TestWhereRemediesPutReceptacles: 6 in from the end of a wall, so that casing and corner
// framing stay clear; 9 in before it in the floor (common practice); at whole inches; and
// all of the gap within 6 ft (NEC 2023 210.52(A)(1)).
func TestWhereRemediesPutReceptacles(t *testing.T) {
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *filltest.Room
		want   []string
		reason string
	}{
		{"in the middle", func(t *testing.T) *filltest.Room { return filltest.OneWall(t, 100) }, []string{`0 at 50"`}, "nothing is in the way"},
		{"at a whole inch", func(t *testing.T) *filltest.Room { return filltest.OneWall(t, 99) }, []string{`0 at 50"`}, "49-1/2 rounds up"},
		{"no whole inch leaves all in reach", func(t *testing.T) *filltest.Room { return filltest.OneWall(t, 143.75) }, []string{`0 at 72"`}, "from 71-3/4 to 72"},
		{"clear of the end of the wall", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 200)
			r.Receptacle(0, 60)
			r.Receptacle(0, 122)
			return r
		}, []string{`0 at 194"`}, "the gap is 194 to 200, its middle 3 in from the end"},
		{"nowhere on short walls", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Door(0, 10, 40)
			r.Door(0, 58, 30)
			return r
		}, nil, "walls of 10, 8 and 12 in need none: a wall space is 2 ft or more (210.52(A)(2)(1))"},
		{"before glass", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideGlass
			return r
		}, []string{`floor 50",9"`}, "no box can be set in glass; within 18 in of it (210.52(A)(3))"},
		{"before glass with a box in the floor there", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideGlass
			r.Opening(plan.Opening{Kind: "junction-floor", At: plan.OnFloor(r.Room.ID, r.Room.Sides[0].Start), Status: plan.StatusNew}).At.At.X = in(50)
			return r
		}, []string{`floor 50",9"`}, "the other is 9 in away"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := offered(tt.make(t)); fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("offered %q, want %q: %s", got, tt.want, tt.reason)
			}
		})
	}
}
