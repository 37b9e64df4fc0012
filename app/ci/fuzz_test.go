//go:build linux

package ci

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// fuzzGo stands in for the go command: it writes down which fuzz test it was to run and
// says what such a test has been seen to say.
const fuzzGo = `#!/bin/sh
name=$(printf '%s' "$5" | tr -d '^$')
echo "$name" >>"$HOME_LOG"
case $name in
FuzzClock) # github.com/golang/go/issues/75804: the runner's own end of time told as a failure
	printf -- '--- FAIL: %s (30.02s)\n    context deadline exceeded\nFAIL\n' "$name"
	exit 1
	;;
FuzzBad)
	printf -- '--- FAIL: %s (3.02s)\n    --- FAIL: %s (0.00s)\n        bad_test.go:9: context deadline exceeded\n' "$name" "$name"
	printf '    Failing input written to testdata/fuzz/%s/582528ddfad69eb5\nFAIL\n' "$name"
	exit 1
	;;
FuzzHung)
	printf -- '--- FAIL: %s (3.02s)\n    fuzzing process hung or terminated unexpectedly: exit status 2\n    context deadline exceeded\nFAIL\n' "$name"
	exit 1
	;;
esac
echo PASS
`

func TestFuzzTellsAFindingFromTheEndOfTime(t *testing.T) {
	for _, tt := range []struct {
		name  string
		tests []string
		want  string // what the last line says; empty: that all is well
	}{
		{"nothing found", []string{"FuzzFine", "FuzzGood"}, ""},
		{"out of time", []string{"FuzzClock", "FuzzGood"}, ""},
		{"a finding", []string{"FuzzBad", "FuzzGood"}, "fuzz: something was found by part:FuzzBad"},
		{"a hang", []string{"FuzzHung", "FuzzGood"}, "fuzz: something was found by part:FuzzHung"},
		{"two findings", []string{"FuzzBad", "FuzzClock", "FuzzHung"}, "fuzz: something was found by part:FuzzBad part:FuzzHung"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			path := tools(t, "bash", "sh", "env", "dirname", "mktemp", "rm", "git", "xargs", "sort", "sed", "grep", "tee", "tr")
			top := t.TempDir()
			log := filepath.Join(top, "ran")
			write(t, filepath.Join(path, "go"), strings.ReplaceAll(fuzzGo, "$HOME_LOG", log))
			text, err := os.ReadFile(script(t, "fuzz"))
			if err != nil {
				t.Fatal(err)
			}
			write(t, filepath.Join(top, ".ci", "fuzz"), string(text))
			source := "package part\n"
			for _, name := range tt.tests {
				source += "\nfunc " + name + "(f *testing.F) {}\n"
			}
			write(t, filepath.Join(top, "part", "part_test.go"), source)
			run(t, path, filepath.Join(path, "git"), "init", "-q", top)

			out, status := run(t, path, filepath.Join(top, ".ci", "fuzz"))
			if clear := status == 0; clear != (tt.want == "") {
				t.Errorf("status %d, want it to say %q", status, tt.want)
			}
			if tt.want != "" && !strings.HasSuffix(strings.TrimSpace(out), tt.want) {
				t.Errorf("it says\n%s\nwant in the end %q", out, tt.want)
			}
			ran, _ := os.ReadFile(log)
			if got, want := strings.Fields(string(ran)), strings.Join(tt.tests, " "); strings.Join(got, " ") != want {
				t.Errorf("ran %q, want %q", got, want)
			}
		})
	}
}
