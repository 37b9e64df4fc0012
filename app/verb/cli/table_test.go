package cli

import (
	"strings"
	"testing"

	"studbay/plan/words"
)

func TestTableBreaksParagraphs(t *testing.T) {
	var tb Table
	tb.Paragraph(words.New("test.text", strings.Repeat("four ", 20)))
	if len(tb.lines) != 2 || len(tb.lines[0].text) != 79 {
		t.Errorf("lines %+v", tb.lines)
	}
}
