//go:build linux

package e2e

import (
	"bytes"
	"image"
	"os"
	"path/filepath"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Where things stand in a window of 1366 × 768 at the scale it opens with.
var (
	roomTool    = image.Pt(37, 145)
	openingTool = image.Pt(37, 315)
	firstCorner = image.Pt(160, 130)
	toTheRight  = image.Pt(500, 131)
	below       = image.Pt(500, 300)
	lastCorner  = image.Pt(161, 430)
	nameField   = image.Pt(1246, 111)
)

// saved reads the plan that the window has saved.
func saved(t *testing.T, path string) plan.Plan {
	t.Helper()
	p, _, err := file.Load(path)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// save asks the window to save and waits for the file to be another.
func save(d *Display, path string) {
	d.t.Helper()
	before, _ := os.ReadFile(path)
	d.Key("ctrl+s")
	d.Until("the plan to be saved", func() bool {
		now, err := os.ReadFile(path)
		return err == nil && !bytes.Equal(now, before)
	})
}

func openings(p plan.Plan) (all []*plan.Opening) {
	for _, o := range p.Openings() {
		all = append(all, o)
	}
	return all
}

// faults returns what is found along the walls of a plan. That its room has no light and
// its level no alarm is told as well, and is not what the job is about.
func faults(t *testing.T, p plan.Plan) (found []rule.Finding) {
	t.Helper()
	r, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	for f := range r.Each() {
		if f.Rule == spacing.WallReach.ID && !f.IsOpen {
			found = append(found, f)
		}
	}
	return found
}

// TestWholeJob goes from an empty window to a checked plan and a sheet: it traces a
// room by mouse and typed lengths, sees what is found, takes the remedy, takes it back,
// drops a receptacle by hand, saves, opens the file again and exports it.
func TestWholeJob(t *testing.T) {
	d := OpenDisplay(t, 1366, 768)
	p := Start(d)
	p.WaitWindow("Studbay")
	d.Shot("1-empty")

	traceRoom(d)
	d.WaitStill()
	nameRoom(d, "Den") // its use is what the name tells
	d.WaitStill()
	d.Shot("2-room-and-its-finding")

	d.Key("ctrl+s")
	d.WaitStill()
	d.Key("ctrl+a")
	d.Type("den.studbay")
	path := filepath.Join(p.Home, "den.studbay")
	d.Key("Return")
	d.Until("the plan to be saved", func() bool { _, err := os.Stat(path); return err == nil })
	d.WaitStill()
	checkRoom(t, saved(t, path))

	remedy := d.findButton(image.Rect(1070, 430, 1360, 740))
	d.Click(remedy)
	d.WaitStill()
	d.Shot("3-remedy-taken")
	save(d, path)
	if now := saved(t, path); len(openings(now)) != 5 || len(faults(t, now)) != 0 {
		t.Errorf("the remedy left %d openings and %d faults, want 5 and none", len(openings(now)), len(faults(t, now)))
	}

	d.Move(firstCorner)
	d.Key("ctrl+z")
	d.WaitStill()
	save(d, path)
	if now := saved(t, path); len(openings(now)) != 0 {
		t.Errorf("one undo left %d openings", len(openings(now)))
	}

	d.Click(openingTool)
	d.Move(image.Pt(400, 180))
	d.Move(image.Pt(400, 140))
	d.WaitStill()
	d.Shot("4-ghost")
	d.Click(image.Pt(400, 140))
	d.Key("Escape")
	d.WaitStill()
	d.Shot("5-receptacle")
	save(d, path)
	now := saved(t, path)
	if all := openings(now); len(all) != 1 || all[0].Kind != "duplex" || all[0].Height != plan.CentreAt(16*unit.Inch) {
		t.Errorf("dropped by hand: %+v, want one duplex receptacle 16 in up", all)
	}

	p.Close()
	again := StartIn(d, p.Home, path)
	again.WaitWindow("Studbay")
	d.WaitStill()
	d.Shot("6-opened-again")
	exportSheet(d, p.Home)
	again.Close()
	if said := p.Said() + again.Said(); said != "" {
		t.Errorf("the program wrote to stderr or stdout:\n%s", said)
	}
}

// traceRoom traces 14' by 12' 6", clockwise from its top left corner.
func traceRoom(d *Display) {
	d.Click(roomTool)
	d.Click(firstCorner)
	d.Move(toTheRight)
	d.WaitStill()
	d.Type("14'")
	d.Key("Return")
	d.Move(below)
	d.WaitStill()
	d.Type("12' 6")
	d.Key("Return")
	d.Move(lastCorner)
	d.WaitStill()
	d.Click(lastCorner)
	d.Key("Return")
}

// nameRoom gives the room that was traced last a name, on its card.
func nameRoom(d *Display, name string) {
	d.Click(nameField)
	d.Key("ctrl+a")
	d.Type(name)
	d.Key("Return")
}

func checkRoom(t *testing.T, p plan.Plan) {
	t.Helper()
	for r := range p.Levels[0].Rooms.All() {
		box := r.Outline().Box()
		size := geom.Point{X: box.Max.X - box.Min.X, Y: box.Max.Y - box.Min.Y}
		want := geom.Point{X: 14 * unit.Foot, Y: 12*unit.Foot + 6*unit.Inch}
		if len(r.Sides) != 4 || size != want {
			t.Errorf("the room has %d sides and measures %v by %v", len(r.Sides), size.X, size.Y)
		}
	}
	if n := p.Levels[0].Rooms.Len(); n != 1 {
		t.Errorf("%d rooms, want 1", n)
	}
	if found := faults(t, p); len(found) != 1 || found[0].Stretches == nil {
		t.Errorf("an empty room of 53 ft of wall: %+v", found)
	}
}

func exportSheet(d *Display, home string) {
	d.Key("ctrl+p")
	d.WaitStill()
	d.Shot("7-export")
	d.Key("Return")
	d.WaitStill()
	d.Key("ctrl+a")
	d.Type("den.pdf")
	d.Key("Return")
	path := filepath.Join(home, "den.pdf")
	d.Until("the sheet to be written", func() bool {
		data, err := os.ReadFile(path)
		return err == nil && bytes.HasPrefix(data, []byte("%PDF-")) && bytes.Contains(data[len(data)-16:], []byte("%%EOF"))
	})
	d.WaitStill()
	d.Shot("8-exported")
	d.Key("Return")
	d.WaitStill()
}

// findButton returns a point in the lowest button-like frame of the accent colour in a
// part of the picture: a row of accent pixels at least 100 wide with another below it.
func (d *Display) findButton(in image.Rectangle) image.Point {
	d.t.Helper()
	pic := d.Picture()
	rows := []int{}
	for y := in.Min.Y; y < in.Max.Y; y++ {
		run := 0
		for x := in.Min.X; x < in.Max.X; x++ {
			if c := pic.RGBAAt(x, y); c.R < 120 && c.G > 90 && c.G > c.R+30 && c.B > c.R+30 {
				run++
			}
		}
		if run > 100 {
			rows = append(rows, y)
		}
	}
	for _, top := range rows {
		for _, bottom := range rows {
			if h := bottom - top; h >= 20 && h <= 44 {
				return image.Pt((in.Min.X+in.Max.X)/2, (top+bottom)/2)
			}
		}
	}
	d.Shot("no-button")
	d.t.Fatal("no button is offered")
	return image.Point{}
}
