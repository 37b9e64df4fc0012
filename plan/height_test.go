package plan

import (
	"testing"

	"studbay/plan/unit"
)

// The center of a box 4 in high on a floor of 3/4 in, however its height was given: to its
// bottom it is 2 in more, to its top 2 in less, and from the subfloor 3/4 in less.
func TestHeightsOfOneCenter(t *testing.T) {
	const box, floor, centre = 4 * unit.Inch, 3 * unit.Inch / 4, 20 * unit.Inch
	given := map[Height]bool{
		{20 * unit.Inch, BoxCentre, FinishedFloor}: true, {18 * unit.Inch, BoxBottom, FinishedFloor}: true, {22 * unit.Inch, BoxTop, FinishedFloor}: true,
		{83 * unit.Inch / 4, BoxCentre, Subfloor}: true, {75 * unit.Inch / 4, BoxBottom, Subfloor}: true, {91 * unit.Inch / 4, BoxTop, Subfloor}: true,
	}
	for h := range given {
		if got := h.Centre(box, floor); got != centre {
			t.Errorf("%+v is centered at %v, want %v", h, got, centre)
		}
		for as := range given {
			if got := h.Restated(as.To, as.From, box, floor); got != as {
				t.Errorf("%+v restated is %+v, want %+v", h, got, as)
			}
		}
	}
	if got := CentreAt(centre); got != (Height{centre, BoxCentre, FinishedFloor}) {
		t.Errorf("it is %+v", got)
	}
}

// From the right end: 12 in of a face of 60 taken by what is 20 wide leave 28.
func TestFromTheRightEnd(t *testing.T) {
	if got := FromRight(60, 12, 20); got != 28 {
		t.Errorf("it is %d, want 28", got)
	}
	if got := FromRight(60, 28, 20); got != 12 {
		t.Errorf("and back %d, want 12", got)
	}
	if got := FromRight(60, 12, 0); got != 48 {
		t.Errorf("of a middle it is %d, want 48", got)
	}
}

// Anything of an anchor's own has its place on one face and one constructor.
func TestAnchorsOnFaces(t *testing.T) {
	room := NewRoom("raaaaaaaa", "R", UseDen, square(120), []ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	f := &Fixture{ID: "faaaaaaaa", Kind: FixtureIsland, At: OnFloor(room.ID, square(120)[2]), Width: 60 * unit.Inch, Depth: 24 * unit.Inch}
	p := New("P", "vaaaaaaaa")
	l := *p.Levels[0]
	l.Rooms, l.Fixtures = l.Rooms.With(&room), l.Fixtures.With(f)
	p = p.WithLevel(&l)
	for part, want := range map[Part]unit.Length{
		PartFront: 60 * unit.Inch, PartBack: 60 * unit.Inch, PartTop: 60 * unit.Inch, PartLeft: 24 * unit.Inch, PartRight: 24 * unit.Inch, PartCeiling: 0, PartFloor: 0, "shelf": 0,
	} {
		if got := p.FaceLength(Anchor{Host: f.ID, Part: part}); got != want {
			t.Errorf("the %s of the island is %v long, want %v", part, got, want)
		}
	}
	if got := p.FaceLength(OnFace("sbbbbbbbb", 0)); got != 120*unit.Inch {
		t.Errorf("the side is %v long", got)
	}
	for _, none := range []Anchor{OnFace("szzzzzzzz", 0), {Host: "fzzzzzzzz", Part: PartTop}, OnCeiling(room.ID, square(1)[0]), {}} {
		if got := p.FaceLength(none); got != 0 {
			t.Errorf("of %+v there is a face of %v", none, got)
		}
	}
	if got := p.Levels[0].Has(f.ID); !got || p.Levels[0].Has("fzzzzzzzz") || p.Levels[0].Has("") || p.Levels[0].Has("zaaaaaaaa") || p.Levels[0].Has("kaaaaaaaa") {
		t.Error("the level has not what it has, or has what it has not")
	}
}
