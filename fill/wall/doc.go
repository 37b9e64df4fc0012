// Package wall holds the rules on what can be built in one place: the framing of a wall,
// boxes clear of edges, breaks and each other, rooms clear of each other.
package wall
