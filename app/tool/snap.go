package tool

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// stop is a place along a face that a thing would come to rest at, with the reason.
type stop struct {
	at   unit.Length
	name words.Text
	rank int // of two as near the lower is taken
}

// The ranks of stops, the one most meant first.
const (
	rankLevel = iota
	rankMiddle
	rankEqual
	rankBreak
	rankStud
	rankRound
)

// nearest returns the stop nearest to a place and within reach of it. Studs and round
// distances are everywhere, so they hold only where nothing better does and only within
// a third of the reach. Equally near ones are told apart by rank and then by place, so
// that the answer is always the same.
func nearest(stops []stop, at, reach unit.Length) (best stop, ok bool) {
	near := slices.DeleteFunc(slices.Clone(stops), func(s stop) bool {
		return (s.at-at).Abs() > reach || s.isCommon() && (s.at-at).Abs() > reach/3
	})
	if len(near) == 0 {
		return stop{}, false
	}
	return slices.MinFunc(near, func(a, b stop) int {
		if a.isCommon() != b.isCommon() {
			return cmp.Compare(a.rank, b.rank)
		}
		return cmp.Or(cmp.Compare((a.at-at).Abs(), (b.at-at).Abs()), cmp.Compare(a.rank, b.rank), cmp.Compare(a.at, b.at))
	}), true
}

func (s stop) isCommon() bool { return s.rank >= rankStud }

// coarse is the step of round distances from a corner.
func coarse(s unit.System) unit.Length {
	if s == unit.Metric {
		return 250 * unit.Millimetre
	}
	return unit.Foot
}

// toGrid returns the multiple of a step nearest to l.
func toGrid(l, step unit.Length) unit.Length {
	half := step / 2
	if l < 0 {
		half = -half
	}
	return (l + half) / step * step
}

// onFace lists where an opening may come to rest along a side: self is left out.
// Width is the outer width of its box.
func onFace(ix *index.Index, side plan.ID, self plan.ID, width unit.Length, s unit.System, near unit.Length) []stop {
	ref, ok := ix.Side(side)
	if !ok {
		return nil
	}
	face, _ := frame.FaceOf(ix, side)
	long := face.Length
	stops := []stop{{long / 2, words.New("snap.middle", "center of the wall"), rankMiddle}}
	stops = append(stops, across(ix, ref, self)...)
	stops = append(stops, evenly(ix, side, self, long)...)
	for _, c := range face.Cuts {
		stops = append(stops, stop{(c.From + c.To) / 2, words.New("snap.break", "center of the {0}", c.Break.Kind.Text()), rankBreak})
	}
	for _, f := range ix.FixturesOn(side) {
		stops = append(stops, stop{f.At.Along + f.Width/2, words.New("snap.fixture", "center of the {0}", f.Kind.Text()), rankBreak})
	}
	stops = append(stops, atStuds(face, width, s.Step())...)
	return append(stops, clearOfStuds(face, width, rounds(face, s, near))...)
}

// across lists the places level with openings on the other sides of the room, and with
// those in the same partition's other face.
func across(ix *index.Index, ref *plan.SideRef, self plan.ID) (stops []stop) {
	line := ref.Line()
	add := func(side plan.ID) {
		for _, o := range ix.OpeningsOn(side) {
			place, ok := ix.Place(o.At)
			if o.ID == self || !ok {
				continue
			}
			along, _ := line.Project(place.Foot)
			if along > 0 && along < line.Length() {
				stops = append(stops, stop{along, words.New("snap.level", "in line with {0}", o.Tag), rankLevel})
			}
		}
	}
	for i, other := range ref.Room.Sides {
		if i != ref.At && facing(line, ref.Room.Segment(i)) {
			add(other.ID)
		}
	}
	for _, b := range ix.Behind(ref.Key()) {
		add(b.Side.ID)
	}
	return stops
}

// facing reports whether two sides of a room run against each other.
func facing(a, b geom.Segment) bool {
	_, _, ok := a.Overlap(b, unit.Inch)
	return ok
}

// evenly lists the middles between neighbours on a side, and the places as far beyond
// the last as it is from the one before.
func evenly(ix *index.Index, side, self plan.ID, long unit.Length) (stops []stop) {
	type mark struct {
		at  unit.Length
		tag string
	}
	var marks []mark
	for _, o := range ix.OpeningsOn(side) {
		if o.ID != self {
			marks = append(marks, mark{o.At.Along, o.Tag})
		}
	}
	slices.SortFunc(marks, func(a, b mark) int { return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(a.tag, b.tag)) })
	for i := 1; i < len(marks); i++ {
		a, b := marks[i-1], marks[i]
		gap := b.at - a.at
		if gap < unit.Inch {
			continue
		}
		stops = append(stops, stop{(a.at + b.at) / 2, words.New("snap.between", "halfway from {0} to {1}", a.tag, b.tag), rankEqual})
		for _, at := range []unit.Length{a.at - gap, b.at + gap} {
			if at > 0 && at < long {
				stops = append(stops, stop{at, words.New("snap.equal", "as far as from {0} to {1}", a.tag, b.tag), rankEqual})
			}
		}
	}
	return stops
}

// atStuds lists the places where a box stands against the flank of a stud, by the finest
// step that is shown, from the mark that sheets measure from: the stud holds it all the same.
func atStuds(face frame.Face, width, step unit.Length) (stops []stop) {
	for _, s := range face.Studs() {
		left, right := s.Beside(width)
		for _, at := range []unit.Length{left, right} {
			mark, _ := frame.Nearest(face.Tapes(), at)
			at = mark.At + (at - mark.At).Rounded(step)
			if at > 0 && at < face.Length {
				stops = append(stops, stop{at, words.New("snap.stud", "against a stud"), rankStud})
			}
		}
	}
	return stops
}

// clearOfStuds leaves out the stops at which a stud would stand in the place of a box.
func clearOfStuds(face frame.Face, width unit.Length, stops []stop) []stop {
	return slices.DeleteFunc(stops, func(s stop) bool {
		return slices.ContainsFunc(face.Studs(), func(stud frame.Stud) bool {
			left, right := stud.Beside(width)
			return left < s.at && s.at < right
		})
	})
}

// rounds lists the round distances from either corner that the wall of a face ends in,
// about a place.
func rounds(f frame.Face, s unit.System, near unit.Length) (stops []stop) {
	step := coarse(s)
	left, right := f.Ends()
	for _, end := range []frame.Mark{left, right} {
		away := toGrid((near - end.At).Abs(), step)
		if at := end.AwayFrom(away, 0); away > 0 && at > 0 && at < f.Length {
			_, name := fromEnd(end, away, 0)
			stops = append(stops, stop{at, name, rankRound})
		}
	}
	return stops
}

// upTo lists the heights an opening may come to rest at on a side: the usual one of its
// kind, and those of the openings in its room.
func upTo(t Window, side, self plan.ID, kind string) (stops []stop) {
	if k := part.All().Kind(kind); k != nil && k.Height > 0 {
		usual := k.UsualHeight(t.System())
		stops = append(stops, stop{usual, words.New("snap.usual", "usual height, {0}", words.Height(usual)), rankMiddle})
	}
	ix := t.Index()
	ref, ok := ix.Side(side)
	if !ok {
		return stops
	}
	for _, s := range ref.Room.Sides {
		for _, o := range ix.OpeningsOn(s.ID) {
			if o.ID != self {
				high := heightOf(ix, o)
				stops = append(stops, stop{high, words.New("snap.height", "as high as {0}, {1}", o.Tag, words.Height(high)), rankLevel})
			}
		}
	}
	return stops
}
