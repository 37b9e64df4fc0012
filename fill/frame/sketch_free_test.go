package frame_test

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// eachFace goes through the faces of random plans, furnished closely and where they should
// not be.
func eachFace(plans int, do func(ix *index.Index, v *index.RoomView, s *index.SideView)) {
	for seed := range uint64(plans) {
		random := rand.New(rand.NewPCG(seed, 11))
		ix := index.New(filltest.Furnished(random.IntN))
		for r := range ix.Plan().Levels[0].Rooms.All() {
			v, ok := ix.RoomView(r.ID)
			for i := 0; ok && i < len(v.Sides); i++ {
				do(ix, &v, &v.Sides[i])
			}
		}
	}
}

// sketched is a box with its plate, drawn at a place along a face.
type sketched struct{ box, plate frame.Rect }

// sketchAt draws the box of an opening: to either hand the larger half of its front, and past
// it what the plate has more than the front, halved and rounded up.
func sketchAt(o *plan.Opening, room *plan.Room, at unit.Length) sketched {
	front, plate, centre := frame.FrontOf(o), frame.PlateOf(o), frame.CentreHeight(o, room)
	half := (front.Width + 1) / 2
	bottom := centre - front.Height/2
	box := frame.Rect{Left: at - half, Right: at + half, Bottom: bottom, Top: bottom + front.Height}
	wide, high := max(0, plate.Width-front.Width), max(0, plate.Height-front.Height)
	wide, high = (wide+1)/2, (high+1)/2
	return sketched{box, frame.Rect{Left: box.Left - wide, Right: box.Right + wide, Bottom: box.Bottom - high, Top: box.Top + high}}
}

func lapping(a, b frame.Rect) bool {
	isBeside := a.Right <= b.Left || b.Right <= a.Left
	isOver := a.Top <= b.Bottom || b.Top <= a.Bottom
	return !isBeside && !isOver
}

// obstacles lists what a box and what its plate may not lap on a face.
func obstacles(s *index.SideView, room *plan.Room, o *plan.Opening, of frame.Clearance) (forBox, forPlate []frame.Rect) {
	for _, other := range s.Openings {
		if other.ID == o.ID || other.Status == plan.StatusRemove || other.IsGone() {
			continue
		}
		forBox = append(forBox, frame.RectOf(other, room))
		forPlate = append(forPlate, frame.PlacedIn(s.Side, room, other).Plate())
	}
	for _, p := range s.Side.Probes {
		if !p.Clear {
			top := p.Top
			if top == 0 {
				top = plan.Reach
			}
			forBox = append(forBox, frame.Rect{Left: p.From, Right: p.To, Bottom: p.Bottom, Top: top})
		}
	}
	for _, c := range s.Cuts {
		forBox = append(forBox, frame.Rect{Left: c.From, Right: c.To, Bottom: c.Break.Sill, Top: c.Break.Head})
		if c.Break.Casing > 0 {
			out := part.All().Break(c.Break.Kind).CasingGap + c.Break.Casing
			trim := frame.Rect{Left: c.Start - out, Right: c.Start + c.Break.Width + out, Top: c.Break.Head + out}
			if c.Break.Sill > out {
				trim.Bottom = c.Break.Sill - out
			}
			forPlate = append(forPlate, trim)
		}
	}
	for _, v := range s.Fixtures {
		left, _ := s.Frame.Project(v.Frame.Origin)
		f, kind := v.Fixture, part.All().Fixture(v.Fixture.Kind)
		stands := frame.Rect{Left: left, Right: left + f.Width, Bottom: f.Bottom, Top: f.Bottom + f.Height}
		if kind.Encloses || kind.FloorLine == part.CounterLine || kind.Covers == part.CoversFixed {
			forPlate = append(forPlate, stands)
		}
		if of.OfHiding && kind.Hides { // with room for a plug, 2 in
			forBox = append(forBox, frame.Rect{Left: stands.Left - 2*unit.Inch, Right: stands.Right + 2*unit.Inch, Bottom: stands.Bottom, Top: stands.Top})
		}
	}
	if of.OfStuds {
		for _, stud := range frame.FaceIn(s).Uprights() {
			r := frame.Rect{Left: stud.Left(), Right: stud.Right(), Bottom: stud.Bottom, Top: stud.Top}
			if stud.Top == 0 {
				r.Top = 100 * unit.Foot
			}
			forBox = append(forBox, r)
		}
	}
	return forBox, forPlate
}

// TestFreePlacesAreThoseOfAPlainSketch draws the box and its plate at each place where
// something could begin or end, and a nanometre to either hand, and looks whether they lap
// anything.
func TestFreePlacesAreThoseOfAPlainSketch(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	clearances := []frame.Clearance{{}, {OfHiding: true}, {OfStuds: true}, frame.ClearOfAll}
	free, taken := 0, 0
	eachFace(60, func(_ *index.Index, v *index.RoomView, s *index.SideView) {
		for range 3 {
			o := part.NewOpening(unit.Imperial, []string{"duplex", "quad", "switch", "wall-light"}[random.IntN(4)], plan.OnFace(s.Side.ID, s.Length/2))
			o.Height = plan.CentreAt(in(float64(random.IntN(1700)) / 16))
			if len(s.Openings) > 0 && random.IntN(2) == 0 {
				o = *s.Openings[random.IntN(len(s.Openings))]
			}
			of := clearances[random.IntN(len(clearances))]
			forBox, forPlate := obstacles(s, v.Room, &o, of)
			mine := sketchAt(&o, v.Room, 0)
			places := []unit.Length{0, s.Length, -mine.plate.Left, s.Length - mine.plate.Right}
			for _, r := range forBox {
				places = append(places, r.Left-mine.box.Right, r.Right-mine.box.Left)
			}
			for _, r := range forPlate {
				places = append(places, r.Left-mine.plate.Right, r.Right-mine.plate.Left)
			}
			for _, i := range frame.Free(s, v.Room, &o, of) {
				if i.From > i.To {
					t.Fatalf("a free stretch from %v to %v", i.From, i.To)
				}
				places = append(places, i.From, i.To)
			}
			for _, place := range places {
				for by := range unit.Length(3) {
					at := place + by - 1
					now := sketchAt(&o, v.Room, at)
					want := s.Side.Kind == plan.SideWall && now.plate.Left >= 0 && now.plate.Right <= s.Length
					for _, r := range forBox {
						want = want && !lapping(now.box, r)
					}
					for _, r := range forPlate {
						want = want && !lapping(now.plate, r)
					}
					if got := frame.IsFree(s, v.Room, &o, at, of); got != want {
						t.Fatalf("%s at %v of %v, %+v: free %v, the sketch has %v", o.Kind, at, s.Length, of, got, want)
					}
					if want {
						free++
					} else {
						taken++
					}
				}
			}
		}
	})
	if free < 500 || taken < 500 {
		t.Errorf("%d places free and %d taken: too few to say anything", free, taken)
	}
}

// TestWhatElseIsNamedIsInTheWay: what a caller names beside what the plan has.
func TestWhatElseIsNamedIsInTheWay(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 120, 100, func(s []*plan.Side) { s[0].Studs.Spacing = 0 })[0]
	ref, _ := h.p.Side(side)
	v, _ := index.New(h.p).RoomView(ref.Room.ID)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(side, in(60)))
	also := frame.Rect{Left: in(40), Right: in(80), Bottom: 0, Top: in(15)}
	if frame.IsFree(&v.Sides[0], v.Room, &o, in(60), frame.Clearance{}, also) || !frame.IsFree(&v.Sides[0], v.Room, &o, in(60), frame.Clearance{}) {
		t.Error("what is named is not in the way, or something else is")
	}
	also.Top = frame.RectOf(&o, v.Room).Bottom // edge to edge is clear
	if !frame.IsFree(&v.Sides[0], v.Room, &o, in(60), frame.Clearance{}, also) {
		t.Error("what ends under the box is in its way")
	}
}

// TestClearBoxesAreThoseOfAPlainSketch: as free, and also in no stud deeper than a 32nd and no
// deeper than the boxes of the other face leave.
func TestClearBoxesAreThoseOfAPlainSketch(t *testing.T) {
	clear, not := 0, 0
	eachFace(80, func(_ *index.Index, v *index.RoomView, s *index.SideView) {
		w := frame.WallIn(s, v.Room)
		for _, b := range w.Boxes {
			for step := range 12 {
				p := b.MovedTo(s.Length * unit.Length(step+1) / 13 / (unit.Inch / 4) * (unit.Inch / 4))
				plate := p.Plate()
				want := p.Left >= 0 && plate.Left >= 0 && p.Right <= s.Length && plate.Right <= s.Length
				forBox, forPlate := obstacles(s, v.Room, b.Opening, frame.Clearance{})
				for _, r := range forBox {
					want = want && !lapping(p.Rect, r)
				}
				for _, r := range forPlate {
					if isStanding(s, r) {
						continue // what stands before a wall does not keep a box out of it
					}
					want = want && !lapping(plate, r)
				}
				var most unit.Length
				for _, stud := range w.All {
					if stud.Bottom < p.Top && (stud.Top == 0 || p.Bottom < stud.Top) {
						most = max(most, min(p.Right, stud.Right())-max(p.Left, stud.Left()))
					}
				}
				if most <= unit.Inch/32 {
					most = 0
				}
				if _, by := w.StudIn(p); by != most {
					t.Fatalf("a stud takes %v of a box, the sketch has %v", by, most)
				}
				want = want && most == 0
				for _, o := range w.Behind {
					over := unit.Length(0)
					if depth := w.FramingAt(p.Centre()); depth > 0 && p.IsBuiltIn() && o.IsBuiltIn() && lapping(p.Rect, o.Rect) {
						over = max(0, p.InFraming()+o.InFraming()-depth)
					}
					if got := w.TooDeep(p, o); got != over {
						t.Fatalf("too deep by %v, the sketch has %v", got, over)
					}
					want = want && over == 0
				}
				if got := w.IsClear(p); got != want {
					t.Fatalf("%+v in %v: clear %v, the sketch has %v", p.Rect, s.Length, got, want)
				}
				if want {
					clear++
				} else {
					not++
				}
			}
			nearby(t, w, b)
		}
	})
	if clear < 100 || not < 100 {
		t.Errorf("%d clear and %d not: too few to say anything", clear, not)
	}
}

func isStanding(s *index.SideView, r frame.Rect) bool {
	for _, v := range s.Fixtures {
		left, _ := s.Frame.Project(v.Frame.Origin)
		if r == (frame.Rect{Left: left, Right: left + v.Fixture.Width, Bottom: v.Fixture.Bottom, Top: v.Fixture.Top()}) {
			return true
		}
	}
	return false
}

// nearby holds what ClearPlaces promises of its places.
func nearby(t *testing.T, w *frame.Wall, b frame.Placed) {
	t.Helper()
	const step = unit.Inch / 4
	places := w.ClearPlaces(b, step)
	has := map[unit.Length]bool{}
	for i, at := range places {
		if at%step != 0 || at == b.Centre() || has[at] || !w.IsClear(b.MovedTo(at)) || i > 0 && (at-b.Centre()).Abs() < (places[i-1]-b.Centre()).Abs() {
			t.Fatalf("%v is no clear place of %v", at, places)
		}
		has[at] = true
	}
	beside := func(place unit.Length) {
		near := place / step * step
		if place-near > step/2 {
			near += step
		}
		if near != b.Centre() && w.IsClear(b.MovedTo(near)) && !has[near] {
			t.Fatalf("%v beside what is at hand is missing of %v", near, places)
		}
	}
	wide := b.Right - b.Left
	for s := range w.Between(b.Bottom, b.Top) {
		beside(s.Left() - (wide - wide/2))
		beside(s.Right() + wide/2)
	}
	if b.Box == nil || b.Box.Mounting != part.NailOn && b.Box.Mounting != part.Bracket && b.Box.Mounting != part.Screw {
		for _, list := range [][]frame.Placed{w.Boxes, w.Behind} {
			for _, o := range list {
				beside(o.Left - (wide - wide/2))
				beside(o.Right + wide/2)
			}
		}
	}
}
