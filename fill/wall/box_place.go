package wall

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// BoxPlace looks for boxes where none can be, or where another is.
var BoxPlace = rule.Rule{
	ID:    "box-place",
	Title: words.New("rule.box-place.title", "Boxes clear of edges, doors, windows and each other"),
	Doc:   words.New("rule.box-place.doc", `No box stands in glass, in a door, window or other opening through its wall, runs past the end of its face, its floor or its ceiling, or stands on top of another box of the same face (common practice: two things cannot be in one place). Measured by the outside of the boxes and the clear size of doors and windows; casing, plates, studs and what stands on the other face are not checked.`),
	Side:  checkBoxPlace,
}

// checkBoxPlace looks at the boxes of one side. They come from left to right, so that each
// is compared only with those that begin before it ends.
func checkBoxPlace(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	boxes := make([]placedBox, 0, len(v.Openings))
	for _, o := range v.Openings {
		if !o.IsGone() {
			boxes = append(boxes, placedBox{frame.RectOf(o, v.Room), o})
		}
	}
	slices.SortStableFunc(boxes, func(a, b placedBox) int { return cmp.Compare(a.Left, b.Left) })
	met, piles := met(boxes), pilesOf(boxes)
	for i, at := range boxes {
		found = append(found, pastEdge(v, piles, at, fig.Units.Grid())...)
		if v.Side.Kind == plan.SideGlass {
			found = append(found, inGlass(v, at.o))
		}
		for _, c := range v.Cuts {
			if at.Meets(frame.RectOfCut(c)) {
				found = append(found, inBreak(v, at.o, c))
			}
		}
		if met.tells(i) {
			f := onTop(v, at.o, boxes[met[i].first].o, met[i].count)
			f.Remedies = setBeside(v, piles, at, fig.Units.Grid())
			found = append(found, f)
		}
	}
	return found
}

// met counts for each of the boxes, which come from left to right, those it meets.
func met(boxes []placedBox) meetings {
	met := make(meetings, len(boxes))
	for i, at := range boxes {
		for j := i + 1; j < len(boxes) && boxes[j].Left < at.Right; j++ {
			if at.Meets(boxes[j].Rect) {
				met.add(i, j)
			}
		}
	}
	return met
}

// placedBox is the box of an opening where it is on its face.
type placedBox struct {
	frame.Rect
	o *plan.Opening
}

// pile is one box, or several that come one after another in the very same place.
type pile struct {
	placedBox
	many int
}

func pilesOf(boxes []placedBox) []pile {
	piles := make([]pile, 0, len(boxes))
	for _, b := range boxes {
		if n := len(piles); n > 0 && piles[n-1].Rect == b.Rect {
			piles[n-1].many++
			continue
		}
		piles = append(piles, pile{b, 1})
	}
	return piles
}

// isOther reports whether a box other than that of an opening is in the pile.
func (p pile) isOther(o *plan.Opening) bool { return p.many > 1 || p.o != o }

func inGlass(v rule.SideView, o *plan.Opening) rule.Finding {
	f := placeFinding(v, o)
	f.Severity = rule.Stop
	f.Message = words.New("rule.box-place.glass", "{0} is in glass", o.Tag)
	f.Why = words.New("rule.box-place.glass.why", "That side of the room is glass: two things cannot be in one place (common practice).")
	return f
}

func inBreak(v rule.SideView, o *plan.Opening, c index.Cut) rule.Finding {
	f := placeFinding(v, o)
	f.Severity = rule.Stop
	f.Message = words.New("rule.box-place.break", "{0} is in a {1}", o.Tag, breakText(c.Break.Kind))
	f.Why = words.New("rule.box-place.break.why", "The {0} runs from {1} to {2} along this side; the box is at {3}: two things cannot be in one place (common practice).", breakText(c.Break.Kind), c.From, c.To, o.At.Along)
	return f
}

// onTop tells of a box that meets others. Two that meet each other alone are told once.
func onTop(v rule.SideView, o, other *plan.Opening, count int) rule.Finding {
	f := placeFinding(v, o)
	f.Severity = rule.Stop
	f.Measured = rule.CountOf(count)
	apart := (other.At.Along - o.At.Along).Abs()
	if count == 1 {
		f.Message = words.New("rule.box-place.two", "{0} and {1} are in one place", o.Tag, other.Tag)
		f.Why = words.New("rule.box-place.two.why", "Their boxes overlap, {0} apart along the wall from center to center: two things cannot be in one place (common practice).", apart)
		return f
	}
	f.Message = words.New("rule.box-place.many", "{0} and {1} other boxes are in one place", o.Tag, count)
	f.Why = words.New("rule.box-place.many.why", "Their boxes overlap it; {0} is one of them, {1} apart along the wall from center to center: two things cannot be in one place (common practice).", other.Tag, apart)
	return f
}

func placeFinding(v rule.SideView, o *plan.Opening) rule.Finding {
	at := frame.RectOf(o, v.Room)
	return rule.Finding{
		Opening: o.ID, About: o.ID,
		Stretches: []rule.Stretch{rule.OnSide(&v.SideView, max(at.Left, 0), min(at.Right, v.Length))},
	}
}

func breakText(k plan.BreakKind) words.Text { return words.New("break."+string(k), string(k)) }
