package render

import (
	"testing"

	"studbay/plan"
	"studbay/render/scene"
)

func TestContrastFollowsItsDefinition(t *testing.T) {
	black, white := scene.Color{A: 255}, scene.Color{R: 255, G: 255, B: 255, A: 255}
	for _, tt := range []struct {
		a, b   scene.Color
		want   float64
		source string
	}{
		{black, white, 21, "WCAG 2.2, contrast ratio: from 1 to 21"},
		{white, white, 1, "the same"},
		{rgb(0x767676), white, 4.54, "WCAG 2.2 understanding 1.4.3: #767676 on white is 4.54:1"},
	} {
		if got := Contrast(tt.a, tt.b); got < tt.want-0.006 || got > tt.want+0.006 {
			t.Errorf("Contrast(%v, %v) = %.3f, want %v: %s", tt.a, tt.b, got, tt.want, tt.source)
		}
	}
}

// Every pair of a text and what it is written on reaches 4.5 : 1 (WCAG 2.2, 1.4.3).
func TestTextsCanBeRead(t *testing.T) {
	type pair struct {
		what     string
		text, on scene.Color
	}
	for _, th := range Themes {
		pairs := []pair{
			{"letters on accent", th.OnAccent, th.Accent},
			{"sign on stop", th.OnStop, th.Stop},
			{"sign on warn", th.OnWarn, th.Warn},
			{"ink on tint", th.Ink, th.Tint},
			{"accent on tint", th.Accent, th.Tint},
			{"stop on tint", th.Stop, th.Tint},
			{"muted on tint", th.Muted, th.Tint},
			{"note on tint", th.Note, th.Tint},
		}
		grounds := map[string]scene.Color{"paper": th.Paper, "surface": th.Surface}
		for _, use := range append(plan.Uses, "unheard of") {
			grounds["room of "+string(use)] = th.RoomTint(use)
		}
		for name, on := range grounds {
			pairs = append(pairs,
				pair{"ink on " + name, th.Ink, on}, pair{"muted on " + name, th.Muted, on},
				pair{"accent on " + name, th.Accent, on}, pair{"stop on " + name, th.Stop, on},
				pair{"warn on " + name, th.Warn, on}, pair{"note on " + name, th.Note, on},
				pair{"letter in a body on " + name, on, th.Accent}, pair{"letter in a stopped body on " + name, on, th.Stop})
		}
		c := th.Contents
		for name, on := range map[string]scene.Color{
			"conductor": c.Conductor, "ground": c.Ground, "device": c.Device, "clamp": c.Clamp, "fitting": c.Fitting, "other": c.Other,
		} {
			pairs = append(pairs, pair{"letters on " + name, c.On, on})
		}
		for _, p := range pairs {
			if got := Contrast(p.text, p.on); got < 4.5 {
				t.Errorf("%s: %s is %.2f : 1", th.Name, p.what, got)
			}
		}
	}
}

// Black and white first: a print is grey but for the stop.
func TestPrintIsGrey(t *testing.T) {
	for name, c := range map[string]scene.Color{
		"paper": Print.Paper, "ink": Print.Ink, "muted": Print.Muted, "line": Print.Line, "wall": Print.Wall,
		"accent": Print.Accent, "warn": Print.Warn, "note": Print.Note,
	} {
		if c.R != c.G || c.G != c.B {
			t.Errorf("%s is %v", name, c)
		}
	}
}
