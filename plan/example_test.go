package plan_test

import (
	"errors"
	"fmt"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// bedroom is a room of 12 by 10 ft.
func bedroom() *plan.Room {
	at := func(x, y unit.Length) geom.Point { return geom.Point{X: x * unit.Foot, Y: y * unit.Foot} }
	return &plan.Room{ID: "raaaaaaaa", Name: "Bedroom", Use: plan.UseBedroom, Ceiling: 8 * unit.Foot, Sides: []*plan.Side{
		{ID: "saaaaaaaa", Kind: plan.SideWall, Start: at(0, 0)},
		{ID: "sbbbbbbbb", Kind: plan.SideWall, Start: at(12, 0)},
		{ID: "scccccccc", Kind: plan.SideWall, Start: at(12, 10)},
		{ID: "sdddddddd", Kind: plan.SideWall, Start: at(0, 10)},
	}}
}

// duplex is a receptacle 4 ft along the first side.
func duplex() plan.Opening {
	return plan.Opening{
		ID: "oaaaaaaaa", Kind: "duplex", Gangs: 1, Status: plan.StatusNew,
		At: plan.OnFace("saaaaaaaa", 4*unit.Foot), Height: plan.CentreAt(16 * unit.Inch),
	}
}

// house is a plan with the bedroom.
func house() plan.Plan {
	p := plan.New("House", "vaaaaaaaa")
	level := *p.Levels[0]
	level.Rooms = level.Rooms.With(bedroom())
	return p.WithLevel(&level)
}

// An edit gives the next plan and leaves the one it was given alone.
func ExampleEdit() {
	before := house()
	after, err := edit.AddOpening{Opening: duplex()}.Apply(before)
	fmt.Println(before.Levels[0].Openings.Len(), after.Levels[0].Openings.Len(), err)
	_, err = edit.MoveOpening{ID: "oaaaaaaaa", To: plan.OnFace("saaaaaaaa", 2*unit.Foot)}.Apply(before)
	fmt.Println(errors.Is(err, plan.ErrGone))
	// Output:
	// 0 1 <nil>
	// true
}

// Undo is a list of plans.
func ExampleHistory() {
	h := edit.NewHistory(house(), 0)
	fmt.Println(h.Do(edit.AddOpening{Opening: duplex()}), h.Plan().Levels[0].Openings.Len())
	h.Undo()
	fmt.Println(h.Plan().Levels[0].Openings.Len())
	h.Redo()
	fmt.Println(h.Plan().Levels[0].Openings.Len())
	// Output:
	// <nil> 1
	// 0
	// 1
}

// Diff says what differs, noun by noun, without visiting what both plans share.
func ExampleDiff() {
	before := house()
	after, err := edit.AddOpening{Opening: duplex()}.Apply(before)
	for _, c := range plan.Changed[*plan.Opening](plan.Diff(before, after)) {
		fmt.Println(c.Level, c.Old == nil, c.New.Kind)
	}
	fmt.Println(plan.Diff(before, before).IsEmpty(), plan.Equal(before, after), err)
	// Output:
	// vaaaaaaaa true duplex
	// true false <nil>
}

// An index answers where things are: the foot of an opening, and the way into its room.
func ExampleIndex() {
	after, err := edit.AddOpening{Opening: duplex()}.Apply(house())
	if err != nil {
		fmt.Println(err)
		return
	}
	ix := index.New(after)
	for _, o := range after.Openings() {
		place, ok := ix.Place(o.At)
		fmt.Println(place.Room.Name, place.Foot.X.FeetInches(8), place.Foot.Y.FeetInches(8), place.Into.Y > 0, ok)
	}
	// Output: Bedroom 4' 0" 0" true true
}
