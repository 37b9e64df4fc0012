package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"

	"studbay/plan/file"
	"studbay/plan/plantest"
)

// The exports of which the memory of the whole process is measured.
const (
	exportPNG = "export png"
	exportPDF = "export pdf"
	exportAll = "export pdf of 10,000"
)

// peak is the unit of the most memory a process had at a time.
const peak = "peak-B"

var exports = []struct {
	bench, ending, paper string
	openings             int
}{
	{exportPNG, ".png", "archd", 200},
	{exportPDF, ".pdf", "archd", 1000},
	{exportAll, ".pdf", "tabloid", 10_000},
}

// program is the built program with plans to export.
type program struct{ folder string }

// buildProgram builds the program as users have it into a folder, and makes the plans.
func buildProgram(folder string) (*program, error) {
	p := &program{folder}
	out, err := exec.Command("go", "build", "-ldflags", "-s -w", "-o", p.path(), "./app").CombinedOutput()
	if err != nil {
		return nil, fmt.Errorf("building the program: %w\n%s", err, bytes.TrimSpace(out))
	}
	for _, e := range exports {
		data, err := file.Encode(plantest.House(1, e.openings))
		if err != nil {
			return nil, err
		}
		if err := os.WriteFile(p.plan(e.openings), data, 0o600); err != nil {
			return nil, err
		}
	}
	return p, nil
}

func (p *program) path() string { return filepath.Join(p.folder, "studbay") }

func (p *program) plan(openings int) string {
	return filepath.Join(p.folder, fmt.Sprint(openings, file.Suffix))
}

// measure runs every export once and notes its peak.
func (p *program) measure(n *notes) error {
	for _, e := range exports {
		to := filepath.Join(p.folder, "out"+e.ending)
		cmd := exec.Command(p.path(), "export", p.plan(e.openings), "--paper", e.paper, "--dpi", "300", "--to", to)
		if out, err := cmd.CombinedOutput(); err != nil {
			return fmt.Errorf("%s: %w\n%s", e.bench, err, bytes.TrimSpace(out))
		}
		if bytes, known := peakOf(cmd.ProcessState); known {
			n.note(e.bench, peak, bytes)
		}
	}
	return nil
}
