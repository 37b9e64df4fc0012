// Package spacing holds the rules on how far receptacles may be from one another: what
// is wall space along the floor line, what is a counter, and what serves it.
package spacing
