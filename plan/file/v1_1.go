package file

import "studbay/plan"

// v1_1 adds to 1.0 what a finding showed when it was set aside: "seen" of a waiver. A
// waiver without it means what it meant. A plan that has nothing of 1.1 is written as 1.0,
// for programs that know no other.
var v1_1 = version{1, 1}

// leastVersion returns the oldest version that holds all that a plan has.
func leastVersion(p plan.Plan) version {
	for w := range p.Waivers.All() {
		if w.Seen != nil {
			return v1_1
		}
	}
	return v1
}
