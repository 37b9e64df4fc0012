package table

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// FuzzSchedule writes the schedule of any plan that edits can make in every form. It has a
// row for each opening and a cell for each column, and other readers find as many.
func FuzzSchedule(f *testing.F) {
	for _, seed := range []string{"", "\x00\x00\x00", "\x01\x07\x18 a house", "\x01\x63\x05\xff\xfe\x80\x41 and more edits of it than that"} {
		f.Add([]byte(seed), len(seed)%2 == 0)
	}
	f.Fuzz(func(t *testing.T, text []byte, isMetric bool) {
		s := plantest.NewScript(text[:min(len(text), 1000)])
		p := s.Start()
		for e, ok := s.Edit(p); ok; e, ok = s.Edit(p) {
			if next, err := e.Apply(p); err == nil {
				p = next
			}
		}
		voice := words.Voice{}
		if isMetric {
			voice.System = unit.Metric
		}
		ix := index.New(p)
		result, _ := fill.Check(ix) // where it cannot be checked, the schedule says so
		schedule := Schedule(ix, result, voice)
		openings := 0
		for range p.Openings() {
			openings++
		}
		if len(schedule.Rows) != openings {
			t.Fatalf("%d rows for %d openings", len(schedule.Rows), openings)
		}
		for _, row := range schedule.Rows {
			if len(row.Cells) != len(schedule.Columns) {
				t.Fatalf("%d cells in %d columns", len(row.Cells), len(schedule.Columns))
			}
		}
		for _, format := range Formats {
			var out bytes.Buffer
			if err := format.Write(&out, schedule); err != nil {
				t.Fatalf("%s: %v", format.Ext, err)
			}
			switch format.Ext {
			case ".csv":
				lines, err := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(out.Bytes(), []byte("\ufeff")))).ReadAll()
				if err != nil || len(lines) != 1+len(schedule.Rows) || len(lines[0]) != len(schedule.Columns) {
					t.Fatalf("read back: %d lines, %v", len(lines), err)
				}
			case ".json":
				if !json.Valid(out.Bytes()) {
					t.Fatalf("no JSON: %s", out.Bytes())
				}
			}
		}
	})
}
