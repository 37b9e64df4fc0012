package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/paper"
	"studbay/render/sheet/proof"
)

// tilesOf returns the pages of a plan that are parts of a level, with their numbers.
func tilesOf(t *testing.T, p plan.Plan, o Options) map[int][]string {
	t.Helper()
	found := map[int][]string{}
	for i, page := range build(t, p, o) {
		if strings.Contains(page.Meta.Title, ", part ") {
			found[i+1] = proof.Texts(page)
			for _, fault := range proof.Read(page, rules(o.Paper)) {
				t.Errorf("sheet %d: %s", i+1, fault)
			}
		}
	}
	return found
}

// TestTilesAreJoinedAtMatchLines: where one sheet sends to another, that one sends back,
// and every sheet of a plan is reached.
func TestTilesAreJoinedAtMatchLines(t *testing.T) {
	size, _ := paper.Named("letter")
	scale, _ := paper.ParseScale("1/4in=1ft")
	tiles := tilesOf(t, plantest.House(5, 240), Options{Paper: size, Scale: scale})
	if len(tiles) < 6 {
		t.Fatalf("%d sheets, want rows and columns of them", len(tiles))
	}
	sends := func(from, to int) bool {
		return slices.Contains(tiles[from], fmt.Sprintf("Match line · see sheet %d", to))
	}
	for from := range tiles {
		joined := false
		for to := range tiles {
			if sends(from, to) {
				joined = true
				if !sends(to, from) {
					t.Errorf("sheet %d sends to %d, which does not send back", from, to)
				}
			}
		}
		if !joined {
			t.Errorf("sheet %d is joined to none", from)
		}
	}
}

// TestEveryOpeningStandsWholeOnATile: with its tag, on every part that shows it.
func TestEveryOpeningStandsWholeOnATile(t *testing.T) {
	for number := range uint64(4) {
		p := plantest.House(number, 160+60*int(number))
		size, _ := paper.Named("letter")
		scale, _ := paper.ParseScale("1/4in=1ft")
		ix := index.New(p)
		b := &book{ix: ix, plan: p, found: newFound(ix, nil), o: Options{Paper: size, Scale: scale}}
		level := p.Levels[0]
		d, err := b.drawLevel(level, b.tileArea())
		if err != nil || d.tiles == nil {
			t.Fatalf("%v, tiles %v", err, d.tiles)
		}
		shown := map[plan.ID]int{}
		for _, at := range d.tiles.all() {
			window := d.tiles.window(at)
			if window.Width()+2*matchText > d.tiles.area.Width()+1 || window.Height()+2*matchText > d.tiles.area.Height()+1 {
				t.Errorf("part %v is %v, the page has room for %v", at, window, d.tiles.area)
			}
			pieces := b.newPage("", 0).tile(level, d, at)
			for _, piece := range pieces {
				if piece.Symbol != nil {
					for _, id := range piece.Symbol.IDs {
						shown[id]++
					}
				}
			}
			if left := b.untagged(pieces); len(left) > 0 {
				t.Errorf("house %d, part %v: no tag of %v", number, at, left)
			}
		}
		for o := range level.Openings.All() {
			if shown[o.ID] == 0 {
				t.Errorf("house %d: %s stands on no part", number, o.Tag)
			}
		}
	}
}

// TestFitGoesOverToTiles: what no scale holds on one page is tiled at one that shows
// every tag; what one does hold stays on one page.
func TestFitGoesOverToTiles(t *testing.T) {
	size, _ := paper.Named("letter")
	for _, tt := range []struct {
		openings int
		tiled    bool
	}{{40, false}, {2000, true}} {
		p := plantest.House(1, tt.openings)
		ix := index.New(p)
		b := &book{ix: ix, plan: p, found: newFound(ix, nil), o: Options{Paper: size, Voice: words.Voice{System: unit.Imperial}}}
		d, err := b.drawLevel(p.Levels[0], b.tileArea())
		if err != nil {
			t.Fatal(err)
		}
		if (d.tiles != nil) != tt.tiled {
			t.Errorf("%d openings: tiled is %v", tt.openings, d.tiles != nil)
		}
		if left := b.untagged(d.pieces); len(left) > 0 {
			t.Errorf("%d openings: %d have no tag", tt.openings, len(left))
		}
	}
}

// TestUntaggedAreNamed: at a scale that has no room for all tags the sheet says so.
func TestUntaggedAreNamed(t *testing.T) {
	size, _ := paper.Named("archd")
	scale, _ := paper.ParseScale("1/16in=1ft")
	p := plantest.House(1, 2000)
	ix := index.New(p)
	pages, err := Build(ix, fill.Result{}, Options{Paper: size, Scale: scale})
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(strings.Join(proof.Texts(pages[0]), "\n"), "see the rooms drawn larger") {
		t.Error("the sheet does not say that tags are left out")
	}
}

func TestSeams(t *testing.T) {
	for _, tt := range []struct {
		length, room float64
		symbols      []taken
		parts        int
	}{
		{100, 120, nil, 1}, {150, 120, nil, 2}, {150, 120, []taken{{74, 78}}, 2}, {400, 120, []taken{{90, 110}}, 5},
	} {
		at := seams(0, tt.length, tt.room, tt.symbols)
		if len(at)-1 != tt.parts || at[0] != 0 || at[len(at)-1] != tt.length {
			t.Errorf("%v in %v: %v, want %d parts", tt.length, tt.room, at, tt.parts)
		}
		for i := 1; i < len(at); i++ {
			need := at[i] - at[i-1]
			if i > 1 {
				need += beyond
			}
			if i < len(at)-1 {
				need += beyond
			}
			if need > tt.room+1e-9 {
				t.Errorf("%v in %v: part %d needs %v", tt.length, tt.room, i, need)
			}
			if i < len(at)-1 && len(tt.symbols) > 0 && tt.parts == 2 && struckAt(at[i], tt.symbols) > 0 {
				t.Errorf("%v in %v: the seam at %v strikes a symbol", tt.length, tt.room, at[i])
			}
		}
	}
}
