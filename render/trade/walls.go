package trade

import (
	"iter"
	"slices"
	"strings"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/face"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/unfold"
)

// Walls lays out every wall with a box on it by itself, at a scale that is read at the
// studs: beside one another as many as a page is wide, and under them what their boxes are.
func (b *Book) Walls() error {
	tried := slices.Collect(firstOf(b.faces(), mostTried))
	if len(tried) == 0 {
		return nil
	}
	name := b.Both("walls.title", "Walls, face by face")
	lay := func(f *flow, faces iter.Seq[face.Face], most paper.Scale) {
		f.BothParagraphs(layout.Fine, wallsHow)
		f.Space(2)
		next, stop := iter.Pull(faces)
		defer stop()
		in := upTo(mostInRow, nil, next)
		row := f.wallRow(in, most)
		for isFirst := true; len(row.walls) > 0; isFirst = false {
			in = upTo(mostInRow, in[len(row.walls):], next)
			after := f.wallRow(in, most)
			f.stand(row, after, isFirst)
			row = after
		}
	}
	f := b.flow(name, wholePage)
	lay(f, b.faces(), b.wallScale(tried, func(s paper.Scale) int {
		draft := &flow{&layout.Flow{Least: wholePage}, b}
		return draft.Count(f.On.Draft(), func() { lay(draft, slices.Values(tried), s) })
	}, f))
	return nil
}

// mostTried is how many walls a scale is tried on, and mostInRow more than stand beside one
// another on any paper: of a large house all walls at once are too much to keep.
const mostTried, mostInRow = 240, 48

// firstOf yields the first n of a sequence.
func firstOf[T any](all iter.Seq[T], n int) iter.Seq[T] {
	return func(yield func(T) bool) {
		left := n
		for one := range all {
			if left == 0 || !yield(one) {
				return
			}
			left--
		}
	}
}

// upTo fills what is in hand up to a number from what comes next.
func upTo[T any](most int, have []T, next func() (T, bool)) []T {
	have = slices.Clone(have) // what was in hand before is let go
	for len(have) < most {
		one, more := next()
		if !more {
			break
		}
		have = append(have, one)
	}
	return have
}

var wallsHow = words.New("walls.how",
	"Each wall as seen standing in its room, before the board goes up. Lengths are from the ends of the wall as it will be finished: over a line from the left, under it from the right, to the centers of boxes and to the sides of rough openings, or of casings where the wall stays closed. While the corners are bare studs the ends lie farther out or nearer by what stands over each wall. Heights are above the subfloor, those behind fin. above the finished floor, which comes first where a part of the wall stays closed. ± is to a casing of assumed width: verify it. Studs are counted from the left; over each its near edge. In a black disc: measured or stated; in dashes: assumed, verify before nailing. Heavy edge: the side that is nailed. Hatched: a block. Crossed: something is in the way behind; in a dashed frame: found clear.")

// faces lists the walls with boxes, room by room.
func (b *Book) faces() iter.Seq[face.Face] {
	return func(yield func(face.Face) bool) {
		for _, l := range b.Plan.Levels {
			for _, r := range table.RoomsInOrder(l) {
				for _, f := range b.facesOf(r) {
					if !yield(f) {
						return
					}
				}
			}
		}
	}
}

// facesOf lists the walls of a room with boxes.
func (b *Book) facesOf(r *plan.Room) []face.Face {
	if b.Result.Figures == nil {
		return nil
	}
	return face.Of(b.Index, r.ID, b.Result.Figures.Build.SetBack)
}

// wallScales are what walls are drawn at, the largest first, and easyWall the smallest of
// them that is taken to save a page.
var (
	wallScales = map[unit.System][]paper.Scale{
		unit.Imperial: {paper.Imperial(16), paper.Imperial(12), paper.Imperial(8), paper.Imperial(6), paper.Imperial(4), paper.Imperial(3), paper.Imperial(2), paper.Imperial(1)},
		unit.Metric:   {paper.Metric(10), paper.Metric(20), paper.Metric(25), paper.Metric(50), paper.Metric(75), paper.Metric(100), paper.Metric(200)},
	}
	easyWall = map[unit.System]paper.Scale{unit.Imperial: paper.Imperial(6), unit.Metric: paper.Metric(25)}
)

// wallScale returns the largest scale at which the walls take as few pages as they can: so
// pages are full, and none is begun for the last wall. Where walls grow too small for what
// is said beside their boxes, a page is not saved.
func (b *Book) wallScale(faces []face.Face, pages func(paper.Scale) int, f *flow) paper.Scale {
	system := b.Voice.System
	best, fewest, told := wallScales[system][0], 0, 0
	for i, s := range wallScales[system] {
		if s.Times() < easyWall[system].Times() {
			break
		}
		said := 0
		for _, w := range faces {
			d := f.drawWall(w, s)
			_, untold := d.Draw(f.wallMedium(d.scale, scene.Point{}))
			said += len(w.Boxes) - len(untold)
		}
		if i > 0 && said < told {
			break
		}
		if n := pages(s); fewest == 0 || n < fewest {
			best, fewest = s, n
		}
		told = max(told, said)
	}
	return best
}

// wallTitle is what a wall is named in over its drawing.
var wallTitle = layout.Style{Size: layout.Heading, Bold: true}

// The white between walls beside one another and below their table, in millimetres, and how
// wide what stands over one is at least.
const (
	wallGap      = 9.0
	wallBelow    = 4.0
	leastWallSay = 78.0
)

// drawnWall is a wall with its drawing.
type drawnWall struct {
	face.Face
	bounds scene.Rect // about the origin
	scale  paper.Scale
}

// mostWall is what share of a page a wall is as high as at most: the rest is its table's.
const mostWall = 0.68

// pageTall is how high the columns of a page are that nothing else stands on, in millimeters.
func (f *flow) pageTall() float64 { return f.On.Main.Expanded(-layout.Gutter).Height() }

// drawWall takes the largest scale at which a wall fits the page with its table, up to one.
func (f *flow) drawWall(w face.Face, most paper.Scale) (d drawnWall) {
	wide, tall := f.Width(), f.pageTall()*mostWall
	for _, s := range wallScales[f.b.Voice.System] {
		if s.Times() > most.Times() {
			continue
		}
		d = drawnWall{w, w.Bounds(f.wallMedium(s, scene.Point{})), s}
		if d.bounds.Width() <= wide && d.bounds.Height() <= tall {
			break
		}
	}
	return d
}

func (f *flow) wallMedium(s paper.Scale, at scene.Point) unfold.Medium {
	m := unfold.Medium{Medium: layout.Medium(f.b.Paper, s, f.b.Voice)}
	m.At = at
	return m
}

// wide is the room that a wall takes beside others: its drawing, or a little more for what is
// said over it.
func (d drawnWall) wide() float64 { return max(d.bounds.Width(), leastWallSay) }

// headTall is how high what stands over a wall is: its name, and what is known of it.
func (b *Book) headTall(d drawnWall) float64 {
	return wallTitle.Line() + float64(len(layout.Fine.Wrap(b.wallSays(d), d.wide())))*layout.Fine.Line() + 1.5
}

// wall puts down one wall with its name over it, its foot level with those beside it.
func (f *flow) wall(d drawnWall, x, y, tall float64) {
	b := f.b
	name := b.wallName(d.Face)
	line := y + wallTitle.Cap() + 0.6
	f.On.Add(wallTitle.At(x, line, wallTitle.Fit(name, d.wide())))
	for _, says := range layout.Fine.Wrap(b.wallSays(d), d.wide()) {
		line += layout.Fine.Line()
		f.On.Add(layout.Fine.At(x, line, says))
	}
	if f.On.IsDraft {
		return
	}
	at := scene.Point{X: x, Y: y + tall - d.bounds.Height()}.Sub(d.bounds.Min)
	items, _ := d.Draw(f.wallMedium(d.scale, at))
	f.On.Add(scene.Group{Layer: scene.Layer{Name: name}, Items: items})
}

func (b *Book) wallName(w face.Face) string {
	return b.Say("walls.name", "{0} · {1}", wallTitle.Fit(w.Room.Name, mostWallRoom), w.Name())
}

// mostWallRoom is how much of the name of a room stands over its walls, in millimetres.
const mostWallRoom = 70.0

// wallSays is what is known of a wall: its scale, its studs and what is put on them.
func (b *Book) wallSays(d drawnWall) string {
	all := []string{d.scale.Words(b.Voice)}
	deep := d.Wall.FramingAt(d.Wall.Length / 2)
	switch {
	case len(d.Wall.Studs()) == 0: // nobody tells any; masonry has none
	case deep > 0 && d.Wall.KeysAt(d.Wall.Length/2) > 0:
		whole := deep + d.Wall.KeysAt(d.Wall.Length/2)
		all = append(all, b.Say("walls.studs-keyed", "studs {0} deep, {1} of it clear of plaster keys, {2}", words.Height(whole), words.Height(deep), table.StudState(d.Wall.State)))
	case deep > 0:
		all = append(all, b.Say("walls.studs-deep", "studs {0} deep, {1}", words.Height(deep), table.StudState(d.Wall.State)))
	default:
		all = append(all, b.Say("walls.studs", "studs {0}", table.StudState(d.Wall.State)))
	}
	switch layers := table.Layers(b.Voice, d.Wall.Side); len(d.Wall.Side.Finish) {
	case 0:
	case 1:
		all = append(all, layers)
	default:
		all = append(all, b.Say("walls.finish", "{0} = {1}", layers, words.Height(frame.SetProud(d.Wall.Side))))
	}
	all = append(all, table.FloorText(b.Voice, d.Room))
	if bare := b.bareText(d); bare != "" {
		all = append(all, bare)
	}
	return strings.Join(all, " · ")
}

// bareText says how much farther out or nearer than the finished ends of a wall those of the
// bare studs are. Nobody sees those where the wall stays closed.
func (b *Book) bareText(d drawnWall) string {
	left, right := frame.BareEnds(d.Room, d.Room.SideAt(d.Wall.Side.ID))
	isLeft := d.Wall.Side.ConditionAt(0) != plan.ConditionClosed
	isRight := d.Wall.Side.ConditionAt(d.Wall.Length) != plan.ConditionClosed
	switch {
	case !isLeft && !isRight:
		return ""
	case !isLeft:
		left = 0
	case !isRight:
		right = 0
	}
	if left == 0 && right == 0 {
		return ""
	}
	end := func(l unit.Length) string {
		switch {
		case l > 0:
			return b.Say("walls.farther", "{0} farther", words.Height(l))
		case l < 0:
			return b.Say("walls.nearer", "{0} nearer", words.Height(-l))
		}
		return b.Say("walls.there", "there")
	}
	return b.Say("walls.bare", "bare corners: left {0}, right {1}", end(left), end(right))
}
