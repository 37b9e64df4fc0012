package frame

import "studbay/plan/unit"

// Fit is how a box that is built into a wall fits into its depth.
type Fit struct {
	Framing unit.Length // 0 where nobody tells it
	Own     unit.Length // what the box takes behind the face of the studs
	Other   *Placed     // the box of the other face that it meets, the deepest; nil: none
	Block   *Block      // the lumber behind it, where it hangs on some
}

// FitOf returns how a box fits. It reports false of one that is not built into the wall or
// whose depth nobody tells.
func (w *Wall) FitOf(p Placed) (f Fit, ok bool) {
	if !p.IsBuiltIn() || p.Body.Depth <= 0 {
		return f, false
	}
	f = Fit{Framing: w.FramingAt(p.Centre()), Own: p.InFraming(), Block: w.HoldOn(p.Opening, w.Room).Block}
	for i, o := range w.Behind {
		if o.IsBuiltIn() && p.Meets(o.Rect) && (f.Other == nil || o.InFraming() > f.Other.InFraming()) {
			f.Other = &w.Behind[i]
		}
	}
	return f, true
}

// Remaining returns what of the framing's depth is left behind the box, less what a box of
// the other face or else a block behind it takes: below zero it does not fit by so much. It
// reports false where nobody tells how deep the framing is.
func (f Fit) Remaining() (unit.Length, bool) {
	bodies := []unit.Length{f.Own}
	switch {
	case f.Other != nil:
		bodies = append(bodies, f.Other.InFraming())
	case f.Block != nil:
		bodies = append(bodies, f.Block.Deep())
	}
	return Spare(f.Framing, bodies...), f.Framing > 0
}

// Deep returns how much of the framing's depth the block takes.
func (b *Block) Deep() unit.Length {
	if b.Flat {
		return FlatDeep
	}
	return EdgeDeep
}
