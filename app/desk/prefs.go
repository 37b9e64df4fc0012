package desk

import (
	"os"
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/plan/unit"
)

// prefs is what the program remembers of its user, on this machine.
type prefs struct{ store fyne.Preferences }

const mostRecent = 8

func (p prefs) mode() look.Mode     { return look.Mode(p.store.String("mode")) }
func (p prefs) setMode(m look.Mode) { p.store.SetString("mode", string(m)) }

// scale is the interface scale in percent.
func (p prefs) scale() int           { return p.store.IntWithFallback("scale", 100) }
func (p prefs) setScale(percent int) { p.store.SetInt("scale", percent) }

// language is the catalogue of messages, or nothing for the system's.
func (p prefs) language() string        { return p.store.String("language") }
func (p prefs) setLanguage(name string) { p.store.SetString("language", name) }

// units are those a new plan begins with.
func (p prefs) units() unit.System {
	if p.store.String("units") == "metric" {
		return unit.Metric
	}
	return unit.Imperial
}

func (p prefs) setUnits(s unit.System) {
	name := "imperial"
	if s == unit.Metric {
		name = "metric"
	}
	p.store.SetString("units", name)
}

// recent lists plans opened lately that are still there, the latest first.
func (p prefs) recent() (paths []string) {
	for _, path := range p.store.StringList("recent") {
		if _, err := os.Stat(path); err == nil {
			paths = append(paths, path)
		}
	}
	return paths
}

// addRecent puts a plan first.
func (p prefs) addRecent(path string) {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	p.toFront("recent", path, mostRecent)
}

// toFront puts an entry first in a list of a length at most. One that is first already
// costs nothing: the store writes and syncs its file with every change.
func (p prefs) toFront(list, entry string, most int) {
	all := p.store.StringList(list)
	if len(all) > 0 && all[0] == entry {
		return
	}
	all = append([]string{entry}, slices.DeleteFunc(all, func(old string) bool { return old == entry })...)
	p.store.SetStringList(list, all[:min(len(all), most)])
}

// kinds lists the kinds of opening used lately.
func (p prefs) kinds() []string { return p.store.StringList("kinds") }

func (p prefs) addKind(id string) { p.toFront("kinds", id, 4) }

// window is the size the window had, and whether the unfolded room and the cards were
// shown.
func (p prefs) window() (size fyne.Size, hasSize bool) {
	w, h := p.store.Float("width"), p.store.Float("height")
	return fyne.NewSize(float32(w), float32(h)), w > 0 && h > 0
}

func (p prefs) setWindow(size fyne.Size) {
	p.store.SetFloat("width", float64(size.Width))
	p.store.SetFloat("height", float64(size.Height))
}

// Paper, ExportFormat and ExportDPI are what sheets were written as last.
func (p prefs) Paper() string              { return p.store.String("paper") }
func (p prefs) SetPaper(name string)       { p.store.SetString("paper", name) }
func (p prefs) ExportFormat() string       { return p.store.StringWithFallback("export-form", ".pdf") }
func (p prefs) SetExportFormat(ext string) { p.store.SetString("export-form", ext) }
func (p prefs) ExportDPI() int             { return p.store.IntWithFallback("export-dpi", 150) }
func (p prefs) SetExportDPI(dpi int)       { p.store.SetInt("export-dpi", dpi) }

// Sizes are what the user has dragged the panels to.
func (p prefs) Sizes() shell.Sizes {
	size := func(name string) float32 { return float32(p.store.Float(name)) }
	return shell.Sizes{Drawer: size("drawer-width"), Card: size("card-width"), Unfold: size("unfold-height")}
}

func (p prefs) SetSizes(s shell.Sizes) {
	p.store.SetFloat("drawer-width", float64(s.Drawer))
	p.store.SetFloat("card-width", float64(s.Card))
	p.store.SetFloat("unfold-height", float64(s.Unfold))
}

// ghost is which level shows through the one in sight.
func (p prefs) ghost() ghost     { return ghost(p.store.StringWithFallback("ghost", string(ghostBelow))) }
func (p prefs) setGhost(g ghost) { p.store.SetString("ghost", string(g)) }

// isGuided says that the user wants no guide in an empty window any more.
func (p prefs) isGuided() bool { return p.store.Bool("guided") }
func (p prefs) setGuided()     { p.store.SetBool("guided", true) }

func (p prefs) unfold() bool        { return p.store.BoolWithFallback("unfold", true) }
func (p prefs) setUnfold(on bool)   { p.store.SetBool("unfold", on) }
func (p prefs) cards() bool         { return p.store.BoolWithFallback("cards", true) }
func (p prefs) setCards(on bool)    { p.store.SetBool("cards", on) }
func (p prefs) LastFolder() string  { return p.store.String("folder") }
func (p prefs) SetFolder(of string) { p.store.SetString("folder", filepath.Dir(of)) }
