package paper

import "testing"

// TestUpright: what an office printer holds may stand, with the same two edges; larger paper hangs.
func TestUpright(t *testing.T) {
	for _, p := range All {
		up, err := p.Upright()
		if stands := p.Name == "letter" || p.Name == "a4"; (err == nil) != stands || p.MayStand() != stands || up.IsUpright() != stands {
			t.Errorf("%s: upright %v, %v", p.Name, up.IsUpright(), err)
		}
		if err == nil && (up.Width != p.Height || up.Height != p.Width || p.IsUpright()) {
			t.Errorf("%s: %v by %v stands as %v by %v", p.Name, p.Width, p.Height, up.Width, up.Height)
		}
	}
}
