package alarm

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/flat"
	"studbay/fill/house"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// keepOff is what an alarm stays away from: the door of a bath, or a range.
type keepOff struct {
	area  geom.Polygon // of a door its line
	least unit.Length
	bath  *plan.Room // nil of a range
}

// keepOffs lists what alarms in a room keep away from.
func (v alarms) keepOffs(rooms *house.Level, r *plan.Room, fig *code.Figures) (all []keepOff) {
	for _, d := range rooms.From(r) {
		if d.To != nil && d.To.Use == plan.UseBath && v.hasShower(d.To) {
			all = append(all, keepOff{geom.Polygon{d.Line.A, d.Line.B}, fig.Alarms.SmokeBath, d.To})
		}
	}
	v.fixtures(r, func(f *plan.Fixture) {
		if area, ok := v.ix.Footprint(f); ok && f.Kind == plan.FixtureRange {
			all = append(all, keepOff{area, fig.Alarms.SmokeCooking, nil})
		}
	})
	return all
}

// addAlarm adds an alarm to a ceiling where nothing hangs yet. Which boxes are there is seen
// when it is done, since the rule does not read them.
type addAlarm struct {
	rule.AddFresh
	off  []keepOff
	near nearDoor
}

// nearDoor is how near an alarm stays to a bedroom's door; the zero value asks for nothing.
type nearDoor struct {
	at     geom.Point  // where one comes into the room
	walked unit.Length // from the door to there
	most   unit.Length // as one walks; 0: as far as one likes
}

// in returns what tells whether a place in a room is near the door.
func (n nearDoor) in(r *plan.Room) func(geom.Point) bool {
	if n.most == 0 {
		return func(geom.Point) bool { return true }
	}
	ways := r.Outline().WaysFrom(n.at)
	return func(at geom.Point) bool {
		far, ok := ways.To(at)
		return ok && n.walked+far <= n.most
	}
}

// Apply fails as AddOpening does.
func (e addAlarm) Apply(p plan.Plan) (plan.Plan, error) {
	r, l := p.Room(e.Opening.At.Host)
	if r == nil {
		return e.AddFresh.Apply(p)
	}
	var taken []flat.Footprint
	for o := range l.Openings.All() {
		if o.At.Part == plan.PartCeiling && o.At.Host == r.ID && !o.IsGone() {
			taken = append(taken, flat.FootprintOf(o))
		}
	}
	isNear := e.near.in(r)
	at, ok := placeFor(r, e.off, func(at geom.Point) bool {
		o := e.Opening
		o.At = plan.OnCeiling(r.ID, at)
		return isNear(at) && !slices.ContainsFunc(taken, flat.FootprintOf(&o).Meets)
	})
	if ok {
		e.Opening.At = plan.OnCeiling(r.ID, at)
	}
	return e.AddFresh.Apply(p)
}

// fromWall is how far from the walls an alarm is offered, and gridStep how far apart the
// places tried are (common practice: dead air is in the corners).
const fromWall, gridStep = 12 * unit.Inch, 6 * unit.Inch

// placeFor returns the place in a ceiling nearest the center of mass of a room that is away from its
// walls and from what alarms keep off, and free.
func placeFor(r *plan.Room, off []keepOff, isFree func(geom.Point) bool) (best geom.Point, ok bool) {
	outline := r.Outline()
	would := func(at geom.Point) bool {
		_, toWall := outline.Nearest(at)
		return outline.InteriorContains(at) && toWall >= fromWall && isFree(at) &&
			!slices.ContainsFunc(off, func(k keepOff) bool { return k.area.Distance(at) < k.least })
	}
	middle, box := outline.Centroid(), outline.Box()
	if would(middle) {
		return middle, true
	}
	for x := box.Min.X + gridStep; x < box.Max.X; x += gridStep {
		for y := box.Min.Y + gridStep; y < box.Max.Y; y += gridStep {
			if at := (geom.Point{X: x, Y: y}); (!ok || at.Distance(middle) < best.Distance(middle)) && would(at) {
				best, ok = at, true
			}
		}
	}
	return best, ok
}

// offer returns the remedy of an alarm of a kind in a room; there is none without a room, and
// where no place in it is away from the doors of baths and from ranges.
func (v alarms) offer(rooms *house.Level, r *plan.Room, kind string, fig *code.Figures) []rule.Remedy {
	return v.offerNear(rooms, r, nearDoor{}, kind, fig)
}

// offerOutside offers it where one comes out of a bedroom first.
func (v alarms) offerOutside(rooms *house.Level, spots []spot, kind string, fig *code.Figures) []rule.Remedy {
	if len(spots) == 0 {
		return nil
	}
	first := spots[0]
	return v.offerNear(rooms, first.room, nearDoor{first.at, first.walked, fig.Alarms.SmokeOutside}, kind, fig)
}

func (v alarms) offerNear(rooms *house.Level, r *plan.Room, near nearDoor, kind string, fig *code.Figures) []rule.Remedy {
	if r == nil {
		return nil
	}
	off := v.keepOffs(rooms, r, fig)
	at, ok := placeFor(r, off, near.in(r))
	if !ok {
		return nil
	}
	o := part.NewOpening(fig.Units, kind, plan.OnCeiling(r.ID, at))
	o.ID = rule.IDsFor(v.Parts(), kind, string(r.ID)).Next()
	label := words.New("rule.smoke-alarm.add", "Add a smoke alarm in {0}", r.Name)
	if kind == kindBoth {
		label = words.New("rule.carbon-alarm.add", "Add a smoke and carbon-monoxide alarm in {0}", r.Name)
	}
	return []rule.Remedy{{Label: label, Edit: addAlarm{rule.Add(o), off, near}}}
}

// forLevel returns the room of a level that its one alarm is offered in: where one passes
// from room to room, else the largest that people live in.
func forLevel(rooms []*plan.Room) (best *plan.Room) {
	rank := func(r *plan.Room) int {
		if slices.Contains(passages, r.Use) {
			return 1
		}
		return 0
	}
	for _, r := range rooms {
		if slices.Contains(unlived, r.Use) || r.Use == plan.UseBath || r.Use == plan.UseCloset {
			continue
		}
		if best == nil || cmp.Or(cmp.Compare(rank(r), rank(best)), r.Outline().Area().Cmp(best.Outline().Area())) > 0 {
			best = r
		}
	}
	return best
}

var passages = []plan.Use{plan.UseHall, plan.UseStairs, plan.UseFoyer}
