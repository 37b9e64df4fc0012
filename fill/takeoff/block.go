package takeoff

import (
	"studbay/fill/frame"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// blocksOf lists the lengths of the blocks that hold the box of an opening: the one it is
// screwed to, or the one at the far side of a wide box.
func (t *Taker) blocksOf(v index.OpeningView) []unit.Length {
	if v.Side == nil {
		return overhead(v)
	}
	f, ok := t.framed[v.Side.ID]
	if !ok {
		face, _ := frame.FaceOf(t.ix, v.Side.ID)
		f = face.Framed()
		t.framed[v.Side.ID] = f
	}
	switch h := f.HoldOn(v.Opening, v.Room); {
	case h.Block != nil:
		return []unit.Length{h.Block.Length}
	case h.FarSide > 0:
		return []unit.Length{h.FarSide}
	}
	return nil
}

// overhead returns the block between two joists of a ceiling, where those are told.
func overhead(v index.OpeningView) []unit.Length {
	if b := frame.HoldIn(v.Opening, v.Room).Block; b != nil {
		return []unit.Length{b.Length}
	}
	return nil
}
