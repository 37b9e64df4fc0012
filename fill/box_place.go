package fill

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

var boxPlace = Rule{
	ID:    "box-place",
	Title: words.New("rule.box-place.title", "Boxes clear of edges, breaks and each other"),
	Doc:   words.New("rule.box-place.doc", `No box stands in a door, window or other break of its wall, runs past the end of its face, its floor or its ceiling, or stands on top of another box of the same face (common practice: two things cannot be in one place). Measured by the outside of the boxes and the clear size of the breaks; casing, plates, studs and what stands on the other face are not looked at.`),
	Room:  checkBoxPlace,
}

// rect is a part of a face: along it from its left end, and up from the finished floor.
type rect struct{ left, right, bottom, top unit.Length }

func (r rect) meets(s rect) bool {
	return r.left < s.right && s.left < r.right && r.bottom < s.top && s.bottom < r.top
}

func (r rect) moved(by unit.Length) rect {
	return rect{r.left + by, r.right + by, r.bottom, r.top}
}

// centred returns it at another height.
func (r rect) centred(at unit.Length) rect {
	by := at - (r.bottom+r.top)/2
	return rect{r.left, r.right, r.bottom + by, r.top + by}
}

func boxRect(o *plan.Opening, room *plan.Room) rect {
	w, h := BoxSize(o)
	centre := CentreHeight(o, room)
	left, bottom := o.At.Along-w/2, centre-h/2
	return rect{left, left + w, bottom, bottom + h}
}

func checkBoxPlace(v plan.RoomView, fig *code.Figures) (found []Finding) {
	for i := range v.Sides {
		found = append(found, placesOn(v, i, fig.Units.Grid())...)
	}
	return found
}

// placesOn looks at the boxes of one side. They come from left to right, so that each is
// compared only with those that begin before it ends.
func placesOn(v plan.RoomView, side int, grid unit.Length) (found []Finding) {
	s, ends := &v.Sides[side], edgesOf(v, side)
	boxes := make([]placedBox, 0, len(s.Openings))
	for _, o := range s.Openings {
		if o.Status != plan.StatusRemove {
			boxes = append(boxes, placedBox{boxRect(o, v.Room), o})
		}
	}
	slices.SortStableFunc(boxes, func(a, b placedBox) int { return cmp.Compare(a.left, b.left) })
	for i, at := range boxes {
		found = append(found, pastEdge(v, s, ends, boxes, at, grid)...)
		for _, c := range s.Cuts {
			if at.meets(rect{c.From, c.To, c.Break.Sill, c.Break.Head}) {
				found = append(found, inBreak(v, s, at.o, c))
			}
		}
		for _, other := range boxes[i+1:] {
			if other.left >= at.right {
				break
			}
			if at.meets(other.rect) {
				found = append(found, onTop(v, s, at.o, other.o))
			}
		}
	}
	return found
}

// placedBox is the box of an opening where it is on its face.
type placedBox struct {
	rect
	o *plan.Opening
}

func inBreak(v plan.RoomView, s *plan.SideView, o *plan.Opening, c plan.Cut) Finding {
	f := placeFinding(v, s, o)
	f.Severity = Stop
	f.Message = words.New("rule.box-place.break", "{0} stands in a {1}", o.Tag, breakText(c.Break.Kind))
	f.Why = words.New("rule.box-place.break.why", "The {0} runs from {1} to {2} along this side; the box is at {3}.", breakText(c.Break.Kind), c.From, c.To, o.At.Along)
	return f
}

func onTop(v plan.RoomView, s *plan.SideView, o, other *plan.Opening) Finding {
	f := placeFinding(v, s, o)
	f.Severity = Warn
	f.Message = words.New("rule.box-place.two", "{0} and {1} are in one place", o.Tag, other.Tag)
	f.Why = words.New("rule.box-place.two.why", "Their boxes overlap: {0} apart along the wall, from centre to centre.", (other.At.Along - o.At.Along).Abs())
	return f
}

func placeFinding(v plan.RoomView, s *plan.SideView, o *plan.Opening) Finding {
	at := boxRect(o, v.Room)
	return Finding{
		Room: v.Room.ID, Opening: o.ID, About: o.ID,
		Stretches: []Stretch{stretchOn(s, max(at.left, 0), min(at.right, s.Length))},
	}
}

func breakText(k plan.BreakKind) words.Text { return words.New("break."+string(k), string(k)) }
