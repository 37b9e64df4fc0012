package code

import "studbay/plan/unit"

// Build holds the figures of boxes as they are built in, and those of common practice that
// a user may change.
type Build struct {
	SetBack unit.Length // the front of a box may end this far behind a noncombustible surface, 314.20

	DepthBare   unit.Length // least depth of a box without a device, 314.24(A)
	DepthFine   unit.Length // with a device supplied by 14 AWG or smaller, 314.24(B)
	DepthUsual  unit.Length // by 12 or 10 AWG
	DepthThick  unit.Length // by 8, 6 or 4 AWG
	BehindUsual unit.Length // a device fed by 12 or 10 AWG that reaches farther behind needs DepthSpare more than that
	BehindAny   unit.Length // so does any that reaches farther behind than this
	DepthSpare  unit.Length

	BoxCarries    unit.Weight // a box for lights, unless it is marked for another weight, 314.27(A)
	AnyBoxCarries unit.Weight // any box or ring on a wall by two No. 6 screws, 314.27(A)(1), exception
	FanCarries    unit.Weight // a fan box that is not marked for more, 314.27(C)
	FanMost       unit.Weight // the heaviest fan that hangs from a box

	HoleEdge  unit.Length // from a bored hole to the nearest edge of a stud, 300.4(A)(1)
	CableHole unit.Length // bored for a cable; common practice

	LeafNear   unit.Length // an open door's leaf this near to a wall covers it; common practice
	HeightStep unit.Length // heights this far apart look alike; common practice

	SmartSpare unit.Volume // left in a box that a smart device may come to; common practice
	SmartDepth unit.Length // of such a box, with all that is on it; common practice
}
