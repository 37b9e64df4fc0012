package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/board"
	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Desk is one window with one document.
type Desk struct {
	app      fyne.App
	window   fyne.Window
	prefs    prefs
	stage    *dialog.Stage
	house    *House
	session  *work.Session
	voice    words.Voice
	commands []Command
	// shortcuts holds the commands by the toolkit's name of their keys.
	shortcuts map[string]*Command

	tools    []toolEntry
	inHand   int           // of tools
	kind     string        // of opening, in hand
	sample   *plan.Opening // whose like is dropped, or nil
	table    *table
	preview  tool.Preview
	datum    plan.Datum
	lastRoom plan.ID // the pointer was in last
	said     words.Text
	fitted   bool // the board shows the whole level
	fitting  bool // the view changes because of that

	shell   *shell
	menus   *menuStrip
	rail    *rail
	drawer  *drawer
	choices *choices
	board   *board.Board
	unfold  *board.Unfold
	strip   *strip
	pane    *unfoldPane
	column  *column
	pace    *pace
	status  *status
	blank   *blank
}

// newDesk makes a window with an empty plan.
func newDesk(h *House) *Desk {
	d := &Desk{app: h.app, house: h, prefs: prefs{h.app.Preferences()}, kind: "duplex", datum: plan.FinishedFloor}
	fonts := look.WarmUp()
	d.window = h.app.NewWindow(appName)
	<-fonts
	d.window.SetPadded(false)
	d.stage = dialog.NewStage(d.window, h.post, d.prefs)
	d.speak()
	d.table = &table{desk: d}
	d.tools = toolTable()
	d.commands = append(toolCommands(d.tools), commandTable()...)
	d.session = work.NewSession(h.shop, user{d}, d.prefs.units(), d.changed)
	d.build()
	d.listen()
	d.window.SetOnDropped(func(_ fyne.Position, files []fyne.URI) { d.dropped(files) })
	d.window.SetCloseIntercept(d.Close)
	size, ok := d.prefs.window()
	if !ok {
		size = fyne.NewSize(1440, 900)
	}
	d.window.Resize(size)
	d.refreshAll()
	return d
}

const appName = "Studbay"

// build makes the parts of the window and puts them together. It is done anew where
// the language or the scale changes.
func (d *Desk) build() {
	d.board, d.unfold = board.New(&host{d}), board.NewUnfold(&host{d})
	d.menus, d.rail, d.drawer = newMenuStrip(d), newRail(d), newDrawer(d)
	d.choices = newChoices(d, d.drawer.object)
	d.strip, d.pane, d.status = newStrip(d), newUnfoldPane(d), newStatus(d)
	d.column = newColumn(d)
	d.pace = newPace(d)
	d.blank = newBlank(d)
	d.shell = &shell{
		menu: d.menus.object, rail: d.rail.object, drawer: d.choices.over(),
		board: d.blank.over(d.board), strip: d.strip.object, unfold: d.pane.object,
		card: d.column.object, status: d.status.object,
		shown: d.panels(), sizes: d.prefs.sizes(), onSizes: d.prefs.setSizes,
		onWidth: d.column.setWidth, onDrawer: d.drawer.setWidth, isFit: func() bool { return d.fitted }, refit: d.fit, hold: d.hold, hides: d.hides,
	}
	d.window.SetContent(d.shell.build())
}

// fit shows the whole level, and goes on doing so while the board changes its size,
// until the view is moved by hand.
func (d *Desk) fit() {
	d.fitting = true
	d.board.Fit()
	d.fitting, d.fitted = false, true
}

// hold keeps the plan where it is on the screen while the board's corner moves.
func (d *Desk) hold(by fyne.Position) {
	d.fitting = true
	d.board.Hold(by.X, by.Y)
	d.fitting = false
}

// hides reports whether part of the level, as it lies in the window now, would be outside
// of a board at a place.
func (d *Desk) hides(at panel) bool {
	box, ok := d.doc().Index().Extent(d.doc().Level())
	if !ok {
		return false
	}
	corner := d.board.Position()
	lo, hi := corner.Add(d.board.Place(box.Min)), corner.Add(d.board.Place(box.Max))
	return lo.X < at.At.X || lo.Y < at.At.Y || hi.X > at.At.X+at.Size.Width || hi.Y > at.At.Y+at.Size.Height
}

// panels says which parts of the window are shown now.
func (d *Desk) panels() shown {
	return shown{Drawer: d.choices.isWanted(), Unfold: d.prefs.unfold(), Card: d.prefs.cards()}
}

func (d *Desk) showPanels() {
	d.choices.refresh()
	d.shell.show(d.panels())
}

// doc returns the document in the window.
func (d *Desk) doc() *work.Document { return d.session.Doc() }

// changed is told what of the document is another than before.
func (d *Desk) changed(what work.Changed) {
	if d.board == nil {
		return
	}
	if what&work.PlanChanged != 0 {
		d.unitsAre(d.doc().System())
	}
	if what&(work.PlanChanged|work.SelectionChanged|work.FindingsChanged|work.LevelChanged) != 0 {
		d.showPicture()
		d.pace.refresh()
		d.pane.refresh()
		d.strip.refresh()
		d.blank.refresh()
	}
	if what&work.LevelChanged != 0 {
		d.fit()
	}
	d.refreshMenus()
	d.window.SetTitle(d.windowTitle())
}

// unitsAre says everything that holds a length in the units of the plan.
func (d *Desk) unitsAre(s unit.System) {
	if s == d.voice.System {
		return
	}
	d.voice.System = s
	d.stage.SetVoice(d.voice)
	d.drawer.fill()
	d.status.refreshPlace()
	d.showHint()
}

func (d *Desk) refreshAll() {
	d.changed(work.PlanChanged | work.FindingsChanged | work.SelectionChanged | work.FileChanged)
	d.rail.refresh()
	d.showHint()
}

// showPicture brings the board and the unfolded room up to the document.
func (d *Desk) showPicture() {
	pic := board.Picture{
		Index: d.doc().Index(), Level: d.doc().Level(), Findings: d.doc().Findings(),
		Selected: d.doc().Selection(), Theme: *look.Current(), Voice: d.voice, Preview: d.preview,
	}
	d.board.SetPicture(pic)
	room, side := d.roomInHand()
	unfolded := board.UnfoldPicture{Picture: pic, Side: side, Datum: d.datum}
	if room != nil {
		unfolded.Room = room.ID
	}
	d.unfold.SetPicture(unfolded)
}

// showPreview shows what the tool shows live.
func (d *Desk) showPreview() {
	d.showPicture()
	d.status.snap.SetWords(d.voice.Say(d.preview.Snap))
	d.status.object.Refresh()
}

// showHint says what the tool expects, or what it has just said.
func (d *Desk) showHint() {
	hint := d.tool().Hint()
	if !d.said.IsZero() {
		hint = d.said
	}
	d.status.hint.SetWords(d.voice.Say(hint))
	d.choices.refresh()
}

// setDatum says from which floor the unfolded room tells heights.
func (d *Desk) setDatum(to plan.Datum) {
	d.datum = to
	d.showPicture()
	d.pane.refresh()
}

// windowTitle is what the desktop shows of the window.
func (d *Desk) windowTitle() string {
	title := d.doc().Title() + " · " + appName
	if d.doc().IsDirty() {
		return "• " + title
	}
	return title
}

// stateText says whether the plan is saved.
func (d *Desk) stateText() string {
	switch {
	case d.doc().IsDirty():
		return d.say("state.dirty", "· not saved")
	case d.doc().Path() == "":
		return ""
	}
	return d.say("state.saved", "· saved {0}", d.doc().SavedAt().Format("15:04"))
}

// editionText says what the plan is checked by.
func (d *Desk) editionText() string {
	if err := d.doc().CheckError(); err != nil {
		return d.say("edition.trouble", "Not checked")
	}
	figures := d.doc().Result().Figures
	switch {
	case figures == nil:
		return ""
	case len(figures.Amendments) == 0:
		return figures.Title
	case len(figures.Amendments) == 1:
		return d.say("edition.amended-one", "{0} · 1 amendment", figures.Title)
	}
	return d.say("edition.amended", "{0} · {1} amendments", figures.Title, len(figures.Amendments))
}

// boxOf returns where a finding is: its stretches, its opening or its room.
func boxOf(ix *plan.Index, about ...plan.ID) (geom.Box, bool) {
	for _, id := range about {
		if box, ok := ix.BoxOf(id); ok && id != "" {
			return box, true
		}
	}
	return geom.Box{}, false
}
