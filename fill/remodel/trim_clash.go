package remodel

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan/words"
)

// TrimClash looks for plates that a baseboard or a rail along the wall leaves no room for.
var TrimClash = rule.Rule{
	ID:    "trim-clash",
	Title: words.New("rule.trim-clash.title", "Plates clear of baseboard and rails"),
	Doc:   words.New("rule.trim-clash.doc", `No plate lies over a baseboard, a chair rail or another trim along the wall (common practice: two things cannot be in one place). One that touches it passes, and so does one that lies on it whole. Sizes that are assumed are told as such. Boxes that are there already are not checked.`),
	Side:  checkTrim,
}

func checkTrim(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	for _, b := range v.Wall().Boxes {
		if b.IsThere() {
			continue
		}
		for _, t := range v.Side.Trim {
			plate := b.Plate()
			along := frame.Rect{Left: plate.Left, Right: plate.Right, Bottom: t.Bottom, Top: t.Bottom + t.Height}
			over := min(plate.Top, along.Top) - max(plate.Bottom, along.Bottom)
			if over <= 0 || along.Bottom <= plate.Bottom && plate.Top <= along.Top {
				continue
			}
			f := rule.OnBox(b.Opening, rule.Warn)
			f.ByPractice, f.Measured = true, rule.LengthOf(over)
			f.Message = words.New("rule.trim-clash.over", "{0}: its plate lies {1} over the {2}", b.Opening.Tag, words.Height(over), t.Name)
			f.Why = words.New("rule.trim-clash.why", "The plate goes from {0} to {1} above the floor, the {2} from {3} to {4}.",
				words.Height(plate.Bottom), words.Height(plate.Top), t.Name, words.Height(along.Bottom), words.Height(along.Top))
			if !t.Measured {
				f.Why = words.New("rule.trim-clash.why.assumed", "The plate goes from {0} to {1} above the floor, the {2} from {3} to {4}, which is assumed: measure it.",
					words.Height(plate.Bottom), words.Height(plate.Top), t.Name, words.Height(along.Bottom), words.Height(along.Top))
			}
			found = append(found, f)
		}
	}
	return found
}
