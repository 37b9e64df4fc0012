// Package wire turns what is drawn of cables into lengths and splices: how long a run is,
// and which conductors of a box are joined.
//
// Lengths are estimates of common practice, rounded up to the half foot; one that the user
// measured goes before them.
package wire
