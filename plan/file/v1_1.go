package file

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
)

// v1_1 adds to 1.0 what a finding showed when it was set aside: "seen" of a waiver;
// and from which other thing the distance of one on a face is told: "from" of an opening,
// a break or a fixture; framing that is told stud by stud; the spaces of a parted box: an item "space" of its
// contents, and which of them a cable enters; and what the code book asks of a house: bays
// and facing of a room and its reach from a seat, grade and vehicles of a door, provision,
// fuel, risers and splash of a fixture, the level that stairs lead to, the grounding of an old box; what was moved or
// replaced, and by which opening; in what condition faces and ceilings are, zones, probed
// places, trim and lath, and what a tape read; lights with a switch of their own; the grip of a switch, how an alarm senses and with which it sounds, and what a fireplace burns; the machine that an outlet is for and what it draws, power in a garage, finished
// and damp rooms, landings of stairs and sinks of a bar; the year a house was built; the price book by its name; what a tape read of a room and of casings; what a circuit is for; existing cables, circuits that go through their receptacles, the way of those that
// are fished, and what of a box is known in part; in which order the gangs of a box work
// controls; the pairs of openings; joists one by one, plates at the holes of a cable, the weight of what hangs from a box, what that is marked to carry and for, how wide it was measured inside and whether it is kept for a new opening; wishes, the client's word, and the last walk; ticks of the list for a visit; and boxes, rings and devices of the user's own. Without them each
// means what it meant. A plan
// that has nothing of 1.1 is written as 1.0, for programs that know no other.
var v1_1 = version{1, 1}

// leastVersion returns the oldest version that holds all that a plan has.
func leastVersion(p plan.Plan) version {
	if p.Pairs.Len()+p.Wishes.Len()+p.Ticks.Len()+p.Owns.Len() > 0 || p.Header != nil && (p.Header.Built != 0 || p.Header.Prices != "" || p.Header.Walked != nil) {
		return v1_1
	}
	for w := range p.Waivers.All() {
		if w.Seen != nil {
			return v1_1
		}
	}
	for c := range p.Circuits.All() {
		if c.Role != plan.RoleUnsaid || c.Through {
			return v1_1
		}
	}
	for c := range p.Cables.All() {
		if c.FromSpace != 0 || c.ToSpace != 0 || c.Existing || c.Plated || c.GroundUnseen || c.Way != plan.WayUnsaid {
			return v1_1
		}
	}
	for _, l := range p.Levels {
		if tellsFrom(l) || tellsSpaces(l) || tellsHouse(l) {
			return v1_1
		}
		for r := range l.Rooms.All() {
			if !r.Joists.IsZero() || slices.ContainsFunc(r.Sides, tellsFraming) || tellsUndecided(r.Floor) {
				return v1_1
			}
		}
		for b := range l.Breaks.All() {
			if b.Rough != (plan.Rough{}) || b.CasingMeasured {
				return v1_1
			}
		}
	}
	return v1
}

// tellsFrom reports whether a distance on a level is told from another thing.
func tellsFrom(l *plan.Level) bool {
	for t := range l.Anchored() {
		if from := plan.FromOf(t); from != nil && *from != "" {
			return true
		}
	}
	return false
}

// tellsSpaces reports whether the contents of a box on a level are told space by space, or
// in part.
func tellsSpaces(l *plan.Level) bool {
	since := func(i plan.Item) bool { return i.What == plan.ItemSpace || i.Volume != 0 || i.None }
	for o := range l.Openings.All() {
		if o.Contents != nil && (o.Contents.Source == plan.ContentsInPart || slices.ContainsFunc(o.Contents.Items, since)) {
			return true
		}
	}
	return false
}

// tellsFraming reports whether a side says of its wall what no 1.0 file could.
func tellsFraming(s *plan.Side) bool {
	return s.Condition != "" || len(s.Zones)+len(s.Probes)+len(s.Trim) > 0 || len(s.Places) > 0 || !s.Tape.IsZero() || s.Rating != (plan.Rating{}) || s.Separation || s.Studs.FromRight || s.Studs.Thick != 0 || tellsUndecided(s.Finish)
}

func tellsUndecided(layers []plan.Layer) bool {
	return slices.ContainsFunc(layers, func(l plan.Layer) bool { return l.Undecided || l.Lath != "" || l.Keys != 0 })
}

// tellsHouse reports whether a level says what the code book asks of a house and no 1.0
// file could.
func tellsHouse(l *plan.Level) bool {
	for r := range l.Rooms.All() {
		if r.Bays != 0 || r.Faces != plan.FacesUnsaid || r.Overhead != "" || r.Taped != (geom.Taped{}) || r.Reach || r.Power != plan.Unsaid || r.Finished != plan.Unsaid || r.Damp != plan.DampUnsaid {
			return true
		}
	}
	for b := range l.Breaks.All() {
		if b.Vehicle || b.Grade != plan.GradeUnsaid || b.Fuel != "" {
			return true
		}
	}
	for f := range l.Fixtures.All() {
		if f.Provision || f.Fuel != "" || f.Risers != 0 || f.Leads != "" || f.Splash != 0 || f.Landings != 0 || f.Bar != plan.Unsaid {
			return true
		}
	}
	for o := range l.Openings.All() {
		if o.For != "" || o.Draws != 0 || o.Grip != 0 || o.Senses != "" || o.Joined != plan.Unsaid || o.Grounded != plan.Unsaid || o.OwnSwitch != plan.Unsaid || o.Weight != 0 || tellsOfBox(o.Assembly) || o.Was != "" || slices.ContainsFunc(o.Devices, func(d plan.Device) bool { return d.Own != "" }) || len(o.Works) > 0 || o.Status == plan.StatusMoved || o.Status == plan.StatusReplaced {
			return true
		}
	}
	return false
}

// tellsOfBox reports whether an assembly tells of a box what no 1.0 file could.
func tellsOfBox(a plan.Assembly) bool {
	return a.Carries != 0 || a.ForFan != plan.Unsaid || a.Inside != (plan.Inside{}) || a.Kept
}
