package drywall

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/nest"
	"studbay/fill/part"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestLayoutsAreThoseOfAPlainSketch lays random walls and looks at each piece by itself: what
// it shares with its neighbours are the joints, a row goes as far as a sheet reaches and
// back to the last stud, a cut-out is parted by the pieces it is in, and all pieces are cut
// from sheets.
func TestLayoutsAreThoseOfAPlainSketch(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 150 {
		h := ruletest.New(t)
		length := 20 + float64(random.IntN(2000))/4
		r := h.Square(plan.UseBedroom, 0, 0, length, 90)
		r.Room.Ceiling = ruletest.In(60 + float64(random.IntN(600))/8)
		r.Room.Floor = []plan.Layer{{Name: "tile", Thickness: unit.Length(random.IntN(3)) * unit.Inch / 2}}
		r.Sides[0].Studs = plan.Studs{Spacing: []unit.Length{0, 16, 24}[random.IntN(3)] * unit.Inch}
		for range 1 + random.IntN(4) {
			r.Opening("duplex", r.On(0, 5+float64(random.IntN(int(4*length-40)))/4), ruletest.Up(12+float64(random.IntN(300))/8))
		}
		v := view(t, h, r.Room.ID)
		var best Layout
		for i, way := range Ways {
			l := lay(wallOf(&v), way)
			sketch(t, l, fmt.Sprintf("%v × %v, %+v", length, r.Room.Ceiling, way))
			if i == 0 || l.isBetter(best) {
				best = l
			}
		}
		if got, ok := Lay(&v.Sides[0], v.Room); !ok || got.Way != best.Way {
			t.Errorf("%v × %v: laid as %+v, %v; best is %+v", length, r.Room.Ceiling, got.Way, ok, best.Way)
		}
	}
}

func sketch(t *testing.T, l Layout, name string) {
	t.Helper()
	centres := []unit.Length{}
	for _, s := range wallStuds(l) {
		centres = append(centres, s.At)
	}
	seams := unit.Length(0)
	for i, p := range l.Pieces {
		if want := lettered(i); p.Letter != want {
			t.Errorf("%s: piece %d is lettered %s, want %s", name, i, p.Letter, want)
		}
		for _, q := range l.Pieces {
			if p.Right == q.Left {
				seams += max(0, min(p.Top, q.Top)-max(p.Bottom, q.Bottom))
			}
			if p.Top == q.Bottom {
				seams += max(0, min(p.Right, q.Right)-max(p.Left, q.Left))
			}
		}
		reach := l.Way.Long
		switch row := (l.Height - p.Top) / Wide; {
		case l.Way.Upright:
			reach = Wide
		case p.Left == 0 && row%2 == 0 && l.Face.Length > l.Way.Long:
			reach /= 2 // every other row begins with half a sheet
		}
		end := p.Left + reach
		if end >= l.Face.Length {
			end = l.Face.Length
		} else if at := slices.IndexFunc(reversed(centres), func(c unit.Length) bool { return c <= end && c > p.Left }); at >= 0 {
			end = reversed(centres)[at]
		}
		if p.Right != end {
			t.Errorf("%s: %s goes from %v to %v, want %v", name, p.Letter, p.Left, p.Right, end)
		}
	}
	if l.Joints != seams {
		t.Errorf("%s: joints of %v, the pieces share %v", name, l.Joints, seams)
	}
	inPieces := map[plan.ID]int{}
	for _, h := range l.Holes {
		inPieces[h.Opening.ID]++
	}
	for _, h := range l.Holes {
		p := l.Pieces[h.Piece]
		from := l.From(h)
		if from.Left+p.Left != h.Left || from.Right+p.Left != h.Right || from.Bottom+p.Bottom != h.Bottom || from.Top+p.Bottom != h.Top {
			t.Errorf("%s: %+v in %+v is %+v from its corner", name, h.Rect, p.Rect, from)
		}
		if h.OnJoint != (inPieces[h.Opening.ID] > 1) || h.Left < p.Left || h.Right > p.Right || h.Bottom < p.Bottom || h.Top > p.Top || h.Left >= h.Right || h.Bottom >= h.Top {
			t.Errorf("%s: %+v of %+v", name, h, p)
		}
	}
	if l.Count() != len(inPieces) {
		t.Errorf("%s: %d cut-outs, want %d", name, l.Count(), len(inPieces))
	}
	cut, wood := unit.Length(0), unit.Length(0)
	for _, p := range l.Pieces {
		wood += p.Right - p.Left
	}
	for _, b := range l.Sheets.Boards {
		for _, p := range b.Pieces {
			cut += p.Length
		}
	}
	board := l.Way.Long
	if l.Way.Upright {
		board = Wide
	}
	if cut != wood || l.Sheets.Stock != (nest.Stock{Board: board}) || len(l.Sheets.TooLong) > 0 {
		t.Errorf("%s: %v cut of %+v, the pieces are %v", name, cut, l.Sheets.Stock, wood)
	}
}

func wallStuds(l Layout) []frame.Stud { return l.Face.Studs() }

func reversed(all []unit.Length) []unit.Length {
	out := slices.Clone(all)
	slices.Reverse(out)
	return out
}

// lettered counts as columns of a sheet of figures do: A to Z, AA, AB.
func lettered(i int) string {
	const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
	if i < 26 {
		return letters[i : i+1]
	}
	return lettered(i/26-1) + lettered(i%26)
}

// TestLettersPastTheAlphabet: a wall of 54 pieces.
func TestLettersPastTheAlphabet(t *testing.T) {
	l := Layout{Pieces: make([]Piece, 54)}
	l.letter()
	for i, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 51: "AZ", 52: "BA"} {
		if l.Pieces[i].Letter != want {
			t.Errorf("piece %d is %s, want %s", i, l.Pieces[i].Letter, want)
		}
	}
}

// TestWhichLayoutIsBetter: the fewest sheets, counted by their board, then the fewest
// cut-outs on a joint, then the shortest joints.
func TestWhichLayoutIsBetter(t *testing.T) {
	made := func(sheets int, long unit.Length, joints int, seam unit.Length) Layout {
		l := Layout{Way: Way{Long: long}, Joints: seam, Sheets: nest.List{Boards: make([]nest.Board, sheets)}}
		for i := range joints {
			l.Holes = append(l.Holes, Hole{Opening: &plan.Opening{Tag: fmt.Sprint(i)}, OnJoint: true})
		}
		return l
	}
	for _, tt := range []struct {
		name string
		a, b Layout
		want bool
	}{
		{"less board", made(3, Long8, 2, 9), made(4, Long8, 0, 1), true},
		{"more board", made(4, Long8, 0, 1), made(3, Long8, 2, 9), false},
		{"two of 12 ft are three of 8", made(2, Long12, 1, 1), made(3, Long8, 0, 9), false},
		{"as much board, fewer on joints", made(3, Long8, 0, 9), made(2, Long12, 1, 1), true},
		{"shorter joints", made(2, Long12, 1, 1), made(3, Long8, 1, 2), true},
		{"the same", made(2, Long8, 1, 2), made(2, Long8, 1, 2), false},
	} {
		if got := tt.a.isBetter(tt.b); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
	twice := made(1, Long8, 1, 0)
	twice.Holes = append(twice.Holes, twice.Holes[0], Hole{Opening: &plan.Opening{Tag: "clear"}})
	if got := twice.OnJoints(); !slices.Equal(got, []string{"0"}) {
		t.Errorf("on joints %v, want one, told once", got)
	}
}

// TestWhatIsCutOut: a hole is cut for what is new and set into open framing; a box that is
// there, is fastened to the finish or lies on it, goes in another way, and so does all in a
// wall that stays closed.
func TestWhatIsCutOut(t *testing.T) {
	for _, tt := range []struct {
		name, kind string
		change     func(*plan.Opening, *plan.Side)
		want       bool
	}{
		{"a new box", "duplex", nil, true},
		{"a housing of its own", "recessed", func(o *plan.Opening, _ *plan.Side) { o.Height = plan.CentreAt(ruletest.In(60)) }, true},
		{"no box chosen", "duplex", func(o *plan.Opening, _ *plan.Side) { o.Assembly = plan.Assembly{} }, false},
		{"one that is there", "duplex", func(o *plan.Opening, _ *plan.Side) { o.Status = plan.StatusExisting }, false},
		{"one that goes", "duplex", func(o *plan.Opening, _ *plan.Side) { o.Status = plan.StatusRemove }, false},
		{"old work", "duplex", func(o *plan.Opening, _ *plan.Side) { o.Assembly = plan.Assembly{Code: "OW1"} }, false},
		{"on the surface", "duplex", func(o *plan.Opening, _ *plan.Side) { o.Assembly = plan.Assembly{Box: surfaceBox(t)} }, false},
		{"a wall that stays closed", "duplex", func(_ *plan.Opening, s *plan.Side) { s.Condition = plan.ConditionClosed }, false},
		{"a closed wall, opened here", "duplex", func(_ *plan.Opening, s *plan.Side) {
			s.Condition = plan.ConditionClosed
			s.Zones = []plan.Zone{{From: ruletest.In(30), To: ruletest.In(50), Condition: plan.ConditionOpened}}
		}, true},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 90, 92)
		r.Opening(tt.kind, r.On(0, 40), func(o *plan.Opening) {
			if tt.change != nil {
				tt.change(o, r.Sides[0])
			}
		})
		v := view(t, h, r.Room.ID)
		l, ok := Lay(&v.Sides[0], v.Room)
		if ok != tt.want || tt.want && l.Count() != 1 {
			t.Errorf("%s: laid %v with %d cut-outs, want %v", tt.name, ok, l.Count(), tt.want)
		}
	}
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 90, 92)
	r.Opening("duplex", r.On(0, 40))
	for name, change := range map[string]func(){
		"no wall":    func() { r.Sides[0].Kind = plan.SideGlass },
		"no ceiling": func() { r.Sides[0].Kind, r.Room.Ceiling = plan.SideWall, 0 },
	} {
		kind, ceiling := r.Sides[0].Kind, r.Room.Ceiling
		change()
		v := view(t, h, r.Room.ID)
		if _, ok := Lay(&v.Sides[0], v.Room); ok {
			t.Errorf("%s: board is laid", name)
		}
		r.Sides[0].Kind, r.Room.Ceiling = kind, ceiling
	}
}

// TestBoxesOfTheOtherFace are covered, not cut: they are told where they lie behind this one,
// from its subfloor. The rooms stand 4-1/2 in apart, the one behind 10 in to the left, and
// what is 60 from its own left end is 120 - 10 - 60 = 50 from this one's.
func TestBoxesOfTheOtherFace(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 100, 92)
	r.Room.Floor = []plan.Layer{{Name: "oak", Thickness: unit.Inch}}
	other := h.Square(plan.UseBath, -10, -96.5, 120, 92)
	r.Opening("duplex", r.On(0, 20))
	behind := other.Opening("duplex", other.On(2, 60), ruletest.Up(30))
	other.Opening("duplex", other.On(2, 40), ruletest.Removed)
	other.Opening("duplex", other.On(2, 80), func(o *plan.Opening) { o.Status = plan.StatusExisting })
	v := view(t, h, r.Room.ID)
	l, ok := Lay(&v.Sides[0], v.Room)
	if !ok || len(l.Covered) != 1 || l.Covered[0].Opening.ID != behind.ID {
		t.Fatalf("covered: %+v", l.Covered)
	}
	// The subfloor is one: 30 above it there, whose floor is bare, is 30 above it here.
	got := l.Covered[0]
	if got.Centre() != ruletest.In(50) || (got.Bottom+got.Top)/2 != ruletest.In(30) {
		t.Errorf("centred at %v, %v; want 50 along and 30 above the subfloor", got.Centre(), (got.Bottom+got.Top)/2)
	}
}

func surfaceBox(t *testing.T) string {
	t.Helper()
	for _, b := range part.All().Boxes {
		if b.Mounting == part.Surface {
			return b.ID
		}
	}
	t.Fatal("the catalogue has no box for the surface")
	return ""
}
