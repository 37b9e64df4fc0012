package card

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/card/found"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestCircuitCardTakesOnlyWholeNumbers(t *testing.T) {
	d := newDesktop(t)
	circuit := plan.Circuit{ID: "kaaaaaaaa", Number: "7", Amps: 15, Volts: 120, Poles: 1}
	if err := d.history.Do(edit.Add{Thing: &circuit}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{circuit.ID})
	f := fieldNamed(t, c, "Amperes")
	typed(f, "many")
	if f.Wrong() == "" {
		t.Error("amperes that are no number are not refused")
	}
	typed(f, "20")
	if now, _ := d.history.Plan().Circuits.Get(circuit.ID); now.Amps != 20 {
		t.Errorf("the breaker has %d A, want 20", now.Amps)
	}
	plain := For(d.context(), nil)
	if said := textOf(plain.Object()); !strings.Contains(said, "7") || !strings.Contains(said, "Circuits") {
		t.Errorf("the plan's card does not list the circuit:\n%s", said)
	}
}

// An edition that there are no figures of is named by the card that showed another plan.
func TestAnUnknownEditionIsNamed(t *testing.T) {
	d := newDesktop(t)
	shown := d.context()
	c := For(shown, nil)
	p := d.history.Plan()
	h := *p.Header
	h.Edition = "2011"
	p.Header = &h
	shown.Index = index.New(p)
	c.Show(shown)
	if said := textOf(c.Object()); !strings.Contains(said, "2011") {
		t.Errorf("the card does not name the edition:\n%s", said)
	}
}

func TestASettledDecisionLeavesItsAnswer(t *testing.T) {
	d := newDesktop(t)
	const id = plan.ID("daaaaaaaa")
	if err := d.history.Do(edit.Add{Thing: &plan.Decision{ID: id, Question: "How thick is the tile?", About: []plan.ID{plug, north, den}}}); err != nil {
		t.Fatal(err)
	}
	plain := For(d.context(), nil)
	pressNamed(t, plain, "How thick is the tile?")
	if len(d.chosen) != 1 || d.chosen[0] != id {
		t.Fatalf("pressing the decision chose %v", d.chosen)
	}
	c := For(d.context(), d.chosen)
	typed(fieldNamed(t, c, "Settled: it is"), "3/8 in")
	if _, open := d.history.Plan().Decisions.Get(id); open {
		t.Error("a settled decision is still open")
	}
	room, _ := d.history.Plan().Room(den)
	for what, note := range map[string]string{"opening": d.plug().Note, "room": room.Note} {
		if note != "How thick is the tile? 3/8 in" {
			t.Errorf("the note of the %s is %q, want question and answer once", what, note)
		}
	}
	if d.history.Undo(); d.plug().Note != "" {
		t.Error("one undo does not take it back")
	}
}

// What a plan of its own calls a layer is read in the words of the window, on its card and in a
// line; typed otherwise it is the user's own.
func TestAUsualLayerIsReadInTheWordsOfTheWindow(t *testing.T) {
	d := newDesktop(t)
	now := func() *plan.Side {
		ref, _ := index.New(d.history.Plan()).Side(north)
		return ref.Side()
	}
	side := *now()
	side.Finish = []plan.Layer{{Name: "gypsum board", Thickness: unit.Inch / 2}}
	if err := d.history.Do(edit.ChangeSide{Side: side}); err != nil {
		t.Fatal(err)
	}
	d.voice = words.Voice{Catalogue: words.Catalogue{"layer.gypsum": "placa de yeso"}}
	c := For(d.context(), []plan.ID{north})
	f := fieldNamed(t, c, "Layer 1")
	if got := f.Entry().Text; got != "placa de yeso" {
		t.Errorf("the layer is called %q", got)
	}
	f.Entry().OnSubmitted(f.Entry().Text)
	if got := now().Finish[0].Name; got != "gypsum board" {
		t.Errorf("left as it is it becomes %q", got)
	}
	ctx := d.context()
	if got := layersText(&ctx, side.Finish); !strings.HasPrefix(got, "placa de yeso ") {
		t.Errorf("in a line it is %q", got)
	}
	typed(f, "azulejo")
	if got := now().Finish[0].Name; got != "azulejo" {
		t.Errorf("typed as azulejo it is %q", got)
	}
}

func TestLayersAreAddedChangedAndTakenOut(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{north})
	finish := func() []plan.Layer {
		c.Show(d.context())
		ref, _ := index.New(d.history.Plan()).Side(north)
		return ref.Side().Finish
	}
	typed(fieldNamed(t, c, "Another layer"), "cement board")
	if got := finish(); len(got) != 1 || got[0].Name != "cement board" {
		t.Fatalf("layers are %+v, want one of cement board", got)
	}
	typed(fieldNamed(t, c, "Another layer"), "wood")
	finish()
	typed(fieldNamed(t, c, "Thickness"), "3/4\"")
	finish()
	takeOption(t, choiceNamed(t, c, "Combustible"), "Yes")
	if got := finish(); len(got) != 2 || got[1].Thickness != 3*unit.Inch/4 || !got[1].Combustible || got[0].Combustible {
		t.Errorf("layers are %+v, want 3/4 in of wood that burns on top", got)
	}
	typed(fieldNamed(t, c, "Layer 1"), "")
	if got := finish(); len(got) != 1 || got[0].Name != "wood" {
		t.Errorf("layers are %+v, want the wood alone", got)
	}
	r := For(d.context(), []plan.ID{den})
	typed(fieldNamed(t, r, "Another layer"), "oak")
	if room, _ := d.history.Plan().Room(den); len(room.Floor) != 1 || room.Floor[0].Name != "oak" {
		t.Errorf("the floor is %+v, want oak", room.Floor)
	}
}

func TestAnAmendmentTakesOnlyWhatItsFigureCan(t *testing.T) {
	d := newDesktop(t)
	a := plan.Amendment{ID: "aaaaaaaaa", Figure: "wall-reach", Value: "72", Reason: "county code"}
	if err := d.history.Do(edit.Add{Thing: &a}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{a.ID})
	f := fieldNamed(t, c, "Value")
	typed(f, "far")
	if f.Wrong() == "" {
		t.Error("a reach of \"far\" is not refused")
	}
	f.Restore()
	typed(f, "60")
	typed(fieldNamed(t, c, "Reason"), "")
	if now, _ := d.history.Plan().Amendments.Get(a.ID); now.Value != "60" || now.Reason != "county code" {
		t.Errorf("the amendment is %+v, want 60 with its reason", now)
	}
	pressNamed(t, c, "Remove it")
	if d.ran != "delete" {
		t.Errorf("taking it back ran %q", d.ran)
	}
}

func TestEveryFigureOfferedIsOne(t *testing.T) {
	for _, f := range code.Amendables {
		for _, edition := range code.Editions() {
			ok := false
			for _, value := range []string{"1", "yes"} {
				ok = ok || fill.CheckAmendment(edition, plan.Amendment{Figure: f.Name, Value: value, Reason: "test"}) == nil
			}
			if !ok {
				t.Errorf("%s: no value is taken for %s", edition, f.Name)
			}
		}
	}
}

func TestWaiverAndLevelCards(t *testing.T) {
	d := newDesktop(t)
	w := plan.Waiver{ID: "waaaaaaaa", Rule: "box-fill", About: plug, Reason: "measured"}
	if err := d.history.Do(edit.Add{Thing: &w}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{w.ID})
	typed(fieldNamed(t, c, "Who decided"), "the inspector")
	if now, _ := d.history.Plan().Waivers.Get(w.ID); now.By != "the inspector" {
		t.Errorf("the waiver is %+v", now)
	}
	l := For(d.context(), []plan.ID{"vaaaaaaaa"})
	typed(fieldNamed(t, l, "Name"), "Upstairs")
	l.Show(d.context())
	typed(fieldNamed(t, l, "Subfloor at"), "9'")
	if now := d.history.Plan().Levels[0]; now.Name != "Upstairs" || now.Elevation != 9*unit.Foot {
		t.Errorf("the level is %q at %v", now.Name, now.Elevation)
	}
}

func TestUpIsWholeDegrees(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), nil)
	f := fieldNamed(t, c, "Up on the sheet, degrees")
	if typed(f, "400"); f.Wrong() == "" {
		t.Error("400 degrees are not refused")
	}
	if typed(f, "90"); d.history.Plan().Header.North != 90 {
		t.Errorf("up is %d, want 90", d.history.Plan().Header.North)
	}
}

func TestOneIsSaidAsOne(t *testing.T) {
	for _, tt := range []struct {
		text words.Text
		want string
	}{
		{work.RoomsText(1), "1 room"}, {work.RoomsText(2), "2 rooms"}, {work.RoomsText(0), "0 rooms"},
		{work.OpeningsText(1), "1 opening"}, {work.OpeningsText(12), "12 openings"},
		{work.DecisionsText(1), "1 open decision"}, {work.DecisionsText(3), "3 open decisions"},
	} {
		if got := tt.text.String(); got != tt.want {
			t.Errorf("said %q, want %q", got, tt.want)
		}
	}
}

func TestCardsKeepToTheirColumn(t *testing.T) {
	d := newDesktop(t)
	contents, err := box.ParseContents("cable 12/2 x3; device 12")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range []edit.Edit{
		edit.SetAssembly{ID: plug, Assembly: plan.Assembly{Code: "PN1"}},
		edit.SetContents{ID: plug, Contents: boxes.StatedContents(contents)},
		edit.Add{Thing: &plan.Decision{ID: "daaaaaaaa", Question: "How thick is the tile behind the vanity?", About: []plan.ID{plug}}},
	} {
		if err := d.history.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	for _, scale := range []float32{.9, 1, 1.5, 2} {
		fyne.CurrentApp().Settings().SetTheme(&look.Theme{Mode: look.LightMode, Scale: scale})
		c := d.context()
		c.Width = 256 * scale // of the narrowest column
		for _, chosen := range [][]plan.ID{nil, {plug}, {den}, {north}, {"daaaaaaaa"}, {"vaaaaaaaa"}} {
			if got := For(c, chosen).Object().MinSize().Width; got > c.Width {
				t.Errorf("scale %v: the card of %v wants %v, its column has %v", scale, chosen, got, c.Width)
			}
		}
		list := found.NewList()
		list.Show(&c)
		if got := list.Object().MinSize().Width; got > c.Width {
			t.Errorf("scale %v: the findings want %v, their column has %v", scale, got, c.Width)
		}
	}
}

// A window turned into a door stands on the floor and is without a sill; turned back it has
// one again.
func TestAWindowTurnedIntoADoorStandsOnTheFloor(t *testing.T) {
	d := newDesktop(t)
	window := plan.Break{ID: "bwaaaaaaa", Kind: plan.BreakWindow, At: plan.OnFace(north, unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch, Sill: 3 * unit.Foot}
	if err := d.history.Do(edit.AddBreak{Break: window}); err != nil {
		t.Fatal(err)
	}
	now := func() plan.Break { b, _ := d.history.Plan().Break(window.ID); return *b }
	takeOption(t, choiceNamed(t, For(d.context(), []plan.ID{window.ID}), "Kind"), "Door")
	if b := now(); b.Kind != plan.BreakDoor || b.Sill != 0 {
		t.Errorf("it is %+v, want a door from the floor", b)
	}
	c := For(d.context(), []plan.ID{window.ID})
	if said := textOf(c.Object()); strings.Contains(said, "Sill height") || !strings.Contains(said, "Hand") {
		t.Errorf("the card of the door says\n%s", said)
	}
	takeOption(t, choiceNamed(t, c, "Hand"), "Hinges at the left")
	takeOption(t, choiceNamed(t, For(d.context(), []plan.ID{window.ID}), "Kind"), "Window")
	if b := now(); b.Sill <= 0 || b.Hand != plan.HandUnknown {
		t.Errorf("turned back it is %+v, want a sill and no hand", b)
	}
}

// A box of the user's own is changed on its card: a volume that is written is as stamped until
// somebody says otherwise, and old work grips the usual board.
func TestACardOfAnOwnBox(t *testing.T) {
	d := newDesktop(t)
	x := plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnBox, Name: "Deep", Shape: "device", Material: "plastic", Mounting: "nail-on", Gangs: 1}
	if err := d.history.Do(edit.Add{Thing: &x}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{x.ID})
	now := func() *plan.Own {
		got, _ := d.history.Plan().Owns.Get(x.ID)
		c.Show(d.context())
		return got
	}
	typed(fieldNamed(t, c, "Volume, as stamped"), "22.5")
	if got := now(); got.Volume != 225_000 || got.From != plan.VolumeMarked {
		t.Errorf("it is %v by %q", got.Volume, got.From)
	}
	takeOption(t, choiceNamed(t, c, "Who tells it"), "From memory, still to be read")
	if got := now(); got.From != plan.VolumeMemory {
		t.Errorf("it is from %q", got.From)
	}
	typed(fieldNamed(t, c, "Volume, as stamped"), "23")
	if got := now(); got.Volume != 230_000 || got.From != plan.VolumeMemory {
		t.Errorf("it is %v by %q, want from memory still", got.Volume, got.From)
	}
	typed(fieldNamed(t, c, "Volume, as stamped"), "")
	if got := now(); got.Volume != 0 || got.From != plan.NoVolume {
		t.Errorf("without a mark it is %v by %q", got.Volume, got.From)
	}
	takeOption(t, choiceNamed(t, c, "Held by"), "The board alone (old work)")
	if got := now(); got.Mounting != plan.OldWork || got.GripLeast != unit.Inch/2 || got.GripMost != unit.Inch/2 {
		t.Errorf("old work is %+v", got)
	}
	takeOption(t, choiceNamed(t, c, "Held by"), "Nails")
	if got := now(); got.Mounting != "nail-on" || got.GripMost != 0 {
		t.Errorf("nailed it is %+v", got)
	}
	pressNamed(t, c, "Remove it")
	if d.ran != "delete" {
		t.Errorf("taking it out ran %q", d.ran)
	}
}

// What a client drew is told with how far off it is, on its card and in the plan's list: 36 in
// along and 27 in up are 45 in straight (3-4-5 times 9).
func TestWhatAClientDrewIsToldWithItsDistance(t *testing.T) {
	d := newDesktop(t)
	o := d.plug()
	to := plan.OnFace(north, o.At.Along+36*unit.Inch)
	drawn := plan.Wish{ID: "qaaaaaaaa", Kind: plan.WishChange, About: plug, By: "Ana", To: &to, ToHeight: frame.CentreHeight(o, nil) + 27*unit.Inch}
	asked := plan.Wish{ID: "qbbbbbbbb", Kind: plan.WishQuestion, About: den, By: "Ana", Note: "Why?"}
	for _, w := range []*plan.Wish{&drawn, &asked} {
		if err := d.history.Do(edit.Add{Thing: w}); err != nil {
			t.Fatal(err)
		}
	}
	const want = "drawn 45 in from where it is"
	if said := textOf(For(d.context(), []plan.ID{drawn.ID}).Object()); !strings.Contains(said, want) {
		t.Errorf("its card does not say it:\n%s", said)
	}
	if said := textOf(For(d.context(), []plan.ID{asked.ID}).Object()); strings.Contains(said, "drawn") {
		t.Errorf("of what was not drawn a card says:\n%s", said)
	}
	if said := textOf(For(d.context(), nil).Object()); strings.Count(said, want) != 1 {
		t.Errorf("the plan's list does not say it once:\n%s", said)
	}
}
