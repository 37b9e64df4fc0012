package arrange

import (
	"cmp"
	"slices"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Paste sets a copy of what was taken up. Copies have the next tags, no cables, and a
// circuit only where the plan has it.
type Paste struct {
	Clip  Clip
	As    []plan.ID // the IDs of the copy, one for each of Clip.IDs, in their order
	Level plan.ID   // where rooms go
	// Onto is the side or the room that what is not a room goes to; where it is empty, they
	// go to what they stood on. In a room, each goes to the face that looks the same way.
	Onto  plan.ID
	Along unit.Length // how much farther along their faces they go
	By    geom.Point  // how far rooms go, and what lies in a ceiling or on a floor
}

// Name returns "Paste".
func (Paste) Name() words.Text { return words.New("edit.paste", "Paste") }

// Apply fails with ErrGone where what they go to is not in the plan, with ErrTaken where an
// ID is in use, and with ErrNoRoom where something does not fit.
func (e Paste) Apply(p plan.Plan) (plan.Plan, error) {
	names, edits := e.Clip.named(e.As), []edit.Edit(nil)
	for _, t := range e.Clip.things {
		if r, ok := t.(*plan.Room); ok {
			edits = append(edits, edit.Add{Thing: e.room(r, names), Level: e.Level})
			continue
		}
		at, err := e.place(p, t, names)
		if err != nil {
			return plan.Plan{}, err
		}
		edits = append(edits, edit.Add{Thing: copied(p, t, names, at)})
	}
	return inTurn(p, edits)
}

// copied returns the like of a thing at another place.
func copied(p plan.Plan, t plan.Thing, names map[plan.ID]plan.ID, at plan.Anchor) plan.Thing {
	now := plan.LikeOf(t, names[t.Key()], func(id plan.ID) plan.ID {
		if id.Kind() == plan.KindCircuit && p.Has(id) {
			return id
		}
		return names[id]
	})
	*plan.AnchorOf(now) = at
	return now
}

// room returns the copy of a room; it gets a prefix of its own.
func (e Paste) room(r *plan.Room, names map[plan.ID]plan.ID) *plan.Room {
	now := withSides(r, func(s *plan.Side) { s.ID, s.Start = names[s.ID], s.Start.Add(e.By) })
	now.ID, now.Prefix, now.Joists.Along = names[r.ID], "", names[r.Joists.Along]
	return now
}

// place returns where the copy of a thing goes.
func (e Paste) place(p plan.Plan, t plan.Thing, names map[plan.ID]plan.ID) (plan.Anchor, error) {
	at := *plan.AnchorOf(t)
	if to := names[at.Host]; to != "" {
		if at.Host = to; isFlat(at) {
			at.At = at.At.Add(e.By) // its room went there
		}
		return at, nil
	}
	switch {
	case e.Onto != "":
		var ok bool
		if at, ok = e.onto(p, t, at); !ok {
			return at, plan.Gone(e.Onto.Kind())
		}
	case !isHostOn(p, e.Level, at.Host):
		return at, plan.Refuse(plan.ErrGone, "paste-where", "choose the wall or the room that it should go to first")
	}
	if isFlat(at) {
		at.At = at.At.Add(e.By)
		return at, nil
	}
	if at.Along += e.Along; e.Onto != "" && at.Part == plan.PartFace {
		at.Along = max(0, min(at.Along, plan.FromRight(p.FaceLength(at), 0, plan.WidthOf(t))))
	}
	return at, nil
}

// isHostOn reports whether something is on a level, or on any where none is given.
func isHostOn(p plan.Plan, level, host plan.ID) bool {
	_, l := p.Find(host)
	return l != nil && (level == "" || l.ID == level)
}

// onto returns the place in the room, or on the side, that a thing is set to.
func (e Paste) onto(p plan.Plan, t plan.Thing, at plan.Anchor) (plan.Anchor, bool) {
	room, _ := p.Room(e.Onto)
	side, _ := p.Side(e.Onto)
	if side != nil {
		room = side.Room
	}
	if room == nil {
		return at, false
	}
	if isFlat(at) {
		by := room.Outline().Box().Min.Sub(e.Clip.corners[at.Host])
		return plan.Anchor{Host: room.ID, Part: at.Part, At: at.At.Add(by)}, true
	}
	if side != nil {
		return plan.OnFace(side.Key(), at.Along), true
	}
	return plan.OnFace(room.Sides[sideLike(room, e.Clip.faces[at.Host])].ID, at.Along), true
}

// sideLike returns which side of a room looks the way a face does: the one that turns
// least from it, the longest of those.
func sideLike(r *plan.Room, face geom.Segment) (best int) {
	want := geom.FrameOf(geom.Segment{B: face.Vector()})
	score := func(i int) unit.Length {
		along, _ := want.Project(geom.FrameOf(r.Segment(i)).Along())
		return along
	}
	for i := range r.Sides {
		const alike = unit.Millimetre // of the metre that a direction is long
		switch a, b := score(i), score(best); {
		case a > b+alike, a > b-alike && r.Segment(i).Length() > r.Segment(best).Length():
			best = i
		}
	}
	return best
}

// Duplicate sets a copy of what was taken up beside it: to the right of what is on a face,
// or to its left where the right has no room; where neither has, openings one step on, each
// beside its own; one step on of what lies in a ceiling or on a floor; and a partition beside
// whole rooms.
type Duplicate struct {
	Clip      Clip
	As        []plan.ID
	Level     plan.ID
	Step      unit.Length // of what has no width
	Partition unit.Length // between rooms
}

// Name returns "Duplicate".
func (Duplicate) Name() words.Text { return words.New("edit.duplicate", "Duplicate") }

// Apply fails as Paste does, where neither side has room.
func (e Duplicate) Apply(p plan.Plan) (plan.Plan, error) {
	step, by := e.Clip.extent(e.Step), geom.Point{X: e.Step, Y: e.Step}
	if len(e.Clip.Rooms()) > 0 {
		by = geom.Point{X: e.Clip.roomsWidth() + e.Partition}
	}
	ways := []unit.Length{step, -step}
	if e.Clip.isOpenings() {
		ways = append(ways, e.Step, -e.Step)
	}
	var why error
	for _, along := range ways {
		way := by
		if along < 0 {
			way = geom.Point{X: -by.X, Y: -by.Y}
		}
		next, err := Paste{Clip: e.Clip, As: e.As, Level: e.Level, Along: along, By: way}.Apply(p)
		if err == nil {
			return next, nil
		}
		if why == nil {
			why = err
		}
	}
	return plan.Plan{}, why
}

// isOpenings reports whether nothing but openings was taken up: they have no width.
func (c Clip) isOpenings() bool {
	return !slices.ContainsFunc(c.things, func(t plan.Thing) bool { return t.Key().Kind() != plan.KindOpening })
}

// extent returns how far the things on a face go along it at most, what has no width being
// taken for so wide: as far beside them there is nothing of theirs.
func (c Clip) extent(least unit.Length) (most unit.Length) {
	most = least
	type span struct{ from, to unit.Length }
	spans := map[plan.ID]span{}
	for _, t := range c.things {
		at := plan.AnchorOf(t)
		if at == nil || c.named(c.IDs())[at.Host] != "" {
			continue
		}
		from, to := at.Along, at.Along+cmp.Or(plan.WidthOf(t), least)
		if s, ok := spans[at.Host]; ok {
			from, to = min(from, s.from), max(to, s.to)
		}
		spans[at.Host] = span{from, to}
		most = max(most, to-from)
	}
	return most
}

func (c Clip) roomsWidth() unit.Length {
	var all []geom.Point
	for _, r := range c.Rooms() {
		all = append(all, r.Outline()...)
	}
	return geom.BoxOf(all...).Width()
}
