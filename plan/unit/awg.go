package unit

// AWG is an American wire gauge size: 18, 16, 14 ... 1, and 0, -1, -2, -3 for
// 1/0 to 4/0. A smaller number is a thicker conductor.
type AWG int

// Larger reports whether a is a thicker conductor than b.
func (a AWG) Larger(b AWG) bool { return a < b }
