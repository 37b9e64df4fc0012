package level

import (
	"slices"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// lightShare is how much of what a room's light takes before its name is the sign itself;
// the rest parts it from the name.
const lightShare = 0.78

// lightWide returns how much room a light takes before the first line of a name.
func lightWide(run scene.Run) float64 { return 1.05 * run.Size }

// light draws the light of a room: what stops the work, what is to be looked at or still open,
// or that nothing was found in what was checked; a question where much was not. Its shape says what its color says.
func (d *drawing) light(room plan.ID, middle scene.Point, side float64) []scene.Item {
	found := d.Found.ByRoom[room]
	light := fill.LightOver(slices.Values(found), d.Medium.Partly)
	isOpen := !slices.ContainsFunc(found, func(f *rule.Finding) bool { return fill.LightOf(f) == fill.Amber && !f.IsOpen })
	t := d.Theme
	switch {
	case light == fill.Red:
		return symbol.DrawMark(symbol.Stop, middle, side, t.Stop, t.OnStop)
	case light == fill.Amber && isOpen:
		return symbol.DrawMark(symbol.Question, middle, side, t.Warn, t.OnWarn)
	case light == fill.Amber:
		return symbol.DrawMark(symbol.Warn, middle, side, t.Warn, t.OnWarn)
	case light == fill.Unknown:
		return symbol.DrawMark(symbol.Question, middle, side, t.Muted, t.Paper)
	}
	return symbol.DrawSign(symbol.Calm, middle, side, t.Muted, t.Paper)
}
