package sheet

import (
	"math"
	"testing"

	"studbay/fill"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/glyph"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"studbay/render/sheet/proof"
	"studbay/render/table"
)

// onPaper returns the paper of a name.
func onPaper(t *testing.T, name string) paper.Paper {
	t.Helper()
	p, err := paper.Named(name)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestCapitalsOfLargePaper: on ARCH C and larger, and on the metric sizes that hang beside
// them, no text of any page has capitals lower than 3/32 in, by which architects letter what
// is read on a wall (common practice).
func TestCapitalsOfLargePaper(t *testing.T) {
	const least = 25.4 * 3 / 32
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"archc", "archd", "a2", "a1"} {
		pages, err := Build(ix, result, Options{Paper: onPaper(t, name), Cover: true})
		if err != nil {
			t.Fatal(err)
		}
		if len(pages) < 10 {
			t.Errorf("%s: %d pages are not a whole set", name, len(pages))
		}
		for _, page := range pages {
			for _, r := range proof.Runs(page) {
				if tall := glyph.MetricsOf(r.Weight, r.Size).CapHeight; tall < least {
					t.Errorf("%s, %s: %q has capitals of %.2f mm, want %.2f", name, page.Meta.Title, r.Text, tall, least)
				}
			}
		}
	}
}

// layers keeps how large what each layer of a page is.
type layers struct {
	at  []string
	box map[string]scene.Rect
}

func (l *layers) take(box scene.Rect) {
	if n := len(l.at); n > 0 {
		l.box[l.at[n-1]] = l.box[l.at[n-1]].Union(box)
	}
}
func (l *layers) Stroke(p scene.Path, pen scene.Pen) {
	l.take(scene.Stroke{Path: p, Pen: pen}.Bounds())
}
func (l *layers) Fill(p scene.Path, _ scene.Color) { l.take(p.Bounds()) }
func (l *layers) Text(scene.Run)                   {}
func (l *layers) Begin(of scene.Layer)             { l.at = append(l.at, of.Name) }
func (l *layers) End()                             { l.at = l.at[:len(l.at)-1] }
func (l *layers) Close() error                     { return nil }

// TestPlansStayTrueOnLargePaper: a plan at one scale is as large on large paper as on small.
func TestPlansStayTrueOnLargePaper(t *testing.T) {
	scale, err := paper.ParseScale("1/4in=1ft")
	if err != nil {
		t.Fatal(err)
	}
	long := map[string]float64{}
	for _, name := range []string{"tabloid", "archc"} {
		page := build(t, square(t, 10*unit.Foot), Options{Paper: onPaper(t, name), Scale: scale})[0]
		l := &layers{box: map[string]scene.Rect{}}
		page.Paint(l)
		for _, box := range l.box {
			long[name] = max(long[name], box.Width())
		}
	}
	if long["tabloid"] == 0 || math.Abs(long["tabloid"]-long["archc"]) > 0.6 { // lines are heavier
		t.Errorf("a room at 1/4 in to the foot is %.2f mm wide on tabloid and %.2f on ARCH C", long["tabloid"], long["archc"])
	}
}

// TestColumnsAreAskedForInTrueWidths: what is too wide for large paper is told as a tape would
// measure it on the print.
func TestColumnsAreAskedForInTrueWidths(t *testing.T) {
	size := onPaper(t, "archc")
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	_, err := Build(ix, fill.Result{}, Options{Paper: size, Voice: words.Voice{}, Columns: table.ScheduleIDs()})
	e, ok := err.(*WidthError)
	if !ok {
		t.Fatalf("got %v, want a paper too narrow", err)
	}
	if e.Free > size.Width || e.Free < size.Width*9/10 || e.Need < e.Free {
		t.Errorf("free are %v and %v are asked for of %v", e.Free, e.Need, size.Width)
	}
}
