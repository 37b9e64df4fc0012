package scene_test

import (
	"fmt"

	"studbay/plan/unit"
	"studbay/render/scene"
)

// teller is a painter that says what it is given.
type teller struct{}

func (teller) Stroke(p scene.Path, pen scene.Pen)   { fmt.Println("stroke", p.Bounds(), pen.Width) }
func (teller) Fill(p scene.Path, color scene.Color) { fmt.Println("fill", p.Bounds(), color.A) }
func (teller) Text(r scene.Run)                     { fmt.Println("text", r.Text, r.At) }
func (teller) Begin(l scene.Layer)                  { fmt.Println("begin", l.Name) }
func (teller) End()                                 { fmt.Println("end") }
func (teller) Close() error                         { return nil }

// A scene is a page of items; a painter is given them in order, each by the method of its
// kind.
func ExampleScene() {
	ink := scene.Color{A: 255}
	s := &scene.Scene{Width: 100 * unit.Millimetre, Height: 50 * unit.Millimetre}
	s.Add(
		scene.Fill{Path: scene.Polygon(scene.Point{}, scene.Point{X: 10}, scene.Point{X: 10, Y: 5}), Color: ink},
		scene.Group{Layer: scene.Layer{Name: "K1"}, Items: []scene.Item{
			scene.Stroke{Path: scene.LinePath(scene.Point{X: 1, Y: 2}, scene.Point{X: 4, Y: 6}), Pen: scene.Pen{Width: 0.5, Color: ink}},
			scene.Run{Text: "K1", At: scene.Point{X: 1, Y: 2}, Size: 2.5, Color: ink},
		}},
	)
	s.Paint(teller{})
	// Output:
	// fill {{0 0} {10 5}} 255
	// begin K1
	// stroke {{1 2} {4 6}} 0.5
	// text K1 {1 2}
	// end
}

// A path is drawn once and placed as often as it is wanted.
func ExamplePath_Placed() {
	var hook scene.Path
	hook.MoveTo(scene.Point{}).LineTo(scene.Point{X: 2}).LineTo(scene.Point{X: 2, Y: 1})
	fmt.Println(hook.Bounds())
	fmt.Println(hook.Placed(scene.Scaling(2, scene.Point{X: 10, Y: 20})).Bounds())
	// Output:
	// {{0 0} {2 1}}
	// {{10 20} {14 22}}
}

// On a sheet a unit is a millimetre of paper.
func ExampleMM() {
	fmt.Println(scene.MM(unit.Inch), scene.PointSize*72)
	// Output: 25.4 25.4
}
