package render

import (
	"studbay/fill/rule"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// MarkOf returns the sign of a finding.
func MarkOf(f *rule.Finding) symbol.Mark {
	switch {
	case f.IsOpen:
		return symbol.Question
	case f.Severity == rule.Stop:
		return symbol.Stop
	case f.Severity == rule.Warn:
		return symbol.Warn
	}
	return symbol.Note
}

// Severity returns the colour of a severity.
func (t *Theme) Severity(s rule.Severity) scene.Color {
	switch s {
	case rule.Stop:
		return t.Stop
	case rule.Warn:
		return t.Warn
	}
	return t.Note
}

// OnSeverity returns the colour of what stands on that of a severity.
func (t *Theme) OnSeverity(s rule.Severity) scene.Color {
	switch s {
	case rule.Stop:
		return t.OnStop
	case rule.Warn:
		return t.OnWarn
	}
	return t.Paper
}
