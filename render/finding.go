package render

import (
	"studbay/fill"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// MarkOf returns the sign of a finding.
func MarkOf(f *fill.Finding) symbol.Mark {
	switch {
	case f.IsOpen:
		return symbol.Question
	case f.Severity == fill.Stop:
		return symbol.Stop
	case f.Severity == fill.Warn:
		return symbol.Warn
	}
	return symbol.Note
}

// Severity returns the colour of a severity.
func (t *Theme) Severity(s fill.Severity) scene.Color {
	switch s {
	case fill.Stop:
		return t.Stop
	case fill.Warn:
		return t.Warn
	}
	return t.Note
}

// OnSeverity returns the colour of what stands on that of a severity.
func (t *Theme) OnSeverity(s fill.Severity) scene.Color {
	switch s {
	case fill.Stop:
		return t.OnStop
	case fill.Warn:
		return t.OnWarn
	}
	return t.Paper
}
