package level

import (
	"reflect"
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"studbay/render/symbol"
)

func TestPiecesComeInOrderAndAlwaysTheSame(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := rendertest.BoardOf(render.Light)
	pieces := Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything)
	for i, p := range pieces[1:] {
		if before := pieces[i]; p.Layer < before.Layer || p.Layer == before.Layer && p.ID < before.ID {
			t.Fatalf("piece %v of layer %d comes after %v of layer %d", p.ID, p.Layer, before.ID, before.Layer)
		}
	}
	if again := Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything); !reflect.DeepEqual(pieces, again) {
		t.Error("the same plan drawn twice differs")
	}
}

// What is drawn of a room does not depend on how much of it is in view, so that a
// part drawn anew joins what was drawn before.
func TestPartOfAViewIsDrawnAsTheWhole(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := rendertest.BoardOf(render.Light)
	find := func(pieces []render.Piece, id plan.ID, layer render.Layer) (found []render.Piece) {
		for _, p := range pieces {
			if p.ID == id && p.Layer == layer {
				found = append(found, p)
			}
		}
		return found
	}
	whole := Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything)
	part := Draw(c.Index, c.Level, c.Findings, m, geom.Box{Min: rendertest.At(230, 10), Max: rendertest.At(240, 20)})
	if len(part) >= len(whole) {
		t.Fatalf("a corner of the view has %d pieces of %d", len(part), len(whole))
	}
	for o := range c.Index.Plan().Levels[0].Openings.All() {
		if o.Tag[0] != 'B' {
			continue
		}
		for _, layer := range []render.Layer{render.LayerOpenings, render.LayerLabels, render.LayerMarks} {
			if a, b := find(whole, o.ID, layer), find(part, o.ID, layer); !reflect.DeepEqual(a, b) {
				t.Errorf("%s differs in layer %d", o.Tag, layer)
			}
		}
	}
}

func TestPlaceComesBackFromTheScene(t *testing.T) {
	for name, m := range map[string]render.Medium{"board": rendertest.BoardOf(render.Light), "sheet": rendertest.SheetOf()} {
		p := rendertest.At(123.25, -40.5)
		back := m.FromScene(m.ToScene(p))
		if d := back.Sub(p); d.X.Abs() > 10 || d.Y.Abs() > 10 { // floats of a few hundred mm hold 10 nm
			t.Errorf("%s: %v comes back as %v", name, p, back)
		}
	}
}

func TestHiddenIsLeftOut(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := rendertest.BoardOf(render.Light)
	m.Hidden = map[plan.ID]bool{c.Headed.ID: true}
	for _, p := range Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything) {
		if p.ID == c.Headed.ID {
			t.Errorf("it is in layer %d", p.Layer)
		}
	}
}

func TestUnknownKindHasAQuestionMark(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := rendertest.BoardOf(render.Light)
	spec := render.SpecOf(m.Catalogue(), c.OpeningByTag("L4"))
	if spec.Family != symbol.Junction || spec.Letters != "?" {
		t.Errorf("it looks like %+v", spec)
	}
}

func TestSymbolsOfOneKeyDifferByTheirFootAlone(t *testing.T) {
	c := rendertest.NewCottage(t)
	byKey := map[string]render.Piece{}
	for _, p := range Draw(c.Index, c.Level, c.Findings, rendertest.BoardOf(render.Light), rendertest.Everything) {
		if p.Symbol == nil {
			continue
		}
		first, ok := byKey[p.Symbol.Key()]
		if !ok {
			byKey[p.Symbol.Key()] = p
			continue
		}
		by := p.Symbol.Place.Foot.Sub(first.Symbol.Place.Foot)
		if got, want := p.Bounds.Moved(by.Mul(-1)), first.Bounds; !alike(got, want) {
			t.Errorf("%v is drawn in %v, %v in %v", p.ID, got, first.ID, want)
		}
	}
	if len(byKey) == 0 {
		t.Error("there are no symbols")
	}
}

func alike(a, b scene.Rect) bool {
	d, e := a.Min.Sub(b.Min), a.Max.Sub(b.Max)
	return max(d.X, -d.X, d.Y, -d.Y, e.X, -e.X, e.Y, -e.Y) < 1e-9
}

// A stretch is marked exactly where the finding says.
func TestStretchIsAsLongAsTheFindingSays(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := rendertest.BoardOf(render.Light)
	for _, p := range Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything) {
		if p.Layer != render.LayerStretches {
			continue
		}
		box := p.Items[0].Bounds()
		from, to := m.ToScene(rendertest.At(202, 0)), m.ToScene(rendertest.At(216, 0))
		if box.Min.X != from.X || box.Max.X != to.X || box.Min.Y != from.Y {
			t.Errorf("it is drawn in %v, want from %v to %v", box, from, to)
		}
		return
	}
	t.Error("no stretch is drawn")
}

// A curve from a switch keeps off the wall it starts from: past its first body it is
// farther from the wall than half a body.
func TestControlNeverRunsAlongAWall(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 200, 150)
	s := b.On("A1", "switch", r, 0, 30, 46)
	l := b.On("A2", "wall-light", r, 0, 170, 63)
	b.Control("a", []*plan.Opening{s}, []*plan.Opening{l})
	m := render.SheetMedium(unit.Inch/4, unit.Foot, render.Print, words.Voice{})
	for _, p := range Draw(b.Index(), b.Level.ID, nil, m, rendertest.Everything) {
		if p.Layer != render.LayerControls {
			continue
		}
		line := p.Items[0].(scene.Stroke).Path
		strip := scene.Rect{Min: m.ToScene(rendertest.At(45, -10)), Max: m.ToScene(rendertest.At(155, 0)).Add(scene.Point{Y: m.Symbol})}
		if walks(line, strip, 0.1) {
			t.Error("the curve runs along the wall")
		}
		return
	}
	t.Error("no curve is drawn")
}

// view is the part of a house in which about as many openings lie whatever its size.
func view(tb testing.TB, openings int) (ix *index.Index, level plan.ID, found []rule.Finding, clip geom.Box) {
	tb.Helper()
	p := plantest.House(1, openings)
	ix = index.New(p)
	level = p.Levels[0].ID
	extent, ok := ix.Extent(level)
	if !ok {
		tb.Fatal("an empty level")
	}
	clip = geom.Box{Min: extent.Min, Max: extent.Min.Add(geom.Point{X: 30 * unit.Foot, Y: 30 * unit.Foot})}
	return ix, level, someFindings(p), clip
}

func benchmarkLevel(b *testing.B, openings int) {
	ix, level, found, clip := view(b, openings)
	m := render.BoardMedium(0.08, 1, render.Light, words.Voice{}).Centred(clip.Min, scene.Point{})
	pieces := 0
	for b.Loop() {
		pieces = len(Draw(ix, level, found, m, clip))
	}
	b.ReportMetric(float64(pieces), "pieces")
}

func BenchmarkLevelOf200(b *testing.B)   { benchmarkLevel(b, 200) }
func BenchmarkLevelOf10000(b *testing.B) { benchmarkLevel(b, 10_000) }
