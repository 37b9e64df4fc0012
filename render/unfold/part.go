package unfold

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/draft"
	"studbay/render/scene"
)

// FixtureFace is a face of a fixture that carries openings, in a row with the others of
// its room.
type FixtureFace struct {
	Fixture  *plan.Fixture
	Part     plan.Part
	Name     words.Text
	Left     unit.Length // of its left end, as one looks at it, from that of the row
	Length   unit.Length
	Openings []*plan.Opening // from the left, the lowest first
}

// FixtureFaceGap is the room between two faces of fixtures, for their names.
const FixtureFaceGap = 4 * unit.Foot

// FixtureFaces returns the upright faces of what stands in a room that carry openings,
// and all of those of fixtures named, in the order of the fixtures' IDs.
func FixtureFaces(ix *index.Index, room plan.ID, named ...plan.ID) (faces []FixtureFace) {
	view, ok := ix.RoomView(room)
	if !ok {
		return nil
	}
	views := slices.Clone(view.Standing)
	for _, s := range view.Sides {
		views = append(views, s.Fixtures...)
	}
	faces = fixtureFaces(nil, views, named)
	slices.SortStableFunc(faces, func(a, b FixtureFace) int { return cmp.Compare(a.Fixture.ID, b.Fixture.ID) })
	at := unit.Length(0)
	for i := range faces {
		faces[i].Left = at
		at += faces[i].Length + FixtureFaceGap
	}
	return faces
}

// uprightParts are the faces of a fixture that have a height, in the order shown.
var uprightParts = []plan.Part{plan.PartFront, plan.PartRight, plan.PartBack, plan.PartLeft}

func fixtureFaces(faces []FixtureFace, views []index.FixtureView, named []plan.ID) []FixtureFace {
	for _, v := range views {
		for _, part := range uprightParts {
			face := FixtureFace{Fixture: v.Fixture, Part: part, Name: FixtureFaceName(v.Fixture, part), Length: v.Fixture.FaceLength(part)}
			for _, o := range v.Openings {
				if o.At.Part == part {
					face.Openings = append(face.Openings, o)
				}
			}
			slices.SortStableFunc(face.Openings, func(a, b *plan.Opening) int {
				return cmp.Or(cmp.Compare(a.At.Along, b.At.Along), cmp.Compare(a.Height.Value, b.Height.Value))
			})
			isNamed := slices.Contains(named, v.Fixture.ID) && holdsOpenings(v.Fixture, part)
			if len(face.Openings) > 0 || isNamed {
				faces = append(faces, face)
			}
		}
		faces = fixtureFaces(faces, v.OnIt, named)
	}
	return faces
}

// holdsOpenings reports whether openings are set into a face of a fixture.
func holdsOpenings(f *plan.Fixture, face plan.Part) bool {
	return part.All().Fixture(f.Kind).Carries && f.Holds(face)
}

// FixtureFaceName names a face of a fixture: island, left.
func FixtureFaceName(f *plan.Fixture, part plan.Part) words.Text {
	name := f.Kind.Text()
	if f.Name != "" {
		name = words.New("plain", "{0}", f.Name)
	}
	switch part {
	case plan.PartFront:
		return words.New("face.fixture.front", "{0}, front", name)
	case plan.PartBack:
		return words.New("face.fixture.back", "{0}, back", name)
	case plan.PartLeft:
		return words.New("face.fixture.left", "{0}, left", name)
	case plan.PartRight:
		return words.New("face.fixture.right", "{0}, right", name)
	}
	return words.New("face.fixture.top", "{0}, top", name)
}

// DrawFixtures returns the faces of FixtureFaces at true scale, as one looks at each,
// with their openings at their true heights, those of the medium's fixture with none as
// well. It is nil where there are no faces. Side and Opening of the medium do not count.
func DrawFixtures(ix *index.Index, room plan.ID, findings []rule.Finding, m Medium) []render.Piece {
	s, ok := StripOf(ix, room)
	faces := FixtureFaces(ix, room, m.Fixture)
	view, found := ix.RoomView(room)
	if !ok || !found || len(faces) == 0 {
		return nil
	}
	m.Side, m.Opening = "", ""
	u := unfolding{Drawing: draft.New(ix, view.Level, m.Medium), strip: s, m: m}
	u.TakeFindings(findings, everyRoom)
	for _, f := range faces {
		u.fixtureFace(f)
	}
	u.badges()
	u.letterTags()
	render.SortPieces(u.Pieces)
	return u.Pieces
}

// fixtureFace draws one face with the floor under it, its openings and its name.
func (u *unfolding) fixtureFace(face FixtureFace) {
	f, x := Face{Left: face.Left, Length: face.Length}, face.Fixture
	box := u.box(f, 0, f.Length, x.Bottom, max(x.Top(), x.Bottom+unit.Inch))
	outline := scene.Stroke{Path: box.Path(), Pen: u.breakPen()}
	over := u.m.Text * 0.7
	a, b := u.m.ToStrip(f.Left, 0), u.m.ToStrip(f.Left+f.Length, 0)
	floor := scene.Stroke{Path: scene.LinePath(a.Sub(scene.Point{X: over}), b.Add(scene.Point{X: over})), Pen: u.InkPen(1.75)}
	items := []scene.Item{outline, floor}
	if u.Medium.Catalogue().Fixture(x.Kind).Front == "worktop" {
		items = append(items, scene.Stroke{Path: u.worktop(x, f.Left, f.Left+f.Length), Pen: u.MutedPen()})
	}
	u.Put(x.ID, render.LayerFixtures, items...)
	u.Avoid(x.ID, items...)
	name := scene.Run{
		At:   scene.Point{X: box.Middle().X, Y: u.m.ToStrip(0, 0).Y + 0.9*u.m.Text},
		Text: u.m.Voice.Say(face.Name), Size: u.m.Text, Color: u.Theme.Muted, Align: scene.Center, VAlign: scene.Top,
	}
	u.Put(x.ID, render.LayerRoomNames, name)
	u.Obstacles.Text(name.Bounds(), x.ID)
	for _, o := range face.Openings {
		if !u.m.Hides(o.ID) {
			u.opening(f, o)
		}
	}
}
