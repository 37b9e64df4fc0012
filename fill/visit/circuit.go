package visit

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"studbay/fill/protect"
	"studbay/plan"
	"studbay/plan/index"
)

// Circuit is a circuit with what protects it.
type Circuit struct {
	*plan.Circuit
	Openings int
	// Devices are the tags of what is on it that protects against ground faults.
	Devices []string
	Done    Done
}

// Protection tells it in the letters of the trade: AF and GF at the breaker, GF with the
// tags of devices.
func (c Circuit) Protection() string {
	var all []string
	if c.AFCI == plan.FlagYes {
		all = append(all, "AF")
	}
	if c.GFCI == plan.FlagYes {
		all = append(all, "GF")
	} else if len(c.Devices) > 0 {
		all = append(all, "GF "+strings.Join(c.Devices, " "))
	}
	return strings.Join(all, ", ")
}

// circuits lists those of a plan by their numbers.
func circuits(ix *index.Index, done map[about]Done) (all []Circuit) {
	for c := range ix.Plan().Circuits.All() {
		one := Circuit{Circuit: c, Done: done[about{c.ID, Protection}]}
		for o := range ix.OnCircuit(c.ID) {
			if !o.IsInUse() {
				continue
			}
			one.Openings++
			if protect.IsGroundFault(o) {
				one.Devices = append(one.Devices, o.Tag)
			}
		}
		all = append(all, one)
	}
	slices.SortStableFunc(all, func(a, b Circuit) int {
		return cmp.Or(cmp.Compare(number(a.Number), number(b.Number)), cmp.Compare(a.Number, b.Number))
	})
	return all
}

// number is the first number in a circuit's, of two poles such as 8/10.
func number(text string) int {
	end := strings.IndexFunc(text, func(r rune) bool { return r < '0' || '9' < r })
	if end < 0 {
		end = len(text)
	}
	n, err := strconv.Atoi(text[:end])
	if err != nil {
		return 1 << 30
	}
	return n
}
