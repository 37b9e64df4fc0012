package tool

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// spot is where a thing would go.
type spot struct {
	anchor plan.Anchor
	side   onSide      // where it is on a side
	height unit.Length // of its centre; 0 in a ceiling or floor
	snap   words.Text
}

// spotFor returns where an opening of a kind goes; self is the opening itself where it
// is there already.
func spotFor(t Window, p Pointer, typed *typing, kind string, self plan.ID) (spot, bool) {
	host := part.Wall
	if k := part.All().Kind(kind); k != nil {
		host = k.Host
	}
	if p.OnUnfold && p.Part.Host != "" {
		return partSpot(t, p, typed, self)
	}
	if !p.OnUnfold {
		if host == part.Wall && p.Alt {
			host = part.Floor
		}
		if host != part.Wall {
			return flatSpot(t, p, host, self)
		}
		if s, ok := fixtureSpot(t, p, kind); ok {
			return s, true
		}
	}
	side, ok := faceAt(t, p, takesOpening)
	if !ok || !takesOpening(side.ref.Side()) {
		return spot{side: side}, false
	}
	return faceSpot(t, p, side, typed, kind, self), true
}

// faceSpot puts an opening on a side: at what was typed, at a stop within reach, else
// on the grid.
func faceSpot(t Window, p Pointer, side onSide, typed *typing, kind string, self plan.ID) spot {
	made := like(t, kind, plan.OnFace(side.id(), 0))
	if self != "" {
		if o, _ := t.Plan().Opening(self); o != nil {
			made = *o
		}
	}
	s := spot{side: side, height: frame.CentreHeight(&made, side.ref.Room)}
	at := side.along
	width := frame.FrontOf(&made).Width
	if l, ok := typed.place(t.System()); ok {
		side, at, s.snap = fromCorner(t, side, l, 0)
		s.side = side
	} else if !p.Shift {
		at, s.snap = rest(onFace(t.Index(), side.id(), self, width, t.System(), side.along), side.along, p.Reach, t.System().Placing())
	}
	if half := (width + 1) / 2; typed.isEmpty() && 2*half <= side.length() {
		if at = between(at, half, side.length()-half); !p.Shift && s.snap.IsZero() {
			at = onStep(at, half, side.length()-half, t.System().Placing())
		}
	}
	at = between(at, 0, side.length())
	s.anchor = plan.OnFace(side.id(), at)
	if p.OnUnfold {
		high, name := rest(upTo(t, side.id(), self, kind), p.Height, p.Reach, t.System().Placing())
		switch l, isTyped := typed.size(t.System(), 'h'); {
		case isTyped:
			high, name = l, words.New("snap.high", "{0} high", words.Height(l))
		case p.Shift:
			high, name = p.Height, words.Text{}
		}
		s.height = between(high, 0, side.ref.Room.Ceiling)
		s.snap = both(s.snap, name)
	}
	return s
}

// fromCorner returns the side and the place along it of the left edge of a thing of a width,
// 0 where its place is its middle, a length from the nearer corner: where the wall goes
// straight on past the side pointed at, from the corner that it ends in. The side it returns
// tells which corner that is.
func fromCorner(t Window, side onSide, l, width unit.Length) (onSide, unit.Length, words.Text) {
	f, _ := frame.FaceOf(t.Index(), side.id())
	end, _ := f.NearerEnd(side.along)
	at, name := fromEnd(end, l, width)
	on, at := frame.OnWall(t.Index(), side.id(), at)
	if on != side.id() {
		side.ref, _ = t.Index().Side(on)
		side.along = between(at, 0, side.length())
	}
	if end.IsRight {
		side.from = frame.RightOf(t.Index(), on)
	}
	return side, at, name
}

// rest returns the stop within reach, or else the place on the grid.
func rest(stops []stop, at, reach, step unit.Length) (unit.Length, words.Text) {
	if s, ok := nearest(stops, at, reach); ok {
		return s.at, s.name
	}
	return toGrid(at, step), words.Text{}
}

// fixtureSpot puts an opening on a face of a fixture that is pointed at, of a kind that
// carries them.
func fixtureSpot(t Window, p Pointer, kind string) (spot, bool) {
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(p.At)) {
		f, _ := t.Plan().Fixture(id)
		if f == nil || !part.All().Fixture(f.Kind).Carries {
			continue
		}
		place, _, ok := t.Index().FixtureFrame(f)
		outline, _ := t.Index().Footprint(f)
		if !ok || !outline.Contains(p.At) {
			continue
		}
		along, out := place.Project(p.At)
		face, at, long := nearestFace(f, along, out)
		s := spot{snap: words.New("snap.on", "on the {0}", f.Kind.Text())}
		if (at-long/2).Abs() <= p.Reach && !p.Shift {
			at = long / 2
			s.snap = words.New("snap.fixture-face", "center of the {0}'s face", f.Kind.Text())
		} else if !p.Shift {
			at = onStep(at, 0, long, t.System().Placing())
		}
		s.anchor = plan.Anchor{Host: f.ID, Part: face, Along: at}
		made := like(t, kind, s.anchor)
		s.height = frame.CentreHeight(&made, nil)
		if s.height >= f.Top() || s.height <= f.Bottom {
			s.height = f.Bottom + f.Height*3/4
		}
		return s, true
	}
	return spot{}, false
}

// nearestFace returns the face of a fixture that holds openings and is nearest to a place
// within it, how far along that face it is, and the length of the face.
func nearestFace(f *plan.Fixture, along, out unit.Length) (face plan.Part, at, long unit.Length) {
	best := plan.Reach
	for _, part := range []plan.Part{plan.PartFront, plan.PartLeft, plan.PartRight, plan.PartBack} {
		if on, behind := f.Facing(part, along, out); f.Holds(part) && behind < best {
			best, face, at, long = behind, part, on, f.FaceLength(part)
		}
	}
	return face, at, long
}

// flatSpot puts an opening in a ceiling or a floor.
func flatSpot(t Window, p Pointer, host part.Host, self plan.ID) (spot, bool) {
	room := roomAt(t.Index(), t.Level(), p.At)
	if room == nil {
		return spot{}, false
	}
	face := plan.PartCeiling
	if host == part.Floor {
		face = plan.PartFloor
	}
	at, name := p.At, words.Text{}
	if !p.Shift {
		at, name = flatRest(t, p, room, self)
	}
	if !room.Outline().Contains(at) {
		at, name = p.At, words.Text{}
	}
	return spot{anchor: plan.Anchor{Host: room.ID, Part: face, At: at}, snap: name}, true
}

// flatRest snaps a place to the middle lines of a room, and in line with its other
// openings.
func flatRest(t Window, p Pointer, room *plan.Room, self plan.ID) (geom.Point, words.Text) {
	box := room.Outline().Box()
	middle := words.New("snap.room-middle", "center of the room")
	xs := []stop{{box.Center().X, middle, rankMiddle}}
	ys := []stop{{box.Center().Y, middle, rankMiddle}}
	for _, o := range t.Index().OpeningsOn(room.ID) {
		if o.ID == self {
			continue
		}
		name := words.New("snap.level", "in line with {0}", o.Tag)
		xs = append(xs, stop{o.At.At.X, name, rankLevel})
		ys = append(ys, stop{o.At.At.Y, name, rankLevel})
	}
	x, nameX := rest(xs, p.At.X, p.Reach, t.System().Placing())
	y, nameY := rest(ys, p.At.Y, p.Reach, t.System().Placing())
	return geom.Point{X: x, Y: y}, both(nameX, nameY)
}

// both says two snaps at once.
func both(a, b words.Text) words.Text {
	switch {
	case a.IsZero():
		return b
	case b.IsZero() || a.String() == b.String():
		return a
	}
	return words.New("snap.and", "{0}; {1}", a, b)
}
