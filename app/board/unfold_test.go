package board

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

func TestUnfoldedRoom(t *testing.T) {
	test.NewTempApp(t)
	told := &listener{}
	u := NewUnfold(told)
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(800, 214))
	pic := houseOf(t, 60)
	o := firstOnFace(pic)
	place, _ := pic.Index.Place(o.At)
	pic.Selected = []plan.ID{o.ID}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID, Datum: plan.FinishedFloor})
	face, ok := u.strip.Face(place.Side.ID)
	if !ok {
		t.Fatal("the face is not in the strip")
	}
	at := u.medium.ToStrip(face.Left+o.At.Along, o.Height.Value)
	u.MouseDown(mouseAt(float32(at.X), float32(at.Y), desktop.MouseButtonPrimary))
	got := told.last()
	if !got.OnUnfold || got.Side != place.Side.ID || got.Symbol != o.ID || (got.Height-o.Height.Value).Abs() > 3*unit.Inch {
		t.Errorf("told %+v, want opening %s on side %s", got, o.ID, place.Side.ID)
	}
	if d := got.At.Distance(place.Foot); d > 3*unit.Inch {
		t.Errorf("the place on the face is off by %v", d)
	}
	u.Dragged(drag(float32(at.X)+20, float32(at.Y)-10))
	u.DragEnd()
	if told.count(Move) != 1 || told.count(Up) != 1 {
		t.Errorf("told %v", told.kinds)
	}
	if len(u.live.objects) == 0 {
		t.Error("what is chosen is not marked")
	}
	pic.Preview.Ghost = &tool.Ghost{Kind: "duplex", At: plan.OnFace(place.Side.ID, 20*unit.Inch), Height: 40 * unit.Inch}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID})
	(&stage{window: w}).picture(t, "unfold")
	u.SetPicture(UnfoldPicture{Picture: pic})
	told.forget()
	u.MouseMoved(mouseAt(10, 10, 0))
	if len(told.kinds) != 0 {
		t.Error("an empty strip tells of pointers")
	}
}

func TestUnfoldedChainRunsToBothCorners(t *testing.T) {
	test.NewTempApp(t)
	u := NewUnfold(&listener{})
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(800, 214))
	pic := houseOf(t, 60)
	o := firstOnFace(pic)
	place, _ := pic.Index.Place(o.At)
	pic.Findings = nil // whose marks lie on the layer of the measures
	pic.Selected = []plan.ID{o.ID}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID})
	face, _ := u.strip.Face(place.Side.ID)
	texts := func() (said []string) {
		for _, s := range u.liveShapes(1) {
			if s.kind == textShape {
				said = append(said, s.text)
			}
		}
		return said
	}
	tried := false
	// One of which nothing else is said keeps its distance from the left corner, which stands
	// in the picture.
	if other := unit.Imperial.Format(face.Length - o.At.Along); !slices.Contains(texts(), other) {
		t.Errorf("live are %q, want %q to the other corner", texts(), other)
	}
	w.Resize(fyne.NewSize(440, 214))                      // so narrow that the text of the one reaches under the other
	for i := range u.strip.Faces[:len(u.strip.Faces)-1] { // beyond the last there is no room
		if side := u.strip.Faces[i].Side; side != nil && side.ID == place.Side.ID {
			for back := unit.Length(8); back <= 60; back += 2 {
				p, err := edit.MoveOpening{ID: o.ID, To: plan.OnFace(side.ID, face.Length-back*unit.Inch)}.Apply(pic.Index.Plan())
				if err != nil {
					t.Fatal(err)
				}
				moved := pic
				moved.Index = pic.Index.Updated(p)
				u.SetPicture(UnfoldPicture{Picture: moved, Room: place.Room.ID, Side: place.Side.ID})
				if want := unit.Imperial.Format(back * unit.Inch); !slices.Contains(texts(), want) {
					t.Errorf("%d in from the other corner live are %q, want %q", back, texts(), want)
				}
				tried = true
			}
		}
	}
	w.Resize(fyne.NewSize(800, 214))
	if !tried {
		t.Error("the face is the last: nothing was moved")
	}
	pic.Preview.Ghost = &tool.Ghost{Kind: "duplex", At: plan.OnFace(place.Side.ID, 20*unit.Inch), Height: 40 * unit.Inch}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID})
	for _, want := range []string{unit.Imperial.Format(20 * unit.Inch), unit.Imperial.Format(face.Length - 20*unit.Inch)} {
		if !slices.Contains(texts(), want) {
			t.Errorf("with a ghost live are %q, want %q", texts(), want)
		}
	}
	if slices.ContainsFunc(u.pieces, func(p render.Piece) bool { return p.ID == o.ID && p.Layer == render.LayerMarks }) {
		t.Error("the chosen one is measured under the ghost")
	}
}

func TestFacesOfFixturesStandBesideTheRoom(t *testing.T) {
	test.NewTempApp(t)
	told := &listener{}
	u := NewUnfold(told)
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(800, 214))
	pic := houseOf(t, 60)
	place, _ := pic.Index.Place(firstOnFace(pic).At)
	box := place.Room.Outline().Box()
	island := plan.Fixture{ID: "faaaaaaaa", Kind: plan.FixtureIsland, At: plan.OnFloor(place.Room.ID, box.Center()), Width: 48 * unit.Inch, Depth: 30 * unit.Inch, Height: 36 * unit.Inch}
	o := plan.Opening{ID: "oaaaaaaaa", Kind: "duplex", At: plan.Anchor{Host: island.ID, Part: plan.PartFront, Along: 20 * unit.Inch}, Height: plan.CentreAt(24 * unit.Inch), Status: plan.StatusNew}
	now, err := edit.Steps{Edits: []edit.Edit{edit.AddFixture{Fixture: island}, edit.AddOpening{Opening: o}}}.Apply(pic.Index.Plan())
	if err != nil {
		t.Fatal(err)
	}
	pic.Index, pic.Selected = index.New(now), []plan.ID{island.ID}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID})
	for _, part := range []plan.Part{plan.PartFront, plan.PartRight, plan.PartBack, plan.PartLeft} {
		at := plan.Anchor{Host: island.ID, Part: part, Along: 15 * unit.Inch}
		face, ok := u.faceOf(at)
		px := u.medium.ToStrip(face.Left+at.Along, 20*unit.Inch)
		if p, _ := u.pointTo(fyne.NewPos(float32(px.X), float32(px.Y)), 0); !ok || p.Part.Host != island.ID || p.Part.Part != part {
			t.Errorf("%s of the island in hand: pointed at %+v", part, p.Part)
		}
	}
	pic.Selected = []plan.ID{o.ID}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID})
	face, ok := u.faceOf(o.At)
	if !ok {
		t.Fatal("the island's face is not in the row")
	}
	at := u.medium.ToStrip(face.Left+o.At.Along, 24*unit.Inch)
	u.MouseDown(mouseAt(float32(at.X), float32(at.Y), desktop.MouseButtonPrimary))
	got := told.last()
	if got.Symbol != o.ID || got.Part.Host != island.ID || got.Part.Part != plan.PartFront || (got.Part.Along-o.At.Along).Abs() > 3*unit.Inch {
		t.Errorf("told %+v, want the opening on the island's front", got)
	}
	var texts []string
	for _, s := range u.liveShapes(1) {
		if s.kind == textShape {
			texts = append(texts, s.text)
		}
	}
	for _, want := range []string{`1' 8"`, `2' 4"`, `24"`} {
		if !slices.Contains(texts, want) {
			t.Errorf("live are %q, want %q", texts, want)
		}
	}
}

// The dimension to the farther corner is written clear of that to the nearer one, also
// where the latter was moved to stay on the strip.
func TestDimensionsOfOneOpeningStandApart(t *testing.T) {
	test.NewTempApp(t)
	u := NewUnfold(&listener{})
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(760, 214))
	pic := houseOf(t, 60)
	o := firstOnFace(pic)
	place, _ := pic.Index.Place(o.At)
	tried := 0
	for i, side := range place.Room.Sides {
		long := place.Room.Segment(i).Length()
		for _, along := range []unit.Length{8 * unit.Inch, long / 3, long - 40*unit.Inch, long - 8*unit.Inch} {
			now, err := edit.MoveOpening{ID: o.ID, To: plan.OnFace(side.ID, along)}.Apply(pic.Index.Plan())
			if err != nil {
				continue
			}
			tried++
			p := pic
			p.Index, p.Selected = index.New(now), []plan.ID{o.ID}
			u.SetPicture(UnfoldPicture{Picture: p, Room: place.Room.ID, Side: side.ID})
			said := u.lowestText(o.ID)
			if said == nil {
				t.Fatal("nothing says how far it is from a corner")
			}
			for _, s := range u.liveShapes(1) {
				if s.kind != textShape {
					continue
				}
				w, h := noteSize(s.text, 1)
				if (scene.Rect{Min: s.a, Max: s.a.Add(scene.Point{X: w - 10, Y: h - 4})}).Overlaps(*said) {
					t.Errorf("%v along %d: %q lies over the distance to the nearer corner", along, i, s.text)
				}
			}
		}
	}
	if tried < 8 {
		t.Fatalf("only %d places tried", tried)
	}
}
