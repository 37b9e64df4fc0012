package remodel

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// WingRoom looks for old-work boxes too near to a stud for what holds them.
var WingRoom = rule.Rule{
	ID:    "wing-room",
	Title: words.New("rule.wing-room.title", "Old-work boxes clear of studs"),
	Doc:   words.New("rule.wing-room.doc", `An old-work box wants clear room at either side, up to the studs, for its wings to turn and its ears to bear on sound finish (common practice). How much is from memory, to be read off the box. Studs stand where they were taped or said, else where the spacing puts them. Not checked: boxes in the place of a stud, which are told for that, boxes that are there already, and walls of which nobody tells the studs.`),
	Side:  checkWings,
}

func checkWings(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		s, room, cramped := w.Cramped(b)
		if b.IsThere() || !cramped || w.IsInBreak(b) {
			continue
		}
		f := rule.OnBox(b.Opening, rule.Warn)
		f.ByPractice = true
		f.Measured, f.Limit = rule.LengthOf(room), rule.LengthOf(b.Box.Fit.Wings)
		f.Message = words.New("rule.wing-room.near", "{0}: a stud leaves {1} beside the box for its wings", b.Opening.Tag, words.Height(room))
		f.Why = words.New("rule.wing-room.why", "They want {0} clear (from memory, read it off the box).", words.Height(b.Box.Fit.Wings))
		if s.State == plan.StudAssumed {
			f.Why = words.New("rule.wing-room.assumed.why", "They want {0} clear (from memory, read it off the box). The place of the stud is assumed: find it first.", words.Height(b.Box.Fit.Wings))
		}
		f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
		found = append(found, f)
	}
	return found
}
