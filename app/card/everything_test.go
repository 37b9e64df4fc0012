package card

import (
	"cmp"
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card/bind"
	"studbay/app/demo"
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// furnished is a desktop with the demo cottage on it, which has every kind of thing.
func furnished(t *testing.T) *desktop {
	t.Helper()
	d := newDesktop(t)
	p, err := demo.All[0].Build()
	if err != nil {
		t.Fatal(err)
	}
	d.history = edit.NewHistory(p, 0)
	return d
}

// chosen is what each kind of card is made of in a plan: one thing of each kind that it
// has, and of breaks and fixtures one of each of their kinds, of openings one in each
// sort of place.
func chosen(p plan.Plan) (all [][]plan.ID) {
	seen := map[string]bool{}
	add := func(kind string, id plan.ID) {
		if key := string(id[:1]) + kind; !seen[key] {
			seen[key] = true
			all = append(all, []plan.ID{id})
		}
	}
	all = append(all, nil)
	for _, l := range p.Levels {
		add("", l.ID)
		for r := range l.Rooms.All() {
			add("", r.ID)
			for _, s := range r.Sides {
				add(string(s.Kind), s.ID)
			}
		}
		for b := range l.Breaks.All() {
			add(string(b.Kind), b.ID)
		}
		for f := range l.Fixtures.All() {
			add(string(f.Kind), f.ID)
		}
		for o := range l.Openings.All() {
			add(string(o.At.Part)+string(o.Status), o.ID)
			if len(all[0]) < 2 {
				all[0] = append(all[0], o.ID)
			}
		}
	}
	for _, ids := range [][]plan.ID{idsOf(p.Cables), idsOf(p.Controls), idsOf(p.Circuits), idsOf(p.Decisions), idsOf(p.Waivers), idsOf(p.Amendments)} {
		for _, id := range ids {
			add("", id)
		}
	}
	return append(all, nil)
}

// unchecked is what cards show before anything was checked.
func (d *desktop) unchecked() bind.Context {
	return bind.Context{Window: d, Index: index.New(d.history.Plan()), Voice: d.voice, Width: 320}
}

// TestNothingIsWrittenThatWasNotTyped goes through every field of every kind of card, with
// all lengths of the plan such that most are rounded, in both systems of units.
func TestNothingIsWrittenThatWasNotTyped(t *testing.T) {
	for _, system := range []unit.System{unit.Imperial, unit.Metric} {
		d := furnished(t)
		d.voice.System = system
		before := d.history.Plan()
		rounded, fields := 0, 0
		for _, ids := range chosen(before) {
			c := For(d.unchecked(), ids)
			for _, f := range everything[*look.Field](c) {
				fields++
				if strings.HasPrefix(f.Entry().Text, "≈") {
					rounded++
				}
				f.Entry().FocusGained()
				f.Entry().FocusLost()
				typed(f, f.Entry().Text)
				if f.Wrong() != "" {
					t.Errorf("%v: %s says %q of what the plan has", ids, f.Label(), f.Wrong())
				}
			}
		}
		if d.edits != 0 || !plan.Equal(before, d.history.Plan()) {
			t.Errorf("%v: %d edits of %d fields in which nothing was typed", system, d.edits, fields)
		}
		if fields < 100 || system == unit.Metric && rounded < 10 {
			t.Errorf("%v: only %d fields, of which %d are rounded", system, fields, rounded)
		}
	}
}

// commands are choices that do something and show no value of the plan.
var commands = map[string]bool{"Another yoke": true, "Add to it": true, "Another switch": true, "Serves also": true}

// TestWhatIsChosenIsWhatShows takes options of every choice of every kind of card. The
// plan takes it, and the card then shows it; or refuses it, and the card shows what it did.
func TestWhatIsChosenIsWhatShows(t *testing.T) {
	taken := 0
	d := furnished(t)
	p := d.history.Plan()
	for _, ids := range chosen(p) {
		d.history = edit.NewHistory(p, 0)
		for at, choice := range everything[*look.Choice](For(d.unchecked(), ids)) {
			if commands[choice.Label()] {
				continue
			}
			for i, all := 0, len(choice.Options()); i < all; i += max(1, all/8) { // of a long list, some
				d.history, d.edits = edit.NewHistory(p, 0), 0
				c := For(d.unchecked(), ids)
				option := everything[*look.Choice](c)[at].Options()[i]
				was := everything[*look.Choice](c)[at].Value()
				if option.Do(); d.edits == 0 || choice.Label() == "Switch" || choice.Label() == "Serves" {
					continue
				}
				if !c.Show(d.unchecked()) {
					c = For(d.unchecked(), ids)
				}
				taken++
				want := cmp.Or(option.Short, option.Label)
				if plan.Equal(p, d.history.Plan()) && !option.Now {
					want = was // refused
				}
				shown := false
				for _, now := range everything[*look.Choice](c) {
					shown = shown || now.Label() == choice.Label() && now.Value() == want
				}
				if isTakenOff := strings.HasPrefix(strings.ToLower(option.Label), "remove it") || option.Label == "No cover" || strings.HasPrefix(option.Label, "Take "); !shown && !isTakenOff {
					t.Errorf("%v: of %s, %q was taken and does not show", ids, choice.Label(), want)
				}
			}
		}
	}
	if taken < 200 {
		t.Errorf("only %d options were taken", taken)
	}
}

// TestLengthsAreTakenInAnyUnit types them into one field as people write them, in both
// systems of units; 1 in is 25.4 mm by definition, NIST SP 811 (2008), appendix B.8.
func TestLengthsAreTakenInAnyUnit(t *testing.T) {
	for _, tt := range []struct {
		system unit.System
		text   string
		want   unit.Length
	}{
		{unit.Imperial, `9'`, 9 * unit.Foot},
		{unit.Imperial, `8' 6-1/2"`, 8*unit.Foot + 13*unit.Inch/2},
		{unit.Imperial, "2.5 m", 2500 * unit.Millimetre},
		{unit.Imperial, "2440 mm", 2440 * unit.Millimetre},
		{unit.Metric, "2.5 m", 2500 * unit.Millimetre},
		{unit.Metric, "2440 mm", 2440 * unit.Millimetre},
		{unit.Metric, `9'`, 9 * unit.Foot},
		{unit.Metric, `≈ 8' 6"`, 102 * unit.Inch},
	} {
		d := newDesktop(t)
		d.voice.System = tt.system
		f := fieldNamed(t, For(d.context(), []plan.ID{den}), "Ceiling height")
		typed(f, tt.text)
		if room, _ := d.history.Plan().Room(den); room.Ceiling != tt.want || f.Wrong() != "" {
			t.Errorf("in %v %q is taken as %v, %q; want %v", tt.system, tt.text, room.Ceiling, f.Wrong(), tt.want)
		}
	}
}

// TestEveryFieldRefusesInItsOwnWords types what cannot be into a field of each kind: it is
// said by the field's name, the plan stays, and so does what was typed.
func TestEveryFieldRefusesInItsOwnWords(t *testing.T) {
	d := furnished(t)
	p := d.history.Plan()
	first := func(kind byte, is func(plan.ID) bool) []plan.ID {
		for _, ids := range chosen(p) {
			if len(ids) == 1 && ids[0].Kind() == kind && (is == nil || is(ids[0])) {
				return ids
			}
		}
		t.Fatalf("nothing of kind %c", kind)
		return nil
	}
	onFace := first(plan.KindOpening, func(id plan.ID) bool {
		o, _ := p.Opening(id)
		return o.At.Part == plan.PartFace && o.Gangs > 0
	})
	for _, tt := range []struct {
		of    []plan.ID
		field string
		text  string
		says  string // of it
	}{
		{onFace, "Height to center", "high", "“high” is not a length"},
		{onFace, "Height to center", "", "enter a length"},
		{onFace, "Height to center", "1e99 m", "“1e99 m”"},
		{onFace, "Gangs", "two", "a whole number above zero"},
		{onFace, "Gangs", "0", "a whole number above zero"},
		{onFace, "Tag", "a b", ""},
		{onFace, "In the box", "cable of copper", "cable 12/2"},
		{first(plan.KindRoom, nil), "Ceiling height", "-8'", ""},
		{first(plan.KindSide, nil), "Studs on center", "far", "is not a length"},
		{first(plan.KindBreak, nil), "Width", "900 feet", ""},
		{first(plan.KindFixture, nil), "Width", "-1'", ""},
		{first(plan.KindCircuit, nil), "Amperes", "20 A", "a whole number above zero"},
		{first(plan.KindCircuit, nil), "Volts", "-120", "a whole number above zero"},
		{first(plan.KindCable, nil), "Wire size, AWG", "thick", "is not a wire size"},
		{first(plan.KindCable, nil), "Insulated conductors", "few", "a whole number above zero"},
		{nil, "Up on the sheet, degrees", "360", "0 to 359"},
	} {
		t.Run(fmt.Sprintf("%s %q", tt.field, tt.text), func(t *testing.T) {
			c := For(d.unchecked(), tt.of)
			f := fieldNamed(t, c, tt.field)
			typed(f, tt.text)
			if said := f.Wrong(); !strings.HasPrefix(said, tt.field+": ") || !strings.Contains(said, tt.says) || len(said) < len(tt.field)+4 {
				t.Errorf("it says %q, want %q of %s", said, tt.says, tt.field)
			}
			if c.Show(d.unchecked()); f.Entry().Text != tt.text {
				t.Errorf("what was typed became %q", f.Entry().Text)
			}
			if !plan.Equal(p, d.history.Plan()) {
				t.Error("the plan differs")
			}
		})
	}
}

// TestCardsSpeakTheVoice holds refusals to the units and the language of the window.
func TestCardsSpeakTheVoice(t *testing.T) {
	d := newDesktop(t)
	d.voice = words.Voice{System: unit.Metric, DecimalComma: true, Catalogue: words.Catalogue{"room.ceiling": "Altura del techo", "length.unread": "«{0}» no es una longitud; {1}"}}
	f := fieldNamed(t, For(d.context(), []plan.ID{den}), "Altura del techo")
	typed(f, "alto")
	if want := "Altura del techo: «alto» no es una longitud; 1.94 m, 450 mm or 6' 4"; f.Wrong() != want {
		t.Errorf("it says %q, want %q", f.Wrong(), want)
	}
	test.NewTempWindow(t, f)
	f.Entry().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if got := f.Entry().Text; got != "≈ 2,438 m" {
		t.Errorf("8 ft are shown as %q in metric with a decimal comma", got)
	}
}

// What is found of stairs stands on their card.
func TestFindingsOfStairsStandOnTheirCard(t *testing.T) {
	d := newDesktop(t)
	stairs := plan.Fixture{
		ID: "fstrs2222", Kind: plan.FixtureStairs, Width: 3 * unit.Foot, Depth: 8 * unit.Foot, Height: 8 * unit.Foot,
		At: plan.OnFloor(den, geom.Point{X: 13 * unit.Foot, Y: 6 * unit.Foot}),
	}
	if err := d.history.Do(edit.AddFixture{Fixture: stairs}); err != nil {
		t.Fatal(err)
	}
	card := For(d.context(), []plan.ID{stairs.ID})
	if said := textOf(card.Object()); !strings.Contains(said, "run through a wall") || !strings.Contains(said, "to the left") {
		t.Errorf("the card of stairs through a wall says\n%s", said)
	}
}
