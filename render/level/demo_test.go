package level

import (
	"studbay/render/rendertest"
	"testing"
)

func TestNoTextOrSignOfADemoLiesOverAnything(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		findings := rendertest.Found(t, ix)
		for _, level := range ix.Plan().Levels {
			for on, m := range media(level.ID, ix) {
				pieces := Draw(ix, level.ID, findings, m, rendertest.Everything)
				for _, what := range collisions(ix, level.ID, pieces, m) {
					t.Errorf("%s, %s: %s", name, on, what)
				}
			}
		}
	}
}
