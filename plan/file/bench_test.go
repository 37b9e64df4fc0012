package file

import (
	"encoding/json"
	"testing"
	"time"

	"studbay/plan/plantest"
)

// The limit both ways: half as much time again as encoding/json takes for the same bytes
// and the same structs, though it looks for no doubled key, no unknown one and no place,
// and checks no plan.
const timesEncodingJSON = 1.5

func BenchmarkAgainstEncodingJSON(b *testing.B) {
	p := plantest.House(1, 10_000)
	data := encode(b, p)
	b.Run("load", func(b *testing.B) {
		race(b, len(data), func() error {
			_, err := Decode("house", data)
			return err
		}, func() error {
			var doc document
			return json.Unmarshal(data, &doc)
		})
	})
	b.Run("save", func(b *testing.B) {
		doc := document{Format: formatName, Version: versionFor(p), Plan: p}
		race(b, len(data), func() error {
			_, err := Encode(p)
			return err
		}, func() error {
			_, err := json.Marshal(doc)
			return err
		})
	})
}

// race runs ours and theirs in turn and reports how many times their time ours takes.
func race(b *testing.B, size int, ours, theirs func() error) {
	var spent [2]time.Duration
	b.SetBytes(int64(size))
	for b.Loop() {
		for i, run := range []func() error{ours, theirs} {
			start := time.Now()
			if err := run(); err != nil {
				b.Fatal(err)
			}
			spent[i] += time.Since(start)
		}
	}
	n := time.Duration(b.N)
	b.ReportMetric(float64((spent[0]/n).Microseconds())/1000, "ours-ms")
	b.ReportMetric(float64((spent[1]/n).Microseconds())/1000, "json-ms")
	b.ReportMetric(spent[0].Seconds()/spent[1].Seconds(), "times")
	b.ReportMetric(timesEncodingJSON, "limit")
}
