package main

import "testing"

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
		{"two plans", []string{"a.studbay", "b.studbay"}, false},
	} {
		if got := wantsWindow(tt.args); got != tt.want {
			t.Errorf("%s: wantsWindow(%q) = %v, want %v", tt.name, tt.args, got, tt.want)
		}
	}
}
