package cli

import (
	"strings"
	"testing"
)

func TestPlainObeysNoName(t *testing.T) {
	var out strings.Builder
	const text = "Bath\x1b[31m\x00\u202eroom\u009b2J\x7f\r\n\tfill ½ × 3 in³\n"
	n, err := Plain{&out}.Write([]byte(text))
	if n != len(text) || err != nil {
		t.Errorf("wrote %d, %v, want %d", n, err, len(text))
	}
	const want = "Bath�[31m��room�2J��\n\tfill ½ × 3 in³\n"
	if out.String() != want {
		t.Errorf("wrote %q, want %q", out.String(), want)
	}
}
