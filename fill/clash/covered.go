package clash

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Covered looks for openings behind cabinets, appliances, mirrors and beds.
var Covered = rule.Rule{
	ID:     "covered",
	Title:  words.New("rule.covered.title", "Openings not covered by what stands before them"),
	Figure: "accessible",
	Doc:    words.New("rule.covered.doc", `A box stays accessible: none is behind a cabinet, a counter, a tub, a mirror or another thing that is fixed, and none behind an appliance or a bed that would have to be pulled out (that by common practice). An opening that serves what stands before it is where it should be: of a range, a refrigerator, a dishwasher, a washer, a dryer, a hood, a panel. A plate clears the top of a counter and of its splash, or lies on the splash as a whole (common practice). Measured by plates and by the outlines of what stands at the wall. Not checked: what stands in the room away from its walls, boxes within a cabinet that its back is cut out for, and curtains, screens and other things that are not drawn.`),
	Side:   checkCovered,
}

func checkCovered(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	if len(v.Fixtures) == 0 {
		return nil
	}
	for _, b := range v.Wall().Boxes {
		for _, f := range v.Fixtures {
			if told, ok := hides(b, f.Fixture); ok {
				told.Remedies = outOfCover(v, b, f.Fixture, fig)
				found = append(found, told)
				break
			}
		}
	}
	return found
}

// outlineOf is what a thing at a wall covers of it.
func outlineOf(f *plan.Fixture) frame.Rect {
	return frame.Rect{Left: f.At.Along, Right: f.At.Along + f.Width, Bottom: f.Bottom, Top: f.Top()}
}

func hides(b frame.Placed, fixture *plan.Fixture) (f rule.Finding, is bool) {
	kind := part.All().Fixture(fixture.Kind)
	body, plate := outlineOf(fixture), b.Plate()
	edge := body.Top + fixture.Splash
	if kind.Covers == part.CoversNothing || b.Opening.IsGone() || part.All().Serves(b.Opening.Kind, fixture.Kind) ||
		!plate.Meets(frame.Rect{Left: body.Left, Right: body.Right, Bottom: body.Bottom, Top: edge}) {
		return f, false
	}
	middle := (b.Bottom + b.Top) / 2
	switch {
	case middle > body.Top && plate.Bottom < body.Top:
		f = rule.OnBox(b.Opening, rule.Warn)
		f.ByPractice, f.Measured, f.Limit = true, rule.LengthOf(plate.Bottom), rule.LengthOf(body.Top)
		f.Message = words.New("rule.covered.edge", "{0}: its plate does not clear the top of the {1}", b.Opening.Tag, fixture.Kind.Text())
		f.Why = words.New("rule.covered.edge.why", "The plate begins {0} above the floor, the {1} ends at {2}.", words.Height(plate.Bottom), fixture.Kind.Text(), words.Height(body.Top))
	case middle > body.Top && plate.Top > edge:
		f = rule.OnBox(b.Opening, rule.Warn)
		f.ByPractice, f.Measured, f.Limit = true, rule.LengthOf(plate.Bottom), rule.LengthOf(edge)
		f.Message = words.New("rule.covered.splash", "{0}: its plate lies over the edge of the splash", b.Opening.Tag)
		f.Why = words.New("rule.covered.splash.why", "The plate begins {0} above the floor, the splash ends at {1}.", words.Height(plate.Bottom), words.Height(edge))
	case middle > body.Top:
		return f, false // all of it on the splash
	case kind.Covers == part.CoversFixed:
		f = rule.OnBox(b.Opening, rule.Stop)
		f.Message = words.New("rule.covered.fixed", "{0} is covered by the {1}", b.Opening.Tag, fixture.Kind.Text())
		f.Why = words.New("rule.covered.fixed.why", "Boxes stay accessible without taking down what is fixed.")
	default:
		f = rule.OnBox(b.Opening, rule.Warn)
		f.ByPractice = true
		f.Message = words.New("rule.covered.movable", "{0} is behind the {1}", b.Opening.Tag, fixture.Kind.Text())
		f.Why = words.New("rule.covered.movable.why", "It would have to be pulled out to reach it (common practice).")
	}
	return f, true
}

// mostRaise is how far up a covered box is offered to go: over an edge, not to another use.
const mostRaise = unit.Foot

// outOfCover offers clear places along the wall that nothing covers, and one straight above
// what stands before the box now.
func outOfCover(v rule.SideView, b frame.Placed, fixture *plan.Fixture, fig *code.Figures) []rule.Remedy {
	isCovered := func(p frame.Placed) bool {
		return slices.ContainsFunc(v.Fixtures, func(f index.FixtureView) bool {
			_, is := hides(p, f.Fixture)
			return is
		})
	}
	w, step := v.Wall(), fig.Units.Step()
	offers := rule.MovesAlong(b, slices.DeleteFunc(w.ClearPlaces(b, step), func(at unit.Length) bool { return isCovered(b.MovedTo(at)) }))
	up := outlineOf(fixture).Top + fixture.Splash - b.Plate().Bottom
	up = (up + step - 1) / step * step
	raised := b
	raised.Bottom, raised.Top = b.Bottom+up, b.Top+up
	if up <= 0 || up > mostRaise || raised.Plate().Top > v.Room.Ceiling || isCovered(raised) || !w.IsClear(raised) {
		return offers
	}
	middle := (raised.Bottom + raised.Top) / 2
	return append(offers, rule.Remedy{
		Label: words.New("rule.covered.remedy", "Raise {0} by {1}", b.Opening.Tag, words.Height(up)),
		Edit:  edit.SetHeight{ID: b.Opening.ID, Height: frame.HeightAt(b.Opening, v.Room, middle)},
	})
}
