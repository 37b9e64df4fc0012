package wall

import (
	"cmp"
	"slices"
	"studbay/fill/code"
	"studbay/fill/flat"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// usualPartition is 2x4 framing with 1/2 in of board on either face: common practice.
const usualPartition = 9 * unit.Inch / 2

// way is a move along one axis of the sheet.
type way struct {
	by    geom.Point
	label words.Text // of a room and how far
}

func (w way) length() unit.Length { return w.by.X.Abs() + w.by.Y.Abs() }

// moveApart offers the shortest move of a room, left, right, up or down on the sheet, that
// leaves a usual partition between it and what it overlaps and takes it over no other room.
func moveApart(room outline, others []outline, step unit.Length) []rule.Remedy {
	var ways []way
	for _, other := range others {
		if other.room != room.room && room.edge.Overlaps(other.edge, overlapSlack) {
			ways = append(ways, waysPast(room.room.Name, room.cover, other.cover, usualPartition, step)...)
		}
	}
	byLength(ways)
	for _, w := range ways {
		moved := room.edge.Moved(w.by)
		isOver := func(o outline) bool { return o.room != room.room && moved.Overlaps(o.edge, overlapSlack) }
		if !slices.ContainsFunc(others, isOver) {
			return []rule.Remedy{{Label: w.label, Edit: edit.MoveRoom{ID: room.room.ID, By: w.by}}}
		}
	}
	return nil
}

// waysPast are the moves that take what has a name past another to each hand, by whole steps,
// and leave a gap between them.
func waysPast(name any, of, past geom.Box, gap, step unit.Length) []way {
	far := func(l unit.Length) unit.Length { return (l + gap + step - 1) / step * step }
	left, right := far(of.Max.X-past.Min.X), far(past.Max.X-of.Min.X)
	up, down := far(of.Max.Y-past.Min.Y), far(past.Max.Y-of.Min.Y)
	return []way{
		{geom.Point{X: -left}, words.New("rule.rooms-apart.left", "Move {0} by {1} to the left", name, left)},
		{geom.Point{X: right}, words.New("rule.rooms-apart.right", "Move {0} by {1} to the right", name, right)},
		{geom.Point{Y: -up}, words.New("rule.rooms-apart.up", "Move {0} by {1} up the sheet", name, up)},
		{geom.Point{Y: down}, words.New("rule.rooms-apart.down", "Move {0} by {1} down the sheet", name, down)},
	}
}

// byLength sorts moves, the shortest first.
func byLength(ways []way) {
	slices.SortStableFunc(ways, func(a, b way) int { return cmp.Compare(a.length(), b.length()) })
}

// setClear offers to set a box of a ceiling or a floor as near as it can be set clear of the
// walls and of the other boxes there. One that is there already stays where it is.
func setClear(v index.RoomView, boxes []flatBox, at flatBox, fig *code.Figures) []rule.Remedy {
	if at.o.Status != plan.StatusNew {
		return nil
	}
	outline, step := v.Room.Outline(), fig.Units.Grid()
	best, found := geom.Point{}, false
	for _, to := range placesBeside(v, boxes, at, step) {
		if found && to.Distance(at.Center) >= best.Distance(at.Center) || !outline.Contains(to) {
			continue
		}
		moved := *at.o
		moved.At.At = to
		if isClearFlat(v, boxes, flatBox{flat.FootprintOf(&moved), at.o}) {
			best, found = to, true
		}
	}
	if !found {
		return nil
	}
	to := at.o.At
	to.At = best
	return []rule.Remedy{{
		Label: words.New("rule.flat-place.move", "Move {0} by {1}, clear of what it meets", at.o.Tag, words.Height(best.Distance(at.Center))),
		Edit:  edit.MoveOpening{ID: at.o.ID, To: to},
	}}
}

// placesBeside are the places where a box stands just clear of the walls, of each of the
// boxes that it may meet, and of both.
func placesBeside(v index.RoomView, boxes []flatBox, at flatBox, step unit.Length) []geom.Point {
	half := max(at.Area.Width(), at.Area.Height()) / 2
	from := offWalls(v, at, at.Center, half, step)
	places := []geom.Point{from}
	for _, b := range boxes {
		if b.o == at.o || !nearEnough(b, at) {
			continue
		}
		clear := (half + max(b.Area.Width(), b.Area.Height())/2 + step - 1) / step * step
		for _, to := range []geom.Point{
			{X: b.Center.X - clear, Y: from.Y}, {X: b.Center.X + clear, Y: from.Y},
			{X: from.X, Y: b.Center.Y - clear}, {X: from.X, Y: b.Center.Y + clear},
		} {
			places = append(places, offWalls(v, at, to, half, step))
		}
	}
	return places
}

// nearEnough reports whether a box is one that another may have to pass.
func nearEnough(b, at flatBox) bool {
	return b.Center.Distance(at.Center) <= 2*(b.Area.Width()+at.Area.Width())
}

// offWalls moves a place square off each wall that a box so large would be in.
func offWalls(v index.RoomView, at flatBox, to geom.Point, half, step unit.Length) geom.Point {
	clear := (half + step - 1) / step * step
	for i := range v.Sides {
		s := &v.Sides[i]
		along, out := s.Frame.Project(to)
		isBefore := -half < along && along < s.Length+half
		if flat.StandsAt(s.Side, at.o.At.Part) && isBefore && -half < out && out < half {
			to = s.Frame.Point(along, clear)
		}
	}
	return to
}

// isClearFlat reports whether a box is in no wall and on no other box.
func isClearFlat(v index.RoomView, boxes []flatBox, at flatBox) bool {
	return !slices.ContainsFunc(boxes, func(b flatBox) bool { return b.o != at.o && b.Meets(at.Footprint) }) && !isInWall(v, at)
}
