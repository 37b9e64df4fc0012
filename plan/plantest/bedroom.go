package plantest

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Bedroom returns a plan with one room, of 12 by 10 ft, whose first side runs along the
// top of the sheet.
func Bedroom() plan.Plan {
	corners := geom.Box{Max: geom.Point{X: 12 * unit.Foot, Y: 10 * unit.Foot}}.Corners()
	r := plan.NewRoom("raaaaaaaa", "Bedroom", plan.UseBedroom, corners, []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	r.Ceiling = 8 * unit.Foot
	p := plan.New("House", "vaaaaaaaa")
	level := *p.Levels[0]
	level.Rooms = level.Rooms.With(&r)
	return p.WithLevel(&level)
}

// Duplex returns a receptacle 4 ft along the first side of Bedroom.
func Duplex() plan.Opening {
	return plan.Opening{
		ID: "oaaaaaaaa", Kind: "duplex", Gangs: 1, Status: plan.StatusNew,
		At: plan.OnFace("saaaaaaaa", 4*unit.Foot), Height: plan.CentreAt(16 * unit.Inch),
	}
}
