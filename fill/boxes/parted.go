package boxes

import (
	"slices"

	"studbay/fill/box"
	"studbay/fill/part"
	"studbay/plan/index"
	"studbay/plan/words"
)

// parted returns what is in each space of a parted box, one behind the other as the
// calculator reads it. What is stated is stated space by space; a drawn cable enters the
// space that it says; yokes that are not stated stand one in each space, from the left.
// Where any of it is not told, the source is NotKnown and the error, a *words.Error, says
// what is to be told.
func (w wiring) parted(v index.OpeningView, b part.Resolved, clamps bool) (box.Contents, Source, error) {
	switch {
	case w.source == Assumed:
		return nil, NotKnown, words.Fault("parted.assumed", "A barrier parts the box: enter what is on each side of it, such as space 16; cable 14/2; space 16; cable 12/2.")
	case !w.source.IsKnown():
		return nil, w.source, nil
	}
	spaces, err := w.spaces(v, len(b.Barriers)+1)
	if err != nil {
		return nil, NotKnown, err
	}
	all := w.joined(spaces, func(s wiring) box.Contents { return s.all(clamps) })
	return all, w.source, nil
}

// spaces parts what is known of a box into its spaces.
func (w wiring) spaces(v index.OpeningView, n int) ([]wiring, error) {
	stated, _ := w.stated.Spaces()
	switch {
	case len(stated) == 1 && len(stated[0]) == 0:
		stated = make([]box.Contents, n)
	case len(stated) != n:
		return nil, words.Fault("parted.untold", "Barriers part the box into {0} spaces, and what is in it is entered for {1}: enter it for each, such as space 16; cable 14/2; space 16; cable 12/2.", n, len(stated))
	}
	if len(w.yokes) > 0 && len(w.yokes) != n {
		return nil, words.Fault("parted.yokes", "A barrier parts the box, and on which side of it each yoke is is not told: enter it, such as space 16; device 14; space 16; device 12.")
	}
	if len(w.own) > 0 {
		return nil, words.Fault("parted.luminaire", "A barrier parts the box, and on which side of it the luminaire is wired is not told: enter it, such as space 16; cable 14/2; fixture-wire 18 x2; space 16; cable 12/2.")
	}
	spaces := make([]wiring, n)
	for i := range spaces {
		spaces[i] = wiring{usual: w.usual, source: w.source, stated: stated[i]}
		if len(w.yokes) > 0 {
			spaces[i].yokes = w.yokes[i : i+1]
		}
	}
	for i, c := range v.Cables {
		at := c.SpaceAt(v.Opening.ID)
		if at < 1 || at > n {
			return nil, words.Fault("parted.cable", "A barrier parts the box, and on which side of it cable {0}/{1} enters is not told: select it on the card of the cable.", c.Size, c.Wires)
		}
		spaces[at-1].cables = append(spaces[at-1].cables, cableItems(v.Opening, v.Cables[i:i+1])...)
	}
	return spaces, nil
}

// joined puts what is in the spaces one behind the other, each with what is stated of its
// volume.
func (w wiring) joined(spaces []wiring, of func(wiring) box.Contents) box.Contents {
	_, begun := w.stated.Spaces()
	if len(begun) != len(spaces) {
		begun = slices.Repeat([]box.Item{{What: box.BeginsSpace}}, len(spaces))
	}
	all := make([]box.Contents, len(spaces))
	for i, s := range spaces {
		all[i] = of(s)
	}
	return box.InSpaces(all, begun)
}

// partedRest is what a user may put other items in place of, space by space; what is stated
// so far while that is not all.
func (w wiring) partedRest(v index.OpeningView, b part.Resolved, clamps bool) box.Contents {
	spaces, err := w.spaces(v, len(b.Barriers)+1)
	if err != nil || !w.source.IsKnown() || w.source == Assumed {
		return w.stated
	}
	return w.joined(spaces, func(s wiring) box.Contents { return s.rest(clamps) })
}
