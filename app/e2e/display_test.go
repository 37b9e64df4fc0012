//go:build linux

package e2e

import (
	"bufio"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// patience is how long a test waits for something to show before it fails. It is
// generous: only a failing test ever waits it out.
const patience = 30 * time.Second

// A Display is a virtual screen of its own with a window manager on it.
type Display struct {
	t      testing.TB
	name   string // as in DISPLAY: ":99"
	size   image.Point
	frames string // the file Xvfb keeps the screen's pixels in
	shots  string // the folder for pictures
}

// windowRules makes every window fill the screen without a frame, and Alt+F4 ask
// it to close. Openbox binds no other key or button with these alone.
const windowRules = `<?xml version="1.0"?>
<openbox_config xmlns="http://openbox.org/3.4/rc">
  <focus><focusNew>yes</focusNew></focus>
  <keyboard><keybind key="A-F4"><action name="Close"/></keybind></keyboard>
  <applications>
    <application type="normal"><decor>no</decor><focus>yes</focus><maximized>yes</maximized></application>
  </applications>
</openbox_config>
`

// OpenDisplay starts a display of the given size in pixels and takes it down with
// the test.
func OpenDisplay(t testing.TB, width, height int) *Display {
	t.Helper()
	needTools(t)
	folder := t.TempDir()
	d := &Display{t: t, size: image.Pt(width, height), frames: filepath.Join(folder, "Xvfb_screen0"), shots: shotsFolder(t)}
	d.name = d.startServer(folder)
	t.Cleanup(d.shotIfFailed)
	d.startManager(folder)
	return d
}

// needTools skips the test where the tools are missing, or fails it where they
// must be there.
func needTools(t testing.TB) {
	t.Helper()
	for _, tool := range []string{"Xvfb", "openbox", "xdotool"} {
		if _, err := exec.LookPath(tool); err != nil {
			if os.Getenv("STUDBAY_E2E") == "must" {
				t.Fatalf("%v: run .ci/setup test", err)
			}
			t.Skipf("%v: run .ci/setup test", err)
		}
	}
}

// startServer starts Xvfb on a free display that it picks itself, and returns its
// name once it takes connections.
func (d *Display) startServer(folder string) string {
	d.t.Helper()
	number, tell, err := os.Pipe()
	if err != nil {
		d.t.Fatal(err)
	}
	defer number.Close()
	screen := spell(d.size.X) + "x" + spell(d.size.Y) + "x24"
	cmd := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", screen, "-fbdir", folder, "-nolisten", "tcp", "-noreset")
	cmd.ExtraFiles = []*os.File{tell}
	launch(d.t, cmd, filepath.Join(folder, "Xvfb.log"))
	tell.Close()
	line, err := bufio.NewReader(number).ReadString('\n')
	if err != nil {
		d.t.Fatalf("Xvfb did not start: %v\n%s", err, contents(filepath.Join(folder, "Xvfb.log")))
	}
	return ":" + strings.TrimSpace(line)
}

// startManager starts the window manager and waits until it manages windows.
func (d *Display) startManager(folder string) {
	d.t.Helper()
	rules := filepath.Join(folder, "rc.xml")
	if err := os.WriteFile(rules, []byte(windowRules), 0o600); err != nil {
		d.t.Fatal(err)
	}
	ready := filepath.Join(folder, "ready")
	cmd := exec.Command("openbox", "--config-file", rules, "--startup", "touch "+ready)
	cmd.Env = append(os.Environ(), "DISPLAY="+d.name, "HOME="+folder)
	launch(d.t, cmd, filepath.Join(folder, "openbox.log"))
	d.Until("the window manager to start", func() bool {
		_, err := os.Stat(ready)
		return err == nil
	})
	d.Key("Shift_L") // the first of a display makes the manager take its keys anew, and a key within that time is lost
}

// Until waits for done to report true and fails the test after patience.
func (d *Display) Until(what string, done func() bool) {
	d.t.Helper()
	for deadline := time.Now().Add(patience); !done(); time.Sleep(20 * time.Millisecond) {
		if time.Now().After(deadline) {
			d.t.Fatalf("waited %v in vain for %s", patience, what)
		}
	}
}

// launch starts cmd with its output in the file log, and ends it with the test,
// or with this process should that be killed.
func launch(t testing.TB, cmd *exec.Cmd, log string) (ended <-chan error) {
	t.Helper()
	out, err := os.Create(log)
	if err != nil {
		t.Fatal(err)
	}
	defer out.Close()
	cmd.Stdout, cmd.Stderr = out, out
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true, Pdeathsig: syscall.SIGKILL}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	end := make(chan error, 1)
	done := make(chan struct{})
	go func() {
		end <- cmd.Wait()
		close(done)
	}()
	t.Cleanup(func() {
		// The whole group, for what the process itself has started.
		if err := syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL); err != nil && err != syscall.ESRCH {
			t.Errorf("ending %s: %v", cmd.Path, err)
		}
		<-done
	})
	return end
}

// contents is the text of a log, or why it cannot be read.
func contents(file string) string {
	text, err := os.ReadFile(file)
	if err != nil {
		return err.Error()
	}
	return string(text)
}
