// Package boxes says what is in the box of an opening and holds the rules on its fill.
// The arithmetic is package box's, which knows no plan.
package boxes
