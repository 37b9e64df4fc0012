package wall

import (
	"cmp"
	"slices"
	"studbay/fill/code"
	"studbay/fill/flat"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// FlatPlace looks for boxes in ceilings and floors where another or a wall is.
var FlatPlace = rule.Rule{
	ID:    "flat-place",
	Title: words.New("rule.flat-place.title", "Boxes in ceilings and floors clear of walls and each other"),
	Doc:   words.New("rule.flat-place.doc", `No box in a ceiling or a floor reaches over the line of a wall of its room or stands on top of another box of the same ceiling or floor (common practice: two things cannot be in one place). Measured by the outside of the boxes; open sides, and railings under a ceiling, are no walls here, and plates, joists and boxes on cabinets are not checked.`),
	Room:  checkFlatPlace,
}

func checkFlatPlace(v index.RoomView, fig *code.Figures) []rule.Finding {
	return append(flatPlaces(v, v.Ceiling, fig), flatPlaces(v, v.Floor, fig)...)
}

// flatBox is the box of an opening where it is in its ceiling or floor.
type flatBox struct {
	flat.Footprint
	o *plan.Opening
}

// flatPlaces looks at the boxes of one ceiling or floor. They come from left to right, so
// that each is compared only with those that begin before it ends.
func flatPlaces(v index.RoomView, openings []*plan.Opening, fig *code.Figures) (found []rule.Finding) {
	boxes := make([]flatBox, 0, len(openings))
	for _, o := range openings {
		if !o.IsGone() {
			boxes = append(boxes, flatBox{flat.FootprintOf(o), o})
		}
	}
	slices.SortStableFunc(boxes, func(a, b flatBox) int { return cmp.Compare(a.Area.Min.X, b.Area.Min.X) })
	met := make(meetings, len(boxes))
	for i, at := range boxes {
		for j := i + 1; j < len(boxes) && boxes[j].Area.Min.X < at.Area.Max.X; j++ {
			if at.Meets(boxes[j].Footprint) {
				met.add(i, j)
			}
		}
	}
	for i, at := range boxes {
		if isInWall(v, at) {
			f := inWall(at.o)
			f.Remedies = setClear(v, boxes, at, fig)
			found = append(found, f)
		}
		if met.tells(i) {
			f := onTopFlat(at.o, boxes[met[i].first].o, met[i].count)
			f.Remedies = setClear(v, boxes, at, fig)
			found = append(found, f)
		}
	}
	return found
}

// isInWall reports whether the line of a wall of the room runs through a box.
func isInWall(v index.RoomView, at flatBox) bool {
	return slices.ContainsFunc(v.Sides, func(s index.SideView) bool { return flat.StandsAt(s.Side, at.o.At.Part) && at.IsCut(s.Line) })
}

func inWall(o *plan.Opening) rule.Finding {
	return rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: o.ID,
		Message: words.New("rule.flat-place.wall", "{0} is partly in a wall", o.Tag),
		Why:     words.New("rule.flat-place.wall.why", "Its box reaches over the line of the wall: two things cannot be in one place (common practice)."),
	}
}

func onTopFlat(o, other *plan.Opening, count int) rule.Finding {
	f := rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: o.ID, Measured: rule.CountOf(count),
		Message: words.New("rule.box-place.two", "{0} and {1} are in one place", o.Tag, other.Tag),
		Why: words.New("rule.flat-place.two.why", "Their boxes overlap, {0} apart from center to center: two things cannot be in one place (common practice).",
			o.At.At.Distance(other.At.At)),
	}
	if count > 1 {
		f.Message = words.New("rule.flat-place.many", "{0} and {1} other boxes are in one place, {2} among them", o.Tag, count, other.Tag)
	}
	return f
}
