package render

import (
	"math"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// winds names the directions a face may stand in, clockwise from north.
var winds = [...]words.Text{
	words.New("wind.n", "north"), words.New("wind.ne", "northeast"), words.New("wind.e", "east"),
	words.New("wind.se", "southeast"), words.New("wind.s", "south"), words.New("wind.sw", "southwest"),
	words.New("wind.w", "west"), words.New("wind.nw", "northwest"),
}

// nearWind is how far, in degrees, a face may be off a wind and still have its name.
const nearWind = 15

// FaceNames names the sides of a room in their order: by the wind where a person
// looks who looks at them, so that the north face stands in the north of the room;
// by a letter where that is not near one. Faces of one name are numbered from the
// left.
func FaceNames(ix *index.Index, room *plan.Room) []words.Text {
	names := make([]words.Text, len(room.Sides))
	count := map[string]int{}
	for i := range room.Sides {
		bearing := Bearing(ix, room, i)
		wind := math.Round(bearing / 45)
		if off := math.Abs(bearing - 45*wind); off <= nearWind {
			names[i] = winds[int(wind)%len(winds)]
		} else {
			names[i] = words.New("face.letter", "face {0}", string(rune('A'+i%26)))
		}
		count[names[i].ID]++
	}
	number := map[string]int{}
	for i, n := range names {
		if n.ID != "face.letter" && count[n.ID] > 1 {
			number[n.ID]++
			names[i] = words.New("face.numbered", "{0} {1}", n, number[n.ID])
		}
	}
	return names
}

// Bearing returns where a person looks who looks at a side of a room, in degrees
// clockwise from north, from 0 to under 360.
func Bearing(ix *index.Index, room *plan.Room, side int) float64 {
	out := geom.FrameOf(room.Segment(side)).Out()
	// Into the wall is the other way than out of it; y runs down the sheet.
	bearing := math.Atan2(-out.X.Millimetres(), out.Y.Millimetres()) * 180 / math.Pi
	if h := ix.Plan().Header; h != nil {
		bearing += float64(h.North)
	}
	return math.Mod(math.Mod(bearing, 360)+360, 360)
}

// FromCorner returns how far a place along a side is from the nearer corner, whether
// that is the right one, and what the corner is called: by the face round it.
func FromCorner(ix *index.Index, room *plan.Room, side int, along unit.Length) (away unit.Length, isRight bool, corner words.Text) {
	f, _ := frame.FaceOf(ix, room.Sides[side].ID)
	end, away := f.NearerEnd(along)
	return away, end.IsRight, EndName(ix, &plan.SideRef{Room: room, At: side}, end)
}

// EndName is what the corner is called at which the wall of a side ends: by the face round
// it, of the room that it ends in.
func EndName(ix *index.Index, side *plan.SideRef, end frame.Mark) words.Text {
	if end.Past != nil {
		side = end.Past
	}
	names, n := FaceNames(ix, side.Room), len(side.Room.Sides)
	if end.IsRight {
		return names[(side.At+1)%n]
	}
	return names[(side.At+n-1)%n]
}
