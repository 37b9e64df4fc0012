// Package dialog is what stands above a window until it is answered: questions, small
// forms, the choice of a file, the export of sheets, and long texts to read.
//
// A dialog decides nothing: it hands what was answered to a function. One Stage stands
// above one window and shows one dialog at a time.
package dialog
