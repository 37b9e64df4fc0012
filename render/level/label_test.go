package level

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// text is a written line with the noun and layer it belongs to.
type text struct {
	piece int
	of    plan.ID
	box   scene.Rect
	words string
}

// textsOf returns the names, tags and lengths of a drawing, those of fixtures among
// them, each with the box from
// the top of its capitals to the bottom of its descenders.
func textsOf(pieces []render.Piece) (texts []text) {
	for i, p := range pieces {
		if p.Layer != render.LayerLabels && p.Layer != render.LayerRoomNames && p.Layer != render.LayerFixtures {
			continue
		}
		for _, it := range p.Items {
			if run, ok := it.(scene.Run); ok {
				m := glyph.MetricsOf(run.Weight, run.Size)
				o, w := run.Origin(), run.Width()
				box := scene.Rect{Min: o.Add(scene.Point{Y: -m.CapHeight}), Max: o.Add(scene.Point{X: w, Y: m.Descent})}
				texts = append(texts, text{i, p.ID, box.Expanded(-1e-6), run.Text})
			}
		}
	}
	return texts
}

// collisions tells what every text lies over, by walking along all lines in small
// steps: slower than the layout's own way and independent of it.
func collisions(ix *index.Index, level plan.ID, pieces []render.Piece, m render.Medium) (found []string) {
	texts := textsOf(pieces)
	for i, a := range texts {
		for _, b := range texts[i+1:] {
			if a.box.Overlaps(b.box) {
				found = append(found, a.words+" lies over "+b.words)
			}
		}
	}
	found = append(found, badgeCollisions(pieces, texts, m)...)
	step := m.Text / 6
	for i, p := range pieces {
		if p.Symbol != nil {
			drawn := symbol.Draw(p.Symbol.Place, p.Symbol.Style, p.Symbol.Specs...)
			for _, box := range drawn.Boxes() {
				for _, x := range texts {
					if x.box.Overlaps(box) {
						found = append(found, x.words+" lies over the symbol of "+string(p.ID))
					}
				}
			}
			continue
		}
		for _, it := range p.Items {
			stroke, ok := it.(scene.Stroke)
			if !ok || p.Layer == render.LayerMarks {
				continue
			}
			for _, x := range texts {
				if x.piece != i && x.box.Overlaps(stroke.Bounds()) && walks(stroke.Path, x.box, step) {
					found = append(found, x.words+" lies over a line of "+string(p.ID))
				}
			}
		}
	}
	for room := range ix.Plan().Level(level).Rooms.All() {
		for i := range room.Sides {
			s := room.Segment(i)
			line := scene.LinePath(m.ToScene(s.A), m.ToScene(s.B))
			for _, x := range texts {
				if walks(line, x.box, step) {
					found = append(found, x.words+" lies over a wall of "+room.Name)
				}
			}
		}
	}
	return append(found, withinWalls(ix, level, texts, m)...)
}

// withinWalls tells which texts lie between the faces of a wall, as on a window in it.
func withinWalls(ix *index.Index, level plan.ID, texts []text, m render.Medium) (found []string) {
	for room := range ix.Plan().Level(level).Rooms.All() {
		view, _ := ix.RoomView(room.ID)
		for i := range view.Sides {
			w := wallBehind(&view.Sides[i])
			for _, b := range w.bodies {
				at := func(along, out float64) scene.Point {
					return m.ToScene(w.side.Frame.Point(unit.FromMillimetres(along), unit.FromMillimetres(out)))
				}
				middle := scene.LinePath(at(b.from.Millimetres(), -b.thickness.Millimetres()/2), at(b.to.Millimetres(), -b.thickness.Millimetres()/2))
				for _, x := range texts {
					if b.thickness > 0 && walks(middle, x.box, m.Text/6) {
						found = append(found, x.words+" lies within a wall of "+room.Name)
					}
				}
			}
		}
	}
	return found
}

// badgesOf returns the grounds of the signs of findings.
func badgesOf(pieces []render.Piece, m render.Medium) map[plan.ID]scene.Rect {
	grounds := map[plan.ID]scene.Rect{}
	for _, p := range pieces {
		for _, it := range p.Items {
			disc, ok := it.(scene.Fill)
			wide := 2 * badgeGround * badge * m.Symbol
			if ok && p.Layer == render.LayerMarks && math.Abs(disc.Bounds().Width()-wide) < 1e-6 {
				grounds[p.ID] = disc.Bounds()
			}
		}
	}
	return grounds
}

// badgeCollisions tells what the signs of findings lie over: texts, symbols, each other.
func badgeCollisions(pieces []render.Piece, texts []text, m render.Medium) (found []string) {
	grounds := badgesOf(pieces, m)
	for id, ground := range grounds {
		middle, radius := ground.Middle(), ground.Width()/2-1e-6
		covers := func(box scene.Rect) bool {
			x, y := max(box.Min.X, min(middle.X, box.Max.X)), max(box.Min.Y, min(middle.Y, box.Max.Y))
			return math.Hypot(x-middle.X, y-middle.Y) < radius
		}
		for _, x := range texts {
			if covers(x.box) {
				found = append(found, "the sign of "+string(id)+" lies over "+x.words)
			}
		}
		for other, b := range grounds {
			if other != id && covers(b.Expanded(-ground.Width()*0.15)) {
				found = append(found, "the sign of "+string(id)+" lies over that of "+string(other))
			}
		}
		for _, p := range pieces {
			if p.Symbol == nil {
				continue
			}
			for _, box := range symbol.Draw(p.Symbol.Place, p.Symbol.Style, p.Symbol.Specs...).Boxes() {
				if covers(box) {
					found = append(found, "the sign of "+string(id)+" lies over the symbol of "+string(p.ID))
				}
			}
		}
	}
	return found
}

// TestFindingsHaveTheirSign: where there is room, a sign stands at every ring.
func TestFindingsHaveTheirSign(t *testing.T) {
	p := plantest.House(1, 150)
	ix := index.New(p)
	m, level := media(p.Levels[0].ID, ix)["sheet at 1/4 in to the foot"], p.Levels[0].ID
	want := someFindings(p)
	if got := badgesOf(Draw(ix, level, want, m, rendertest.Everything), m); len(got) != len(want) {
		t.Errorf("%d signs for %d findings", len(got), len(want))
	}
}

// walks reports whether a path passes through a box.
func walks(p scene.Path, box scene.Rect, step float64) (hit bool) {
	var first, at scene.Point
	line := func(to scene.Point) {
		d := to.Sub(at)
		n := int(math.Hypot(d.X, d.Y)/step) + 1
		for i := range n + 1 {
			q := at.Add(d.Mul(float64(i) / float64(n)))
			hit = hit || q.X > box.Min.X && q.X < box.Max.X && q.Y > box.Min.Y && q.Y < box.Max.Y
		}
		at = to
	}
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			first, at = points[0], points[0]
		case scene.LineOp:
			line(points[0])
		case scene.CubicOp:
			from := at
			for i := 1; i <= 240; i++ {
				line(cubic(from, points[0], points[1], points[2], float64(i)/240))
			}
		case scene.CloseOp:
			line(first)
		}
	})
	return hit
}

// cubic returns the point of a cubic Bézier curve at t, by de Casteljau's construction.
func cubic(a, b, c, e scene.Point, t float64) scene.Point {
	between := func(p, q scene.Point) scene.Point { return p.Add(q.Sub(p).Mul(t)) }
	ab, bc, ce := between(a, b), between(b, c), between(c, e)
	return between(between(ab, bc), between(bc, ce))
}

func media(on plan.ID, ix *index.Index) map[string]render.Medium {
	extent, _ := ix.Extent(on)
	all := map[string]render.Medium{
		"sheet at 1/4 in to the foot": render.SheetMedium(unit.Inch/4, unit.Foot, render.Print, words.Voice{}),
		"sheet at 1 to 100":           render.SheetMedium(unit.Millimetre, 100*unit.Millimetre, render.Print, words.Voice{System: unit.Metric}),
		"board far out":               render.BoardMedium(0.03, 1, render.Light, words.Voice{}),
		"board":                       render.BoardMedium(0.08, 1, render.Light, words.Voice{}),
		"board near, two pixels":      render.BoardMedium(0.3, 2, render.Dark, words.Voice{}),
	}
	for name, m := range all {
		all[name] = m.Centred(extent.Min, scene.Point{})
	}
	return all
}

func TestNoTextOfTheCottageLiesOverAnything(t *testing.T) {
	c := rendertest.NewCottage(t)
	for name, m := range media(c.Level, c.Index) {
		pieces := Draw(c.Index, c.Level, c.Findings, m, rendertest.Everything)
		for _, what := range collisions(c.Index, c.Level, pieces, m) {
			t.Errorf("%s: %s", name, what)
		}
	}
}

func TestNoTextOfAHouseLiesOverAnything(t *testing.T) {
	for number := range uint64(20) {
		p := plantest.House(number, 30+12*int(number))
		ix := index.New(p)
		for _, level := range p.Levels {
			for name, m := range media(level.ID, ix) {
				pieces := Draw(ix, level.ID, someFindings(p), m, rendertest.Everything)
				for _, what := range collisions(ix, level.ID, pieces, m) {
					t.Errorf("house %d, %s: %s", number, name, what)
				}
			}
		}
	}
}

// someFindings gives every seventh opening a finding.
func someFindings(p plan.Plan) (found []rule.Finding) {
	i := 0
	for level, o := range p.Openings() {
		if i++; i%7 == 0 {
			found = append(found, rule.Finding{Severity: rule.Severity(i % 3), Level: level.ID, Opening: o.ID, About: o.ID})
		}
	}
	return found
}

func TestNoTextOfARandomPlanLiesOverAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.Random(t)
		ix := index.New(p)
		for _, level := range p.Levels {
			for name, m := range media(level.ID, ix) {
				pieces := Draw(ix, level.ID, nil, m, rendertest.Everything)
				for _, what := range collisions(ix, level.ID, pieces, m) {
					t.Errorf("%s: %s", name, what)
				}
			}
		}
	})
}

// A sheet hides no tag and no name.
func TestSheetWritesEveryTag(t *testing.T) {
	for number := range uint64(3) {
		p := plantest.House(number, 150)
		ix := index.New(p)
		for _, level := range p.Levels {
			m := media(level.ID, ix)["sheet at 1 to 100"]
			written := map[plan.ID]bool{}
			for _, x := range textsOf(Draw(ix, level.ID, nil, m, rendertest.Everything)) {
				written[x.of] = true
			}
			for o := range level.Openings.All() {
				if !written[o.ID] {
					t.Errorf("house %d: %s is not written", number, o.Tag)
				}
			}
			for r := range level.Rooms.All() {
				if !written[r.ID] {
					t.Errorf("house %d: room %s is not written", number, r.Name)
				}
			}
		}
	}
}
