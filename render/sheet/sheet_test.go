package sheet

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/level"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/sheet/proof"
	"studbay/render/symbol"
	"studbay/render/table"
)

func build(t testing.TB, p plan.Plan, o Options) []*scene.Scene {
	t.Helper()
	ix := index.New(p)
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	pages, err := Build(ix, result, o)
	if err != nil {
		t.Fatal(err)
	}
	return pages
}

func rules(p paper.Paper) proof.Rules {
	frame, k := layout.FrameOf(p), p.Enlarged()
	return proof.Rules{
		Frame:     scene.Rect{Min: frame.Min.Mul(k), Max: frame.Max.Mul(k)}.Expanded((k - 1) * layout.Border * scene.PointSize / 2),
		LeastText: layout.Small * scene.PointSize * k,
		LeastLine: layout.Hairline * scene.PointSize,
	}
}

// TestPagesReadClean proofreads every page on every paper.
func TestPagesReadClean(t *testing.T) {
	for _, size := range paper.All {
		for _, openings := range []int{0, 9, 45, 120} {
			t.Run(fmt.Sprintf("%s with %d openings", size.Name, openings), func(t *testing.T) {
				voice := words.Voice{System: size.System}
				for i, page := range build(t, plantest.House(uint64(openings), openings), Options{Paper: size, Voice: voice, Cover: true}) {
					for _, fault := range proof.Read(page, rules(size)) {
						t.Errorf("page %d: %s", i+1, fault)
					}
				}
			})
		}
	}
}

// TestProofreaderSees holds that the proofreader is not blind.
func TestProofreaderSees(t *testing.T) {
	s := &scene.Scene{Width: 11 * unit.Inch, Height: 17 * unit.Inch / 2}
	s.Add(layout.Plain.At(50, 50, "over"), layout.Plain.At(51, 50.5, "under"), layout.Plain.At(2, 50, "out"), layout.Style{Size: 5}.At(90, 90, "tiny"),
		layout.HLine(100, 140, 119, layout.Pen(0.1)), layout.Plain.At(110, 120, "struck"))
	got := strings.Join(proof.Read(s, rules(paper.All[0])), "\n")
	for _, want := range []string{`"over" lies on "under"`, "ink leaves the frame", `"tiny" is 5.00 pt`, "0.100 pt wide", `runs through "struck"`} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not among the faults:\n%s", want, got)
		}
	}
}

// TestFiguresStayWhole: the widest figures of either system fit their columns, and no
// tag or figure is cut.
func TestFiguresStayWhole(t *testing.T) {
	wide := map[string][]string{
		"tag":     {"WWW10"},
		"centre":  {`≈ 88-13/16"`, "≈ 2188 mm"},
		"circuit": {"38,40"},
	}
	for _, c := range siteColumnsIn(layout.SideColumn) {
		for _, text := range wide[c.id] {
			if w := c.style.Width(text); w > c.width-0.8 {
				t.Errorf("%s is %.1f mm wide, its column %.1f", text, w, c.width)
			}
		}
	}
	for _, system := range []unit.System{unit.Imperial, unit.Metric} {
		for _, page := range build(t, plantest.House(14, 90), Options{Voice: words.Voice{System: system}}) {
			for _, text := range proof.Texts(page) {
				if strings.Contains(text, "…") {
					t.Errorf("%q is cut", text)
				}
			}
		}
	}
}

// TestNineColumnsOnEveryPaper: the schedule of the site has the same nine columns, in the
// same order, on every paper, and they take the width that there is.
func TestNineColumnsOnEveryPaper(t *testing.T) {
	want := []string{"Tag", "What", "Wall", "From", "Center", "Box", "Held by", "Circuit", "Serves"}
	for _, p := range paper.All {
		found := 0
		for i, page := range build(t, plantest.House(5, 40), Options{Paper: p, Reader: ForCrew}) {
			texts := proof.Texts(page)
			at := slices.IndexFunc(texts, func(s string) bool { return strings.HasPrefix(s, "Opening schedule") })
			if at < 0 {
				continue
			}
			head := slices.Index(texts[at:], "Tag")
			if head < 0 || !slices.Equal(texts[at+head:at+head+len(want)], want) {
				t.Errorf("%s, page %d has %q", p.Name, i+1, texts[at:min(at+16, len(texts))])
			}
			found++
		}
		if found == 0 {
			t.Errorf("%s has no schedule", p.Name)
		}
	}
	for _, width := range []float64{layout.SideColumn, layout.WideColumn, 249} {
		sum := 0.0
		for _, c := range siteColumnsIn(width) {
			sum += c.width
		}
		if sum < width-1e-9 || sum > width+1e-9 {
			t.Errorf("the columns take %.1f of %.1f", sum, width)
		}
	}
}

func TestOnlyInkAndTheRedOfAStop(t *testing.T) {
	for _, page := range build(t, plantest.House(5, 60), Options{}) {
		for c := range proof.Colors(page) {
			if c.R != c.G || c.G != c.B {
				if c != layout.Theme.Stop {
					t.Errorf("a page has the colour %v", c)
				}
			}
		}
	}
}

// TestEveryTagStandsInTheSchedule looks for each opening's tag, and once more on the
// plan.
func TestEveryTagStandsInTheSchedule(t *testing.T) {
	p := plantest.House(11, 80)
	var texts []string
	for _, page := range build(t, p, Options{}) {
		texts = append(texts, proof.Texts(page)...)
	}
	for _, o := range p.Openings() {
		count := 0
		for _, text := range texts {
			if text == o.Tag || strings.HasPrefix(text, o.Tag+" ") {
				count++
			}
		}
		if count < 2 {
			t.Errorf("%s stands %d times, want it on the plan and in the schedule", o.Tag, count)
		}
	}
}

// TestScheduleHasARowForEachOpening reads the rows that are laid out, not the table.
func TestScheduleHasARowForEachOpening(t *testing.T) {
	p := plantest.House(4, 100)
	ix := index.New(p)
	b := &book{ix: ix, plan: p, found: newFound(ix, nil), schedule: func() table.Table { return table.Schedule(ix, fill.Result{}, words.Voice{}) }}
	var seen []plan.ID
	for _, l := range p.Levels {
		for _, r := range b.rowsOn(l) {
			seen = append(seen, r.Of)
		}
	}
	var want []plan.ID
	for _, o := range p.Openings() {
		want = append(want, o.ID)
	}
	slices.Sort(seen)
	slices.Sort(want)
	if !slices.Equal(seen, want) {
		t.Errorf("the rows are of %d openings, the plan has %d", len(seen), len(want))
	}
}

// TestLegendIsJustTheSymbolsUsed compares the legend with the openings of the plan.
func TestLegendIsJustTheSymbolsUsed(t *testing.T) {
	p := plantest.House(8, 60)
	ix := index.New(p)
	ground := p.Levels[0].ID
	extent, _ := ix.Extent(ground)
	m := render.SheetMedium(unit.Inch/4, unit.Foot, *layout.Theme, words.Voice{})
	pieces := level.Draw(ix, ground, nil, m, extent)
	want := map[Sign]map[string]bool{}
	drawn := 0
	for _, piece := range pieces {
		if piece.Symbol == nil {
			continue
		}
		for i, id := range piece.Symbol.IDs {
			drawn++
			o, _ := p.Opening(id)
			spec := piece.Symbol.Specs[i]
			spec.Note = ""
			sign := Sign{spec, o.At.Part == plan.PartCeiling || o.At.Part == plan.PartFloor || o.At.Part == plan.PartTop}
			if want[sign] == nil {
				want[sign] = map[string]bool{}
			}
			want[sign][table.What(o).String()] = true
		}
	}
	if n := p.Levels[0].Openings.Len(); drawn != n {
		t.Errorf("%d openings are drawn, the plan has %d", drawn, n)
	}
	got := legendOf(pieces, ix)
	if len(got) != len(want) {
		t.Errorf("%d entries, want %d", len(got), len(want))
	}
	for _, e := range got {
		kinds := want[e.Sign]
		if len(kinds) != len(e.texts) {
			t.Errorf("%+v names %v, want %v", e.Sign, e.texts, kinds)
		}
		for _, text := range e.texts {
			if !kinds[text.String()] {
				t.Errorf("%+v names %s, which no opening is", e.Sign, text)
			}
		}
		delete(want, e.Sign)
	}
	for sign := range want {
		t.Errorf("%+v is drawn and has no entry", sign)
	}
}

func TestLegendTellsStatusesApart(t *testing.T) {
	e := legendEntry{Sign: Sign{Spec: symbol.Spec{Status: symbol.Remove}}, texts: []words.Text{words.New("kind.duplex", "Duplex receptacle")}}
	if got := e.name(words.Voice{}); got != "Duplex receptacle, to be removed" {
		t.Errorf("got %q", got)
	}
}

// square is a plan of one room, so wide either way.
func square(t testing.TB, side unit.Length) plan.Plan {
	t.Helper()
	ids := plantest.NewIDs(1)
	p := plan.New("Square", ids.New(plan.KindLevel))
	room := plan.NewRoom(ids.New(plan.KindRoom), "", plan.UseLiving,
		geom.Box{Max: geom.Point{X: side, Y: side}}.Corners(), ids.Row(plan.KindSide, 4))
	room.Ceiling = 8 * unit.Foot
	p, err := edit.AddRoom{Level: p.Levels[0].ID, Room: room}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestTooManySheetsSaysWhatWouldDo(t *testing.T) {
	ix := index.New(square(t, 900*unit.Foot))
	size, _ := paper.Named("letter")
	scale, _ := paper.ParseScale("1/2in=1ft")
	_, err := Build(ix, fill.Result{}, Options{Paper: size, Scale: scale})
	var e *FitError
	if !errors.As(err, &e) {
		t.Fatalf("got %v, want a FitError", err)
	}
	if len(e.Scales) == 0 || e.Pages <= mostTiles {
		t.Fatalf("%+v", e)
	}
	if _, err := Build(ix, fill.Result{}, Options{Paper: size, Scale: e.Scales[0]}); err != nil {
		t.Errorf("it said %s would do: %v", e.Scales[0], err)
	}
	for _, o := range e.Papers {
		if _, err := Build(ix, fill.Result{}, Options{Paper: o, Scale: scale}); err != nil {
			t.Errorf("it said %s would do: %v", o.Name, err)
		}
	}
}

func TestFitTakesTheLargestScale(t *testing.T) {
	for _, tt := range []struct {
		side  unit.Length
		paper string
		want  string
	}{
		{10 * unit.Foot, "tabloid", "3/4 in = 1 ft"}, // 11 ft with its walls: 8.3 in of the 8.6 in there are
		{30 * unit.Foot, "tabloid", "1/4 in = 1 ft"}, // 31 ft: 7.8 in; at 3/8 in 11.6 in
		{200 * unit.Foot, "archd", "1/16 in = 1 ft"},
		{4 * unit.Metre, "a3", "1:20"},
		{30 * unit.Metre, "a1", "1:75"},
	} {
		size, err := paper.Named(tt.paper)
		if err != nil {
			t.Fatal(err)
		}
		page := build(t, square(t, tt.side), Options{Paper: size, Voice: words.Voice{System: size.System}})[0]
		if texts := proof.Texts(page); !slices.Contains(texts, tt.want) {
			t.Errorf("%s square on %s: %q is not on the sheet", tt.side, tt.paper, tt.want)
		}
	}
}

// TestLongTextsStayInTheirPlace: whatever a user writes, nothing leaves the frame or
// lies on something else.
func TestLongTextsStayInTheirPlace(t *testing.T) {
	p := plantest.House(3, 24)
	long := strings.Repeat("a long remark on what is wanted here ", 60)
	h := *p.Header
	h.Title, h.Author, h.Client, h.Site = long, long, strings.ReplaceAll(long, " ", ""), long
	h.Revision, h.Date = long, "2026-11-25"
	p.Header = &h
	do := func(e edit.Edit) {
		t.Helper()
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	for _, o := range p.Openings() {
		changed := *o
		changed.Note, changed.Kind = long, "kindwithoutend"+strings.Repeat("x", 80)
		do(edit.ChangeOpening{Opening: changed})
		break
	}
	do(edit.Add{Thing: &plan.Decision{ID: "d22222222", Question: long}})
	do(edit.Add{Thing: &plan.Decision{ID: "d33333333", Question: strings.Repeat("x", 900)}})
	do(edit.Add{Thing: &plan.Amendment{ID: "a22222222", Rule: "partition-depth", Reason: long}})
	for _, size := range paper.All {
		for i, page := range build(t, p, Options{Paper: size}) {
			for _, fault := range proof.Read(page, rules(size)) {
				t.Errorf("%s, page %d: %.200s", size.Name, i+1, fault)
			}
		}
	}
}

func TestEmptyPlans(t *testing.T) {
	if _, err := Build(index.New(plan.Plan{}), fill.Result{}, Options{}); !errors.Is(err, ErrNoLevel) {
		t.Errorf("got %v, want ErrNoLevel", err)
	}
	pages := build(t, plan.New("Empty", plantest.NewIDs(1).New(plan.KindLevel)), Options{})
	if len(pages) != 1 || !slices.Contains(proof.Texts(pages[0]), "Nothing is drawn on this level yet.") {
		t.Errorf("%d pages of an empty plan", len(pages))
	}
}

// TestEachLevelHasItsPage: a level's page tells of its own openings and findings alone.
func TestEachLevelHasItsPage(t *testing.T) {
	p := plantest.House(2, 12)
	ids := plantest.NewIDs(99)
	upper := ids.New(plan.KindLevel)
	outline := geom.Box{Max: geom.Point{X: 14 * unit.Foot, Y: 10 * unit.Foot}}.Corners()
	room := plan.NewRoom(ids.New(plan.KindRoom), "Attic", plan.UseBedroom, outline, ids.Row(plan.KindSide, 4))
	room.Ceiling, room.Prefix = 7*unit.Foot, "Z"
	only := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(room.Sides[0].ID, 5*unit.Foot))
	only.ID = ids.New(plan.KindOpening)
	for _, e := range []edit.Edit{
		edit.AddLevel{ID: upper, Title: "Upper floor", Elevation: 9 * unit.Foot},
		edit.AddRoom{Level: upper, Room: room}, edit.AddOpening{Opening: only},
	} {
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	var titles []string
	for _, page := range build(t, p, Options{}) {
		titles = append(titles, page.Meta.Title)
		texts := strings.Join(proof.Texts(page), "\n")
		hasUpper, hasLower := strings.Contains(texts, "Z1"), strings.Contains(texts, "A5")
		switch page.Meta.Title {
		case "Upper floor, openings":
			if !hasUpper || hasLower || !strings.Contains(texts, "of wall in Attic is not served") {
				t.Error("the page of the upper floor does not tell of it alone")
			}
		case "Ground floor, openings":
			if hasUpper || !hasLower || strings.Contains(texts, "Attic") {
				t.Error("the page of the ground floor does not tell of it alone")
			}
		}
	}
	want := []string{"Ground floor, openings", "Upper floor, openings", "Interior elevations", "Box types and box fill"}
	for _, title := range want {
		if !slices.ContainsFunc(titles, func(has string) bool { return strings.Contains(has, title) }) {
			t.Errorf("the sheets are %q, want %q among them", titles, title)
		}
	}
}

// spelled spells items out, with the clips that groups point at.
func spelled(items []scene.Item) (text string) {
	for _, it := range items {
		group, ok := it.(scene.Group)
		if !ok {
			text += fmt.Sprintln(it)
			continue
		}
		if group.Layer.Clip != nil {
			text += fmt.Sprintln(*group.Layer.Clip)
		}
		text += group.Layer.Name + "\n" + spelled(group.Items)
	}
	return text
}

func TestSameInputSamePages(t *testing.T) {
	p := plantest.House(6, 40)
	a, b := build(t, p, Options{}), build(t, p, Options{})
	for i := range a {
		if x, y := spelled(a[i].Items), spelled(b[i].Items); x != y {
			t.Errorf("page %d differs from one build to the next", i+1)
		}
	}
}
