package support

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan/words"
)

// NeedsSupport tells which boxes want lumber of their own.
var NeedsSupport = rule.Rule{
	ID:    "needs-support",
	Title: words.New("rule.needs-support.title", "Boxes held by a stud or a block"),
	Doc:   words.New("rule.needs-support.doc", `A nail-on or bracket box that touches no stud is screwed to a block of 2×4 between the studs, cut to the bay it is in and set back so far that the box comes out where it has to. A block laid flat takes {0} behind that; where the framing is not so deep it is told that none fits: the box wants an upright piece at a stud, or another place. A box of three gangs and more that touches one stud wants a block at its far side (common practice throughout). Told as notes, since a block is a part to cut and no fault. Not checked: boxes that are there already, walls of which nobody tells the studs, boxes in whose place a stud stands (told for that), floors, and ceilings, which are told by themselves.`, words.Height(frame.FlatDeep)),
	Side:  checkNeedsSupport,
}

func checkNeedsSupport(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		if b.IsThere() || !b.WantsStud() || w.IsInBreak(b) {
			continue
		}
		if _, by := w.StudIn(b); by > 0 {
			continue
		}
		h := w.HoldOn(b.Opening, v.Room)
		switch {
		case h.Block != nil:
			found = append(found, wantsBlock(w, b, h.Block, fig))
		case h.FarSide > 0:
			found = append(found, wantsFarSide(b, h))
		}
	}
	return found
}

func wantsBlock(w *frame.Wall, b frame.Placed, block *frame.Block, fig *code.Figures) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Note)
	f.Message = words.New("rule.needs-support.block", "{0} touches no stud: it wants a block of {1}, set back {2}", b.Opening.Tag, words.Height(block.Length), words.Height(block.SetBack))
	f.Why = words.New("rule.needs-support.block.why", "A 2×4 laid flat between the studs, from {0} to {1} above the finished floor.", words.Height(block.Bottom), words.Height(block.Top))
	if block.KnowsDepth && block.Over > 0 {
		needs := block.SetBack + frame.FlatDeep
		f.Measured, f.Limit = rule.LengthOf(needs), rule.LengthOf(needs-block.Over)
		f.Message = words.New("rule.needs-support.none", "{0} touches no stud, and no block fits behind it", b.Opening.Tag)
		f.Why = words.New("rule.needs-support.none.why", "Set back {0}, a flat block of {1} would need {2}; the framing is {3} deep. An upright piece at a stud would hold the box, or a place at one.",
			words.Height(block.SetBack), words.Height(frame.FlatDeep), words.Height(needs), words.Height(needs-block.Over))
	}
	f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
	return f
}

func wantsFarSide(b frame.Placed, h frame.Hold) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Note)
	f.Message = words.New("rule.needs-support.far", "{0}: its far side wants a block of {1}", b.Opening.Tag, words.Height(h.FarSide))
	f.Why = words.New("rule.needs-support.far.why", "It has {0} gangs and one stud; a wide box is held at both sides (common practice).", b.Opening.Gangs)
	return f
}
