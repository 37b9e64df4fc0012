package sheet

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/rendertest"
	"studbay/render/sheet/proof"
	"studbay/render/table"
)

// TestMeasuredFromWhatStandsAtRoughIn: whatever a tape starts at a casing for has on the sheet
// the distance to the rough opening too, and how wide the casing will be. The casing of a door
// begins 5/16 in past its slab (1/8 of gap, 3/16 of reveal) and is 2-1/4 in wide, the rough
// opening is 1 in wider than the slab at each side (all common practice): the two lie
// 5/16 + 2-1/4 - 1 = 1-9/16 in apart.
func TestMeasuredFromWhatStandsAtRoughIn(t *testing.T) {
	ix := rendertest.Demos(t)["rowhouse.studbay"]
	p := ix.Plan()
	var texts []string
	for _, page := range build(t, p, Options{Reader: ForCrew}) {
		texts = append(texts, proof.Texts(page)...)
	}
	all, doors := strings.Join(texts, " "), 0
	for _, o := range p.Openings() {
		for _, f := range table.Froms(ix, o) {
			if f.Casing == 0 {
				continue
			}
			if !f.HasRough {
				t.Errorf("%s is measured from a casing and no rough opening", o.Tag)
			}
			if f.Casing == unit.FeetInches(0, 2, 4) && isDoor(f) {
				doors++
				if apart := f.Rough - f.Centre; apart != unit.FeetInches(0, 1, 9) {
					t.Errorf("%s: rough opening and casing are %s apart, want 1-9/16 in (common practice)", o.Tag, apart)
				}
			}
		}
	}
	if doors == 0 {
		t.Fatal("nothing is measured from the casing of a door")
	}
	for _, want := range []string{"from rough", "casing 2"} {
		if !strings.Contains(all, want) {
			t.Errorf("no sheet says %q", want)
		}
	}
}

// TestAnAssumedCasingIsSaidOnTheSheet: of the farmhouse, whose walls stand, the schedule of the
// crew says of an assumed casing that it wants measuring, and how far the box is from the corner.
func TestAnAssumedCasingIsSaidOnTheSheet(t *testing.T) {
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	var texts []string
	for _, page := range build(t, ix.Plan(), Options{Reader: ForCrew}) {
		texts = append(texts, proof.Texts(page)...)
	}
	all, assumed := strings.Join(texts, " "), 0
	for _, o := range ix.Plan().Openings() {
		froms := table.Froms(ix, o)
		if len(froms) == 0 || !froms[0].IsAssumed {
			continue
		}
		assumed++
		if len(froms) != 2 || froms[1].IsAssumed || froms[1].Casing != 0 {
			t.Errorf("%s is measured from an assumed casing and %d other places, want a corner", o.Tag, len(froms)-1)
		}
	}
	if assumed == 0 {
		t.Fatal("nothing is measured from an assumed casing")
	}
	for _, want := range []string{"casing, assumed", "assumed: measure it"} {
		if !strings.Contains(all, want) {
			t.Errorf("no sheet says %q", want)
		}
	}
}

// TestWhatNobodyHasReadHasNoEdge: of an old box whose size was not read the sheets of the crew
// print its center and no edge, and what was moved is not said to be removed.
func TestWhatNobodyHasReadHasNoEdge(t *testing.T) {
	ix := rendertest.Demos(t)["farmhouse.studbay"]
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	rows, unread := table.Schedule(ix, result, words.Voice{}), 0
	for _, row := range rows.Rows {
		o, _ := ix.Plan().Opening(row.Of)
		if o == nil || !o.IsUnread() || o.At.Part != plan.PartFace {
			continue
		}
		unread++
		for _, column := range []string{"bottom", "top", "from_edge"} {
			if cell := rows.Cell(row, column); cell != (table.Cell{}) {
				t.Errorf("%s has %s %+v, and nobody has read its box", o.Tag, column, cell)
			}
		}
		if rows.Cell(row, "centre") == (table.Cell{}) {
			t.Errorf("%s has no center", o.Tag)
		}
	}
	if unread == 0 {
		t.Fatal("every box was read")
	}
	var texts []string
	for _, page := range build(t, ix.Plan(), Options{Reader: ForCrew}) {
		texts = append(texts, proof.Texts(page)...)
	}
	all := strings.Join(texts, "|")
	for at, flag := range texts {
		if strings.HasSuffix(flag, "· existing") && slices.ContainsFunc(texts[at:min(at+3, len(texts))], func(s string) bool { return strings.Contains(s, "\" to ") }) {
			t.Errorf("%q has its edges beside it", flag)
		}
	}
	legend := strings.Join(strings.FieldsFunc(all, func(r rune) bool { return r == '|' || r == ' ' }), " ") // it breaks where it has to
	if strings.Contains(legend, "Single-pole switch, to be removed") || !strings.Contains(legend, "Single-pole switch, moved from here") {
		t.Error("the legend does not say that a switch was moved")
	}
}

// TestAClosedWallShowsNoRoughOpening: the farmhouse's door of 30 in stands 40 in from the left of
// its wall, which stays closed; its casing of 2-1/4 ends 5/16 + 2-1/4 = 2-9/16 past the slab on
// either side (common practice), at 37-7/16 and 72-9/16, both marked since its width is assumed.
// The rough opening, from 39 to 71, is behind plaster, and so are the bare corners.
func TestAClosedWallShowsNoRoughOpening(t *testing.T) {
	var all []string
	for _, page := range build(t, rendertest.Demos(t)["farmhouse.studbay"].Plan(), Options{Reader: ForCrew}) {
		if strings.HasPrefix(page.Meta.Title, "Walls") {
			all = append(all, proof.Texts(page)...)
		}
	}
	for text, want := range map[string]bool{`± 37-7/16"`: true, `± 72-9/16"`: true, `37-7/16"`: false, `71"`: true, `39"`: true, `109"`: false, `77"`: false} { // B4 and B5 stand at 39 and 71
		if slices.Contains(all, text) != want {
			t.Errorf("%s on the walls: %v, want %v", text, !want, want)
		}
	}
	if slices.ContainsFunc(all, func(s string) bool { return strings.Contains(s, "bare corners") }) {
		t.Error("the pages of a closed room tell of bare corners")
	}
}

// TestAStruckBoxIsNamed: the farmhouse's old switch stays by the door with a blank cover; on its
// wall it is named beside the switch that takes its place.
func TestAStruckBoxIsNamed(t *testing.T) {
	for _, page := range build(t, rendertest.Demos(t)["farmhouse.studbay"].Plan(), Options{Reader: ForCrew}) {
		if texts := proof.Texts(page); strings.HasPrefix(page.Meta.Title, "Walls") && slices.Contains(texts, "Bedroom · south wall") {
			if !slices.ContainsFunc(texts, func(s string) bool { return strings.HasSuffix(s, " · moved") }) {
				t.Errorf("nothing names the old box: %q", texts)
			}
			return
		}
	}
	t.Fatal("the south wall is on no page")
}

// isDoor reports whether a tape starts at the casing of a door.
func isDoor(f table.From) bool { return strings.Contains(f.Name.String(), "of the door") }

// TestScheduleSaysWhatHolds: a box that is nailed says at which side of which stud, as its
// wall is drawn with.
func TestScheduleSaysWhatHolds(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	var texts []string
	for _, page := range build(t, ix.Plan(), Options{Reader: ForCrew}) {
		texts = append(texts, proof.Texts(page)...)
	}
	if !slices.ContainsFunc(texts, func(s string) bool { return strings.HasPrefix(s, "nail, left") || strings.HasPrefix(s, "nail, right") }) {
		t.Error("no box says at which side of which stud it is nailed")
	}
}

// TestSitePagesOf200Openings: the plans, schedule and box types of 200 openings take the crew
// 20 tabloid pages at most; walls, framing and what is drawn at full size are counted apart.
func TestSitePagesOf200Openings(t *testing.T) {
	const most = 20
	n := crewPages(t, 200)
	if n < 3 || n > most {
		t.Errorf("the site pages are %d, want at most %d", n, most)
	}
	if many := crewPages(t, 2000); many > 10*n {
		t.Errorf("those of ten times as many openings are %d, want at most %d", many, 10*n)
	}
}

// crewPages counts the plans, pages of the schedule and of box types of a house for the crew.
func crewPages(t testing.TB, openings int) (n int) {
	t.Helper()
	for _, page := range build(t, plantest.House(25, openings), Options{Reader: ForCrew}) {
		title := page.Meta.Title
		if strings.Contains(title, "openings") || strings.HasPrefix(title, "Box types") || strings.Contains(title, "larger") {
			n++
		}
	}
	return n
}

// BenchmarkCrewPages counts those pages of houses of 200 and of 2,000 openings.
func BenchmarkCrewPages(b *testing.B) {
	for _, openings := range []int{200, 2000} {
		b.Run(strconv.Itoa(openings), func(b *testing.B) {
			for b.Loop() {
				b.ReportMetric(float64(crewPages(b, openings)), "pages")
			}
		})
	}
}

// TestGangByGang: of a box of two switches the pages say what each gang works.
func TestGangByGang(t *testing.T) {
	ix := rendertest.Demos(t)["rowhouse.studbay"]
	all := ""
	for _, page := range build(t, ix.Plan(), Options{Reader: ForCrew}) {
		all += strings.Join(proof.Texts(page), " ") + "\n"
	}
	for _, want := range []string{"gang 1", "gang 2", "bare corners", "2 × 12/2"} {
		if !strings.Contains(all, want) {
			t.Errorf("nothing says %q", want)
		}
	}
}
