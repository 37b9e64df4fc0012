package verb

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/sheet"
	"studbay/render/sheet/proof"
)

// TestDemoSheetsReadClean proofreads every page of every demo on every paper.
func TestDemoSheetsReadClean(t *testing.T) {
	for _, d := range demo.All {
		p, err := d.Build()
		if err != nil {
			t.Fatal(err)
		}
		ix := index.New(p)
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		for _, paper := range paper.All {
			t.Run(d.Name+" on "+paper.Name, func(t *testing.T) {
				pages, err := sheet.Build(ix, result, sheet.Options{Paper: paper, Voice: words.Voice{System: paper.System}})
				if err != nil {
					t.Fatal(err)
				}
				for i, page := range pages {
					const leaveWhite = 0.4 * 25.4
					border := (paper.Enlarged() - 1) * layout.Border * scene.PointSize / 2 // that much wider on large paper, half of it outward
					frame := scene.Rect{Max: scene.Point{X: scene.MM(page.Width), Y: scene.MM(page.Height)}}.Expanded(border - leaveWhite)
					rules := proof.Rules{Frame: frame, LeastText: 6.5 * scene.PointSize, LeastLine: 0.25 * scene.PointSize}
					for _, fault := range proof.Read(page, rules) {
						t.Errorf("page %d: %s", i+1, fault)
					}
				}
			})
		}
	}
}

// TestScheduleFileHasEveryOpening compares the CSV of a demo with its plan, tag by tag.
func TestScheduleFileHasEveryOpening(t *testing.T) {
	for _, d := range demo.All {
		dir := t.TempDir()
		file, table := filepath.Join(dir, "x.studbay"), filepath.Join(dir, "x.csv")
		if status, _, wrong := run(t, "new", "--demo", d.Name, "--to", file); status != StatusClear {
			t.Fatal(wrong)
		}
		if status, _, wrong := run(t, "schedule", file, "--to", table); status != StatusClear {
			t.Fatal(wrong)
		}
		data, err := os.ReadFile(table)
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(strings.NewReader(string(data))).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		tags := map[string]int{}
		for _, row := range rows[1:] {
			tags[row[0]]++
		}
		p, err := d.Build()
		if err != nil {
			t.Fatal(err)
		}
		was := map[plan.ID]bool{}
		for _, o := range p.Openings() {
			was[o.Was] = o.Was != ""
		}
		for _, o := range p.Openings() {
			want := 1
			if was[o.ID] && o.Status == plan.StatusMoved { // it stands in the row of its new place
				want = 0
			}
			if tags[o.Tag] != want {
				t.Errorf("%s: %s has %d rows, want %d", d.Name, o.Tag, tags[o.Tag], want)
			}
			delete(tags, o.Tag)
		}
		if len(tags) > 0 {
			t.Errorf("%s: rows of no opening: %v", d.Name, tags)
		}
	}
}
