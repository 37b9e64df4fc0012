package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/demo"
	"studbay/app/help"
	"studbay/app/language"
	"studbay/app/look"
	"studbay/app/prefs"
	"studbay/app/shell"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/table"
)

const (
	shift = fyne.KeyModifierShift
	alt   = fyne.KeyModifierAlt
)

func keys(mod fyne.KeyModifier, names ...fyne.KeyName) (all []shell.Keys) {
	for _, name := range names {
		all = append(all, shell.Keys{Mod: mod, Key: name})
	}
	return all
}

func title(id, english string) words.Text { return words.New("command."+id, english) }

// also is what people look for a command by, beside its title.
func also(id, english string) words.Text { return words.New("command."+id, english) }

// The menus within menus.
var (
	subArrange  = words.New("menu.arrange", "Arrange")
	subHere     = words.New("menu.here", "On what is selected")
	subColours  = words.New("menu.colours", "Colors")
	subUnits    = words.New("menu.units", "Units")
	subLanguage = words.New("menu.language", "Language")
	subScale    = words.New("menu.scale", "Interface size")
)

// commandTable lists every command, menu by menu, in the order menus show. It is the
// one place where menus, shortcuts and the sheet of shortcuts come from.
func (d *Desk) commandTable() []shell.Command {
	all := []shell.Command{
		{ID: "new", Title: title("new", "New"), Menu: shell.MenuFile, Keys: keys(shell.Ctrl, fyne.KeyN), Run: func() { d.session.New() }},
		{ID: "open", Title: title("open", "Open …"), Menu: shell.MenuFile, Keys: keys(shell.Ctrl, fyne.KeyO), Run: func() { d.session.ChooseOpen() }},
		{ID: "recent", Title: words.New("menu.recent", "Open recent"), Menu: shell.MenuFile, Items: d.recent},
		{ID: "demo", Title: title("demo", "Open the demo cottage"), Menu: shell.MenuFile, Run: func() { d.session.Begin(demo.All[0].Build) }},
		{ID: "window", Title: title("window", "New window"), Menu: shell.MenuFile, Keys: keys(shell.Ctrl|shift, fyne.KeyN), Run: func() { d.house.NewWindow() }},
		{ID: "save", Title: title("save", "Save"), Menu: shell.MenuFile, Line: true, Keys: keys(shell.Ctrl, fyne.KeyS), Run: func() { d.session.Save() }},
		{ID: "save-as", Also: also("save-as.also", "rename, copy"), Title: title("save-as", "Save as …"), Menu: shell.MenuFile, Keys: keys(shell.Ctrl|shift, fyne.KeyS), Run: func() { d.session.SaveAs() }},
		{ID: "close", Title: title("close", "Close the window"), Menu: shell.MenuFile, Line: true, Keys: keys(shell.Ctrl, fyne.KeyW), Run: d.Close},

		{ID: "quit", Title: title("quit", "Quit"), Menu: shell.MenuFile, Keys: keys(shell.Ctrl, fyne.KeyQ), Run: func() { d.house.Quit() }},

		{ID: "undo", Also: also("undo.also", "back, take back, revert"), Title: title("undo", "Undo"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl, fyne.KeyZ), Can: func() bool { return d.doc().History().CanUndo() }, Named: d.editor.undoTitle, Run: func() { d.doc().Undo() }},
		{ID: "redo", Also: also("redo.also", "again, forward, repeat"), Title: title("redo", "Redo"), Menu: shell.MenuEdit, Keys: append(keys(shell.Ctrl|shift, fyne.KeyZ), keys(shell.Ctrl, fyne.KeyY)...), Can: func() bool { return d.doc().History().CanRedo() }, Named: d.editor.redoTitle, Run: func() { d.doc().Redo() }},
		{ID: "undo-list", Title: title("undo-list", "Undo back to"), Menu: shell.MenuEdit, Items: d.undoList},
		{ID: "delete", Also: also("delete.also", "remove, erase, clear"), Title: title("delete", "Delete"), Menu: shell.MenuEdit, Line: true, Keys: keys(0, fyne.KeyDelete, fyne.KeyBackspace), Can: d.editor.hasSelection, Run: d.editor.removeSelected},
		{ID: "cut", Title: title("cut", "Cut"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl, fyne.KeyX), Can: d.clips.any, Run: d.clips.cut},
		{ID: "copy", Title: title("copy", "Copy"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl, fyne.KeyC), Can: d.clips.any, Run: d.clips.copy},
		{ID: "paste", Title: title("paste", "Paste"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl, fyne.KeyV), Can: d.clips.canPaste, Run: d.clips.paste},
		{ID: "duplicate", Also: also("duplicate.also", "clone, again, another"), Title: title("duplicate", "Duplicate"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl, fyne.KeyD), Can: d.clips.any, Run: d.clips.duplicate},
		{ID: "copy-row", Also: also("copy-row.also", "array, repeat, grid"), Title: title("copy-row", "Copies in rows …"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl|shift, fyne.KeyD), Can: d.clips.any, Run: d.forms.askCopies},
		{ID: "turn", Also: also("turn.also", "rotate"), Title: title("turn", "Turn a quarter, clockwise"), Menu: shell.MenuEdit, Sub: subArrange, Line: true, Keys: keys(shell.Ctrl, fyne.KeyR), Can: d.clips.any, Run: d.clips.turn},
		{ID: "mirror", Also: also("mirror.also", "flip, reflect"), Title: title("mirror", "Mirror, left to right"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl, fyne.KeyM), Can: d.clips.any, Run: d.clips.mirror},
		{ID: "spread", Also: also("spread.also", "distribute, space equally, array"), Title: title("spread", "Spread evenly from the first to the last"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl, fyne.KeyE), Can: d.clips.several, Run: d.clips.spread},
		{ID: "spread-to-ends", Title: title("spread-to-ends", "Spread evenly over the whole wall"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl|shift, fyne.KeyE), Can: d.clips.any, Run: d.clips.spreadToEnds},
		{ID: "align-heights", Also: also("align-heights.also", "level, line up, same height"), Title: title("align-heights", "As high as the one selected first"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl, fyne.KeyH), Can: d.clips.several, Run: d.clips.alignHeights},
		{ID: "same-left", Title: title("same-left", "As far from the left corner as the one selected first"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl, fyne.KeyJ), Can: d.clips.several, Run: d.clips.sameFromLeft},
		{ID: "same-right", Title: title("same-right", "As far from the right corner as the one selected first"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl|shift, fyne.KeyJ), Can: d.clips.several, Run: d.clips.sameFromRight},
		{ID: "pair", Title: title("pair", "Pair the two selected about the center line between them"), Menu: shell.MenuEdit, Sub: subArrange, Line: true, Can: d.editor.canPair, Run: d.editor.pair},
		{ID: "to-steps", Title: title("to-steps", "Round openings to the step"), Menu: shell.MenuEdit, Sub: subArrange, Line: true, Can: d.editor.hasOpenings, Run: d.clips.toSteps},
		{ID: "to-studs", Title: title("to-studs", "Boxes to the studs …"), Menu: shell.MenuEdit, Sub: subArrange, Keys: keys(shell.Ctrl, fyne.KeyT), Can: d.editor.hasOpenings, Run: d.forms.askToStuds},
		{ID: "side-kind", Title: titleMadeOf, Menu: shell.MenuEdit, Items: d.choices.madeOf},
		{ID: "break-kind", Title: titleKind, Menu: shell.MenuEdit, Items: d.choices.breakKinds},
		{ID: "break-swing", Title: titleSwings, Menu: shell.MenuEdit, Items: d.choices.swings},
		{ID: "room-use", Title: titleUse, Menu: shell.MenuEdit, Items: d.choices.uses},
		{ID: "opening-status", Title: titleStatus, Menu: shell.MenuEdit, Items: d.choices.statuses},
		{ID: "opening-circuit", Title: titleCircuit, Menu: shell.MenuEdit, Items: d.choices.circuits},
		{ID: "select-all", Also: also("select-all.also", "everything"), Title: title("select-all", "Select all openings on the level"), Menu: shell.MenuEdit, Line: true, Keys: keys(shell.Ctrl, fyne.KeyA), Can: d.editor.hasOpenings, Run: d.editor.selectAll},
		{ID: "select-room", Title: title("select-room", "Select the room it is in"), Menu: shell.MenuEdit, Can: func() bool { return d.choices.roomOfSelected() != "" }, Run: func() { d.doc().Select(d.choices.roomOfSelected()) }},
		{ID: "select-none", Title: title("select-none", "Deselect all"), Menu: shell.MenuEdit, Keys: keys(shell.Ctrl|shift, fyne.KeyA), Can: d.editor.hasSelection, Run: func() { d.doc().Select() }},

		{ID: "fit", Also: also("fit.also", "whole plan, extents, all"), Title: title("fit", "Zoom to fit"), Menu: shell.MenuView, Keys: append(keys(0, fyne.KeyHome), keys(shell.Ctrl, fyne.Key0)...), Run: func() { d.view.Fit() }},
		{ID: "zoom-in", Title: title("zoom-in", "Zoom in"), Menu: shell.MenuView, Keys: append(keys(shell.Ctrl, fyne.KeyPlus, fyne.KeyEqual), keys(0, fyne.KeyPlus, fyne.KeyEqual)...), Run: func() { d.view.board.ZoomIn() }},
		{ID: "zoom-out", Title: title("zoom-out", "Zoom out"), Menu: shell.MenuView, Keys: append(keys(shell.Ctrl, fyne.KeyMinus), keys(0, fyne.KeyMinus)...), Run: func() { d.view.board.ZoomOut() }},
		{ID: "zoom-selected", Title: title("zoom-selected", "Zoom to selection"), Menu: shell.MenuView, Keys: keys(0, fyne.KeyG), Can: d.editor.hasSelection, Run: func() { d.view.goTo(d.doc().Selection()...) }},
		{ID: "level-up", Title: title("level-up", "Level above"), Menu: shell.MenuView, Line: true, Keys: keys(0, fyne.KeyPageUp), Can: func() bool { return d.editor.levelBy(1) != "" }, Run: func() { d.doc().SetLevel(d.editor.levelBy(1)) }},
		{ID: "level-down", Title: title("level-down", "Level below"), Menu: shell.MenuView, Keys: keys(0, fyne.KeyPageDown), Can: func() bool { return d.editor.levelBy(-1) != "" }, Run: func() { d.doc().SetLevel(d.editor.levelBy(-1)) }},
		{ID: "ghost-below", Also: also("ghost-below.also", "underlay, trace, floor"), Title: title("ghost-below", "See the level below through this one"), Menu: shell.MenuView, On: func() bool { return d.prefs.Ghost() == prefs.GhostBelow }, Run: func() { d.showGhost(prefs.GhostBelow) }},
		{ID: "ghost-above", Title: title("ghost-above", "See the level above through this one"), Menu: shell.MenuView, On: func() bool { return d.prefs.Ghost() == prefs.GhostAbove }, Run: func() { d.showGhost(prefs.GhostAbove) }},
		{ID: "show-unfold", Also: also("show-unfold.also", "elevation, walls, faces"), Title: title("show-unfold", "Unfolded room"), Menu: shell.MenuView, Line: true, Keys: keys(0, fyne.KeyU), On: func() bool { return d.prefs.Unfold() }, Run: func() { d.prefs.SetUnfold(!d.prefs.Unfold()); d.showPanels() }},
		{ID: "show-cards", Also: also("show-cards.also", "properties, panel, inspector, sidebar"), Title: title("show-cards", "Cards and findings"), Menu: shell.MenuView, Keys: keys(0, fyne.KeyI), On: func() bool { return d.prefs.Cards() }, Run: func() { d.prefs.SetCards(!d.prefs.Cards()); d.showPanels() }},
		{ID: "card", Title: title("card", "Show its card"), Menu: shell.MenuView, Can: func() bool { return d.editor.hasSelection() && !d.prefs.Cards() }, Run: d.showCards},
		{ID: "full-screen", Title: title("full-screen", "Full screen"), Menu: shell.MenuView, Keys: keys(0, fyne.KeyF11), On: func() bool { return d.window.FullScreen() }, Run: func() { d.window.SetFullScreen(!d.window.FullScreen()) }},
		{ID: "client-walk", Also: also("client-walk.also", "tour, present, view, 3D"), Title: title("client-walk", "Walk through with the client"), Menu: shell.MenuView, Run: d.walkThrough},
		{ID: "answers", Title: title("answers", "Take in a client's answers …"), Menu: shell.MenuView, Run: d.askAnswers},
	}
	all = append(all, d.settings()...)
	all = append(all, []shell.Command{
		{ID: "room-by-size", Also: also("room-by-size.also", "rectangle, dimensions, draw"), Title: title("room-by-size", "Room by width × depth …"), Menu: shell.MenuPlace, Keys: keys(shift|shell.Ctrl, fyne.KeyR), Run: d.forms.askRoom},
		{ID: "find-kind", Also: also("find-kind.also", "outlet, switch, light, search"), Title: title("find-kind", "Find a kind of opening …"), Menu: shell.MenuPlace, Keys: keys(shell.Ctrl, fyne.KeyF), Run: d.findKind},
		{ID: "add-door", Title: title("add-door", "Add here: Door"), Menu: shell.MenuPlace, Sub: subHere, Can: d.here.takesBreak, Run: d.here.addDoor},
		{ID: "add-window", Title: title("add-window", "Add here: Window"), Menu: shell.MenuPlace, Sub: subHere, Can: d.here.takesBreak, Run: d.here.addWindow},
		{ID: "add-opening", Title: title("add-opening", "Add an opening here"), Menu: shell.MenuPlace, Sub: subHere, Can: d.here.takesOpening, Named: d.here.openingTitle, Run: d.here.addOpening},
		{ID: "add-level", Also: also("add-level.also", "floor, story, upstairs, basement"), Title: title("add-level", "Add a level"), Menu: shell.MenuPlace, Line: true, Run: d.editor.addLevel},
		{ID: "copy-level", Also: also("copy-level.also", "floor, story, upstairs"), Title: title("copy-level", "Copy this level with what is in it"), Menu: shell.MenuPlace, Can: d.editor.hasRooms, Run: d.editor.copyLevel},
		{ID: "copy-outlines", Title: title("copy-outlines", "Copy the outlines of this level"), Menu: shell.MenuPlace, Can: d.editor.hasRooms, Run: d.editor.copyOutlines},
		{ID: "add-circuit", Title: title("add-circuit", "Add a circuit …"), Menu: shell.MenuPlace, Run: d.forms.askCircuit},
		{ID: "wire-circuit", Title: title("wire-circuit", "Wire the circuit of what is selected"), Menu: shell.MenuPlace, Can: d.editor.hasCircuit, Run: d.editor.wireCircuit},
		{ID: "add-decision", Title: title("add-decision", "Add an open decision …"), Menu: shell.MenuPlace, Run: d.forms.askDecision},
		{ID: "own-box", Title: title("own-box", "A box of your own …"), Menu: shell.MenuPlace, Line: true, Run: d.forms.askOwnBox},
		{ID: "own-ring", Title: title("own-ring", "A ring of your own …"), Menu: shell.MenuPlace, Run: d.forms.askOwnRing},
		{ID: "own-device", Title: title("own-device", "A device of your own …"), Menu: shell.MenuPlace, Run: d.forms.askOwnDevice},

		{ID: "next-finding", Title: title("next-finding", "Next finding"), Menu: shell.MenuCheck, Keys: keys(0, fyne.KeyF8), Can: d.findings.any, Run: func() { d.findings.step(1) }},
		{ID: "last-finding", Title: title("last-finding", "Previous finding"), Menu: shell.MenuCheck, Keys: keys(shift|shell.Ctrl, fyne.KeyF8), Can: d.findings.any, Run: func() { d.findings.step(-1) }},
		{ID: "list-findings", Title: title("list-findings", "Go through the list"), Menu: shell.MenuCheck, Keys: keys(shell.Ctrl, fyne.KeyL), Can: d.findings.any, Run: d.focusFindings},
		{ID: "remedy", Also: also("remedy.also", "fix, repair, correct"), Title: title("remedy", "Apply the first remedy"), Menu: shell.MenuCheck, Line: true, Keys: keys(shell.Ctrl, fyne.KeyReturn), Can: d.findings.hasRemedy, Named: d.findings.remedyTitle, Run: d.findings.takeRemedy},
		{ID: "set-aside", Also: also("set-aside.also", "waive, ignore, dismiss"), Title: title("set-aside", "Set the finding aside …"), Menu: shell.MenuCheck, Can: func() bool { return d.findings.inHand() != nil }, Run: d.forms.askWaiver},
		{ID: "report", Title: title("report", "How the rooms stand …"), Menu: shell.MenuCheck, Line: true, Can: d.rooms.isChecked, Run: d.rooms.report},
		{ID: "visit", Title: title("visit", "Tick the list for the rough-in visit …"), Menu: shell.MenuCheck, Can: d.rooms.isChecked, Run: func() { d.stage.ShowVisit(d.doc(), d.editor.Do) }},
		{ID: "serve-room", Also: also("serve-room.also", "outlets, place automatically"), Title: title("serve-room", "Serve the room by the fewest receptacles …"), Menu: shell.MenuCheck, Can: d.rooms.canServe, Run: d.rooms.serve},
		{ID: "walk", Title: title("walk", "Walk in the dark from the entry …"), Menu: shell.MenuCheck, Can: d.rooms.isChecked, Run: d.rooms.showWalk},
		{ID: "walk-on", Title: title("walk-on", "On to the next crossing of that walk"), Menu: shell.MenuCheck, Keys: keys(0, fyne.KeyF7), Can: d.rooms.isChecked, Run: func() { d.rooms.walkOn(1) }},
		{ID: "walk-back", Title: title("walk-back", "Back to the crossing before"), Menu: shell.MenuCheck, Keys: keys(shift|shell.Ctrl, fyne.KeyF7), Can: d.rooms.isChecked, Run: func() { d.rooms.walkOn(-1) }},
		{ID: "amend-figure", Title: title("amend-figure", "Change a local code figure …"), Menu: shell.MenuCheck, Line: true, Run: d.forms.askFigure},
		{ID: "amend-rule", Title: title("amend-rule", "Turn off a rule …"), Menu: shell.MenuCheck, Run: d.forms.askRuleOff},
		{ID: "rules", Also: also("rules.also", "code, section"), Title: title("rules", "What is checked"), Menu: shell.MenuCheck, Line: true, Run: func() { d.stage.ShowHelp(d.prefs.LanguageTag(), help.Checked, d.doc().Result().Figures) }},

		{ID: "export", Also: also("export.also", "print, PDF, drawings, PNG, SVG"), Title: title("export", "Sheets …"), Menu: shell.MenuHand, Keys: keys(shell.Ctrl, fyne.KeyP), Run: func() { d.stage.AskExport(d.doc(), d.prefs) }},
		{ID: "compare", Also: also("compare.also", "revision, difference, changes, older"), Title: title("compare", "Compare with …"), Menu: shell.MenuHand, Run: func() { d.stage.AskCompare(d.doc(), d.showChange) }},
		{ID: "compare-walk", Title: title("compare-walk", "What changed since the last walk-through …"), Menu: shell.MenuHand, Can: func() bool { return d.doc().Plan().Header.Walked != nil }, Run: func() { d.stage.CompareWithWalk(d.doc(), d.showChange) }},
		{ID: "schedule-csv", Also: also("schedule-csv.also", "table, spreadsheet, list"), Title: title("schedule-csv", "Opening schedule as CSV …"), Menu: shell.MenuHand, Line: true, Run: func() { d.stage.ExportSchedule(d.doc(), ".csv") }},
		{ID: "schedule-xlsx", Also: also("schedule-xlsx.also", "table, spreadsheet, workbook, list"), Title: title("schedule-xlsx", "Opening schedule as XLSX …"), Menu: shell.MenuHand, Run: func() { d.stage.ExportSchedule(d.doc(), ".xlsx") }},
		{ID: "choice", Also: also("choice.also", "compare, cost, price, boxes"), Title: title("choice", "Plastic or steel, side by side …"), Menu: shell.MenuHand, Line: true, Keys: keys(shift|shell.Ctrl, fyne.KeyB), Can: d.editor.hasOpenings, Run: func() { d.stage.ShowChoice(d.doc(), func(e edit.Edit) { _ = d.editor.Do(e) }) }},
		{ID: "shopping-csv", Also: also("shopping-csv.also", "materials, parts, quantities"), Title: title("shopping-csv", "Shopping list as CSV …"), Menu: shell.MenuHand, Run: func() { d.stage.ExportParts(d.doc(), table.Shopping, ".csv") }},
		{ID: "cuts-csv", Title: title("cuts-csv", "Cut list as CSV …"), Menu: shell.MenuHand, Run: func() { d.stage.ExportParts(d.doc(), table.Cuts, ".csv") }},
		{ID: "prices", Also: also("prices.also", "cost, price book, recipe, minutes, table"), Title: title("prices", "Prices and recipes …"), Menu: shell.MenuHand, Line: true, Run: func() { d.stage.ShowPrices(d.doc(), d.usePrices) }},
		{ID: "prices-save", Title: title("prices-save", "Price book as CSV …"), Menu: shell.MenuHand, Run: d.stage.SavePrices},
		{ID: "prices-use", Title: title("prices-use", "Use a price book …"), Menu: shell.MenuHand, Run: func() { d.stage.AskPrices(d.usePrices) }},
		{ID: "prices-trial", Title: title("prices-trial", "Use the trial prices"), Menu: shell.MenuHand, Can: func() bool { return d.doc().Plan().Header.Prices != "" }, Run: func() { d.usePrices("") }},

		{ID: "help", Also: also("help.also", "manual, guide"), Title: title("help", "Help …"), Menu: shell.MenuHelp, Run: func() { d.stage.ShowHelp(d.prefs.LanguageTag(), "", d.doc().Result().Figures) }},
		{ID: "palette", Title: title("palette", "Find a command …"), Menu: shell.MenuHelp, Keys: keys(shell.Ctrl, fyne.KeyK), Run: d.showPalette},
		{ID: "menus", Title: title("menus", "Go to the menus"), Menu: shell.MenuHelp, Keys: keys(0, fyne.KeyF10), Run: func() { d.menus.Open(shell.MenuFile) }},
		{ID: "shortcuts", Also: also("shortcuts.also", "keys, hotkeys"), Title: title("shortcuts", "Keyboard shortcuts"), Menu: shell.MenuHelp, Keys: keys(0, fyne.KeyF1), Run: d.showKeys},
		{ID: "cautions", Title: title("cautions", "Before you rely on it"), Menu: shell.MenuHelp, Run: func() { d.stage.ShowCautions() }},
		{ID: "notices", Title: title("notices", "Licenses of what it is made with"), Menu: shell.MenuHelp, Line: true, Run: func() { d.stage.ShowNotices() }},
		{ID: "about", Title: title("about", "About Studbay"), Menu: shell.MenuHelp, Run: func() { d.stage.ShowAbout() }},
	}...)
	return all
}

// toolCommands has one command a tool of the rail.
func toolCommands(h *hand) (all []shell.Command) {
	for i, t := range h.tools {
		all = append(all, shell.Command{
			ID: "tool-" + t.Tool.ID(), Title: t.Title, Menu: shell.MenuPlace, Keys: keys(0, fyne.KeyName(t.Key)),
			On:  func() bool { return h.inHand == i },
			Run: func() { h.Take(i) },
		})
	}
	return all
}

// settings are the choices of one among several.
func (d *Desk) settings() (all []shell.Command) {
	for i, m := range []struct {
		mode look.Mode
		name words.Text
		also words.Text
	}{
		{look.FollowSystem, title("mode-system", "Follow the system"), also("mode-system.also", "theme, automatic")},
		{look.LightMode, title("mode-light", "Light"), also("mode-light.also", "theme, day")},
		{look.DarkMode, title("mode-dark", "Dark"), also("mode-dark.also", "theme, night")},
		{look.ContrastMode, title("mode-contrast", "High contrast"), also("mode-contrast.also", "theme, accessibility")},
	} {
		all = append(all, shell.Command{
			ID: "mode-" + string(m.mode), Title: m.name, Also: m.also, Menu: shell.MenuView, Sub: subColours, Line: i == 0,
			On:  func() bool { return d.prefs.Mode() == m.mode },
			Run: func() { d.prefs.SetMode(m.mode); d.house.applyTheme() },
		})
	}
	for _, u := range []struct {
		system     unit.System
		name, also words.Text
	}{
		{unit.Imperial, title("units-imperial", "Feet and inches"), also("units-imperial.also", "imperial, inch, customary")},
		{unit.Metric, title("units-metric", "Meters and millimeters"), also("units-metric.also", "metric, mm, cm, centimeters")},
	} {
		all = append(all, shell.Command{
			ID: u.name.ID, Title: u.name, Also: u.also, Menu: shell.MenuView, Sub: subUnits,
			On:  func() bool { return d.doc().System() == u.system },
			Run: func() { d.editor.setUnits(u.system) },
		})
	}
	for _, l := range language.All {
		all = append(all, shell.Command{
			ID: "language-" + l.Tag, Title: words.New("plain", "{0}", l.Name), Menu: shell.MenuView, Sub: subLanguage,
			On:  func() bool { return d.prefs.LanguageTag() == l.Tag },
			Run: func() { d.prefs.SetLanguage(l.Tag); d.house.rebuildAll() },
		})
	}
	for _, percent := range []int{90, 100, 115, 130, 150, 175, 200} {
		all = append(all, shell.Command{
			ID: "scale", Title: words.New("scale.percent", "{0} %", percent), Menu: shell.MenuView, Sub: subScale,
			On:  func() bool { return d.prefs.Scale() == percent },
			Run: func() { d.prefs.SetScale(percent); d.house.applyTheme(); d.house.rebuildAll() },
		})
	}
	for i := range all {
		if all[i].ID == "scale" {
			all[i].ID += "-" + all[i].Title.String()
		}
	}
	return all
}
