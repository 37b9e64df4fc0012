// Package cut draws the cut through a wall at one box, seen from above with the room at
// the foot: studs, layers of either face, the box with its ring, the block behind it and
// the boxes that come from the other side.
//
// What is drawn where is asked of package frame; nothing is computed again, and nothing
// here says whether it may be built so.
package cut

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Cut is what a cut through a wall shows of one box.
type Cut struct {
	Wall    *frame.Wall
	Opening *plan.Opening
	Hold    frame.Hold
	Body    frame.Body
	Box     frame.Rect
	Collar  unit.Length // the width of the hole in the finish
	Proud   unit.Length // the sum of the layers
	// Framing is the depth of the studs; IsTold is false where nobody tells it and the
	// usual one is drawn.
	Framing unit.Length
	IsTold  bool
	// Rings are the raises that end where they may. IsUndecided tells layers that are not
	// settled, by which they may become others.
	Rings       []unit.Length
	IsUndecided bool
}

// Of returns the cut at an opening of a side of a room's view; setBack is how far behind
// the finish the edition lets a ring end. It reports false where no box that is built into
// the wall is chosen or known.
func Of(side *index.SideView, room *plan.Room, o *plan.Opening, setBack unit.Length) (Cut, bool) {
	body, ok := frame.BodyOf(o.Assembly)
	if !ok || side.Side.Kind != plan.SideWall || o.IsGone() {
		return Cut{}, false
	}
	w, here := frame.WallIn(side, room), frame.FaceAt(side.Side, room, o)
	c := Cut{
		Wall: w, Opening: o, Hold: w.HoldOn(o, room), Body: body, Box: frame.RectOf(o, room),
		Collar: frame.CutoutOf(o).Width, Proud: frame.SetProud(here), Framing: w.FramingAt(o.At.Along),
		Rings: frame.RingsPassing(o, here, setBack), IsUndecided: frame.IsUndecided(here),
	}
	if c.Hold.By == frame.OnSurface || c.Hold.By == frame.InMasonry {
		return Cut{}, false
	}
	if c.IsTold = c.Framing > 0; !c.IsTold {
		c.Framing = frame.UsualStud
	}
	return c, true
}

// Side returns the face as it is at the box.
func (c Cut) Side() *plan.Side { return frame.FaceAt(c.Wall.Side, c.Wall.Room, c.Opening) }

// IsClosed reports whether the wall stays closed at the box.
func (c Cut) IsClosed() bool {
	return c.Wall.Side.ConditionAt(c.Opening.At.Along) == plan.ConditionClosed
}

// Front returns how far before the face of the studs the front edge of the box itself is:
// none where it carries a ring, else as far as the finish.
func (c Cut) Front() unit.Length {
	if c.Body.HasRing {
		return 0
	}
	return c.Proud
}

// Behind returns the boxes of the other face that the cut meets within a reach of the
// middle of the box.
func (c Cut) Behind(reach unit.Length) (met []frame.Placed) {
	for _, p := range c.Wall.Behind {
		if p.IsBuiltIn() && p.Body.Depth > 0 && p.Bottom < c.Box.Top && c.Box.Bottom < p.Top &&
			p.Left < c.Opening.At.Along+reach && c.Opening.At.Along-reach < p.Right {
			met = append(met, p)
		}
	}
	return met
}

// Fit returns how the box fits into the depth of the wall.
func (c Cut) Fit() (frame.Fit, bool) {
	return c.Wall.FitOf(frame.PlacedIn(c.Wall.Side, c.Wall.Room, c.Opening))
}

// Far returns the layers of the other face, from the studs outward, and whether there is
// one.
func (c Cut) Far() ([]plan.Layer, bool) {
	for _, b := range c.Wall.Face.Behind {
		if b.Side.Kind == plan.SideWall && b.From <= c.Opening.At.Along && c.Opening.At.Along <= b.To {
			return b.Side.Finish, true
		}
	}
	return nil, false
}
