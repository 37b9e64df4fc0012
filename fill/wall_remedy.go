package fill

import (
	"crypto/sha256"
	"encoding/binary"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// reachRemedies offers the fewest receptacles that would serve a gap: in the wall
// where a box can be set there, else in the floor.
func reachRemedies(v plan.RoomView, r run, g gap, fig *code.Figures) []Remedy {
	span := 2 * fig.Spacing.WallReach
	n := (g.to - g.from + span - 1) / span
	each := (g.to - g.from) / n
	var edits []plan.Edit
	inFloor := 0
	ids := newIDs(v, g.from)
	for i := range n {
		from := g.from + each*i
		o, isFloor := reachOpening(v, r, gap{from: from, to: min(from+each+1, g.to)}, fig)
		o.ID = ids.next()
		edits = append(edits, plan.AddOpening{Opening: o})
		if isFloor {
			inFloor++
		}
	}
	return []Remedy{{Label: reachLabel(int(n), inFloor), Edit: asOne(reachLabel(int(n), inFloor), edits)}}
}

func reachLabel(n, inFloor int) words.Text {
	switch {
	case n == 1 && inFloor == 1:
		return words.New("rule.wall-reach.remedy.floor", "Add a floor receptacle there")
	case n == 1:
		return words.New("rule.wall-reach.remedy.one", "Add a receptacle there")
	case inFloor > 0:
		return words.New("rule.wall-reach.remedy.mixed", "Add {0} receptacles, {1} in the floor", n, inFloor)
	}
	return words.New("rule.wall-reach.remedy.many", "Add {0} receptacles there", n)
}

func asOne(label words.Text, edits []plan.Edit) plan.Edit {
	if len(edits) == 1 {
		return edits[0]
	}
	return plan.Steps{Label: label, Edits: edits}
}

// reachOpening returns a receptacle that serves a gap no longer than twice the reach:
// as near its middle as a box can be set, else in the floor at its middle.
func reachOpening(v plan.RoomView, r run, g gap, fig *code.Figures) (o plan.Opening, isFloor bool) {
	reach := fig.Spacing.WallReach
	middle := (g.from + g.to) / 2
	if at, ok := r.mountable(middle, g.to-reach, g.from+reach); ok {
		p, along := r.at(at)
		return NewOpening(kindWallReceptacle, plan.OnFace(p.side.Side.ID, along)), false
	}
	p, along := r.at(middle)
	return NewOpening(kindFloorReceptacle, plan.OnFloor(v.Room.ID, p.side.Frame.Point(along, floorSetOut))), true
}

// floorSetOut is how far from the wall line a floor receptacle is offered: within
// the 18 in of 210.52(A)(3) and clear of the bottom plate (common practice).
const floorSetOut = 9 * unit.Inch

// boxMargin is how far from the end of a piece a box is offered, so that casing and
// corner framing stay clear (common practice).
const boxMargin = 6 * unit.Inch

// mountable returns the place nearest to a wish, between two bounds, where the run
// can take a box.
func (r run) mountable(wish, low, high unit.Length) (best unit.Length, found bool) {
	for _, turn := range r.turns() {
		for _, p := range r.pieces {
			margin := min(boxMargin, p.length()/2)
			lo := max(low, turn+p.start+margin)
			hi := min(high, turn+p.start+p.length()-margin)
			if !p.canMount || lo > hi {
				continue
			}
			at := min(max(wish, lo), hi)
			if !found || (at-wish).Abs() < (best-wish).Abs() {
				best, found = at, true
			}
		}
	}
	return best, found
}

// turns returns by how much a run is shifted so that places before its start and past
// its end are met too.
func (r run) turns() []unit.Length {
	if r.isClosed {
		return []unit.Length{-r.length, 0, r.length}
	}
	return []unit.Length{0}
}

// idSource makes IDs that depend only on what a room holds, so that a check gives the
// same remedy each time, and another once it was taken.
type idSource struct {
	seed  [sha256.Size]byte
	count uint64
}

func newIDs(v plan.RoomView, from unit.Length) *idSource {
	h := sha256.New()
	h.Write([]byte(v.Room.ID))
	h.Write(binary.BigEndian.AppendUint64(nil, uint64(from)))
	for _, part := range v.Parts() {
		if o, ok := part.(*plan.Opening); ok {
			h.Write([]byte(o.ID))
		}
	}
	s := &idSource{}
	h.Sum(s.seed[:0])
	return s
}

// Read gives eight bytes of the source at a time.
func (s *idSource) Read(p []byte) (int, error) {
	s.count++
	block := sha256.Sum256(binary.BigEndian.AppendUint64(s.seed[:], s.count))
	return copy(p, block[:]), nil
}

func (s *idSource) next() plan.ID {
	id, _ := plan.NewID(plan.KindOpening, s) // its reader never fails
	return id
}
