package desk

import (
	"testing"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestDrawerListsTheSortsOfATool(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	for _, tt := range []struct{ tool, press, choice string }{
		{"tool-break", "Window", string(plan.BreakWindow)},
		{"tool-fixture", "Island", string(plan.FixtureIsland)},
		{"tool-cable", "Switch to light", "control"},
	} {
		b.Run(tt.tool)
		if !b.shell.drawer.Visible() || !b.choices.object.Visible() || b.drawer.object.Visible() {
			t.Errorf("%s: its drawer is not the one in sight", tt.tool)
		}
		made := b.tool().(tool.Chooser)
		if len(b.choices.rows) != len(made.Choices()) {
			t.Errorf("%s: %d rows for %d sorts", tt.tool, len(b.choices.rows), len(made.Choices()))
		}
		b.press(b.shell.drawer, tt.press)
		if made.Choice() != tt.choice {
			t.Errorf("%s: pressing %s takes %q", tt.tool, tt.press, made.Choice())
		}
	}
	b.Run("tool-opening")
	if !b.drawer.object.Visible() || b.choices.object.Visible() {
		t.Error("the drawer of opening kinds does not come back")
	}
	b.Run("tool-select")
	if b.shell.drawer.Visible() {
		t.Error("the drawer stays with the Select tool")
	}
}

// TestEverySortHasAPicture draws each in every palette.
func TestEverySortHasAPicture(t *testing.T) {
	for _, e := range tool.Tools {
		made := e.New()
		chooser, ok := made.(tool.Chooser)
		if !ok {
			continue
		}
		for _, c := range chooser.Choices() {
			if len(choicePicture(made.ID(), c.ID, 34, 28, look.Current())) == 0 {
				t.Errorf("%s: %q has no picture", made.ID(), c.ID)
			}
		}
	}
}

func TestADoubleClickShowsTheCards(t *testing.T) {
	b := newBench(t)
	id := b.room(12*unit.Foot, 10*unit.Foot)
	b.Run("show-cards")
	if b.shell.card.Visible() {
		t.Fatal("the cards are not folded away")
	}
	var opener tool.Opener = b.table
	opener.OpenCard(id)
	if !b.shell.card.Visible() {
		t.Error("the cards stay folded away")
	}
}
