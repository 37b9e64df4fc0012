package desk

import "studbay/app/tool"

// toolEntry is one tool of the rail, ready for use.
type toolEntry struct {
	tool.Entry
	tool tool.Tool
}

// toolTable makes the tools of a window, in the order of the rail.
func toolTable() (entries []toolEntry) {
	for _, e := range tool.Tools {
		entries = append(entries, toolEntry{e, e.New()})
	}
	return entries
}
