package sheet

import (
	"maps"
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/scene"
)

// heights lists the usual heights of what a drawing shows, each with the kinds that have it,
// and how wide the widest figure is.
func (b *book) heights(pieces []render.Piece) (all []swatch, figures float64) {
	kinds := map[unit.Length][]*part.Kind{}
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for _, id := range p.Symbol.IDs {
			o, _ := b.plan.Opening(id)
			if o == nil || o.At.Part != plan.PartFace {
				continue
			}
			at, k := place.Heights(b.ix)[o.Kind], part.All().Kind(o.Kind)
			if k != nil && at > 0 && !slices.Contains(kinds[at], k) {
				kinds[at] = append(kinds[at], k)
			}
		}
	}
	for _, at := range slices.Sorted(maps.Keys(kinds)) {
		run := layout.Style{Size: layout.Body, Bold: true}.Centered()
		text := b.Say("opening.height", "{0}", words.Height(at))
		figures = max(figures, run.Width(text))
		all = append(all, swatch{
			func(m scene.Point) []scene.Item {
				return []scene.Item{run.At(m.X, m.Y+run.Cap()/2, text)}
			},
			b.BothOf(func(v words.Voice) string { return kindNames(v, kinds[at]) }),
		})
	}
	return all, figures
}

// kindNames names some kinds, by the alphabet.
func kindNames(v words.Voice, kinds []*part.Kind) string {
	var names []string
	for _, k := range kinds {
		names = append(names, v.Say(k.Text()))
	}
	slices.Sort(names)
	return strings.Join(names, "; ")
}
