package shell

import (
	"math"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// sortPicture draws one sort of what a tool makes, as the board would.
func sortPicture(toolID, choice string, w, h float64, p *look.Palette) []scene.Item {
	switch toolID {
	case "break":
		return breakPicture(plan.BreakKind(choice), w, h, p)
	case "fixture":
		return fixturePicture(plan.FixtureKind(choice), w, h, p)
	}
	return wirePicture(choice, w, h, p)
}

// The IDs of the plan that a picture is drawn of.
const (
	pictureLevel   = plan.ID("vaaaaaaaa")
	pictureRoom    = plan.ID("raaaaaaaa")
	pictureBreak   = plan.ID("baaaaaaaa")
	pictureFixture = plan.ID("faaaaaaaa")
	pictureSide    = plan.ID("saaaaaaaa")
)

// pictureSize is the side of the room that a picture is drawn of: far more than shows.
const pictureSize = 60 * unit.Foot

// picturePlan returns a plan of one square room with its left upper corner at the
// origin, after an edit.
func picturePlan(e edit.Edit) *index.Index {
	corners := geom.BoxOf(geom.Point{}, geom.Point{X: pictureSize, Y: pictureSize}).Corners()
	room := plan.NewRoom(pictureRoom, "", plan.UseLiving, corners, []plan.ID{pictureSide, "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	room.Ceiling = 8 * unit.Foot
	p, err := edit.Steps{Edits: []edit.Edit{edit.AddRoom{Level: pictureLevel, Room: room}, e}}.Apply(plan.New("picture", pictureLevel))
	if err != nil {
		panic(err) // the sizes a tool begins with fit into such a room
	}
	return index.New(p)
}

// drawnOf returns the pieces of some layers of such a plan, with the middle of a box of
// it in the middle of the picture, as large as fits.
func drawnOf(ix *index.Index, box geom.Box, w, h float64, p *look.Palette, layers ...render.Layer) (items []scene.Item) {
	zoom := math.Min(w/box.Width().Millimetres(), h/box.Height().Millimetres())
	m := render.BoardMedium(zoom, 1, *p, words.Voice{}).Centred(box.Center(), scene.Point{X: w / 2, Y: h / 2})
	for _, piece := range level.Draw(ix, pictureLevel, nil, m, box) {
		for _, layer := range layers {
			if piece.Layer == layer {
				items = append(items, piece.Items...)
			}
		}
	}
	return items
}

// breakPicture draws a break in a stretch of wall, the room below it.
func breakPicture(kind plan.BreakKind, w, h float64, p *look.Palette) []scene.Item {
	known := part.All().Break(kind)
	made := known.NewBreak(unit.Imperial)
	made.ID, made.At = pictureBreak, plan.OnFace(pictureSide, pictureSize/2)
	ix := picturePlan(edit.AddBreak{Break: made})
	const wall = 6 * unit.Inch
	deep := max(wall, known.Out)
	if known.IsHung {
		deep = made.Width + unit.Inch
	}
	box := geom.BoxOf(geom.Point{X: pictureSize/2 - wall, Y: -wall}, geom.Point{X: pictureSize/2 + made.Width + wall, Y: deep})
	var items []scene.Item
	zoom := math.Min(w/box.Width().Millimetres(), h/box.Height().Millimetres())
	m := render.BoardMedium(zoom, 1, *p, words.Voice{}).Centred(box.Center(), scene.Point{X: w / 2, Y: h / 2})
	for _, x := range []unit.Length{pictureSize/2 - wall, pictureSize/2 + made.Width} {
		stub := geom.BoxOf(geom.Point{X: x, Y: -frame.FreeThickness(&plan.Side{Kind: plan.SideWall})}, geom.Point{X: x + wall})
		items = append(items, scene.Fill{Path: m.Rect(stub).Path(), Color: p.Wall})
	}
	return append(items, drawnOf(ix, box, w, h, p, render.LayerBreaks)...)
}

// fixturePicture draws a fixture from above, its back at the top.
func fixturePicture(kind plan.FixtureKind, w, h float64, p *look.Palette) []scene.Item {
	made := part.All().Fixture(kind).NewFixture(unit.Imperial)
	made.ID, made.At = pictureFixture, plan.OnFace(pictureSide, pictureSize/2)
	ix := picturePlan(edit.AddFixture{Fixture: made})
	outline, _ := ix.Footprint(&made)
	return drawnOf(ix, outline.Box().Expand(unit.Inch), w-2, h-2, p, render.LayerFixtures)
}

// wirePicture draws a cable's end with its conductors, or a switch with its light.
func wirePicture(choice string, w, h float64, p *look.Palette) (items []scene.Item) {
	middle := scene.Point{X: w / 2, Y: h / 2}
	style := symbol.Style{Size: 9, Ink: p.Accent, Paper: p.Surface, MinLine: 1}
	wires, isCable := tool.CableWires(choice)
	switch {
	case isCable:
		wide, high := 9+6*float64(wires), 11.0
		sheath := scene.RectAround(middle, wide, high).RoundedPath(high / 2)
		items = append(items, scene.Stroke{Path: sheath, Pen: scene.Pen{Width: 1.25, Color: p.Muted}})
		for i := range wires + 1 {
			at := scene.Point{X: middle.X + 6*(float64(i)-float64(wires)/2), Y: middle.Y}
			if i == wires/2 && wires == 2 || i == wires && wires > 2 { // the bare ground
				items = append(items, scene.Stroke{Path: scene.Circle(at, 1.6), Pen: scene.Pen{Width: 1, Color: p.Muted}})
				continue
			}
			items = append(items, scene.Fill{Path: scene.Circle(at, 2.2), Color: p.Ink})
		}
	case choice == "":
		a, b := scene.Point{X: 5, Y: h - 8}, scene.Point{X: w - 5, Y: 8}
		var path scene.Path
		path.MoveTo(a)
		path.CubicTo(scene.Point{X: 0.4 * w, Y: a.Y}, scene.Point{X: 0.6 * w, Y: b.Y}, b)
		items = append(items, scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.25, Color: p.Muted, Dash: []float64{5, 3}}},
			scene.Fill{Path: scene.Circle(a, 3), Color: p.Accent}, scene.Fill{Path: scene.Circle(b, 3), Color: p.Accent})
	default:
		foot, light := scene.Point{X: 3, Y: h - 9}, scene.Point{X: w - 7, Y: 9}
		var path scene.Path
		path.MoveTo(scene.Point{X: foot.X + 12, Y: foot.Y})
		path.CubicTo(scene.Point{X: 0.6 * w, Y: foot.Y}, scene.Point{X: 0.62 * w, Y: h / 2}, light.Add(scene.Point{X: -4, Y: 4}))
		items = append(items, scene.Stroke{Path: path, Pen: scene.Pen{Width: 1, Color: p.Muted, Dash: []float64{3, 2}}})
		items = append(items, symbol.Draw(symbol.Place{Foot: foot, Into: scene.Point{X: 1}}, style, symbol.Spec{Family: symbol.Switch, Yokes: 1}).Items...)
		items = append(items, symbol.Draw(symbol.Place{Foot: light}, style, symbol.Spec{Family: symbol.Light}).Items...)
	}
	return items
}
