package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// pressKeys gives keys to what has the focus.
func (b *bench) pressKeys(names ...fyne.KeyName) {
	b.t.Helper()
	for _, name := range names {
		on := b.window.Canvas().Focused()
		if on == nil {
			b.t.Fatalf("nothing has the focus for %s", name)
		}
		on.TypedKey(&fyne.KeyEvent{Name: name})
	}
}

func TestFindingsAreGoneThroughByKeys(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	if err := b.forms.addRoom("Office", plan.UseOffice, 12*unit.Foot, 10*unit.Foot, nil); err != nil {
		t.Fatal(err)
	}
	b.checked()
	b.doc().Select()
	all := b.doc().Result().All()
	if len(all) < 2 {
		t.Fatalf("two empty rooms have %d findings, want one each at least", len(all))
	}
	b.shortcut(shell.Ctrl, fyne.KeyL)
	first, ok := b.window.Canvas().Focused().(*look.Press)
	if !ok {
		t.Fatal("the list has not got the focus")
	}
	b.pressKeys(fyne.KeyDown)
	second := b.window.Canvas().Focused().(*look.Press)
	if second == first {
		t.Fatal("down stays on the first finding")
	}
	b.pressKeys(fyne.KeyReturn)
	if len(b.doc().Selection()) != 1 {
		t.Errorf("Enter chose %v, want the finding's room", b.doc().Selection())
	}
	if b.window.Canvas().Focused() != second {
		t.Error("going to a finding takes the list out of hand")
	}
	b.pressKeys(fyne.KeyUp, fyne.KeyUp)
	if b.window.Canvas().Focused() != first {
		t.Error("up does not end at the first finding")
	}
}

func TestTheFirstRemedyIsTakenByKeys(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	f := b.findings.curable()
	if f == nil || len(f.Remedies) == 0 {
		t.Fatal("an empty room has no finding with a remedy")
	}
	if item := b.item(shell.MenuCheck, "Remedy: "); item.Disabled || !strings.Contains(item.Label, b.voice.Say(f.Remedies[0].Label)) {
		t.Errorf("the menu says %q, want what the remedy does", item.Label)
	}
	before := b.doc().Plan()
	b.shortcut(shell.Ctrl, fyne.KeyReturn)
	if plan.Equal(before, b.doc().Plan()) {
		t.Error("the remedy left the plan as it was")
	}
	b.doc().Select()
	if item := b.item(shell.MenuCheck, "Apply the first remedy"); !item.Disabled {
		t.Error("a remedy is offered with nothing chosen")
	}
}

func TestAmendmentsAreAskedForAndTakenBack(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.commands.Run("amend-figure")
	form := b.dialog()
	b.press(form, "Put it in force")
	if said := textOf(b.dialog()); !strings.Contains(said, "A local code figure") {
		t.Fatal("an amendment without value and reason is taken")
	}
	b.take(b.choice(form, "Figure"), "Highest receptacle")
	entries := b.entries(form)
	entries[0].SetText("60")
	entries[1].SetText("city code")
	b.press(form, "Put it in force")
	b.noDialog()
	if n := b.doc().Plan().Amendments.Len(); n != 1 {
		t.Fatalf("%d amendments, want 1", n)
	}
	for a := range b.doc().Plan().Amendments.All() {
		if a.Figure != "receptacle-max-height" || a.Value != "60" || a.Reason != "city code" {
			t.Errorf("the amendment is %+v", a)
		}
		b.doc().Select(a.ID)
	}
	b.press(b.column.Object, "Remove it")
	if n := b.doc().Plan().Amendments.Len(); n != 0 {
		t.Errorf("%d amendments after taking it back", n)
	}
	b.commands.Run("amend-rule")
	form = b.dialog()
	b.entries(form)[0].SetText("not adopted here")
	b.press(form, "Turn it off")
	b.noDialog()
	for a := range b.doc().Plan().Amendments.All() {
		if a.Rule == "" || a.Reason != "not adopted here" {
			t.Errorf("the amendment is %+v", a)
		}
	}
}

func TestLettersAreTheToolsWithTheFocusInTheList(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.shortcut(shell.Ctrl, fyne.KeyL)
	b.window.Canvas().Focused().TypedRune('o')
	if !b.hand.tools[b.hand.inHand].PlacesOpenings {
		t.Error("O does not take the Opening tool while the list has the focus")
	}
	b.pressKeys(fyne.KeyEscape)
	if b.hand.inHand != 0 {
		t.Error("Escape does not give the tool up while the list has the focus")
	}
}

// TestTheKeyTakesOneRemedyAfterTheOther in a room that has an open decision of its own
// besides walls that are not served.
func TestTheKeyTakesOneRemedyAfterTheOther(t *testing.T) {
	b := newBench(t)
	if err := b.forms.addRoom("Kitchen", plan.UseKitchen, 14*unit.Foot, 12*unit.Foot, nil); err != nil {
		t.Fatal(err)
	}
	b.checked()
	ref := b.doc().Index().RoomOf(b.doc().Selection()[0])
	counter := plan.Fixture{ID: work.NewID(plan.KindFixture), Kind: plan.FixtureCounter, At: plan.OnFace(ref.Sides[0].ID, 0), Width: 6 * unit.Foot, Depth: 2 * unit.Foot, Height: 3 * unit.Foot}
	door := plan.Break{ID: work.NewID(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(ref.Sides[2].ID, 5*unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch, Hand: plan.HandLeft}
	for _, e := range []edit.Edit{edit.AddFixture{Fixture: counter}, edit.AddBreak{Break: door}} {
		if err := b.editor.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	b.checked()
	b.doc().Select()
	for range 60 {
		if !b.commands.Run("next-finding") {
			break
		}
		if b.commands.Run("remedy") {
			b.checked()
		}
	}
	for _, f := range b.doc().Findings() {
		if len(f.Remedies) > 0 {
			t.Errorf("%s is left, with a remedy", b.voice.Say(f.Message))
		}
	}
}
