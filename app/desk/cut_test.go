package desk

import (
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/demo"
	"studbay/app/look"
	"studbay/plan"
)

// cutTexts lists the texts in sight that their places cut.
func cutTexts(in fyne.CanvasObject) (cut []string) {
	walk(in, func(o fyne.CanvasObject) {
		if t, ok := o.(*look.Text); ok && t.IsCut() {
			cut = append(cut, t.Words())
		}
	})
	return cut
}

// openFolds presses every fold in sight open.
func openFolds(in fyne.CanvasObject) {
	for range 3 { // folds stand within folds
		walk(in, func(o fyne.CanvasObject) {
			if f, ok := o.(interface{ SetOpen(bool) }); ok {
				f.SetOpen(true)
			}
		})
	}
}

// TestNoWordsAreCut shows every sort of card, the drawers and the strips in both
// languages in a window of the least screen.
func TestNoWordsAreCut(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		b := newBench(t)
		b.window.Resize(fyne.NewSize(1366, 768))
		b.prefs.setLanguage(tag)
		b.house.rebuilt()
		p, err := demo.Cottage()
		if err != nil {
			t.Fatal(err)
		}
		b.replace(p, "", b.doc.stamp)
		b.checked()
		look := func(where string, o fyne.CanvasObject) {
			for _, text := range cutTexts(o) {
				t.Errorf("%s, %s: %q is cut", tag, where, text)
			}
		}
		for i, tool := range b.tools {
			b.TakeTool(i)
			look("drawer of "+tool.tool.ID(), b.shell.drawer)
			look("status of "+tool.tool.ID(), b.status.object)
		}
		b.TakeTool(0)
		look("menus", b.menus.object)
		look("strip", b.strip.object)
		var cards []plan.ID
		for _, level := range p.Levels {
			cards = append(cards, level.ID)
			for r := range level.Rooms.All() {
				cards = append(cards, r.ID, r.Sides[0].ID)
			}
			for x := range level.Breaks.All() {
				cards = append(cards, x.ID)
			}
			for x := range level.Fixtures.All() {
				cards = append(cards, x.ID)
			}
			for x := range level.Openings.All() {
				cards = append(cards, x.ID)
			}
		}
		b.Select()
		openFolds(b.column.object)
		look("card of the plan", b.column.object)
		for _, id := range cards {
			b.Select(id)
			openFolds(b.column.object)
			look("card of "+string(id), b.column.object)
		}
	}
}
