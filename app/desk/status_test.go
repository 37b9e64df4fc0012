package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// statusTexts are the texts of the status line: the hint, the place of the pointer, what
// it snaps to, the caution.
func (b *bench) statusTexts() []*look.Text { return windowtest.All[*look.Text](b.status.Object) }

func TestANewPlanKeepsTheUnitsOfTheOneBefore(t *testing.T) {
	b := newBench(t)
	b.editor.setUnits(unit.Metric)
	b.prefs.SetUnits(unit.Imperial) // as where a metric plan was opened
	b.status.ShowPlace(geom.Point{X: 3 * unit.Foot, Y: 5 * unit.Foot}, true)
	b.run("new")
	b.press(b.dialog(), "Do not save")
	if b.doc().System() != unit.Metric {
		t.Error("the new plan is in other units than the one before")
	}
	if said := b.statusTexts()[1].Words(); !strings.Contains(said, "m") || strings.Contains(said, `"`) {
		t.Errorf("the status line says %q", said)
	}
}

func TestUnitsOfAPlanReachDrawerAndStatus(t *testing.T) {
	b := newBench(t)
	b.hand.takeByID("opening")
	b.status.ShowPlace(geom.Point{X: 3 * unit.Foot, Y: 5 * unit.Foot}, true)
	b.editor.setUnits(unit.Metric)
	if said := b.statusTexts()[1].Words(); strings.ContainsAny(said, `'"`) {
		t.Errorf("the status line says %q in a metric plan", said)
	}
	if said := textOf(b.kinds.Object); strings.Contains(said, `16"`) {
		t.Error("the drawer keeps heights in inches")
	}
}

func TestNothingOfTheStatusLineIsCut(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		b := newBench(t)
		b.prefs.SetLanguage(tag)
		b.house.rebuildAll()
		b.window.Resize(fyne.NewSize(1366, 768))
		b.status.ShowSnap(words.New("snap.and", "{0}; {1}", "halfway from K11 to K12", "as far as from K10 to K11"))
		snap := b.statusTexts()[2]
		for _, text := range b.statusTexts() {
			if width := fyne.MeasureText(text.Words(), look.Scaled(look.SecondSize), fyne.TextStyle{Bold: text == snap}).Width; width > text.Size().Width {
				t.Errorf("%s: %q is %v wide in a place of %v", tag, text.Words(), width, text.Size().Width)
			}
		}
		for i := range b.hand.tools {
			b.hand.Take(i)
			hint := b.statusTexts()[0]
			if width := fyne.MeasureText(hint.Words(), look.Scaled(look.SecondSize), fyne.TextStyle{}).Width; width > hint.Size().Width {
				t.Errorf("%s: the hint %q is cut", tag, hint.Words())
			}
		}
	}
}
