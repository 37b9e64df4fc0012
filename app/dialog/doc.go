// Package dialog is what stands above a window until it is answered: questions, small
// forms, the choice of a file, the export of sheets, and long texts to read.
//
// A dialog decides nothing: it hands what was answered to a function. One Stage stands
// above one window and shows one dialog at a time.
//
// The choice of a file is our own. The toolkit's has no line to write or paste a path in
// where a file is to be opened, reads a folder on the window's goroutine, so that a slow
// one stops the window, and speaks the machine's language, not the one chosen in the
// View menu. TestTheToolkitsOwnChoiceOfFilesStillFallsShort fails once the first is
// mended.
package dialog
