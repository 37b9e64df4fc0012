package table

import (
	"math"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
)

// wind is a direction of the compass, counted clockwise from north by eighths.
type wind int

var windNames = [8]words.Text{
	words.New("wind.n", "north"), words.New("wind.ne", "northeast"), words.New("wind.e", "east"), words.New("wind.se", "southeast"),
	words.New("wind.s", "south"), words.New("wind.sw", "southwest"), words.New("wind.w", "west"), words.New("wind.nw", "northwest"),
}

var windLetters = [8]words.Text{
	words.New("wind.short.n", "N"), words.New("wind.short.ne", "NE"), words.New("wind.short.e", "E"), words.New("wind.short.se", "SE"),
	words.New("wind.short.s", "S"), words.New("wind.short.sw", "SW"), words.New("wind.short.w", "W"), words.New("wind.short.nw", "NW"),
}

func (w wind) name() words.Text    { return windNames[w] }
func (w wind) letters() words.Text { return windLetters[w] }

// windOf returns the wind nearest to a direction of the sheet, given the bearing of the
// sheet's up direction in degrees.
func windOf(v geom.Point, north int) wind {
	up := math.Atan2(v.X.Millimetres(), -v.Y.Millimetres()) * 180 / math.Pi
	eighths := int(math.Round((up + float64(north)) / 45))
	return wind((eighths%8 + 8) % 8)
}

func minus(v geom.Point) geom.Point { return geom.Point{X: -v.X, Y: -v.Y} }

// Wall names one side of a room by the wind it stands in, as its unfolded face is named:
// "north wall". It is zero where the side is not the room's.
func Wall(ix *index.Index, room *plan.Room, side plan.ID) words.Text {
	at := room.SideAt(side)
	if at < 0 {
		return words.Text{}
	}
	name := render.FaceNames(ix, room)[at]
	switch name.ID {
	case "face.letter":
		return name
	case "face.numbered":
		return words.New("wall.numbered", "{0} wall {1}", name.Args...)
	}
	return words.New("wall.named", "{0} wall", name)
}

func northOf(p plan.Plan) int {
	if p.Header == nil {
		return 0
	}
	return p.Header.North
}
