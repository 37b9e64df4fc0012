// Package desk is the window around one document: its menus, rail, drawer, cards and
// strips, and what they do to the document.
//
// The window holds no state of a plan: it shows what the document says and turns
// gestures into edits. The document itself knows no widget. Everything runs on the
// toolkit's one goroutine but checking, loading and exporting, whose results come back
// to it.
package desk
