package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/unit"
	"studbay/plan/words"
)

const (
	shift = fyne.KeyModifierShift
	alt   = fyne.KeyModifierAlt
)

func keys(mod fyne.KeyModifier, names ...fyne.KeyName) (all []Keys) {
	for _, name := range names {
		all = append(all, Keys{mod, name})
	}
	return all
}

func title(id, english string) words.Text { return words.New("command."+id, english) }

// The menus within menus.
var (
	subColours  = words.New("menu.colours", "Colours")
	subUnits    = words.New("menu.units", "Units")
	subLanguage = words.New("menu.language", "Language")
	subScale    = words.New("menu.scale", "Size of the interface")
)

// commandTable lists every command, menu by menu, in the order menus show. It is the
// one place where menus, shortcuts and the sheet of shortcuts come from.
func commandTable() []Command {
	all := []Command{
		{ID: "new", Title: title("new", "New"), Menu: MenuFile, Keys: keys(ctrl, fyne.KeyN), Run: func(d *Desk) { d.session.New() }},
		{ID: "open", Title: title("open", "Open …"), Menu: MenuFile, Keys: keys(ctrl, fyne.KeyO), Run: func(d *Desk) { d.session.ChooseOpen() }},
		{ID: "demo", Title: title("demo", "Open the demo cottage"), Menu: MenuFile, Run: (*Desk).openDemo},
		{ID: "window", Title: title("window", "New window"), Menu: MenuFile, Keys: keys(ctrl|shift, fyne.KeyN), Run: func(d *Desk) { d.house.NewWindow() }},
		{ID: "save", Title: title("save", "Save"), Menu: MenuFile, Line: true, Keys: keys(ctrl, fyne.KeyS), Run: func(d *Desk) { d.session.Save() }},
		{ID: "save-as", Title: title("save-as", "Save as …"), Menu: MenuFile, Keys: keys(ctrl|shift, fyne.KeyS), Run: func(d *Desk) { d.session.SaveAs() }},
		{ID: "close", Title: title("close", "Close the window"), Menu: MenuFile, Line: true, Keys: keys(ctrl, fyne.KeyW), Run: (*Desk).Close},

		{ID: "quit", Title: title("quit", "Quit"), Menu: MenuFile, Keys: keys(ctrl, fyne.KeyQ), Run: func(d *Desk) { d.house.Quit() }},

		{ID: "undo", Title: title("undo", "Undo"), Menu: MenuEdit, Keys: keys(ctrl, fyne.KeyZ), Can: (*Desk).canUndo, Named: (*Desk).undoTitle, Run: (*Desk).undo},
		{ID: "redo", Title: title("redo", "Redo"), Menu: MenuEdit, Keys: append(keys(ctrl|shift, fyne.KeyZ), keys(ctrl, fyne.KeyY)...), Can: (*Desk).canRedo, Named: (*Desk).redoTitle, Run: (*Desk).redo},
		{ID: "delete", Title: title("delete", "Take out what is chosen"), Menu: MenuEdit, Line: true, Keys: keys(0, fyne.KeyDelete, fyne.KeyBackspace), Can: (*Desk).hasSelection, Run: (*Desk).removeSelected},
		{ID: "copy", Title: title("copy", "Copy the opening"), Menu: MenuEdit, Keys: keys(ctrl, fyne.KeyC), Can: (*Desk).hasOneOpening, Run: (*Desk).copyOpening},
		{ID: "paste", Title: title("paste", "Set its like elsewhere"), Menu: MenuEdit, Keys: keys(ctrl, fyne.KeyV), Can: (*Desk).hasCopied, Run: (*Desk).takeCopied},
		{ID: "copy-row", Title: title("copy-row", "Copy along the face …"), Menu: MenuEdit, Keys: keys(ctrl, fyne.KeyD), Can: (*Desk).hasOneOpening, Run: (*Desk).askCopies},
		{ID: "select-all", Title: title("select-all", "Choose all openings of the level"), Menu: MenuEdit, Line: true, Keys: keys(ctrl, fyne.KeyA), Can: (*Desk).hasOpenings, Run: (*Desk).selectAll},
		{ID: "select-none", Title: title("select-none", "Choose nothing"), Menu: MenuEdit, Keys: keys(ctrl|shift, fyne.KeyA), Can: (*Desk).hasSelection, Run: func(d *Desk) { d.Select() }},

		{ID: "fit", Title: title("fit", "Fit the level"), Menu: MenuView, Keys: append(keys(0, fyne.KeyHome), keys(ctrl, fyne.Key0)...), Run: func(d *Desk) { d.fit() }},
		{ID: "zoom-in", Title: title("zoom-in", "Nearer"), Menu: MenuView, Keys: append(keys(ctrl, fyne.KeyPlus, fyne.KeyEqual), keys(0, fyne.KeyPlus, fyne.KeyEqual)...), Run: func(d *Desk) { d.board.ZoomIn() }},
		{ID: "zoom-out", Title: title("zoom-out", "Farther"), Menu: MenuView, Keys: append(keys(ctrl, fyne.KeyMinus), keys(0, fyne.KeyMinus)...), Run: func(d *Desk) { d.board.ZoomOut() }},
		{ID: "zoom-selected", Title: title("zoom-selected", "Go to what is chosen"), Menu: MenuView, Keys: keys(0, fyne.KeyG), Can: (*Desk).hasSelection, Run: (*Desk).goToSelected},
		{ID: "level-up", Title: title("level-up", "Level above"), Menu: MenuView, Line: true, Keys: keys(0, fyne.KeyPageUp), Can: func(d *Desk) bool { return d.levelBy(1) != "" }, Run: func(d *Desk) { d.doc().SetLevel(d.levelBy(1)) }},
		{ID: "level-down", Title: title("level-down", "Level below"), Menu: MenuView, Keys: keys(0, fyne.KeyPageDown), Can: func(d *Desk) bool { return d.levelBy(-1) != "" }, Run: func(d *Desk) { d.doc().SetLevel(d.levelBy(-1)) }},
		{ID: "show-unfold", Title: title("show-unfold", "Unfolded room"), Menu: MenuView, Line: true, Keys: keys(0, fyne.KeyU), On: func(d *Desk) bool { return d.prefs.unfold() }, Run: func(d *Desk) { d.prefs.setUnfold(!d.prefs.unfold()); d.showPanels() }},
		{ID: "show-cards", Title: title("show-cards", "Cards and findings"), Menu: MenuView, Keys: keys(0, fyne.KeyI), On: func(d *Desk) bool { return d.prefs.cards() }, Run: func(d *Desk) { d.prefs.setCards(!d.prefs.cards()); d.showPanels() }},
		{ID: "full-screen", Title: title("full-screen", "Full screen"), Menu: MenuView, Keys: keys(0, fyne.KeyF11), On: func(d *Desk) bool { return d.window.FullScreen() }, Run: func(d *Desk) { d.window.SetFullScreen(!d.window.FullScreen()) }},
	}
	all = append(all, settings()...)
	all = append(all, []Command{
		{ID: "room-by-size", Title: title("room-by-size", "Room by width × depth …"), Menu: MenuPlace, Keys: keys(shift|ctrl, fyne.KeyR), Run: (*Desk).askRoom},
		{ID: "find-kind", Title: title("find-kind", "Find a kind of opening …"), Menu: MenuPlace, Keys: keys(ctrl, fyne.KeyF), Run: (*Desk).findKind},
		{ID: "add-level", Title: title("add-level", "Another level"), Menu: MenuPlace, Line: true, Run: (*Desk).addLevel},
		{ID: "add-circuit", Title: title("add-circuit", "Another circuit …"), Menu: MenuPlace, Run: (*Desk).askCircuit},
		{ID: "add-decision", Title: title("add-decision", "An open decision …"), Menu: MenuPlace, Run: (*Desk).askDecision},

		{ID: "next-finding", Title: title("next-finding", "Next finding"), Menu: MenuCheck, Keys: keys(0, fyne.KeyF8), Can: (*Desk).hasFindings, Run: func(d *Desk) { d.stepFinding(1) }},
		{ID: "last-finding", Title: title("last-finding", "Finding before"), Menu: MenuCheck, Keys: keys(shift|ctrl, fyne.KeyF8), Can: (*Desk).hasFindings, Run: func(d *Desk) { d.stepFinding(-1) }},
		{ID: "list-findings", Title: title("list-findings", "Go through the list"), Menu: MenuCheck, Keys: keys(ctrl, fyne.KeyL), Can: (*Desk).hasFindings, Run: (*Desk).focusFindings},
		{ID: "remedy", Title: title("remedy", "Take the first remedy"), Menu: MenuCheck, Line: true, Keys: keys(ctrl, fyne.KeyReturn), Can: (*Desk).hasRemedy, Named: (*Desk).remedyTitle, Run: (*Desk).takeRemedy},
		{ID: "set-aside", Title: title("set-aside", "Set the finding aside …"), Menu: MenuCheck, Can: func(d *Desk) bool { return d.findingInHand() != nil }, Run: (*Desk).askWaiver},
		{ID: "amend-figure", Title: title("amend-figure", "A figure of the local code …"), Menu: MenuCheck, Line: true, Run: (*Desk).askFigure},
		{ID: "amend-rule", Title: title("amend-rule", "Switch a rule off …"), Menu: MenuCheck, Run: (*Desk).askRuleOff},
		{ID: "rules", Title: title("rules", "What is checked"), Menu: MenuCheck, Line: true, Run: func(d *Desk) { d.stage.ShowRules(d.doc().Result().Figures) }},

		{ID: "export", Title: title("export", "Sheets …"), Menu: MenuHand, Keys: keys(ctrl, fyne.KeyP), Run: func(d *Desk) { d.stage.AskExport(d.doc(), d.prefs) }},
		{ID: "schedule-csv", Title: title("schedule-csv", "Opening schedule as CSV …"), Menu: MenuHand, Line: true, Run: func(d *Desk) { d.stage.ExportSchedule(d.doc(), ".csv") }},
		{ID: "schedule-xlsx", Title: title("schedule-xlsx", "Opening schedule as XLSX …"), Menu: MenuHand, Run: func(d *Desk) { d.stage.ExportSchedule(d.doc(), ".xlsx") }},

		{ID: "shortcuts", Title: title("shortcuts", "Keys"), Menu: MenuHelp, Keys: keys(0, fyne.KeyF1), Run: (*Desk).showShortcuts},
		{ID: "cautions", Title: title("cautions", "Before you rely on it"), Menu: MenuHelp, Run: func(d *Desk) { d.stage.ShowCautions() }},
		{ID: "notices", Title: title("notices", "Notices of what it is made with"), Menu: MenuHelp, Line: true, Run: func(d *Desk) { d.stage.ShowNotices() }},
		{ID: "about", Title: title("about", "About Studbay"), Menu: MenuHelp, Run: func(d *Desk) { d.stage.ShowAbout() }},
	}...)
	return all
}

// toolCommands has one command a tool of the rail.
func toolCommands(tools []toolEntry) (all []Command) {
	for i, t := range tools {
		all = append(all, Command{
			ID: "tool-" + t.tool.ID(), Title: t.Title, Menu: MenuPlace, Keys: keys(0, fyne.KeyName(t.Key)),
			On:  func(d *Desk) bool { return d.inHand == i },
			Run: func(d *Desk) { d.TakeTool(i) },
		})
	}
	return all
}

// settings are the choices of one among several.
func settings() (all []Command) {
	for i, m := range []struct {
		mode look.Mode
		name words.Text
	}{
		{look.FollowSystem, title("mode-system", "As the system has it")},
		{look.LightMode, title("mode-light", "Light")},
		{look.DarkMode, title("mode-dark", "Dark")},
		{look.ContrastMode, title("mode-contrast", "High contrast")},
	} {
		all = append(all, Command{
			ID: "mode-" + string(m.mode), Title: m.name, Menu: MenuView, Sub: subColours, Line: i == 0,
			On:  func(d *Desk) bool { return d.prefs.mode() == m.mode },
			Run: func(d *Desk) { d.prefs.setMode(m.mode); d.house.applyTheme() },
		})
	}
	for _, u := range []struct {
		system unit.System
		name   words.Text
	}{
		{unit.Imperial, title("units-imperial", "Feet and inches")},
		{unit.Metric, title("units-metric", "Metres and millimetres")},
	} {
		all = append(all, Command{
			ID: u.name.ID, Title: u.name, Menu: MenuView, Sub: subUnits,
			On:  func(d *Desk) bool { return d.doc().System() == u.system },
			Run: func(d *Desk) { d.setUnits(u.system) },
		})
	}
	for _, l := range languages {
		all = append(all, Command{
			ID: "language-" + l.tag, Title: words.New("plain", "{0}", l.name), Menu: MenuView, Sub: subLanguage,
			On:  func(d *Desk) bool { return d.languageTag() == l.tag },
			Run: func(d *Desk) { d.prefs.setLanguage(l.tag); d.house.rebuilt() },
		})
	}
	for _, percent := range []int{90, 100, 115, 130, 150, 175, 200} {
		all = append(all, Command{
			ID: "scale", Title: words.New("scale.percent", "{0} %", percent), Menu: MenuView, Sub: subScale,
			On:  func(d *Desk) bool { return d.prefs.scale() == percent },
			Run: func(d *Desk) { d.prefs.setScale(percent); d.house.applyTheme(); d.house.rebuilt() },
		})
	}
	for i := range all {
		if all[i].ID == "scale" {
			all[i].ID += "-" + all[i].Title.String()
		}
	}
	return all
}
