package file

// v1 is the first version of the format: the structs of package plan as they stand. It is
// the start of the way: a later version adds a file such as v2.go with its number, what it
// changed, and its step, and one line in current.
var v1 = version{1, 0}
