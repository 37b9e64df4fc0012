// Package clash holds the rules on what is on and before a wall once it is finished: plates
// and casings, doors that stand open, cabinets and furniture, heights that look alike, and
// pairs.
package clash
