package drywall

import (
	"strings"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

func polygon(inches ...float64) (p geom.Polygon) {
	for i := 0; i < len(inches); i += 2 {
		p = append(p, geom.Point{X: ruletest.In(inches[i]), Y: ruletest.In(inches[i+1])})
	}
	return p
}

// TestSheetsAreTrimmedAtTheWalls: what lies in the room of a sheet from 24 to 72 and from 48 to
// 96 in, by drawing both on squared paper.
func TestSheetsAreTrimmedAtTheWalls(t *testing.T) {
	sheet := frame.Rect{Left: ruletest.In(24), Right: ruletest.In(72), Bottom: ruletest.In(48), Top: ruletest.In(96)}
	for _, tt := range []struct {
		name    string
		room    geom.Polygon
		about   []float64 // left, right, bottom, top; none: nothing is in the room
		corners int       // of what is left; 0: a whole rectangle
		area    float64   // square inches
	}{
		{"all of it", polygon(0, 0, 200, 0, 200, 200, 0, 200), []float64{24, 72, 48, 96}, 0, 48 * 48},
		{"a strip at the left", polygon(0, 0, 26, 0, 26, 200, 0, 200), []float64{24, 26, 48, 96}, 0, 2 * 48},
		{"a strip at the right", polygon(70, 0, 200, 0, 200, 200, 70, 200), []float64{70, 72, 48, 96}, 0, 2 * 48},
		{"a strip at the foot", polygon(0, 0, 200, 0, 200, 50, 0, 50), []float64{24, 72, 48, 50}, 0, 48 * 2},
		{"a strip at the top", polygon(0, 94, 200, 94, 200, 200, 0, 200), []float64{24, 72, 94, 96}, 0, 48 * 2},
		{"beside it", polygon(0, 0, 24, 0, 24, 200, 0, 200), nil, 0, 0},
		{"far from it", polygon(100, 100, 200, 100, 200, 200, 100, 200), nil, 0, 0},
		{"less an inner corner", polygon(0, 0, 200, 0, 200, 200, 60, 200, 60, 80, 0, 80), []float64{24, 72, 48, 96}, 6, 48*48 - 36*16},
		{"past a slanted wall", polygon(0, 0, 120, 0, 0, 120), []float64{24, 72, 48, 96}, 3, 48 * 48 / 2},
	} {
		cut, about, ok := trimmed(tt.room, sheet)
		if ok != (tt.about != nil) || len(cut) != tt.corners {
			t.Errorf("%s: %v, %v", tt.name, cut, ok)
			continue
		}
		if !ok {
			continue
		}
		if want := (frame.Rect{Left: ruletest.In(tt.about[0]), Right: ruletest.In(tt.about[1]), Bottom: ruletest.In(tt.about[2]), Top: ruletest.In(tt.about[3])}); about != want {
			t.Errorf("%s: about %+v, want %+v", tt.name, about, want)
		}
		whole := geom.Box{Min: geom.Point{X: about.Left, Y: about.Bottom}, Max: geom.Point{X: about.Right, Y: about.Top}}.Corners()
		if cut != nil {
			whole = cut
		}
		if want := polygon(0, 0, tt.area, 0, tt.area, 1, 0, 1).Area(); whole.Area() != want {
			t.Errorf("%s: %v, want %v", tt.name, whole.Area(), want)
		}
	}
}

// TestJointsCountOnlyInTheRoom: joints over a room of 120 by 100 in with a notch from 60 on above
// 40, by a ruler on squared paper. One along a wall is none.
func TestJointsCountOnlyInTheRoom(t *testing.T) {
	room := polygon(0, 0, 120, 0, 120, 40, 60, 40, 60, 100, 0, 100)
	for _, tt := range []struct {
		name  string
		joint []float64
		want  float64
	}{
		{"level, all in", []float64{0, 20, 120, 20}, 120},
		{"level, past the notch", []float64{0, 60, 120, 60}, 60},
		{"level, a part of it", []float64{30, 60, 120, 60}, 30},
		{"level, along the wall of the notch", []float64{0, 40, 120, 40}, 60},
		{"upright, all in", []float64{30, 0, 30, 100}, 100},
		{"upright, past the notch", []float64{90, 0, 90, 100}, 40},
		{"upright, along the wall of the notch", []float64{60, 0, 60, 100}, 40},
		{"outside", []float64{90, 60, 120, 60}, 0},
		{"along an outer wall", []float64{0, 0, 120, 0}, 0},
	} {
		line := polygon(tt.joint...)
		if got := jointIn(room, geom.Segment{A: line[0], B: line[1]}); got != ruletest.In(tt.want) {
			t.Errorf("%s: %s, want %v in", tt.name, got.Inches(16), tt.want)
		}
	}
	slant := polygon(0, 0, 100, 0, 0, 100)
	if got := jointIn(slant, geom.Segment{A: geom.Point{Y: 40 * unit.Inch}, B: geom.Point{X: 100 * unit.Inch, Y: 40 * unit.Inch}}); got != 60*unit.Inch {
		t.Errorf("under a slanted wall: %s, want 60", got.Inches(16))
	}
}

// TestCeilingOfAnEll: the sheets of a room of two rectangles are as long as what lies in the room,
// and its joints too: 48 and 4 where they butt, 60 twice between rows.
func TestCeilingOfAnEll(t *testing.T) {
	h := ruletest.New(t)
	r := h.Room(plan.UseBedroom, 0, 0, 120, 0, 120, 40, 60, 40, 60, 100, 0, 100)
	r.Room.Joists = plan.Joists{Along: r.Sides[3].ID, Spacing: 16 * unit.Inch}
	r.Opening("ceiling-light", r.Ceiling(30, 20))
	v := view(t, h, r.Room.ID)
	l := ceiling(v.Room, v.Ceiling, Long8)
	if l.Joints != 172*unit.Inch {
		t.Errorf("joints of %s, want 48 + 60 + 60 + 4 = 172", l.Joints.Inches(16))
	}
	var trimmed []string
	for _, p := range l.Pieces {
		if p.Outline != nil {
			trimmed = append(trimmed, p.Letter)
		}
	}
	if got := strings.Join(trimmed, ""); got != "E" {
		t.Errorf("trimmed are %s, want E alone, the one round the corner", got)
	}
	sum := unit.Length(0)
	for _, b := range l.Sheets.Boards {
		for _, p := range b.Pieces {
			sum += p.Length
		}
	}
	if want := (44 + 16 + 60 + 44 + 76) * unit.Inch; sum != want {
		t.Errorf("cut from sheets %s, want %s", sum.Inches(16), want.Inches(16))
	}
}
