package desk

import (
	"image"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// marked returns the kinds that the drawer marks.
func (b *bench) markedKinds() (ids []string) {
	for id, rows := range b.drawer.rows {
		if rows[0].Marked() {
			ids = append(ids, id)
		}
	}
	return ids
}

func TestAKindIsFoundAndTakenByKeys(t *testing.T) {
	b := newBench(t)
	b.Run("find-kind")
	on := b.window.Canvas()
	if on.Focused() != fyne.Focusable(b.drawer.search) {
		t.Fatal("the search of the drawer has not the focus")
	}
	if hint := b.status.hint.Words(); !strings.Contains(hint, "Enter") || !strings.Contains(hint, "Esc") {
		t.Errorf("the hint %q does not say how the search is worked", hint)
	}
	if ids := b.markedKinds(); len(ids) > 0 {
		t.Errorf("%v marked with nothing looked for", ids)
	}
	keys := func(names ...fyne.KeyName) {
		for _, name := range names {
			on.Focused().TypedKey(&fyne.KeyEvent{Name: name})
		}
	}
	if keys(fyne.KeyReturn); on.Focused() != nil || b.kind != "duplex" {
		t.Error("Enter with nothing looked for does not go on with the kind in hand")
	}
	b.Run("find-kind")
	test.Type(b.drawer.search, "switch")
	if ids := b.markedKinds(); len(ids) != 1 || ids[0] != "switch" {
		t.Fatalf("marked %v, want the one-pole switch before the half-switched receptacle", ids)
	}
	keys(fyne.KeyDown, fyne.KeyDown, fyne.KeyUp, fyne.KeyReturn)
	if b.kind != "three-way" || b.tool().ID() != "opening" {
		t.Errorf("in hand: %s of the tool %s", b.kind, b.tool().ID())
	}
	if on.Focused() != nil || b.drawer.search.Text != "" {
		t.Error("placing does not follow: the search keeps the focus or its text")
	}
	if hint := b.status.hint.Words(); strings.Contains(hint, "mark a kind") {
		t.Errorf("the hint still says %q", hint)
	}

	b.window.Resize(fyne.NewSize(1366, 600))
	b.Run("find-kind")
	test.Type(b.drawer.search, "thermo")
	keys(fyne.KeyReturn)
	top := b.drawer.places["thermostat"].Position().Y - b.drawer.scroll.Offset.Y
	if b.kind != "thermostat" || top < 0 || top > b.drawer.scroll.Size().Height-look.HitTarget {
		t.Errorf("the kind taken, %s, is not in sight: it stands at %v", b.kind, top)
	}
	b.takeKind("three-way")
	b.Run("find-kind")
	test.Type(b.drawer.search, "alarm")
	if n := len(b.drawer.found); n != 2 {
		t.Errorf("%d kinds found for the name of two alarms", n)
	}
	b.drawer.search.SetText("")
	test.Type(b.drawer.search, "zzz")
	keys(fyne.KeyReturn, fyne.KeyDown)
	if b.kind != "three-way" {
		t.Error("a search that finds nothing takes something")
	}
	keys(fyne.KeyEscape)
	if b.drawer.search.Text != "" || on.Focused() == nil {
		t.Fatal("Escape does not first clear the search")
	}
	keys(fyne.KeyEscape)
	if on.Focused() != nil || b.tool().ID() != "opening" {
		t.Error("Escape does not then leave the search for the tool")
	}
}

// TestKindsOfOtherLettersLookDifferent holds the pictures of the drawer apart: kinds that
// differ in family, letters, yokes or host must differ in them.
// TestAKindIsFoundByEverydayWords looks for kinds as homeowners and crews speak, whatever
// the language of the window.
func TestAKindIsFoundByEverydayWords(t *testing.T) {
	b := newBench(t)
	for text, want := range map[string]string{
		"outlet": "duplex", "plug": "duplex", "light switch": "switch", "3-way": "three-way", "sconce": "wall-light",
		"can lights": "recessed", "pot light": "recessed", "2 gang": "switch-2", "cable TV": "coax", "smoke detector": "smoke",
		"enchufe": "duplex", "apagador": "switch", "foco empotrado": "recessed", "detector de humo": "smoke",
	} {
		b.Run("find-kind")
		b.drawer.search.SetText(text)
		if ids := b.markedKinds(); len(ids) != 1 || ids[0] != want {
			t.Errorf("%q marks %v, want %s", text, ids, want)
		}
	}
}

func TestKindsOfOtherLettersLookDifferent(t *testing.T) {
	type spec struct {
		family  part.Family
		letters string
		yokes   int
		host    part.Host
	}
	seen := map[string]spec{}
	for _, k := range part.All().Kinds {
		img := image.NewRGBA(image.Rect(0, 0, kindWidth, kindHeight))
		raster.Items(img, 1, scene.Point{}, kindPicture(k, kindWidth, kindHeight, look.Current())...)
		for x := range kindWidth {
			for _, y := range []int{0, kindHeight - 1} {
				if img.RGBAAt(x, y).A != 0 {
					t.Errorf("%s: the picture is cut at its edge", k.ID)
				}
			}
		}
		is := spec{k.Family, k.Letters, max(k.Yokes, 1), k.Host}
		if was, ok := seen[string(img.Pix)]; ok && was != is {
			t.Errorf("%s looks like %v", k.ID, was)
		}
		seen[string(img.Pix)] = is
	}
}

func TestANewPlanKeepsTheUnitsOfTheOneBefore(t *testing.T) {
	b := newBench(t)
	b.setUnits(unit.Metric)
	b.prefs.setUnits(unit.Imperial) // as where a metric plan was opened
	b.status.showPlace(geom.Point{X: 3 * unit.Foot, Y: 5 * unit.Foot}, true)
	b.run("new")
	b.press(b.dialog(), "Do not save")
	if b.doc().System() != unit.Metric {
		t.Error("the new plan is in other units than the one before")
	}
	if said := b.status.place.Words(); !strings.Contains(said, "m") || strings.Contains(said, `"`) {
		t.Errorf("the status line says %q", said)
	}
}

func TestUnitsOfAPlanReachDrawerAndStatus(t *testing.T) {
	b := newBench(t)
	b.takeByID("opening")
	b.status.showPlace(geom.Point{X: 3 * unit.Foot, Y: 5 * unit.Foot}, true)
	b.setUnits(unit.Metric)
	if said := b.status.place.Words(); strings.ContainsAny(said, `'"`) {
		t.Errorf("the status line says %q in a metric plan", said)
	}
	if said := textOf(b.drawer.object); strings.Contains(said, `16"`) {
		t.Error("the drawer keeps heights in inches")
	}
}

func TestNothingOfTheStatusLineIsCut(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		b := newBench(t)
		b.prefs.setLanguage(tag)
		b.house.rebuilt()
		b.window.Resize(fyne.NewSize(1366, 768))
		snap := b.status.snap
		snap.SetWords(b.say("snap.and", "{0}; {1}", "halfway from K11 to K12", "as far as from K10 to K11"))
		b.status.object.Refresh()
		for _, text := range []*look.Text{b.status.hint, b.status.place, snap, b.status.caution} {
			if width := fyne.MeasureText(text.Words(), look.Scaled(look.SecondSize), fyne.TextStyle{Bold: text == snap}).Width; width > text.Size().Width {
				t.Errorf("%s: %q is %v wide in a place of %v", tag, text.Words(), width, text.Size().Width)
			}
		}
		for i := range b.tools {
			b.TakeTool(i)
			if width := fyne.MeasureText(b.status.hint.Words(), look.Scaled(look.SecondSize), fyne.TextStyle{}).Width; width > b.status.hint.Size().Width {
				t.Errorf("%s: the hint %q is cut", tag, b.status.hint.Words())
			}
		}
	}
}
