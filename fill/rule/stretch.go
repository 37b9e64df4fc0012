package rule

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Stretch is a part of a face along the floor line: from and to, measured from the
// face's left end as one sees it, and the same in the plan. The host is a side of a
// room, or a fixture, of which Part tells the face.
type Stretch struct {
	Host     plan.ID
	Part     plan.Part
	From, To unit.Length
	Line     geom.Segment
}

// Length returns how long the stretch is along its face.
func (s Stretch) Length() unit.Length { return s.To - s.From }

// OnSide returns a stretch of a side.
func OnSide(s *index.SideView, from, to unit.Length) Stretch {
	line := geom.Segment{A: s.Frame.Point(from, 0), B: s.Frame.Point(to, 0)}
	return Stretch{Host: s.Side.ID, Part: plan.PartFace, From: from, To: to, Line: line}
}

// OnFixture returns a stretch of a face of a fixture: its front, back, left or right.
func OnFixture(f *index.FixtureView, face plan.Part, from, to unit.Length) Stretch {
	line := geom.Segment{A: f.Foot(face, from), B: f.Foot(face, to)}
	return Stretch{Host: f.Fixture.ID, Part: face, From: from, To: to, Line: line}
}
