package clash

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// DoorSwing looks for openings behind a door that stands open.
var DoorSwing = rule.Rule{
	ID:    "door-swing",
	Title: words.New("rule.door-swing.title", "Openings not behind an open door"),
	Doc:   words.New("rule.door-swing.doc", `A door's leaf that stands open at 90° within {0} of a wall covers it as far as the leaf reaches and up to its head (common practice; the distance is yours to amend). Checked are doors that swing into the room, from either face of their wall, both leaves of a double one. A receptacle there counts for spacing all the same. Not checked: doors whose hand or swing is not known, leaves opened farther, sliding and folding doors, and openings that are there already.`, words.Height(unit.Foot)),
	Room:  checkDoorSwing,
}

// leaf is one of a door that stands open at a right angle to its wall.
type leaf struct {
	geom.Segment
	door *plan.Break
}

func checkDoorSwing(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	leaves := leavesIn(v)
	for i := range v.Sides {
		s := &v.Sides[i]
		for _, l := range leaves {
			if len(s.Openings) == 0 || s.Side.ID == l.door.At.Host {
				continue
			}
			for _, o := range s.Openings {
				rect := frame.RectOf(o, v.Room)
				if o.Status == plan.StatusNew && rect.Bottom < l.door.Head && l.covers(s, rect, fig.Build.LeafNear) {
					found = append(found, behindDoor(v, s, o, l, fig))
				}
			}
		}
	}
	return found
}

// leavesIn returns the leaves that swing into a room.
func leavesIn(v index.RoomView) (leaves []leaf) {
	for _, s := range v.Sides {
		for _, c := range s.Cuts {
			b := c.Break
			if !part.All().Break(b.Kind).IsHung || b.Swing == plan.SwingNone || c.IsOwn != (b.Swing == plan.SwingIn) {
				continue
			}
			open := func(hinge, long unit.Length) {
				leaves = append(leaves, leaf{geom.Segment{A: s.Frame.Point(hinge, 0), B: s.Frame.Point(hinge, long)}, b})
			}
			left := b.Hand == plan.HandLeft
			if !c.IsOwn { // the hand is told from the other room
				left = b.Hand == plan.HandRight
			}
			switch {
			case b.Hand == plan.HandUnknown:
			case b.Hand == plan.HandDouble:
				open(c.Start, b.Width/2)
				open(c.Start+b.Width, b.Width/2)
			case left:
				open(c.Start, b.Width)
			default:
				open(c.Start+b.Width, b.Width)
			}
		}
	}
	return leaves
}

// covers reports whether the leaf stands before a box of a side, within a distance of it.
func (l leaf) covers(s *index.SideView, box frame.Rect, near unit.Length) bool {
	from, outFrom := s.Frame.Project(l.A)
	to, outTo := s.Frame.Project(l.B)
	if from > to {
		from, to, outFrom, outTo = to, from, outTo, outFrom
	}
	if box.Right <= from || box.Left >= to || min(outFrom, outTo) < 0 {
		return false
	}
	at := min(max(box.Centre(), from), to)
	away := outFrom
	if outFrom != outTo { // a wall that is not square to the door's
		share := (at - from).Millimetres() / (to - from).Millimetres()
		away += unit.FromMillimetres((outTo - outFrom).Millimetres() * share)
	}
	return away <= near
}

func behindDoor(v index.RoomView, s *index.SideView, o *plan.Opening, l leaf, fig *code.Figures) rule.Finding {
	w := frame.WallIn(s, v.Room)
	f := rule.OnBox(o, rule.Warn)
	_, out := s.Frame.Project(l.A)
	f.Measured, f.Limit = rule.LengthOf(out), rule.LengthOf(fig.Build.LeafNear)
	f.Message = words.New("rule.door-swing.behind", "{0} is behind an open door", o.Tag)
	f.Why = words.New("rule.door-swing.why", "The leaf, {0} wide, stands {1} off this wall when it is open.", words.Height(unit.Length(l.Length())), words.Height(out))
	for _, b := range w.Boxes {
		if b.Opening.ID != o.ID {
			continue
		}
		var clear []unit.Length
		for _, at := range w.ClearPlaces(b, fig.Units.Step()) {
			if !l.covers(s, b.MovedTo(at).Rect, fig.Build.LeafNear) {
				clear = append(clear, at)
			}
		}
		f.Remedies = rule.MovesAlong(b, clear)
	}
	return f
}
