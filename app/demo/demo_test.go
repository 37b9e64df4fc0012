package demo_test

import (
	"os"
	"path/filepath"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
)

// The embedded demos are what the builders make: run make demo after a change.
func TestEmbeddedDemosAreCurrent(t *testing.T) {
	for _, d := range demo.All {
		t.Run(d.Name, func(t *testing.T) {
			p, err := d.Build()
			if err != nil {
				t.Fatal(err)
			}
			want, err := file.Encode(p)
			if err != nil {
				t.Fatal(err)
			}
			got, err := os.ReadFile(filepath.Join("..", "..", "assets", "demo", d.Name+".studbay"))
			if err != nil {
				t.Fatal(err)
			}
			if string(got) != string(want) {
				t.Errorf("assets/demo/%s.studbay differs from what the builder makes", d.Name)
			}
			read, err := file.Decode(d.Name, got)
			if err != nil || !plan.Equal(read, p) {
				t.Errorf("it reads back as another plan, %v", err)
			}
		})
	}
}

// The cottage shows just the findings that its doc comment tells of.
func TestCottageFindings(t *testing.T) {
	p, err := demo.Cottage()
	if err != nil {
		t.Fatal(err)
	}
	result, err := fill.Check(plan.NewIndex(p))
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]int{}
	for f := range result.Each() {
		got[f.Severity.String()+" "+f.Message.ID]++
		t.Logf("%s %s | %s", f.Severity, f.Message, f.Why)
	}
	want := map[string]int{
		"stop rule.box-fill.over":       1,
		"stop rule.wall-reach.missed":   1,
		"note rule.wall-reach.counters": 1,
		"note rule.open-decision.open":  2,
	}
	for key, n := range want {
		if got[key] != n {
			t.Errorf("%s: %d findings, want %d", key, got[key], n)
		}
		delete(got, key)
	}
	if len(got) > 0 {
		t.Errorf("further findings: %v", got)
	}
	n := 0
	for range p.Openings() {
		n++
	}
	t.Logf("%d openings", n)
}
