package fill_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// sizes are a house of common size, a large one and one beyond all use.
var sizes = []int{200, 2000, 10000}

// BenchmarkCheckCold judges plans from nothing. Each is judged once before the clock runs: the
// memory that a process asks of the machine the first time is then there for plans that are
// judged twice in the time as for those that are judged a hundred times.
func BenchmarkCheckCold(b *testing.B) {
	for _, n := range append(slices.Clone(sizes), 50000) {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ix := index.New(plantest.House(1, n))
			if _, err := fill.Check(ix); err != nil {
				b.Fatal(err)
			}
			for b.Loop() {
				if _, err := fill.Check(ix); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkCheckOnePlace judges boxes that stand all in one place, as a copy that was pasted
// again and again leaves them: each meets all others.
func BenchmarkCheckOnePlace(b *testing.B) {
	for _, n := range []int{200, 1000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ix := index.New(inOnePlace(b, n))
			for b.Loop() {
				if _, err := fill.Check(ix); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// inOnePlace returns a small house with so many copies of one receptacle where that is.
func inOnePlace(b *testing.B, copies int) plan.Plan {
	p, ids := plantest.House(1, 10), plantest.NewIDs(2)
	for l, o := range p.Openings() {
		if o.At.Part != plan.PartFace || o.Kind != "duplex" {
			continue
		}
		level := *l
		for i := range copies {
			one := *o
			one.ID, one.Tag = ids.New(plan.KindOpening), fmt.Sprint(o.Tag, "-", i+1)
			level.Openings = level.Openings.With(&one)
		}
		return p.WithLevel(&level)
	}
	b.Fatal("there is no receptacle")
	return p
}

// BenchmarkCheckAfterOneMove judges an opening that was moved, and that it is back.
func BenchmarkCheckAfterOneMove(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ix := index.New(plantest.House(1, n))
			var moved []*index.Index
			for _, q := range moves(b, ix) {
				moved = append(moved, ix.Updated(q))
			}
			var c fill.Checker
			if _, err := c.Update(ix); err != nil {
				b.Fatal(err)
			}
			for i := 0; b.Loop(); i++ {
				c.Update(moved[i%len(moved)])
				c.Update(ix)
			}
		})
	}
}

func BenchmarkIndexAfterOneMove(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ix := index.New(plantest.House(1, n))
			moved := moves(b, ix)
			for i := 0; b.Loop(); i++ {
				ix.Updated(moved[i%len(moved)])
			}
		})
	}
}

// moves returns plans in each of which another receptacle of one bedroom is slid by an
// inch. The room has rooms on all sides: a small house has few of those, and less to look
// at in its others.
func moves(b *testing.B, ix *index.Index) (moved []plan.Plan) {
	p := ix.Plan()
	room := bedroom(b, ix)
	for _, o := range p.Openings() {
		place, ok := ix.Place(o.At)
		if !ok || place.Room != room || o.At.Part != plan.PartFace || o.Kind != "duplex" {
			continue
		}
		to := o.At
		to.Along += unit.Inch
		q, err := edit.MoveOpening{ID: o.ID, To: to}.Apply(p)
		if err != nil {
			b.Fatal(err)
		}
		moved = append(moved, q)
	}
	if len(moved) < 4 {
		b.Fatalf("only %d receptacles to move", len(moved))
	}
	return moved
}

// bedroom returns one that is not at the edge of the house.
func bedroom(b *testing.B, ix *index.Index) *plan.Room {
	level := ix.Plan().Levels[0]
	extent, _ := ix.Extent(level.ID)
	inside := extent.Expand(-3 * unit.Foot)
	for r := range level.Rooms.All() {
		if r.Use == plan.UseBedroom && inside.ContainsBox(r.Outline().Box()) {
			return r
		}
	}
	b.Fatal("there is no bedroom inside the house")
	return nil
}
