// Package wall holds the rules on what can be built in one wall: its framing, and boxes
// clear of edges, breaks and each other.
package wall
