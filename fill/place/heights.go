package place

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// heightsOf is what Heights are kept by, with their index.
type heightsOf struct{}

// Heights returns the usual height of each kind of new opening of a plan: that of the centers
// of most of them in walls, above the finished floor. Of as many, that of the catalogue goes
// first, then the lowest. A drawing that states them need only tell what is off them.
func Heights(ix *index.Index) map[string]unit.Length {
	return index.Derived(ix, heightsOf{}, func() map[string]unit.Length {
		count := map[string]map[unit.Length]int{}
		for _, l := range ix.Plan().Levels {
			for o := range l.Openings.All() {
				at, ok := heightOf(ix, o)
				if !ok {
					continue
				}
				if count[o.Kind] == nil {
					count[o.Kind] = map[unit.Length]int{}
				}
				count[o.Kind][at]++
			}
		}
		usual := map[string]unit.Length{}
		for kind, at := range count {
			usual[kind] = most(at, of(kind, ix.Plan().Header.System()))
		}
		return usual
	})
}

// heightOf returns the height of a new opening that sits in a wall; what is there already
// stands where it does.
func heightOf(ix *index.Index, o *plan.Opening) (unit.Length, bool) {
	if o.At.Part != plan.PartFace || o.Status != plan.StatusNew {
		return 0, false
	}
	ref, ok := ix.Side(o.At.Host)
	if !ok {
		return 0, false
	}
	return frame.CentreHeight(o, ref.Room), true
}

func of(kind string, units unit.System) unit.Length {
	if k := part.All().Kind(kind); k != nil {
		return k.UsualHeight(units)
	}
	return 0
}

// most returns the height that was counted most often.
func most(count map[unit.Length]int, usual unit.Length) (best unit.Length) {
	n := 0
	for at, k := range count {
		if k > n || k == n && best != usual && (at == usual || at < best) {
			best, n = at, k
		}
	}
	return best
}

// Unusual returns the height of a new opening in a wall where it is not the usual one of its
// kind.
func Unusual(ix *index.Index, o *plan.Opening) (unit.Length, bool) {
	at, ok := heightOf(ix, o)
	return at, ok && at != Heights(ix)[o.Kind]
}
