package draft

import "studbay/render/scene"

// Hairline is the pen of the least of lines.
func (d *Drawing) Hairline() scene.Pen {
	return scene.Pen{Width: d.Medium.Pixel, Color: d.Theme.Line}
}

// MutedPen is that of what stands back.
func (d *Drawing) MutedPen() scene.Pen {
	return scene.Pen{Width: d.Medium.Pixel, Color: d.Theme.Muted}
}

// InkPen is that of what is read first, so many times the thinnest line wide.
func (d *Drawing) InkPen(times float64) scene.Pen {
	return scene.Pen{Width: times * d.Medium.Pixel, Color: d.Theme.Ink}
}

// Dashed returns a pen that draws dashes, in thinnest lines.
func (d *Drawing) Dashed(p scene.Pen, line, gap float64) scene.Pen {
	p.Dash = []float64{line * d.Medium.Pixel, gap * d.Medium.Pixel}
	return p
}
