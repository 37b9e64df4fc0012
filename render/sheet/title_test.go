package sheet

import (
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/revision"
	"studbay/render/scene"
)

// written are the texts below a height of a page, from the top down as they were put there.
type written struct {
	scene.Painter
	below float64
	texts []string
}

func (w *written) Stroke(scene.Path, scene.Pen) {}
func (w *written) Fill(scene.Path, scene.Color) {}
func (w *written) Begin(scene.Layer)            {}
func (w *written) End()                         {}
func (w *written) Text(r scene.Run) {
	if r.At.Y > w.below {
		w.texts = append(w.texts, r.Text)
	}
}

// TestEveryTitleBlockCarriesItsCautionWhole: no page of any demo, on the smallest papers, lying or
// upright, in an edition that is hardly known too, leaves out a word of it.
func TestEveryTitleBlockCarriesItsCautionWhole(t *testing.T) {
	var papers []paper.Paper
	for _, p := range paper.All {
		if upright, err := p.Upright(); err == nil { // larger ones have more room
			papers = append(papers, p, upright)
		}
	}
	stood := 0
	for name, ix := range rendertest.Demos(t) {
		p := ix.Plan()
		h := *p.Header
		h.Edition = "2026"
		p.Header = &h
		ix = ix.Updated(p)
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		older := p
		for _, l := range p.Levels {
			level, k := *l, 0
			for opening := range l.Openings.All() {
				if k++; k%5 == 0 {
					level.Openings = level.Openings.Without(opening.ID)
				}
			}
			older = older.WithLevel(&level)
		}
		since := revision.Compare(sideOf(t, older), revision.Side{Index: ix, Result: result})
		for _, size := range papers {
			o := Options{Paper: size, Reader: ForInspector, Since: &since}
			pages, err := Build(ix, result, o)
			if err != nil {
				t.Fatalf("%s on %s: %v", name, size.Name, err)
			}
			if size.IsUpright() {
				stood++
			}
			want := newBook(ix, result, o).caution(words.Voice{})
			for i, s := range pages {
				w := &written{below: layout.New(size, layout.Languages{}, 0).Main.Max.Y}
				scene.Paint(w, s.Items...)
				if said := strings.Join(w.texts, " "); !strings.Contains(said, want) {
					t.Errorf("%s on %s, %v wide, page %d: the title block says %q, not all of %q", name, size.Name, size.Width, i+1, said, want)
					break
				}
			}
		}
	}
	if stood == 0 {
		t.Error("no paper stood upright")
	}
}
