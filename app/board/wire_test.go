package board

import (
	"testing"

	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// wiredStage shows two lights of one room with a cable between them.
func wiredStage(t *testing.T) (s *stage, cable plan.ID, ends [2]*plan.Opening) {
	s = newStage(t, 60)
	pic := s.board.pic
	var room *plan.Room
	for r := range pic.Index.Plan().Level(pic.Level).Rooms.All() {
		room = r
		break
	}
	box := room.Outline().Box()
	edits := edit.Steps{}
	for i := range ends {
		at := box.Min.Add(geom.Point{X: box.Width() * unit.Length(1+3*i) / 6, Y: box.Height() / 3})
		ends[i] = &plan.Opening{ID: plan.ID("oaaaaaaa" + string(rune(97+i))), Kind: "ceiling-light", At: plan.OnCeiling(room.ID, at), Height: plan.CentreAt(0), Status: plan.StatusNew}
		edits.Edits = append(edits.Edits, edit.AddOpening{Opening: *ends[i]})
	}
	cable = plan.ID(string(plan.KindCable) + "aaaaaaaa")
	edits.Edits = append(edits.Edits, edit.Add{Thing: &plan.Cable{ID: cable, From: ends[0].ID, To: ends[1].ID, Size: 14, Wires: 2, Ground: true}})
	now, err := edits.Apply(pic.Index.Plan())
	if err != nil {
		t.Fatal(err)
	}
	pic.Index = index.New(now)
	s.board.SetPicture(pic)
	return s, cable, ends
}

// pixelsOf tells how many pieces a picture has of a noun.
func (s *stage) piecesOf(id plan.ID) (n int) {
	for _, p := range s.board.easel.shown.pieces {
		if p.ID == id && p.Layer == render.LayerControls {
			n++
		}
	}
	return n
}

func TestCablesAreShownWhenTheyMatter(t *testing.T) {
	s, cable, ends := wiredStage(t)
	pic := s.board.pic
	if s.piecesOf(cable) != 0 {
		t.Error("a cable is drawn with nothing chosen")
	}
	pic.Selected = []plan.ID{ends[1].ID}
	s.board.SetPicture(pic)
	if s.piecesOf(cable) != 1 {
		t.Error("a cable of what is chosen is not drawn")
	}
	pic.Selected = nil
	pic.Preview.Cables = true
	s.board.SetPicture(pic)
	if s.piecesOf(cable) != 1 {
		t.Error("with the tool in hand the cable is not drawn")
	}
	s.picture(t, "cable")
	pic.Preview.Cables = false
	s.board.SetPicture(pic)
	if s.piecesOf(cable) != 0 {
		t.Error("the cable stays")
	}
}

func TestACableIsPointedAt(t *testing.T) {
	s, cable, ends := wiredStage(t)
	pic := s.board.pic
	pic.Preview.Cables = true
	s.board.SetPicture(pic)
	middle := geom.Segment{A: ends[0].At.At, B: ends[1].At.At}
	x, y := s.board.view.Screen(middle.At(middle.Length() / 2))
	s.board.MouseDown(mouseAt(float32(x), float32(y)+2, desktop.MouseButtonPrimary))
	if got := s.told.last(); got.Line != cable {
		t.Errorf("told of line %q, want %s", got.Line, cable)
	}
	s.board.MouseUp(mouseAt(float32(x), float32(y)+2, desktop.MouseButtonPrimary))
	s.board.MouseMoved(mouseAt(float32(x), float32(y)+40, 0))
	if got := s.told.last(); got.Line == cable {
		t.Error("told of the line far from it")
	}
	before := len(s.board.parts.live.objects)
	pic.Selected = []plan.ID{cable}
	s.board.SetPicture(pic)
	if len(s.board.parts.live.objects) <= before {
		t.Error("a chosen cable is not marked")
	}
}

// TestNotesKeepClear holds the name of a snap off the dimensions and inside the board,
// wherever the pointer is.
func TestNotesKeepClear(t *testing.T) {
	s := newStage(t, 60)
	pic := s.board.pic
	view := s.board.view
	for _, at := range [][2]float64{{500, 300}, {990, 300}, {500, 690}, {995, 695}, {30, 30}} {
		foot := view.Plan(at[0], at[1])
		pic.Preview = tool.Preview{
			Snap: words.New("snap.centre", "as far as from the left corner to the other one"), SnapAt: &foot,
			Typed: words.New("plain", "{0}", "40| → 3' 4\""),
			Dims: []tool.Dim{
				{From: foot, To: foot.Add(geom.Point{X: 3 * unit.Foot}), Text: `3' 0"`, Aside: geom.Point{Y: unit.Foot}},
				{From: foot.Sub(geom.Point{X: 4 * unit.Foot}), To: foot, Text: `4' 0"`, Aside: geom.Point{Y: unit.Foot}},
			},
		}
		b := scribe{pic: pic, view: view, density: 1, symbols: map[ghostKey]ghostImage{}, screen: rectOf(s.board.screen())}
		b.pic.Preview = pic.Preview
		b.draw()
		own := b.notes[len(b.notes)-2:]
		for i, n := range own {
			if n.Intersect(b.screen) != n {
				t.Errorf("at %v note %d runs out of the board: %v of %v", at, i, n, b.screen)
			}
			for j, other := range b.notes[:len(b.notes)-2+i] {
				if n.Overlaps(other) {
					t.Errorf("at %v note %d at %v covers %d at %v", at, i, n, j, other)
				}
			}
		}
	}
}

func TestCurvesAreFlattened(t *testing.T) {
	var p scene.Path
	p.MoveTo(scene.Point{}).CubicTo(scene.Point{X: 10}, scene.Point{X: 20}, scene.Point{X: 30}).LineTo(scene.Point{X: 30, Y: 5})
	lines := flattened([]scene.Item{scene.Stroke{Path: p}})
	if len(lines) != 1 || len(lines[0]) != curveSteps+2 || lines[0][curveSteps] != (scene.Point{X: 30}) {
		t.Errorf("flattened to %v", lines)
	}
	if d := away(scene.Point{X: 15, Y: 4}, scene.Point{}, scene.Point{X: 30}); d != 4 {
		t.Errorf("4 away is told as %v", d)
	}
	if d := away(scene.Point{X: -3, Y: 4}, scene.Point{}, scene.Point{X: 30}); d != 5 {
		t.Errorf("5 from the end is told as %v", d)
	}
}
