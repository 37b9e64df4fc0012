package level

import (
	"cmp"
	"maps"
	"slices"

	"studbay/fill/remodel"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// moves draws an arrow from the old place of each opening that was moved to its new one, with
// how far that is.
func (d *drawing) moves() {
	if d.Medium.IsFar() {
		return
	}
	places := slices.SortedFunc(maps.Values(d.places), func(a, b *openingPlace) int { return cmp.Compare(a.opening.ID, b.opening.ID) })
	for _, to := range places {
		old, by, ok := remodel.MovedFrom(d.Index, to.opening)
		if !ok || d.places[old.ID] == nil || d.Medium.Hides(old.ID) || d.Medium.Hides(to.opening.ID) {
			continue
		}
		items := d.arrow(d.places[old.ID], to, by)
		d.Put(to.opening.ID, render.LayerControls, items...)
		d.Avoid(to.opening.ID, items...)
	}
}

// arrow lies before the wall, clear of the bodies at its ends.
func (d *drawing) arrow(from, to *openingPlace, by unit.Length) []scene.Item {
	out := 1.1 * d.Medium.Symbol
	a, b := from.box.Middle().Add(from.into.Mul(out)), to.box.Middle().Add(to.into.Mul(out))
	items := draft.Arrow(a, b, 0.5*d.Medium.Symbol, d.InkPen(1))
	if items == nil {
		return nil
	}
	said := scene.Run{
		At:   a.Add(b.Sub(a).Mul(0.5)).Add(to.into.Mul(0.8 * d.Medium.Text)),
		Text: d.Medium.Voice.Say(words.New("level.moved", "moved {0}", by)), Size: d.Medium.Text, Color: d.Theme.Ink, Align: scene.Center, VAlign: scene.Middle,
	}
	if d.Medium.Shows(said.Bounds()) { // a detail shows the arrow alone where it has no room for words
		items = append(items, said)
	}
	return items
}
