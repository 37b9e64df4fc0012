package edit_test

import (
	"fmt"
	"runtime"
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// keptEdits makes the i-th edit of a kind on a house with so many openings.
var keptEdits = []struct {
	name string
	edit func(p plan.Plan, openings []*plan.Opening, ids *plantest.IDs, i int) edit.Edit
}{
	{"move", func(_ plan.Plan, openings []*plan.Opening, _ *plantest.IDs, i int) edit.Edit {
		o := openings[i*7919%len(openings)]
		to := o.At
		if to.Part == plan.PartFace {
			to.Along -= unit.Length(i + 1)
		} else {
			to.At.X -= unit.Length(i + 1)
		}
		return edit.MoveOpening{ID: o.ID, To: to}
	}},
	{"add", func(_ plan.Plan, openings []*plan.Opening, ids *plantest.IDs, i int) edit.Edit {
		o := *openings[i*7919%len(openings)]
		o.ID, o.Tag = ids.New(plan.KindOpening), ""
		return edit.AddOpening{Opening: o}
	}},
	{"raise ceiling", func(p plan.Plan, _ []*plan.Opening, _ *plantest.IDs, i int) edit.Edit {
		rooms := slices.Collect(p.Levels[0].Rooms.All())
		r := *rooms[i*31%len(rooms)]
		r.Ceiling += unit.Length(i + 1)
		return edit.ChangeRoom{Room: r}
	}},
}

// bytesKept returns how many bytes the history of so many edits keeps for each.
func bytesKept(t testing.TB, house plan.Plan, edits int, make func(plan.Plan, []*plan.Opening, *plantest.IDs, int) edit.Edit) float64 {
	openings := slices.Collect(house.Levels[0].Openings.All())
	ids := plantest.NewIDs(99)
	h := edit.NewHistory(house, 0)
	before := heap()
	for i := range edits {
		if err := h.Do(make(h.Plan(), openings, ids, i)); err != nil {
			t.Fatal(err)
		}
	}
	after := heap()
	runtime.KeepAlive(openings)
	for undone := 0; undone < edits; undone++ {
		if !h.Undo() {
			t.Fatalf("only %d of %d edits left a step", undone, edits)
		}
	}
	return float64(after-before) / float64(edits)
}

func heap() int64 {
	var m runtime.MemStats
	for range 2 {
		runtime.GC()
	}
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
}

// TestBytesKeptDoNotGrowWithThePlan holds an edit of a plan of 10 000 openings to twice
// what one of 200 keeps.
func TestBytesKeptDoNotGrowWithThePlan(t *testing.T) {
	small, large := plantest.House(1, 200), plantest.House(1, 10_000)
	for _, tt := range keptEdits {
		a, b := bytesKept(t, small, 300, tt.edit), bytesKept(t, large, 300, tt.edit)
		t.Logf("%s: %.0f bytes an edit at 200 openings, %.0f at 10 000", tt.name, a, b)
		if b > 2*a {
			t.Errorf("%s: %.0f bytes an edit at 10 000 openings, over twice the %.0f at 200", tt.name, b, a)
		}
	}
}

func BenchmarkBytesKept(b *testing.B) {
	for _, n := range []int{200, 10_000} {
		house := plantest.House(1, n)
		for _, tt := range keptEdits {
			b.Run(fmt.Sprintf("%s/%d", tt.name, n), func(b *testing.B) {
				var kept float64
				for range b.N {
					kept = bytesKept(b, house, 300, tt.edit)
				}
				b.ReportMetric(kept, "bytes/edit")
				b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N)/300, "µs/edit")
				b.ReportMetric(0, "ns/op")
			})
		}
	}
}

func BenchmarkCheck(b *testing.B) {
	for _, n := range []int{200, 10_000} {
		house := plantest.House(1, n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for range b.N {
				if err := plan.Check(house); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
