package tool

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// partSpot puts an opening on the face of a fixture that is pointed at in the unfolded
// room: at what was typed, at its middle or the height of another, else on the grid.
func partSpot(t Window, p Pointer, typed *typing, self plan.ID) (spot, bool) {
	f, _ := t.Plan().Fixture(p.Part.Host)
	if f == nil {
		return spot{}, false
	}
	long := f.FaceLength(p.Part.Part)
	s := spot{anchor: p.Part, height: p.Height}
	if l, ok := typed.place(t.System()); ok {
		left, right := frame.FixtureEnds(f, p.Part.Part)
		end, _ := frame.Nearest([]frame.Mark{left, right}, p.Part.Along)
		s.anchor.Along, s.snap = fromEnd(end, l, 0)
	} else if !p.Shift {
		middle := stop{long / 2, words.New("snap.fixture-face", "center of the {0}'s face", f.Kind.Text()), rankMiddle}
		s.anchor.Along, s.snap = rest([]stop{middle}, p.Part.Along, p.Reach, t.System().Placing())
	}
	s.anchor.Along = between(s.anchor.Along, 0, long)
	if l, ok := typed.size(t.System(), 'h'); ok {
		s.height = l
	} else if !p.Shift {
		high, name := rest(heightsOn(t, f, self), p.Height, p.Reach, t.System().Placing())
		s.height, s.snap = high, both(s.snap, name)
	}
	s.height = between(s.height, f.Bottom, f.Top())
	return s, true
}

// fromEnd returns the place of the left edge of a thing of a width, 0 where its place is its
// middle, a length from an end of a face.
func fromEnd(end frame.Mark, l, width unit.Length) (unit.Length, words.Text) {
	if end.IsRight {
		return end.AwayFrom(l, width), words.New("snap.right", "{0} from the right corner", l)
	}
	return end.AwayFrom(l, width), words.New("snap.left", "{0} from the left corner", l)
}

// heightsOn lists the heights of the other openings on a fixture.
func heightsOn(t Window, f *plan.Fixture, self plan.ID) (stops []stop) {
	for _, o := range t.Index().OpeningsOn(f.ID) {
		if o.ID != self {
			high := heightOf(t.Index(), o)
			stops = append(stops, stop{high, words.New("snap.height", "as high as {0}, {1}", o.Tag, words.Height(high)), rankLevel})
		}
	}
	return stops
}
