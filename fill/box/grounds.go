package box

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// grounds puts down the equipment grounding conductors, 314.16(B)(5): a few share one
// allowance at the largest of them, each beyond adds a share. An edition may count an
// isolated set by itself.
func (t *counting) grounds() {
	if !t.fig.Fill.IsolatedGroundsApart {
		t.groundSet(func() words.Text { return words.New("fill.what.grounds", "grounding conductors") }, Cable, Ground, IsolatedGround)
		return
	}
	t.groundSet(func() words.Text { return words.New("fill.what.grounds", "grounding conductors") }, Cable, Ground)
	t.groundSet(func() words.Text { return words.New("fill.what.isolated-grounds", "isolated grounding conductors") }, IsolatedGround)
}

func (t *counting) groundSet(what func() words.Text, of ...Word) {
	belongs := func(i Item) bool {
		for _, w := range of {
			if i.What == w {
				return true
			}
		}
		return false
	}
	size, found := t.in.largest(belongs)
	if !found {
		return
	}
	var n int64
	for _, i := range t.in {
		if belongs(i) {
			n += i.times()
		}
	}
	t.groundLines(what, size, n)
}

func (t *counting) groundLines(what func() words.Text, size unit.AWG, n int64) {
	fill, one := t.fig.Fill, t.allowance(size)
	if fill.GroundFurther == 0 || n <= fill.GroundsTogether {
		t.add("grounds-together", 1, one, func() words.Text {
			return words.New("fill.line.grounds", "{0}: {1} as one, at the largest, {2} AWG", what(), int(n), size)
		})
		return
	}
	t.add("grounds-together", 1, one, func() words.Text {
		return words.New("fill.line.grounds-first", "{0}: the first {1} as one, at the largest, {2} AWG",
			what(), int(fill.GroundsTogether), size)
	})
	beyond := n - fill.GroundsTogether
	t.add("ground-further", beyond, share(one, fill.GroundFurther), func() words.Text {
		return words.New("fill.line.grounds-further", "{0}: {1} more, each {2} % of that", what(), int(beyond), int(fill.GroundFurther))
	})
}

// share returns percent of v, rounded up where it is not whole: a quarter always is.
func share(v unit.Volume, percent int64) unit.Volume {
	return (v*unit.Volume(percent) + 99) / 100
}
