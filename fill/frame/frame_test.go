package frame_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// in returns a length of inches that sixteenths hold exactly.
func in(inches float64) unit.Length { return unit.Length(inches*16) * (unit.Inch / 16) }

// house is a plan in the making, for tests.
type house struct {
	t   *testing.T
	ids *plantest.IDs
	p   plan.Plan
}

func newHouse(t *testing.T) *house {
	ids := plantest.NewIDs(1)
	return &house{t, ids, plan.New("House", ids.New(plan.KindLevel))}
}

func (h *house) do(e edit.Edit) {
	h.t.Helper()
	next, err := e.Apply(h.p)
	if err != nil {
		h.t.Fatal(err)
	}
	h.p = next
}

// room adds a room between two corners, in inches, whose sides have studs at 16 in and
// 1/2 in of board. Its sides run from the upper left corner round by the right.
func (h *house) room(left, top, right, bottom float64, change func(sides []*plan.Side)) (sides []plan.ID) {
	h.t.Helper()
	corners := geom.Polygon{{X: in(left), Y: in(top)}, {X: in(right), Y: in(top)}, {X: in(right), Y: in(bottom)}, {X: in(left), Y: in(bottom)}}
	r := plan.NewRoom(h.ids.New(plan.KindRoom), "Room", plan.UseBedroom, corners, h.ids.Row(plan.KindSide, 4))
	r.Ceiling = in(96)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: in(16), Depth: in(3.5)}
		s.Finish = []plan.Layer{{Name: "board", Thickness: in(0.5)}}
		sides = append(sides, s.ID)
	}
	if change != nil {
		change(r.Sides)
	}
	h.do(edit.AddRoom{Level: h.p.Levels[0].ID, Room: r})
	return sides
}

func (h *house) opening(side plan.ID, along float64) plan.ID {
	h.t.Helper()
	o := plan.Opening{ID: h.ids.New(plan.KindOpening), Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace(side, in(along)), Height: plan.CentreAt(in(16))}
	h.do(edit.AddOpening{Opening: o})
	return o.ID
}

func (h *house) door(side plan.ID, along, width, casing float64) plan.ID {
	h.t.Helper()
	b := plan.Break{ID: h.ids.New(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(side, in(along)), Width: in(width), Head: in(80), Casing: in(casing)}
	h.do(edit.AddBreak{Break: b})
	return b.ID
}
