package answers

import (
	"crypto/rand"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// A change says whereto in one word, which reads as it is written; what says it of no place
// stays a note.
func TestAPlaceIsReadAndWritten(t *testing.T) {
	face := plan.OnFace("s2k2m9q4a", 1828_800_000)
	ceiling := plan.OnCeiling("r2k2m9q4a", geom.Point{X: 2000 * unit.Millimetre, Y: -unit.Inch})
	for _, tt := range []struct {
		line   string
		to     *plan.Anchor
		height unit.Length
		note   string
	}{
		{"change o2k2m9q4a @s2k2m9q4a,1828.8,1066.8 Nearer to the bed", &face, 42 * unit.Inch, "Nearer to the bed"},
		{"change o2k2m9q4a @s2k2m9q4a,1828.8,1066.8", &face, 42 * unit.Inch, ""},
		{"change o2k2m9q4a @r2k2m9q4a,2000,-25.4 Over the table", &ceiling, 0, "Over the table"},
		{"change o2k2m9q4a @s2k2m9q4a,1828.8", nil, 0, "@s2k2m9q4a,1828.8"},
		{"change o2k2m9q4a @s2k2m9q4a,1828.8,x", nil, 0, "@s2k2m9q4a,1828.8,x"},
		{"change o2k2m9q4a @s2k2m9q4a,x,1", nil, 0, "@s2k2m9q4a,x,1"},
		{"change o2k2m9q4a @o3k2m9q4a,1,1", nil, 0, "@o3k2m9q4a,1,1"},
		{"change o2k2m9q4a s2k2m9q4a,1,1", nil, 0, "s2k2m9q4a,1,1"},
		{"question o2k2m9q4a @s2k2m9q4a,1,1", nil, 0, "@s2k2m9q4a,1,1"},
		{"change r2k2m9q4a @s2k2m9q4a,1,1", nil, 0, "@s2k2m9q4a,1,1"},
	} {
		a, err := Parse(first + "\n" + tt.line + "\nend\n")
		if err != nil || len(a.Given) != 1 {
			t.Fatalf("%s: it reads %+v, %v", tt.line, a, err)
		}
		g := a.Given[0]
		if (g.To == nil) != (tt.to == nil) || g.To != nil && *g.To != *tt.to || g.Height != tt.height || g.Note != tt.note {
			t.Errorf("%s: it reads %v, %v up, %q; want %v, %v, %q", tt.line, g.To, g.Height, g.Note, tt.to, tt.height, tt.note)
		}
		if text := a.Text(); !strings.Contains(text, "\n"+tt.line+"\n") {
			t.Errorf("%s: written again it is\n%s", tt.line, text)
		}
	}
	// A mail program broke the line before the place.
	if a, _ := Parse(first + "\nchange o2k2m9q4a\n@s2k2m9q4a,1828.8,1066.8\nNearer"); a.Given[0].To == nil || a.Given[0].Note != "Nearer" {
		t.Errorf("broken, it reads %+v", a.Given)
	}
}

// A place is taken in where the opening could be there, to the ends of its wall, and else the
// change alone.
func TestOnlyAPlaceOfThePlanIsTaken(t *testing.T) {
	p := plantest.House(1, 9)
	var o *plan.Opening
	for _, one := range p.Openings() {
		if one.At.Part == plan.PartFace {
			o = one
		}
	}
	side, _ := p.Side(o.At.Host)
	long, tall := p.FaceLength(o.At), side.Room.Ceiling
	inside := side.Room.Outline().LabelPoint()
	for _, tt := range []struct {
		name   string
		to     plan.Anchor
		height unit.Length
		want   bool
	}{
		{"its left end, at the floor", plan.OnFace(o.At.Host, 0), 0, true},
		{"its right end, at the ceiling", plan.OnFace(o.At.Host, long), tall, true},
		{"before its left end", plan.OnFace(o.At.Host, -1), 0, false},
		{"beyond its right end", plan.OnFace(o.At.Host, long+1), 0, false},
		{"below the floor", plan.OnFace(o.At.Host, 0), -1, false},
		{"above the ceiling", plan.OnFace(o.At.Host, 0), tall + 1, false},
		{"a wall that is not there", plan.OnFace("s2k2m9q4a", 0), 0, false},
		{"the ceiling, of what is on a wall", plan.OnCeiling(side.Room.ID, inside), 0, false},
	} {
		a := Answers{Given: []Given{{Kind: plan.WishChange, About: o.ID, To: &tt.to, Height: tt.height}}}
		take, _, err := a.Take(p, rand.Reader)
		if err != nil || len(take.Wishes) != 1 {
			t.Fatalf("%s: taken are %+v, %v", tt.name, take, err)
		}
		w := take.Wishes[0]
		if got := w.To != nil && *w.To == tt.to && w.ToHeight == tt.height; got != tt.want || !tt.want && (w.To != nil || w.ToHeight != 0) {
			t.Errorf("%s: taken is %v, %v up; want it taken: %v", tt.name, w.To, w.ToHeight, tt.want)
		}
	}
	light := *o
	light.At = plan.OnCeiling(side.Room.ID, inside)
	p, err := edit.Change{Thing: &light}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	for to, want := range map[plan.Anchor]bool{
		light.At: true,
		plan.OnCeiling(side.Room.ID, geom.Point{X: -unit.Metre * 1000}): false,
		plan.OnCeiling("r2k2m9q4a", inside):                             false,
	} {
		if got := (Given{Kind: plan.WishChange, About: o.ID, To: &to}).isIn(p); got != want {
			t.Errorf("at the ceiling at %+v: %v, want %v", to, got, want)
		}
	}
}
