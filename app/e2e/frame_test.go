//go:build linux

package e2e

import (
	"image"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// BenchmarkFirstFrame is how long the program takes from its start to the first frame in
// sight, and how long a bare window of the toolkit takes, one after the other. The frame
// is in sight once a tenth of the display differs from what it showed before.
func BenchmarkFirstFrame(b *testing.B) {
	d := OpenDisplay(b, 1366, 768)
	ours, err := studbay()
	if err != nil {
		b.Fatal(err)
	}
	bare := buildBare(b)
	homes := [2]string{b.TempDir(), b.TempDir()}
	d.firstFrame(bare, homes[0])
	d.firstFrame(ours, homes[1])
	var took [2]time.Duration
	n := 0
	for b.Loop() {
		took[0] += d.firstFrame(bare, homes[0])
		took[1] += d.firstFrame(ours, homes[1])
		n++
	}
	b.ReportMetric(milliseconds(took[1], n), "ours-ms")
	b.ReportMetric(milliseconds(took[0], n), "bare-ms")
}

func milliseconds(d time.Duration, n int) float64 {
	return float64(d.Microseconds()) / 1000 / float64(n)
}

// buildBare builds the bare window.
func buildBare(b *testing.B) string {
	b.Helper()
	file := filepath.Join(b.TempDir(), "bare")
	cmd := exec.Command("go", "build", "-o", file, "./testdata/bare")
	if out, err := cmd.CombinedOutput(); err != nil {
		b.Fatalf("%s: %v\n%s", cmd, err, out)
	}
	return file
}

// firstFrame starts a program in a home and returns when its first frame is in sight; then
// it ends the program and waits until the display is as it was.
func (d *Display) firstFrame(program, home string) time.Duration {
	d.t.Helper()
	before := d.WaitStill()
	cmd := exec.Command(program)
	cmd.Dir, cmd.Env = home, environment(d, home)
	began := time.Now()
	p := &Program{t: d.t, on: d, Home: home, stderr: filepath.Join(home, ".log")}
	p.ended = launch(d.t, cmd, p.stderr)
	p.pid = cmd.Process.Pid
	var took time.Duration
	for {
		p.MustRun()
		if took = time.Since(began); shareOf(before, d.Picture()) > 0.1 {
			break
		}
		if took > patience {
			d.t.Fatalf("no frame of %s within %v: %s", program, patience, p.Said())
		}
		time.Sleep(time.Millisecond)
	}
	p.Kill()
	d.Until("the display to be as before", func() bool { return !Differs(before, d.Picture(), before.Rect) })
	return took
}

// shareOf returns which share of two pictures of one display differs, by one pixel of
// eight in each direction.
func shareOf(a, b *image.RGBA) float64 {
	const step = 8
	differ, all := 0, 0
	for y := a.Rect.Min.Y; y < a.Rect.Max.Y; y += step {
		for x := a.Rect.Min.X; x < a.Rect.Max.X; x += step {
			all++
			if a.RGBAAt(x, y) != b.RGBAAt(x, y) {
				differ++
			}
		}
	}
	return float64(differ) / float64(all)
}

// Half a picture that differs counts as half.
func TestShareOfAPicture(t *testing.T) {
	a, b := image.NewRGBA(image.Rect(0, 0, 64, 64)), image.NewRGBA(image.Rect(0, 0, 64, 64))
	for i := range len(b.Pix) / 2 {
		b.Pix[i] = 0xff
	}
	if got := shareOf(a, b); got != 0.5 {
		t.Errorf("%v of it differs, want half", got)
	}
	if got := shareOf(a, a); got != 0 {
		t.Errorf("%v of a picture differs from itself", got)
	}
}
