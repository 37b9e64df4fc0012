package scene_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// noted is what a painter was told, call by call.
type noted struct{ calls []any }

func (n *noted) Stroke(p scene.Path, pen scene.Pen) { n.calls = append(n.calls, steps(p), pen) }
func (n *noted) Fill(p scene.Path, c scene.Color)   { n.calls = append(n.calls, steps(p), c) }
func (n *noted) Text(r scene.Run)                   { n.calls = append(n.calls, r) }
func (n *noted) Begin(l scene.Layer)                { n.calls = append(n.calls, l) }
func (n *noted) End()                               { n.calls = append(n.calls, "end") }
func (n *noted) Close() error                       { return nil }

// steps lists the commands of a path with their points.
func steps(p scene.Path) (all []any) {
	p.Each(func(op scene.Op, points []scene.Point) { all = append(all, op, append([]scene.Point{}, points...)) })
	return all
}

// A packed page is painted as it was before, in parts packed at several times too, and what
// is added later is above.
func TestAPackedPageIsPaintedTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var loose, packed scene.Scene
		stores := []*scene.Store{nil, {}}
		for range rapid.IntRange(0, 12).Draw(t, "items") {
			item := anyItem(t, 2)
			loose.Add(item)
			packed.Add(item)
			if rapid.Bool().Draw(t, "pack") {
				packed.Pack(rapid.SampledFrom(stores).Draw(t, "store"))
			}
		}
		var want, got noted
		loose.Paint(&want)
		packed.Paint(&got)
		if !reflect.DeepEqual(got.calls, want.calls) {
			t.Fatalf("painted %v, want %v", got.calls, want.calls)
		}
		packed.Clear()
		var none noted
		if packed.Paint(&none); len(none.calls) > 0 {
			t.Fatalf("a page that was cleared still shows %v", none.calls)
		}
	})
}

func anyItem(t *rapid.T, deep int) scene.Item {
	float := func() float64 { return rapid.Float64Range(-900, 900).Draw(t, "v") }
	point := func() scene.Point { return scene.Point{X: float(), Y: float()} }
	ink := scene.Color{R: rapid.Byte().Draw(t, "r"), G: 7, B: 9, A: rapid.Byte().Draw(t, "a")}
	path := scene.Polyline(point(), point(), point())
	if rapid.Bool().Draw(t, "round") {
		path = scene.Circle(point(), 5)
	}
	switch rapid.IntRange(0, 2+min(deep, 1)).Draw(t, "kind") {
	case 0:
		pen := scene.Pen{Width: float(), Color: ink, Cap: scene.SquareCap, Join: scene.BevelJoin}
		for range rapid.IntRange(0, 3).Draw(t, "dashes") {
			pen.Dash = append(pen.Dash, float())
		}
		return scene.Stroke{Path: path, Pen: pen}
	case 1:
		return scene.Fill{Path: path, Color: ink}
	case 2:
		return scene.Run{At: point(), Text: rapid.String().Draw(t, "text"), Size: float(), Weight: glyph.Bold, Align: scene.End, VAlign: scene.Top, Color: ink, Angle: float()}
	}
	g := scene.Group{Layer: scene.Layer{Name: rapid.String().Draw(t, "name"), Link: "#Schedule"}}
	if rapid.Bool().Draw(t, "clipped") {
		g.Layer.Clip = &scene.Rect{Min: point(), Max: point()}
	}
	for range rapid.IntRange(0, 3).Draw(t, "within") {
		g.Items = append(g.Items, anyItem(t, deep-1))
	}
	return g
}

// A folder that takes no file leaves pages in memory: they are painted all the same.
func TestPagesArePackedWithoutAFile(t *testing.T) {
	t.Setenv("TMPDIR", t.TempDir()+"/none")
	var page scene.Scene
	page.Add(scene.Run{Text: "still here"})
	page.Pack(&scene.Store{})
	var got noted
	if page.Paint(&got); len(page.Items) != 0 || len(got.calls) != 1 {
		t.Errorf("painted %v", got.calls)
	}
}
