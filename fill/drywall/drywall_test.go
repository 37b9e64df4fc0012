package drywall

import (
	"fmt"
	"strings"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func view(t *testing.T, h *ruletest.House, room plan.ID) index.RoomView {
	t.Helper()
	v, ok := index.New(h.Made()).RoomView(room)
	if !ok {
		t.Fatal("no room")
	}
	return v
}

// TestEdgesCloseOnTheSheet cuts the wall of the example: 114 in long and 96-5/8 high, one
// outline of 2-1/4 by 3-3/8 in with its clearance.
func TestEdgesCloseOnTheSheet(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBath, 0, 0, 114, 92)
	r.Room.Ceiling = ruletest.In(96)
	r.Room.Floor = []plan.Layer{{Name: "tile", Thickness: 5 * unit.Inch / 8}}
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2}
	}
	a := r.Opening("duplex", r.On(0, 29.25), ruletest.Up(42), func(o *plan.Opening) {
		o.Assembly = plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: "ring4-1g-1"}}}
	})
	v := view(t, h, r.Room.ID)
	if best, ok := Lay(&v.Sides[0], v.Room); !ok || len(best.Pieces) != 2 || best.Way.Long != Long12 {
		t.Errorf("two sheets of 12 ft, as much board as three of 8 and half the joints, are not taken: %+v", best.Way)
	}
	l := lay(wallOf(&v), Way{Long8, false})
	if got := pieces(l); got != "A 0-96 0 5/8-48 5/8; B 96-114 0 5/8-48 5/8; C 0-48 48 5/8-96 5/8; D 48-114 48 5/8-96 5/8" {
		t.Errorf("pieces: %s", got)
	}
	hole := l.Holes[0]
	if hole.Opening.ID != a.ID || hole.OnJoint || l.Pieces[hole.Piece].Letter != "A" {
		t.Fatalf("%+v", hole)
	}
	// 2 × 3 in of collar and 1/16 all round, centred at 29-1/4 and at 42-5/8 above the subfloor.
	from := l.From(hole)
	for _, tt := range []struct {
		name string
		got  unit.Length
		want unit.Length
	}{
		{"left", from.Left, ruletest.In(28.1875)}, {"right", from.Right, ruletest.In(30.3125)},
		{"bottom", from.Bottom, ruletest.In(42) - ruletest.In(1.5625)}, {"top", from.Top, ruletest.In(42) + ruletest.In(1.5625)},
		{"from the subfloor", hole.Bottom, ruletest.In(42.625 - 1.5625)},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, tt.got, tt.want)
		}
	}
	if from.Right-from.Left != hole.Outline.Width || from.Top-from.Bottom != hole.Outline.Height {
		t.Error("the edges do not close")
	}
	if n := len(l.Sheets.Boards); n != 3 {
		t.Errorf("%d sheets, want 3: A 96; D 66 and B 18; C 48", n)
	}
}

// TestAPublishedCutOut holds to the example of 14-3/4 and 17-1/2 in for an opening of 2-3/4
// (drywallfaqs.com, around outlets).
func TestAPublishedCutOut(t *testing.T) {
	l := Layout{Pieces: []Piece{{}}}
	h := Hole{}
	h.Left, h.Right = ruletest.In(14.75), ruletest.In(17.5)
	if from := l.From(h); from.Right-from.Left != ruletest.In(2.75) {
		t.Errorf("%v", from.Right-from.Left)
	}
}

func pieces(l Layout) string {
	var all []string
	fraction := func(x unit.Length) string {
		return strings.ReplaceAll(strings.TrimSuffix(x.Inches(16), `"`), "-", " ")
	}
	for _, p := range l.Pieces {
		bottom := fraction(p.Bottom)
		if p.Bottom > 0 && p.Bottom < unit.Inch {
			bottom = "0 " + bottom
		}
		all = append(all, fmt.Sprintf("%s %s-%s %s-%s", p.Letter, fraction(p.Left), fraction(p.Right), bottom, fraction(p.Top)))
	}
	return strings.Join(all, "; ")
}

// TestBoxOnAJoint tells a box that a joint runs through, with its parts in either piece.
func TestBoxOnAJoint(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 90, 92)
	o := r.Opening("switch", r.On(0, 40), ruletest.Up(48))
	v := view(t, h, r.Room.ID)
	w := lay(wallOf(&v), Way{Long8, false})
	if len(w.Holes) != 2 || !w.Holes[0].OnJoint || w.OnJoints()[0] != o.Tag || w.Count() != 1 {
		t.Fatalf("%+v", w.Holes)
	}
	tall := w.Holes[0].Top - w.Holes[0].Bottom + w.Holes[1].Top - w.Holes[1].Bottom
	if tall != w.Holes[0].Outline.Height {
		t.Errorf("the parts are %v high together, the hole %v", tall, w.Holes[0].Outline.Height)
	}
	if best, _ := Lay(&v.Sides[0], v.Room); len(best.OnJoints()) != 0 {
		t.Errorf("a way without a box on a joint is there and not taken: %+v", best.Way)
	}
}

// TestPiecesCoverTheFace lays many walls: pieces neither overlap nor leave a gap above the
// lift, joints stand at studs, and no piece is larger than a sheet.
func TestPiecesCoverTheFace(t *testing.T) {
	for _, length := range []float64{20, 47, 48, 96, 97, 143.5, 145, 240, 301} {
		for _, ceiling := range []float64{84, 96, 97, 108, 120} {
			h := ruletest.New(t)
			r := h.Square(plan.UseBedroom, 0, 0, length, 90)
			r.Room.Ceiling = ruletest.In(ceiling)
			r.Sides[0].Studs = plan.Studs{Spacing: 16 * unit.Inch}
			r.Opening("duplex", r.On(0, length/2))
			v := view(t, h, r.Room.ID)
			for _, way := range Ways {
				l := lay(wallOf(&v), way)
				area, least := unit.Area{}, l.Height
				for i, p := range l.Pieces {
					wide, tall := p.Right-p.Left, p.Top-p.Bottom
					area, least = area.Add(wide.Times(tall)), min(least, p.Bottom)
					if way.Upright && (wide > Wide || tall > way.Long) || !way.Upright && (wide > way.Long || tall > Wide) {
						t.Errorf("%v × %v, %+v: a piece of %v × %v", length, ceiling, way, wide, tall)
					}
					for _, q := range l.Pieces[i+1:] {
						if p.Meets(q.Rect) {
							t.Errorf("%v × %v, %+v: %s and %s overlap", length, ceiling, way, p.Letter, q.Letter)
						}
					}
				}
				if least > Lift || area.Cmp(l.Face.Length.Times(l.Height-least)) != 0 {
					t.Errorf("%v × %v, %+v: the pieces do not cover the face", length, ceiling, way)
				}
			}
		}
	}
}

func wallOf(v *index.RoomView) *frame.Wall { return frame.WallIn(&v.Sides[0], v.Room) }
