package box

import (
	"slices"

	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// counting adds up checked contents, line by line: every size in it has an allowance.
type counting struct {
	fig *code.Figures
	in  Contents
	sum unit.Volume // of all lines
	// isSum tells that the sum alone is asked for, and no line or note is written down.
	isSum bool
	lines []Line
	notes []words.Text
}

// usualLines is how many lines the sum of an ordinary box has at most.
const usualLines = 4

// count adds up what contents need of any box.
func (t *counting) count(fig *code.Figures, c Contents) error {
	if !fig.IsConfirmed("conductor") {
		return &words.Error{Text: fig.NotConfirmed()}
	}
	t.fig, t.in = fig, c.Present()
	for _, item := range t.in {
		if err := item.check(fig); err != nil {
			return err
		}
	}
	t.conductors()
	t.fixtureWires()
	t.clamps()
	t.fittings()
	t.devices()
	t.grounds()
	t.terminalBlocks()
	return nil
}

func (t *counting) allowance(size unit.AWG) unit.Volume {
	v, _ := t.fig.Fill.Allowance(size)
	return v
}

// add puts down a line of so many allowances. Figure names the section.
func (t *counting) add(figure string, count int64, allowance unit.Volume, what func() words.Text) {
	volume := allowance * unit.Volume(count)
	t.sum += volume
	if !t.isSum {
		t.lines = append(t.lines, Line{t.fig.Section(figure), what(), count, allowance, volume})
	}
}

func (t *counting) note(what func() words.Text) {
	if !t.isSum {
		t.notes = append(t.notes, what())
	}
}

// eachSize adds up, size by size from the largest, what of counts for the items, and hands
// on each sum above zero. Of counts only items that have a size.
func (t *counting) eachSize(of func(Item) int64, do func(size unit.AWG, n int64)) {
	table := t.fig.Fill.Allowances
	for at := len(table) - 1; at >= 0; at-- {
		var n int64
		for _, item := range t.in {
			if item.Size == table[at].Size {
				n += of(item)
			}
		}
		if n > 0 {
			do(table[at].Size, n)
		}
	}
}

// timesOf counts the items of one word.
func timesOf(w Word) func(Item) int64 {
	return func(i Item) int64 {
		if i.What != w {
			return 0
		}
		return i.times()
	}
}

// conductors puts down each conductor at its own size, 314.16(B)(1).
func (t *counting) conductors() {
	t.eachSize(func(i Item) int64 {
		if i.What == Cable {
			return i.times() * int64(i.Wires)
		}
		return timesOf(Conductor)(i)
	}, func(size unit.AWG, n int64) {
		t.add("conductor", n, t.allowance(size), func() words.Text {
			return words.New("fill.line.conductor", "{0} AWG conductors that end or are spliced here", size)
		})
	})
	t.eachSize(timesOf(Through), func(size unit.AWG, n int64) {
		t.add("conductor", n, t.allowance(size), func() words.Text {
			return words.New("fill.line.through", "{0} AWG conductors that pass unbroken", size)
		})
	})
	each := t.fig.Fill.LoopAllowances
	t.eachSize(timesOf(Loop), func(size unit.AWG, n int64) {
		t.add("loop-allowances", n*each, t.allowance(size), func() words.Text {
			return words.New("fill.line.loop", "{0} AWG unbroken loops, {1} allowances each", size, int(each))
		})
	})
}

// fixtureWires puts down a luminaire's wires; a canopy frees a few small ones.
func (t *counting) fixtureWires() {
	fill, free := t.fig.Fill, false
	var small int64
	for _, i := range t.in {
		if i.What == FixtureWire && fill.CanopyWireUnder.Larger(i.Size) {
			small += i.times()
		}
	}
	if t.in.has(Canopy) && small > 0 {
		free = small <= fill.CanopyWires
		t.noteCanopy(small, free)
	}
	t.eachSize(timesOf(FixtureWire), func(size unit.AWG, n int64) {
		if free && fill.CanopyWireUnder.Larger(size) {
			t.add("canopy-wires", n, 0, func() words.Text {
				return words.New("fill.line.canopy-wire", "{0} AWG fixture wires from the canopy, no allowance", size)
			})
			return
		}
		t.add("conductor", n, t.allowance(size), func() words.Text {
			return words.New("fill.line.fixture-wire", "{0} AWG fixture wires", size)
		})
	})
}

func (t *counting) noteCanopy(small int64, free bool) {
	fill := t.fig.Fill
	if free {
		t.note(func() words.Text {
			return words.New("fill.note.canopy", "Up to {0} fixture wires under {1} AWG, and the luminaire's own grounding conductor, take no allowance where they come from a domed canopy and end here.",
				int(fill.CanopyWires), fill.CanopyWireUnder)
		})
		return
	}
	t.note(func() words.Text {
		return words.New("fill.note.canopy-over", "{0} fixture wires under {1} AWG are more than the {2} a canopy frees; whether the first {2} stay free is argued, so all are counted.",
			int(small), fill.CanopyWireUnder, int(fill.CanopyWires))
	})
}

// clamps puts down one allowance for all internal clamps, 314.16(B)(2).
func (t *counting) clamps() {
	if t.in.has(Clamps) {
		t.once("clamps", func() words.Text { return words.New("fill.what.clamps", "all internal clamps") })
	}
}

// fittings puts down one allowance for each type, 314.16(B)(3).
func (t *counting) fittings() {
	isIn := func(of string) bool {
		return slices.ContainsFunc(t.in, func(i Item) bool { return i.What == Fitting && i.Type == of })
	}
	if isIn(Stud) {
		t.once("fitting", func() words.Text { return words.New("fill.what.stud", "luminaire stud") })
	}
	if isIn(Hickey) {
		t.once("fitting", func() words.Text { return words.New("fill.what.hickey", "hickey") })
	}
}

// once puts down one allowance at the largest conductor in the box, whatever that one
// is there for. Grounding conductors are among them.
func (t *counting) once(figure string, what func() words.Text) {
	size, found := t.in.largest(Item.sized)
	if !found {
		t.add(figure, 1, 0, func() words.Text {
			return words.New("fill.line.unsized", "{0}: no conductor here to size it by", what())
		})
		return
	}
	t.add(figure, 1, t.allowance(size), func() words.Text {
		return words.New("fill.line.once", "{0}, at the largest conductor here, {1} AWG", what(), size)
	})
}

// devices puts down two allowances a yoke, or for each gang of a wide one, at the
// largest conductor connected to that yoke, 314.16(B)(4).
func (t *counting) devices() {
	each := t.fig.Fill.DeviceAllowances
	t.eachSize(func(i Item) int64 {
		if i.gangs() > 1 {
			return 0
		}
		return timesOf(Device)(i)
	}, func(size unit.AWG, n int64) {
		t.add("device-allowances", n*each, t.allowance(size), func() words.Text {
			return words.New("fill.line.device", "yokes wired with {0} AWG, {1} allowances each", size, int(each))
		})
	})
	t.eachSize(func(i Item) int64 {
		if i.gangs() == 1 {
			return 0
		}
		return timesOf(Device)(i) * i.gangs()
	}, func(size unit.AWG, n int64) {
		t.add("device-allowances", n*each, t.allowance(size), func() words.Text {
			return words.New("fill.line.device-wide", "wide devices wired with {0} AWG, {1} allowances per gang", size, int(each))
		})
	})
}

// terminalBlocks puts down an allowance for each assembly at the largest conductor that
// ends on it, 314.16(B)(6), or a line of nothing in an edition without the rule.
func (t *counting) terminalBlocks() {
	each := t.fig.Fill.TerminalBlock
	t.eachSize(timesOf(TerminalBlock), func(size unit.AWG, n int64) {
		if each == 0 {
			t.add("terminal-block", n, 0, func() words.Text {
				return words.New("fill.line.terminal-block-free", "terminal blocks wired with {0} AWG, no allowance in this edition", size)
			})
			return
		}
		t.add("terminal-block", n*each, t.allowance(size), func() words.Text {
			return words.New("fill.line.terminal-block", "terminal blocks wired with {0} AWG", size)
		})
	})
	if each == 0 && t.in.has(TerminalBlock) {
		t.note(func() words.Text {
			return words.New("fill.note.terminal-block", "Edition {0} asks no allowance for a terminal block; the 2023 edition does.", t.fig.Edition)
		})
	}
}
