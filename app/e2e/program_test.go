//go:build linux

package e2e

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"
)

// A Program is one run of studbay on a display.
type Program struct {
	t      testing.TB
	on     *Display
	Home   string // its home folder, where a test puts plans and finds exports
	stderr string // the file with what it wrote to stderr and stdout
	pid    int
	ended  <-chan error
}

// studbay builds studbay once for all tests and returns its path. The folder is
// TestMain's to remove.
var studbay = sync.OnceValues(func() (string, error) {
	file := filepath.Join(buildFolder, "studbay")
	cmd := exec.Command("go", "build", "-o", file, "./app")
	cmd.Dir = filepath.Join("..", "..")
	out, err := cmd.CombinedOutput()
	if err != nil {
		return "", fmt.Errorf("%s: %w\n%s", cmd, err, out)
	}
	return file, nil
})

var buildFolder string

func TestMain(m *testing.M) {
	folder, err := os.MkdirTemp("", "studbay-e2e-")
	if err != nil {
		panic(err)
	}
	buildFolder = folder
	code := m.Run()
	os.RemoveAll(folder)
	os.Exit(code)
}

// Start runs studbay with args on the display, in a home of its own.
func Start(d *Display, args ...string) *Program {
	d.t.Helper()
	return StartIn(d, d.t.TempDir(), args...)
}

// StartIn is Start with a home that an earlier run has left.
func StartIn(d *Display, home string, args ...string) *Program {
	d.t.Helper()
	file, err := studbay()
	if err != nil {
		d.t.Fatal(err)
	}
	cmd := exec.Command(file, args...)
	cmd.Dir = home
	cmd.Env = environment(d, home)
	log, err := os.CreateTemp(home, ".stderr-")
	if err != nil {
		d.t.Fatal(err)
	}
	log.Close()
	p := &Program{t: d.t, on: d, Home: home, stderr: log.Name()}
	p.ended = launch(d.t, cmd, p.stderr)
	p.pid = cmd.Process.Pid
	return p
}

// environment is all the program sees of the machine: the display, its home and
// the locale that servers have.
func environment(d *Display, home string) []string {
	env := []string{
		"DISPLAY=" + d.name,
		"PATH=" + os.Getenv("PATH"),
		"HOME=" + home,
		"LANG=C.UTF-8",
		"LIBGL_ALWAYS_SOFTWARE=1",
		"FYNE_SCALE=1",
		// No message bus, and none started for us.
		"DBUS_SESSION_BUS_ADDRESS=unix:path=" + filepath.Join(home, "no-bus"),
	}
	for name, folder := range map[string]string{
		"XDG_CONFIG_HOME": ".config", "XDG_DATA_HOME": ".local/share", "XDG_STATE_HOME": ".local/state",
		"XDG_CACHE_HOME": ".cache", "XDG_RUNTIME_DIR": ".run", "TMPDIR": ".tmp",
	} {
		path := filepath.Join(home, folder)
		if err := os.MkdirAll(path, 0o700); err != nil {
			d.t.Fatal(err)
		}
		env = append(env, name+"="+path)
	}
	return env
}

// WaitWindow waits for a window of the program whose title holds the text, gives
// it the keyboard and returns when it is drawn.
func (p *Program) WaitWindow(title string) {
	p.t.Helper()
	empty := p.on.Picture()
	p.on.Until("a window titled "+title, func() bool {
		p.MustRun()
		found, err := p.on.try("search", "--onlyvisible", "--pid", spell(p.pid), "--name", title)
		if err != nil || found == "" {
			return false
		}
		id, _, _ := strings.Cut(found, "\n")
		_, err = p.on.try("windowactivate", "--sync", id)
		return err == nil
	})
	p.on.WaitChange("the window to be drawn", empty, empty.Rect)
}

// MustRun fails the test if the program has ended.
func (p *Program) MustRun() {
	p.t.Helper()
	select {
	case err := <-p.ended:
		p.t.Fatalf("the program has ended (%v):\n%s", err, p.Said())
	default:
	}
}

// Said returns what the program has written to stderr and stdout.
func (p *Program) Said() string { return contents(p.stderr) }

// Close asks the window to close and waits for the program to end well. It asks a
// second time where the window manager may have lost the key.
func (p *Program) Close() {
	p.t.Helper()
	p.on.Key("alt+F4")
	select {
	case err := <-p.ended:
		p.endedWell(err)
	case <-time.After(patience / 3):
		p.on.Key("alt+F4")
		p.WaitEnd()
	}
}

// WaitEnd waits for the program to end by itself, with status 0.
func (p *Program) WaitEnd() {
	p.t.Helper()
	select {
	case err := <-p.ended:
		p.endedWell(err)
	case <-time.After(patience):
		p.t.Fatalf("the program did not end within %v of being asked to:\n%s", patience, p.Said())
	}
}

func (p *Program) endedWell(err error) {
	p.t.Helper()
	if err != nil {
		p.t.Fatalf("the program ended with %v:\n%s", err, p.Said())
	}
}

// Kill ends the program as a power cut does, without a word to it.
func (p *Program) Kill() {
	p.t.Helper()
	if err := syscall.Kill(p.pid, syscall.SIGKILL); err != nil {
		p.t.Fatal(err)
	}
	<-p.ended
}
