package plantest

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// several draws things of which some stand on others.
func (g draw) several() (ids []plan.ID) {
	for range g.n(1, 4) {
		switch g.n(0, 4) {
		case 0:
			ids = append(ids, g.room().ID)
		case 1:
			ids = append(ids, g.breaks().ID)
		case 2:
			ids = append(ids, g.fixture().ID)
		default:
			ids = append(ids, g.opening().ID)
		}
	}
	return ids
}

func (g draw) way() geom.Point { return geom.Point{X: g.length(-24, 24), Y: g.length(-24, 24)} }

// together draws an edit that places several things.
func (g draw) together() edit.Edit {
	ids := g.several()
	switch g.n(0, 5) {
	case 0:
		return arrange.Turn{Things: ids}
	case 1:
		return arrange.Mirror{Things: ids}
	case 2:
		return arrange.Spread{Things: ids, ToEnds: g.chance()}
	case 3:
		return arrange.AlignHeights{To: ids[0], Things: ids}
	case 4:
		return arrange.SameDistance{As: ids[0], Things: ids, IsRight: g.chance()}
	}
	return arrange.Move{Things: ids, By: g.way()}
}

// copied draws an edit that sets copies of several things.
func (g draw) copied() edit.Edit {
	c := arrange.ClipOf(g.p, g.several())
	var as []plan.ID
	for _, id := range c.IDs() {
		as = append(as, g.id(id.Kind()))
	}
	level := value(pick(g, g.p.Levels)).ID
	switch g.n(0, 3) {
	case 0:
		return arrange.Paste{Clip: c, As: as, Level: level, By: g.way(), Along: g.length(-24, 24)}
	case 1:
		return arrange.Paste{Clip: c, As: as, Level: level, Onto: g.room().ID}
	case 2:
		return arrange.Paste{Clip: c, As: as, Level: level, Onto: g.side().ID}
	}
	return arrange.Duplicate{Clip: c, As: as, Level: level, Step: unit.Foot, Partition: 4 * unit.Inch}
}
