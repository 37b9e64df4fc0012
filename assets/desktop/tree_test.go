//go:build linux

package desktop

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// tree is what is below a folder: each path with its kind, mode and content.
type tree map[string]string

func look(t *testing.T, root string) tree {
	t.Helper()
	found := tree{}
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || path == root {
			return err
		}
		info, err := entry.Info()
		if err != nil {
			return err
		}
		content := []byte(nil)
		if info.Mode().IsRegular() {
			if content, err = os.ReadFile(path); err != nil {
				return err
			}
		}
		below, err := filepath.Rel(root, path)
		found[below] = fmt.Sprint(info.Mode(), " ", string(content))
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// same complains of every path in which two looks at a tree differ.
func same(t *testing.T, when string, got, want tree) {
	t.Helper()
	all := maps.Clone(got)
	maps.Copy(all, want)
	for _, path := range slices.Sorted(maps.Keys(all)) {
		now, is := got[path]
		before, was := want[path]
		switch {
		case !was:
			t.Errorf("%s: %s is there and was not", when, path)
		case !is:
			t.Errorf("%s: %s is gone", when, path)
		case now != before:
			t.Errorf("%s: %s has changed", when, path)
		}
	}
}

// home is a user's folder with things of their own in it, some of them where an
// installation puts its own.
func home(t *testing.T, name string) string {
	t.Helper()
	root := filepath.Join(t.TempDir(), name)
	for file, text := range map[string]string{
		"plans/cottage.studbay":                            "{\n  \"format\": \"studbay\",\n  \"version\": \"1.0\"\n}\n",
		"plans/unnamed":                                    "{\n  \"format\": \"studbay\",\n  \"version\": \"1.0\"\n}\n",
		".config/studbay/settings.json":                    "{}\n",
		".local/state/studbay/recovery/1.studbay":          "{}\n",
		".local/share/icons/hicolor/48x48/apps/other.png":  "a picture",
		".local/share/studbay/notes":                       "of the user",
		".local/share/bash-completion/completions/another": "# another\n",
	} {
		write(t, filepath.Join(root, file), text, 0o644)
	}
	return root
}

func write(t *testing.T, file, text string, mode fs.FileMode) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), mode); err != nil {
		t.Fatal(err)
	}
}
