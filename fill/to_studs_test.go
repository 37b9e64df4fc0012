package fill_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/fill"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// Studs at 16 in: those beside the bay of 40 stand to 32-3/4 and from 47-1/4. A square of 4
// in goes to 34-3/4 or 45-1/4, by 5-1/4 either way; a nail-on of 2-5/16 at 43 to 46-3/32,
// which a tape has as 46-1/16 (half a sixteenth off the stud).
func TestToTheStuds(t *testing.T) {
	for _, tt := range []struct {
		name  string
		code  string
		along float64
		reach float64
		want  []string
	}{
		{"to the right", "PN1", 43, 6, []string{`A1 to the right by 3-1/16"`}},
		{"out of reach", "PN1", 43, 3, nil},
		{"just in reach", "PN1", 43, 3.0625, []string{`A1 to the right by 3-1/16"`}},
		{"1/16 out of reach", "PN1", 43, 3, nil},
		{"the left one of two as near", "SQ1", 40, 6, []string{`A1 to the left by 5-1/4"`}},
		{"out of a stud", "SQ1", 47, 6, []string{`A1 to the left by 1-3/4"`}},
		{"held already", "SQ1", 45.25, 6, nil},
		{"an old-work box wants none", "OW1", 40, 6, nil},
		{"no box is chosen", "", 40, 6, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		o := h.Box(room.Sides[0], "duplex", tt.code, tt.along, 16, nil)
		made, err := fill.ToTheStuds(index.New(h.Plan), []plan.ID{o.ID}, walltest.In(tt.reach))
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, text := range made.Told() {
			got = append(got, h.Say(text))
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Do(made)
		if left := h.Found("needs-support"); len(made.Moves) > 0 && len(left) > 0 {
			t.Errorf("%s: still %v", tt.name, left)
		}
	}
}

// A move that would break a check is not made: a receptacle that serves 6 ft to either end
// of a wall of 12 ft serves them from its middle alone.
func TestToTheStudsKeepsEveryCheck(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
		for _, s := range r.Sides[1:] {
			s.Kind = plan.SideOpen
		}
		r.Sides[0].Studs.Spacing = walltest.In(24) // 72 is in a stud, from 71-1/4 to 72-3/4
	})
	o := h.Box(room.Sides[0], "duplex", "PN1", 72, 16, nil)
	made, err := fill.ToTheStuds(index.New(h.Plan), []plan.ID{o.ID}, walltest.In(12))
	if err != nil || len(made.Moves) > 0 {
		t.Errorf("%v, %v", made.Told(), err)
	}
}

// What is moved is one step: undone it is the plan before, and no check stops at or warns of
// more than it did.
func TestToTheStudsOnAnyHouse(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := plantest.House(rapid.Uint64Range(1, 99).Draw(rt, "house"), 20)
		var all []plan.ID
		for _, o := range p.Openings() {
			all = append(all, o.ID)
		}
		by := unit.Length(rapid.IntRange(1, 12).Draw(rt, "by")) * unit.Inch
		for _, id := range all { // pull them off their studs
			o, _ := p.Opening(id)
			to := o.At
			to.Along -= by
			if q, err := (edit.MoveOpening{ID: id, To: to}).Apply(p); err == nil {
				p = q
			}
		}
		before, err := fill.Check(index.New(p))
		if err != nil {
			rt.Fatal(err)
		}
		made, err := fill.ToTheStuds(index.New(p), all, 8*unit.Inch)
		if err != nil {
			rt.Fatal(err)
		}
		next, err := made.Apply(p)
		if err != nil {
			rt.Fatal(err)
		}
		after, err := fill.Check(index.New(next))
		if err != nil {
			rt.Fatal(err)
		}
		if was, now := before.Tally(), after.Tally(); now.Stop > was.Stop || now.Warn > was.Warn {
			rt.Errorf("%+v after %v, %+v before", now, made.Told(), was)
		}
		again, err := fill.ToTheStuds(index.New(next), all, 8*unit.Inch)
		if err != nil {
			rt.Fatal(err)
		}
		for _, m := range again.Moves {
			if slices.ContainsFunc(made.Moves, func(n edit.StudMove) bool { return n.ID == m.ID }) {
				rt.Errorf("%s is moved again", m.Tag)
			}
		}
	})
}
