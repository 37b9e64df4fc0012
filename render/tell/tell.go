// Package tell says of an opening in plain words, as one says it to whoever will live with
// it: what it is, where it is by something that is seen, how high, and what lights what.
// No tags, codes or findings.
//
// It measures nothing by itself: heights and ends are those of fill/frame. Figures are
// rounded as words.Spoken is, to be spoken, never to build by.
package tell

import (
	"cmp"
	"slices"
	"studbay/fill/flat"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Opening is one opening in plain words. The texts are parts of sentences, the first with
// a capital; each may be nothing but What.
type Opening struct {
	Opening *plan.Opening
	What    words.Text // "Double outlet"
	Where   words.Text // "left of the bed"
	Height  words.Text // "26 in from the floor"
	Away    words.Text // "7 in from the bed"
	// Lit says by which switches a light is lit, or what a switch lights.
	Lit words.Text
	// Lights are what a switch controls, and Switches what a light is controlled by.
	Lights, Switches []plan.ID
}

// Headline is what an opening is and where: "Double outlet, left of the bed".
func (o Opening) Headline() words.Text {
	if o.Where.IsZero() {
		return o.What
	}
	return words.New("tell.headline", "{0}, {1}", o.What, o.Where)
}

// Figures is how high it is and how far from what is named: "26 in from the floor, 7 in
// from the bed".
func (o Opening) Figures() words.Text {
	switch {
	case o.Height.IsZero():
		return o.Away
	case o.Away.IsZero():
		return o.Height
	}
	return words.New("tell.figures", "{0}, {1}", o.Height, o.Away)
}

// Room returns the openings of a room in the order that one walks by them: along its
// faces from the left of the door that is stored first, then ceiling and floor. What is
// to be taken out is left out. It is nil where the room is not in the plan.
func Room(ix *index.Index, room plan.ID) (all []Opening) {
	view, ok := ix.RoomView(room)
	if !ok {
		return nil
	}
	t := teller{ix: ix, view: view, works: map[plan.ID][]plan.ID{}}
	for id, controls := range wire.Works(ix) {
		for _, c := range controls {
			t.works[id] = append(t.works[id], c.Loads...)
		}
	}
	n := len(view.Sides)
	first := slices.IndexFunc(view.Sides, func(s index.SideView) bool {
		return slices.ContainsFunc(s.Cuts, func(c index.Cut) bool { return c.Break.Kind == plan.BreakDoor })
	})
	for i := range n {
		s := &view.Sides[(max(0, first)+i)%n]
		for _, o := range s.Openings {
			all = t.put(all, o, t.onFace(s, o))
		}
	}
	for _, o := range view.Ceiling {
		all = t.put(all, o, t.flat(o, words.New("tell.in-ceiling", "in the ceiling")))
	}
	for _, o := range view.Floor {
		all = t.put(all, o, t.flat(o, words.New("tell.in-floor", "in the floor")))
	}
	view.EachFixture(func(f index.FixtureView) {
		for _, o := range f.Openings {
			all = t.put(all, o, place{where: words.New("tell.in-fixture", "in the {0}", nameOf(f.Fixture))})
		}
	})
	return all
}

// teller tells of one room.
type teller struct {
	ix    *index.Index
	view  index.RoomView
	works map[plan.ID][]plan.ID // by switches, what they work
}

// place is where an opening is in words.
type place struct{ where, away words.Text }

func (t teller) put(all []Opening, o *plan.Opening, p place) []Opening {
	if o.IsGone() {
		return all
	}
	one := Opening{Opening: o, What: What(o), Where: p.where, Away: p.away, Height: t.height(o)}
	one.Lights = t.works[o.ID]
	for _, c := range t.ix.ControlsOf(o.ID) {
		one.Switches = append(one.Switches, c.Switches...)
	}
	one.Lit = t.lit(one)
	return append(all, one)
}

// height says how high the middle of one on a wall is.
func (t teller) height(o *plan.Opening) words.Text {
	switch o.At.Part {
	case plan.PartCeiling, plan.PartFloor, plan.PartTop:
		return words.Text{}
	}
	return words.New("tell.height", "{0} from the floor", words.Spoken(frame.CentreHeight(o, t.view.Room)))
}

// thing is something on a face that an opening can be told by.
type thing struct {
	name      words.Text
	from, to  unit.Length // along the face
	low, high unit.Length
	isDoor    bool
}

// beside is how near an opening stands to a door to be beside it: 12 in, common practice.
const beside = unit.Foot

// onFace tells of an opening on a wall by the nearest thing that is seen there, or by the
// nearer corner.
func (t teller) onFace(s *index.SideView, o *plan.Opening) place {
	at, height := o.At.Along, frame.CentreHeight(o, t.view.Room)
	var best *thing
	var gap unit.Length
	for _, x := range thingsOn(s) {
		if d := x.gap(at); best == nil || d < gap {
			best, gap = &x, d
		}
	}
	toCorner := min(at, s.Length-at)
	if best == nil || gap > 4*unit.Foot && toCorner < gap {
		return t.byCorner(s, at)
	}
	if gap == 0 {
		return best.within(at, height)
	}
	away := words.New("tell.away", "{0} from the {1}", words.Spoken(gap), best.name)
	switch {
	case best.isDoor && gap <= beside:
		return place{words.New("tell.beside", "beside the {0}", best.name), away}
	case at < best.from:
		return place{words.New("tell.left", "left of the {0}", best.name), away}
	}
	return place{words.New("tell.right", "right of the {0}", best.name), away}
}

func (t teller) byCorner(s *index.SideView, at unit.Length) place {
	if at <= s.Length-at {
		return place{words.New("tell.left-corner", "near the left corner"), words.New("tell.from-corner", "{0} from the corner", words.Spoken(at))}
	}
	return place{words.New("tell.right-corner", "near the right corner"), words.New("tell.from-corner", "{0} from the corner", words.Spoken(s.Length-at))}
}

// thingsOn lists what is seen on and at a face.
func thingsOn(s *index.SideView) (all []thing) {
	for _, c := range s.Cuts {
		isDoor := c.Break.Kind.IsDoorway()
		all = append(all, thing{c.Break.Kind.Text(), c.From, c.To, c.Break.Sill, c.Break.Head, isDoor})
	}
	var take func([]index.FixtureView)
	take = func(views []index.FixtureView) {
		for _, v := range views {
			from, _ := s.Frame.Project(v.Frame.Origin)
			all = append(all, thing{nameOf(v.Fixture), from, from + v.Fixture.Width, v.Fixture.Bottom, v.Fixture.Top(), false})
			take(v.OnIt)
		}
	}
	take(s.Fixtures)
	return all
}

// gap is how far along the face a place is from it, 0 within it.
func (x thing) gap(at unit.Length) unit.Length {
	return max(x.from-at, at-x.to, 0)
}

// middling is how near the middle of a thing counts as its middle.
const middling = 2 * unit.Inch

// within tells of an opening over, under or behind a thing.
func (x thing) within(at, height unit.Length) place {
	var p place
	switch {
	case height >= x.high:
		p.where = words.New("tell.over", "over the {0}", x.name)
	case height <= x.low:
		p.where = words.New("tell.under", "under the {0}", x.name)
	default:
		p.where = words.New("tell.behind", "behind the {0}", x.name)
	}
	middle := (x.from + x.to) / 2
	switch off := at - middle; {
	case off.Abs() <= middling:
		p.away = words.New("tell.middle", "in the middle")
	case off < 0:
		p.away = words.New("tell.left-of-middle", "{0} left of its middle", words.Spoken(-off))
	default:
		p.away = words.New("tell.right-of-middle", "{0} right of its middle", words.Spoken(off))
	}
	return p
}

// flat tells of an opening in the ceiling or the floor: by what stands there, or the middle
// of the room.
func (t teller) flat(o *plan.Opening, plain words.Text) place {
	over := words.Text{}
	t.view.EachFixture(func(f index.FixtureView) {
		if over.IsZero() && f.Footprint.Contains(o.At.At) && o.At.Part == plan.PartCeiling {
			over = words.New("tell.above", "above the {0}", nameOf(f.Fixture))
		}
	})
	if !over.IsZero() {
		return place{where: over}
	}
	if box := t.view.Room.Outline().Box(); box.Center().Distance(o.At.At) <= unit.Foot {
		return place{where: words.New("tell.of-room", "{0}, in the middle", plain)}
	}
	return place{where: plain, away: t.nearWalls(o)}
}

// nearWalls says how far the two nearest walls are.
func (t teller) nearWalls(o *plan.Opening) words.Text {
	near := flat.NearWalls(t.view.Room, o.At.Part, o.At.At)
	if len(near) < 2 {
		return words.Text{}
	}
	return words.New("tell.walls", "{0} and {1} from the nearest walls", words.Spoken(near[0].Length), words.Spoken(near[1].Length))
}

// lit says what lights what.
func (t teller) lit(o Opening) words.Text {
	switch {
	case len(o.Lights) > 0:
		return words.New("tell.lights", "Works: {0}", t.joined(o.Lights))
	case len(o.Switches) > 0:
		return words.New("tell.lit-by", "Works by: {0}", t.joined(o.Switches))
	}
	return words.Text{}
}

// joined names openings one after the other, those of another room with its name.
func (t teller) joined(ids []plan.ID) words.Text {
	var text words.Text
	for _, id := range slices.Compact(slices.Sorted(slices.Values(ids))) {
		o, _ := t.ix.Plan().Opening(id)
		if o == nil {
			continue
		}
		name := t.brief(o)
		if text.IsZero() {
			text = name
			continue
		}
		text = words.New("tell.and", "{0}; {1}", text, name)
	}
	return text
}

// brief names an opening in the middle of a sentence.
func (t teller) brief(o *plan.Opening) words.Text {
	at, ok := t.ix.Place(o.At)
	what := lower(o)
	switch {
	case !ok || at.Room == nil:
		return what
	case at.Room.ID != t.view.Room.ID:
		return words.New("tell.elsewhere", "{0} in {1}", what, at.Room.Name)
	case o.At.Part == plan.PartFace:
		i := at.Room.SideAt(o.At.Host)
		p := t.onFace(&t.view.Sides[i], o)
		return words.New("tell.brief", "{0} {1}", what, p.where)
	case o.At.Part == plan.PartCeiling && !isOfCeilings(o):
		return words.New("tell.brief", "{0} {1}", what, words.New("tell.in-ceiling", "in the ceiling"))
	}
	return what
}

// isOfCeilings reports whether an opening is of a kind that is in a ceiling anyway: a ceiling
// light need not be said to be in one.
func isOfCeilings(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && k.Host == part.Ceiling
}

// nameOf is what a cabinet or furniture is called: by the user, or by its kind.
func nameOf(f *plan.Fixture) words.Text {
	if f.Name != "" {
		return words.New("plain", "{0}", f.Name)
	}
	return f.Kind.Text()
}

// RoomName returns a room's name, or its use where it has none.
func RoomName(r *plan.Room) words.Text {
	if r.Name != "" {
		return words.New("plain", "{0}", r.Name)
	}
	return r.Use.Text()
}

// RoomApart is RoomName with the level behind it, where a room of another level is called the
// same.
func RoomApart(ix *index.Index, r *plan.Room) words.Text {
	name, level, isShared := RoomName(r), "", false
	for _, l := range ix.Plan().Levels {
		if _, isHere := l.Rooms.Get(r.ID); isHere {
			level = l.Name
			continue
		}
		for other := range l.Rooms.All() {
			isShared = isShared || RoomName(other).String() == name.String()
		}
	}
	if !isShared {
		return name
	}
	return words.New("where.room-level", "{0}, {1}", name, level)
}

// Rooms returns the rooms of a plan in the order of a walk: level by level, those without
// an opening last of each, by name.
func Rooms(ix *index.Index) (rooms []*plan.Room) {
	for _, l := range ix.Plan().Levels {
		var here []*plan.Room
		for r := range l.Rooms.All() {
			if len(Room(ix, r.ID)) > 0 {
				here = append(here, r)
			}
		}
		slices.SortStableFunc(here, func(a, b *plan.Room) int {
			return cmp.Or(cmp.Compare(outside(a), outside(b)), compareMiddles(a.Outline(), b.Outline()), cmp.Compare(a.Name, b.Name))
		})
		rooms = append(rooms, here...)
	}
	return rooms
}

// outside puts what is outdoors behind what is not.
func outside(r *plan.Room) int {
	if r.Use == plan.UseOutdoors {
		return 1
	}
	return 0
}

// compareMiddles orders rooms as one reads a sheet: in bands of ten feet from its top, then
// from the left.
func compareMiddles(a, b geom.Polygon) int {
	p, q := a.Box().Center(), b.Box().Center()
	band := func(y unit.Length) int64 { return int64(y / (10 * unit.Foot)) }
	return cmp.Or(cmp.Compare(band(p.Y), band(q.Y)), cmp.Compare(p.X, q.X))
}

// family tells what an opening is for.
func family(o *plan.Opening) part.Family {
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Family
	}
	return part.Junction
}

// IsLight reports whether an opening carries a light.
func IsLight(o *plan.Opening) bool { return family(o) == part.Light || o.Kind == "fan-light" }

// IsSwitch reports whether an opening is worked by hand.
func IsSwitch(o *plan.Opening) bool { return family(o) == part.Switch }
