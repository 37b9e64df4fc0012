package level

import (
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// lightColor returns the color of what stands before the name of the only room, and whether it
// is clear of the name's lines.
func lightColor(t *testing.T, theme render.Theme, lights, partly bool, found ...rule.Finding) (c scene.Color, items int, any bool) {
	t.Helper()
	b := rendertest.NewBuilder(t)
	id := b.Box("Den", plan.UseDen, 0, 0, 160, 140).ID
	for i := range found {
		found[i].Room, found[i].Level = id, b.Level.ID
	}
	m := rendertest.BoardOf(theme)
	m.Lights, m.Partly = lights, partly
	var sign []scene.Item
	var texts []scene.Rect
	for _, p := range Draw(b.Index(), b.Level.ID, found, m, rendertest.Everything) {
		if p.Layer != render.LayerRoomNames {
			continue
		}
		for _, it := range p.Items {
			if run, ok := it.(scene.Run); ok {
				texts = append(texts, run.Bounds())
				continue
			}
			sign = append(sign, it)
			switch it := it.(type) {
			case scene.Fill:
				if !any {
					c, any = it.Color, true
				}
			case scene.Stroke:
				if !any {
					c, any = it.Pen.Color, true
				}
			}
		}
	}
	if any {
		box := scene.Bounds(sign...)
		for _, text := range texts {
			if box.Min.X < text.Max.X && text.Min.X < box.Max.X && box.Min.Y < text.Max.Y && text.Min.Y < box.Max.Y {
				t.Errorf("the light %v is over the text %v", box, text)
			}
		}
	}
	return c, len(sign), any
}

// Before a room's name stands its light: red for what stops the work, amber for what is to be
// looked at or open, calm else, in light and dark; none where nothing was checked.
func TestTheLightOfARoom(t *testing.T) {
	stop, warn, note := rule.Finding{Severity: rule.Stop}, rule.Finding{Severity: rule.Warn}, rule.Finding{Severity: rule.Note}
	open := rule.Finding{Severity: rule.Note, IsOpen: true}
	waived := rule.Finding{Severity: rule.Stop, Waived: &plan.Waiver{}}
	for _, theme := range []render.Theme{render.Light, render.Dark} {
		for _, tt := range []struct {
			name  string
			found []rule.Finding
			want  scene.Color
		}{
			{"nothing", nil, theme.Muted},
			{"a note", []rule.Finding{note}, theme.Muted},
			{"set aside", []rule.Finding{waived}, theme.Muted},
			{"open", []rule.Finding{note, open}, theme.Warn},
			{"a warning", []rule.Finding{warn, open}, theme.Warn},
			{"a stop among others", []rule.Finding{warn, stop, open, note}, theme.Stop},
			{"a stop after what is open", []rule.Finding{open, stop}, theme.Stop},
		} {
			if got, _, any := lightColor(t, theme, true, false, tt.found...); !any || got != tt.want {
				t.Errorf("%s: %v %v, want %v", tt.name, any, got, tt.want)
			}
		}
		if _, _, any := lightColor(t, theme, false, false, stop); any {
			t.Error("a light where nothing was checked")
		}
		// A ring with a question mark, its point and no tick.
		_, calm, _ := lightColor(t, theme, true, false)
		c, partly, any := lightColor(t, theme, true, true)
		if !any || c != theme.Muted || partly == calm {
			t.Errorf("where much was not checked: %v %v, %d items", any, c, partly)
		}
		if c, _, _ := lightColor(t, theme, true, true, stop); c != theme.Stop {
			t.Error("a stop does not show where much was not checked")
		}
	}
}
