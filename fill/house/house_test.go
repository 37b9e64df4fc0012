package house_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/fill/house"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// told lists the ways from a room: through what, along which of its sides, from where to where
// in the plan in inches, and to which room.
func told(h *ruletest.House, from *ruletest.Room) (all []string) {
	p := h.Made()
	for _, d := range house.Of(index.New(p), p.Levels[0]).From(from.Room) {
		through, to := "open", "nowhere"
		if d.Break != nil {
			through = string(d.Break.Kind)
		}
		if d.To != nil {
			to = d.To.Name
		}
		text := fmt.Sprintf("%s %d %s to %s", through, d.Side.At, ends(d.Line), to)
		if d.Behind != nil {
			text += fmt.Sprintf("/%d", d.To.SideAt(d.Behind.ID))
		}
		if d.From != from.Room || d.Break != nil && d.Cut.Break != d.Break || d.Break == nil && d.Cut.Break != nil {
			text += ", of another"
		}
		all = append(all, text)
	}
	return all
}

func ends(s geom.Segment) string {
	text := fmt.Sprintf("%s,%s-%s,%s", s.A.X.Inches(16), s.A.Y.Inches(16), s.B.X.Inches(16), s.B.Y.Inches(16))
	return strings.ReplaceAll(strings.ReplaceAll(text, `"`, ""), "−", "-")
}

// TestWays: one walks through doors, sliders and cased openings to the floor, to the room that
// lies behind the middle of each, and from one open side to another across no more than a thick
// wall, where more than a foot of them lie side by side. The left room is 120 in square, the
// right ones begin 4 in past it.
func TestWays(t *testing.T) {
	type rooms struct{ left, right, below *ruletest.Room }
	for _, tt := range []struct {
		name        string
		make        func(r rooms)
		left, right []string
		fromBelow   []string
	}{
		{name: "a door", make: func(r rooms) { r.left.Break(plan.BreakDoor, 1, 20, 30) },
			left: []string{"door 1 120,20-120,50 to den/3"}, right: []string{"door 3 124,50-124,20 to hall/1"}},
		{name: "one that is the other's", make: func(r rooms) { r.right.Break(plan.BreakDoor, 3, 8, 30) },
			left: []string{"door 1 120,20-120,50 to den/3"}, right: []string{"door 3 124,50-124,20 to hall/1"}},
		{name: "a slider and a cased opening", make: func(r rooms) {
			r.left.Break(plan.BreakSlider, 1, 5, 30)
			r.left.Break(plan.BreakPassage, 1, 40, 10)
		}, left: []string{"slider 1 120,5-120,35 to den/3", "passage 1 120,40-120,50 to den/3"}, right: []string{"passage 3 124,50-124,40 to hall/1", "slider 3 124,35-124,5 to hall/1"}},
		{name: "a window, a fireplace and a hatch", make: func(r rooms) {
			r.left.Break(plan.BreakWindow, 1, 5, 10)
			r.left.Break(plan.BreakFireplace, 1, 20, 10)
			r.left.Break(plan.BreakPassage, 1, 40, 10, func(b *plan.Break) { b.Sill = 1 })
		}},
		{name: "a window to the floor beside a door", make: func(r rooms) {
			r.left.Break(plan.BreakWindow, 1, 5, 10, func(b *plan.Break) { b.Sill = 0 })
			r.left.Break(plan.BreakDoor, 1, 20, 30)
		}, left: []string{"door 1 120,20-120,50 to den/3"}, right: []string{"door 3 124,50-124,20 to hall/1"}},
		{name: "a door to where nothing is drawn", make: func(r rooms) { r.left.Break(plan.BreakDoor, 3, 20, 30) },
			left: []string{"door 3 0,100-0,70 to nowhere"}},
		{name: "a door whose middle is just before the den", make: func(r rooms) { r.left.Break(plan.BreakDoor, 1, 43, 30) },
			left: []string{"door 1 120,43-120,73 to den/3"}, right: []string{"door 3 124,58-124,43 to hall/1"}, fromBelow: []string{"door 3 124,73-124,62 to hall/1"}},
		{name: "a sixteenth on, it is before neither", make: func(r rooms) { r.left.Break(plan.BreakDoor, 1, 43.0625, 30) },
			left: []string{"door 1 120,43-1/16-120,73-1/16 to nowhere"}, right: []string{"door 3 124,58-124,43-1/16 to hall/1"}, fromBelow: []string{"door 3 124,73-1/16-124,62 to hall/1"}},
		{name: "just before the next", make: func(r rooms) { r.left.Break(plan.BreakDoor, 1, 47, 30) },
			left: []string{"door 1 120,47-120,77 to bath/3"}, right: []string{"door 3 124,58-124,47 to hall/1"}, fromBelow: []string{"door 3 124,77-124,62 to hall/1"}},
		{name: "open sides", make: func(r rooms) { r.left.Sides[1].Kind, r.right.Sides[3].Kind = plan.SideOpen, plan.SideOpen },
			left: []string{"open 1 120,0-120,58 to den"}, right: []string{"open 3 124,58-124,0 to hall"}},
		{name: "one that is open alone", make: func(r rooms) { r.left.Sides[1].Kind = plan.SideOpen }},
		{name: "the other alone", make: func(r rooms) { r.right.Sides[3].Kind = plan.SideOpen }},
		{name: "open to two rooms", make: func(r rooms) {
			for _, s := range []*plan.Side{r.left.Sides[1], r.right.Sides[3], r.below.Sides[3]} {
				s.Kind = plan.SideOpen
			}
		}, left: []string{"open 1 120,0-120,58 to den", "open 1 120,62-120,120 to bath"}, right: []string{"open 3 124,58-124,0 to hall"}, fromBelow: []string{"open 3 124,120-124,62 to hall"}},
	} {
		h := ruletest.New(t)
		r := rooms{h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseDen, 124, 0, 100, 58), h.Square(plan.UseBath, 124, 62, 100, 58)}
		tt.make(r)
		for _, from := range []struct {
			room *ruletest.Room
			want []string
		}{{r.left, tt.left}, {r.right, tt.right}, {r.below, tt.fromBelow}} {
			got := told(h, from.room)
			slices.Sort(got)
			slices.Sort(from.want)
			if !slices.Equal(got, from.want) {
				t.Errorf("%s: from %s %q, want %q", tt.name, from.room.Name, got, from.want)
			}
		}
	}
}

// TestLimitsOfOpenSides: two lie as far apart as a thick wall is deep and no farther, and more
// than a foot of them side by side. Two of one room are no way.
func TestLimitsOfOpenSides(t *testing.T) {
	for _, tt := range []struct {
		name string
		off  unit.Length // from the left room
		down unit.Length
		want int
	}{
		{"at one line", 0, 0, 1}, {"as far as a thick wall", house.Apart, 0, 1}, {"a hair farther", house.Apart + 1, 0, 0},
		{"a hair lapped", -1, 0, 1}, {"a foot side by side", 0, 108 * unit.Inch, 0}, {"a hair more", 0, 108*unit.Inch - 1, 1},
		{"from above", 0, -108*unit.Inch + 1, 1}, {"a foot from above", 0, -108 * unit.Inch, 0},
	} {
		h := ruletest.New(t)
		left, right := h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseDen, 120, 0, 120, 120)
		left.Sides[1].Kind, right.Sides[3].Kind = plan.SideOpen, plan.SideOpen
		for _, s := range right.Sides {
			s.Start = s.Start.Add(geom.Point{X: tt.off, Y: tt.down})
		}
		if got := len(told(h, left)); got != tt.want {
			t.Errorf("%s: %d ways, want %d", tt.name, got, tt.want)
		}
		if got := len(told(h, right)); got != tt.want {
			t.Errorf("%s: %d ways back, want %d", tt.name, got, tt.want)
		}
	}
	h := ruletest.New(t)
	notch := h.Room(plan.UseHall, 0, 0, 60, 0, 60, 80, 64, 80, 64, 0, 120, 0, 120, 120, 0, 120)
	notch.Sides[1].Kind, notch.Sides[3].Kind = plan.SideOpen, plan.SideOpen
	if got := told(h, notch); got != nil {
		t.Errorf("from a room to itself: %q", got)
	}
}

// TestStairs: deeper than wide they lead to their back, else to their right; up to the level
// they say, else to the next one up; there to the room over their middle, else over their head,
// else a foot past it.
func TestStairs(t *testing.T) {
	type box struct{ x, y, w, d float64 }
	all := box{0, 0, 240, 240}
	for _, tt := range []struct {
		name        string
		w, d        float64 // about (120, 120)
		upper, more box     // rooms of the level above, the second one is named closet
		foot, head  string
		to          string
	}{
		{"to the back", 36, 100, all, box{}, "102,170-138,170", "102,70-138,70", "hall"},
		{"to the right", 100, 36, all, box{}, "70,102-70,138", "170,102-170,138", "hall"},
		{"as wide as deep", 60, 60, all, box{}, "90,90-90,150", "150,90-150,150", "hall"},
		{"a room at the head alone", 36, 100, box{0, 0, 240, 75}, box{}, "102,170-138,170", "102,70-138,70", "hall"},
		{"one a foot past the head", 36, 100, box{0, 0, 240, 59}, box{}, "102,170-138,170", "102,70-138,70", "hall"},
		{"one farther on", 36, 100, box{0, 0, 240, 57}, box{}, "", "", ""},
		{"to the right, a foot past the head", 100, 36, box{181, 0, 60, 240}, box{}, "70,102-70,138", "170,102-170,138", "hall"},
		{"to the right, farther on", 100, 36, box{183, 0, 60, 240}, box{}, "", "", ""},
		{"one beside the head", 36, 100, box{121, 0, 60, 57}, box{}, "", "", ""},
		{"one at the foot alone", 36, 100, box{0, 160, 240, 60}, box{}, "", "", ""},
		{"one over the middle before one at the head", 36, 100, box{0, 0, 240, 75}, box{0, 100, 240, 100}, "102,170-138,170", "102,70-138,70", "closet"},
		{"one at the head before one past it", 36, 100, box{0, 0, 240, 60}, box{0, 62, 240, 20}, "102,170-138,170", "102,70-138,70", "closet"},
	} {
		h := ruletest.New(t)
		lower := h.Square(plan.UseLiving, 0, 0, 240, 240)
		lower.Stand(plan.FixtureStairs, plan.OnFloor(lower.Room.ID, geom.Point{X: ruletest.In(120), Y: ruletest.In(120)}), tt.w, tt.d)
		lower.Stand(plan.FixtureIsland, plan.OnFloor(lower.Room.ID, geom.Point{X: ruletest.In(30), Y: ruletest.In(30)}), 30, 20)
		up := h.Level("Upper")
		add := func(use plan.Use, b box) {
			if b.w > 0 {
				h.RoomOn(up, use, b.x, b.y, b.x+b.w, b.y, b.x+b.w, b.y+b.d, b.x, b.y+b.d)
			}
		}
		add(plan.UseHall, tt.upper)
		add(plan.UseCloset, tt.more)
		p := h.Made()
		found := house.StairsFrom(index.New(p), p.Levels[0])
		if tt.to == "" {
			if len(found) != 0 {
				t.Errorf("%s: %d lead to %s", tt.name, len(found), found[0].To.Name)
			}
			continue
		}
		if len(found) != 1 {
			t.Errorf("%s: %d lead up", tt.name, len(found))
			continue
		}
		s := found[0]
		if got := []string{ends(s.Foot), ends(s.Head), s.To.Name, s.From.Name, s.Upper.Name, string(s.Fixture.Kind)}; !slices.Equal(got, []string{tt.foot, tt.head, tt.to, "living", "Upper", "stairs"}) {
			t.Errorf("%s: %q, want from %s to %s, to %s", tt.name, got, tt.foot, tt.head, tt.to)
		}
		if back := house.StairsFrom(index.New(p), p.Levels[1]); len(back) != 0 {
			t.Errorf("%s: %d lead on", tt.name, len(back))
		}
	}
}

// TestWhereStairsLead: to the level they say, else to the next up, by what is highest, not by
// the order of levels; nowhere from the top.
func TestWhereStairsLead(t *testing.T) {
	for _, tt := range []struct {
		at, says string
		want     string
	}{
		{"Ground", "", "Upper"}, {"Cellar", "", "Ground"}, {"Upper", "", "Attic"}, {"Attic", "", ""},
		{"Ground", "Attic", "Attic"}, {"Ground", "Cellar", "Cellar"}, {"Attic", "Ground", "Ground"},
	} {
		h := ruletest.New(t)
		h.Plan.Levels[0].Name = "Ground"
		at := map[string]int{"Ground": 0}
		for _, l := range []struct {
			name string
			feet unit.Length
		}{{"Attic", 18}, {"Upper", 9}, {"Cellar", -9}} {
			n := h.Level(l.name)
			h.Plan.Levels[n].Elevation, at[l.name] = l.feet*unit.Foot, n
		}
		for _, n := range at {
			h.RoomOn(n, plan.UseHall, 0, 0, 240, 0, 240, 240, 0, 240)
		}
		for _, r := range h.Rooms() {
			p := h.Made()
			if _, on := p.Find(r.Room.ID); on.Name != tt.at {
				continue
			}
			f := r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(120), Y: ruletest.In(120)}), 36, 100)
			if tt.says != "" {
				f.Leads = h.Plan.Levels[at[tt.says]].ID
			}
		}
		p, got := h.Made(), ""
		for _, s := range house.StairsFrom(index.New(p), p.Levels[at[tt.at]]) {
			got += s.Upper.Name
		}
		if got != tt.want {
			t.Errorf("from %s, said to lead to %q: to %q, want %q", tt.at, tt.says, got, tt.want)
		}
	}
}
