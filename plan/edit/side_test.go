package edit_test

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// The expected figures are plain geometry of a room of 144 × 120 in, worked by hand.

func TestOutlineEdits(t *testing.T) {
	joints := [2]plan.ID{"saaaaaaaa", "sbbbbbbbb"}
	for _, tt := range []struct {
		name    string
		edits   []edit.Edit
		corners []int
		n2      plan.Anchor // S2, on the north side 108 in from the left end
	}{
		{"a side out", []edit.Edit{edit.MoveSide{Side: north, By: 12 * in}}, []int{0, -12, 144, -12, 144, 120, 0, 120}, plan.OnFace(north, 108*in)},
		{"a side in", []edit.Edit{edit.MoveSide{Side: east, By: -12 * in}}, []int{0, 0, 132, 0, 132, 120, 0, 120}, plan.OnFace(north, 108*in)},
		{"the left neighbour out: things stay where they are", []edit.Edit{edit.MoveSide{Side: west, By: 12 * in}}, []int{-12, 0, 144, 0, 144, 120, -12, 120}, plan.OnFace(north, 120*in)},
		{"a length from the left", []edit.Edit{edit.SetSideLength{Side: north, Length: 150 * in}}, []int{0, 0, 150, 0, 150, 120, 0, 120}, plan.OnFace(north, 108*in)},
		{"a length from the right", []edit.Edit{edit.SetSideLength{Side: north, Length: 150 * in, FromRight: true}}, []int{-6, 0, 144, 0, 144, 120, -6, 120}, plan.OnFace(north, 114*in)},
		{"a corner", []edit.Edit{edit.MoveCorner{Side: north, To: at(-12*in, 0)}}, []int{-12, 0, 144, 0, 144, 120, 0, 120}, plan.OnFace(north, 120*in)},
		{"a corner that turns the side: 108, 144, 180", []edit.Edit{edit.MoveCorner{Side: north, To: at(0, -108*in)}}, []int{0, -108, 144, 0, 144, 120, 0, 120}, plan.OnFace(north, 144*in)},
		{"a split, the right part longer", []edit.Edit{edit.SplitSide{Side: north, At: 48 * in, NewID: "saaaaaaaa"}}, []int{0, 0, 48, 0, 144, 0, 144, 120, 0, 120}, plan.OnFace(north, 60*in)},
		{"a split, the left part longer", []edit.Edit{edit.SplitSide{Side: north, At: 96 * in, NewID: "saaaaaaaa"}}, []int{0, 0, 96, 0, 144, 0, 144, 120, 0, 120}, plan.OnFace("saaaaaaaa", 12*in)},
		{"a split in the middle keeps the ID on the left", []edit.Edit{edit.SplitSide{Side: north, At: 72 * in, NewID: "saaaaaaaa"}}, []int{0, 0, 72, 0, 144, 0, 144, 120, 0, 120}, plan.OnFace("saaaaaaaa", 36*in)},
		{"a split taken back", []edit.Edit{
			edit.SplitSide{Side: north, At: 48 * in, NewID: "saaaaaaaa"}, edit.RemoveCorner{Side: north},
		}, []int{0, 0, 144, 0, 144, 120, 0, 120}, plan.OnFace(north, 108*in)},
		{"part of a side pushed out", []edit.Edit{
			edit.SplitSide{Side: north, At: 48 * in, NewID: "saaaaaaaa"},
			edit.MoveSide{Side: north, By: 24 * in, Joints: [2]plan.ID{"sbbbbbbbb"}},
		}, []int{0, 0, 48, 0, 48, -24, 144, -24, 144, 120, 0, 120}, plan.OnFace(north, 60*in)},
		{"the middle of a side pushed in", []edit.Edit{
			edit.SplitSide{Side: north, At: 100 * in, NewID: "scccccccc"},
			edit.SplitSide{Side: north, At: 48 * in, NewID: "sdddddddd"},
			edit.MoveSide{Side: "sdddddddd", By: -12 * in, Joints: joints},
		}, nil, plan.OnFace("scccccccc", 8*in)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p := after(t, shed(t), tt.edits...)
			if got := corners(room(t, p)); tt.corners != nil && !slices.Equal(got, tt.corners) {
				t.Errorf("corners %v, want %v", got, tt.corners)
			}
			if got := opening(t, p, n2).At; got != tt.n2 {
				t.Errorf("S2 stands at %v, want %v", got, tt.n2)
			}
		})
	}
}

func TestOutlineEditsRefuse(t *testing.T) {
	p := shed(t)
	for _, tt := range []struct {
		name   string
		edit   edit.Edit
		cause  error
		things []plan.ID
	}{
		{"an opening would fall off", edit.Steps{Edits: []edit.Edit{
			edit.Remove{Things: []plan.ID{door}}, edit.MoveSide{Side: east, By: -48 * in},
		}}, plan.ErrNoRoom, []plan.ID{n2}},
		{"a door would fall off", edit.MoveSide{Side: east, By: -13 * in}, plan.ErrNoRoom, []plan.ID{door}},
		{"a counter would fall off", edit.SetSideLength{Side: east, Length: 95 * in}, plan.ErrNoRoom, []plan.ID{bench}},
		{"a lamp would be outside", edit.Steps{Edits: []edit.Edit{
			edit.Remove{Things: []plan.ID{n1}}, edit.Remove{Things: []plan.ID{n2}}, edit.Remove{Things: []plan.ID{door}}, edit.Remove{Things: []plan.ID{panel}, Cascade: true},
			edit.MoveSide{Side: east, By: -84 * in},
		}}, plan.ErrNoRoom, []plan.ID{lamp}},
		{"turned inside out", edit.MoveSide{Side: north, By: -11 * ft}, plan.ErrNoRoom, nil},
		{"onto the other side", edit.MoveSide{Side: north, By: -10 * ft}, plan.ErrNoRoom, nil},
		{"a corner across", edit.MoveCorner{Side: north, To: at(13*ft, 5*ft)}, plan.ErrNoRoom, nil},
		{"split at the end", edit.SplitSide{Side: north, At: 12 * ft, NewID: "saaaaaaaa"}, plan.ErrNoRoom, nil},
		{"split through a door", edit.SplitSide{Side: south, At: 2 * ft, NewID: "saaaaaaaa"}, plan.ErrNoRoom, []plan.ID{door}},
		{"split with a taken ID", edit.SplitSide{Side: north, At: 5 * ft, NewID: west}, plan.ErrTaken, nil},
		{"no length", edit.SetSideLength{Side: north}, plan.ErrNoRoom, nil},
		{"a length below zero", edit.SetSideLength{Side: north, Length: -in}, plan.ErrNoRoom, nil},
		{"a length past what a plan holds", edit.SetSideLength{Side: north, Length: plan.Reach + 1}, plan.ErrNoRoom, nil},
		{"one ID for both joints", edit.MoveSide{Side: north, By: in, Joints: [2]plan.ID{"saaaaaaaa", "saaaaaaaa"}}, plan.ErrTaken, nil},
		{"a move past what a plan holds", edit.MoveSide{Side: north, By: plan.Reach + 1}, nil, nil},
		{"no such side", edit.MoveSide{Side: "szzzzzzzz", By: 1}, plan.ErrGone, nil},
		{"open under an opening", edit.ChangeSide{Side: plan.Side{ID: north, Kind: plan.SideOpen}}, plan.ErrNoRoom, []plan.ID{n1}},
		{"a wall without a kind", edit.ChangeSide{Side: plan.Side{ID: north, Kind: "hedge"}}, nil, nil},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, p, tt.edit, tt.cause, tt.things...) })
	}
}

// TestTheLongestSide: a plan holds lengths up to 10 km, so a side may be that long.
func TestTheLongestSide(t *testing.T) {
	p := plan.New("Test", "vaaaaaaaa")
	l := *p.Levels[0]
	l.Rooms = l.Rooms.With(&plan.Room{ID: "raaaaaaaa", Ceiling: 8 * ft, Sides: []*plan.Side{
		{ID: "saaaaaaaa", Kind: plan.SideWall, Start: at(0, 0)},
		{ID: "sbbbbbbbb", Kind: plan.SideWall, Start: at(12*ft, 0)},
		{ID: "scccccccc", Kind: plan.SideWall, Start: at(12*ft, 10*ft)},
		{ID: "sdddddddd", Kind: plan.SideWall, Start: at(0, 10*ft)},
	}})
	for _, long := range []unit.Length{6_000 * unit.Metre, 10_000 * unit.Metre} {
		q := after(t, p.WithLevel(&l), edit.SetSideLength{Side: "saaaaaaaa", Length: long})
		if ref, _ := q.Side("saaaaaaaa"); ref.Line().Length() != long {
			t.Errorf("the side is %v long, want %v", ref.Line().Length(), long)
		}
	}
}

func TestPushingPartOfASideNeedsAJoint(t *testing.T) {
	p := after(t, shed(t), edit.SplitSide{Side: north, At: 48 * in, NewID: "saaaaaaaa"})
	refused(t, p, edit.MoveSide{Side: north, By: in}, plan.ErrNoRoom)
	refused(t, p, edit.MoveSide{Side: north, By: in, Joints: [2]plan.ID{west}}, plan.ErrTaken)
}

// A chosen side goes as its corner does: its neighbor takes its place. With its room or level
// chosen too the room goes as a whole.
func TestARemovedSideIsARemovedCorner(t *testing.T) {
	p := after(t, shed(t), edit.SplitSide{Side: north, At: 96 * in, NewID: "saaaaaaaa"})
	by := after(t, p, edit.RemoveCorner{Side: "saaaaaaaa"})
	p = after(t, p, edit.Remove{Things: []plan.ID{"saaaaaaaa"}})
	if r := room(t, p); len(r.Sides) != 4 || !slices.Equal(r.Outline(), room(t, by).Outline()) {
		t.Errorf("%d sides, outline %v", len(r.Sides), r.Outline())
	}
	for name, things := range map[string][]plan.ID{"its room": {north, shedRoom}, "its level": {ground, north}} {
		on := after(t, shed(t), edit.AddLevel{ID: "vaaaaaaaa", Title: "Upper"})
		gone := after(t, on, edit.Remove{Things: things, Cascade: true})
		if ref, _ := gone.Side(north); ref != nil {
			t.Errorf("with %s it is still there", name)
		}
	}
}

func TestClampSlidesBack(t *testing.T) {
	p := after(t, shed(t), edit.MoveSide{Side: east, By: -48 * in, Clamp: true})
	if got, want := opening(t, p, n2).At, plan.OnFace(north, 96*in); got != want {
		t.Errorf("S2 stands at %v, want %v", got, want)
	}
	p = after(t, shed(t), edit.Remove{Things: []plan.ID{bench}, Cascade: true}, edit.MoveSide{Side: north, By: -66 * in, Clamp: true})
	if got, want := opening(t, p, lamp).At, plan.OnCeiling(shedRoom, at(72*in, 66*in)); got != want {
		t.Errorf("the lamp hangs at %v, want %v", got, want)
	}
}

func TestMergedSideTakesWhatWasSaidOfBoth(t *testing.T) {
	p := after(t, shed(t), edit.SplitSide{Side: north, At: 96 * in, NewID: "saaaaaaaa"},
		edit.Add{Thing: &plan.Waiver{ID: "wzzzzzzzz", Rule: "wall-reach", About: "saaaaaaaa", Reason: "A chimney."}},
		edit.RemoveCorner{Side: "saaaaaaaa"})
	if got, _ := p.Waivers.Get("wzzzzzzzz"); got == nil || got.About != north {
		t.Errorf("the waiver is %+v, want one about the merged side", got)
	}
}

func TestFirstStudStaysWhereItIs(t *testing.T) {
	p := shed(t)
	side := *room(t, p).Sides[0]
	side.Studs = plan.Studs{Spacing: 16 * in, Depth: 7 * in / 2, First: 4 * in}
	for _, tt := range []struct {
		name string
		edit edit.Edit
		side plan.ID
		want unit.Length
	}{
		{"left end moved 10 in out", edit.MoveSide{Side: west, By: 10 * in}, north, 14 * in},
		{"left end moved 10 in in", edit.MoveSide{Side: west, By: -10 * in}, north, 10 * in},
		{"right end moved", edit.MoveSide{Side: east, By: 10 * in}, north, 4 * in},
		{"the right part of a split", edit.SplitSide{Side: north, At: 120 * in, NewID: "saaaaaaaa"}, "saaaaaaaa", 12 * in},
		{"the right part, longer", edit.SplitSide{Side: north, At: 10 * in, NewID: "saaaaaaaa"}, north, 10 * in},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := room(t, after(t, p, edit.ChangeSide{Side: side}, tt.edit))
			if got := r.Sides[r.SideAt(tt.side)].Studs.First; got != tt.want {
				t.Errorf("first stud at %v, want %v", got, tt.want)
			}
		})
	}
}

// A side that slants three across and four down has lengths that are whole: 15-20-25.
func TestSlantedSide(t *testing.T) {
	p := after(t, plan.New("Attic", ground), edit.AddRoom{Level: ground, Room: func() plan.Room {
		r := plan.NewRoom(shedRoom, "Attic", plan.UseDen, geom.Polygon{at(0, 0), at(15*ft, 20*ft), at(0, 20*ft)}, []plan.ID{north, south, west})
		r.Ceiling = 8 * ft
		return r
	}()})
	p = after(t, p, edit.AddOpening{Opening: plan.Opening{ID: n1, Kind: "duplex", At: plan.OnFace(north, 5*ft), Height: plan.CentreAt(ft), Status: plan.StatusNew}},
		edit.MoveSide{Side: north, By: 4 * ft})
	// Square to the side by 4 ft: the line meets the wall 5/3 further left end up, the floor 5/4 out.
	if got, want := room(t, p).Outline(), (geom.Polygon{at(0, -20*ft/3), at(20*ft, 20*ft), at(0, 20*ft)}); got[1] != want[1] || (got[0].Y-want[0].Y).Abs() > 1 || got[0].X != 0 {
		t.Errorf("corners %v, want %v", got, want)
	}
	r := room(t, p)
	want := at(3*ft, 4*ft).Add(at(16*ft/5, -12*ft/5)) // 5 ft down the slant, 4 ft out of it
	if got := r.Segment(0).At(opening(t, p, n1).At.Along); got.Distance(want) > 2 {
		t.Errorf("the opening stands at %v, want %v", got, want)
	}
}
