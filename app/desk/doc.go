// Package desk wires one window: the document, the board, cards, tools and commands.
//
// Desk knows all parts and no part knows Desk: each gets the few others that it uses, as
// values or behind an interface. The life of the document is in package work, what stands
// above the window in package dialog, what surrounds the board in package shell.
// Everything runs on the toolkit's one goroutine but checking, loading and exporting,
// whose results come back to it.
package desk
