package table

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// kitchen is a room of 12 × 10 ft whose upper side has a door 3 ft from its left end,
// with one opening of each way to stand.
func kitchen(t *testing.T) plan.Plan {
	t.Helper()
	ids := plantest.NewIDs(7)
	p := plan.New("Kitchen", ids.New(plan.KindLevel))
	outline := geom.Box{Max: geom.Point{X: 12 * unit.Foot, Y: 10 * unit.Foot}}.Corners()
	room := plan.NewRoom(ids.New(plan.KindRoom), "Kitchen", plan.UseKitchen, outline, ids.Row(plan.KindSide, 4))
	room.Prefix, room.Ceiling = "K", 8*unit.Foot
	side := func(i int) plan.ID { return room.Sides[i].ID }
	island := ids.New(plan.KindFixture)
	add := func(kind string, at plan.Anchor, tag string) edit.Edit {
		o := part.NewOpening(unit.Imperial, kind, at)
		o.ID, o.Tag = ids.New(plan.KindOpening), tag
		return edit.AddOpening{Opening: o}
	}
	for _, e := range []edit.Edit{
		edit.AddRoom{Level: p.Levels[0].ID, Room: room},
		edit.AddBreak{Break: plan.Break{ID: ids.New(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(side(0), 3*unit.Foot),
			Width: 3 * unit.Foot, Head: 80 * unit.Inch, Casing: 2 * unit.Inch}},
		edit.AddFixture{Fixture: plan.Fixture{ID: island, Kind: plan.FixtureIsland,
			At: plan.OnFloor(room.ID, geom.Point{X: 6 * unit.Foot, Y: 6 * unit.Foot}), Width: 4 * unit.Foot, Depth: 2 * unit.Foot, Height: 3 * unit.Foot}},
		add("duplex", plan.OnFace(side(0), 20*unit.Inch), "K10"),
		add("switch", plan.OnFace(side(0), 80*unit.Inch), "K2"),
		add("ceiling-light", plan.OnCeiling(room.ID, geom.Point{X: 5 * unit.Foot, Y: 3 * unit.Foot}), "K1"),
		add("island", plan.Anchor{Host: island, Part: plan.PartFront, Along: 38 * unit.Inch}, "K3"),
		add("data", plan.OnFace(side(1), 2*unit.Foot), "K4"),
	} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	return p
}

func schedule(t *testing.T, p plan.Plan, voice words.Voice) (Table, *index.Index) {
	t.Helper()
	ix := index.New(p)
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return Schedule(ix, result, voice), ix
}

// TestCellsSayWhereAnOpeningStands: the figures follow from the outline by hand.
func TestCellsSayWhereAnOpeningStands(t *testing.T) {
	got, _ := schedule(t, kitchen(t), words.Voice{})
	for _, tt := range []struct{ tag, column, want, why string }{
		{"K10", "face", "north wall", "the upper side, north up"},
		{"K10", "from", `west casing of the door, 2" wide`, "the casing begins at 34 in, nearer than the corner at 0"},
		{"K10", "from_centre", "13.6875", "34 − 20, less 5/16 that the casing stands off the slab"},
		{"K10", "from_edge", "12.53125", "13-11/16 less half of a nail-on box 2-5/16 in wide"},
		{"K10", "centre", "16", "the usual height of its kind"},
		{"K2", "from", `east casing of the door, 2" wide`, "72 in and a casing of 2"},
		{"K2", "from_centre", "5.6875", "80 − 74, less 5/16 that the casing stands off the slab"},
		{"K1", "face", "ceiling", ""},
		{"K1", "from", "north wall", "36 in, against 60 from the west wall"},
		{"K1", "from_centre", "36", ""},
		{"K1", "across", "west wall", "the nearest of those across"},
		{"K1", "across_centre", "60", ""},
		{"K1", "centre", "", "a height means nothing in a ceiling"},
		{"K3", "face", "island, front", ""},
		{"K3", "from", "right end", "48 − 38 = 10"},
		{"K3", "from_centre", "10", ""},
		{"K4", "from", "north corner", "the east side begins in the north"},
		{"K4", "from_centre", "24", ""},
		{"K4", "source", "not counted", "low voltage takes nothing of 314.16"},
		{"K10", "fill", "15.75", "two 12/2 cables: four conductors, one allowance for grounds, two for the yoke, each 2.25: NEC 2023 314.16(B)"},
	} {
		for _, row := range got.Rows {
			if row.Cells[0].Text != tt.tag {
				continue
			}
			if said := got.Cell(row, tt.column).plain(unit.Imperial); said != tt.want {
				t.Errorf("%s %s is %q, want %q: %s", tt.tag, tt.column, said, tt.want, tt.why)
			}
		}
	}
}

// A casing of a wall that stands is assumed until it is measured, and then the distance from the
// corner stands beside it: K10 is 20 in from the corner, K2 80, 64 from the other.
func TestADistanceFromAnAssumedCasing(t *testing.T) {
	for _, tt := range []struct {
		name       string
		condition  plan.Condition
		isMeasured bool
		tag        string
		want       []string
	}{
		{"closed", plan.ConditionClosed, false, "K10", []string{`west casing of the door, 2" wide, assumed`, "west corner"}},
		{"closed, the other side", plan.ConditionClosed, false, "K2", []string{`east casing of the door, 2" wide, assumed`, "east corner"}},
		{"opened", plan.ConditionOpened, false, "K10", []string{`west casing of the door, 2" wide, assumed`, "west corner"}},
		{"measured", plan.ConditionClosed, true, "K10", []string{`west casing of the door, 2" wide`}},
		{"new", plan.ConditionNew, false, "K10", []string{`west casing of the door, 2" wide`}},
	} {
		p := kitchen(t)
		var of *plan.Opening
		for _, o := range p.Openings() {
			if o.Tag == tt.tag {
				of = o
			}
		}
		side, _ := p.Side(of.At.Host)
		stands := *side.Side()
		stands.Condition = tt.condition
		door := *index.New(p).BreaksOn(of.At.Host)[0]
		door.CasingMeasured = tt.isMeasured
		p, err := (edit.Steps{Edits: []edit.Edit{edit.ChangeSide{Side: stands}, edit.ChangeBreak{Break: door}}}).Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, f := range Froms(index.New(p), of) {
			got = append(got, f.Name.String())
			if isAtCasing := f.Casing > 0; f.HasRough != (isAtCasing && tt.condition != plan.ConditionClosed) {
				t.Errorf("%s: a rough opening behind %s: %v", tt.name, f.Name, f.HasRough)
			}
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %s is measured from %q, want %q", tt.name, tt.tag, got, tt.want)
		}
	}
}

// TestCircuitsOfSeveralSpaces: a spreadsheet reads 5/7 and 5-7 as a day, 5,7 as text.
func TestCircuitsOfSeveralSpaces(t *testing.T) {
	for _, tt := range []struct{ number, want, why string }{
		{"5/7", "5,7", "a breaker of two poles"},
		{"10-12", "10,12", "a breaker of two poles"},
		{"5, 7, 9", "5,7,9", "a breaker of three poles"},
		{"14", "14", "one space"},
		{"A/1", "A/1", "a name of its own"},
		{"", "", "none"},
	} {
		if got := spaces(tt.number); got != tt.want {
			t.Errorf("circuit %q is written %q, want %q: %s", tt.number, got, tt.want, tt.why)
		}
	}
}

// TestASheetSortsBack: whatever a spreadsheet sorts by, the column of the order brings
// back that of the schedule; lengths stand once as numbers and once as a tape reads.
func TestASheetSortsBack(t *testing.T) {
	got, _ := schedule(t, kitchen(t), words.Voice{})
	for i, row := range got.Rows {
		if n := got.Cell(row, "sort").Number(); n != i+1 {
			t.Errorf("row %d is numbered %d", i+1, n)
		}
	}
	for _, row := range got.Rows {
		if row.Cells[0].Text == "K2" {
			if tape := got.Cell(row, "from_tape").Text; tape != `5-11/16"` {
				t.Errorf("K2 stands %s from the casing, want 5-11/16\": 80 − 74 − 5/16", tape)
			}
			if tape := got.Cell(row, "across_tape"); tape.Kind != Empty {
				t.Errorf("K2 has a second distance %q, want none on a wall", tape.Text)
			}
		}
		if row.Cells[0].Text == "K1" {
			if tape := got.Cell(row, "across_tape").Text; tape != `5' 0"` {
				t.Errorf("K1 stands %s from the west wall, want 5' 0\": 60 in", tape)
			}
		}
	}
}

// TestHeadingsSpeakTheLanguage: titles and the unit of volumes are those of the voice.
func TestHeadingsSpeakTheLanguage(t *testing.T) {
	spanish := words.Voice{Catalogue: words.Catalogue{"v": "Volumen", "unit.in3": "pulg³"}}
	table := Table{Voice: spanish, Columns: []Column{{"v", words.New("v", "Volume"), Volume}}}
	var b bytes.Buffer
	if err := WriteCSV(&b, table); err != nil {
		t.Fatal(err)
	}
	if got := unmarked(t, &b).String(); got != "Volumen (pulg³)\r\n" {
		t.Errorf("the heading is %q", got)
	}
	if got := spanish.Say(words.New("x", "{0}", 18*unit.CubicInch)); got != "18 pulg³" {
		t.Errorf("a volume is said %q, want 18 pulg³", got)
	}
}

func TestNorthTurnsTheNamesOfWalls(t *testing.T) {
	p := kitchen(t)
	h := *p.Header
	h.North = 90 // up the sheet is east
	p.Header = &h
	got, _ := schedule(t, p, words.Voice{})
	row := got.Rows[len(got.Rows)-1]
	if said := got.Cell(row, "face").Text; row.Cells[0].Text != "K10" || said != "east wall" {
		t.Errorf("the last row, %s, is on the %s, want K10 on the east wall", row.Cells[0].Text, said)
	}
}

// TestEachOpeningHasOneRow compares the schedule with the plan's openings row by row.
func TestEachOpeningHasOneRow(t *testing.T) {
	for _, openings := range []int{0, 1, 7, 60, 200} {
		p := plantest.House(uint64(openings), openings)
		got, ix := schedule(t, p, words.Voice{System: unit.Metric})
		if len(got.Rows) != openings {
			t.Fatalf("%d rows for %d openings", len(got.Rows), openings)
		}
		seen := map[plan.ID]bool{}
		for i, row := range got.Rows {
			o, level := p.Opening(row.Of)
			if o == nil || seen[row.Of] {
				t.Fatalf("row %d is of %q, which is no opening or stands twice", i, row.Of)
			}
			seen[row.Of] = true
			v, _ := ix.OpeningView(o.ID)
			want := map[string]Cell{
				"tag": TextOf(o.Tag), "level": TextOf(level.Name), "room": TextOf(v.Room.Name), "status": TextOf(string(o.Status)),
				"circuit": TextOf(v.Circuit.Number), "note": TextOf(o.Note),
			}
			if o.Gangs > 0 {
				want["gangs"] = NumberOf(o.Gangs)
			}
			if o.At.Part == plan.PartFace {
				want["centre"] = LengthOf(frame.CentreHeight(o, v.Room))
			}
			contents, source := boxes.ContentsOf(v)
			want["source"] = TextOf(source.Text().String())
			if b, ok, err := part.Resolve(o.Assembly); ok && err == nil && source != boxes.NotKnown {
				fig, _ := fill.FiguresOf(p)
				r, err := box.Fill(fig, b.Space(), contents)
				if err != nil {
					t.Fatal(err)
				}
				volume, spare := VolumeOf(r.Volume), VolumeOf(r.Volume-r.Required)
				volume.FromMemory, spare.FromMemory = b.Box.FromMemory, b.Box.FromMemory
				want["volume"], want["fill"], want["spare"] = volume, VolumeOf(r.Required), spare
			}
			for column, cell := range want {
				if got.Cell(row, column) != cell {
					t.Errorf("%s %s is %+v, want %+v", o.Tag, column, got.Cell(row, column), cell)
				}
			}
			if i > 0 && got.Rows[i-1].Group == row.Group && plan.CompareTags(got.Rows[i-1].Cells[0].Text, o.Tag) >= 0 {
				t.Errorf("%s stands after %s", o.Tag, got.Rows[i-1].Cells[0].Text)
			}
		}
	}
}

// TestScheduleSaysWhatHoldsEachBox: studs at 16 in on center put K10's, 20 in along, between
// 16-3/4 (15-1/4 + 1-1/2) and the king of the door, whose slab begins at 36: 36 − 1 of opening
// − 1-1/2 of jack − 1-1/2 = 32, so that the block is 15-1/4 in; joists from the north wall K1's, 3 ft out,
// between 32-3/4 and 47-1/4, 16 − 1-1/2 = 14-1/2 in apart.
func TestScheduleSaysWhatHoldsEachBox(t *testing.T) {
	p := kitchen(t)
	edits := []edit.Edit{}
	for room := range p.Levels[0].Rooms.All() {
		now, north := *room, *room.Sides[0]
		now.Joists = plan.Joists{Along: north.ID, Spacing: 16 * unit.Inch}
		north.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2, First: 16 * unit.Inch}
		edits = append(edits, edit.ChangeRoom{Room: now}, edit.ChangeSide{Side: north})
	}
	p, err := edit.Steps{Edits: edits}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	got, _ := schedule(t, p, words.Voice{})
	for _, tt := range []struct{ tag, column, want string }{
		{"K10", "left_stud", "16.75"}, {"K10", "right_stud", "32"}, {"K10", "held", `block 15-1/4"`}, {"K10", "studs", "stated"}, {"K10", "stud", ""}, {"K10", "stud_side", ""},
		{"K1", "left_stud", "32.75"}, {"K1", "right_stud", "47.25"}, {"K1", "held", `block 14-1/2"`}, {"K1", "studs", "assumed"},
		{"K3", "left_stud", ""}, {"K3", "held", "clamps the finish"}, {"K3", "studs", ""},
	} {
		for _, row := range got.Rows {
			if row.Cells[0].Text != tt.tag {
				continue
			}
			if said := got.Cell(row, tt.column).plain(unit.Imperial); said != tt.want {
				t.Errorf("%s %s is %q, want %q", tt.tag, tt.column, said, tt.want)
			}
		}
	}
}

// TestScheduleCountsStuds: K10 pushed against the stud at 16 in on center is at the right of stud
// 2, the corner being 1; against the king of the door, whose near face is at 32, at the left of
// stud 3.
func TestScheduleCountsStuds(t *testing.T) {
	for _, tt := range []struct {
		name       string
		edge       unit.Length // that the box stands against
		right      bool        // with its right side
		stud, side string
	}{
		{"at the stud", 67 * unit.Inch / 4, false, "2", "right"},
		{"at the king", 32 * unit.Inch, true, "3", "left"},
		{"between", 24 * unit.Inch, false, "", ""},
	} {
		p := kitchen(t)
		var edits []edit.Edit
		for room := range p.Levels[0].Rooms.All() {
			north := *room.Sides[0]
			north.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2, First: 16 * unit.Inch}
			edits = append(edits, edit.ChangeSide{Side: north})
			for _, o := range p.Openings() {
				if o.Tag == "K10" {
					now, rect := *o, frame.RectOf(o, room)
					if now.At.Along += tt.edge - rect.Left; tt.right {
						now.At.Along -= rect.Right - rect.Left
					}
					edits = append(edits, edit.ChangeOpening{Opening: now})
				}
			}
		}
		p, err := edit.Steps{Edits: edits}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		got, _ := schedule(t, p, words.Voice{})
		for _, row := range got.Rows {
			if row.Cells[0].Text != "K10" {
				continue
			}
			if stud, side := got.Cell(row, "stud").plain(unit.Imperial), got.Cell(row, "stud_side").plain(unit.Imperial); stud != tt.stud || side != tt.side {
				t.Errorf("%s: stud %q, side %q, want %q and %q", tt.name, stud, side, tt.stud, tt.side)
			}
		}
	}
}

func TestNoCellRunsAsAFormula(t *testing.T) {
	table := Table{
		Columns: []Column{{"a", words.New("a", "=A"), Text}, {"n", words.New("n", "N"), Number}, {"l", words.New("l", "L"), Length}},
		Rows: []Row{
			{Cells: []Cell{TextOf("=1+1"), NumberOf(-3), LengthOf(-unit.Inch)}},
			{Cells: []Cell{TextOf("+x"), {}, {}}}, {Cells: []Cell{TextOf("-x"), {}, {}}}, {Cells: []Cell{TextOf("@x"), {}, {}}},
			{Cells: []Cell{TextOf("\tx"), {}, {}}}, {Cells: []Cell{TextOf("\rx"), {}, {}}}, {Cells: []Cell{TextOf(`say "hi", now`), {}, {}}},
		},
	}
	var b bytes.Buffer
	if err := WriteCSV(&b, table); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(unmarked(t, &b)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := [][]string{
		{"'=A", "N", "L (in)"}, {"'=1+1", "-3", "-1"}, {"'+x", "", ""}, {"'-x", "", ""}, {"'@x", "", ""},
		{"' x", "", ""}, {"'x", "", ""}, {`say "hi", now`, "", ""}, // a tab becomes a space, a CR goes
	}
	for i, row := range want {
		for k, cell := range row {
			if rows[i][k] != cell {
				t.Errorf("row %d, cell %d is %q, want %q", i, k, rows[i][k], cell)
			}
		}
	}
}

func TestDecimalInches(t *testing.T) {
	for _, tt := range []struct {
		l    unit.Length
		want string
	}{
		{0, "0"}, {16 * unit.Inch, "16"}, {unit.Inch / 64, "0.015625"}, {-5 * unit.Inch / 2, "-2.5"}, {100 * unit.Inch, "100"},
		{unit.Millimetre, "0.03937008"}, // 1/25.4, which has no end
		{1, "0.00000004"}, {-1, "-0.00000004"},
	} {
		if got := Decimal(tt.l, unit.Imperial); got != tt.want {
			t.Errorf("%s is %s in, want %s", tt.l, got, tt.want)
		}
	}
}

func TestJSONHasAllRows(t *testing.T) {
	got, _ := schedule(t, plantest.House(3, 20), words.Voice{System: unit.Metric})
	var b bytes.Buffer
	if err := WriteJSON(&b, got); err != nil {
		t.Fatal(err)
	}
	var read struct {
		Unit string           `json:"length_unit"`
		Rows []map[string]any `json:"rows"`
	}
	if err := json.Unmarshal(b.Bytes(), &read); err != nil {
		t.Fatal(err)
	}
	if read.Unit != "mm" || len(read.Rows) != 20 {
		t.Fatalf("unit %q and %d rows, want mm and 20", read.Unit, len(read.Rows))
	}
	for i, row := range read.Rows {
		if len(row) != len(got.Columns)+1 || row["id"] != string(got.Rows[i].Of) {
			t.Errorf("row %d has %d keys and the ID %v", i, len(row), row["id"])
		}
	}
}
