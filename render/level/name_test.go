package level

import (
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// namesIn returns the lines of the names of rooms.
func namesIn(pieces []render.Piece) (lines []string) {
	for _, p := range pieces {
		if p.Layer != render.LayerRoomNames {
			continue
		}
		for _, it := range p.Items {
			if run, ok := it.(scene.Run); ok {
				lines = append(lines, run.Text)
			}
		}
	}
	return lines
}

// A name that has no place on one line goes over several, and then its beginning shows: at
// no zoom at which two letters have a place is the room without a name.
func TestALongRoomNameIsShown(t *testing.T) {
	b := rendertest.NewBuilder(t)
	b.Box("Upstairs walk-in linen closet", plan.UseCloset, 0, 0, 60, 70)
	draw := func(zoom float64) []string {
		m := render.BoardMedium(zoom/25.4, 1, render.Light, words.Voice{}).Centred(rendertest.At(-10, -10), scene.Point{})
		return namesIn(Draw(b.Index(), b.Level.ID, nil, m, rendertest.Everything))
	}
	if got := draw(6); !slices.Contains(got, "Upstairs walk-in linen closet") {
		t.Errorf("near: %q", got)
	}
	if got := strings.Join(draw(2.2), " "); got != "Upstairs walk-in linen closet" || len(draw(2.2)) < 2 {
		t.Errorf("farther: %q, want all of it over several lines", draw(2.2))
	}
	if got := draw(0.9); len(got) != 1 || !strings.HasPrefix(got[0], "Ups") || !strings.HasSuffix(got[0], "…") {
		t.Errorf("far: %q, want the beginning of it", got)
	}
}
