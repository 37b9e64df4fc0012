// Package takeoff says what each opening of a plan takes in parts, minutes, blocks and
// cut-outs, and what that costs by a price book.
//
// A box that is there already takes nothing unless it is changed for another, one that is
// removed a blank or a patch. Every sum is a sum over the lines of openings: each line is
// rounded to the cent once, and nothing is rounded again. Cable is counted where it is
// drawn, at the opening that it runs to; cables that are only assumed have no length.
package takeoff
