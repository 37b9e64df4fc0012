package box

import (
	"testing"

	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"

	"pgregory.net/rapid"
)

var sizes = []unit.AWG{18, 16, 14, 12, 10, 8, 6}

func items(but ...Word) *rapid.Generator[Item] {
	return rapid.Custom(func(t *rapid.T) Item {
		f := rapid.SampledFrom(notations).Filter(func(f struct {
			word     Word
			notation notation
		}) bool {
			for _, w := range but {
				if f.word == w {
					return false
				}
			}
			return true
		}).Draw(t, "word")
		item := Item{What: f.word}
		switch f.notation {
		case asNone:
			return item
		case asFitting:
			item.Type = rapid.SampledFrom([]string{Stud, Hickey}).Draw(t, "type")
			return item
		case asSpace:
			item.Volume = unit.Volume(rapid.Int64Range(0, 600_000).Draw(t, "volume"))
			return item
		case asCable:
			item.Wires = rapid.IntRange(1, 5).Draw(t, "wires")
		case asDevice:
			item.Gangs = rapid.IntRange(0, 3).Draw(t, "gangs")
		}
		item.Size = rapid.SampledFrom(sizes).Draw(t, "size")
		item.Times = rapid.IntRange(1, 6).Draw(t, "times")
		return item
	})
}

func drawFigures(t *rapid.T) *code.Figures {
	fig, err := code.Edition(rapid.SampledFrom(code.Whole()).Draw(t, "edition"))
	if err != nil {
		t.Fatal(err)
	}
	return fig
}

func sum(t *rapid.T, fig *code.Figures, c Contents) (all unit.Volume) {
	lines, _, err := Need(fig, c)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range lines {
		if l.Volume != l.Allowance*unit.Volume(l.Count) || l.Volume < 0 {
			t.Fatalf("%v: %d × %s is not %s", l.What, l.Count, l.Allowance, l.Volume)
		}
		all += l.Volume
	}
	return all
}

// A canopy is left out: it alone takes allowances away.
func TestAddingNeverLowersTheNeed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fig := drawFigures(t)
		c := Contents(rapid.SliceOfN(items(), 0, 8).Draw(t, "contents"))
		more := append(c[:len(c):len(c)], items(Canopy).Draw(t, "more"))
		if before, after := sum(t, fig, c), sum(t, fig, more); after < before {
			t.Fatalf("%s needs %s, but %s only %s", c, before, more, after)
		}
	})
}

func TestOrderDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fig := drawFigures(t)
		c := rapid.SliceOfN(items(), 0, 8).Draw(t, "contents")
		other := rapid.Permutation(c).Draw(t, "other order")
		if a, b := sum(t, fig, c), sum(t, fig, other); a != b {
			t.Fatalf("%s needs %s, %s needs %s", Contents(c), a, Contents(other), b)
		}
	})
}

func TestResultAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fig := drawFigures(t)
		c := Contents(rapid.SliceOfN(items(BeginsSpace), 0, 8).Draw(t, "contents"))
		s := Space{Barriers: rapid.SliceOfN(rapid.SampledFrom([]Barrier{Metal, Nonmetallic}), 0, 2).Draw(t, "barriers")}
		for _, v := range rapid.SliceOfN(rapid.Int64Range(1, 600_000), 1, 3).Draw(t, "volumes") {
			s.Parts = append(s.Parts, Part{What: words.New("test.part", "part"), Volume: unit.Volume(v)})
		}
		s.Share.Of = len(s.Barriers) + 1
		r, err := Fill(fig, s, c)
		if err != nil {
			t.Fatal(err)
		}
		var volume unit.Volume
		for _, l := range r.VolumeLines {
			volume += l.Volume
		}
		if r.Volume != volume || r.Required != sum(t, fig, c) || r.Spare != volume-r.Required || r.Fits != (volume >= r.Required) {
			t.Fatalf("%+v does not add up", r)
		}
		var lines unit.Volume
		for _, l := range r.Lines {
			lines += l.Volume
		}
		if need, ok := Sum(fig, c); !ok || need != lines || Fits(fig, s, c) != r.Fits {
			t.Fatalf("the lines of %s add up to %s, its sum is %s, and whether it fits: %v, not %v", c, lines, need, r.Fits, Fits(fig, s, c))
		}
	})
}

func TestContentsReadBackAsWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Contents(rapid.SliceOfN(items(), 0, 8).Draw(t, "contents"))
		back, err := ParseContents(c.String())
		if err != nil || back.String() != c.String() {
			t.Fatalf("%q reads back as %q, %v", c, back, err)
		}
		fig := drawFigures(t)
		if sum(t, fig, c) != sum(t, fig, back) {
			t.Fatalf("%q reads back as another need", c)
		}
	})
}
