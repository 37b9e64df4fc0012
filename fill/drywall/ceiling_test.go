package drywall

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestCeilingByHand lays a ceiling of 120 by 100 in whose joists run beside its left wall, at 16 in
// and so on: rows of 48, 48 and 4 in across them, butt joints at 48 (the third joist) and none
// farther from one another than a sheet. A round box of 4 in at 30, 20 in from the upper left
// corner is cut 4-1/8 in wide about 30 in from the left and 80 in from the lower edge.
func TestCeilingByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 100)
	light := r.Opening("ceiling-light", r.Ceiling(30, 20), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "RD1"} })
	r.Opening("ceiling-light", r.Ceiling(90, 50), func(o *plan.Opening) { o.Status = plan.StatusExisting })
	r.Room.Joists = plan.Joists{Along: r.Sides[3].ID, Spacing: 16 * unit.Inch}
	v := view(t, h, r.Room.ID)
	l := ceiling(v.Room, v.Ceiling[:1], Long8)
	if !l.AcrossJoists || !l.IsCeiling {
		t.Errorf("across joists %v", l.AcrossJoists)
	}
	if got, want := pieces(l), "A 0-48 0-4; B 48-120 0-4; C 0-96 4-52; D 96-120 4-52; E 0-48 52-100; F 48-120 52-100"; got != want {
		t.Errorf("pieces: %s, want %s", got, want)
	}
	best, ok := LayCeiling(&v)
	if !ok || best.Count() != 1 || best.Holes[0].Opening.ID != light.ID {
		t.Fatalf("%v, %d cut-outs", ok, best.Count())
	}
	half := 33 * unit.Inch / 16
	want := frame.Rect{Left: 30*unit.Inch - half, Right: 30*unit.Inch + half, Bottom: 80*unit.Inch - half, Top: 80*unit.Inch + half}
	if got := best.Holes[0].Rect; got != want {
		t.Errorf("cut at %+v, want %+v", got, want)
	}
	var area, room int64
	for _, p := range l.Pieces {
		area += int64((p.Right-p.Left)/unit.Inch) * int64((p.Top-p.Bottom)/unit.Inch)
	}
	if room = 120 * 100; area != room {
		t.Errorf("the pieces are %d in², the ceiling %d", area, room)
	}
	r.Room.Overhead = plan.ConditionClosed
	v = view(t, h, r.Room.ID)
	if _, ok := LayCeiling(&v); ok {
		t.Error("a ceiling that stays closed gets board")
	}
}

// TestCeilingsAcrossTheirJoists lays ceilings by hand with sheets of 8 ft: every other row begins
// with half a sheet, and butt joints go back to the last joist. Pieces are from the left and the
// lower end, joists from the wall that they run beside.
func TestCeilingsAcrossTheirJoists(t *testing.T) {
	square := []float64{0, 0, 120, 0, 120, 100, 0, 100}
	ell := []float64{0, 0, 120, 0, 120, 40, 60, 40, 60, 100, 0, 100}
	at := func(inches ...float64) (all []plan.StudPlace) {
		for _, i := range inches {
			all = append(all, plan.StudPlace{At: ruletest.In(i), State: plan.StudMeasured})
		}
		return all
	}
	every16 := plan.Joists{Spacing: 16 * unit.Inch}
	for _, tt := range []struct {
		name    string
		corners []float64
		along   int // the side that joists run beside
		joists  plan.Joists
		told    bool
		want    string
		seams   float64 // 0: not looked at
		source  string
	}{
		{"from the upper wall", square, 0, every16, true, "A 0-24 0-36; B 24-72 0-84; C 72-120 0-36; D 0-24 36-100; E 72-120 36-100; F 24-72 84-100", 48 + 48 + 24 + 2*100, "joists 84, 68, 52, 36, 20 and 4 from the lower end"},
		{"from the right wall", square, 1, every16, true, "A 0-40 0-4; B 40-120 0-4; C 0-88 4-52; D 88-120 4-52; E 0-40 52-100; F 40-120 52-100", 48 + 48 + 4 + 2*120, "joists at 104, 88 and so on to 40, 24 and 8"},
		{"from the lower wall", square, 2, every16, true, "A 0-24 0-48; B 24-72 0-96; C 72-120 0-48; D 0-24 48-100; E 72-120 48-100; F 24-72 96-100", 0, "joists at 16 to 96"},
		{"the first told", square, 3, plan.Joists{Spacing: 16 * unit.Inch, First: 10 * unit.Inch}, true, "A 0-42 0-4; B 42-120 0-4; C 0-90 4-52; D 90-120 4-52; E 0-42 52-100; F 42-120 52-100", 0, "joists at 10, 26, 42, 58, 74, 90 and 106"},
		{"taped", square, 3, plan.Joists{Spacing: 16 * unit.Inch, Places: at(20, 45, 70)}, true, "A 0-45 0-4; B 45-120 0-4; C 0-70 4-52; D 70-120 4-52; E 0-45 52-100; F 45-120 52-100", 0, "the last before a sheet ends"},
		{"taped from the right", square, 1, plan.Joists{Places: at(50, 75, 100)}, true, "A 0-45 0-4; B 45-120 0-4; C 0-70 4-52; D 70-120 4-52; E 0-45 52-100; F 45-120 52-100", 0, "120 − 75 and 120 − 50"},
		{"not told", square, 3, plan.Joists{}, false, "A 0-48 0-4; B 48-120 0-4; C 0-96 4-52; D 96-120 4-52; E 0-48 52-100; F 48-120 52-100", 0, "along the room"},
		{"not told, a deep room", []float64{0, 0, 100, 0, 100, 120, 0, 120}, 3, plan.Joists{}, false, "A 0-4 0-48; B 4-52 0-96; C 52-100 0-48; D 0-4 48-120; E 52-100 48-120; F 4-52 96-120", 0, "along the room"},
		{"beside an inner wall", ell, 3, every16, true, "A 0-44 0-4; B 44-60 0-4; C 0-60 4-52; D 0-44 52-100; E 44-120 52-100", 172, "44, 28 and 12 before the wall at 60, which trims what would go on to 92 and 120"},
		{"aslant", []float64{0, 0, 120, 0, 120, 100, 20, 100}, 3, every16, false, "A 19 3/16-48 0-4; B 48-120 0-4; C 9 5/8-96 4-52; D 96-120 4-52; E 0-48 52-100; F 48-120 52-100", 0, "as if not told; trimmed at the slanted wall: 19.2 and 9.6 in"},
		{"a sheet long and wide", []float64{0, 0, 96, 0, 96, 48, 0, 48}, 3, every16, true, "A 0-96 0-48", 0, "one sheet"},
	} {
		h := ruletest.New(t)
		moved := make([]float64, len(tt.corners))
		for i, c := range tt.corners {
			moved[i] = c + []float64{300, 200}[i%2]
		}
		r := h.Room(plan.UseBedroom, moved...)
		r.Room.Joists = tt.joists
		r.Room.Joists.Along = r.Sides[tt.along].ID
		light := r.Opening("ceiling-light", r.Ceiling(330, 220))
		v := view(t, h, r.Room.ID)
		l := ceiling(v.Room, v.Ceiling, Long8)
		if got := pieces(l); got != tt.want || l.AcrossJoists != tt.told {
			t.Errorf("%s: %s, across joists %v; want %s (%s)", tt.name, got, l.AcrossJoists, tt.want, tt.source)
		}
		if tt.seams > 0 && l.Joints != ruletest.In(tt.seams) {
			t.Errorf("%s: joints of %v, want %v in", tt.name, l.Joints.Inches(16), tt.seams)
		}
		low := ruletest.In(tt.corners[len(tt.corners)-1] - 20) // the light is 30 from the left and 20 from the upper end
		if whole := l.Holes[0]; whole.Opening.ID != light.ID || !whole.OnJoint && ((whole.Left+whole.Right)/2 != ruletest.In(30) || (whole.Bottom+whole.Top)/2 != low) {
			t.Errorf("%s: cut at %+v", tt.name, whole.Rect)
		}
		length := unit.Length(0)
		for _, b := range l.Sheets.Boards {
			for _, p := range b.Pieces {
				length += p.Length
			}
		}
		if n := len(l.Pieces); n == 1 && length != Long8 || l.Sheets.Stock.Board != Long8 {
			t.Errorf("%s: %v is cut of %+v", tt.name, length, l.Sheets.Stock)
		}
	}
}

// A hole is cut in board for what is new and goes in before it: a box, or a housing of its own.
func TestWhatIsCutOutOverhead(t *testing.T) {
	for _, tt := range []struct {
		name, kind, code string
		change           func(*plan.Room, *plan.Opening)
		want             bool
	}{
		{"a light", "ceiling-light", "RD1", nil, true},
		{"a housing", "recessed", "", nil, true},
		{"no box chosen", "ceiling-light", "", nil, false},
		{"old work", "ceiling-light", "OW4", nil, false},
		{"on the surface", "ceiling-light", "WP2", nil, false},
		{"on a brace", "fan-light", "FN3", nil, true},
		{"one that is there", "ceiling-light", "RD1", func(_ *plan.Room, o *plan.Opening) { o.Status = plan.StatusExisting }, false},
		{"one that goes", "ceiling-light", "RD1", func(_ *plan.Room, o *plan.Opening) { o.Status = plan.StatusRemove }, false},
		{"a ceiling that stays", "ceiling-light", "RD1", func(r *plan.Room, _ *plan.Opening) { r.Overhead = plan.ConditionClosed }, false},
		{"one that is opened", "ceiling-light", "RD1", func(r *plan.Room, _ *plan.Opening) { r.Overhead = plan.ConditionOpened }, true},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 120, 100)
		r.Opening(tt.kind, r.Ceiling(60, 50), func(o *plan.Opening) {
			o.Assembly = plan.Assembly{Code: tt.code}
			if tt.change != nil {
				tt.change(r.Room, o)
			}
		})
		v := view(t, h, r.Room.ID)
		if l, ok := LayCeiling(&v); ok != tt.want || ok && l.Count() != 1 {
			t.Errorf("%s: %v, %d cut-outs; want %v", tt.name, ok, l.Count(), tt.want)
		}
	}
}
