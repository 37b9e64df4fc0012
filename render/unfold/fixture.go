package unfold

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// headboard names what of a bed is seen against the wall.
var headboard = words.New("fixture.headboard", "headboard")

// faceFixtures outlines what stands at a face, and what stands on that, at true
// heights.
func (u *unfolding) faceFixtures(f Face, frame geom.Frame, views []index.FixtureView) {
	for _, v := range views {
		if u.m.Hides(v.Fixture.ID) {
			continue
		}
		from, _ := frame.Project(v.Frame.Origin)
		to := min(f.Length, from+v.Fixture.Width)
		if from = max(0, from); from < to {
			u.faceFixture(f, v.Fixture, from, to)
		}
		u.faceFixtures(f, frame, v.OnIt)
	}
}

// fronts draws, within its outline, each front that a kind of fixture may have, between
// two distances along the strip.
var fronts = map[string]func(u *unfolding, x *plan.Fixture, from, to unit.Length, box scene.Rect) []scene.Item{
	"plain":     (*unfolding).plain,
	"headboard": (*unfolding).plain,
	"worktop":   (*unfolding).counter,
	"mirror":    (*unfolding).mirror,
	"doors":     (*unfolding).doors,
}

func (u *unfolding) faceFixture(f Face, x *plan.Fixture, from, to unit.Length) {
	box := u.box(f, from, to, x.Bottom, min(u.strip.Ceiling, max(x.Top(), x.Bottom+unit.Inch)))
	items := []scene.Item{u.mutedLine(box.Path())}
	kind := u.Medium.Catalogue().Fixture(x.Kind)
	if front := fronts[kind.Front]; front != nil {
		items = append(items, front(u, x, f.Left+from, f.Left+to, box)...)
	}
	u.Put(x.ID, render.LayerFixtures, items...)
	u.Avoid(x.ID, items...)
	text := x.Name
	if kind.Front == "headboard" {
		text = u.m.Voice.Say(headboard)
	} else if letter, ok := kind.LetterText(); ok && text == "" {
		text = u.m.Voice.Say(letter)
	}
	if text != "" {
		u.onFaces = append(u.onFaces, faceNamed{x.ID, text, box})
	}
}

func (u *unfolding) plain(*plan.Fixture, unit.Length, unit.Length, scene.Rect) []scene.Item {
	return nil
}

// counter draws the edge of the top, but of one that is little more than a top itself.
func (u *unfolding) counter(x *plan.Fixture, from, to unit.Length, _ scene.Rect) []scene.Item {
	if x.Height <= 4*unit.Inch {
		return nil
	}
	return []scene.Item{u.mutedLine(u.worktop(x, from, to))}
}

// mirror draws two strokes of glass.
func (u *unfolding) mirror(_ *plan.Fixture, _, _ unit.Length, box scene.Rect) (items []scene.Item) {
	m, d := box.Middle(), 0.16*min(box.Width(), box.Height())
	for _, off := range []float64{-0.6, 0.6} {
		c := m.Add(scene.Point{X: off * d})
		items = append(items, u.mutedLine(scene.LinePath(c.Add(scene.Point{X: -d, Y: d}), c.Add(scene.Point{X: d, Y: -d}))))
	}
	return items
}

// doors draws where two doors meet.
func (u *unfolding) doors(_ *plan.Fixture, _, _ unit.Length, box scene.Rect) []scene.Item {
	x := box.Middle().X
	return []scene.Item{u.mutedLine(scene.LinePath(scene.Point{X: x, Y: box.Min.Y}, scene.Point{X: x, Y: box.Max.Y}))}
}

// worktop returns the lower edge of the top of a fixture: 1-1/2 in thick, common practice.
func (u *unfolding) worktop(x *plan.Fixture, from, to unit.Length) scene.Path {
	edge := x.Top() - 3*unit.Inch/2
	return scene.LinePath(u.m.ToStrip(from, edge), u.m.ToStrip(to, edge))
}

// faceNamed is a fixture outlined on a face whose name is to be written in its box.
type faceNamed struct {
	of   plan.ID
	text string
	box  scene.Rect
}

// faceNames writes the names of fixtures low in their outlines, clear of what is drawn
// there.
func (u *unfolding) faceNames() {
	for _, n := range u.onFaces {
		run := scene.Run{Text: n.text, Size: 0.9 * u.m.Text, Color: u.Theme.Muted}
		if at, ok := u.NameSpot(run, n.box, scene.Point{X: n.box.Middle().X, Y: n.box.Max.Y - run.Size}); ok {
			u.WriteName(n.of, run, at)
		}
	}
}
