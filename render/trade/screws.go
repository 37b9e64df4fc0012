package trade

import (
	"cmp"

	"studbay/fill/price"
	"studbay/plan/words"
)

// What a block and a box on it are screwed with, as the table of parts has it.
const (
	blockScrew = "block-screw"
	boxScrew   = "box-screw"
)

// screws says how many screws hold a block between its studs, and a box to the block, as the
// recipes count them that the parts are bought by. It reports false where they count none.
func (b *Book) screws() (words.Text, bool) {
	each := map[string]int{}
	for _, s := range cmp.Or(b.Prices, price.Trial()).Recipes() {
		if s.Per == price.PerBlock {
			each[s.Part] = max(each[s.Part], s.Count)
		}
	}
	if each[blockScrew] == 0 || each[boxScrew] == 0 {
		return words.Text{}, false
	}
	return words.New("framing.screws", "A block takes {0} × {1}, half of them at each end, or as many pocket screws; the box on it {2} × {3}, in the middle of the block (common practice, as the parts are counted).",
		each[blockScrew], price.Must(blockScrew).Name, each[boxScrew], price.Must(boxScrew).Name), true
}
