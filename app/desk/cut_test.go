package desk

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"studbay/app/demo"
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/file"
)

// cutTexts lists the texts in sight that their places cut.
func cutTexts(in fyne.CanvasObject) (cut []string) {
	walk(in, func(o fyne.CanvasObject) {
		switch w := o.(type) {
		case *look.Text:
			if w.IsCut() {
				cut = append(cut, w.Words())
			}
		case *look.Entry:
			place := w.Size().Width - 2*theme.InnerPadding()
			if width := fyne.MeasureText(w.PlaceHolder, theme.TextSize(), fyne.TextStyle{}).Width; width > place {
				cut = append(cut, w.PlaceHolder)
			}
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

// TestNoWordsAreCut shows every card, the drawers and the strips in both languages: one
// demo in a window of the least usual screen, another in a narrower one.
func TestNoWordsAreCut(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		for i, width := range []float32{1364, 1200} {
			made := demo.All[i]
			p, err := made.Build()
			if err != nil {
				t.Fatal(err)
			}
			b := newBench(t)
			b.window.Resize(fyne.NewSize(width, 768))
			b.prefs.SetLanguage(tag)
			b.house.rebuildAll()
			b.session.Replace(p, "", file.Stamp{})
			b.checked()
			b.cutNowhere(fmt.Sprintf("%s, %v wide, %s", tag, width, made.Name))
		}
	}
}

// cutNowhere goes round the parts of the window and the cards of the plan.
func (b *bench) cutNowhere(name string) {
	look := func(where string, o fyne.CanvasObject) {
		for _, text := range cutTexts(o) {
			b.t.Errorf("%s, %s: %q is cut", name, where, text)
		}
	}
	for i, tool := range b.hand.tools {
		b.hand.Take(i)
		look("drawer of "+tool.Tool.ID(), b.panels.Drawer)
		look("status of "+tool.Tool.ID(), b.status.Object)
	}
	b.hand.Take(0)
	look("menus", b.menus.Object)
	look("strip", b.level.Object)
	b.doc().Select()
	openFolds(b.column.Object)
	look("card of the plan", b.column.Object)
	for _, id := range everything(b.doc().Plan()) {
		b.doc().Select(id)
		openFolds(b.column.Object)
		look("card of "+string(id), b.column.Object)
	}
}

// everything lists what of a plan has a card.
func everything(p plan.Plan) (ids []plan.ID) {
	for _, level := range p.Levels {
		ids = append(ids, level.ID)
		for r := range level.Rooms.All() {
			ids = append(ids, r.ID, r.Sides[0].ID)
		}
		for x := range level.Breaks.All() {
			ids = append(ids, x.ID)
		}
		for x := range level.Fixtures.All() {
			ids = append(ids, x.ID)
		}
		kinds := map[string]bool{}
		for x := range level.Openings.All() {
			if !kinds[x.Kind] {
				kinds[x.Kind] = true
				ids = append(ids, x.ID)
			}
		}
	}
	for x := range p.Cables.All() {
		ids = append(ids, x.ID)
	}
	for x := range p.Circuits.All() {
		ids = append(ids, x.ID)
	}
	for x := range p.Decisions.All() {
		ids = append(ids, x.ID)
	}
	return ids
}
