package verb

import (
	"strings"
	"testing"
)

func TestErrorsObeyNoName(t *testing.T) {
	var out, told strings.Builder
	if got := Run([]string{"check", "no\x1b[2Jsuch"}, Streams{Out: &out, Err: &told}); got != StatusWrong {
		t.Errorf("status %d, want %d", got, StatusWrong)
	}
	if strings.ContainsRune(told.String(), '\x1b') || told.Len() == 0 {
		t.Errorf("told %q", told.String())
	}
}
