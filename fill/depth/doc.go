// Package depth holds the rules on how deep a wall is and how far its boxes come out of
// it: rings, bodies, boxes of both faces in one bay, and boxes clamped to finished walls.
package depth
