// Package desk wires one window: the document, the board, cards, tools and commands.
//
// Desk knows all parts and no part knows Desk: each gets the few others that it uses, as
// values or behind an interface. The life of the document is in package work, what stands
// above the window in package dialog, what surrounds the board in package shell.
// Everything runs on the toolkit's one goroutine but checking, loading and exporting,
// whose results come back to it.
package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/board"
	"studbay/app/card/bind"
	"studbay/app/dialog"
	"studbay/app/language"
	"studbay/app/look"
	"studbay/app/prefs"
	"studbay/app/shell"
	"studbay/app/work"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/revision"
)

// Desk is one window with one document: it wires the parts, each of which sees what it
// uses and no more.
type Desk struct {
	house   *House
	window  fyne.Window
	prefs   prefs.Prefs
	voice   *speaker
	session *work.Session
	stage   *dialog.Stage

	commands *shell.Commands
	hand     *hand
	view     *view
	editor   *editor
	findings *findings
	rooms    *rooms
	forms    *forms
	clips    *clips
	here     *here
	choices  *choices
	keys     *keyboard
	tools    *toolWindow
	cards    *cardWindow

	// The parts are made anew where the language or the scale changes.
	panels *shell.Panels
	menus  *shell.MenuBar
	rail   *shell.Rail
	kinds  *shell.KindDrawer
	sorts  *shell.SortDrawer
	level  *shell.LevelBar
	pane   *shell.UnfoldPane
	column *shell.Column
	eased  *shell.Throttle // of the column
	status *shell.Status
	steps  *shell.FirstSteps
}

// newDesk makes a window with an empty plan.
func newDesk(h *House) *Desk {
	d := &Desk{house: h, prefs: prefs.Prefs{Store: h.app.Preferences()}, voice: &speaker{}}
	fonts := look.WarmUp()
	d.window = h.app.NewWindow(appName)
	<-fonts
	d.window.SetPadded(false)
	d.stage = dialog.NewStage(d.window, h.post, d.prefs)
	d.speak()
	u := &user{
		canvas: d.window.Canvas(), stage: d.stage, voice: d.voice, prefs: d.prefs, shown: d,
		another: func() *work.Session { return h.NewWindow().session },
	}
	d.session = work.NewSession(h.shop, u, d.prefs.Units(), d.changed)
	d.wire()
	u.hand, u.view = d.hand, d.view
	d.build()
	d.window.SetOnDropped(func(_ fyne.Position, files []fyne.URI) { d.dropped(files) })
	d.window.SetCloseIntercept(d.Close)
	size, ok := d.prefs.Window()
	if !ok {
		size = fyne.NewSize(1440, 900)
	}
	d.window.Resize(size)
	d.refreshAll()
	return d
}

const appName = "Studbay"

// wire makes what works on the document, and the commands for it.
func (d *Desk) wire() {
	on := d.window.Canvas()
	d.hand = &hand{session: d.session, prefs: d.prefs, shown: d, tools: newTools(), kind: "duplex"}
	d.view = &view{session: d.session, hand: d.hand, voice: d.voice, datum: plan.FinishedFloor, changed: d.showView}
	d.editor = &editor{session: d.session, hand: d.hand, stage: d.stage, prefs: d.prefs, voice: d.voice}
	d.findings = &findings{editor: d.editor, view: d.view}
	d.rooms = &rooms{editor: d.editor, view: d.view}
	d.clips = &clips{editor: d.editor, view: d.view, copied: &d.house.copied}
	d.forms = &forms{editor: d.editor, clips: d.clips, findings: d.findings, view: d.view}
	d.here, d.choices = &here{d.editor}, &choices{d.editor}
	d.tools = &toolWindow{editor: d.editor, view: d.view, showCards: d.showCards}
	d.hand.window = d.tools
	d.commands = shell.NewCommands(on, d.showTitle, append(toolCommands(d.hand), d.commandTable()...)...)
	d.hand.commands, d.clips.commands = d.commands, d.commands
	d.cards = &cardWindow{findings: d.findings, commands: d.commands}
	d.keys = &keyboard{canvas: on, hand: d.hand, commands: d.commands, stage: d.stage}
	d.keys.listen()
}

// build makes the parts of the window and puts them together.
func (d *Desk) build() {
	on, v := d.window.Canvas(), d.voice.Voice
	d.status = shell.NewStatus(v)
	events := &boardEvents{hand: d.hand, keys: d.keys, view: d.view, status: d.status, menu: d.showMenuOf}
	d.view.board, d.view.unfold = board.New(events), board.NewUnfold(events)
	d.menus = shell.NewMenuBar(on, d.commands, v)
	d.rail = shell.NewRail(d.hand, v)
	d.kinds = shell.NewKindDrawer(d.hand, on, v, d.commands.ByID("find-kind").Keys[0].Said(v))
	d.sorts = shell.NewSortDrawer(d.hand, v, d.kinds.Object, func() {
		d.showHint()
		d.giveKeys()
	})
	d.level = shell.NewLevelBar(v, d.showLevels, func() { d.commands.Run("fit") })
	d.pane = shell.NewUnfoldPane(v, d.view.unfold, d.view.setDatum)
	d.column = shell.NewColumn(func() (bind.Context, []plan.ID) { return d.context(), d.doc().Selection() })
	d.cards.column, d.cards.giveKeys, d.cards.menu = d.column, d.giveKeys, d.showMenuOfFinding
	d.eased = shell.NewThrottle(d.house.post, func() {
		if !d.session.IsClosed() {
			d.column.Refresh()
		}
	})
	d.tools.cards = d.eased
	d.steps = shell.NewFirstSteps(v, func() { d.hand.takeByID("room") }, d.commands.Run, func() {
		d.prefs.SetGuided()
		d.showSteps()
	})
	d.panels = shell.NewPanels(shell.Parts{
		Menu: d.menus.Object, Rail: d.rail.Object, Drawer: d.sorts.Over(),
		Board: d.steps.Over(d.view.board, board.TapeWidth), Level: d.level.Object, Unfold: d.pane.Object,
		Card: d.column.Object, Status: d.status.Object,
	}, d.shownPanels(), d.view, d.prefs)
	d.panels.OnCardWidth, d.panels.OnDrawerWidth = d.column.SetWidth, d.kinds.SetWidth
	d.window.SetContent(d.panels.Build())
}

// doc returns the document in the window.
func (d *Desk) doc() *work.Document { return d.session.Doc() }

// context is what cards show now.
func (d *Desk) context() bind.Context {
	return bind.Context{
		Window: d.cards, Index: d.doc().Index(), Result: d.doc().Result(), Voice: d.voice.Voice, Prices: d.stage.Prices(),
		Away: func(slow, then func()) {
			go func() {
				slow()
				d.house.post(then)
			}()
		},
		Trade: d.prefs.Trade(), SetTrade: func(trade bool) {
			d.prefs.SetTrade(trade)
			d.column.Refresh()
		},
	}
}

// speak takes up the voice of the window: the language chosen, else the system's, and the
// units of the plan.
func (d *Desk) speak() {
	d.voice.Catalogue = language.Catalogue(d.prefs.LanguageTag())
	if d.session != nil {
		d.voice.System = d.doc().System()
	}
	d.stage.SetVoice(d.voice.Voice)
}

// unitsAre says everything that holds a length in the units of the plan.
func (d *Desk) unitsAre(s unit.System) {
	if s == d.voice.System {
		return
	}
	d.voice.System = s
	v := d.voice.Voice
	d.stage.SetVoice(v)
	d.kinds.SetVoice(v)
	d.level.SetVoice(v)
	d.pane.SetVoice(v)
	d.status.SetVoice(v)
	d.showHint()
}

// changed is told what of the document is another than before.
func (d *Desk) changed(what work.Changed) {
	if d.panels == nil {
		return
	}
	if what&work.PlanChanged != 0 {
		d.unitsAre(d.doc().System())
	}
	if what&(work.PlanChanged|work.FileChanged) != 0 {
		d.followPrices()
	}
	if what&(work.PlanChanged|work.SelectionChanged|work.FindingsChanged|work.LevelChanged) != 0 {
		d.view.show()
		d.eased.Refresh()
		d.showView()
		d.showSteps()
	}
	if what&work.LevelChanged != 0 {
		d.hand.levelChanged()
		d.view.Fit()
	}
	d.showTitle()
}

func (d *Desk) refreshAll() {
	d.changed(work.PlanChanged | work.FindingsChanged | work.SelectionChanged | work.FileChanged)
	d.rail.Refresh()
	d.showHint()
}

// rebuild builds the window anew, in another language or at another scale.
func (d *Desk) rebuild() {
	d.speak()
	d.build()
	d.refreshAll()
	d.view.Fit()
}

// showTool implements handShown.
func (d *Desk) showTool() {
	d.rail.Refresh()
	d.showPanels()
	d.showSteps()
	d.showHint()
	d.showPreview()
	d.giveKeys()
}

// giveKeys gives the keys to the board, unless something stands above the window.
func (d *Desk) giveKeys() {
	if on := d.window.Canvas(); on.Overlays().Top() == nil {
		on.Focus(d.view.board)
	}
}

// showKind implements handShown.
func (d *Desk) showKind() {
	d.giveKeys()
	d.kinds.Taken()
}

// showPreview implements handShown.
func (d *Desk) showPreview() {
	d.view.show()
	d.status.ShowSnap(d.hand.preview.Snap)
}

// showHint implements handShown: it says what the tool expects, or what was just said.
func (d *Desk) showHint() {
	d.status.ShowHint(d.hand.hint())
	d.sorts.Refresh()
}

// showGoingOn implements userShown.
func (d *Desk) showGoingOn(text words.Text) { d.status.ShowHint(text) }

// showView says what the board and the unfolded room show.
func (d *Desk) showView() {
	p := d.doc().Plan()
	shown := shell.LevelShown{Of: len(p.Levels), System: d.doc().System(), Scale: d.view.board.Scale(), Words: d.view.board.ScaleText()}
	for i, l := range p.Levels {
		if l.ID == d.doc().Level() {
			shown.Name, shown.At = l.Name, i+1
		}
	}
	d.level.Show(shown)
	room, side := d.view.roomInHand()
	d.pane.Show(room, d.faceText(side), d.view.datum)
}

// showSteps shows how to begin while the plan is empty and nothing is being drawn, until the
// user wants that no more.
func (d *Desk) showSteps() {
	empty := !d.prefs.IsGuided()
	for _, l := range d.doc().Plan().Levels {
		empty = empty && l.Rooms.Len() == 0
	}
	d.steps.Show(empty && d.hand.inHand == 0)
}

// shownPanels says which parts of the window are shown now.
func (d *Desk) shownPanels() shell.Shown {
	return shell.Shown{Drawer: d.sorts.IsWanted(), Unfold: d.prefs.Unfold(), Card: d.prefs.Cards()}
}

func (d *Desk) showPanels() {
	d.sorts.Refresh()
	d.panels.Show(d.shownPanels())
}

// showChange goes to an opening that changed.
func (d *Desk) showChange(c revision.Change) {
	d.doc().SetLevel(c.At().Level)
	d.doc().Select(c.Opening().ID)
}

// usePrices has the plan name a price book by its path, empty for the trial prices, and shows all
// by it.
func (d *Desk) usePrices(path string) {
	d.editor.namePrices(path)
	d.refreshAll()
}

// followPrices puts the price book in force that the plan names. One that cannot be read leaves
// the trial prices, which is said, and all that shows a price names its book.
func (d *Desk) followPrices() {
	name := d.doc().Plan().Header.Prices
	if err := d.stage.FollowPrices(price.Beside(d.doc().Path(), name), name); err != nil {
		d.hand.say(words.New("prices.gone", "The trial prices are used: {0}", d.stage.ErrorText(err)))
	}
}

// showCards shows the cards where they were folded away.
func (d *Desk) showCards() {
	if !d.prefs.Cards() {
		d.prefs.SetCards(true)
		d.showPanels()
	}
}

// focusFindings puts the list of findings in hand.
func (d *Desk) focusFindings() {
	d.showCards()
	d.column.FocusFindings()
}

// findKind takes the Opening tool in hand and goes to the search of its drawer.
func (d *Desk) findKind() {
	d.hand.takeByID("opening")
	d.kinds.Find()
}

// showTitle says the plan's title, whether it is saved, and what it is checked by.
func (d *Desk) showTitle() {
	if d.menus == nil {
		return
	}
	d.menus.Show(d.doc().Title(), d.stateText(), d.editionText())
	d.window.SetTitle(d.windowTitle())
}

// showKeys lists what the keys do.
func (d *Desk) showKeys() {
	d.stage.Scrolled(d.voice.say("keys.title", "Keyboard shortcuts"), 430, 520, d.commands.KeySheet(d.voice.Voice))
}

// recent lists the plans opened lately.
func (d *Desk) recent() (items []look.MenuItem) {
	for _, path := range d.prefs.Recent() {
		items = append(items, look.MenuItem{Label: work.ShortPath(path), Do: func() { d.session.Open(path) }})
	}
	return items
}
