package plan_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

const (
	in = unit.Inch
	ft = unit.Foot
)

func at(x, y unit.Length) geom.Point { return geom.Point{X: x, Y: y} }

// furnished is a bedroom of 12 by 10 ft with an island of 4 by 2 ft in its middle and what
// is asked for, harmed or not.
func furnished(harm func(p *plan.Plan, l *plan.Level, r *plan.Room)) plan.Plan {
	p := plantest.Bedroom()
	r, _ := p.Room("raaaaaaaa")
	l := *p.Levels[0]
	l.Fixtures = l.Fixtures.With(&plan.Fixture{
		ID: "faaaaaaaa", Kind: plan.FixtureIsland, At: plan.OnFloor(r.ID, at(6*ft, 5*ft)), Width: 4 * ft, Depth: 2 * ft, Height: 3 * ft,
	})
	harm(&p, &l, r)
	l.Rooms = l.Rooms.With(r)
	return p.WithLevel(&l)
}

// TestLimitsOfAPlan tries the last value that a plan may hold, and the first that it may
// not: 10 km either way, 64 layers, the ends and edges of what things stand on.
func TestLimitsOfAPlan(t *testing.T) {
	opening := func(a plan.Anchor) func(*plan.Plan, *plan.Level, *plan.Room) {
		return func(_ *plan.Plan, l *plan.Level, _ *plan.Room) {
			o := &plan.Opening{ID: "oaaaaaaaa", Tag: "B1", Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: a}
			if a.Part != plan.PartTop {
				o.Height = plan.CentreAt(16 * in)
			}
			l.Openings = l.Openings.With(o)
		}
	}
	top := func(along, out unit.Length) plan.Anchor {
		return plan.Anchor{Host: "faaaaaaaa", Part: plan.PartTop, Along: along, Out: out}
	}
	doors := func(along ...unit.Length) func(*plan.Plan, *plan.Level, *plan.Room) {
		return func(_ *plan.Plan, l *plan.Level, _ *plan.Room) {
			for i, a := range along {
				l.Breaks = l.Breaks.With(&plan.Break{
					ID: plan.ID("baaaaaaa" + string(rune('a'+i))), Kind: plan.BreakDoor, At: plan.OnFace("saaaaaaaa", a), Width: 2 * ft, Head: 7 * ft,
				})
			}
		}
	}
	room := func(how func(*plan.Room)) func(*plan.Plan, *plan.Level, *plan.Room) {
		return func(_ *plan.Plan, _ *plan.Level, r *plan.Room) { how(r) }
	}
	level := func(elevation unit.Length) func(*plan.Plan, *plan.Level, *plan.Room) {
		return func(_ *plan.Plan, l *plan.Level, _ *plan.Room) { l.Elevation = elevation }
	}
	layers := func(n int) func(*plan.Plan, *plan.Level, *plan.Room) {
		return room(func(r *plan.Room) { r.Sides[0].Finish = slices.Repeat([]plan.Layer{{Thickness: in}}, n) })
	}
	for _, tt := range []struct {
		name    string
		harm    func(*plan.Plan, *plan.Level, *plan.Room)
		isSound bool
	}{
		{"nothing", room(func(*plan.Room) {}), true},
		{"10 km up", level(plan.Reach), true},
		{"more", level(plan.Reach + 1), false},
		{"10 km down", level(-plan.Reach), true},
		{"more down", level(-plan.Reach - 1), false},
		{"a ceiling at 10 km", room(func(r *plan.Room) { r.Ceiling = plan.Reach }), true},
		{"a ceiling above", room(func(r *plan.Room) { r.Ceiling = plan.Reach + 1 }), false},
		{"a ceiling on the floor", room(func(r *plan.Room) { r.Ceiling = 0 }), false},
		{"64 layers", layers(64), true},
		{"65 layers", layers(65), false},
		{"layers of 10 km", room(func(r *plan.Room) { r.Floor = []plan.Layer{{Thickness: plan.Reach - in}, {Thickness: in}} }), true},
		{"thicker together", room(func(r *plan.Room) { r.Floor = []plan.Layer{{Thickness: plan.Reach}, {Thickness: 1}} }), false},
		{"at the far end of a side", opening(plan.OnFace("saaaaaaaa", 12*ft)), true},
		{"past it by more than rounding", opening(plan.OnFace("saaaaaaaa", 12*ft+plan.Slack+1)), false},
		{"before its start by more than rounding", opening(plan.OnFace("saaaaaaaa", -plan.Slack-1)), false},
		{"at the front edge of an island", opening(top(ft, 2*ft)), true},
		{"past it", opening(top(ft, 2*ft+1)), false},
		{"behind its back edge", opening(top(ft, -1)), false},
		{"past its right end", opening(top(4*ft+plan.Slack+1, ft)), false},
		{"at the end of its left end", opening(plan.Anchor{Host: "faaaaaaaa", Part: plan.PartLeft, Along: 2 * ft}), true},
		{"past that", opening(plan.Anchor{Host: "faaaaaaaa", Part: plan.PartLeft, Along: 3 * ft}), false},
		{"doors that touch", doors(0, 2*ft, 4*ft), true},
		{"the first two overlap", doors(0, 2*ft-in, 4*ft), false},
		{"the last two overlap", doors(0, 2*ft, 4*ft-in), false},
		{"overlapping, not in their order along", doors(4*ft, 0, 5*ft), false},
		{"apart, not in their order along", doors(4*ft, 0, 6*ft), true},
	} {
		err := plan.Check(furnished(tt.harm))
		if isSound := err == nil; isSound != tt.isSound {
			t.Errorf("%s: sound %v, want %v: %v", tt.name, isSound, tt.isSound, err)
		}
		if err != nil && strings.Contains(err.Error(), "height") {
			t.Errorf("%s: refused for something else: %v", tt.name, err)
		}
	}
}

// TestOutlinesAreRefusedByName: sides and corners are counted from 1, as a person would.
func TestOutlinesAreRefusedByName(t *testing.T) {
	corner := func(n byte, x, y unit.Length) *plan.Side {
		return &plan.Side{ID: plan.ID("saaaaaaa" + string('a'+n)), Kind: plan.SideWall, Start: at(x*ft, y*ft)}
	}
	for _, tt := range []struct {
		name  string
		sides []*plan.Side
		want  string
	}{
		{"two corners", []*plan.Side{corner(0, 0, 0), corner(1, 9, 0)}, "three corners or more"},
		{"the second side has none", []*plan.Side{corner(0, 0, 0), corner(1, 9, 0), corner(2, 9, 0), corner(3, 0, 9)}, "side 2 without length"},
		{"the second corner comes again as the fifth", []*plan.Side{
			corner(0, 0, 0), corner(1, 4, 4), corner(2, 8, 0), corner(3, 8, 8), corner(4, 4, 4), corner(5, 0, 8),
		}, "corners 2 and 5"},
		{"the first side crosses the third", []*plan.Side{corner(0, 0, 0), corner(1, 8, 8), corner(2, 8, 0), corner(3, 0, 8)}, "sides 1 and 3"},
	} {
		err := plan.Check(furnished(func(_ *plan.Plan, l *plan.Level, r *plan.Room) {
			l.Fixtures, r.Sides = plan.Set[*plan.Fixture]{}, tt.sides
		}))
		var refusal *plan.Refusal
		if !errors.As(err, &refusal) || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v, want it to say %q", tt.name, err, tt.want)
		}
	}
}
