package sheet

import (
	"slices"
	"strings"
	"testing"

	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/sheet/proof"
)

// TestLegendStandsWithItsPlan: on paper of every size, also upright, the legend is on the page of
// the plan wherever that is one page, and once for each level. It is on the page behind a plan over
// several pages, and behind that of the ground floor on upright paper, which under a legend would
// lose tags.
func TestLegendStandsWithItsPlan(t *testing.T) {
	p := rendertest.Demos(t)["hillside.studbay"].Plan()
	papers := slices.Clone(paper.All)
	for _, size := range paper.All {
		if upright, err := size.Upright(); err == nil {
			papers = append(papers, upright)
		}
	}
	for _, size := range papers {
		pages := build(t, p, Options{Paper: size, Reader: ForCrew})
		for _, l := range p.Levels {
			title := l.Name + ", openings"
			tiled, with, all := false, false, 0
			for _, page := range pages {
				if !strings.HasPrefix(page.Meta.Title, title) {
					continue
				}
				texts := proof.Texts(page)
				has := slices.Contains(texts, "Legend")
				if has {
					all++
				}
				with = with || has && page.Meta.Title == title
				tiled = tiled || strings.Contains(page.Meta.Title, ", part ")
			}
			if isApart := tiled || size.IsUpright() && l.Name == "Ground floor"; all != 1 || with == isApart {
				t.Errorf("%s, %v wide, %s: %d legends, with the plan: %v", size.Name, size.Width, l.Name, all, with)
			}
		}
	}
}
