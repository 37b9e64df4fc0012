package protect

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// PanelPlace looks for panels where none may be, or without room to work at them.
var PanelPlace = rule.Rule{
	ID:     "panel-place",
	Title:  words.New("rule.panel-place.title", "Panels where one may work at them"),
	Figure: "panel-place",
	Doc:    words.New("rule.panel-place.doc", `No panel is in a bathroom or a clothes closet. Before a panel there is clear floor 30 in wide, or as wide as the panel, and 36 in deep; the width need not be about its middle. Figures from memory. What stands lower than 6-1/2 ft is in the way, and so are walls. Not checked: how far doors swing, stairs, the height of breakers, and what is stored there.`),
	Leaves: rule.IfKnown,
	Room:   checkPanelPlace,
}

// headroom is how high the clear space is: 6-1/2 ft, 110.26(A)(3), from memory.
const headroom = 78 * unit.Inch

func checkPanelPlace(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	for i := range v.Sides {
		s := &v.Sides[i]
		for _, f := range s.Fixtures {
			if f.Fixture.Kind != plan.FixturePanel {
				continue
			}
			if v.Room.Use == plan.UseBath || v.Room.Use == plan.UseCloset {
				found = append(found, forbidden(&v, s, f))
			}
			if width := clearWidth(&v, s, f, fig); width+rule.Grain < max(fig.Protection.PanelWidth, f.Fixture.Width) {
				found = append(found, crowded(&v, s, f, width, fig))
			}
		}
	}
	return found
}

func ofPanel(s *index.SideView, f index.FixtureView) rule.Finding {
	return rule.Finding{
		Severity: rule.Stop, About: f.Fixture.ID,
		Stretches: []rule.Stretch{rule.OnSide(s, f.Fixture.At.Along, f.Fixture.At.Along+f.Fixture.Width)},
	}
}

func forbidden(v *index.RoomView, s *index.SideView, f index.FixtureView) rule.Finding {
	found := ofPanel(s, f)
	found.Message = words.New("rule.panel-place.forbidden", "A panel is in {0}", v.Room.Name)
	found.Why = words.New("rule.panel-place.forbidden.why", "None is in a bathroom or a clothes closet.")
	return found
}

func crowded(v *index.RoomView, s *index.SideView, f index.FixtureView, width unit.Length, fig *code.Figures) rule.Finding {
	found := ofPanel(s, f)
	want := max(fig.Protection.PanelWidth, f.Fixture.Width)
	found.Section = fig.Title + " " + fig.Section("panel-width")
	found.Measured, found.Limit = rule.LengthOf(width), rule.LengthOf(want)
	found.Message = words.New("rule.panel-place.crowded", "The panel in {0} has {1} of clear width before it", v.Room.Name, words.Beside{Length: width, Other: want})
	found.Why = words.New("rule.panel-place.crowded.why", "To work at it {0} is kept clear before it, {1} deep.", want, fig.Limit("panel-depth"))
	return found
}

// clearWidth returns the width of the widest clear space before a panel that takes in all
// of its width, no more than is asked for; 0 where something stands before the panel
// itself.
func clearWidth(v *index.RoomView, s *index.SideView, panel index.FixtureView, fig *code.Figures) unit.Length {
	left, right := panel.Fixture.At.Along, panel.Fixture.At.Along+panel.Fixture.Width
	front := panel.Fixture.Depth
	lo, hi := right-max(fig.Protection.PanelWidth, panel.Fixture.Width), left+max(fig.Protection.PanelWidth, panel.Fixture.Width)
	block := func(from, to unit.Length) {
		switch {
		case to <= left:
			lo = max(lo, to)
		case from >= right:
			hi = min(hi, from)
		default:
			lo, hi = left, left
		}
	}
	before := func(a, b geom.Point) {
		if from, to, ok := strip(s.Frame, a, b, front, front+fig.Protection.PanelDepth); ok {
			block(from, to)
		}
	}
	for _, other := range v.Sides {
		if other.Side.Kind != plan.SideOpen {
			before(other.Line.A, other.Line.B)
		}
	}
	v.EachFixture(func(f index.FixtureView) {
		if f.Fixture.Bottom >= headroom {
			return
		}
		for i, corner := range f.Footprint {
			before(corner, f.Footprint[(i+1)%len(f.Footprint)])
		}
	})
	return max(hi-lo, 0)
}

// strip returns which part of a wall's length a line takes that runs through the strip
// before it between two distances, where it does.
func strip(face geom.Frame, a, b geom.Point, from, to unit.Length) (left, right unit.Length, ok bool) {
	x, out := face.Project(a)
	y, outB := face.Project(b)
	if out > outB {
		x, y, out, outB = y, x, outB, out
	}
	if outB <= from+rule.Grain || out >= to-rule.Grain {
		return left, right, false
	}
	at := func(o unit.Length) unit.Length {
		return x + unit.Length(float64(y-x)*(float64(o-out)/float64(outB-out)))
	}
	p, q := x, y
	if out < from {
		p = at(from)
	}
	if outB > to {
		q = at(to)
	}
	return min(p, q), max(p, q), true
}
