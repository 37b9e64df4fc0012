package sheet

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/sheet/proof"
	"studbay/render/table"
	"studbay/render/unfold"
)

// longRoom is a plan of one square room with a receptacle every 5 ft along its walls.
func longRoom(t *testing.T, side unit.Length) plan.Plan {
	t.Helper()
	p := square(t, side)
	ids := plantest.NewIDs(7)
	for room := range p.Levels[0].Rooms.All() {
		named, err := edit.ChangeRoom{Room: named(*room, "Workshop")}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = named
		for i := range room.Sides {
			for at := 5 * unit.Foot; at < side; at += 5 * unit.Foot {
				o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(room.Sides[i].ID, at))
				o.ID = ids.New(plan.KindOpening)
				next, err := edit.AddOpening{Opening: o}.Apply(p)
				if err != nil {
					t.Fatal(err)
				}
				p = next
			}
		}
	}
	return p
}

func named(r plan.Room, name string) plan.Room {
	r.Name, r.Prefix = name, "W"
	return r
}

// TestLongRoomsGoOn: a strip too long for the paper goes on in rows that leave out
// nothing, under its name, and cut no box.
func TestLongRoomsGoOn(t *testing.T) {
	p := longRoom(t, 90*unit.Foot)
	paper, _ := paper.Named("letter")
	ix := index.New(p)
	b := &book{ix: ix, plan: p, found: newFound(ix, nil), o: Options{Paper: paper}}
	var id plan.ID
	for r := range p.Levels[0].Rooms.All() {
		id = r.ID
	}
	strip, _ := unfold.StripOf(ix, id)
	rows := b.stripRows(strip, 50*unit.Foot)
	at := unit.Length(0)
	for i, row := range rows {
		if row.from != at || row.to-row.from > 50*unit.Foot || row.to <= row.from {
			t.Errorf("row %d is %v to %v after %v", i, row.from, row.to, at)
		}
		if at = row.to; at < strip.Width {
			if hit, ok := b.struckBy(strip, at); ok {
				t.Errorf("the cut at %v runs through what lies from %v to %v", at, hit.from, hit.to)
			}
		}
	}
	if at != strip.Width || len(rows) < 8 {
		t.Errorf("%d rows end at %v of %v", len(rows), at, strip.Width)
	}

	tags, continued := map[string]int{}, 0
	for i, page := range build(t, p, Options{Paper: paper}) {
		for _, fault := range proof.Read(page, rules(paper)) {
			t.Errorf("page %d: %s", i+1, fault)
		}
		if !strings.Contains(page.Meta.Title, "Interior elevations") {
			continue
		}
		continued += strings.Count(strings.Join(proof.Texts(page), "\n"), "Workshop, continued")
		for _, strip := range groupsOf(page.Items) {
			for _, r := range runsOf(strip.Items) {
				tags[r.Text]++
			}
		}
	}
	if continued == 0 {
		t.Error("the name is not repeated")
	}
	for _, o := range p.Openings() {
		if tags[o.Tag] != 1 {
			t.Errorf("%s stands %d times, want once", o.Tag, tags[o.Tag])
		}
	}
}

// TestChosenColumnsStandInOrder: the titles of a schedule with chosen columns, and no
// others, from the left; every opening keeps its row.
func TestChosenColumnsStandInOrder(t *testing.T) {
	p := plantest.House(3, 30)
	pages := build(t, p, Options{Columns: []string{"gangs", "tag", "spare", "note"}})
	want := []string{"Gangs", "Tag", "Remaining", "Note"}
	rows := 0
	for i, page := range pages {
		texts := proof.Texts(page)
		for _, fault := range proof.Read(page, rules(paper.Usual(unit.Imperial))) {
			t.Errorf("page %d: %s", i+1, fault)
		}
		at := slices.Index(texts, "Gangs")
		if at < 0 {
			continue
		}
		if !slices.Equal(texts[at:at+4], want) {
			t.Errorf("page %d has the columns %q", i+1, texts[at:at+4])
		}
		if slices.Contains(texts, "Center") {
			t.Errorf("page %d has a column that was not asked for", i+1)
		}
		for _, o := range p.Openings() {
			if slices.Contains(texts[at:], o.Tag) {
				rows++
			}
		}
	}
	if rows < 30 {
		t.Errorf("%d openings have a row, want 30", rows)
	}
	if _, err := Build(index.New(p), fill.Result{}, Options{Columns: []string{"tag", "tag"}}); err == nil {
		t.Error("a column may come twice")
	}
	for _, id := range table.ScheduleIDs() {
		if forms[id].lines == nil {
			t.Errorf("column %s cannot be chosen", id)
		}
	}
}

// TestCasingsAreAsWideAsTold: where a distance starts at a casing, which is not there while
// walls are bare, a chosen column of what it is from prints how wide the casing will be.
func TestCasingsAreAsWideAsTold(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	pages, err := Build(ix, fill.Result{}, Options{Columns: []string{"tag", "from", "from_centre"}, Reader: ForCrew})
	if err != nil {
		t.Fatal(err)
	}
	casings, wide := 0, 0
	for _, page := range pages {
		all := strings.Join(proof.Texts(page), " ")
		casings += strings.Count(all, " casing, ")
		wide += strings.Count(all, ` casing, 2-1/4" wide`) // as the demo trims its doors
	}
	if casings == 0 || casings != wide {
		t.Errorf("%d distances from casings, %d with a width of 2-1/4", casings, wide)
	}
}
