package frame_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// stick is an upright of the sketch, from flank to flank and from end to end.
type stick struct {
	left, right, bottom, top unit.Length
	kind                     frame.StudKind
}

// TestUprightsAreThoseOfAPlainSketch frames random walls a second time, by the words of the
// trade (constructionmanuals.tpub.com; header and sill common practice): a stud at either end;
// the layout from where it begins; at an opening, of which at most one is in a wall, a jack at
// either hand of the rough opening up to its head, a king beside each, and of the layout
// between them cripples over the header, 5-1/2 high, and under the sill, 1-1/2 thick.
func TestUprightsAreThoseOfAPlainSketch(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 8))
	for range 300 {
		length := in(float64(40+random.IntN(160)) + float64(random.IntN(16))/16)
		studs := plan.Studs{
			Spacing: []unit.Length{0, 12, 16, 24}[random.IntN(4)] * unit.Inch, Depth: in(3.5),
			First: in(float64(random.IntN(320)) / 16 * float64(random.IntN(2))), FromRight: random.IntN(3) == 0,
			Thick: []unit.Length{0, 0, unit.Inch, 3 * unit.Inch}[random.IntN(4)],
		}
		h := newHouse(t)
		side := h.room(0, 0, length.Millimetres()/25.4, 100, func(s []*plan.Side) { s[0].Studs = studs })[0]
		var b *plan.Break
		if random.IntN(3) > 0 {
			kinds := part.All().Breaks
			made := kinds[random.IntN(len(kinds))].NewBreak(unit.Imperial)
			made.ID = h.ids.New(plan.KindBreak)
			made.Width = min(made.Width, length-2*unit.Inch)
			made.At = plan.OnFace(side, unit.Length(random.Int64N(int64(length-made.Width))))
			if p, err := (edit.AddBreak{Break: made}).Apply(h.p); err == nil {
				h.p, b = p, &made
			}
		}
		f, _ := frame.FaceOf(index.New(h.p), side)
		var got []stick
		for _, s := range f.Uprights() {
			got = append(got, stick{s.Left(), s.Right(), s.Bottom, s.Top, s.Kind})
		}
		want := framedByHand(f.Length, studs, b)
		if studs.Spacing == 0 {
			want = nil // nobody tells
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%v of wall, %+v, %+v:\n got %v\nwant %v", f.Length, studs, b, got, want)
		}
	}
}

func framedByHand(length unit.Length, studs plan.Studs, b *plan.Break) (all []stick) {
	thick := studs.Thick
	if thick == 0 {
		thick = in(1.5)
	}
	ends := []stick{{0, thick, 0, 0, frame.EndStud}, {length - thick, length, 0, 0, frame.EndStud}}
	if length < 2*thick {
		ends = ends[:1]
	}
	first := studs.First
	if first == 0 {
		first = studs.Spacing
	}
	var laid []stick
	for at := first; studs.Spacing > 0 && at <= length; at += studs.Spacing {
		centre := at
		if studs.FromRight {
			centre = length - at
		}
		s := stick{centre - thick/2, centre - thick/2 + thick, 0, 0, frame.CommonStud}
		if !slices.ContainsFunc(ends, func(e stick) bool { return s.left < e.right && e.left < s.right }) {
			laid = append(laid, s)
		}
	}
	if b == nil || b.Kind == plan.BreakFireplace {
		all = append(ends, laid...)
		return inOrder(all)
	}
	kind := part.All().Break(b.Kind)
	left, right := b.At.Along-kind.RoughSide, b.At.Along+b.Width+kind.RoughSide
	head, foot := b.Head+kind.RoughTop, unit.Length(0)
	if b.Sill > 0 {
		foot = max(0, b.Sill-kind.RoughSide)
	}
	const two = 3 * unit.Inch / 2
	kings := []stick{{left - 2*two, left - two, 0, 0, frame.KingStud}, {right + two, right + 2*two, 0, 0, frame.KingStud}}
	for _, e := range ends {
		if !slices.ContainsFunc(kings, func(k stick) bool { return e.left < k.right && k.left < e.right }) {
			all = append(all, e)
		}
	}
	for _, s := range laid {
		switch {
		case s.right <= left-2*two || s.left >= right+2*two:
			all = append(all, s)
		case s.left >= left && s.right <= right:
			all = append(all, stick{s.left, s.right, head + in(5.5), 0, frame.Cripple})
			if foot > two {
				all = append(all, stick{s.left, s.right, 0, foot - two, frame.Cripple})
			}
		}
	}
	all = append(all, kings...)
	all = append(all, stick{left - two, left, 0, head, frame.JackStud}, stick{right, right + two, 0, head, frame.JackStud})
	return inOrder(all)
}

func inOrder(all []stick) []stick {
	slices.SortStableFunc(all, func(a, b stick) int {
		if by := (a.left + a.right) - (b.left + b.right); by != 0 {
			return int(max(min(by, 1), -1))
		}
		return int(max(min(a.bottom-b.bottom, 1), -1))
	})
	return all
}

// heldByHand says how a box on a face is held: the clear space nearest to its middle, what
// bounds it, and what a box of its mounting does there.
func heldByHand(f frame.Framed, o *plan.Opening, rect frame.Rect) string {
	var bays [][2]unit.Length
	var hands [][2]*frame.Stud
	from, leftStud := unit.Length(0), (*frame.Stud)(nil)
	for i := range f.All {
		s := &f.All[i]
		if s.Bottom >= rect.Top || s.Top != 0 && s.Top <= rect.Bottom {
			continue
		}
		if to := min(s.Left(), f.Length); from < to {
			bays, hands = append(bays, [2]unit.Length{from, to}), append(hands, [2]*frame.Stud{leftStud, s})
		}
		from, leftStud = max(from, s.Right()), s
	}
	if from < f.Length {
		bays, hands = append(bays, [2]unit.Length{from, f.Length}), append(hands, [2]*frame.Stud{leftStud, nil})
	}
	best := -1
	off := func(i int) unit.Length { return max(0, bays[i][0]-o.At.Along, o.At.Along-bays[i][1]) }
	for i := range bays {
		if best < 0 || off(i) < off(best) {
			best = i
		}
	}
	hasBay := best >= 0 && (hands[best][0] != nil || hands[best][1] != nil)
	state := f.State
	if hasBay {
		var known []plan.StudState
		for _, s := range hands[best] {
			if s != nil && (s.Kind == frame.CommonStud || s.Kind == frame.Cripple) {
				known = append(known, s.State)
			}
		}
		for _, s := range []plan.StudState{plan.StudMeasured, plan.StudStated, plan.StudAssumed} {
			if slices.Contains(known, s) {
				state = s // the last that is among them is the least sure
			}
		}
	}
	box, _ := part.Known(o.Assembly)
	// Beyond what a tape read nothing is known of a wall that stands: a bay that ends there is
	// none, but for a box that touches its one known stud.
	isKnown := true
	if hasBay && isTapedByHand(f.Side) && f.Side.ConditionAt((bays[best][0]+bays[best][1])/2) != plan.ConditionNew {
		knows := func(s *frame.Stud) bool { return s != nil && s.Kind != frame.EndStud }
		left, right := knows(hands[best][0]), knows(hands[best][1])
		isKnown = left && right
		touches := left && rect.Left-bays[best][0] <= unit.Inch/32 || right && bays[best][1]-rect.Right <= unit.Inch/32
		hasBay = isKnown || touches && box != nil && !slices.Contains([]part.Mounting{part.BarHanger, part.OldWork, part.Surface, part.InMasonry, part.InFloor, part.OnRaceways}, box.Mounting)
	}
	said := fmt.Sprint(hasBay, " ", state)
	if hasBay {
		said += fmt.Sprint(" ", bays[best][0], "-", bays[best][1])
	}
	way, block, far := frame.NotHeld, "", unit.Length(0)
	switch {
	case box == nil:
		if k := part.All().Kind(o.Kind); o.Assembly.Box == "" && o.Assembly.Code == "" && k != nil && k.Assembly == nil {
			way = frame.ByItsOwn
		}
	case box.Mounting == part.BarHanger:
		way = frame.ByBar
	case box.Mounting == part.OldWork:
		way = frame.ByBoard
	case box.Mounting == part.Surface:
		way = frame.OnSurface
	case box.Mounting == part.InMasonry:
		way = frame.InMasonry
	case box.Mounting == part.InFloor:
		way = frame.ByFloor
	case box.Mounting == part.OnRaceways:
		way = frame.ByItsOwn
	case hasBay && f.Side.ConditionAt(o.At.Along) != plan.ConditionClosed: // behind a closed wall nothing is fixed to a stud
		clear := bays[best][1] - bays[best][0]
		left := hands[best][0] != nil && rect.Left-bays[best][0] <= unit.Inch/32
		right := hands[best][1] != nil && bays[best][1]-rect.Right <= unit.Inch/32
		switch {
		case !left && !right:
			way = frame.ByBlock
			body, _ := frame.BodyOf(o.Assembly)
			back := body.InFraming(frame.SetProud(f.Side.At(o.At.Along)))
			depth := f.FramingAt(o.At.Along)
			middle := (rect.Bottom + rect.Top) / 2
			block = fmt.Sprint(clear, back, back+in(1.5)-depth, depth > 0, middle-in(1.75), middle+in(1.75))
		case box.Mounting == part.Bracket:
			way = frame.ByBracket
		case left:
			way = frame.ByNailLeft
		default:
			way = frame.ByNailRight
		}
		if left != right && isKnown && o.Gangs >= 3 {
			far = max(0, clear-(rect.Right-rect.Left))
		}
	}
	return fmt.Sprint(said, " ", way, " ", block, " ", far)
}

// isTapedByHand reports whether all that is told of the studs of a side was read by a tape.
func isTapedByHand(s *plan.Side) bool {
	return len(s.Places) > 0 && !slices.ContainsFunc(s.Places, func(p plan.StudPlace) bool { return p.State != plan.StudMeasured })
}

// TestBoxesAreHeldAsAPlainSketchHasThem asks of random boxes in random walls, some of whose
// studs are said or taped.
func TestBoxesAreHeldAsAPlainSketchHasThem(t *testing.T) {
	random := rand.New(rand.NewPCG(9, 10))
	ways := map[frame.Way]int{}
	ask := func(f frame.Framed, room *plan.Room, o *plan.Opening) {
		got := f.HoldOn(o, room)
		said := fmt.Sprint(got.HasBay, " ", got.State)
		if got.HasBay {
			said += fmt.Sprint(" ", got.Bay.From, "-", got.Bay.To)
		}
		block := ""
		if b := got.Block; b != nil {
			block = fmt.Sprint(b.Length, b.SetBack, b.Over, b.KnowsDepth, b.Bottom, b.Top)
			if !b.Flat || b.Deep() != in(1.5) {
				t.Fatalf("a block on edge: %+v", b)
			}
		}
		said = fmt.Sprint(said, " ", got.By, " ", block, " ", got.FarSide)
		if want := heldByHand(f, o, frame.RectOf(o, room)); said != want {
			t.Fatalf("%s of %+v at %v is held\n%s, the sketch has\n%s", o.Kind, o.Assembly, o.At.Along, said, want)
		}
		ways[got.By]++
	}
	eachFace(40, func(ix *index.Index, v *index.RoomView, s *index.SideView) {
		side := *s.Side
		if random.IntN(2) == 0 {
			for at := unit.Length(random.IntN(20)) * unit.Inch; at < s.Length; at += in(float64(8 + random.IntN(20))) {
				side.Places = append(side.Places, plan.StudPlace{At: at, State: []plan.StudState{plan.StudAssumed, plan.StudStated, plan.StudMeasured}[random.IntN(3)]})
			}
		}
		face := frame.FaceIn(s)
		face.Side = &side
		f := face.Framed()
		for _, o := range s.Openings {
			if o.At.Part == plan.PartFace {
				ask(f, v.Room, o)
			}
		}
		for range 8 {
			o := part.NewOpening(unit.Imperial, []string{"duplex", "switch", "recessed", "no such"}[random.IntN(4)], plan.OnFace(side.ID, s.Length*unit.Length(random.IntN(100))/100))
			o.Gangs = random.IntN(5)
			o.Height = plan.CentreAt(in(float64(random.IntN(96))))
			if list := part.All().Assemblies; random.IntN(4) > 0 {
				o.Assembly = plan.Assembly{Code: list[random.IntN(len(list))].Code}
			}
			if len(f.All) > 0 && random.IntN(2) == 0 { // against a stud, or nearly
				left, right := f.All[random.IntN(len(f.All))].Beside(frame.FrontOf(&o).Width)
				o.At.Along = []unit.Length{left, right}[random.IntN(2)] + unit.Length(random.IntN(5)-2)*unit.Inch/32
			}
			ask(f, v.Room, &o)
		}
	})
	for _, way := range []frame.Way{frame.NotHeld, frame.ByNailLeft, frame.ByNailRight, frame.ByBracket, frame.ByBlock, frame.ByBoard, frame.ByItsOwn} {
		if ways[way] < 5 {
			t.Errorf("%q came up %d times: too few to say anything", way, ways[way])
		}
	}
}
