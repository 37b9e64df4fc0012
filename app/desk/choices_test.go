package desk

import (
	"testing"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/app/windowtest"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestDrawerListsTheSortsOfATool(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	sorts := func() []*look.Press { return windowtest.All[*look.Press](b.sorts.Object) }
	for _, tt := range []struct{ tool, press, choice string }{
		{"tool-break", "Window", string(plan.BreakWindow)},
		{"tool-fixture", "Island", string(plan.FixtureIsland)},
		{"tool-cable", "Switch to light", "control"},
	} {
		b.commands.Run(tt.tool)
		if !b.panels.Drawer.Visible() || !b.sorts.Object.Visible() || b.kinds.Object.Visible() {
			t.Errorf("%s: its drawer is not the one in sight", tt.tool)
		}
		made := b.hand.tool().(tool.Chooser)
		if len(sorts()) != len(made.Choices()) {
			t.Errorf("%s: %d rows for %d sorts", tt.tool, len(sorts()), len(made.Choices()))
		}
		b.press(b.panels.Drawer, tt.press)
		if made.Choice() != tt.choice {
			t.Errorf("%s: pressing %s takes %q", tt.tool, tt.press, made.Choice())
		}
	}
	b.commands.Run("tool-opening")
	if !b.kinds.Object.Visible() || b.sorts.Object.Visible() {
		t.Error("the drawer of opening kinds does not come back")
	}
	b.commands.Run("tool-select")
	if b.panels.Drawer.Visible() {
		t.Error("the drawer stays with the Select tool")
	}
}

func TestADoubleClickShowsTheCards(t *testing.T) {
	b := newBench(t)
	id := b.room(12*unit.Foot, 10*unit.Foot)
	b.commands.Run("show-cards")
	if b.panels.Card.Visible() {
		t.Fatal("the cards are not folded away")
	}
	var opener tool.Opener = b.tools
	opener.OpenCard(id)
	if !b.panels.Card.Visible() {
		t.Error("the cards stay folded away")
	}
}
