// Package choose finds assemblies for openings: for one, every assembly of the catalogue
// tried in its place, and for a whole plan at once by a policy.
//
// Nothing is judged here. What a box holds, how deep its wall is and what its finish asks
// for the rules say, whose findings are the reasons that an assembly fails; what it costs
// the takeoff says. An assembly that no finding speaks against has been looked at for what
// those rules look at, and for nothing else.
package choose
