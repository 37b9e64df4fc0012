package remodel

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// TrimClash looks for plates that a baseboard or a rail along the wall leaves no room for.
var TrimClash = rule.Rule{
	ID:    "trim-clash",
	Title: words.New("rule.trim-clash.title", "Plates clear of baseboard and rails"),
	Doc:   words.New("rule.trim-clash.doc", `No plate lies over a baseboard, a chair rail or another trim along the wall (common practice: two things cannot be in one place). One that touches it passes, and so does one that lies on it whole. Sizes that are assumed are told as such. Boxes that are there already are not checked.`),
	Side:  checkTrim,
}

func checkTrim(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	for _, b := range v.Wall().Boxes {
		if b.IsThere() {
			continue
		}
		for _, t := range v.Side.Trim {
			plate := b.Plate()
			along := frame.Rect{Left: plate.Left, Right: plate.Right, Bottom: t.Bottom, Top: t.Bottom + t.Height}
			over := min(plate.Top, along.Top) - max(plate.Bottom, along.Bottom)
			if over <= 0 || t.Holds(plate.Bottom, plate.Top) {
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
			f.Remedies = offTrim(v, b, along, fig.Units.Step())
			found = append(found, f)
		}
	}
	return found
}

// offTrim offers the heights above and below a trim at which the plate of a box is clear of
// it and of all else, in whole steps of a tape, the nearer one first.
func offTrim(v rule.SideView, b frame.Placed, trim frame.Rect, step unit.Length) (offers []rule.Remedy) {
	up := (trim.Top - b.Plate().Bottom + step - 1) / step * step
	down := (b.Plate().Top - trim.Bottom + step - 1) / step * step
	ways := []unit.Length{up, -down}
	if down < up {
		slices.Reverse(ways)
	}
	for _, by := range ways {
		moved := b
		moved.Bottom, moved.Top = b.Bottom+by, b.Top+by
		isOn := func(t plan.Trim) bool {
			return moved.Plate().Bottom < t.Bottom+t.Height && t.Bottom < moved.Plate().Top
		}
		if moved.Plate().Bottom < 0 || moved.Plate().Top > v.Room.Ceiling || slices.ContainsFunc(v.Side.Trim, isOn) || !v.Wall().IsClear(moved) {
			continue
		}
		label := words.New("rule.covered.remedy", "Raise {0} by {1}", b.Opening.Tag, words.Height(by))
		if by < 0 {
			label = words.New("rule.trim-clash.lower", "Lower {0} by {1}", b.Opening.Tag, words.Height(-by))
		}
		middle := (moved.Bottom + moved.Top) / 2
		offers = append(offers, rule.Remedy{Label: label, Edit: edit.SetHeight{ID: b.Opening.ID, Height: frame.HeightAt(b.Opening, v.Room, middle)}})
	}
	return offers
}
