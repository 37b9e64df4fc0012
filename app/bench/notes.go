package main

import (
	"bufio"
	"bytes"
	"fmt"
	"runtime"
	"slices"
	"strconv"
	"strings"
)

// notes is what was measured, round by round.
type notes struct {
	processor string // as the benchmarks name it
	rounds    []map[measured]float64
}

// measured names a value: a benchmark and one of the units it reports.
type measured struct{ bench, unit string }

// begin opens a round.
func (n *notes) begin() { n.rounds = append(n.rounds, map[measured]float64{}) }

// note puts a value into the round that is open.
func (n *notes) note(bench, unit string, value float64) {
	n.rounds[len(n.rounds)-1][measured{bench, unit}] = value
}

// read notes the values in what the benchmarks of a package printed, in the format that
// golang.org/design/14313-benchmark-format lays down.
func (n *notes) read(folder string, out []byte) error {
	for lines := bufio.NewScanner(bytes.NewReader(out)); lines.Scan(); {
		line := lines.Text()
		if processor, found := strings.CutPrefix(line, "cpu: "); found {
			n.processor = strings.TrimSpace(processor)
		}
		fields := strings.Fields(line)
		if !strings.HasPrefix(line, "Benchmark") || len(fields) < 4 {
			continue
		}
		name := folder + ":" + nameOf(fields[0], runtime.GOMAXPROCS(0))
		for i := 2; i+1 < len(fields); i += 2 {
			value, err := strconv.ParseFloat(fields[i], 64)
			if err != nil {
				return fmt.Errorf("what %s printed: %q: value %d is no number", folder, line, i/2)
			}
			n.note(name, fields[i+1], value)
		}
	}
	return nil
}

// nameOf takes off what go test puts round a name: Benchmark before it, and after it the
// number of processors where that is not one.
func nameOf(printed string, processors int) string {
	name := strings.TrimPrefix(printed, "Benchmark")
	if processors == 1 {
		return name
	}
	return strings.TrimSuffix(name, "-"+strconv.Itoa(processors))
}

// scales takes units into seconds or bytes.
var scales = map[string]struct {
	base  float64
	write func(float64) string
}{
	"ns/op":      {1e-9, seconds},
	"ours-ms":    {1e-3, seconds},
	"json-ms":    {1e-3, seconds},
	"bare-ms":    {1e-3, seconds},
	"bytes/edit": {1, byteCount},
	peak:         {1, byteCount},
	"pages":      {1, pageCount},
}

// value returns a figure in one round, in seconds or bytes.
func (f figure) value(round map[measured]float64) (float64, bool) {
	if f.bench == "" {
		return f.fixed, true
	}
	v, found := round[measured{f.bench, f.unit}]
	if f.times != 0 {
		v *= f.times
	}
	return v * scales[f.unit].base, found
}

// median returns the middle of some values, and whether there are any. Of an even number
// it is the upper of the two in the middle.
func median(values []float64) (float64, bool) {
	if len(values) == 0 {
		return 0, false
	}
	slices.Sort(values)
	return values[len(values)/2], true
}
