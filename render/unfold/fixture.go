package unfold

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// headboard names what of a bed is seen against the wall.
var headboard = words.New("fixture.headboard", "headboard")

// faceFixtures outlines what stands at a face, and what stands on that, at true
// heights.
func (u *unfolding) faceFixtures(f Face, frame plan.Frame, views []plan.FixtureView) {
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

func (u *unfolding) faceFixture(f Face, x *plan.Fixture, from, to unit.Length) {
	box := u.box(f, from, to, x.Bottom, min(u.strip.Ceiling, max(x.Top(), x.Bottom+unit.Inch)))
	items := []scene.Item{scene.Stroke{Path: box.Path(), Pen: u.MutedPen()}}
	line := func(p scene.Path) { items = append(items, scene.Stroke{Path: p, Pen: u.MutedPen()}) }
	across := func(height unit.Length) {
		line(scene.LinePath(u.m.ToStrip(f.Left+from, height), u.m.ToStrip(f.Left+to, height)))
	}
	switch x.Kind {
	case plan.FixtureCounter, plan.FixturePeninsula, plan.FixtureDesk:
		if x.Height > 4*unit.Inch {
			across(x.Top() - 3*unit.Inch/2)
		}
	case plan.FixtureMirror:
		m, d := box.Middle(), 0.16*min(box.Width(), box.Height())
		for _, off := range []float64{-0.6, 0.6} {
			c := m.Add(scene.Point{X: off * d})
			line(scene.LinePath(c.Add(scene.Point{X: -d, Y: d}), c.Add(scene.Point{X: d, Y: -d})))
		}
	case plan.FixtureUpper, plan.FixtureCabinet:
		line(scene.LinePath(scene.Point{X: box.Middle().X, Y: box.Min.Y}, scene.Point{X: box.Middle().X, Y: box.Max.Y}))
	}
	text := x.Name
	if x.Kind == plan.FixtureBed {
		text = u.m.Voice.Say(headboard)
	} else if t, ok := draft.FixtureLetters[x.Kind]; ok && text == "" {
		text = u.m.Voice.Say(t)
	}
	u.Put(x.ID, render.LayerFixtures, items...)
	u.Avoid(x.ID, items...)
	if text != "" {
		u.onFaces = append(u.onFaces, faceNamed{x.ID, text, box})
	}
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
