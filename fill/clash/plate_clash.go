package clash

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// PlateClash looks for plates that have no room on their wall.
var PlateClash = rule.Rule{
	ID:    "plate-clash",
	Title: words.New("rule.plate-clash.title", "Plates clear of each other and of corners"),
	Doc:   words.New("rule.plate-clash.doc", `Plates and canopies of one face do not overlap, and none runs past the end of its face (common practice: two things cannot be in one place). Standard plates are {0} high and {1}, {2}, {3} and {4} wide for one gang to four; a canopy is taken as {5} across. Those that touch pass. Boxes that overlap themselves are told by another rule, as are those in ceilings and floors. Not checked: plates larger than standard, and two that are there already.`, frame.StandardPlates()...),
	Side:  checkPlateClash,
}

func checkPlateClash(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	onLeft, onRight := frame.RunsOn(v.Room, v.Side.ID)
	plates := make([]frame.Rect, len(w.Boxes))
	for i, b := range w.Boxes {
		plates[i] = b.Plate()
	}
	for i, b := range w.Boxes {
		plate := plates[i]
		past := unit.Length(0)
		if !onLeft && b.Left >= 0 {
			past = max(past, -plate.Left)
		}
		if !onRight && b.Right <= v.Length {
			past = max(past, plate.Right-v.Length)
		}
		if past > 0 && !b.IsThere() {
			f := tell(w, b, past, fig)
			f.Message = words.New("rule.plate-clash.corner", "{0}: its plate runs past the corner by {1}", b.Opening.Tag, words.Height(past))
			f.Why = words.New("rule.plate-clash.corner.why", "It is {0} wide and its middle {1} from there.", words.Height(plate.Right-plate.Left), words.Height(min(b.Centre(), v.Length-b.Centre())))
			found = append(found, f)
		}
		for j := i + 1; j < len(w.Boxes); j++ {
			o := &w.Boxes[j]
			over := plate.OverlapOf(plates[j])
			if over <= 0 || b.Meets(o.Rect) || b.IsThere() && o.IsThere() {
				continue
			}
			of, with := b, *o
			if !rule.TellsOf(of.Opening, with.Opening) {
				of, with = *o, b
			}
			f := tell(w, of, over, fig)
			f.Message = words.New("rule.plate-clash.two", "The plates of {0} and {1} overlap by {2}", of.Opening.Tag, with.Opening.Tag, words.Height(over))
			f.Why = words.New("rule.plate-clash.two.why", "They are {0} and {1} wide, their middles {2} apart along the wall.",
				words.Height(widthOf(of)), words.Height(widthOf(with)), words.Height((of.Centre() - with.Centre()).Abs()))
			found = append(found, f)
		}
	}
	return found
}

func widthOf(b frame.Placed) unit.Length { return frame.PlateOf(b.Opening).Width }

// tell begins a finding of what overlaps by so much.
func tell(w *frame.Wall, b frame.Placed, over unit.Length, fig *code.Figures) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Stop)
	f.Measured = rule.LengthOf(over)
	f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
	return f
}
