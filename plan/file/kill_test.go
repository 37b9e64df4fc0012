package file

import (
	"bufio"
	"errors"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"studbay/plan"
)

// started runs a task in another process until it says a line.
func started(t *testing.T, task, place string) (cmd *exec.Cmd, line string) {
	t.Helper()
	cmd = exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), taskVariable+"="+task, placeVariable+"="+place)
	out, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = cmd.Process.Kill(); _ = cmd.Wait() })
	line, err = bufio.NewReader(out).ReadString('\n')
	if err != nil {
		t.Fatal("the other process says nothing: ", err)
	}
	return cmd, line
}

// killTimes is 50, or what STUDBAY_KILLS says.
func killTimes() int {
	if n, err := strconv.Atoi(os.Getenv("STUDBAY_KILLS")); err == nil {
		return n
	}
	return 50
}

// kill ends the process at any moment of its next few saves.
func kill(t *testing.T, cmd *exec.Cmd) {
	time.Sleep(time.Duration(rand.IntN(8000)) * time.Microsecond)
	if err := cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	var exit *exec.ExitError
	if err := cmd.Wait(); !errors.As(err, &exit) || exit.Exited() {
		t.Fatalf("the other process ended by itself: %v", err)
	}
}

// twoPlans are of different sizes, so that a mixture of both is seen.
func twoPlans() [2]plan.Plan {
	small, large := sample(), sample()
	header := *large.Header
	header.Title = "Larger boat shed"
	large.Header = &header
	level := *large.Levels[0]
	random := rand.NewChaCha8([32]byte{})
	for i := range 200 {
		o := *sampleSwitch()
		id, err := plan.NewID(plan.KindOpening, random)
		if err != nil {
			panic(err)
		}
		o.ID = id
		o.Tag = "L" + strconv.Itoa(i+1)
		level.Openings = level.Openings.With(&o)
	}
	return [2]plan.Plan{small, large.WithLevel(&level)}
}

func saveForEver(path string) error {
	stamp, err := StampOf(path)
	plans := twoPlans()
	for i := 0; err == nil; i++ {
		stamp, err = Save(path, plans[i%2], stamp)
		if i == 0 {
			os.Stdout.WriteString("saving\n")
		}
	}
	return err
}

func TestKilledWhileSaving(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	plans := twoPlans()
	for range killTimes() {
		cmd, line := started(t, "save", path)
		if line != "saving\n" {
			t.Fatal(line)
		}
		kill(t, cmd)
		p, _, err := Load(path)
		if err != nil {
			t.Fatal(err)
		}
		if !same(t, p, plans[0]) && !same(t, p, plans[1]) {
			t.Fatalf("neither the old plan nor the new one:\n%s", encode(t, p))
		}
	}
}

func keepForEver(folder string) error {
	r, err := OpenRecovery(folder)
	plans := twoPlans()
	for i := 0; err == nil; i++ {
		err = r.Keep(Unsaved{Doc: "shed", Path: "/plans/shed.studbay", Time: time.Now(), Plan: plans[i%2]})
		if i == 0 {
			os.Stdout.WriteString("keeping\n")
		}
	}
	return err
}

func TestKilledWhileKeeping(t *testing.T) {
	folder := t.TempDir()
	plans := twoPlans()
	for range killTimes() / 2 {
		cmd, line := started(t, "keep", folder)
		if line != "keeping\n" {
			t.Fatal(line)
		}
		r := opened(t, folder)
		if found, problems := r.List(); len(found) > 0 || len(problems) > 0 {
			t.Fatalf("offers %d plans of a run at work, and %v", len(found), problems)
		}
		kill(t, cmd)
		found, problems := r.List()
		if len(found) != 1 || len(problems) > 0 {
			t.Fatalf("finds %d plans and %v", len(found), problems)
		}
		if p := found[0].Plan; !same(t, p, plans[0]) && !same(t, p, plans[1]) {
			t.Fatalf("neither the old plan nor the new one:\n%s", encode(t, p))
		}
		if err := r.Drop("shed"); err != nil {
			t.Fatal(err)
		}
		r.Close()
	}
	if left, _ := filepath.Glob(filepath.Join(folder, "*")); len(left) > 0 {
		t.Errorf("leaves %v", left)
	}
}

func claimForEver(place string) error {
	if _, err := ClaimFile(filepath.Dir(place), place); err != nil {
		return err
	}
	os.Stdout.WriteString("claimed\n")
	time.Sleep(time.Hour)
	return nil
}

func TestClaim(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	cmd, line := started(t, "claim", path)
	if line != "claimed\n" {
		t.Fatal(line)
	}
	link := filepath.Join(folder, "link.studbay")
	if err := os.Symlink("shed.studbay", link); err != nil {
		t.Fatal(err)
	}
	var e *Error
	if _, err := ClaimFile(folder, link); !errors.Is(err, ErrClaimed) || !errors.As(err, &e) || e.Text().ID != "file.claimed-since" {
		t.Errorf("claimed by another process: %v", err)
	}
	kill(t, cmd)
	claim, err := ClaimFile(folder, link)
	if err != nil {
		t.Fatal("after a kill: ", err)
	}
	if _, err := ClaimFile(folder, path); !errors.Is(err, ErrClaimed) {
		t.Errorf("claimed by another window of this process: %v", err)
	}
	claim.Release()
	if claim, err = ClaimFile(folder, path); err != nil {
		t.Error("after release: ", err)
	} else {
		claim.Release()
	}
}
