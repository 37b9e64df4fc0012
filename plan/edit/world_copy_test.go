package edit_test

import (
	"strings"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"testing"

	"pgregory.net/rapid"
)

// named makes an ID for each that a copy of a clip wants.
func (c *cabin) named(clip arrange.Clip) (as []plan.ID) {
	for _, id := range clip.IDs() {
		as = append(as, c.ids.New(id.Kind()))
	}
	return as
}

// linked puts openings of the cabin on a circuit and tells distances and what they were of
// one another.
func (c *cabin) linked(t *rapid.T) (circuit plan.ID) {
	k := plan.Circuit{ID: c.ids.New(plan.KindCircuit), Number: "1", Amps: 20, Volts: 120, Poles: 1}
	c.do(t, edit.Add{Thing: &k})
	var last plan.ID
	for _, id := range c.all {
		if id.Kind() != plan.KindOpening {
			continue
		}
		c.do(t, edit.SetCircuit{ID: id, Circuit: k.ID})
		if last != "" {
			o, _ := c.Opening(id)
			now := *o
			now.From, now.Was = last, last
			c.do(t, edit.ChangeOpening{Opening: now})
		}
		last = id
	}
	return k.ID
}

// copiesStand holds copies to what they are of: each of its places as far away as the
// copies were set, and the thing else the same but for its ID, its tag and its place.
func copiesStand(t *rapid.T, was, now plan.Plan, clip arrange.Clip, as []plan.ID, circuit plan.ID, way func(plan.ID) spot) {
	olds, news := sheetOf(was), sheetOf(now)
	of := map[plan.ID]plan.ID{}
	for i, id := range clip.IDs() {
		of[id] = as[i]
	}
	for old, copied := range of {
		own := news.of(copied)
		for key, place := range olds.of(old) {
			got, ok := own[string(copied)+key[9:]]
			want := place.plus(way(old), 1)
			if d := got.plus(want, -1); !ok || max(d.x, d.y, -d.x, -d.y) > near {
				t.Fatalf("the copy of %s is at %v (%v), want %v", key, got, ok, want)
			}
		}
		if o, _ := was.Opening(old); o != nil {
			c, _ := now.Opening(copied)
			if c.Kind != o.Kind || c.Height != o.Height || c.From != of[o.From] || c.Was != of[o.Was] || c.Circuit != circuit {
				t.Fatalf("the copy is %+v of %+v", c, o)
			}
			if c.Tag == o.Tag || !was.IsTagFree(c.Tag) {
				t.Fatalf("the copy has the tag %s, which is not free", c.Tag)
			}
		}
	}
	for key, place := range olds {
		if d := news[key].plus(place, -1); d != (spot{}) {
			t.Fatalf("%s itself has moved", key)
		}
	}
	if n := now.Len() - was.Len(); n < len(as) || n > len(as)+1 { // a level may have come too
		t.Fatalf("%d things have come, of %d copies", n, len(as))
	}
}

// A level copied has everything of its rooms where it was.
func TestALevelIsCopiedAsItIs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		circuit := c.linked(t)
		clip := arrange.LevelClip(c.Plan, c.level)
		e := arrange.CopyLevel{Clip: clip, As: c.named(clip), ID: c.ids.New(plan.KindLevel), Title: "Upper", Elevation: 9 * ft}
		now := applied(t, c.Plan, e)
		copiesStand(t, c.Plan, now, clip, e.As, circuit, func(plan.ID) spot { return spot{} })
		if l := now.Level(e.ID); l == nil || l.Name != e.Title || l.Elevation != e.Elevation || len(now.Levels) != 2 {
			t.Fatalf("the level is %+v", l)
		}
		if clip.Len() != len(c.all)+2 { // and the two rooms
			t.Fatalf("%d things of %d were taken up", clip.Len(), len(c.all)+2)
		}
		outlines := arrange.OutlinesClip(c.Plan, c.level)
		bare := applied(t, c.Plan, arrange.CopyLevel{Clip: outlines, As: c.named(outlines), ID: e.ID, Title: "Bare"})
		if l := bare.Level(e.ID); l.Rooms.Len() != 2 || l.Openings.Len()+l.Fixtures.Len()+l.Breaks.Len() != 0 {
			t.Fatal("outlines come with something in them")
		}
		_, err := arrange.CopyLevel{Clip: clip, As: e.As, ID: c.level}.Apply(c.Plan)
		if err == nil {
			t.Fatal("a level was copied over another")
		}
	})
}

// Set beside where they were, all copies stand as far from one another as what they are of.
func TestCopiesKeepTheirDistances(t *testing.T) {
	set := 0
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		circuit := c.linked(t)
		things := c.some(t)
		if rapid.Bool().Draw(t, "room") {
			things = append(things, c.main)
		}
		clip := arrange.ClipOf(c.Plan, things)
		along := unit.Length(rapid.IntRange(-30, 30).Draw(t, "along")) * in
		by := at(unit.Length(rapid.IntRange(-40, 40).Draw(t, "x"))*in, unit.Length(rapid.IntRange(-40, 40).Draw(t, "y"))*in)
		e := arrange.Paste{Clip: clip, As: c.named(clip), Level: c.level, Along: along, By: by}
		now := applied(t, c.Plan, e)
		if plan.Equal(now, c.Plan) {
			return
		}
		set++
		copiesStand(t, c.Plan, now, clip, e.As, circuit, func(id plan.ID) spot {
			a := plan.AnchorOf(thing(c.Plan, carrier(c.Plan, id, things)))
			if a == nil || isFlat(*a) {
				return spotAt(by)
			}
			return spot{}.plus(surfaceOf(c.Plan, *a).along, float64(along))
		})
		outer := map[plan.ID]bool{}
		for _, id := range clip.Outer(e.As) {
			outer[id] = true
		}
		for i, id := range clip.IDs() {
			if id.Kind() != plan.KindSide && outer[e.As[i]] != (carrier(c.Plan, id, things) == id) {
				t.Fatalf("that %s stands on nothing else of the clip: %v", id, outer[e.As[i]])
			}
		}
	})
	if set < 20 {
		t.Errorf("only %d copies could be set", set)
	}
}

// What a clip says of itself, of each thing of the cabin alone and of a room.
func TestWhatAClipHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := newCabin(t)
		for _, id := range append([]plan.ID{c.main, c.annex}, c.all...) {
			clip := arrange.ClipOf(c.Plan, []plan.ID{id})
			want, rooms := 0, 0
			for _, other := range append([]plan.ID{c.main, c.annex}, c.all...) {
				if carrier(c.Plan, other, []plan.ID{id}) != "" {
					want++
				}
			}
			if id.Kind() == plan.KindRoom {
				rooms = 1
			}
			a := plan.AnchorOf(thing(c.Plan, id))
			if clip.Len() != want || clip.IsEmpty() || len(clip.Rooms()) != rooms || !clip.IsOn(c.Level(c.level)) || clip.IsOn(nil) || clip.IsOn(&plan.Level{ID: c.level}) {
				t.Fatalf("of %s it holds %d things and %d rooms, want %d and %d", id, clip.Len(), len(clip.Rooms()), want, rooms)
			}
			if lies := a == nil || isFlat(*a); clip.IsFlat() != lies {
				t.Fatalf("of %s it lies flat: %v, want %v", id, clip.IsFlat(), lies)
			}
			if one := clip.One(); (one != nil) != (id.Kind() == plan.KindOpening) || one != nil && one.ID != id {
				t.Fatalf("of %s its one opening is %v", id, one)
			}
		}
		for _, none := range []arrange.Clip{{}, arrange.ClipOf(c.Plan, nil), arrange.ClipOf(c.Plan, []plan.ID{c.level, c.sides[0], "ozzzzzzzz"})} {
			if !none.IsEmpty() || none.Len() != 0 || none.IsFlat() || none.One() != nil || none.Rooms() != nil {
				t.Fatalf("a clip of nothing holds %v", none.IDs())
			}
		}
		two := arrange.ClipOf(c.Plan, []plan.ID{c.annex, c.annex, c.island, c.tops[1]})
		if got := strings.Count(string(join(two.IDs())), string(c.annex)) + strings.Count(string(join(two.IDs())), string(c.tops[1])); got != 2 {
			t.Fatal("what is chosen twice, or stands on what is chosen, is taken up twice")
		}
	})
}

func join(ids []plan.ID) (all plan.ID) {
	for _, id := range ids {
		all += id + " "
	}
	return all
}

// Beside what is on a face: to the right by as much as it is wide, or to the left where
// there is no room. The bench of the shed is 6 ft wide on 10 ft: narrowed to 4 ft it has
// room at the right from 0 to 2 ft, at the left from 4 to 6.
func TestDuplicatesStandBeside(t *testing.T) {
	for along, want := range map[unit.Length]unit.Length{0: 4 * ft, 2 * ft: 6 * ft, 2*ft + in: -1, 3 * ft: -1, 4 * ft: 0, 6 * ft: 2 * ft} {
		f, _ := shed(t).Fixture(bench)
		b := *f
		b.At.Along, b.Width = along, 4*ft
		p := after(t, shed(t), edit.ChangeFixture{Fixture: b})
		clip := arrange.ClipOf(p, []plan.ID{bench})
		e := arrange.Duplicate{Clip: clip, As: as(clip), Level: ground, Step: ft}
		if want < 0 {
			refused(t, p, e, plan.ErrNoRoom)
			continue
		}
		if got := anchorIn(t, after(t, p, e), clip.Outer(e.As)[0]).Along; got != want {
			t.Errorf("of one at %v the copy is at %v, want %v", along, got, want)
		}
	}
}

// What has no width is set one step on, and what lies flat a step across and down; of
// several on one face, a step is as far as they reach together: 3 to 9 ft is 6 ft and what
// the last takes, a step.
func TestDuplicatesOfOpeningsStandAStepOn(t *testing.T) {
	both := arrange.ClipOf(shed(t), []plan.ID{n1, lamp})
	ids := as(both)
	p := after(t, shed(t), arrange.Duplicate{Clip: both, As: ids, Level: ground, Step: ft})
	for i, want := range []plan.Anchor{plan.OnFace(north, 4*ft), plan.OnCeiling(shedRoom, at(7*ft, 6*ft))} {
		if got := anchorIn(t, p, ids[i]); got != want {
			t.Errorf("the copy is at %+v, want %+v", got, want)
		}
	}
	short := after(t, shed(t), edit.MoveOpening{ID: n1, To: plan.OnFace(north, ft)}, edit.MoveOpening{ID: n2, To: plan.OnFace(north, 3*ft)})
	row := arrange.ClipOf(short, []plan.ID{n1, n2})
	ids = as(row)
	p = after(t, short, arrange.Duplicate{Clip: row, As: ids, Level: ground, Step: ft})
	for i, want := range []unit.Length{4 * ft, 6 * ft} { // 1 to 3 ft and a step of 1 are 3
		if got := anchorIn(t, p, ids[i]).Along; got != want {
			t.Errorf("the copy is at %v, want %v", got, want)
		}
	}
}

// A copy goes to the face that looks the way its own did: of an outline with two that do,
// to the longer; where none does, to the one that turns least.
func TestCopiesGoToTheFaceThatLooksAlike(t *testing.T) {
	// 20 ft across the top in two parts of 8 and 12 ft with a step between, so that both
	// look down the sheet as the shed's north side does.
	stepped := geom.Polygon{at(0, 20*ft), at(8*ft, 20*ft), at(8*ft, 22*ft), at(20*ft, 22*ft), at(20*ft, 30*ft), at(0, 30*ft)}
	// Turned by the 3-4-5 triangle: its first side runs 4 right and 3 down.
	slanted := geom.Polygon{at(0, 40*ft), at(16*ft, 52*ft), at(7*ft, 64*ft), at(-9*ft, 52*ft)}
	for _, tt := range []struct {
		outline geom.Polygon
		of      plan.ID
		side    int
	}{{stepped, n1, 2}, {slanted, n1, 0}, {slanted, window, 1}} {
		ids := []plan.ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd", "seeeeeeee", "sffffffff"}[:len(tt.outline)]
		r := plan.NewRoom("raaaaaaaa", "Barn", plan.UseStorage, tt.outline, ids)
		r.Ceiling = 8 * ft
		p := after(t, shed(t), edit.AddRoom{Level: ground, Room: r})
		clip := arrange.ClipOf(shed(t), []plan.ID{tt.of})
		e := arrange.Paste{Clip: clip, As: as(clip), Level: ground, Onto: r.ID}
		now, err := e.Apply(p)
		if err != nil {
			t.Errorf("%s: %v", tt.of, err)
		} else if got := anchorIn(t, now, e.As[0]).Host; got != ids[tt.side] {
			t.Errorf("the copy of %s is on %s, want side %d", tt.of, got, tt.side)
		}
	}
}
