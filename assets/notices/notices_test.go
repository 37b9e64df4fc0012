package notices

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the notices anew")

// systems are those the program is built for; some modules serve only one.
var systems = []string{"linux", "darwin", "windows"}

func TestNotices(t *testing.T) {
	modules := linked(t)
	if *update {
		writeAnew(t, modules)
	}
	for path, module := range modules {
		got, err := os.ReadFile(fileName(path))
		if errors.Is(err, fs.ErrNotExist) {
			t.Errorf("module %s is linked into the program and has no notice: run make notices", path)
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		if want := notice(t, module); !bytes.Equal(got, want) {
			t.Errorf("%s is not the notice of %s %s: run make notices", fileName(path), path, module.Version)
		}
	}
	if _, err := Files.ReadFile("go.txt"); err != nil {
		t.Errorf("the standard library has no notice: %v", err)
	}
}

// module is what go list says of one module.
type module struct{ Path, Version, Dir string }

// linked returns the modules whose packages the program is made of on any system,
// ours left out, by path.
func linked(t *testing.T) map[string]module {
	t.Helper()
	modules := map[string]module{}
	for _, system := range systems {
		cmd := exec.Command("go", "list", "-deps", "-json=Standard,Module", "studbay/app")
		cmd.Env = append(os.Environ(), "GOOS="+system, "GOARCH=amd64", "CGO_ENABLED=1")
		var stderr bytes.Buffer
		cmd.Stderr = &stderr
		out, err := cmd.Output()
		if err != nil {
			t.Fatalf("go list for %s: %v\n%s", system, err, &stderr)
		}
		for dec := json.NewDecoder(bytes.NewReader(out)); ; {
			var pkg struct{ Module *module }
			if err := dec.Decode(&pkg); err == io.EOF {
				break
			} else if err != nil {
				t.Fatal(err)
			}
			if m := pkg.Module; m != nil && m.Path != "studbay" {
				modules[m.Path] = *m
			}
		}
	}
	if len(modules) == 0 {
		t.Fatal("go list names no module: the program cannot be made of the standard library alone")
	}
	return modules
}

func fileName(path string) string { return strings.ReplaceAll(path, "/", "_") + ".txt" }

// licence matches the files, by their path in a module, that authors put licences
// and notices in: LICENSE, LICENSE-DejaVu, font/LICENSE_Inter.txt, licenses/ftl.txt.
var licence = regexp.MustCompile(`(?i)(^|/)(licen[cs]es?|copying|copyright|notice|ofl|patents)([-_.][^/]*)?(/[^/]*)?$`)

// notice returns the text kept for m: its name and version, then each licence
// in it, in the order of the walk. Tests and commands of m are not linked.
func notice(t *testing.T, m module) []byte {
	t.Helper()
	var text bytes.Buffer
	fmt.Fprintf(&text, "%s %s\n", m.Path, m.Version)
	before := text.Len()
	err := filepath.WalkDir(m.Dir, func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() {
			if name := entry.Name(); name == "testdata" || name == "cmd" || name == "examples" {
				return filepath.SkipDir
			}
			return nil
		}
		place, err := filepath.Rel(m.Dir, path)
		if err != nil {
			return err
		}
		place = filepath.ToSlash(place)
		if !licence.MatchString(place) || filepath.Ext(place) == ".go" {
			return nil
		}
		words, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		words = bytes.ReplaceAll(words, []byte("\r\n"), []byte("\n"))
		fmt.Fprintf(&text, "\n---- %s ----\n\n%s\n", place, bytes.TrimSpace(words))
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if text.Len() == before {
		t.Fatalf("module %s %s brings no licence file", m.Path, m.Version)
	}
	return text.Bytes()
}

// writeAnew replaces all notices by those of modules.
func writeAnew(t *testing.T, modules map[string]module) {
	t.Helper()
	old, err := filepath.Glob("*.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range old {
		if name != "go.txt" {
			if err := os.Remove(name); err != nil {
				t.Fatal(err)
			}
		}
	}
	for path, m := range modules {
		if err := os.WriteFile(fileName(path), notice(t, m), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	library, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), "LICENSE"))
	if err != nil {
		t.Fatal(err)
	}
	text := "The Go standard library\n\n---- LICENSE ----\n\n" + strings.TrimSpace(string(library)) + "\n"
	if err := os.WriteFile("go.txt", []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}
