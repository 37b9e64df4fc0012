package page

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/rendertest"
)

var both = Options{Languages: []Language{
	{Tag: "en", Name: "English"},
	{Tag: "es", Name: "Español", Voice: words.Voice{Catalogue: words.Catalogue{"page.agreed": "De acuerdo", "page.send": "Enviar mis respuestas"}}},
}}

// hostile are names that would run or break out if any of them were more than text.
var hostile = []string{
	`</title><script>window.bad=1</script>`,
	`"><img src=x onerror=window.bad=1>`,
	`' onmouseover='window.bad=1`,
	"</script><script>window.bad=1</script>",
	`{{.Script}}`,
	`javascript:window.bad=1`,
	`<svg onload=window.bad=1>`,
	`]]><script>window.bad=1</script>`,
	`&lt;script&gt;`,
	`url(#x);}</style><script>window.bad=1</script>`,
}

// hostileHouse has every one of them for the name of something.
func hostileHouse(t testing.TB) *index.Index {
	b := rendertest.NewBuilder(t)
	h := *b.Plan.Header
	h.Title, h.Revision, h.Client = hostile[0]+hostile[1], hostile[2], hostile[3]
	b.Plan.Header = &h
	b.Level.Name = hostile[6]
	for i, name := range hostile {
		x := float64(i) * 130
		r := b.Box(name, plan.UseBedroom, x, 0, x+120, 96)
		r.Note = name
		o := b.On(fmt.Sprint("H", i), hostile[(i+1)%len(hostile)], r, 0, 30, 16)
		o.Note = name
		f := b.Fixture(plan.FixtureBed, r, 0, 50, 40, 60, 24)
		f.Name = name
	}
	return b.Index()
}

func built(t testing.TB, ix *index.Index) []byte {
	t.Helper()
	data, err := Build(ix, both)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// The page has the script and the style of its policy and no other, no attribute that runs,
// and nothing that is fetched.
func TestHostileNamesStayText(t *testing.T) {
	page := string(built(t, hostileHouse(t)))
	if n := strings.Count(page, "<script"); n != 1 {
		t.Errorf("%d scripts, want the one of the page", n)
	}
	if n := strings.Count(page, "<style"); n != 1 {
		t.Errorf("%d style sheets, want the one of the page", n)
	}
	for _, bad := range []string{"<img", "<svg onload", "<title></title>", "http://", "https://"} {
		if strings.Contains(page, bad) {
			at := strings.Index(page, bad)
			t.Errorf("the page holds %q: …%s…", bad, page[max(0, at-60):at+60])
		}
	}
	tags := regexp.MustCompile(`<[a-zA-Z][^>]*>`)
	for _, tag := range tags.FindAllString(page, -1) {
		// Within quotes anything may stand.
		bare := regexp.MustCompile(`"[^"]*"`).ReplaceAllString(tag, `""`)
		if regexp.MustCompile(`(?i)\son[a-z]+\s*=|javascript:`).MatchString(bare) {
			t.Errorf("a tag that runs: %s", tag)
		}
	}
}

func TestPolicyNamesWhatThePageHas(t *testing.T) {
	page := built(t, hostileHouse(t))
	for _, want := range []string{"default-src &#39;none&#39;", "base-uri &#39;none&#39;", "form-action &#39;none&#39;"} {
		if !bytes.Contains(page, []byte(want)) {
			t.Errorf("the policy does not hold %s", want)
		}
	}
	for _, bad := range []string{"unsafe-inline", "unsafe-eval", "script-src *"} {
		if bytes.Contains(page, []byte(bad)) {
			t.Errorf("the policy holds %s", bad)
		}
	}
	if !bytes.Contains(page, []byte(script)) || !bytes.Contains(page, []byte(style)) {
		t.Error("script and style do not stand in the page as they were hashed")
	}
}

// Each picture in the page is well-formed XML, so no name breaks out of it.
func TestPicturesAreWellFormed(t *testing.T) {
	page := string(built(t, hostileHouse(t)))
	pictures := regexp.MustCompile(`(?s)<svg class="(?:level|view)[^"]*".*?</svg>`).FindAllString(page, -1)
	if len(pictures) < len(hostile) {
		t.Fatalf("only %d pictures", len(pictures))
	}
	for _, p := range pictures {
		d := xml.NewDecoder(strings.NewReader(p))
		for {
			_, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Errorf("%v in %.200s", err, p)
				break
			}
		}
	}
}

func TestHostileNamesDoNotRunInABrowser(t *testing.T) {
	b := newBrowser(t)
	b.open(built(t, hostileHouse(t)), 390, 844, true)
	for range hostile {
		b.press("#next")
	}
	b.eval(`document.querySelector('#search').value='a'; document.querySelector('#search').dispatchEvent(new Event('input'))`)
	b.press("#send")
	if got := b.eval(`String(window.bad)`); got != "undefined" {
		t.Errorf("a name ran: window.bad is %v", got)
	}
	if got := b.eval(`document.querySelectorAll('script').length`); got != 1.0 {
		t.Errorf("%v scripts on the page, want 1", got)
	}
	got := b.eval(`(()=>{const s=document.createElement('script');s.textContent='window.bad=2';document.head.append(s);return String(window.bad)})()`)
	if got != "undefined" {
		t.Errorf("the policy lets a script in: window.bad is %v", got)
	}
	if title := b.eval(`document.title`); title != hostile[0]+hostile[1] {
		t.Errorf("the title is %q", title)
	}
}

// A client goes through a house by touch, by keys and by the mouse, and hands back answers.
func TestAnswersAreKeptAndHandedBack(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		page := built(t, ix)
		for _, screen := range []struct {
			name          string
			width, height int
			isPhone       bool
		}{{"phone", 390, 844, true}, {"desktop", 1440, 900, false}} {
			t.Run(name+" on a "+screen.name, func(t *testing.T) {
				b := newBrowser(t)
				b.open(page, screen.width, screen.height, screen.isPhone)
				b.keep("page-" + name + "-" + screen.name)
				walk(t, b)
				b.keep("page-" + name + "-" + screen.name + "-sent")
				for _, e := range b.errors {
					t.Errorf("on the page: %s", e)
				}
			})
		}
	}
}

func walk(t *testing.T, b *browser) {
	t.Helper()
	first := b.eval(`document.querySelector('.room.here .opening').dataset.of`).(string)
	second := b.eval(`[...document.querySelectorAll('.room.here .opening')][1].dataset.of`).(string)
	room := b.eval(`document.querySelector('.room.here').dataset.room`).(string)
	b.press(".room.here .opening:nth-child(1) .agreed")
	b.press(".room.here .opening:nth-child(2) .change")
	b.write("Two inches\nhigher, please")
	b.press(".room.here .initials")
	b.write("AR")
	b.eval(`document.activeElement.blur()`)
	name := b.eval(`document.querySelector('#room-name').textContent`)
	b.key("ArrowRight", 39)
	if now := b.eval(`document.querySelector('#room-name').textContent`); now == name {
		t.Errorf("the arrow key leaves the room at %v", now)
	}
	b.press("#back")
	if now := b.eval(`document.querySelector('#room-name').textContent`); now != name {
		t.Errorf("back leads to %v, want %v", now, name)
	}
	b.press("#send")
	text := b.eval(`document.querySelector('#text').value`).(string)
	for _, want := range []string{"Studbay answers 1\n", "\nagreed " + first + "\n", "\nchange " + second + " Two inches higher, please\n", "\ninitials " + room + " AR\n"} {
		if !strings.Contains(text, want) {
			t.Errorf("the answers do not hold %q:\n%s", want, text)
		}
	}
	b.press("#close")
	wide := b.eval(`document.documentElement.scrollWidth <= innerWidth`)
	if wide != true {
		t.Error("the page is wider than the screen")
	}
	nameless := b.eval(`[...document.querySelectorAll('button,input,textarea,a,[role=button]')].filter(e=>e.getClientRects().length&&!(e.getAttribute('aria-label')||e.innerText.trim()||e.closest('label')?.innerText.trim()||e.closest('label')?.textContent.trim())).map(e=>e.outerHTML.slice(0,120))`)
	if list, _ := nameless.([]any); len(list) > 0 {
		t.Errorf("without a name: %v", list)
	}
	small := b.eval(`[...document.querySelectorAll('main p,main span,main b,header p')].filter(e=>e.getClientRects().length&&e.innerText&&parseFloat(getComputedStyle(e).fontSize)<14).map(e=>e.innerText)`)
	if list, _ := small.([]any); len(list) > 0 {
		t.Errorf("smaller than 14 px: %v", list)
	}
}

// Two fingers that part make the plan larger about their middle; one shifts it.
func TestPlanIsPannedAndPinched(t *testing.T) {
	b := newBrowser(t)
	b.open(built(t, hostileHouse(t)), 390, 844, true)
	box := func() (v [4]float64) {
		text := b.eval(`document.querySelector('.level.here').getAttribute('viewBox')`).(string)
		_, _ = fmt.Sscan(text, &v[0], &v[1], &v[2], &v[3])
		return v
	}
	was := box()
	y := b.eval(`document.querySelector('#plans').getBoundingClientRect().top+60`).(float64)
	b.touch("touchStart", [2]float64{200, y})
	b.touch("touchMove", [2]float64{230, y + 5})
	b.touch("touchMove", [2]float64{260, y + 10})
	b.touch("touchEnd")
	now := box()
	if now[0] >= was[0] || now[2] != was[2] {
		t.Errorf("a finger to the right shifts the box from %v to %v", was, now)
	}
	b.touch("touchStart", [2]float64{170, y}, [2]float64{230, y})
	b.touch("touchMove", [2]float64{140, y}, [2]float64{260, y})
	b.touch("touchMove", [2]float64{110, y}, [2]float64{290, y})
	b.touch("touchEnd")
	if larger := box(); larger[2] >= now[2]/2 {
		t.Errorf("two fingers parted to three times make the box from %v to %v wide, want a third", now[2], larger[2])
	}
}

func TestLanguageIsChosen(t *testing.T) {
	b := newBrowser(t)
	b.open(built(t, hostileHouse(t)), 390, 844, true)
	b.press(`.lang[data-to="es"]`)
	if got := b.eval(`document.querySelector('#send').innerText`); got != "Enviar mis respuestas" {
		t.Errorf("the button says %q", got)
	}
	if got := b.eval(`document.documentElement.lang`); got != "es" {
		t.Errorf("the page speaks %v", got)
	}
}

// A plan without an opening has a page too: its plan is shown, and no button throws.
func TestPageWithoutOpenings(t *testing.T) {
	house := rendertest.NewBuilder(t)
	house.Box("Den", plan.UseDen, 0, 0, 120, 96)
	page := built(t, house.Index())
	if strings.Contains(string(page), `class="opening"`) {
		t.Fatal("the plan has an opening left")
	}
	b := newBrowser(t)
	b.open(page, 390, 844, true)
	for _, button := range []string{"#next", "#back", "#larger", "#smaller", "#whole", "#see", "#send", "#close", "#dark", `.lang[data-to="es"]`} {
		b.press(button)
	}
	y := b.eval(`document.querySelector('#plans').getBoundingClientRect().top+60`).(float64)
	b.touch("touchStart", [2]float64{200, y})
	b.touch("touchMove", [2]float64{230, y + 5})
	b.touch("touchEnd")
	b.eval(`1`)
	for _, e := range b.errors {
		t.Errorf("on the page: %s", e)
	}
	if b.eval(`document.querySelectorAll('.level.here').length`) != 1.0 {
		t.Error("no plan is shown")
	}
}

// Each language of the page hides what is in the others, whichever they are.
func TestStyleKnowsTheLanguages(t *testing.T) {
	b := &builder{o: Options{Languages: []Language{{Tag: "en"}, {Tag: "pt"}}}}
	style := b.style()
	for _, want := range []string{`html[data-lang="pt"] [lang]:not([lang="pt"])`, `html[data-lang="en"] [lang]:not([lang="en"])`} {
		if !strings.Contains(style, want) {
			t.Errorf("the style does not hold %s", want)
		}
	}
	if strings.Contains(style, `"es"`) || strings.Contains(style, "data-lang=es") {
		t.Error("the style knows a language that the page has not")
	}
}

// What changed since the last walk-through is listed, what is still there as a button that goes
// to it; names in it are text. A plan never walked through has no such list.
func TestPageListsWhatChangedSinceTheWalk(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	if strings.Contains(string(built(t, ix)), `class="since"`) {
		t.Error("never walked through, and it lists what changed since")
	}
	walked, err := file.Walk(ix.Plan(), "2026-03-02")
	if err != nil {
		t.Fatal(err)
	}
	all := edit.Steps{Edits: []edit.Edit{edit.KeepWalk{Walked: walked}}}
	var moved, gone plan.ID
	for _, o := range ix.Plan().Openings() {
		switch {
		case moved == "" && o.At.Part == plan.PartFace:
			now := *o
			now.At.Along += 6 * unit.Inch
			place, _ := ix.Place(o.At)
			room := *place.Room
			room.Name = hostile[0]
			all.Edits, moved = append(all.Edits, edit.Change{Thing: &now}, edit.Change{Thing: &room}), o.ID
		case gone == "":
			all.Edits, gone = append(all.Edits, edit.Remove{Things: []plan.ID{o.ID}}), o.ID
		}
	}
	p, err := all.Apply(ix.Plan())
	if err != nil {
		t.Fatal(err)
	}
	page := string(built(t, index.New(p)))
	for _, want := range []string{"Changed since the walk-through of 2026-03-02", `data-go="` + string(moved) + `"`, "moved 6&#34;", ": removed"} {
		if !strings.Contains(page, want) {
			t.Errorf("the page does not say %q", want)
		}
	}
	if n := strings.Count(page, "data-go=\""); n != 1 {
		t.Errorf("%d changes can be gone to, want the one that is still there", n)
	}
	if n := strings.Count(page, `<p class="changed">`); n != 1 {
		t.Errorf("%d openings say that they changed, want 1", n)
	}
	if n := strings.Count(page, "<script"); n != 1 {
		t.Errorf("%d scripts, want the one of the page", n)
	}
}

// A walk that is kept and cannot be read is told on the page.
func TestPageTellsOfAWalkThatCannotBeRead(t *testing.T) {
	p, err := edit.KeepWalk{Walked: &plan.Walked{Date: "2026-03-02", Plan: []string{"bm90IGEgcGxhbg=="}}}.Apply(rendertest.Demos(t)["cottage.studbay"].Plan())
	if err != nil {
		t.Fatal(err)
	}
	page := string(built(t, index.New(p)))
	if want := "The walk-through of 2026-03-02 is kept in this plan but cannot be read"; !strings.Contains(page, want) || strings.Contains(page, `class="since"`) {
		t.Errorf("the page does not say %q, or lists changes", want)
	}
}

// TestOnePlanIsOnePage: the page of a plan is the same each time, and says it of itself by its
// stamp; that of a plan with an opening less has another.
func TestOnePlanIsOnePage(t *testing.T) {
	p := rendertest.Demos(t)["cottage.studbay"].Plan()
	first, again := built(t, index.New(p)), built(t, index.New(p))
	if !bytes.Equal(first, again) {
		t.Error("two pages of one plan differ")
	}
	var some plan.ID
	for _, o := range p.Openings() {
		some = o.ID
	}
	other, err := edit.Remove{Things: []plan.ID{some}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	if stampOf(t, first) == stampOf(t, built(t, index.New(other))) {
		t.Error("another plan has the same stamp")
	}
}

func stampOf(t *testing.T, page []byte) string {
	t.Helper()
	_, after, ok := strings.Cut(string(page), `data-stamp="`)
	if !ok {
		t.Fatal("no stamp")
	}
	stamp, _, _ := strings.Cut(after, `"`)
	return stamp
}
