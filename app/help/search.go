package help

import (
	"slices"
	"strings"

	"studbay/plan/words"
)

// Hit is a page that has what was looked for.
type Hit struct {
	Page  int // in the list searched
	Block int // the first block that has it, or −1 for the title
	times int
}

// Search returns the pages that have all words of a text, or their beginnings, the best
// first: those with a word in the title, then those that have them more densely. Capitals
// and the accents of Spanish make no difference. A text without a word finds every page.
func Search(pages []Page, text string) (hits []Hit) {
	wanted := words.Plain(text)
	for i, page := range pages {
		if hit, found := look(page, wanted); found {
			hit.Page = i
			hits = append(hits, hit)
		}
	}
	slices.SortStableFunc(hits, func(a, b Hit) int {
		if inTitle := a.Block < 0; inTitle != (b.Block < 0) {
			if inTitle {
				return -1
			}
			return 1
		}
		// The longest page has every word: one that is mostly about them comes first.
		return b.times*len(pages[a.Page].Blocks) - a.times*len(pages[b.Page].Blocks)
	})
	return hits
}

// look looks for all words in one page.
func look(page Page, wanted []string) (Hit, bool) {
	hit := Hit{Block: -1}
	missing := slices.Clone(wanted)
	first := len(page.Blocks)
	for i := -1; i < len(page.Blocks); i++ {
		text := page.Title
		if i >= 0 {
			text = page.Blocks[i].Text
		}
		has := words.Plain(text)
		for _, word := range wanted {
			if times := count(has, word); times > 0 {
				hit.times += times
				first = min(first, i)
				missing = slices.DeleteFunc(missing, func(m string) bool { return m == word })
			}
		}
	}
	if len(wanted) > 0 {
		hit.Block = first
	}
	return hit, len(missing) == 0
}

// count returns how many words begin with one.
func count(has []string, wanted string) (n int) {
	for _, word := range has {
		if strings.HasPrefix(word, wanted) {
			n++
		}
	}
	return n
}
