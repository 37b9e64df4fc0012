// Package help holds the pages of the help: one file a page in a folder a language, named
// alike in all, and the pictures they show, made from the program by "make pictures".
//
// A page is plain Markdown of few means: one # title, ## headings, paragraphs, lists of
// "- " or "1. ", and pictures on a line of their own. Package studbay/app/help reads it.
package help

import "embed"

// Files holds en/*.md, es/*.md and pictures/*.png.
//
//go:embed en/*.md es/*.md pictures/*.png
var Files embed.FS
