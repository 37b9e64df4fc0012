//go:build linux

package ci

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// script returns the path of one of our scripts, having read it: the go command
// remembers the result of a test until a file it read changes.
func script(t *testing.T, name string) string {
	t.Helper()
	path, err := filepath.Abs(filepath.Join("..", "..", ".ci", name))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.ReadFile(path); err != nil {
		t.Fatal(err)
	}
	return path
}

// tools makes a folder that holds the named tools of this machine and no others.
func tools(t *testing.T, names ...string) string {
	t.Helper()
	dir := t.TempDir()
	for _, name := range names {
		path, err := exec.LookPath(name)
		if err != nil {
			t.Skipf("%s is not here", name)
		}
		if err := os.Symlink(path, filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// write writes a file that may be run, with the folders above it.
func write(t *testing.T, file, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o755); err != nil {
		t.Fatal(err)
	}
}

// run runs a script with a PATH of its own and returns what it wrote and its status.
func run(t *testing.T, path, script string, args ...string) (string, int) {
	t.Helper()
	cmd := exec.Command(script, args...)
	cmd.Env = []string{"PATH=" + path, "HOME=" + t.TempDir(), "LC_ALL=C.UTF-8", "CC=no-compiler"}
	out, err := cmd.CombinedOutput()
	if err != nil && cmd.ProcessState == nil {
		t.Fatal(err)
	}
	return string(out), cmd.ProcessState.ExitCode()
}
