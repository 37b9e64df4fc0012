// Package messages holds the catalogues of translated texts: one JSON object a
// language, from the ID of a text to its translation.
package messages

import "embed"

// Files holds es.json and its like, named by language tag.
//
//go:embed *.json
var Files embed.FS
