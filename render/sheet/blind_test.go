package sheet

import (
	"bufio"
	"bytes"
	"context"
	"os/exec"
	"path/filepath"
	"regexp"
	"testing"

	"studbay/fill"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/paint"
	"studbay/render/rendertest"
)

// blind is what someone who has nothing but the printed pages reads of a box: on a wall how
// far it is from either end and how high its center, bottom and top are above the subfloor
// and above the finished floor;
// in a ceiling how far it is from walls, by the letters of their winds.
type blind struct {
	left, right         string
	bottom, centre, top string
	finished            [3]string // the same three above the finished floor
	winds               map[string]string
}

var (
	wallRowLine = regexp.MustCompile(`^([A-Z]+\d+(?:-old)?) .*?((?:≈ )?[\d/-]+") ((?:≈ )?[\d/-]+") (fin\. )?((?:≈ )?[\d/-]+") (?:fin\. )?((?:≈ )?[\d/-]+") (?:fin\. )?((?:≈ )?[\d/-]+")`)
	// Under them stand the same heights above the other floor.
	otherLine = regexp.MustCompile(`^(fin\. )?((?:≈ )?[\d/-]+") (?:fin\. )?((?:≈ )?[\d/-]+") (?:fin\. )?((?:≈ )?[\d/-]+")`)
	// Of an old box that nobody has read no edge is printed.
	unreadLine  = regexp.MustCompile(`^([A-Z]+\d+(?:-old)?) .*?((?:≈ )?[\d/-]+") ((?:≈ )?[\d/-]+") (fin\. )?((?:≈ )?[\d/-]+") not read`)
	unreadOther = regexp.MustCompile(`^(fin\. )?((?:≈ )?[\d/-]+")$`)
	nothing     = regexp.MustCompile(`$^`)
	tagLine     = regexp.MustCompile(`^([A-Z]+\d+(?:-old)?) [A-Z]`)
	windLine    = regexp.MustCompile(`((?:≈ )?(?:\d+' )?[\d/-]+") from ([NESW]) wall`)
)

// TestOldHouseIsMarkedFromItsPDF: a script reads the text of the printed PDF, as poppler
// tells it, and nothing else. From it all boxes of both rooms of the old house are marked, and
// lie within 1/16 in of where the plan has them.
func TestOldHouseIsMarkedFromItsPDF(t *testing.T) {
	poppler, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("no pdftotext is installed: the printed pages were not read")
	}
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	read := blindly(t, poppler, ix)
	boxes := 0
	for _, o := range ix.Plan().Openings() {
		if o.IsGone() {
			continue
		}
		boxes++
		got, ok := read[o.Tag]
		if !ok {
			t.Errorf("nothing on the pages tells where %s is", o.Tag)
			continue
		}
		for what, far := range missed(t, ix, o, got) {
			if far.Abs() > unit.Inch/16 {
				t.Errorf("%s is marked %s off %s, at %+v", o.Tag, far, what, got)
			}
		}
	}
	if boxes < 10 {
		t.Errorf("the old house has %d boxes, want those of two rooms", boxes)
	}
}

// missed returns by how much each figure that was read is off.
func missed(t *testing.T, ix *index.Index, o *plan.Opening, got blind) map[string]unit.Length {
	place, _ := ix.Place(o.At)
	floor := place.Room.FloorThickness()
	if o.At.Part != plan.PartFace {
		box, off := place.Room.Outline().Box(), map[string]unit.Length{}
		want := map[string]unit.Length{"N": o.At.At.Y - box.Min.Y, "S": box.Max.Y - o.At.At.Y, "W": o.At.At.X - box.Min.X, "E": box.Max.X - o.At.At.X}
		if len(got.winds) != 2 {
			t.Errorf("%s is told from %d walls, want two", o.Tag, len(got.winds))
		}
		for wind, text := range got.winds {
			off[wind] = taped(t, text) - want[wind]
		}
		return off
	}
	long := place.Room.Segment(place.Room.SideAt(place.Side.ID)).Length()
	rect := frame.RectOf(o, place.Room)
	centre := frame.CentreHeight(o, place.Room)
	if o.IsUnread() {
		if got.bottom+got.top+got.finished[0]+got.finished[2] != "" {
			t.Errorf("%s: edges of a box that nobody has read are printed: %+v", o.Tag, got)
		}
		return map[string]unit.Length{
			"from the left": taped(t, got.left) - o.At.Along, "from the right": taped(t, got.right) - (long - o.At.Along),
			"the center":                          taped(t, got.centre) - centre - floor,
			"the center above the finished floor": taped(t, got.finished[1]) - centre,
		}
	}
	return map[string]unit.Length{
		"from the left": taped(t, got.left) - o.At.Along, "from the right": taped(t, got.right) - (long - o.At.Along),
		"the bottom": taped(t, got.bottom) - rect.Bottom - floor, "the top": taped(t, got.top) - rect.Top - floor,
		"the center":                          taped(t, got.centre) - centre - floor,
		"the bottom above the finished floor": taped(t, got.finished[0]) - rect.Bottom,
		"the center above the finished floor": taped(t, got.finished[1]) - centre,
		"the top above the finished floor":    taped(t, got.finished[2]) - rect.Top,
	}
}

// with takes in three heights above one of the floors: the finished one where that is named.
func (b blind) with(floor string, heights [3]string) blind {
	if floor != "" {
		b.finished = heights
		return b
	}
	b.bottom, b.centre, b.top = heights[0], heights[1], heights[2]
	return b
}

// blindly prints the crew's pages and reads their text.
func blindly(t *testing.T, poppler string, ix *index.Index) map[string]blind {
	t.Helper()
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	pages, err := Build(ix, result, Options{Reader: ForCrew})
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "set.pdf")
	if _, err := paint.Save(context.Background(), name, pages, paint.Options{Title: "set"}); err != nil {
		t.Fatal(err)
	}
	text, err := exec.Command(poppler, "-raw", name, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	read, ceiling, row, other := map[string]blind{}, "", "", nothing
	for lines := bufio.NewScanner(bytes.NewReader(text)); lines.Scan(); {
		line := lines.Text()
		if m := wallRowLine.FindStringSubmatch(line); m != nil {
			row, other = m[1], otherLine
			read[row] = blind{left: m[2], right: m[3]}.with(m[4], [3]string(m[5:]))
			continue
		}
		if m := unreadLine.FindStringSubmatch(line); m != nil {
			row, other = m[1], unreadOther
			read[row] = blind{left: m[2], right: m[3]}.with(m[4], [3]string{1: m[5]})
			continue
		}
		if m := other.FindStringSubmatch(line); m != nil {
			heights := [3]string{1: m[2]}
			if other == otherLine {
				heights = [3]string(m[2:])
			}
			read[row], other = read[row].with(m[1], heights), nothing
			continue
		}
		if m := tagLine.FindStringSubmatch(line); m != nil {
			ceiling = m[1]
		}
		for _, m := range windLine.FindAllStringSubmatch(line, -1) {
			b := read[ceiling]
			if b.winds == nil {
				b.winds = map[string]string{}
			}
			b.winds[m[2]] = m[1]
			read[ceiling] = b
		}
	}
	return read
}
