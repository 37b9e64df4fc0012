package wall

import (
	"studbay/fill/code"
	"studbay/fill/house"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// StairsClear looks for stairs drawn through walls.
var StairsClear = rule.Rule{
	ID:    "stairs-clear",
	Title: words.New("rule.stairs-clear.title", "Stairs clear of walls"),
	Doc:   words.New("rule.stairs-clear.doc", `No wall of the level that stairs are drawn on runs more than {0} into their outline, but where a door or a cased opening leaves the way free (common practice: two things cannot be in one place). A wall under the flight, as of a closet there, is told too: set that aside with the reason. Not checked: walls of the level that the stairs lead to, railings, headroom and how steep the stairs are.`, words.Height(stairsSlack)),
	Level: rule.OnLevel(seeStairs, checkStairsClear),
}

// stairsSlack is how far a wall may reach into the outline of stairs: a layer of board may
// lie between them (common practice).
const stairsSlack = unit.Inch / 2

// levelStairs are the stairs of a level and what can stand in their way.
type levelStairs struct {
	ix    *index.Index
	level *plan.Level
}

func seeStairs(ix *index.Index, level *plan.Level) levelStairs { return levelStairs{ix, level} }

// Parts returns the rooms, doors and fixtures of the level.
func (v levelStairs) Parts() []any { return []any{v.level.Rooms, v.level.Breaks, v.level.Fixtures} }

func checkStairsClear(v levelStairs, fig *code.Figures) (found []rule.Finding) {
	for f := range v.level.Fixtures.All() {
		if f.Kind != plan.FixtureStairs {
			continue
		}
		if told, ok := v.throughWalls(f, fig.Units.Grid()); ok {
			found = append(found, told)
		}
	}
	return found
}

// throughWalls tells of stairs that run through walls: of another room than their own, where
// there is one.
func (v levelStairs) throughWalls(f *plan.Fixture, step unit.Length) (rule.Finding, bool) {
	frame, place, ok := v.ix.FixtureFrame(f)
	if !ok || place.Room == nil || min(f.Width, f.Depth) <= 2*stairsSlack {
		return rule.Finding{}, false
	}
	inner := frame.Moved(stairsSlack, stairsSlack).Rectangle(f.Width-2*stairsSlack, f.Depth-2*stairsSlack)
	through, of := v.wallsIn(inner, place.Room)
	if len(through) == 0 {
		return rule.Finding{}, false
	}
	longest := unit.Length(0)
	for _, s := range through {
		longest = max(longest, s.Length())
	}
	return rule.Finding{
		Severity: rule.Warn, ByPractice: true, Room: place.Room.ID, About: f.ID, Measured: rule.LengthOf(longest), Stretches: through,
		Message:  words.New("rule.stairs-clear.told", "The stairs in {0} run through a wall", place.Room.Name),
		Why:      words.New("rule.stairs-clear.why", "A wall of {0} stands inside their outline for {1}: two things cannot be in one place (common practice). If it is that of a closet under the flight, set this aside with that as the reason.", of.Name, longest),
		Remedies: v.moveClear(f, place.Room, inner, through, step),
	}, true
}

// wallsIn lists the stretches of walls inside of an outline, and a room they are of: if it can
// be, another than the one given.
func (v levelStairs) wallsIn(outline geom.Polygon, own *plan.Room) (through []rule.Stretch, of *plan.Room) {
	for r := range v.level.Rooms.All() {
		for i, s := range r.Sides {
			line := r.Segment(i)
			if s.Kind != plan.SideWall && s.Kind != plan.SideGlass || !line.Box().Intersects(outline.Box()) {
				continue
			}
			for _, in := range line.Within(outline) {
				left := v.solid(s.ID, geom.FrameOf(line), in)
				if len(left) > 0 && (of == nil || of == own) {
					of = r
				}
				through = append(through, left...)
			}
		}
	}
	return through, of
}

// solid lists what doors and cased openings leave of a stretch of a side.
func (v levelStairs) solid(side plan.ID, frame geom.Frame, in geom.Interval) (left []rule.Stretch) {
	add := func(from, to unit.Length) {
		if from < to {
			line := geom.Segment{A: frame.Point(from, 0), B: frame.Point(to, 0)}
			left = append(left, rule.Stretch{Host: side, Part: plan.PartFace, From: from, To: to, Line: line})
		}
	}
	from := in.From
	for _, c := range v.ix.Cuts(side) {
		if house.IsWay(c.Break) {
			add(from, min(c.From, in.To))
			from = max(from, c.To)
		}
	}
	add(from, in.To)
	return left
}

// moveClear offers the shortest move of stairs on a floor that takes them past a wall they run
// through, and through no other, in the same room.
func (v levelStairs) moveClear(f *plan.Fixture, room *plan.Room, inner geom.Polygon, through []rule.Stretch, step unit.Length) []rule.Remedy {
	if f.At.Part != plan.PartFloor {
		return nil
	}
	var ways []way
	for _, s := range through {
		ways = append(ways, waysPast(f.Kind.Text(), inner.Box().Expand(stairsSlack), s.Line.Box(), 0, step)...)
	}
	byLength(ways)
	for _, w := range ways {
		to := f.At
		to.At = f.At.At.Add(w.by)
		if over, _ := v.wallsIn(inner.Moved(w.by), room); len(over) == 0 && room.Outline().Contains(to.At) {
			return []rule.Remedy{{Label: w.label, Edit: edit.MoveFixture{ID: f.ID, To: to}}}
		}
	}
	return nil
}
