// Package remodel holds the rules on walls that stand already: what can still be built
// into them, and what becomes of the boxes and cables that are there.
package remodel
