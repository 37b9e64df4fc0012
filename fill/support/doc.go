// Package support holds the rules on what holds a box: studs that stand where it is to go,
// what stands in for a stud that it does not reach, and what carries fans and heavy lights.
package support
