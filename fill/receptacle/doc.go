// Package receptacle holds the rules on which rooms and areas of a dwelling have
// receptacles, 210.52(D) to (I): what is there, not how far it is along a wall.
package receptacle
