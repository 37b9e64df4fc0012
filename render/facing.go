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

// Kept returns the mark on a side of a room that the distance of an opening there is told from,
// how far that is, and both in words: from the corner, which is called by the face round it,
// or from another thing.
func Kept(ix *index.Index, side *plan.SideRef, o *plan.Opening) (frame.Mark, unit.Length, words.Text) {
	f, _ := frame.FaceOf(ix, side.Key())
	mark, away := f.Kept(ix, o)
	if f.IsEnd(mark) {
		return mark, away, words.New("dimension.corner", "{0} from the {1} corner", away, EndName(ix, side, mark))
	}
	name := ix.Plan().Text(mark.Of)
	if other, _ := ix.Plan().Opening(mark.Of); other != nil {
		name = words.New("plain", "{0}", other.Tag)
	}
	return mark, away, words.New("dimension.from", "{0} from {1}", away, name)
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
