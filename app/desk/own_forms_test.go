package desk

import (
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// ownBox puts a box of the user's own in the plan by its form.
func (b *bench) ownBox() *plan.Own {
	b.t.Helper()
	b.commands.Run("own-box")
	form := b.dialog()
	for i, text := range []string{"Deep nail-on", "1", "22.5", `3"`} {
		b.entries(form)[i].SetText(text)
	}
	b.press(form, b.voice.say("own.yes", "Put it in the catalog"))
	b.noDialog()
	x, _ := b.doc().Plan().Owns.Get(b.doc().Selection()[0])
	return x
}

// What is stamped on a box is asked for, and kept as stamped; an empty volume is no mark, and
// no gangs are a round box.
func TestOwnThingsAreAskedFor(t *testing.T) {
	b := newBench(t)
	want := plan.Own{Kind: plan.OwnBox, Name: "Deep nail-on", Shape: "device", Material: "plastic", Mounting: "nail-on", Gangs: 1,
		Depth: 3 * unit.Inch, Volume: 225_000, From: plan.VolumeMarked}
	if got := b.ownBox(); got == nil || !plan.Same(got, withID(want, got.ID)) {
		t.Errorf("the box is %+v", got)
	}
	b.press(b.column.Object, "Remove it")
	if n := b.doc().Plan().Owns.Len(); n != 0 {
		t.Errorf("%d after taking it out", n)
	}
	asked := func(command string, texts ...string) *plan.Own {
		t.Helper()
		b.commands.Run(command)
		form := b.dialog()
		for i, text := range texts {
			b.entries(form)[i].SetText(text)
		}
		b.press(form, "Put it in the catalog")
		b.noDialog()
		x, _ := b.doc().Plan().Owns.Get(b.doc().Selection()[0])
		return x
	}
	if x := asked("own-box", "Pan", "0", "", "1/2"); x.Shape != "round" || x.Volume != 0 || x.From != plan.NoVolume || x.Depth != unit.Inch/2 {
		t.Errorf("the pan is %+v", x)
	}
	if x := asked("own-ring", "Ring", "2", "7/8", "3 13/16", "3"); x.Kind != plan.OwnRing || x.Gangs != 2 || x.Depth != 7*unit.Inch/8 || x.Width != 61*unit.Inch/16 || x.Height != 3*unit.Inch || x.Shape != "square-4" {
		t.Errorf("the ring is %+v", x)
	}
	if x := asked("own-device", "Radio dimmer", "2"); x.Kind != plan.OwnDevice || x.Depth != 2*unit.Inch || x.Like == "" {
		t.Errorf("the device is %+v", x)
	}
	b.commands.Run("own-box")
	form := b.dialog()
	b.entries(form)[0].SetText("Bad")
	b.entries(form)[2].SetText("plenty")
	b.entries(form)[3].SetText("3")
	b.press(form, "Put it in the catalog")
	if n := b.doc().Plan().Owns.Len(); n != 3 {
		t.Errorf("a volume of “plenty” is taken: %d", n)
	}
}

func withID(x plan.Own, id plan.ID) *plan.Own {
	x.ID = id
	return &x
}
