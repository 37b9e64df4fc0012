package sheet

import (
	"math"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"studbay/render/sheet/proof"
)

// marked is where a reader of the printed rows alone marks a box on a wall, its height above
// the subfloor, or above the finished floor where that is named.
type marked struct {
	left, right, centre unit.Length
	isFinished          bool
}

// TestBoxesAreMarkedFromThePagesAlone: whoever has nothing but the rows under the walls
// marks each box within 1/16 in of where the plan has it, and no box twice.
func TestBoxesAreMarkedFromThePagesAlone(t *testing.T) {
	demos := rendertest.Demos(t)
	for _, name := range []string{"farmhouse.studbay", "rowhouse.studbay"} {
		ix := demos[name]
		for _, size := range []string{"letter", "archc"} {
			read := readWalls(t, wallPages(t, ix, size))
			p := ix.Plan()
			for _, o := range p.Openings() {
				ref, onWall := ix.Side(o.At.Host)
				if !onWall || ref.Room.Sides[ref.At].Kind != plan.SideWall || o.IsGone() {
					continue
				}
				got, ok := read[o.Tag]
				if !ok {
					t.Errorf("%s on %s: %s is in no row", name, size, o.Tag)
					continue
				}
				length := ref.Room.Segment(ref.At).Length()
				want := marked{o.At.Along, length - o.At.Along, frame.CentreHeight(o, ref.Room), ref.Room.Sides[ref.At].IsClosedAnywhere()}
				if !want.isFinished {
					want.centre += ref.Room.FloorThickness()
				}
				if ref.Room.FloorThickness() == 0 {
					want.isFinished = got.isFinished // the two floors are one
				}
				if got.isFinished != want.isFinished {
					t.Errorf("%s on %s: %s is marked from the finished floor: %v, want %v", name, size, o.Tag, got.isFinished, want.isFinished)
				}
				for _, d := range []unit.Length{got.left - want.left, got.right - want.right, got.centre - want.centre} {
					if d.Abs() > unit.Inch/16 {
						t.Errorf("%s on %s: %s is marked at %v, want %v", name, size, o.Tag, got, want)
						break
					}
				}
			}
		}
	}
}

func wallPages(t *testing.T, ix *index.Index, size string) (walls []*scene.Scene) {
	t.Helper()
	on, err := paper.Named(size)
	if err != nil {
		t.Fatal(err)
	}
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	pages, err := Build(ix, result, Options{Paper: on, Reader: ForCrew})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range pages {
		if strings.Contains(p.Meta.Title, "Walls") {
			walls = append(walls, p)
		}
	}
	if len(walls) == 0 {
		t.Fatalf("no page of walls on %s", size)
	}
	return walls
}

// readWalls reads the rows under walls by the titles that stand over them.
func readWalls(t *testing.T, pages []*scene.Scene) map[string]marked {
	t.Helper()
	read := map[string]marked{}
	for _, page := range pages {
		columns, head := map[string]float64{}, -1.0
		cells := map[float64]map[string]string{}
		for _, r := range proof.Runs(page) {
			switch r.Text {
			case "Tag":
				columns, head = map[string]float64{}, r.At.Y
			}
			if r.At.Y == head {
				columns[r.Text] = r.At.X
				continue
			}
			for title, x := range columns {
				if math.Abs(r.At.X-x) < 0.01 && r.At.Y > head {
					if cells[r.At.Y] == nil {
						cells[r.At.Y] = map[string]string{}
					}
					cells[r.At.Y][title] = r.Text
				}
			}
		}
		for _, row := range cells {
			if row["From left"] == "" {
				continue
			}
			if _, twice := read[row["Tag"]]; twice {
				t.Errorf("%s is in two rows", row["Tag"])
			}
			centre, isFinished := strings.CutPrefix(row["Center"], "fin. ")
			read[row["Tag"]] = marked{taped(t, row["From left"]), taped(t, row["From right"]), taped(t, centre), isFinished}
		}
	}
	return read
}

// taped reads a length as it stands on a sheet.
func taped(t *testing.T, text string) unit.Length {
	t.Helper()
	l, err := unit.Parse(strings.TrimPrefix(text, "≈ "), unit.Inch)
	if err != nil {
		t.Errorf("%q is no length: %v", text, err)
	}
	return l
}

// TestAWallWithoutStudsSaysNothingOfThem: the row house's party wall is plaster on brick.
func TestAWallWithoutStudsSaysNothingOfThem(t *testing.T) {
	bricks, studs := 0, 0
	for _, page := range wallPages(t, rendertest.Demos(t)["rowhouse.studbay"], "tabloid") {
		for _, text := range proof.Texts(page) {
			hasStuds := strings.Contains(text, "studs 3") || strings.Contains(text, "studs 5") || strings.Contains(text, "studs 8")
			switch {
			case strings.Contains(text, "plaster on brick"):
				bricks++
				if hasStuds {
					t.Errorf("%q tells of studs in brick", text)
				}
			case hasStuds:
				studs++
			}
		}
	}
	if bricks == 0 || studs == 0 {
		t.Errorf("%d walls of brick and %d of studs: want some of both", bricks, studs)
	}
}

// TestHeightsAboveEitherFloor: bottom, center and top of a box stand in its row above the
// subfloor and above the finished floor, whose thickness is printed over the wall; under an
// elevation both stand too. Of a room whose floor nobody tells there is one of each.
func TestHeightsAboveEitherFloor(t *testing.T) {
	p := square(t, 12*unit.Foot)
	for room := range p.Levels[0].Rooms.All() {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(room.Sides[0].ID, 5*unit.Foot))
		o.ID, o.Tag = plantest.NewIDs(7).New(plan.KindOpening), "W1"
		o.Height.Value = 15 * unit.Inch
		o.Assembly = plan.Assembly{}
		p, _ = edit.AddOpening{Opening: o}.Apply(p)
	}
	for _, floor := range []unit.Length{0, 7 * unit.Inch / 8} {
		for room := range p.Levels[0].Rooms.All() {
			laid := *room
			laid.Floor = nil
			if floor > 0 {
				laid.Floor = []plan.Layer{{Name: "oak", Thickness: floor}}
			}
			p, _ = edit.ChangeRoom{Room: laid}.Apply(p)
		}
		texts := map[string]string{}
		for _, page := range build(t, p, Options{}) {
			for _, kind := range []string{"Walls", "Interior"} {
				if strings.Contains(page.Meta.Title, kind) {
					texts[kind] += strings.Join(proof.Texts(page), "|") + "|"
				}
			}
		}
		var o *plan.Opening
		for _, one := range p.Openings() {
			o = one
		}
		var room *plan.Room
		for r := range p.Levels[0].Rooms.All() {
			room = r
		}
		r := frame.RectOf(o, room)
		for _, up := range []unit.Length{r.Bottom, 15 * unit.Inch, r.Top} {
			figure := strings.ReplaceAll((up + floor).Inches(16), " ", "-")
			if !strings.Contains(texts["Walls"], "|"+figure+"|") {
				t.Errorf("floor %v: no %s above the subfloor in %s", floor, figure, texts["Walls"])
			}
			if fin := "|fin. " + strings.ReplaceAll(up.Inches(16), " ", "-") + "|"; strings.Contains(texts["Walls"], fin) != (floor > 0) {
				t.Errorf("floor %v: %s above the finished floor in %s", floor, fin, texts["Walls"])
			}
		}
		said := "no floor told on the subfloor"
		if floor > 0 {
			said = `finished floor 7/8" above subfloor`
		}
		for kind, text := range texts {
			if !strings.Contains(text, said) {
				t.Errorf("floor %v: %s does not say %q: %s", floor, kind, said, text)
			}
		}
		if strings.Contains(texts["Interior"], "subfloor: ") != (floor > 0) {
			t.Errorf("floor %v: the elevation says %s", floor, texts["Interior"])
		}
	}
}

// TestAWallGrowsWithItsPage: the hillside's garage has two walls with a box, of which no two
// stand beside or over one another on 17 × 11 in at 3/8 in to the foot, the scale of the rest.
// Of 247-1/2 in each they are 10-5/16 in wide at 1/2 in, and the page some 16 in; at 3/4 in
// they would be 15-1/2 in, and with what is written at their ends too wide.
func TestAWallGrowsWithItsPage(t *testing.T) {
	walls := map[string]string{}
	for _, page := range wallPages(t, rendertest.Demos(t)["hillside.studbay"], "tabloid") {
		name := ""
		for _, text := range proof.Texts(page) {
			if scale, _, ok := strings.Cut(text, " · "); ok && strings.HasSuffix(scale, "= 1 ft") && name != "" {
				walls[name], name = scale, ""
			}
			if strings.HasPrefix(text, "Garage · ") || strings.HasPrefix(text, "Recreation room · east") {
				name = text
			}
		}
	}
	for name, want := range map[string]string{
		"Garage · east wall": "1/2 in = 1 ft", "Garage · west wall": "1/2 in = 1 ft", "Recreation room · east wall": "3/8 in = 1 ft",
	} {
		if walls[name] != want {
			t.Errorf("%s is drawn at %q, want %q: %v", name, walls[name], want, walls)
		}
	}
}
