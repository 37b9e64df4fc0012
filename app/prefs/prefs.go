// Package prefs is what the program remembers of its user, on this machine.
package prefs

import (
	"os"
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/plan/unit"
)

// Prefs reads and writes it in the store of the toolkit.
type Prefs struct{ Store fyne.Preferences }

// MostRecent is how many plans are remembered at most.
const MostRecent = 8

// Mode is light, dark or as the desktop has it.
func (p Prefs) Mode() look.Mode     { return look.Mode(p.Store.String("mode")) }
func (p Prefs) SetMode(m look.Mode) { p.Store.SetString("mode", string(m)) }

// Scale is the interface scale in percent.
func (p Prefs) Scale() int           { return p.Store.IntWithFallback("scale", 100) }
func (p Prefs) SetScale(percent int) { p.Store.SetInt("scale", percent) }

// Language is the catalogue of messages, or nothing for the system's.
func (p Prefs) Language() string        { return p.Store.String("language") }
func (p Prefs) SetLanguage(name string) { p.Store.SetString("language", name) }

// Trade is whether findings are told to the trade, by section and figures.
func (p Prefs) Trade() bool         { return p.Store.Bool("trade") }
func (p Prefs) SetTrade(trade bool) { p.Store.SetBool("trade", trade) }

// Units are those a new plan begins with.
func (p Prefs) Units() unit.System {
	if p.Store.String("units") == "metric" {
		return unit.Metric
	}
	return unit.Imperial
}

// SetUnits keeps what a new plan begins with.
func (p Prefs) SetUnits(s unit.System) {
	name := "imperial"
	if s == unit.Metric {
		name = "metric"
	}
	p.Store.SetString("units", name)
}

// Recent lists plans opened lately that are still there, the latest first.
func (p Prefs) Recent() (paths []string) {
	for _, path := range p.Store.StringList("recent") {
		if _, err := os.Stat(path); err == nil {
			paths = append(paths, path)
		}
	}
	return paths
}

// AddRecent puts a plan first.
func (p Prefs) AddRecent(path string) {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	p.toFront("recent", path, MostRecent)
}

// toFront puts an entry first in a list of a length at most. One that is first already
// costs nothing: the store writes and syncs its file with every change.
func (p Prefs) toFront(list, entry string, most int) {
	all := p.Store.StringList(list)
	if len(all) > 0 && all[0] == entry {
		return
	}
	all = append([]string{entry}, slices.DeleteFunc(all, func(old string) bool { return old == entry })...)
	p.Store.SetStringList(list, all[:min(len(all), most)])
}

// Kinds lists the kinds of opening used lately.
func (p Prefs) Kinds() []string { return p.Store.StringList("kinds") }

// AddKind puts a kind of opening first.
func (p Prefs) AddKind(id string) { p.toFront("kinds", id, 4) }

// Window is the size the window had, and whether the unfolded room and the cards were
// shown.
func (p Prefs) Window() (size fyne.Size, hasSize bool) {
	w, h := p.Store.Float("width"), p.Store.Float("height")
	return fyne.NewSize(float32(w), float32(h)), w > 0 && h > 0
}

// SetWindow keeps the size of the window.
func (p Prefs) SetWindow(size fyne.Size) {
	p.Store.SetFloat("width", float64(size.Width))
	p.Store.SetFloat("height", float64(size.Height))
}

// Paper, ExportFormat and ExportDPI are what sheets were written as last.
func (p Prefs) Paper() string              { return p.Store.String("paper") }
func (p Prefs) SetPaper(name string)       { p.Store.SetString("paper", name) }
func (p Prefs) ExportFormat() string       { return p.Store.StringWithFallback("export-form", ".pdf") }
func (p Prefs) SetExportFormat(ext string) { p.Store.SetString("export-form", ext) }
func (p Prefs) ExportDPI() int             { return p.Store.IntWithFallback("export-dpi", 150) }
func (p Prefs) SetExportDPI(dpi int)       { p.Store.SetInt("export-dpi", dpi) }

// Sizes are what the user has dragged the panels to.
func (p Prefs) Sizes() shell.Sizes {
	size := func(name string) float32 { return float32(p.Store.Float(name)) }
	return shell.Sizes{Drawer: size("drawer-width"), Card: size("card-width"), Unfold: size("unfold-height")}
}

// SetSizes keeps how large the panels are.
func (p Prefs) SetSizes(s shell.Sizes) {
	p.Store.SetFloat("drawer-width", float64(s.Drawer))
	p.Store.SetFloat("card-width", float64(s.Card))
	p.Store.SetFloat("unfold-height", float64(s.Unfold))
}

// Ghost is which level shows through the one in sight.
func (p Prefs) Ghost() Ghost     { return Ghost(p.Store.StringWithFallback("ghost", string(GhostBelow))) }
func (p Prefs) SetGhost(g Ghost) { p.Store.SetString("ghost", string(g)) }

// IsGuided says that the user wants no guide in an empty window any more.
func (p Prefs) IsGuided() bool { return p.Store.Bool("guided") }
func (p Prefs) SetGuided()     { p.Store.SetBool("guided", true) }

// Unfold is whether the room is shown unfolded, Cards whether the cards are in sight, LastFolder
// where a file was last opened or saved.
func (p Prefs) Unfold() bool      { return p.Store.BoolWithFallback("unfold", true) }
func (p Prefs) SetUnfold(on bool) { p.Store.SetBool("unfold", on) }
func (p Prefs) Cards() bool       { return p.Store.BoolWithFallback("cards", true) }
func (p Prefs) SetCards(on bool)  { p.Store.SetBool("cards", on) }

// OwnPolicy is the user's own choice of boxes by room and kind, as a CSV.
func (p Prefs) OwnPolicy() string       { return p.Store.String("own-policy") }
func (p Prefs) SetOwnPolicy(csv string) { p.Store.SetString("own-policy", csv) }

func (p Prefs) LastFolder() string  { return p.Store.String("folder") }
func (p Prefs) SetFolder(of string) { p.Store.SetString("folder", filepath.Dir(of)) }

// LanguageTag returns the language in force.
func (p Prefs) LanguageTag() string {
	if chosen := p.Language(); chosen != "" {
		return chosen
	}
	return string(lang.SystemLocale().LanguageString()[:2])
}

// Ghost says which level shows through the one in sight.
type Ghost string

const (
	GhostNone  Ghost = "none"
	GhostBelow Ghost = "below"
	GhostAbove Ghost = "above"
)
