// Package protect holds the rules on fire-resistance rated walls and on what keeps cables
// within walls from harm.
package protect
