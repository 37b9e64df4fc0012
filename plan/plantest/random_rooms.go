package plantest

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// outline draws the corners of a room: a rectangle, one with a corner cut out, one with
// a corner cut off, or any corners at all, in either direction.
func (g draw) outline() geom.Polygon {
	at, w, d := g.point(), g.length(36, 240), g.length(36, 240)
	p := rectangle(geom.Point{}, w, d)
	switch g.n(0, 5) {
	case 0:
		p = geom.Polygon{{}, {X: w}, {X: w, Y: d / 2}, {X: w / 2, Y: d / 2}, {X: w / 2, Y: d}, {Y: d}}
	case 1:
		p = geom.Polygon{{}, {X: w}, {X: w, Y: d / 2}, {X: w / 2, Y: d}, {Y: d}}
	case 2:
		p = nil
		for range g.n(2, 6) {
			p = append(p, g.point())
		}
	}
	if g.n(0, 3) == 0 {
		for i, j := 0, len(p)-1; i < j; i, j = i+1, j-1 {
			p[i], p[j] = p[j], p[i]
		}
	}
	return p.Moved(at)
}

func (g draw) addRoom() edit.Edit {
	corners := g.outline()
	var sides []plan.ID
	for range corners {
		sides = append(sides, g.id(plan.KindSide))
	}
	name := pick(g, []string{"Bedroom", "Bath", "Kitchen", "Office", "Iron store", "Ça", "", "Be"})
	r := plan.NewRoom(g.id(plan.KindRoom), name, pick(g, plan.Uses), corners, sides)
	r.Ceiling = g.length(84, 120)
	for _, s := range r.Sides {
		*s = g.dressed(*s)
	}
	return edit.AddRoom{Level: value(pick(g, g.p.Levels)).ID, Room: r}
}

// dressed draws what a side is made of.
func (g draw) dressed(s plan.Side) plan.Side {
	if g.n(0, 3) > 0 {
		return s
	}
	s.Kind = pick(g, []plan.SideKind{plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen})
	if g.seldom() {
		s.Kind = "hedge"
	}
	s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2, First: g.length(0, 15)}
	s.Finish = []plan.Layer{{Name: "board", Thickness: g.length(0, 1)}}
	return s
}

func (g draw) changeRoom() edit.Edit {
	r := g.room()
	r.Ceiling, r.Prefix = g.length(80, 130), pick(g, []string{r.Prefix, r.Prefix, "ABC", "Z9", ""})
	r.Floor = []plan.Layer{{Name: "tile", Thickness: g.length(0, 3)}}
	return edit.ChangeRoom{Room: r}
}

func (g draw) moveRoom() edit.Edit { return edit.MoveRoom{ID: g.room().ID, By: g.point()} }

func (g draw) removeRoom() edit.Edit {
	return edit.Remove{Things: []plan.ID{g.room().ID}, Cascade: g.seldom()}
}

func (g draw) changeSide() edit.Edit { return edit.ChangeSide{Side: g.dressed(g.side())} }

func (g draw) moveCorner() edit.Edit {
	s := g.side()
	to := s.Start.Add(geom.Point{X: g.length(-30, 30), Y: g.length(-30, 30)})
	return edit.MoveCorner{Side: s.ID, To: to, Clamp: g.chance()}
}

func (g draw) moveSide() edit.Edit {
	e := edit.MoveSide{Side: g.side().ID, By: g.length(-40, 40), Clamp: g.chance()}
	if g.chance() {
		e.Joints = [2]plan.ID{g.id(plan.KindSide), g.id(plan.KindSide)}
	}
	return e
}

func (g draw) sideLength() edit.Edit {
	return edit.SetSideLength{Side: g.side().ID, Length: g.length(60, 240), FromRight: g.chance(), Clamp: g.chance()}
}

func (g draw) splitSide() edit.Edit {
	return edit.SplitSide{Side: g.side().ID, At: g.length(0, 120), NewID: g.id(plan.KindSide)}
}

func (g draw) removeCorner() edit.Edit {
	return edit.RemoveCorner{Side: g.side().ID, Clamp: g.chance()}
}
