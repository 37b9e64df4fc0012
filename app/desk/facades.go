package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

var (
	_ tool.Window = (*toolWindow)(nil)
	_ tool.Opener = (*toolWindow)(nil)
)

// toolWindow is what tools see of the window.
type toolWindow struct {
	*editor
	view      *view
	cards     *shell.Throttle // of the column of cards
	showCards func()          // where they are folded away
}

func (t *toolWindow) Plan() plan.Plan       { return t.doc().Plan() }
func (t *toolWindow) Index() *index.Index   { return t.doc().Index() }
func (t *toolWindow) Level() plan.ID        { return t.doc().Level() }
func (t *toolWindow) Ghost() plan.ID        { return t.ghost() }
func (t *toolWindow) System() unit.System   { return t.doc().System() }
func (t *toolWindow) Selection() []plan.ID  { return t.doc().Selection() }
func (t *toolWindow) Select(ids ...plan.ID) { t.doc().Select(ids...) }

// Do implements tool.Window: a room that reaches past the board's edge is brought into view.
func (t *toolWindow) Do(e edit.Edit) error {
	err := t.editor.Do(e)
	if made, isRoom := e.(edit.AddRoom); isRoom && err == nil {
		t.view.keepInSight(made.Room.ID)
	}
	return err
}

// DrawnIn implements tool.Window.
func (t *toolWindow) DrawnIn(box geom.Box) []plan.ID { return t.view.board.DrawnIn(box) }

func (t *toolWindow) Kind() string          { return t.hand.kind }
func (t *toolWindow) Sample() *plan.Opening { return t.hand.sample }

// Begin implements tool.Window.
func (t *toolWindow) Begin(name words.Text) {
	t.cards.Ease(true)
	t.doc().Begin(name)
}

// End implements tool.Window.
func (t *toolWindow) End() {
	t.cards.Ease(false)
	t.session.EndDrag()
}

// Said implements tool.Window.
func (t *toolWindow) Said(text words.Text) string { return t.voice.Say(text) }

// NewID implements tool.Window.
func (t *toolWindow) NewID(kind byte) plan.ID { return work.NewID(kind) }

// Preview implements tool.Window.
func (t *toolWindow) Preview(p tool.Preview) { t.hand.show(p) }

// Say implements tool.Window.
func (t *toolWindow) Say(text words.Text) { t.hand.say(text) }

// Refuse implements tool.Window.
func (t *toolWindow) Refuse(text words.Text) { t.hand.refuse(text) }

// OpenCard implements tool.Opener.
func (t *toolWindow) OpenCard(plan.ID) { t.showCards() }

var _ bind.Window = (*cardWindow)(nil)

// cardWindow is what cards see of the window.
type cardWindow struct {
	*findings
	commands *shell.Commands
	column   *shell.Column
	giveKeys func()
	menu     func(f rule.Finding, at fyne.Position)
}

// Menu implements bind.Window.
func (c *cardWindow) Menu(f rule.Finding, at fyne.Position) { c.menu(f, at) }

// GiveKeys implements bind.Window.
func (c *cardWindow) GiveKeys() { c.giveKeys() }

// Select implements bind.Window.
func (c *cardWindow) Select(ids ...plan.ID) { c.doc().Select(ids...) }

// Shortcut implements bind.Window.
func (c *cardWindow) Shortcut(s fyne.Shortcut) bool { return c.commands.Shortcut(s) }

// Reveal implements bind.Window.
func (c *cardWindow) Reveal(o fyne.CanvasObject) { c.column.Reveal(o) }

// Run implements bind.Window.
func (c *cardWindow) Run(command string) bool { return c.commands.Run(command) }
