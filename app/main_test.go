package main

import (
	"path/filepath"
	"testing"
)

func TestWantsWindow(t *testing.T) {
	for _, tt := range []struct {
		name string
		args []string
		want bool
	}{
		{"nothing", nil, true},
		{"a plan", []string{"cottage.studbay"}, true},
		{"a plan in capitals", []string{`C:\plans\COTTAGE.STUDBAY`}, true},
		{"a verb", []string{"fill"}, false},
		{"a verb and a plan", []string{"check", "cottage.studbay"}, false},
		{"a flag that looks like a plan", []string{"--x.studbay"}, false},
		{"another file", []string{"cottage.json"}, false},
		{"two plans", []string{"a.studbay", "b.studbay"}, true},
		{"a plan and something else", []string{"a.studbay", "b.json"}, false},
	} {
		if got := wantsWindow(tt.args); got != tt.want {
			t.Errorf("%s: wantsWindow(%q) = %v, want %v", tt.name, tt.args, got, tt.want)
		}
	}
}

func TestAbsolute(t *testing.T) {
	folder := t.TempDir()
	t.Chdir(folder)
	whole := filepath.Join(folder, "b.studbay")
	if got := absolute([]string{"a.studbay", whole}); len(got) != 2 || !filepath.IsAbs(got[0]) ||
		filepath.Base(got[0]) != "a.studbay" || got[1] != whole {
		t.Errorf("the paths are %q", got)
	}
	if got := absolute(nil); got != nil {
		t.Errorf("no paths are %q", got)
	}
}
