// Package unfold draws a room as seen standing in it, its faces in a row: interior
// elevations, and beside them the faces of fixtures that carry openings.
//
// It decides no rule and stores nothing: the same index, findings and medium give the
// same pieces in the same order.
package unfold

import (
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// Draw returns the faces of a room in a row at true scale, as seen standing in it:
// the face in hand tinted, studs behind, breaks and fixtures outlined, openings at
// their true heights and sizes with their tags, and the dimensions of the one in
// hand. It is nil where the room is not in the plan. Where the medium has a window, only
// what stands whole in it is lettered.
func Draw(ix *index.Index, room plan.ID, findings []rule.Finding, m Medium) []render.Piece {
	s, ok := StripOf(ix, room)
	view, found := ix.RoomView(room)
	if !ok || !found {
		return nil
	}
	u := unfolding{Drawing: draft.New(ix, view.Level, m.Medium), strip: s, m: m}
	u.TakeFindings(findings, everyRoom)
	for _, f := range s.Faces {
		u.face(f, &view.Sides[f.At])
	}
	u.floor()
	for _, f := range s.Faces {
		u.faceOpenings(f, &view.Sides[f.At])
	}
	u.moves(s.Faces)
	u.badges()
	u.dimensions(view)
	u.faceNames()
	u.letterTags()
	render.SortPieces(u.Pieces)
	return u.Pieces
}

// DrawFace returns one face of a room by itself, its left end where the medium's At is: what
// Draw shows of it, but for tags, signs and dimensions. It is nil where the room has no such
// side.
func DrawFace(ix *index.Index, room, side plan.ID, m Medium) []render.Piece {
	s, _ := StripOf(ix, room)
	view, found := ix.RoomView(room)
	f, ok := s.Face(side)
	if !ok || !found {
		return nil
	}
	f.Left = 0
	u := unfolding{Drawing: draft.New(ix, view.Level, m.Medium), strip: s, m: m, isAlone: true}
	u.face(f, &view.Sides[f.At])
	u.faceOpenings(f, &view.Sides[f.At])
	u.moves([]Face{f})
	render.SortPieces(u.Pieces)
	return u.Pieces
}

// everyRoom is in view: what the unfolded room shows is told by its openings.
func everyRoom(plan.ID) bool { return true }

// letterTags writes the tags of the boxes drawn.
func (u *unfolding) letterTags() {
	for _, l := range u.tags {
		if !u.Beside(l) {
			u.Wanting = append(u.Wanting, l)
		}
	}
	for _, l := range u.Wanting {
		u.Lead(l)
	}
}

// unfolding is a strip in the making.
type unfolding struct {
	*draft.Drawing
	strip   Strip
	m       Medium
	tags    []*draft.Label
	onFaces []faceNamed
	badge   []faceBadge
	isAlone bool // one face without its neighbors: its plates are drawn, its name is not
}

// box returns the box between two distances along a face and two heights.
func (u *unfolding) box(f Face, from, to, low, high unit.Length) scene.Rect {
	return scene.Rect{Min: u.m.ToStrip(f.Left+from, high), Max: u.m.ToStrip(f.Left+to, low)}
}

// face draws one face: its ground, studs, breaks, fixtures and name.
func (u *unfolding) face(f Face, side *index.SideView) {
	whole := u.box(f, 0, f.Length, 0, u.strip.Ceiling)
	isChosen := f.Side.ID == u.m.Side && u.m.Side != ""
	ground := u.Theme.Paper
	if isChosen {
		ground = u.Theme.Tint
	}
	items := []scene.Item{scene.Fill{Path: whole.Path(), Color: ground}}
	items = append(items, u.opened(f)...)
	items = append(items, u.studs(f, side)...)
	items = append(items, u.trims(f)...)
	items = append(items, u.probed(f)...)
	items = append(items, u.edges(f, whole)...)
	u.Put(f.Side.ID, render.LayerRooms, items...)
	for _, c := range side.Cuts {
		if !u.m.Hides(c.Break.ID) {
			u.cut(f, c)
		}
	}
	u.faceFixtures(f, side.Frame, side.Fixtures)
	if !u.isAlone {
		u.faceName(f, whole, isChosen)
	}
}

// edges outlines a face: a wall in muted lines, an open side in dashes.
func (u *unfolding) edges(f Face, whole scene.Rect) (items []scene.Item) {
	pen := u.MutedPen()
	if f.Side.Kind == plan.SideOpen || f.Side.Kind == plan.SideRailing {
		pen = u.dashedPen(pen, 5, 4)
	}
	items = append(items, scene.Stroke{Path: whole.Path(), Pen: pen})
	switch f.Side.Kind {
	case plan.SideGlass:
		d := scene.Point{X: 0.18 * whole.Height(), Y: -0.18 * whole.Height()}
		m := whole.Middle()
		for _, off := range []float64{-0.05, 0.05} {
			c := m.Add(scene.Point{X: off * whole.Height()})
			items = append(items, scene.Stroke{Path: scene.LinePath(c.Sub(d.Mul(0.5)), c.Add(d.Mul(0.5))), Pen: u.MutedPen()})
		}
	case plan.SideRailing:
		rail := u.box(f, 0, f.Length, 0, railingHeight)
		items = append(items, scene.Stroke{Path: rail.Path(), Pen: u.InkPen(1)})
	}
	return items
}

// railingHeight is drawn for a railing: 36 in, common practice.
const railingHeight = 36 * unit.Inch

// studs draws the framing behind a wall, where there is room to tell one from the next.
func (u *unfolding) studs(f Face, side *index.SideView) (items []scene.Item) {
	studs := frame.FaceIn(side).Studs()
	if n := len(studs) - 1; n > 0 && u.m.Length((studs[n].At-studs[0].At)/unit.Length(n)) < 4*u.m.Pixel {
		return nil
	}
	return u.framing(f, side)
}

func (u *unfolding) dashedPen(p scene.Pen, line, gap float64) scene.Pen {
	return u.Drawing.Dashed(p, line, gap)
}

// faceName writes a face's name above it on a board and below it on a sheet.
func (u *unfolding) faceName(f Face, whole scene.Rect, isChosen bool) {
	if whole = u.m.Visible(whole); whole.IsEmpty() {
		return
	}
	run := scene.Run{
		At:   scene.Point{X: whole.Middle().X, Y: whole.Min.Y - 0.7*u.m.Text},
		Text: u.m.Voice.Say(f.Name), Size: u.m.Text, Color: u.Theme.Muted, Align: scene.Center,
	}
	if isChosen {
		run.Weight, run.Color = glyph.Bold, u.Theme.Accent
	}
	if u.m.Kind == render.Sheet {
		run.At.Y, run.VAlign = u.m.ToStrip(0, -u.strip.Floor).Y+0.9*u.m.Text, scene.Top
	}
	run.Text = glyph.Fit(run.Weight, run.Size, whole.Width()-0.4*run.Size, run.Text)
	if run.Text == "" {
		return
	}
	u.Put(f.Side.ID, render.LayerRoomNames, run)
	u.Obstacles.Text(run.Bounds(), f.Side.ID)
}

// floor draws the finished floor and, where it has a thickness, the subfloor; the
// datum is the heavier.
func (u *unfolding) floor() {
	over := u.m.Text * 0.7
	line := func(height unit.Length, width float64) scene.Item {
		a, b := u.m.ToStrip(0, height), u.m.ToStrip(u.strip.Width, height)
		a.X, b.X = a.X-over, b.X+over
		return scene.Stroke{Path: scene.LinePath(a, b), Pen: u.InkPen(width)}
	}
	finished, sub := 1.75, 1.0
	if u.m.Datum == plan.Subfloor {
		finished, sub = sub, finished
	}
	items := []scene.Item{line(0, finished)}
	if u.strip.Floor > 0 {
		items = append(items, line(-u.strip.Floor, sub))
	}
	u.Put(u.strip.Room.ID, render.LayerStretches, items...)
	u.Avoid(u.strip.Room.ID, items...)
}
