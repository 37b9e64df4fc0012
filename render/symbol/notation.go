package symbol

import (
	"fmt"
	"strconv"
	"strings"

	"studbay/render/scene"
)

// shape reads strokes written as text, so that a table of symbols can be seen at a
// glance. Numbers are in the unit box of the table, x right and y down.
//
//	M x y                  begin at a point
//	L x y                  line to a point
//	C x y x y x y          curve: control, control, end
//	Z                      close
//	O x y r                a whole circle about a point
//	A x y r from sweep     an arc about a point, degrees clockwise from the right,
//	                       joined to what is drawn so far
//	R x y x y r            a box between two corners, rounded by r
//
// A fault in it is a fault in our tables, found by any test that draws them all.
func shape(text string) (p scene.Path) {
	words := strings.Fields(text)
	for len(words) > 0 {
		word, n := words[0], arguments[words[0]]
		if n == 0 && word != "Z" || len(words) <= n {
			panic(fmt.Sprintf("symbol: %q in the shape %q", word, text))
		}
		v := make([]float64, n)
		for i := range v {
			var err error
			if v[i], err = strconv.ParseFloat(words[1+i], 64); err != nil {
				panic(fmt.Sprintf("symbol: %v in the shape %q", err, text))
			}
		}
		words = words[1+n:]
		draw(&p, word, v)
	}
	return p
}

var arguments = map[string]int{"M": 2, "L": 2, "C": 6, "O": 3, "A": 5, "R": 5}

func draw(p *scene.Path, word string, v []float64) {
	at := func(i int) scene.Point { return scene.Point{X: v[i], Y: v[i+1]} }
	switch word {
	case "M":
		p.MoveTo(at(0))
	case "L":
		p.LineTo(at(0))
	case "C":
		p.CubicTo(at(0), at(2), at(4))
	case "Z":
		p.Close()
	case "O":
		p.Append(scene.Circle(at(0), v[2]))
	case "A":
		p.ArcTo(at(0), v[2], v[3], v[4])
	case "R":
		p.Append(scene.Rect{Min: at(0), Max: at(2)}.RoundedPath(v[4]))
	}
}
