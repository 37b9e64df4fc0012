package card

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/plan"
)

func TestAComplaintNamesItsFieldAndGoesOnceItIsMended(t *testing.T) {
	d := newDesktop(t)
	f := fieldNamed(t, For(d.context(), []plan.ID{den}), "Ceiling height")
	test.NewTempWindow(t, f)
	f.Entry().SetText("eight")
	f.Entry().OnSubmitted("")
	if said := f.Wrong(); !strings.HasPrefix(said, "Ceiling height: “eight”") || !strings.Contains(said, "such as 6' 4-1/2\"") {
		t.Fatalf("said %q, want the field's name and a sample", said)
	}
	f.Entry().SetText("8 f")
	if f.Wrong() == "" {
		t.Error("the complaint goes while the text is still wrong")
	}
	f.Entry().SetText("8 ft")
	if said := f.Wrong(); said != "" {
		t.Errorf("still said %q of a text that is mended", said)
	}
	f.Entry().SetText("-1") // a length, but the plan refuses it
	f.Entry().OnSubmitted("")
	if f.Wrong() == "" {
		t.Fatal("what the plan refuses is taken")
	}
	f.Entry().SetText("9'")
	if said := f.Wrong(); said != "" {
		t.Errorf("still said %q after a change", said)
	}
}

func TestEscapeGivesUpWhatWasTypedThenLeavesTheField(t *testing.T) {
	d := newDesktop(t)
	f := fieldNamed(t, For(d.context(), []plan.ID{den}), "Name")
	on := test.NewTempWindow(t, f).Canvas()
	on.Focus(f.Entry())
	f.Entry().SetText("Dens")
	escape := &fyne.KeyEvent{Name: fyne.KeyEscape}
	if f.Entry().TypedKey(escape); f.Entry().Text != "Den" || on.Focused() == nil {
		t.Errorf("the first Escape leaves %q, in focus %v; want what was there, still in hand", f.Entry().Text, on.Focused() != nil)
	}
	if f.Entry().TypedKey(escape); on.Focused() != nil {
		t.Error("the second Escape does not leave the field")
	}
}

func TestCountsSizesAndVolumesSayHowTheyAreWritten(t *testing.T) {
	c := newDesktop(t).context()
	wireSize, volume := bind.WireSizes(&c).Read, bind.Volumes(&c).Read
	if _, err := wireSize("thick"); err == nil || !strings.Contains(err.Error(), "such as 14") {
		t.Errorf("a wire size: %v", err)
	}
	if _, err := volume("much"); err == nil || !strings.Contains(err.Error(), "such as 18") {
		t.Errorf("a volume: %v", err)
	}
	for _, text := range []string{"18", "22.5 in³", "300 cm³"} {
		if _, err := volume(text); err != nil {
			t.Errorf("the sample %s is refused: %v", text, err)
		}
	}
	for _, text := range []string{"14", "12", "1/0"} {
		if _, err := wireSize(text); err != nil {
			t.Errorf("the sample %s is refused: %v", text, err)
		}
	}
	for _, text := range []string{"6' 4-1/2\"", "76.5", "1.94 m", "450 mm", "6' 4"} {
		if _, err := look.ReadLength(c.Voice, text); err != nil {
			t.Errorf("the sample %s is refused: %v", text, err)
		}
	}
}

func TestTheUseOfARoomIsFoundByTyping(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{den})
	w := test.NewTempWindow(t, c.Object())
	use := choiceNamed(t, c, "Use")
	if options := use.Options(); len(options) != len(plan.Uses) || options[0].Label != "Bedroom" || !options[len(commonUses)].Line {
		t.Errorf("the uses begin with %q and have no line after the common ones", options[0].Label)
	}
	use.Open()
	for _, r := range "mud" {
		w.Canvas().Focused().TypedRune(r)
	}
	w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := d.context().Index.RoomOf(den).Use; got != plan.UseMudroom {
		t.Errorf("the use is %s, want the mudroom", got)
	}
}
