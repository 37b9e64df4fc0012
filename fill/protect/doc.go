// Package protect holds the rules on what protects people and wires: ground faults and arc
// faults, circuits and what is on them, the place of a panel, cables within walls and walls
// rated for fire.
package protect
