package dialog

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets/notices"
)

func TestNoticesAreWholeAndInShortLines(t *testing.T) {
	lines, err := noticeLines(notices.Files)
	if err != nil {
		t.Fatal(err)
	}
	all := strings.Fields(strings.Join(lines, " "))
	for _, want := range []string{"fyne.io/fyne/v2", "github.com/fogleman/gg"} {
		if !slices.Contains(all, want) {
			t.Errorf("no notice names %q", want)
		}
	}
	words := 0
	names, _ := notices.Files.ReadDir(".")
	for _, name := range names {
		data, err := notices.Files.ReadFile(name.Name())
		if err != nil {
			t.Fatal(err)
		}
		words += len(strings.Fields(string(data))) + 1 // and the line below
	}
	if len(all) != words {
		t.Errorf("%d words, want %d: some are lost", len(all), words)
	}
}

func TestALongLineIsBrokenBetweenWords(t *testing.T) {
	long := strings.Repeat("word ", 40)
	lines, err := noticeLines(fstest.MapFS{"example.org_a.txt": {Data: []byte(long + "\n  " + strings.Repeat("x", 200))}})
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range lines[:2] {
		if len(line) > noticeColumns || strings.Trim(line, "word ") != "" {
			t.Errorf("a line of %d letters: %q", len(line), line)
		}
	}
	if at := slices.IndexFunc(lines, func(l string) bool { return strings.Contains(l, "xxx") }); len(lines[at]) != 202 {
		t.Errorf("a word longer than a line was broken: %q", lines[at])
	}
}
