package takeoff

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"studbay/fill/price"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/index"
)

// CableRun is one cable with its length.
type CableRun struct {
	Cable    *plan.Cable
	Part     price.Part
	From, To string // tags; a panel has none
	Run      wire.Run
}

// Cables lists the cables of a plan that are to be drawn in and have a length, by kind and then by where they run.
func Cables(ix *index.Index) (all []CableRun) {
	p := ix.Plan()
	for c := range p.Cables.All() {
		run, ok := wire.RunOf(ix, c)
		if !ok || c.Existing {
			continue
		}
		all = append(all, CableRun{c, price.OfCable(c.Size, c.Wires, c.Ground), tagOf(p, c.From), tagOf(p, c.To), run})
	}
	slices.SortStableFunc(all, func(a, b CableRun) int {
		return cmp.Or(cmp.Compare(a.Part.ID, b.Part.ID), plan.CompareTags(a.From, b.From), plan.CompareTags(a.To, b.To))
	})
	return all
}

func tagOf(p plan.Plan, id plan.ID) string {
	if o, _ := p.Opening(id); o != nil {
		return o.Tag
	}
	return ""
}

// byNumber orders circuits by the first space they take, then by the text.
func byNumber(a, b *plan.Circuit) int {
	return cmp.Or(cmp.Compare(firstNumber(a.Number), firstNumber(b.Number)), cmp.Compare(a.Number, b.Number))
}

func firstNumber(text string) int {
	digits := strings.FieldsFunc(text, func(r rune) bool { return r < '0' || r > '9' })
	if len(digits) == 0 {
		return 1 << 30
	}
	n, err := strconv.Atoi(digits[0])
	if err != nil {
		return 1 << 30
	}
	return n
}
