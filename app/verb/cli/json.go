package cli

import (
	"bytes"
	"encoding/json"
	"io"
)

// WriteJSON writes v indented by two spaces, with <, > and & as they are, and
// control characters as JSON escapes them.
func WriteJSON(w io.Writer, v any) error {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	_, err := Exact(w).Write(b.Bytes())
	return err
}
